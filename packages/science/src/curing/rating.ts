import { isEstimate, likely, type Quantity } from '../estimate/index.ts';
import {
  type LimitRow,
  maturityParameters,
  type Rating,
  type RipenessId,
  ratings,
  type Scheme,
} from './maturity-parameters.ts';

/** A limit that was held against a measurement: its rating as measured, and at the better and the worse end of its range. */
export interface LimitRead {
  readonly limit: string;
  readonly quantity: RipenessId;
  readonly scheme: Scheme;
  readonly rating: Rating;
  readonly best: Rating;
  readonly worst: Rating;
}

/** A row of `reference/maturity.json`, limits, by its id. */
export function limitOf(id: string): LimitRow {
  const row = maturityParameters.limits.find((one) => one.id === id);
  if (row === undefined) throw new RangeError(`reference/maturity.json has no limit ${id}`);
  return row;
}

/** The class a value falls in by one limit, in the unit of its quantity. The first class ends before its figure, the second with it. */
export function ratingOf({ better, veryMature, mature }: LimitRow, value: number): Rating {
  const signed = better === 'less' ? value : -value;
  const end = (limit: number): number => (better === 'less' ? limit : -limit);
  if (veryMature !== undefined && signed < end(veryMature)) return 'very-mature';
  return signed <= end(mature) ? 'mature' : 'immature';
}

/** What one limit says of a measurement and of its range. */
export function readLimit(row: LimitRow, value: Quantity): LimitRead {
  const [low, high] = isEstimate(value) ? [value.p10, value.p90] : [value, value];
  const [best, worst] = row.better === 'less' ? [low, high] : [high, low];
  return {
    limit: row.id,
    quantity: row.quantity,
    scheme: row.scheme,
    rating: ratingOf(row, likely(value)),
    best: ratingOf(row, best),
    worst: ratingOf(row, worst),
  };
}

/** The least ripe of several; undefined where there is none. */
export function worstOf(several: readonly Rating[]): Rating | undefined {
  return ratings.findLast((rating) => several.includes(rating));
}
