import fc from 'fast-check';
import { expect } from 'vitest';
import { curingCheck } from '../../curing/curing-check.ts';
import { siftingTime } from '../../curing/sifting-time.ts';
import { yieldEstimate } from '../../curing/yield-estimate.ts';
import type { YieldInput } from '../../curing/yield-io.ts';
import { mixBalance } from '../../mix/mix-balance.ts';
import { amountTimes } from './amounts.ts';
import { expectNoLess, type LawsOf, law, scaleLaw } from './law.ts';

const barrows = fc.integer({ min: 1, max: 8 });
const heaps: fc.Arbitrary<YieldInput> = fc
  .record({
    straw: barrows,
    bedding: barrows,
    grass: barrows,
    shelter: fc.constantFrom('sheltered', 'open', 'unknown'),
  })
  .map(({ straw, bedding, grass, shelter }) => ({
    ingredients: [
      { material: 'straw', amount: { measure: 'barrow', count: straw } },
      { material: 'goat-bedding', amount: { measure: 'barrow', count: bedding } },
      { material: 'grass-clippings', amount: { measure: 'barrow', count: grass } },
    ],
    shelter,
  }));

const order = ['very-mature', 'mature', 'immature'];

export const curingLaws: Readonly<Record<string, LawsOf>> = {
  'sifting-time': {
    scale: scaleLaw(siftingTime, {
      says: 'so many times the compost takes so many times the hours',
      cases: fc.record({ volume_m3: fc.double({ min: 0.1, max: 100, noNaN: true }) }),
      times: (input, by) => ({ volume_m3: Number(input.volume_m3) * by }),
      alsoAmounts: ['handSieve_h', 'slopedScreen_h'],
    }),
    others: [
      law(siftingTime, {
        says: 'more to sift never takes less time',
        cases: fc.tuple(fc.double({ min: 0.1, max: 100, noNaN: true }), fc.double({ min: 0, max: 100, noNaN: true })),
        inputs: ([volume_m3, more]) => [{ volume_m3 }, { volume_m3: volume_m3 + more }],
        expects: ([less, greater]) =>
          expectNoLess(greater?.handSieve_h.p50 ?? Number.NaN, less?.handSieve_h.p50 ?? Number.NaN, 'hours'),
      }),
    ],
  },
  'yield-estimate': {
    scale: scaleLaw(yieldEstimate, {
      says: 'so many times everything that went in leaves so many times as much of the same compost',
      cases: heaps,
      times: (input, by) => ({
        ...input,
        ingredients: (input.ingredients ?? []).map((one) => ({ ...one, amount: amountTimes(one.amount, by) })),
      }),
      alsoAmounts: ['count'],
    }),
    others: [
      law(yieldEstimate, {
        says: 'more ash in the compost never means more of it',
        cases: fc.tuple(
          heaps,
          fc.double({ min: 25, max: 60, noNaN: true }),
          fc.double({ min: 0, max: 30, noNaN: true }),
        ),
        inputs: ([heap, ash, more]) => [ash, ash + more].map((readyAsh_pctDry) => ({ ...heap, readyAsh_pctDry })),
        expects: ([less, more]) => {
          expectNoLess(less?.dry_kg.p50 ?? Number.NaN, more?.dry_kg.p50 ?? Number.NaN, 'dry mass');
        },
      }),
      law(yieldEstimate, {
        says: 'phosphorus stays, and nothing comes out that did not go in',
        cases: heaps,
        inputs: (heap) => [heap],
        expects: ([found], heap, needs) => {
          const before = mixBalance.run({ ingredients: heap.ingredients ?? [] }, needs);
          if (!before.ok || found === undefined) throw new RangeError('the mix has an answer');
          expect(found.phosphorus_kg).toEqual(before.value.phosphorus_kg);
          for (const of of ['dry_kg', 'nitrogen_kg', 'potassium_kg'] as const) {
            expectNoLess(before.value[of].p90, found[of].p90, of);
            expectNoLess(before.value[of].p10, found[of].p10, of);
          }
        },
      }),
      law(yieldEstimate, {
        says: 'past heaps that kept more never make it less',
        cases: fc.tuple(fc.double({ min: 0.3, max: 0.45, noNaN: true }), fc.double({ min: 0, max: 0.1, noNaN: true })),
        inputs: ([kept, more]) =>
          [kept, kept + more].map((ready_m3) => ({ built_m3: 1, pastHeaps: [{ built_m3: 1, ready_m3 }] })),
        expects: ([less, more]) => {
          expectNoLess(more?.volume_m3.p50 ?? Number.NaN, less?.volume_m3.p50 ?? Number.NaN, 'volume');
        },
      }),
    ],
  },
  'curing-check': {
    scale: 'no scale law because a class is no amount',
    others: [
      law(curingCheck, {
        says: 'a flask that heats more never reads riper',
        cases: fc.tuple(fc.double({ min: 0, max: 50, noNaN: true }), fc.double({ min: 0, max: 10, noNaN: true })),
        inputs: ([rise, more]) =>
          [rise, rise + more].map((selfHeating_K) => ({
            measured: { selfHeating_K, emergence_pctControl: 95, carbonToNitrogen_ratio: 15 },
          })),
        expects: ([cool, hot]) => {
          expectNoLess(order.indexOf(hot?.california ?? ''), order.indexOf(cool?.california ?? ''), 'rating');
        },
      }),
      law(curingCheck, {
        says: 'more seedlings never read less ripe',
        cases: fc.tuple(fc.double({ min: 0, max: 100, noNaN: true }), fc.double({ min: 0, max: 50, noNaN: true })),
        inputs: ([came, more]) =>
          [came, came + more].map((emergence_pctControl) => ({
            measured: { selfHeating_K: 5, emergence_pctControl, carbonToNitrogen_ratio: 15 },
          })),
        expects: ([few, many]) => {
          expectNoLess(order.indexOf(few?.california ?? ''), order.indexOf(many?.california ?? ''), 'rating');
        },
      }),
    ],
  },
};
