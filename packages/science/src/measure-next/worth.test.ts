import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { normalQuantile } from '../estimate/index.ts';
import { type Losses, readingsIn, worthOf, worthOfAll } from './worth.ts';

/**
 * Two ways to act, one that costs nothing and one that costs what a normal figure comes to: the worth of knowing has a
 * closed form, the unit normal loss integral G (Raiffa and Schlaifer, 1961; its table is recalled).
 */
const unitNormalLoss = [
  [0.2, 0.3069],
  [0.5, 0.1978],
  [1, 0.0833],
] as const;

const SHUFFLES = 16;

/** The middles of so many strips of equal chance. */
const STRIPS = 2000;
const standard = Float64Array.from({ length: STRIPS }, (_, i) => normalQuantile((i + 0.5) / STRIPS));

function twoWays(mean: number, sd: number): { readonly truths: Float64Array; readonly losses: Losses } {
  const truths = standard.map((z) => mean + sd * z);
  return { truths, losses: [new Float64Array(STRIPS), truths] };
}

/** Readings close enough together that their steps do not show: a fifth of their error. */
function normalReadings(truths: Float64Array, error: number): readonly Float64Array[] {
  const low = Math.min(...truths) - 4 * error;
  const high = Math.max(...truths) + 4 * error;
  const count = Math.ceil((high - low) / (0.2 * error));
  return readingsIn(
    truths,
    Array.from({ length: count }, (_, k) => ({ at: low + ((k + 0.5) * (high - low)) / count, error })),
  );
}

describe('the worth of knowing', () => {
  it.each(unitNormalLoss)('everything is σ G(%d) = %d σ', (away, table) => {
    const { losses } = twoWays(3 * away, 3);
    // Four digits are printed, and 2000 strips leave a thousandth of the tails out.
    expect(worthOfAll(losses) / 3).toBeCloseTo(table, 2.5);
  });

  it.each(unitNormalLoss)('a reading as wide as the prior is σ/√2 · G of the nearer zero (%d)', (away, table) => {
    // What the reading leaves to be learnt of: σ* = σ² / √(σ² + ε²), here σ / √2.
    const foreseen = Math.SQRT1_2;
    const { truths, losses } = twoWays(away * foreseen, 1);
    const { gain } = worthOf(losses, normalReadings(truths, 1), losses, SHUFFLES);
    // The same digits and strips, and readings a fifth of their error apart.
    expect(gain / foreseen).toBeCloseTo(table, 2);
  });

  it('is less the worse the reading, and nothing for one that tells nothing', () => {
    const { truths, losses } = twoWays(0.3, 1);
    const gains = [0.2, 0.5, 1, 3].map(
      (error) => worthOf(losses, normalReadings(truths, error), losses, SHUFFLES).gain,
    );
    expect(gains).toEqual(gains.toSorted((a, b) => b - a));
    const nothing = [truths.map(() => 0.5), truths.map(() => 0.5)];
    expect(worthOf(losses, nothing, losses, SHUFFLES)).toMatchObject({ gain: 0, error: 0, changes_share: 0 });
  });

  it('of a check is never more than that of knowing everything', () => {
    const figures = fc.float64Array({ minLength: 64, maxLength: 64, min: -5, max: 5, noNaN: true });
    fc.assert(
      fc.property(fc.array(figures, { minLength: 2, maxLength: 6 }), figures, (losses, truths) => {
        const outcomes = readingsIn(
          truths,
          [-4, -2, 0, 2, 4].map((at) => ({ at, error: 1 })),
        );
        const { gain, changes_share } = worthOf(losses, outcomes, losses, SHUFFLES);
        expect(gain).toBeLessThanOrEqual(worthOfAll(losses) + 1e-9);
        expect(changes_share).toBeLessThanOrEqual(1 + 1e-9);
      }),
    );
  });
});

describe('the chances of readings', () => {
  it('add up to one in each draw, and favour the reading that is nearest', () => {
    const outcomes = readingsIn(Float64Array.of(0, 1, 2), [
      { at: 0, error: 0.5 },
      { at: 2, error: 0.5 },
    ]);
    for (const j of [0, 1, 2]) expect(outcomes.reduce((all, one) => all + (one[j] ?? 0), 0)).toBeCloseTo(1, 12);
    expect(outcomes[0]?.[0]).toBeGreaterThan(0.99);
    expect(outcomes[0]?.[1]).toBeCloseTo(0.5, 12);
  });
});
