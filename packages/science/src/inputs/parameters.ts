import table from '@loamwright/reference/input-rules.json' with { type: 'json' };
import type { Citation } from '../catalogue/index.ts';

/** What a lawn, a field or a fodder was treated with; the message `inputs.sprayed.ID`. */
export const sprayedIds = [
  'nothing',
  'fertiliser',
  'weed-killer',
  'insecticide-fungicide',
  'persistent',
  'unknown',
] as const;
export type SprayedId = (typeof sprayedIds)[number];

interface Span {
  readonly low: number;
  readonly high: number;
}

export interface SprayRule extends Citation {
  readonly id: SprayedId;
  /** Mowings left lying, or weeks; absent where waiting does not help. */
  readonly wait?: { readonly mowings: Span; readonly weeks: Span } | undefined;
}

type Figure = Citation & { readonly value: number };

export interface InputParameters {
  readonly sprayed: readonly SprayRule[];
  /** Inputs over which experts differ. */
  readonly disputed: readonly (Citation & { readonly id: string })[];
  readonly burial: Citation & { readonly deep_m: number; readonly cover_m: number };
  readonly beanTest: {
    readonly pots: Citation & Span;
    readonly pot_m: Citation & Span;
    readonly suspectParts: Figure;
    readonly seeds: Figure;
    readonly weeks: Citation & Span;
    readonly leastControls: Figure;
    readonly strong: Citation;
  };
}

/** What may go in, and the test with beans, from `reference/input-rules.json`. */
export const inputParameters: InputParameters = table as unknown as InputParameters;
