import fc from 'fast-check';
import { type BuildUpInput, buildUp } from '../../bed/years/build-up.ts';
import { soilTextureIds } from '../../bed/years/carbon-parameters.ts';
import { soilCarbon } from '../../bed/years/soil-carbon.ts';
import type { SoilCarbonInput } from '../../bed/years/soil-carbon-io.ts';
import { expectNoLess, type LawsOf, law, scaleLaw } from './law.ts';

const stuffs = fc.constantFrom('finished-compost', 'goat-bedding', 'straw', 'charcoal', 'grass-clippings');
const plans = fc.array(
  fc.record({
    material: stuffs,
    amount: fc.record({ mass_kg: fc.double({ min: 0.5, max: 60, noNaN: true }) }),
  }),
  { minLength: 1, maxLength: 3 },
);

interface Weighed {
  readonly material: string;
  readonly amount: { readonly mass_kg: number };
}

interface Bed extends SoilCarbonInput {
  readonly plan: readonly Weighed[];
}

const beds: fc.Arbitrary<Bed> = fc.record({
  area_m2: fc.double({ min: 5, max: 50, noNaN: true }),
  plan: plans,
  depth_m: fc.double({ min: 0.1, max: 0.4, noNaN: true }),
  texture: fc.constantFrom(...soilTextureIds),
  organicMatter_pctDry: fc.double({ min: 0.5, max: 10, noNaN: true }),
  year_degC: fc.double({ min: 2, max: 25, noNaN: true }),
  years: fc.integer({ min: 1, max: 50 }),
});

interface Harvested extends BuildUpInput {
  readonly plan: readonly Weighed[];
  readonly crops: readonly { readonly crop: string; readonly area_m2: number }[];
}

const harvested: fc.Arbitrary<Harvested> = fc.record({
  area_m2: fc.double({ min: 5, max: 50, noNaN: true }),
  plan: plans,
  crops: fc.array(
    fc.record({
      crop: fc.constantFrom('kale', 'leek', 'potato', 'strawberry'),
      area_m2: fc.double({ min: 1, max: 20, noNaN: true }),
    }),
    { minLength: 1, maxLength: 3 },
  ),
  years: fc.integer({ min: 1, max: 20 }),
});

const times = (plan: readonly Weighed[], by: number): readonly Weighed[] =>
  plan.map((one) => ({ ...one, amount: { mass_kg: one.amount.mass_kg * by } }));

const p50 = (one: { readonly p50: number } | undefined): number => one?.p50 ?? Number.NaN;

export const yearsLaws: Readonly<Record<string, LawsOf>> = {
  'soil-carbon': {
    scale: scaleLaw(soilCarbon, {
      says: 'so large a bed under so much keeps so many times the carbon, and the same organic matter',
      cases: beds,
      times: (input, by) => ({ ...input, area_m2: input.area_m2 * by, plan: times(input.plan, by) }),
    }),
    others: [
      law(soilCarbon, {
        says: 'what is still there and what rotted are together what was brought on, and neither is below nothing',
        cases: beds,
        inputs: (input) => [input],
        expects: ([found]) => {
          expectNoLess(found?.kept_kg.p10 ?? Number.NaN, 0, 'kept');
          expectNoLess(found?.rotted_kg.p10 ?? Number.NaN, 0, 'rotted');
          expectNoLess(p50(found?.brought_kg), p50(found?.kept_kg), 'no more is kept than came');
          expectNoLess(found?.gain_pctDry.p10 ?? Number.NaN, 0, 'nothing brought on makes a bed poorer');
        },
      }),
      law(soilCarbon, {
        says: 'more of the same never means less organic matter',
        cases: fc.tuple(beds, fc.double({ min: 1, max: 3, noNaN: true })),
        inputs: ([input, by]) => [input, { ...input, plan: times(input.plan, by) }],
        expects: ([less, more]) => expectNoLess(p50(more?.end_pctDry), p50(less?.end_pctDry), 'organic matter'),
      }),
      law(soilCarbon, {
        says: 'a warmer place never keeps more of what is brought on',
        cases: fc.tuple(beds, fc.double({ min: 0, max: 10, noNaN: true })),
        inputs: ([input, more]) =>
          [0, more].map((warmer) => ({ ...input, year_degC: (input.year_degC ?? 0) + warmer })),
        expects: ([cool, warm]) => expectNoLess(p50(cool?.kept_kg), p50(warm?.kept_kg), 'kept'),
      }),
    ],
  },
  'build-up': {
    scale: scaleLaw(buildUp, {
      says: 'so large a bed with so much on it and so much harvested builds up so many times as much',
      cases: harvested,
      times: (input, by) => ({
        ...input,
        area_m2: input.area_m2 * by,
        plan: times(input.plan, by),
        crops: input.crops.map((one) => ({ ...one, area_m2: one.area_m2 * by })),
      }),
    }),
    others: [
      law(buildUp, {
        says: 'more brought on never builds up less, and twice the years build up twice as much',
        cases: fc.tuple(harvested, fc.double({ min: 1, max: 3, noNaN: true })),
        inputs: ([input, by]) => [
          input,
          { ...input, plan: times(input.plan, by) },
          { ...input, years: 2 * (input.years ?? 1) },
        ],
        expects: ([once, more, longer]) => {
          for (const element of ['phosphate', 'potash'] as const) {
            const net = p50(once?.[element].overYears_kg);
            expectNoLess(p50(more?.[element].overYears_kg), net, element);
            expectNoLess(p50(longer?.[element].overYears_kg) * Math.sign(net), 2 * Math.abs(net), element);
          }
        },
      }),
    ],
  },
};
