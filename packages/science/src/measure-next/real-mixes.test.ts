import { describe, expect, it } from 'vitest';
import { createDraws, permutation, positive, toLine } from '../estimate/index.ts';
import type { WeighedMix } from '../mix/mix-input.ts';
import { type MixInput, weighMix } from '../mix/mix-input.ts';
import { bestMeasurement } from './best-measurement.ts';
import { checksOf } from './checks.ts';
import { measureNextParameters } from './parameters.ts';
import { waysOf } from './ways.ts';
import { readingsIn, type Worth, worthOf } from './worth.ts';

const draws = createDraws();
const { shuffles } = measureNextParameters.method;

const barrows = (material: string, count: number) => ({ material, amount: { measure: 'barrow', count } });
const buckets = (material: string, count: number) => ({ material, amount: { measure: 'bucket-20l', count } });

const mixes: readonly MixInput[] = [
  ...[1, 4, 8].flatMap((straw) =>
    [1, 4, 10].map((grass) => ({ ingredients: [barrows('straw', straw), buckets('grass-clippings', grass)] })),
  ),
  bestMeasurement.example,
  ...[2, 5, 9].map((leaves) => ({
    ingredients: [barrows('autumn-leaves', leaves), buckets('kitchen-scraps', 4), buckets('coffee-grounds', 1)],
  })),
  ...[2, 5].map((chippings) => ({
    ingredients: [barrows('hedge-chippings', chippings), buckets('apple-pomace', 5), buckets('rabbit-droppings', 2)],
  })),
];

function weighed(input: MixInput): WeighedMix {
  const mix = weighMix(input, draws);
  if (!mix.ok) throw new RangeError(JSON.stringify(mix.problems));
  return mix.value;
}

/** Every check of every mix, with its worth; the readings dealt out at random by a seed where one is given. */
function worths(seed?: number): readonly Worth[] {
  return mixes.flatMap((input) => {
    const mix = weighed(input);
    const { losses, met } = waysOf(mix);
    const order = seed === undefined ? undefined : permutation(draws.count, seed);
    return checksOf(input, mix).map(({ outcomes }) => {
      const dealt = order === undefined ? outcomes : outcomes.map((one) => one.map((_, j) => one[order[j] ?? j] ?? 0));
      return worthOf(losses, dealt, met, shuffles.value);
    });
  });
}

const mean = (values: readonly number[]): number => values.reduce((all, one) => all + one, 0) / values.length;

describe('the worth of checks of real mixes', () => {
  it('is 0 on average where the readings tell nothing', () => {
    // Each of a thousand gains is off by a hundredth of a soft edge or so; their mean, as they share mixes, by a fifth of that.
    const gains = [1001, 1002, 1003, 1004, 1005, 1006, 1007, 1008].flatMap((seed) =>
      worths(seed).map(({ gain }) => gain),
    );
    expect(gains.length).toBeGreaterThan(800);
    expect(Math.abs(mean(gains))).toBeLessThan(0.002);
  });

  it('is below nothing by more than 1.645 of its errors one time in twenty at most', () => {
    const all = worths();
    const below = all.filter(({ gain, error }) => gain < -measureNextParameters.method.surely_errors.value * error);
    expect(below.length / all.length).toBeLessThanOrEqual(0.05);
  });

  it('is no more than that of knowing the same figure to a tenth of the error', () => {
    for (const input of mixes) {
      const mix = weighed(input);
      const { losses, met } = waysOf(mix);
      for (const { portions } of mix.ingredients) {
        const truths = Float64Array.from(portions, ({ wet_kg, volume_m3 }) => toLine(wet_kg / volume_m3, positive));
        const sorted = truths.toSorted();
        const error = Math.log(measureNextParameters.errors.chop_times.value);
        const read = (by: number): Worth =>
          worthOf(
            losses,
            readingsIn(
              truths,
              [0.1, 0.3, 0.5, 0.7, 0.9].map((share) => ({
                at: sorted[Math.floor(share * sorted.length)] ?? 0,
                error: error * by,
              })),
            ),
            met,
            shuffles.value,
          );
        const rough = read(1);
        const fine = read(0.1);
        expect(rough.gain).toBeLessThanOrEqual(fine.gain + rough.error + fine.error);
      }
    }
  });

  it('is no less for a count that is vaguer, of the same likely amount', () => {
    const counted = (p10: number, p90: number): number => {
      const outcome = bestMeasurement.run(
        {
          ingredients: [
            { material: 'grass-clippings', amount: { mass_kg: { p10, p50: 60, p90 } } },
            barrows('autumn-leaves', 3),
          ],
        },
        { draws },
      );
      if (!outcome.ok) throw new RangeError('an answer');
      return outcome.value.perfect_softEdges;
    };
    expect(counted(30, 120)).toBeGreaterThan(counted(50, 72));
  });
});
