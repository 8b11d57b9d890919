import fc from 'fast-check';
import { expect } from 'vitest';
import { createDraws, type Draws, type Estimate } from '../../estimate/index.ts';
import { bedFill } from '../bed-fill.ts';
import type { BedFill, BedFillInput } from '../bed-fill-io.ts';
import type { CompostKnown } from '../compost.ts';
import { methodIds, partIds } from '../parameters.ts';
import { pottingMix } from '../potting-mix.ts';
import type { PottingMix, PottingMixInput } from '../potting-mix-io.ts';

/** Fewer draws than an answer has: a law holds in each. */
export const fewDraws: Draws = createDraws(64);
export const runs = { seed: 31, numRuns: 60 } as const;

/** The answer for pots; a refusal is a mistake of the test. */
export function potted(input: PottingMixInput): PottingMix {
  const outcome = pottingMix.run(input, { draws: fewDraws });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

/** The answer for a bed; a refusal is a mistake of the test. */
export function filled(input: BedFillInput): BedFill {
  const outcome = bedFill.run(input, { draws: fewDraws });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

export const parts: fc.Arbitrary<Required<PottingMixInput>['parts']> = fc.array(
  fc.record({ part: fc.constantFrom(...partIds), parts: fc.double({ min: 0.01, max: 100, noNaN: true }) }),
  { minLength: 1, maxLength: 8 },
);
export const compost: fc.Arbitrary<CompostKnown> = fc.record(
  {
    age_months: fc.double({ min: 0, max: 48, noNaN: true }),
    selfHeating_K: fc.double({ min: 0, max: 60, noNaN: true }),
    emergence_pctOfControl: fc.double({ min: 0, max: 150, noNaN: true }),
    smell: fc.constantFrom('earthy', 'ammonia', 'sour'),
    conductivity: fc.record({
      value_dSPerM: fc.double({ min: 0, max: 20, noNaN: true }),
      method: fc.constantFrom(...methodIds),
    }),
    madeOf: fc.constantFrom('plants', 'manure-or-salty', 'unknown'),
    provenHot: fc.boolean(),
  },
  { requiredKeys: [] },
);
/** Every estimate anywhere in an answer. */
function estimatesIn(value: unknown): readonly Estimate[] {
  if (typeof value !== 'object' || value === null) return [];
  if ('p10' in value) return [value as Estimate];
  return Object.values(value).flatMap(estimatesIn);
}

/** Every range of an answer is ordered, finite and not below nothing. */
export function expectRanges(answer: object): void {
  for (const { p10, p50, p90 } of estimatesIn(answer)) {
    expect(Number.isFinite(p10) && Number.isFinite(p50) && Number.isFinite(p90)).toBe(true);
    expect(p10 <= p50 && p50 <= p90).toBe(true);
    expect(p10).toBeGreaterThanOrEqual(0);
  }
}
