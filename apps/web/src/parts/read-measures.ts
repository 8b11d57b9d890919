import type { Speaker } from '@loamwright/words';
import { readCount } from './count.ts';

const named = /^(.*?)\s*(\p{L}[\p{L}\s’-]*)$/u;

/** A count of one of some measures, as a page tells them: "8 barrows", "2½ buckets"; undefined for anything else. */
export function readMeasures<Measure extends string>(
  typed: string,
  measures: readonly Measure[],
  speaker: Pick<Speaker, 'sayIf' | 'tell'>,
): { readonly measure: Measure; readonly count: number } | undefined {
  const [, figure = '', word = ''] = named.exec(typed.trim().toLowerCase()) ?? [];
  const count = readCount(figure, 0);
  if (count === null) return undefined;
  const measure = measures.find((one) => [1, 2].some((many) => wordFor(one, many) === word.trim()));
  return measure && { measure, count };

  function wordFor(measure: Measure, many: number): string {
    const told = speaker.tell({ key: `measure.${measure}.some` as 'measure.barrow.some', places: { count: many } });
    return told.toLowerCase().replace(/^\d+\s*/u, '');
  }
}
