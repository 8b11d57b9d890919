import table from '@loamwright/reference/yield.json' with { type: 'json' };
import type { Citation } from '../catalogue/index.ts';
import type { PublishedRange } from '../estimate/index.ts';

type Figure = Citation & { readonly value: number };
type Ranged = Citation & PublishedRange;

/** Whether rain runs through a heap. */
export const shelterIds = ['sheltered', 'open', 'unknown'] as const;
export type ShelterId = (typeof shelterIds)[number];

export interface YieldParameters {
  /** Ready compost as it lies in the heap, not sifted. */
  readonly readyDensity_kgPerM3AsIs: Ranged;
  readonly readyMoisture_pctWet: Ranged;
  /** Volume that goes while manure composts: for a heap of which nothing is known but its volume. */
  readonly volumeLost_pctVolume: Ranged;
  /** Nitrogen that leaves any heap, percent of what went in. */
  readonly nitrogenLeast_pct: Ranged;
  /** Potassium that runs out, percent of what went in. */
  readonly potassiumLost_pct: Readonly<Record<ShelterId, Ranged>>;
  /** How far the heaps of one garden lie apart: nine in ten within this factor of the usual. */
  readonly betweenHeaps_factor: Figure;
  /** How good a volume taken with a tape is. */
  readonly tape_factor: Figure;
  readonly grit_share: Figure;
}

/** What becomes of a heap, from `reference/yield.json`. */
export const yieldParameters: YieldParameters = table as unknown as YieldParameters;
