import fc from 'fast-check';
import { expect } from 'vitest';
import { classIds } from '../../bed/budget-parameters.ts';
import { charBlend } from '../../bed/char/char-blend.ts';
import { charSoils } from '../../bed/char/parameters.ts';
import { limeRate, limeStuffs, textureIds } from '../../bed/lime-rate.ts';
import { shareOut } from '../../bed/share-out.ts';
import { soilMethods, soilTestRead } from '../../bed/soil-test.ts';
import { soilWater } from '../../bed/soil-water.ts';
import { spreadDepth } from '../../bed/spread-depth.ts';
import { spreadRate } from '../../bed/spread-rate.ts';
import type { SpreadRateInput } from '../../bed/spread-rate-io.ts';
import { expectNoLess, type LawsOf, law, RUNS_OF_A_SOLVER, scaleLaw } from './law.ts';

const classes = ['low', 'medium', 'optimum', 'high', 'excessive'] as const;

const beds: fc.Arbitrary<SpreadRateInput> = fc
  .record({
    crop: fc.constantFrom('kale', 'leek', 'carrot', 'tomato'),
    area_m2: fc.double({ min: 4, max: 60, noNaN: true }),
    products: fc.subarray(['finished-compost', 'hen-manure', 'grass-clippings', 'goat-bedding'], { minLength: 1 }),
    phosphorusClass: fc.constantFrom(...classes),
  })
  .map(({ crop, area_m2, products, phosphorusClass }) => ({
    crops: [{ crop, area_m2 }],
    products: products.map((material) => ({ material, measure: 'bucket-20l' })),
    soilTest: { phosphorusClass },
  }));

