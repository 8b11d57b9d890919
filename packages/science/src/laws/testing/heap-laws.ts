import fc from 'fast-check';
import { expect } from 'vitest';
import { heatToHold, type SizeInSeason } from '../../heap/heat-to-hold.ts';
import { type NotHeating, notHeating } from '../../heap/not-heating.ts';
import { readingPlausibility } from '../../heap/plausibility.ts';
import { readingMeaning } from '../../heap/reading-meaning.ts';
import { expectNoLess, type LawsOf, law } from './law.ts';

const temperatures = fc.double({ min: -20, max: 95, noNaN: true });
const rises = fc.double({ min: 0, max: 30, noNaN: true });
const states = ['cold', 'mild', 'warm', 'hot', 'sought', 'over-limit', 'alarm'] as const;
const FREEZING_DEGF = 32;
const DEGF_PER_K = 1.8;

const sides = fc.double({ min: 0.3, max: 3, noNaN: true });
const boxes = fc.record({ width_m: sides, depth_m: sides, height_m: sides });
const growths = fc.double({ min: 1, max: 5, noNaN: true });

/** Each season's two ways to stand, the same in order. */
function waysOf(seasons: readonly SizeInSeason[] = []): readonly SizeInSeason['bare'][] {
  return seasons.flatMap(({ bare, insulated }) => [bare, insulated]);
}

/** How likely a cause is; one that is not told is less likely than all that are. */
function shareOf(cause: string, { causes }: NotHeating): number {
  return causes.find((one) => one.cause === cause)?.share ?? 0;
}

export const heapLaws: Readonly<Record<string, LawsOf>> = {
  'reading-meaning': {
    scale: 'no scale law because a temperature is no amount, and a small heap is judged otherwise than a large one',
    others: [
      law(readingMeaning, {
        says: 'a hotter reading is never told as a colder state, and never less likely a sanitising day (all else the same)',
        cases: fc.tuple(temperatures, rises),
        inputs: ([temp_degC, more]) => [{ temp_degC }, { temp_degC: temp_degC + more }],
        expects: ([cooler, hotter]) => {
          if (cooler === undefined || hotter === undefined) throw new RangeError('two answers');
          expectNoLess(states.indexOf(hotter.state), states.indexOf(cooler.state), 'state');
          expectNoLess(hotter.sanitisingDay.chance.met, cooler.sanitisingDay.chance.met, 'draws that count');
        },
      }),
      law(readingMeaning, {
        says: 'the chance that a day counts is that of a probe: half, within the grain of the draws, at the limit itself',
        cases: fc.double({ min: 0.1, max: 5, noNaN: true }),
        inputs: (probeError_K) => [{ temp_degC: 55, probeError_K }],
        expects: ([at]) => {
          const { met, of } = at?.sanitisingDay.chance ?? { met: 0, of: 1 };
          // 55 °C is the limit of 40 CFR 503 and 7 CFR 205.203(c)(2); 256 quasi-random draws halve it within 5 %.
          expect(Math.abs(met / of - 0.5)).toBeLessThan(0.05);
        },
      }),
    ],
  },
  'heat-to-hold': {
    scale: law(heatToHold, {
      says: 'a larger bin of the same shape never needs more heat in each cubic metre, and the size that is enough is the same',
      cases: fc.tuple(boxes, growths),
      inputs: ([size, by]) => [
        { size },
        { size: { width_m: by * size.width_m, depth_m: by * size.depth_m, height_m: by * size.height_m } },
      ],
      expects: ([small, large]) => {
        waysOf(small?.seasons).forEach((way, i) => {
          const after = waysOf(large?.seasons)[i];
          expectNoLess(way.heat_WPerM3.p50, after?.heat_WPerM3.p50 ?? Number.NaN, 'heat');
          // Sought by halving, so not to the last digit.
          expect((after?.enough_m3 ?? Number.NaN) / way.enough_m3).toBeCloseTo(1, 6);
        });
      },
    }),
    others: [
      law(heatToHold, {
        says: 'insulated never needs more heat than bare, and colder weather never needs less',
        cases: fc.tuple(
          boxes,
          fc.double({ min: -30, max: 10, noNaN: true }),
          fc.double({ min: 0, max: 20, noNaN: true }),
        ),
        inputs: ([size, air_degC, colder]) => [
          { size, air_degC },
          { size, air_degC: air_degC - colder },
        ],
        expects: ([mild, cold]) => {
          for (const { bare, insulated } of mild?.seasons ?? []) {
            expectNoLess(bare.heat_WPerM3.p50, insulated.heat_WPerM3.p50, 'heat');
          }
          waysOf(mild?.seasons).forEach((way, i) => {
            expectNoLess(waysOf(cold?.seasons)[i]?.heat_WPerM3.p50 ?? Number.NaN, way.heat_WPerM3.p50, 'heat');
          });
        },
      }),
    ],
  },
  'not-heating': {
    scale: 'no scale law because a cause is no amount, and a larger heap is cold for other causes',
    others: [
      law(notHeating, {
        says: 'a drier squeeze never makes drought less likely, nor a wetter one too much water (all else the same)',
        cases: fc.record(
          {
            size: boxes,
            age_days: fc.double({ min: 1, max: 60, noNaN: true }),
            air_degC: fc.double({ min: -10, max: 25, noNaN: true }),
          },
          { requiredKeys: [] },
        ),
        inputs: (known) =>
          (['dusty', 'crumbles', 'holds', 'drops', 'streams'] as const).map((squeeze) => ({ ...known, squeeze })),
        expects: (answers) => {
          answers.slice(1).forEach((wetter, i) => {
            const drier = answers[i];
            if (drier === undefined) throw new RangeError('one answer each');
            expectNoLess(shareOf('too-dry', drier), shareOf('too-dry', wetter), 'too dry');
            expectNoLess(shareOf('too-wet', wetter), shareOf('too-wet', drier), 'too wet');
          });
        },
      }),
      law(notHeating, {
        says: 'never more than three causes, likeliest first, together no more than certain',
        cases: fc.record({ size: boxes }, { requiredKeys: [] }),
        inputs: (known) => [known],
        expects: ([answer]) => {
          const told = answer?.causes.map(({ share }) => share) ?? [];
          expect(told.length).toBeLessThanOrEqual(3);
          expect([...told].sort((a, b) => b - a)).toEqual(told);
          expectNoLess(
            1,
            told.reduce((sum, one) => sum + one, 0),
            'all causes',
          );
        },
      }),
    ],
  },
  'reading-plausibility': {
    scale: 'no scale law because a temperature is no amount',
    others: [
      law(readingPlausibility, {
        says: 'degrees Fahrenheit and Celsius of one temperature are one temperature, as odd the one way as the other',
        // A limit is met or not by the last digit: whole degrees Celsius and a tenth lie on none.
        cases: fc.tuple(
          fc.integer({ min: -40, max: 120 }),
          fc.option(fc.integer({ min: -10, max: 90 }), { nil: undefined }),
        ),
        inputs: ([whole, last_degC]) => {
          const degC = whole + 0.137;
          return [
            { value: degC, unit: 'degC' as const, last_degC },
            { value: FREEZING_DEGF + DEGF_PER_K * degC, unit: 'degF' as const, last_degC },
          ];
        },
        expects: ([celsius, fahrenheit]) => {
          expect(fahrenheit?.temp_degC).toBeCloseTo(celsius?.temp_degC ?? Number.NaN, 9);
          expect(fahrenheit?.odd).toEqual(celsius?.odd);
          expect(fahrenheit?.cautions).toEqual(celsius?.cautions);
        },
      }),
    ],
  },
};
