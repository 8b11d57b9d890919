import fc from 'fast-check';
import { availableNitrogen } from '../../bed/available-nitrogen.ts';
import type { AvailableNitrogenInput } from '../../bed/available-nitrogen-io.ts';
import { bedBudget } from '../../bed/bed-budget.ts';
import type { BedBudgetInput } from '../../bed/bed-budget-io.ts';
import { allCrops } from '../../bed/crops.ts';
import { allMaterials } from '../../material/index.ts';
import { expectNoLess, type LawsOf, law, scaleLaw } from './law.ts';

const stuffs = fc.constantFrom(
  ...allMaterials.filter(({ permit, id }) => permit === 'allowed' && id !== 'water').map(({ id }) => id),
);
const places = fc.constantFrom('dug-in' as const, 'mulched' as const);
const days = fc.constantFrom(0, 1, 3, 5, 20);

interface Weighed extends AvailableNitrogenInput {
  readonly amount: { readonly mass_kg: number };
}

const dressings: fc.Arbitrary<Weighed> = fc
  .record({
    material: stuffs,
    mass_kg: fc.double({ min: 0.5, max: 2000, noNaN: true }),
    placed: places,
    workedInAfter_days: days,
  })
  .map(({ mass_kg, ...rest }) => ({ ...rest, amount: { mass_kg } }));

const composts = fc.constantFrom(
  'finished-compost',
  'goat-bedding',
  'hen-manure',
  'grass-clippings',
  'straw',
  'hedge-chippings',
);
const nitrogens = fc.double({ min: 0.4, max: 4, noNaN: true });

const crops = fc.constantFrom(
  ...allCrops.filter(({ nitrogen_kgPerHa }) => nitrogen_kgPerHa !== undefined).map(({ id }) => id),
);
const classes = fc.constantFrom(
  'low' as const,
  'medium' as const,
  'optimum' as const,
  'high' as const,
  'excessive' as const,
);

interface Bed extends BedBudgetInput {
  readonly crops: readonly { readonly crop: string; readonly area_m2: number }[];
  readonly put: readonly {
    readonly material: string;
    readonly amount: { readonly mass_kg: number };
    readonly seasonsAgo: number;
  }[];
}

const beds: fc.Arbitrary<Bed> = fc.record({
  crops: fc.array(fc.record({ crop: crops, area_m2: fc.double({ min: 1, max: 100, noNaN: true }) }), {
    minLength: 1,
    maxLength: 4,
  }),
  put: fc.array(
    fc.record({
      material: stuffs,
      amount: fc.record({ mass_kg: fc.double({ min: 0.5, max: 40, noNaN: true }) }),
      seasonsAgo: fc.integer({ min: 0, max: 3 }),
    }),
    { maxLength: 3 },
  ),
  soilTest: fc.record({ phosphorusClass: classes, potassiumClass: classes }),
});

const order = ['excessive', 'high', 'optimum', 'medium', 'low'] as const;

