import { type Citation, type Source, sourceLine, sourceOf } from '@loamwright/science';
import type { Speaker } from '@loamwright/words';
import { wrap } from './terminal.ts';

/** A citation with the publication that it names. */
export function cited(citation: Citation): Citation & Source {
  return { ...citation, ...sourceOf(citation) };
}

/** One citation in a line: who, when, what, the place in it, and how it was read. */
export function citationLine({ place, mark, ...source }: Citation & Source, speaker: Speaker, columns: number): string {
  return wrap(`- ${sourceLine(source)}: ${place} (${speaker.sayIf(`mark.${mark}`, mark)})`, columns, '  ');
}
