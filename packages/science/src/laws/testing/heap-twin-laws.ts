import fc from 'fast-check';
import { expect } from 'vitest';
import { type AmmoniaSplitInput, ammoniaSplit } from '../../heap-twin/ammonia-split.ts';
import { heapRun } from '../../heap-twin/heap-run.ts';
import type { Course, HeapRunAnswer } from '../../heap-twin/heap-run-answer.ts';
import type { HeapRunInput } from '../../heap-twin/heap-run-input.ts';
import { type HeapSizeInput, heapSize } from '../../heap-twin/heap-size.ts';
import { type HeatBalanceInput, heatBalance } from '../../heap-twin/heat-balance.ts';
import { type OxygenInHeapInput, oxygenInHeap } from '../../heap-twin/oxygen-in-heap.ts';
import { mixTimes, timesMore } from './amounts.ts';
import { expectNoLess, type LawsOf, law, scaleLaw } from './law.ts';

/** A run of a heap takes a good part of a second, a search for its size several. */
const RUNS_OF_A_HEAP = 4;
const RUNS_OF_A_SIZE = 2;
const MEMBERS = 16;
const DAYS = 10;

interface Told extends HeapRunInput {
  readonly days: number;
  readonly members: number;
  readonly weather: { readonly still: { readonly temp_degC: number } };
}

/** Bins of manure, straw and grass as growers build them, from meagre to rich, in frost or warmth. */
const heaps: fc.Arbitrary<Told> = fc
  .record({
    manure: fc.integer({ min: 2, max: 5 }),
    straw: fc.integer({ min: 1, max: 5 }),
    grass: fc.integer({ min: 0, max: 3 }),
    water_L: fc.integer({ min: 0, max: 80 }),
    temp_degC: fc.integer({ min: -5, max: 28 }),
    side_m: fc.double({ min: 0.8, max: 1.4, noNaN: true }),
  })
  .map(({ manure, straw, grass, water_L, temp_degC, side_m }) => ({
    ingredients: [
      { material: 'horse-manure-straw', amount: { measure: 'barrow', count: manure } },
      { material: 'straw', amount: { measure: 'barrow', count: straw } },
      ...(grass === 0 ? [] : [{ material: 'grass-clippings', amount: { measure: 'barrow', count: grass } }]),
    ],
    water_L,
    shape: { form: 'box', width_m: side_m, depth_m: side_m, height_m: 1 },
    weather: { still: { temp_degC } },
    start_degC: Math.max(5, temp_degC),
    days: DAYS,
    members: MEMBERS,
  }));

const courses = ['core_degC', 'coreOxygen_pctVolume', 'moisture_pctWet', 'volume_m3'] as const;

/** As far as the shorter went. */
function beginning({ p10, p50, p90 }: Course, count: number): Course {
  return { p10: p10.slice(0, count), p50: p50.slice(0, count), p90: p90.slice(0, count) };
}

function both<T>(one: T | undefined, other: T | undefined): readonly [T, T] {
  if (one === undefined || other === undefined) throw new RangeError('two answers');
  return [one, other];
}

const lost = (answer: HeapRunAnswer) => [answer.dryLost_pctDry, answer.wetLost_pctWet, answer.nitrogenLost_pctNitrogen];

const balances: fc.Arbitrary<HeatBalanceInput & { readonly inHumidity_share: number }> = fc.record({
  rotted_kg: fc.double({ min: 0.1, max: 500, noNaN: true }),
  stuff: fc.constantFrom('fast' as const, 'hemicellulose' as const, 'cellulose' as const, 'lignin' as const),
  in_degC: fc.double({ min: -10, max: 30, noNaN: true }),
  inHumidity_share: fc.double({ min: 0.1, max: 1, noNaN: true }),
  out_degC: fc.double({ min: 35, max: 80, noNaN: true }),
});

