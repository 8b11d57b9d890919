import fc from 'fast-check';
import { expect } from 'vitest';
import { bestMeasurement } from '../../measure-next/index.ts';
import { amountTimes, timesMore } from './amounts.ts';
import { expectNoLess, type LawsOf, law } from './law.ts';

const mixes = fc
  .tuple(fc.double({ min: 1, max: 8, noNaN: true }), fc.double({ min: 1, max: 12, noNaN: true }))
  .map(([straw, grass]) => ({
    ingredients: [
      { material: 'straw', amount: { measure: 'barrow', count: straw } },
      { material: 'grass-clippings', amount: { measure: 'bucket-20l', count: grass } },
    ],
  }));

/** A choice between two ways that cost the same but for the last digit may fall either way. */
const NEAR = 6;

export const measureLaws: Readonly<Record<string, LawsOf>> = {
  'best-measurement': {
    scale: law(bestMeasurement, {
      says: 'so many times the stuff asks for the same checks, worth as much, with so many times the water',
      cases: fc.tuple(mixes, timesMore),
      runs: 8,
      inputs: ([input, by]) => [
        input,
        { ...input, ingredients: input.ingredients.map((one) => ({ ...one, amount: amountTimes(one.amount, by) })) },
      ],
      expects: ([once, more], [, by]) => {
        expect(more?.asItStands.dry_times).toBeCloseTo(once?.asItStands.dry_times ?? Number.NaN, NEAR);
        expect((more?.asItStands.water_L ?? Number.NaN) / by).toBeCloseTo(once?.asItStands.water_L ?? Number.NaN, NEAR);
        expect(more?.perfect_softEdges).toBeCloseTo(once?.perfect_softEdges ?? Number.NaN, NEAR);
      },
    }),
    others: [
      law(bestMeasurement, {
        says: 'no check is worth more than knowing everything',
        cases: mixes,
        runs: 8,
        inputs: (input) => [input],
        expects: ([answer]) => {
          for (const { gain_softEdges } of [...(answer?.ask ?? []), ...(answer?.others ?? [])]) {
            expectNoLess(answer?.perfect_softEdges ?? Number.NaN, gain_softEdges, 'the worth of knowing everything');
          }
        },
      }),
    ],
  },
};
