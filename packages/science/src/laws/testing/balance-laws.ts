import fc from 'fast-check';
import { expect } from 'vitest';
import { type BalanceRow, type HoldingBalanceInput, holdingBalance } from '../../bed/balance/holding-balance.ts';
import { droppings, dungAnimals } from '../../bed/droppings.ts';
import { createDraws } from '../../estimate/index.ts';
import { amountTimes } from './amounts.ts';
import { expectNoLess, type LawsOf, law, scaleLaw } from './law.ts';

const barrows = fc.integer({ min: 1, max: 20 });
const years: fc.Arbitrary<HoldingBalanceInput> = fc
  .record({
    bedding: barrows,
    grass: barrows,
    spread: barrows,
    manure: barrows,
    area_m2: fc.integer({ min: 2, max: 60 }),
  })
  .map(({ bedding, grass, spread, manure, area_m2 }) => ({
    heaped: [
      { material: 'goat-bedding', amount: { measure: 'barrow', count: bedding } },
      { material: 'grass-clippings', amount: { measure: 'barrow', count: grass } },
    ],
    spread: { measure: 'barrow', count: spread },
    straight: [{ material: 'hen-manure', amount: { measure: 'barrow', count: manure }, workedInAfter_days: 3 }],
    crops: [{ crop: 'kale', area_m2 }],
  }));

const ROUNDING = 1e-9;

function expectBalanced(row: BalanceRow): void {
  const middle = (of: keyof Omit<BalanceRow, 'id'>): number => row[of]?.p50 ?? 0;
  const heap = middle('heaped_kg') - middle('lostInHeap_kg') - middle('spread_kg') - middle('left_kg');
  const beds =
    middle('spread_kg') +
    middle('straight_kg') -
    middle('lostAtSpreading_kg') -
    middle('taken_kg') -
    middle('stays_kg');
  const scale = Math.max(1, middle('heaped_kg'), middle('straight_kg'));
  expect(Math.abs(heap) / scale, `${row.id} of the heap`).toBeLessThanOrEqual(ROUNDING);
  expect(Math.abs(beds) / scale, `${row.id} of the beds`).toBeLessThanOrEqual(ROUNDING);
}

export const balanceLaws: Readonly<Record<string, LawsOf>> = {
  droppings: {
    scale: scaleLaw(droppings, {
      says: 'so many times the animals leave so many times as much',
      cases: fc.record({
        animal: fc.constantFrom(...dungAnimals),
        count: fc.integer({ min: 1, max: 100 }),
        days: fc.integer({ min: 1, max: 365 }),
      }),
      times: (input, by) => ({ ...input, count: input.count * by }),
    }),
    others: [
      law(droppings, {
        says: 'storage never adds anything',
        cases: fc.constantFrom(...dungAnimals),
        inputs: (animal) => [{ animal, count: 3, days: 10 }],
        expects: ([found]) => {
          expectNoLess(found?.nitrogen_kg.p50 ?? Number.NaN, found?.keptNitrogen_kg.p50 ?? Number.NaN, 'nitrogen');
          expectNoLess(
            found?.phosphorus_kg.p50 ?? Number.NaN,
            found?.keptPhosphorus_kg.p50 ?? Number.NaN,
            'phosphorus',
          );
        },
      }),
    ],
  },
  'holding-balance': {
    scale: scaleLaw(holdingBalance, {
      says: 'so many times everything and so many times the beds move so many times as much',
      cases: years,
      times: (input, by) => ({
        ...input,
        heaped: input.heaped.map((one) => ({ ...one, amount: amountTimes(one.amount, by) })),
        spread: input.spread === undefined ? undefined : amountTimes(input.spread, by),
        straight: input.straight.map((one) => ({ ...one, amount: amountTimes(one.amount, by) })),
        crops: input.crops.map((one) => ({ ...one, area_m2: Number(one.area_m2) * by })),
      }),
    }),
    others: [
      law(holdingBalance, {
        says: 'nothing is lost from sight: in one draw, what goes in is what goes out and what is left, of every element',
        cases: years,
        inputs: (input) => [input],
        expects: (_answers, input) => {
          // Middles of many draws don't add up; those of one draw do.
          const one = holdingBalance.run(input, { draws: createDraws(1) });
          if (!one.ok) throw new RangeError('a year has an answer');
          for (const row of one.value.rows) expectBalanced(row);
        },
      }),
      law(holdingBalance, {
        says: 'what is worked in later never loses less nitrogen',
        cases: fc.tuple(years, fc.integer({ min: 0, max: 4 }), fc.integer({ min: 0, max: 4 })),
        inputs: ([input, days, more]) =>
          [days, days + more].map((workedInAfter_days) => ({
            ...input,
            straight: input.straight.map((one) => ({ ...one, workedInAfter_days })),
          })),
        expects: ([soon, late]) => {
          const lost = (answer: typeof soon): number =>
            answer?.leaks.find(({ leak }) => leak === 'spreading')?.nitrogen_kg.p50 ?? Number.NaN;
          expectNoLess(lost(late), lost(soon), 'nitrogen lost');
        },
      }),
    ],
  },
};
