import sources from '@loamwright/reference/sources.json' with { type: 'json' };
import type { Citation } from '@loamwright/science';
import type { Speaker } from '@loamwright/words';
import { wrap } from './terminal.ts';

/** A source as `reference/sources.json` has it. */
interface Source {
  readonly author: string | null;
  readonly year: number | null;
  readonly title: string;
  readonly address?: string | undefined;
}

/** A citation with the publication that it names. */
export function cited(citation: Citation): Citation & Source {
  const table: Readonly<Record<string, Source>> = sources;
  return { ...citation, ...(table[citation.source] ?? { author: null, year: null, title: citation.source }) };
}

/** One citation in a line: who, when, what, the place in it, and how it was read. */
export function citationLine(
  { author, year, title, place, mark }: Citation & Source,
  speaker: Speaker,
  columns: number,
): string {
  const head = [author, year, title].filter((part) => part !== null && part !== '').join(', ');
  return wrap(`- ${head}: ${place} (${speaker.sayIf(`mark.${mark}`, mark)})`, columns, '  ');
}
