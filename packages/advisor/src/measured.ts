import type { Holding } from '@loamwright/daybook';
import { type Filled, measureById, shareOfFull } from '@loamwright/science';
import type { Place, Saying } from '@loamwright/words';
import { isMessageKey } from '@loamwright/words';
import { materialName, someOf } from './names.ts';
import { say, sayOf } from './saying.ts';

/** So many of a measure: "9 buckets", "half a barrow"; a measure of the grower's own goes by its name. */
export function measured(measure: string, count: number): Place {
  const half = `measure.${measure}.half`;
  if (count === 0.5 && isMessageKey(half)) return say(half);
  const some = `measure.${measure}.some`;
  return isMessageKey(some) ? say(some, { count }) : say('advisor.measured', { count, measure });
}

/** In halves as long as they can be told apart. */
export function inHalves(count: number): number {
  return count < 10 ? Math.round(2 * count) / 2 : Number(count.toPrecision(2));
}

/** So many measures of a material, filled as they are. */
export interface Counted extends Filled {
  readonly material: string;
  readonly measure: string;
  readonly count: number;
}

/**
 * "9 buckets of straw", "half a barrow of goat bedding", "3 buckets (heaped) of coffee grounds": part-full
 * measures are told as the full ones they come to.
 */
export function countedOf(holding: Holding, { material, measure, count, fill, packed }: Counted): Saying {
  const part_share = shareOfFull(fill);
  const amount = measured(measure, part_share < 1 ? hundredths(count * part_share) : count);
  const how = [
    ...(fill === undefined || fill === 'level' || part_share < 1 ? [] : [sayOf('measure.fill', fill)]),
    ...lying(measure, packed),
  ];
  if (how.length === 0) return someOf(holding, material, amount);
  return say('advisor.some-how', { amount, how, material: materialName(holding, material) });
}

function hundredths(count: number): number {
  return Math.round(100 * count) / 100;
}

/** How stuff lies in a measure, where that is not how it usually lies in it. */
function lying(measure: string, packed: boolean | undefined): readonly Saying[] {
  const usually = measureById(measure)?.packing === 'packed';
  return packed === undefined || packed === usually ? [] : [say(packed ? 'measure.packed' : 'measure.loose')];
}