const depths: fc.Arbitrary<OxygenInHeapInput> = fc.record({
  airSpace_pctVolume: fc.double({ min: 10, max: 60, noNaN: true }),
  temp_degC: fc.double({ min: 0, max: 70, noNaN: true }),
  uptake_gPerKgHour: fc.double({ min: 0.1, max: 10, noNaN: true }),
  volatile_kgPerM3: fc.double({ min: 40, max: 250, noNaN: true }),
});

const splits: fc.Arbitrary<AmmoniaSplitInput & { readonly ammoniacalN_gPerL: number }> = fc.record({
  pH: fc.double({ min: 5, max: 10, noNaN: true }),
  temp_degC: fc.double({ min: 0, max: 70, noNaN: true }),
  ammoniacalN_gPerL: fc.double({ min: 0.01, max: 20, noNaN: true }),
});

export const heapTwinLaws: Readonly<Record<string, LawsOf>> = {
  'heap-run': {
    scale: 'no scale law because a larger heap of the same stuff keeps its heat better and breathes worse',
    others: [
      law(heapRun, {
        says: 'what is lost is some of what there was, ranges stand in order, and every course has as many values as there are times',
        cases: heaps,
        runs: RUNS_OF_A_HEAP,
        inputs: (input) => [input],
        expects: ([answer]) => {
          if (answer === undefined) throw new RangeError('an answer');
          for (const { p10, p90 } of lost(answer)) {
            expectNoLess(100, p90, 'no more than all');
            expectNoLess(p90, p10, 'order');
          }
          // Rotting makes water, so a heap may weigh more for a while; its dry matter and its nitrogen only go.
          expectNoLess(answer.dryLost_pctDry.p10, 0, 'dry matter');
          expectNoLess(answer.nitrogenLost_pctNitrogen.p10, 0, 'nitrogen');
          for (const id of courses) {
            answer.day.forEach((_, t) => {
              const { p10, p50, p90 } = answer[id];
              expectNoLess(p50[t] ?? Number.NaN, p10[t] ?? Number.NaN, id);
              expectNoLess(p90[t] ?? Number.NaN, p50[t] ?? Number.NaN, id);
            });
          }
          expect(answer.shells_degC).toHaveLength(answer.day.length);
          expect(answer.members).toBe(MEMBERS);
        },
      }),
      law(heapRun, {
        says: 'as far as it went, a shorter run is the longer one, and watering with nothing changes nothing',
        cases: heaps,
        runs: RUNS_OF_A_HEAP,
        inputs: (input) => [
          { ...input, days: DAYS / 2 },
          input,
          { ...input, acts: [{ at_day: 3, act: 'water' as const, water_L: 0 }] },
        ],
        expects: ([shorter, longer, watered]) => {
          const [some, all] = both(shorter, longer);
          for (const id of courses) expect(beginning(all[id], some.day.length)).toEqual(some[id]);
          expect(watered).toEqual(longer);
        },
      }),
      law(heapRun, {
        says: 'turned into a bay as wide and deep as its own, it is turned where it lies',
        cases: heaps,
        runs: RUNS_OF_A_HEAP,
        inputs: (input) => [
          { ...input, acts: [{ at_day: 3, act: 'turn' as const }] },
          { ...input, acts: [{ at_day: 3, act: 'turn' as const, into: input.shape }] },
        ],
        expects: ([stayed, moved]) => {
          const [here, there] = both(stayed, moved);
          expect({ ...there, places: [] }).toEqual({ ...here, places: [] });
        },
      }),
      law(heapRun, {
        says: 'thicker walls that let as much air through never make it less likely to heat, nor its highest lower, in a cold place (by no more than the grain of the draws)',
        cases: heaps,
        runs: RUNS_OF_A_HEAP,
        // Boards of softwood and bales of straw let as much draught and vapour through and differ in thickness alone.
        inputs: (input) =>
          (['timber', 'strawBales'] as const).map((walls) => ({
            ...input,
            walls,
            cover: 'compost' as const,
            weather: { still: { temp_degC: Math.min(5, input.weather.still.temp_degC) } },
          })),
        expects: ([thin, thick]) => {
          const [boards, bales] = both(thin, thick);
          // One heap of them may dry out sooner.
          expectNoLess(bales.heats.met, boards.heats.met - 1, 'heaps that heat');
          expectNoLess(bales.peak_degC.p50, boards.peak_degC.p50 - 1, 'highest');
        },
      }),
      law(heapRun, {
        says: 'more of the same draws keep the middle of what is told within the range that fewer told',
        cases: heaps,
        runs: RUNS_OF_A_HEAP,
        inputs: (input) => [input, { ...input, members: 4 * MEMBERS }],
        expects: ([few, many]) => {
          const [some, more] = both(few, many);
          for (const id of ['peak_degC', 'dryLost_pctDry', 'nitrogenLost_pctNitrogen'] as const) {
            expectNoLess(more[id].p50, some[id].p10, id);
            expectNoLess(some[id].p90, more[id].p50, id);
          }
          // 16 heaps spread evenly over the draws: the chance they tell is within a quarter of that of 64.
          expect(Math.abs(some.heats.met / some.heats.of - more.heats.met / more.heats.of)).toBeLessThan(0.25);
        },
      }),
    ],
  },
  'heap-size': {
    scale: law(heapSize, {
      says: 'the smallest heap that gets hot is the same however much of the mix is told',
      cases: fc.tuple(heaps, timesMore),
      runs: RUNS_OF_A_SIZE,
      inputs: ([told, by]) => [sizeOf(told), mixTimes(sizeOf(told), by)],
      expects: ([once, more]) => expect(more).toEqual(once),
    }),
    others: [
      law(heapSize, {
        says: 'asking for more days or in a colder place never finds a smaller heap (steps of a tenth of the side)',
        cases: heaps,
        runs: RUNS_OF_A_SIZE,
        inputs: (told) => {
          const { temp_degC } = told.weather.still;
          return [
            { ...sizeOf(told), days: 2 },
            { ...sizeOf(told), days: 6 },
            { ...sizeOf(told), days: 2, weather: { still: { temp_degC: temp_degC - 10 } } },
          ];
        },
        expects: ([easy, longer, colder]) => {
          const size = (volume_m3: number | undefined): number => volume_m3 ?? Number.POSITIVE_INFINITY;
          expect(size(longer?.volume_m3)).toBeGreaterThanOrEqual(size(easy?.volume_m3));
          expect(size(colder?.volume_m3)).toBeGreaterThanOrEqual(size(easy?.volume_m3));
        },
      }),
    ],
  },
  'heat-balance': {
    scale: scaleLaw(heatBalance, {
      says: 'so many times the rotted stuff gives so many times the heat, water and air, and each kilogram of air carries the same',
      cases: balances,
      times: (input, by) => ({ ...input, rotted_kg: input.rotted_kg * by }),
      alsoAmounts: ['heat_MJ'],
    }),
    others: [
      law(heatBalance, {
        says: 'the air that is told carries the heat that is told, and hotter or drier it takes less of it',
        cases: fc.tuple(balances, fc.double({ min: 0, max: 8, noNaN: true })),
        inputs: ([input, hotter]) => [
          input,
          { ...input, out_degC: input.out_degC + hotter },
          { ...input, inHumidity_share: input.inHumidity_share / 2 },
        ],
        expects: ([found, hot, dry]) => {
          if (found === undefined) throw new RangeError('an answer');
          expect((found.air_kg.p50 * found.carried_kJPerKg) / 1000 / found.heat_MJ.p50).toBeCloseTo(1, 9);
          expectNoLess(found.air_kg.p50, hot?.air_kg.p50 ?? Number.NaN, 'hotter air');
          expectNoLess(found.air_kg.p50, dry?.air_kg.p50 ?? Number.NaN, 'drier air');
        },
      }),
      law(heatBalance, {
        says: 'what rotted and the oxygen it took are the carbon dioxide and the water it gave (stuff without nitrogen)',
        cases: balances.map((input) => ({ ...input, stuff: input.stuff === 'fast' ? 'cellulose' : input.stuff })),
        inputs: (input) => [input],
        expects: ([found], { rotted_kg }) => {
          const { oxygen_kg, carbonDioxide_kg, waterFormed_kg } = found ?? {
            oxygen_kg: Number.NaN,
            carbonDioxide_kg: Number.NaN,
            waterFormed_kg: Number.NaN,
          };
          // The figures of the pools are written to four places.
          expect((carbonDioxide_kg + waterFormed_kg) / (rotted_kg + oxygen_kg)).toBeCloseTo(1, 3);
        },
      }),
    ],
  },
  'oxygen-in-heap': {
    scale: 'no scale law because it reckons with a cubic metre, and with depths in it',
    others: [
      law(oxygenInHeap, {
        says: 'four times the appetite halves the depth, told as uptake or as more stuff to take it up',
        cases: depths,
        inputs: (input) => [
          input,
          { ...input, uptake_gPerKgHour: 4 * input.uptake_gPerKgHour },
          { ...input, volatile_kgPerM3: 4 * input.volatile_kgPerM3 },
        ],
        expects: ([found, hungrier, denser]) => {
          const reaches_m = found?.reaches_m ?? Number.NaN;
          expect(hungrier?.reaches_m).toBeCloseTo(reaches_m / 2, 9);
          expect(denser?.reaches_m).toBeCloseTo(reaches_m / 2, 9);
          expect(found?.largestBall_m).toBeCloseTo(Math.sqrt(3) * reaches_m, 9);
        },
      }),
      law(oxygenInHeap, {
        says: 'more air space or a warmer heap never lets oxygen less deep, and the depth goes as the air space',
        cases: fc.tuple(
          depths,
          fc.double({ min: 1, max: 1.5, noNaN: true }),
          fc.double({ min: 0, max: 10, noNaN: true }),
        ),
        inputs: ([input, airier, warmer]) => [
          input,
          { ...input, airSpace_pctVolume: airier * input.airSpace_pctVolume },
          { ...input, temp_degC: input.temp_degC + warmer },
        ],
        expects: ([found, airy, warm], [, airier]) => {
          const reaches_m = found?.reaches_m ?? Number.NaN;
          expect(airy?.reaches_m).toBeCloseTo(airier * reaches_m, 9);
          // Diffusion gains more by warmth than the gas loses by thinning.
          expectNoLess(warm?.reaches_m ?? Number.NaN, reaches_m, 'warmer');
        },
      }),
    ],
  },
  'ammonia-split': {
    scale: scaleLaw(ammoniaSplit, {
      says: 'so many times the ammoniacal nitrogen in the water lies above it so many times over as gas, the shares being the same',
      cases: splits,
      times: (input, by) => ({ ...input, ammoniacalN_gPerL: input.ammoniacalN_gPerL * by }),
      alsoAmounts: ['gasN_gPerM3'],
    }),
    others: [
      law(ammoniaSplit, {
        says: 'a higher pH or a warmer heap never holds its ammonia better, and the share lies between none and all',
        cases: fc.tuple(
          splits,
          fc.double({ min: 0, max: 2, noNaN: true }),
          fc.double({ min: 0, max: 20, noNaN: true }),
        ),
        inputs: ([input, sweeter, warmer]) => [
          input,
          { ...input, pH: input.pH + sweeter },
          { ...input, temp_degC: input.temp_degC + warmer },
        ],
        expects: ([found, sweet, warm]) => {
          const pct = found?.ammonia_pctAmmoniacalN ?? Number.NaN;
          expect(pct).toBeGreaterThan(0);
          expect(pct).toBeLessThan(100);
          for (const more of [sweet, warm]) {
            expectNoLess(more?.ammonia_pctAmmoniacalN ?? Number.NaN, pct, 'share');
            expectNoLess(more?.gasN_gPerM3 ?? Number.NaN, found?.gasN_gPerM3 ?? Number.NaN, 'gas');
          }
        },
      }),
    ],
  },
};

function sizeOf({ ingredients, water_L, weather }: Told): HeapSizeInput {
  return { ingredients, water_L, weather };
}
