import { z } from 'zod';
import { bad, type Calculation, good, type Outcome } from '../catalogue/index.ts';
import { bedBounds } from './slips.ts';

/** A bed that is to get a share. */
export interface ShareBed {
  readonly name: string;
  readonly area_m2: number;
  /** What it wants beside the others, in any unit; left out, all share by area. */
  readonly want?: number | undefined;
  /** Whole measures that it gets at most; left out, as many as there are. */
  readonly most?: number | undefined;
}

export interface ShareOutInput {
  /** Whole measures there are. */
  readonly measures: number;
  readonly beds: readonly ShareBed[];
  readonly by: 'area' | 'need';
}

export interface ShareOut {
  /** Whole measures for each bed, in the order given; together, with what is left, all there are. */
  readonly beds: readonly { readonly name: string; readonly count: number; readonly exact: number }[];
  /** Whole measures that no bed gets, because each has its most. */
  readonly left: number;
}

/** By largest remainders (Hamilton's method): whole measures whose sum is what there is, as far as the beds take it. */
function run({ measures, beds, by }: ShareOutInput): Outcome<ShareOut> {
  const weights = beds.map(({ area_m2, want }) => (by === 'need' ? (want ?? 0) : area_m2));
  if (weights.every((weight) => weight <= 0))
    return bad({ code: 'nothing-wanted', path: 'beds', found: '0', wanted: '' });
  const exact = exactShares(
    measures,
    beds.map(({ most = Number.POSITIVE_INFINITY }, i) => ({ weight: weights[i] ?? 0, most })),
  );
  const floors = exact.map(Math.floor);
  const shared = Math.round(exact.reduce((all, share) => all + share, 0));
  const next = new Set(
    exact
      .map((share, i) => ({ i, rest: share - (floors[i] ?? 0) }))
      .toSorted((a, b) => b.rest - a.rest || a.i - b.i)
      .slice(0, shared - floors.reduce((all, count) => all + count, 0))
      .map(({ i }) => i),
  );
  return good({
    beds: beds.map(({ name }, i) => ({
      name,
      count: (floors[i] ?? 0) + (next.has(i) ? 1 : 0),
      exact: exact[i] ?? 0,
    })),
    left: measures - shared,
  });
}

/** Shares by weight; what a bed can't take goes to those that can. */
function exactShares(
  measures: number,
  beds: readonly { readonly weight: number; readonly most: number }[],
): readonly number[] {
  const full = new Set<number>();
  for (;;) {
    const left = measures - beds.reduce((sum, { most }, i) => sum + (full.has(i) ? most : 0), 0);
    const sum = beds.reduce((all, { weight }, i) => all + (full.has(i) ? 0 : weight), 0);
    const shares = beds.map(({ weight, most }, i) => {
      if (full.has(i)) return most;
      return sum > 0 ? (left * weight) / sum : 0;
    });
    const over = shares.flatMap((share, i) => (!full.has(i) && share > (beds[i]?.most ?? 0) ? [i] : []));
    if (over.length === 0) return shares;
    for (const i of over) full.add(i);
  }
}

/** Whole measures of a heap shared among beds, by area or by need. */
export const shareOut: Calculation<ShareOutInput, ShareOut> = {
  id: 'share-out',
  title: 'A heap shared among beds',
  summary:
    'Shares whole measures, such as barrows, among beds by their area or by what they want, by largest remainders: none is cut, and none is left over unless every bed has its most.',
  input: z.strictObject({
    measures: z.int().min(1).max(100_000),
    beds: z
      .array(
        z.strictObject({
          name: z.string().min(1).max(120),
          area_m2: z.number().min(bedBounds.area_m2.least).max(bedBounds.area_m2.most),
          want: z.number().min(0).max(1e9).optional(),
          most: z.int().min(0).max(100_000).optional(),
        }),
      )
      .min(1)
      .max(200),
    by: z.enum(['area', 'need']),
  }),
  output: z.strictObject({
    beds: z.array(z.strictObject({ name: z.string(), count: z.number().min(0), exact: z.number().min(0) })),
    left: z.number().min(0),
  }),
  sources: [{ source: 'own-judgement', place: 'largest remainders, as seats are shared', mark: 'derived' }],
  cautions: [],
  example: {
    measures: 14,
    beds: [
      { name: 'Top bed', area_m2: 10 },
      { name: 'Wall bed', area_m2: 6 },
    ],
    by: 'area',
  },
  run,
};
