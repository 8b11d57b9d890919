import { type Amount, type FillId, fillTimes, isEstimate, likely, type Quantity } from '@loamwright/science';

/** How far a measure is filled by eye, where it is not full. */
export const partFills: readonly FillId[] = ['three-quarters', 'half', 'quarter'];

/**
 * So many measures, as told, of what was given: what was filled by eye keeps the spread of that.
 *
 * @param count full measures
 */
export function laid(given: Amount, measure: string, count: number): Amount {
  const { packed } = given;
  const fill = 'measure' in given && given.measure === measure ? given.fill : undefined;
  if (fill === undefined || !partFills.includes(fill)) return { measure, count, fill, packed };
  const times = fillTimes[fill];
  return { measure, count: scaled(times, count / likely(times)), packed };
}

/** So many times a quantity. */
export function scaled(quantity: Quantity, times: number): Quantity {
  if (!isEstimate(quantity)) return quantity * times;
  return { p10: quantity.p10 * times, p50: quantity.p50 * times, p90: quantity.p90 * times };
}
