import fc from 'fast-check';
import { expect } from 'vitest';
import { buildCard } from '../../mix/build-card.ts';
import { mixBalance } from '../../mix/mix-balance.ts';
import { mixSolve } from '../../mix/mix-solve.ts';
import { nitrogenToReach } from '../../mix/nitrogen-to-reach.ts';
import { mixInputs } from '../../mix/testing/arbitrary.ts';
import { waterToAdd } from '../../mix/water-to-add.ts';
import { exactStuff, mixTimes, timesMore } from './amounts.ts';
import { expectNoLess, type LawsOf, law, RUNS_OF_A_SOLVER, scaleLaw } from './law.ts';

const litres = fc.double({ min: 0, max: 200, noNaN: true });
const kilograms = fc.double({ min: 1, max: 200, noNaN: true });
const moistures = fc.double({ min: 10, max: 85, noNaN: true });
const points = fc.double({ min: 0, max: 10, noNaN: true });
const counts = fc.integer({ min: 1, max: 8 });
const bay = { width_m: 1, depth_m: 1, height_m: 1.2 };
/** Above the C:N of any mix that is tried with it. */
const VERY_RICH_IN_CARBON = 500;

/** What is said of a mix hangs on its size; how salty it is, and what it is called, does not change. */
const ofSize = ['warnings', 'notes', 'cautions'];

const stocks = fc.record({ straw: counts, leaves: counts, grounds: counts, bedding: counts }).map((each) => [
  { material: 'straw', amount: { measure: 'barrow', count: each.straw } },
  { material: 'autumn-leaves', amount: { measure: 'barrow', count: each.leaves } },
  { material: 'coffee-grounds', amount: { measure: 'bucket-20l', count: each.grounds } },
  { material: 'goat-bedding', amount: { measure: 'barrow', count: each.bedding } },
]);

const cards = fc.tuple(stocks, fc.integer({ min: 0, max: 60 })).map(([stock, water_L]) => ({
  mix: stock.map(({ material, amount }) => ({ material, ...amount })),
  water_L,
  bay,
}));

