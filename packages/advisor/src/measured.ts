import type { Place } from '@loamwright/words';
import { isMessageKey } from '@loamwright/words';
import { say } from './saying.ts';

/** So many of a measure: "9 buckets", "half a barrow"; a measure of the grower's own goes by its name. */
export function measured(measure: string, count: number): Place {
  const half = `measure.${measure}.half`;
  if (count === 0.5 && isMessageKey(half)) return say(half);
  const some = `measure.${measure}.some`;
  return isMessageKey(some) ? say(some, { count }) : say('advisor.measured', { count, measure });
}
