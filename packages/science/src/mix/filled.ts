import { likely } from '../estimate/index.ts';
import { type Amount, type FillId, fillTimes } from '../material/index.ts';

/** How the measures of an amount are filled. */
export interface Filled {
  readonly fill?: FillId | undefined;
  readonly packed?: boolean | undefined;
}

const partFills: readonly FillId[] = ['three-quarters', 'half', 'quarter'];

/** What a measure that is only partly filled is of a full one; 1 for a level, heaped or unsaid one. */
export function shareOfFull(fill: FillId | undefined): number {
  return fill !== undefined && partFills.includes(fill) ? likely(fillTimes[fill]) : 1;
}

/** How the measures of an amount are filled; nothing is said of a mass or a volume but how it lies. */
export function filledAs(amount: Amount): Filled {
  return { fill: 'measure' in amount ? amount.fill : undefined, packed: amount.packed };
}

/** Of a filling, what is told beside a count of full measures: a part fill is told by the count itself. */
export function toldFilling({ fill, packed }: Filled): Filled {
  return {
    ...(fill === undefined || shareOfFull(fill) < 1 ? {} : { fill }),
    ...(packed === undefined ? {} : { packed }),
  };
}