export const mixLaws: Readonly<Record<string, LawsOf>> = {
  'mix-balance': {
    scale: scaleLaw(mixBalance, {
      says: 'so many times everything in the mix, water too: amounts so many times over, ratios and shares the same, and as many times as high in the same bay',
      cases: mixInputs.map((input) => ({ ...input, bay })),
      times: mixTimes,
      alsoAmounts: ['height_m'],
      aside: ofSize,
    }),
    others: [
      law(mixBalance, {
        says: 'more water poured on is never a drier mix, nor one with more air',
        cases: fc.tuple(mixInputs, litres),
        inputs: ([input, more]) => [input, { ...input, water_L: Number(input.water_L ?? 0) + more }],
        expects: ([before, after]) => {
          if (before === undefined || after === undefined) throw new RangeError('two answers');
          expectNoLess(after.moisture_pctWet.value.p50, before.moisture_pctWet.value.p50, 'moisture');
          expectNoLess(before.freeAirSpace_pctVolume.value.p50, after.freeAirSpace_pctVolume.value.p50, 'air');
        },
      }),
      law(mixBalance, {
        says: 'a wetter ingredient of the same weight is never a drier mix',
        cases: fc.tuple(mixInputs, kilograms, moistures, points),
        inputs: ([input, mass_kg, moisture_pctWet, more]) =>
          [moisture_pctWet, moisture_pctWet + more].map((wet) => ({
            ...input,
            ingredients: [...input.ingredients, exactStuff('hay-grass', mass_kg, { moisture_pctWet: wet })],
          })),
        expects: ([drier, wetter]) => {
          expectNoLess(
            wetter?.moisture_pctWet.value.p50 ?? Number.NaN,
            drier?.moisture_pctWet.value.p50 ?? Number.NaN,
            'moisture',
          );
        },
      }),
      law(mixBalance, {
        says: 'more of stuff richer in carbon than the mix (C:N 500, the mix well below) never lowers the C:N',
        cases: fc.tuple(mixInputs, kilograms, timesMore),
        inputs: ([input, mass_kg, by]) =>
          [mass_kg, mass_kg * by].map((kg) => ({
            ...input,
            ingredients: [
              ...input.ingredients.filter(({ material }) => material !== 'sawdust'),
              exactStuff('sawdust', kg, { moisture_pctWet: 30, carbonToNitrogen_ratio: VERY_RICH_IN_CARBON }),
            ],
          })),
        expects: ([less, more]) => {
          const before = less?.carbonToNitrogen_ratio?.value.p50;
          const after = more?.carbonToNitrogen_ratio?.value.p50;
          if (before === undefined || after === undefined || before >= VERY_RICH_IN_CARBON) return;
          expectNoLess(after, before, 'C:N');
        },
      }),
      law(mixBalance, {
        says: 'the order in which ingredients are named changes no figure of the whole',
        cases: mixInputs,
        inputs: (input) => [input, { ...input, ingredients: [...input.ingredients].reverse() }],
        expects: ([one, other]) => {
          expect(other?.moisture_pctWet.value.p50).toBeCloseTo(one?.moisture_pctWet.value.p50 ?? Number.NaN, 9);
          expect(other?.wet_kg.p50).toBeCloseTo(one?.wet_kg.p50 ?? Number.NaN, 6);
          expect(other?.nitrogen_kg.p50).toBeCloseTo(one?.nitrogen_kg.p50 ?? Number.NaN, 6);
        },
      }),
    ],
  },
  'water-to-add': {
    scale: scaleLaw(waterToAdd, {
      says: 'so many times everything in the mix: so many times the water, the room for it and the dry stuff, at the same moisture',
      cases: mixInputs,
      times: mixTimes,
      alsoAmounts: ['count'],
      aside: ['cautions'],
    }),
    others: [
      law(waterToAdd, {
        says: 'a wetter goal never asks for less water',
        cases: fc.tuple(mixInputs, fc.double({ min: 25, max: 70, noNaN: true }), points),
        inputs: ([input, goal_pctWet, more]) => [
          { ...input, goal_pctWet },
          { ...input, goal_pctWet: goal_pctWet + more },
        ],
        expects: ([less, more]) => {
          expectNoLess(more?.water_L.p50 ?? Number.NaN, less?.water_L.p50 ?? Number.NaN, 'water');
        },
      }),
      law(waterToAdd, {
        says: 'with the water it asks for poured on, the mix is at its goal (stuff that is known exactly, and drier than that)',
        cases: fc.tuple(kilograms, fc.double({ min: 20, max: 50, noNaN: true }), points),
        inputs: ([mass_kg, moisture_pctWet, above]) => [
          {
            ingredients: [exactStuff('straw', mass_kg, { moisture_pctWet })],
            goal_pctWet: moisture_pctWet + 3 + above,
          },
        ],
        expects: ([asked], [mass_kg, moisture_pctWet, above], needs) => {
          const ingredients = [exactStuff('straw', mass_kg, { moisture_pctWet })];
          const poured = mixBalance.run({ ingredients, water_L: asked?.water_L.p50 ?? 0 }, needs);
          if (!poured.ok) throw new RangeError('what could be wetted is a mix');
          expect(poured.value.moisture_pctWet.value.p50).toBeCloseTo(moisture_pctWet + 3 + above, 9);
        },
      }),
    ],
  },
  'mix-solve': {
    scale: 'no scale law because measures come whole: twice the stock may be laid out another way',
    others: [
      law(mixSolve, {
        says: 'nothing is used twice or out of nowhere, what is kept back and what there is of water are kept to',
        cases: fc.tuple(stocks, fc.integer({ min: 0, max: 2 }), fc.integer({ min: 0, max: 30 })),
        inputs: ([stock, keepBack, mostWater_L]) => [
          {
            stock: stock.map((line, i) => (i === 0 ? { ...line, keepBack } : line)),
            mostWater_L,
            alternatives: false,
            mend: false,
            bay,
          },
        ],
        expects: ([solution], [stock, keepBack, mostWater_L]) => {
          expectNoLess(mostWater_L, solution?.water_L ?? Number.NaN, 'water');
          for (const { stock: i, count, left } of solution?.use ?? []) {
            const there = stock[i]?.amount.count ?? Number.NaN;
            expect(count + left).toBeCloseTo(there, 9);
            expectNoLess(there - (i === 0 ? Math.min(keepBack, there) : 0), count, 'what may go in');
          }
        },
        runs: RUNS_OF_A_SOLVER,
      }),
    ],
  },
  'build-card': {
    scale: law(buildCard, {
      says: 'so many times the floor of the bay: the same stuff lies as many times as low',
      cases: fc.tuple(cards, fc.double({ min: 1, max: 3, noNaN: true })),
      inputs: ([card, by]) => [card, { ...card, bay: { ...bay, width_m: by * bay.width_m } }],
      expects: ([narrow, wide], [, by]) => {
        expect(wide?.height_m.p50).toBeCloseTo((narrow?.height_m.p50 ?? Number.NaN) / by, 9);
      },
    }),
    others: [
      law(buildCard, {
        says: 'every measure of the mix and every litre lies in some layer, and each layer lies on the one below it',
        cases: cards,
        inputs: (card) => [card],
        expects: ([answer], { mix, water_L }) => {
          const layers = answer?.layers ?? [];
          const sum = (numbers: readonly number[]): number => numbers.reduce((all, one) => all + one, 0);
          mix.forEach(({ count }, line) => {
            const laid = layers.flatMap(({ parts }) => parts.filter((part) => part.line === line));
            expect(sum(laid.map((part) => part.count))).toBeCloseTo(count, 9);
          });
          expect(sum(layers.map((layer) => layer.water_L))).toBeCloseTo(water_L, 9);
          layers.slice(1).forEach((layer, i) => {
            const below = layers[i];
            expect(layer.bottom_m).toBeCloseTo((below?.bottom_m ?? 0) + (below?.height_m ?? Number.NaN), 9);
          });
        },
      }),
    ],
  },
  'nitrogen-to-reach': {
    scale: scaleLaw(nitrogenToReach, {
      says: 'so many times everything in the mix: so many times the nitrogen, in as many draws',
      cases: mixInputs.map((input) => ({ ...input, goal_ratio: 25 })),
      times: mixTimes,
      aside: ['cautions'],
    }),
    others: [
      law(nitrogenToReach, {
        says: 'a lower C:N to reach never asks for less nitrogen',
        cases: fc.tuple(mixInputs, fc.double({ min: 10, max: 60, noNaN: true }), timesMore),
        inputs: ([input, goal_ratio, by]) => [
          { ...input, goal_ratio },
          { ...input, goal_ratio: Math.min(200, goal_ratio * by) },
        ],
        expects: ([low, high]) => {
          expectNoLess(low?.nitrogen_kg.p50 ?? Number.NaN, high?.nitrogen_kg.p50 ?? Number.NaN, 'nitrogen');
        },
      }),
      law(nitrogenToReach, {
        says: 'with the nitrogen it asks for, the C:N is the one to reach (stuff that is known exactly, and above that)',
        cases: fc.tuple(kilograms, fc.double({ min: 40, max: 400, noNaN: true })),
        inputs: ([mass_kg, carbonToNitrogen_ratio]) => [
          {
            ingredients: [exactStuff('wood-chips', mass_kg, { moisture_pctWet: 40, carbonToNitrogen_ratio })],
            goal_ratio: 30,
          },
        ],
        expects: ([asked], [mass_kg, carbonToNitrogen_ratio], needs) => {
          const ingredients = [exactStuff('wood-chips', mass_kg, { moisture_pctWet: 40, carbonToNitrogen_ratio })];
          const mix = mixBalance.run({ ingredients }, needs);
          if (!mix.ok) throw new RangeError('what lacks nitrogen is a mix');
          const { carbon_kg, nitrogen_kg } = mix.value;
          expect(carbon_kg.p50 / (nitrogen_kg.p50 + (asked?.nitrogen_kg.p50 ?? 0))).toBeCloseTo(30, 6);
        },
      }),
    ],
  },
};