export const bedLaws: Readonly<Record<string, LawsOf>> = {
  'available-nitrogen': {
    scale: scaleLaw(availableNitrogen, {
      says: 'so many times the stuff lets go so many times as much, and the same share of it',
      cases: dressings,
      times: (input, by) => ({ ...input, amount: { mass_kg: input.amount.mass_kg * by } }),
      aside: ['bySource'],
    }),
    others: [
      law(availableNitrogen, {
        says: 'all years together, what is lost and what stays bound are never more than the nitrogen put on',
        cases: dressings,
        inputs: (input) => [input],
        expects: ([answer]) => {
          if (answer === undefined) throw new RangeError('an answer');
          const { nitrogen_kg, year1_kg, year2_kg, year3_kg, lost_kg, bound_kg } = answer;
          for (const part of [year2_kg, year3_kg, lost_kg, bound_kg]) expectNoLess(part.p10, 0, 'a part');
          // Each percentile of a sum of parts that move together is at most the sum's; the whole bounds every part.
          for (const part of [year1_kg, year2_kg, year3_kg, lost_kg, bound_kg]) {
            expectNoLess(nitrogen_kg.p50, part.p50, 'the whole');
            expectNoLess(nitrogen_kg.p90, part.p90, 'the whole');
          }
        },
      }),
      law(availableNitrogen, {
        says: 'more nitrogen with the same carbon never makes the likely release less',
        cases: fc.tuple(composts, nitrogens, fc.double({ min: 0, max: 2, noNaN: true })),
        inputs: ([material, nitrogen, more]) =>
          [nitrogen, nitrogen + more].map((nitrogen_pctDry) => ({
            material,
            amount: { mass_kg: 100 },
            described: { moisture_pctWet: 50, volatileSolids_pctDry: 72, nitrogen_pctDry },
          })),
        expects: ([poor, rich]) => {
          expectNoLess(rich?.year1_kg.p50 ?? Number.NaN, poor?.year1_kg.p50 ?? Number.NaN, 'year 1');
          expectNoLess(rich?.year2_kg.p50 ?? Number.NaN, poor?.year2_kg.p50 ?? Number.NaN, 'year 2');
        },
      }),
      law(availableNitrogen, {
        says: 'fresh manure worked in later never loses less ammonium',
        cases: fc.tuple(fc.constantFrom('hen-manure', 'cattle-manure', 'pig-manure', 'goat-bedding'), days, days),
        inputs: ([material, a, b]) =>
          [Math.min(a, b), Math.max(a, b)].map((workedInAfter_days) => ({
            material,
            amount: { mass_kg: 50 },
            workedInAfter_days,
          })),
        expects: ([sooner, later]) => {
          expectNoLess(later?.lost_kg.p50 ?? Number.NaN, sooner?.lost_kg.p50 ?? Number.NaN, 'ammonium lost');
        },
      }),
      law(availableNitrogen, {
        says: 'a warmer season never lets go less of a compost that locks nothing up',
        cases: fc.tuple(fc.double({ min: 5, max: 20, noNaN: true }), fc.double({ min: 0, max: 15, noNaN: true })),
        inputs: ([soil, more]) =>
          [soil, soil + more].map((soil_degC) => ({
            material: 'finished-compost',
            amount: { mass_kg: 100 },
            described: { carbonToNitrogen_ratio: 12 },
            warmth: { soil_degC, season_days: 150 },
          })),
        expects: ([cooler, warmer]) => {
          expectNoLess(warmer?.year1_kg.p50 ?? Number.NaN, cooler?.year1_kg.p50 ?? Number.NaN, 'year 1');
        },
      }),
    ],
  },
  'bed-budget': {
    scale: scaleLaw(bedBudget, {
      says: 'so large a bed with so much put on wants, has and lacks so many times as much, and the same on each square metre',
      cases: beds,
      times: (input, by) => ({
        ...input,
        crops: input.crops.map((crop) => ({ ...crop, area_m2: crop.area_m2 * by })),
        put: input.put.map((one) => ({ ...one, amount: { mass_kg: one.amount.mass_kg * by } })),
      }),
      alsoAmounts: ['area_m2'],
    }),
    others: [
      law(bedBudget, {
        says: 'nothing is short or too much by less than nothing, and no more is short than is wanted unless the soil is robbed',
        cases: beds,
        inputs: (input) => [input],
        expects: ([answer]) => {
          for (const { need_kg, short_kg, over_kg, supplied_kg } of Object.values(answer?.elements ?? {})) {
            expectNoLess(short_kg.p10, 0, 'short');
            expectNoLess(over_kg.p10, 0, 'over');
            if (supplied_kg.p10 >= 0) expectNoLess(need_kg.p90, short_kg.p90, 'no more is short than is wanted');
          }
        },
      }),
      law(bedBudget, {
        says: 'more of a finished compost never makes less phosphorus or potassium, nor less salt',
        cases: fc.tuple(beds, fc.double({ min: 1, max: 50, noNaN: true }), fc.double({ min: 0, max: 50, noNaN: true })),
        inputs: ([input, mass_kg, more]) =>
          [mass_kg, mass_kg + more].map((kg) => ({
            ...input,
            put: [{ material: 'finished-compost', amount: { mass_kg: kg } }],
            soilTest: { conductivity_dSPerM: 0.2 },
          })),
        expects: ([less, more]) => {
          if (less === undefined || more === undefined) throw new RangeError('two answers');
          for (const id of ['phosphate', 'potash'] as const) {
            expectNoLess(more.elements[id].supplied_kg.p50, less.elements[id].supplied_kg.p50, id);
            expectNoLess(less.elements[id].short_kg.p50, more.elements[id].short_kg.p50, `${id} short`);
          }
          expectNoLess(more.salts.conductivity_dSPerM.p50, less.salts.conductivity_dSPerM.p50, 'salts');
        },
      }),
      law(bedBudget, {
        says: 'a soil that tests richer never wants more phosphorus or potassium',
        cases: fc.tuple(beds, fc.integer({ min: 0, max: 3 })),
        inputs: ([input, at]) =>
          [order[at], order[at + 1]].map((told) => ({
            ...input,
            soilTest: { phosphorusClass: told, potassiumClass: told },
          })),
        expects: ([richer, poorer]) => {
          for (const id of ['phosphate', 'potash'] as const) {
            expectNoLess(
              poorer?.elements[id].need_kg.p50 ?? Number.NaN,
              richer?.elements[id].need_kg.p50 ?? Number.NaN,
              id,
            );
          }
        },
      }),
    ],
  },
};
