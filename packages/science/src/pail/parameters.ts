import table from '@loamwright/reference/pail.json' with { type: 'json' };
import type { Citation } from '../catalogue/index.ts';
import type { PublishedRange } from '../estimate/index.ts';
import type { DepthRule, Figure } from '../mix/parameters.ts';

/** What is done with one, two or three bays; the words are the message `pail.practice.ID`. */
export const practiceIds = [
  'take-from-below',
  'lift-off-and-rest',
  'fill-one-rest-one',
  'swap-when-ripe',
  'fill-age-ready',
  'fork-on-when-full',
] as const;
export type PracticeId = (typeof practiceIds)[number];

/** The parameters of a bin that is fed by the pail. */
export interface PailParameters {
  /** Brown over every feed. */
  readonly feedCover_m: Citation & PublishedRange;
  /** How thick a pail is spread. */
  readonly handSpread_m: Figure;
  readonly cap: DepthRule;
  /** What is left in the end, and how fast it gets there; see `docs/models/pail-cover.md`. */
  readonly decay: Readonly<
    Record<'volumeEnd_share' | 'carbonEnd_share' | 'nitrogenEnd_share' | 'rate_perDay', Citation & PublishedRange>
  >;
  readonly feeding: Readonly<Record<'fedFor_days' | 'fedTimesVolume' | 'restFor_days', Figure>>;
  readonly practice: readonly (Citation & { readonly id: PracticeId; readonly bays: number })[];
}

/** Every parameter with its source, from `reference/pail.json`. */
export const pailParameters: PailParameters = table as unknown as PailParameters;