export const spreadLaws: Readonly<Record<string, LawsOf>> = {
  'spread-rate': {
    scale: 'no scale law because what goes on is told in whole halves of a measure',
    others: [
      law(spreadRate, {
        says: 'soil with more phosphorus never gets more of it',
        runs: RUNS_OF_A_SOLVER,
        cases: beds,
        inputs: (input) => classes.map((phosphorusClass) => ({ ...input, soilTest: { phosphorusClass } })),
        expects: (answers) => {
          const laid = answers.map(({ after }) =>
            after.supplied.reduce((sum, { allPhosphate_kg }) => sum + (allPhosphate_kg?.p50 ?? 0), 0),
          );
          // Low and medium have no limit, optimum and high one harvest.
          const [low = 0, , optimum = 0, , excessive = 0] = laid;
          expectNoLess(low, optimum, 'phosphorus');
          expectNoLess(optimum, excessive, 'phosphorus');
          expect(excessive).toBe(0);
        },
      }),
      law(spreadRate, {
        says: 'more on hand never leaves more nitrogen short, but for half a measure',
        runs: RUNS_OF_A_SOLVER,
        cases: fc.tuple(beds, fc.integer({ min: 1, max: 20 })),
        inputs: ([input, count]) =>
          [count, count + 5].map((there) => ({
            ...input,
            products: input.products.map((one) => ({ ...one, onHand: { measure: 'bucket-20l', count: there } })),
          })),
        expects: ([less, more]) => {
          expectNoLess((less?.short_kg.p50 ?? Number.NaN) + HALF_BUCKET_KG, more?.short_kg.p50 ?? Number.NaN, 'short');
        },
      }),
    ],
  },
  'spread-depth': {
    scale: scaleLaw(spreadDepth, {
      says: 'so many times the area takes so many times as much, with the same on each hectare',
      cases: fc.record({
        material: fc.constantFrom('finished-compost', 'leaf-mould', 'goat-bedding'),
        area_m2: fc.double({ min: 1, max: 500, noNaN: true }),
        depth_m: fc.double({ min: 0.002, max: 0.3, noNaN: true }),
      }),
      times: (input, by) => ({ ...input, area_m2: Number(input.area_m2) * by }),
      alsoAmounts: ['count'],
    }),
    others: [
      law(spreadDepth, {
        says: 'a deeper layer never brings less phosphorus',
        cases: fc.tuple(fc.double({ min: 0.002, max: 0.3, noNaN: true }), fc.double({ min: 0, max: 0.3, noNaN: true })),
        inputs: ([depth_m, more]) =>
          [depth_m, depth_m + more].map((deep) => ({ material: 'finished-compost', area_m2: 10, depth_m: deep })),
        expects: ([shallow, deep]) => {
          expectNoLess(deep?.phosphorus_years.p50 ?? Number.NaN, shallow?.phosphorus_years.p50 ?? Number.NaN, 'years');
        },
      }),
    ],
  },
  'soil-test-read': {
    scale: 'no scale law because a class is no amount',
    others: [
      law(soilTestRead, {
        says: 'more of it in the soil never reads as a lower class',
        cases: fc.tuple(
          fc.constantFrom(...soilMethods),
          fc.double({ min: 0, max: 1000, noNaN: true }),
          fc.double({ min: 0, max: 1000, noNaN: true }),
          fc.constantFrom('phosphorus' as const, 'potassium' as const),
        ),
        inputs: ([method, value, more, element]) =>
          [value, value + more].map((figure) => ({
            figures: [{ element, value: figure, unit: 'ppm' as const, method }],
          })),
        expects: ([less, greater]) => {
          const grade = (answer: typeof less): number => classIds.indexOf(answer?.figures[0]?.taken ?? 'low');
          expectNoLess(grade(greater), grade(less), 'class');
        },
      }),
    ],
  },
  'char-blend': {
    scale: scaleLaw(charBlend, {
      says: 'so many times the bed and the charcoal is as much on each square metre, and takes so many times the charge',
      cases: fc.record({
        charcoal_L: fc.double({ min: 1, max: 1000, noNaN: true }),
        bed: fc.record({ area_m2: fc.double({ min: 1, max: 100, noNaN: true }) }),
        soil: fc.constantFrom(...charSoils),
      }),
      times: (input, by) => ({
        ...input,
        charcoal_L: Number(input.charcoal_L) * by,
        ...(input.bed !== undefined && { bed: { ...input.bed, area_m2: input.bed.area_m2 * by } }),
      }),
    }),
    others: [
      law(charBlend, {
        says: 'more charcoal on a bed is never less on a hectare nor less to charge, and never falls back below the trials',
        cases: fc.tuple(
          fc.double({ min: 1, max: 1000, noNaN: true }),
          fc.double({ min: 0, max: 1000, noNaN: true }),
          fc.double({ min: 1, max: 30, noNaN: true }),
        ),
        inputs: ([charcoal_L, more, area_m2]) =>
          [charcoal_L, charcoal_L + more].map((litres) => ({ charcoal_L: litres, bed: { area_m2 } })),
        expects: ([less, greater]) => {
          const order = ['below', 'within', 'above'];
          const nan = Number.NaN;
          expectNoLess(greater?.dose.rate_tPerHa?.p50 ?? nan, less?.dose.rate_tPerHa?.p50 ?? nan, 'rate');
          expectNoLess(greater?.charge.urine_L.p50 ?? nan, less?.charge.urine_L.p50 ?? nan, 'urine');
          expectNoLess(order.indexOf(greater?.stands ?? ''), order.indexOf(less?.stands ?? ''), 'stands');
        },
      }),
    ],
  },
  'lime-rate': {
    scale: scaleLaw(limeRate, {
      says: 'so many times the area wants so many times as much, as much on each square metre',
      cases: fc.record({
        pH: fc.double({ min: 4, max: 8, noNaN: true }),
        stuff: fc.constantFrom(...limeStuffs),
        texture: fc.constantFrom(...textureIds),
        area_m2: fc.double({ min: 1, max: 100, noNaN: true }),
      }),
      times: (input, by) => ({ ...input, area_m2: input.area_m2 * by }),
    }),
    others: [
      law(limeRate, {
        says: 'a sourer soil of the same texture never wants less, and ash never passes its ceiling',
        cases: fc.tuple(
          fc.double({ min: 3, max: 8, noNaN: true }),
          fc.double({ min: 0, max: 3, noNaN: true }),
          fc.constantFrom(...textureIds),
          fc.constantFrom(...limeStuffs),
        ),
        inputs: ([pH, more, texture, stuff]) =>
          [pH, Math.min(8, pH + more)].map((one) => ({ pH: one, texture, stuff, area_m2: 10 })),
        expects: ([sour, sweet]) => {
          expectNoLess(sour?.stuff_kgPerM2.p50 ?? Number.NaN, sweet?.stuff_kgPerM2.p50 ?? Number.NaN, 'lime');
          if (sour?.ashCeiling_kgPerM2 !== undefined)
            expectNoLess(sour.ashCeiling_kgPerM2.high, sour.stuff_kgPerM2.p90, 'ceiling');
        },
      }),
    ],
  },
  'soil-water': {
    scale: law(soilWater, {
      says: 'layers so many times as thick hold so many times as much',
      cases: fc.tuple(
        fc.array(
          fc.record({
            thickness_m: fc.double({ min: 0.02, max: 1, noNaN: true }),
            available_pctVolume: fc.double({ min: 1, max: 40, noNaN: true }),
          }),
          { minLength: 1, maxLength: 6 },
        ),
        fc.double({ min: 1, max: 5, noNaN: true }),
      ),
      inputs: ([layers, by]) => [
        { layers },
        { layers: layers.map((one) => ({ ...one, thickness_m: one.thickness_m * by })) },
      ],
      expects: ([once, more], [, by]) => {
        expect((more?.available_mm.p50 ?? 0) / (once?.available_mm.p50 ?? 1)).toBeCloseTo(by, 6);
      },
    }),
    others: [
      law(soilWater, {
        says: 'a layer of known organic matter cut in two holds what it held, and a stony one never more',
        cases: fc.record({
          thickness_m: fc.double({ min: 0.1, max: 2, noNaN: true }),
          texture: fc.constantFrom('sand' as const, 'loam' as const, 'clay' as const),
        }),
        inputs: ({ thickness_m, texture }) => {
          const soil = { texture, organicMatter_pctDry: 2 };
          return [
            { layers: [{ ...soil, thickness_m }] },
            { layers: [0, 1].map(() => ({ ...soil, thickness_m: thickness_m / 2 })) },
            { layers: [{ ...soil, thickness_m, stones_pctVolume: 20 }] },
          ];
        },
        expects: ([whole, halves, stony]) => {
          expect(halves?.available_mm.p50).toBeCloseTo(whole?.available_mm.p50 ?? Number.NaN, 6);
          expectNoLess(whole?.available_mm.p50 ?? Number.NaN, stony?.available_mm.p50 ?? Number.NaN, 'water');
        },
      }),
    ],
  },
  'share-out': {
    scale: 'no scale law because whole measures are shared',
    others: [
      law(shareOut, {
        says: 'all of it is shared, and no bed is off its exact share by a measure',
        cases: fc.tuple(
          fc.integer({ min: 1, max: 500 }),
          fc.array(fc.double({ min: 0.1, max: 200, noNaN: true }), { minLength: 1, maxLength: 20 }),
        ),
        inputs: ([measures, areas]) => [
          { measures, by: 'area' as const, beds: areas.map((area_m2, i) => ({ name: `bed ${i}`, area_m2 })) },
        ],
        expects: ([answer], [measures]) => {
          expect(answer?.beds.reduce((sum, { count }) => sum + count, 0)).toBe(measures);
          for (const { count, exact } of answer?.beds ?? []) expect(Math.abs(count - exact)).toBeLessThanOrEqual(1);
        },
      }),
      law(shareOut, {
        says: 'no bed gets more than its most, and what is left is what all of them together could not take',
        cases: fc.tuple(
          fc.integer({ min: 1, max: 500 }),
          fc.array(fc.tuple(fc.double({ min: 0.1, max: 200, noNaN: true }), fc.integer({ min: 0, max: 60 })), {
            minLength: 1,
            maxLength: 20,
          }),
        ),
        inputs: ([measures, beds]) => [
          {
            measures,
            by: 'need' as const,
            beds: beds.map(([want, most], i) => ({ name: `bed ${i}`, area_m2: 10, want, most })),
          },
        ],
        expects: ([answer], [measures, beds]) => {
          const room = beds.reduce((sum, [, most]) => sum + most, 0);
          expect(answer?.left).toBe(Math.max(0, measures - room));
          expect(answer?.beds.reduce((sum, { count }) => sum + count, 0)).toBe(Math.min(measures, room));
          for (const [i, { count }] of (answer?.beds ?? []).entries())
            expect(count).toBeLessThanOrEqual(beds[i]?.[1] ?? 0);
        },
      }),
    ],
  },
};

/** A half bucket of the richest of the stuffs holds less nitrogen than this. */
const HALF_BUCKET_KG = 0.3;
