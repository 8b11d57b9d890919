import fc from 'fast-check';
import { expect } from 'vitest';
import { daysAfter } from '../../calendar/index.ts';
import { coldSkin } from '../../sanitation/cold-skin.ts';
import { heatKill } from '../../sanitation/heat-kill.ts';
import { heatTimeCalculation } from '../../sanitation/heat-time.ts';
import type { SanitationLog } from '../../sanitation/log.ts';
import { metalsCheck } from '../../sanitation/metals-check.ts';
import { sanitationCheck } from '../../sanitation/sanitation-check.ts';
import { expectNoLess, type LawsOf, law } from './law.ts';

const START = '2024-03-01';
/** Within the band of every rule: below 170 °F, the only ceiling there is. */
const CEILING_DEGC = 76.6;

const logs: fc.Arbitrary<SanitationLog> = fc
  .record({
    temperatures: fc.array(fc.double({ min: 20, max: 75, noNaN: true }), { minLength: 1, maxLength: 30 }),
    turned: fc.array(fc.integer({ min: 1, max: 30 }), { maxLength: 8 }),
    method: fc.constantFrom('turned' as const, 'in-vessel' as const, 'aerated-static' as const),
    allMaterial: fc.boolean(),
    carbonToNitrogen: fc.double({ min: 20, max: 45, noNaN: true }),
  })
  .map(({ temperatures, turned, ...rest }) => ({
    ...rest,
    animalMatter: true,
    moisture_pctWet: 55,
    readings: temperatures.map((temp_degC, i) => ({ day: daysAfter(START, i + 1), temp_degC, held_h: 24 })),
    turned: turned.map((day) => daysAfter(START, day)),
  }));

const noScale = 'no scale law because a log holds days and degrees, no amounts' as const;

export const sanitationLaws: Readonly<Record<string, LawsOf>> = {
  'sanitation-check': {
    scale: noScale,
    others: [
      law(sanitationCheck, {
        says: 'a log that is hotter on every day, within the band of the rule, never turns met into not met (before curing)',
        cases: fc.tuple(logs, fc.double({ min: 0, max: 30, noNaN: true })),
        inputs: ([log, more]) => [
          { log },
          {
            log: {
              ...log,
              readings: log.readings.map((one) => ({
                ...one,
                temp_degC: Math.min(CEILING_DEGC, one.temp_degC + more),
              })),
            },
          },
        ],
        expects: ([cooler, hotter]) => {
          cooler?.rules.forEach(({ rule, verdict }, i) => {
            if (verdict === 'met') expect(hotter?.rules[i]?.verdict, rule).toBe('met');
          });
        },
      }),
      law(sanitationCheck, {
        says: 'a log that goes on at heat never turns met into not met (before curing)',
        cases: fc.tuple(logs, fc.integer({ min: 1, max: 20 })),
        inputs: ([log, more]) => [
          { log },
          {
            log: {
              ...log,
              readings: [
                ...log.readings,
                ...Array.from({ length: more }, (_, i) => ({
                  day: daysAfter(START, log.readings.length + i + 1),
                  temp_degC: 75,
                  held_h: 24,
                })),
              ],
            },
          },
        ],
        expects: ([shorter, longer]) => {
          shorter?.rules.forEach(({ rule, verdict }, i) => {
            if (verdict === 'met') expect(longer?.rules[i]?.verdict, rule).toBe('met');
          });
        },
      }),
      law(sanitationCheck, {
        says: 'the order in which readings and turnings were written down is of no matter',
        cases: logs.chain((log) =>
          fc.tuple(
            fc.constant(log),
            fc.shuffledSubarray([...log.readings], { minLength: log.readings.length }),
            fc.shuffledSubarray([...log.turned], { minLength: log.turned.length }),
          ),
        ),
        inputs: ([log, readings, turned]) => [{ log }, { log: { ...log, readings, turned } }],
        expects: ([one, other]) => expect(other).toEqual(one),
      }),
      law(sanitationCheck, {
        says: 'a later raw addition never makes a rule met that was not',
        cases: fc.tuple(logs, fc.integer({ min: 0, max: 30 })),
        inputs: ([log, day]) => [{ log }, { log: { ...log, lastRaw_day: daysAfter(START, day) } }],
        expects: ([before, after]) => {
          after?.rules.forEach(({ rule, verdict, demands }, i) => {
            // Weeks are counted from the raw addition, and days from then on can only be fewer.
            if (verdict === 'met' && !demands.some(({ demand }) => demand === 'weeks'))
              expect(['met', 'cannot-be-shown'], rule).toContain(before?.rules[i]?.verdict);
          });
        },
      }),
    ],
  },
  'heat-time': {
    scale: noScale,
    others: [
      law(heatTimeCalculation, {
        says: 'hotter stuff of the same solids is never held longer',
        cases: fc.tuple(
          fc.double({ min: 50, max: 90, noNaN: true }),
          fc.double({ min: 0, max: 20, noNaN: true }),
          fc.double({ min: 1, max: 60, noNaN: true }),
        ),
        inputs: ([temp_degC, more, solids_pctWet]) =>
          [temp_degC, temp_degC + more].map((temp) => ({ temp_degC: temp, solids_pctWet })),
        expects: ([cooler, hotter]) => expectNoLess(cooler?.hold_d ?? Number.NaN, hotter?.hold_d ?? Number.NaN, 'time'),
      }),
    ],
  },
  'heat-kill': {
    scale: noScale,
    others: [
      law(heatKill, {
        says: 'longer or hotter never credits less',
        cases: fc.tuple(
          fc.double({ min: 40, max: 80, noNaN: true }),
          fc.double({ min: 0, max: 20, noNaN: true }),
          fc.double({ min: 0, max: 20, noNaN: true }),
          fc.double({ min: 0, max: 20, noNaN: true }),
        ),
        inputs: ([temp_degC, hotter, hours, longer]) => [
          { held: [{ temp_degC, hours }] },
          { held: [{ temp_degC: temp_degC + hotter, hours: hours + longer }] },
        ],
        expects: ([less, more]) =>
          expectNoLess(more?.credited_logs ?? Number.NaN, less?.credited_logs ?? Number.NaN, 'credit'),
      }),
    ],
  },
  'cold-skin': {
    scale: {
      says: 'a heap so many times as large with a skin so many times as deep is as cold',
      holds: law(coldSkin, {
        says: '',
        cases: fc.tuple(
          fc.double({ min: 0.3, max: 3, noNaN: true }),
          fc.double({ min: 0.05, max: 0.2, noNaN: true }),
          fc.integer({ min: 2, max: 5 }),
        ),
        inputs: ([radius_m, skin_m, by]) => [
          { shape: 'dome' as const, radius_m, skin_m, turns: 5 },
          { shape: 'dome' as const, radius_m: by * radius_m, skin_m: by * skin_m, turns: 5 },
        ],
        expects: ([one, larger]) => expect(larger?.cold_share.p50).toBeCloseTo(one?.cold_share.p50 ?? Number.NaN, 9),
      }).holds,
    },
    others: [
      law(coldSkin, {
        says: 'one more turning never leaves more unheated',
        cases: fc.tuple(fc.double({ min: 0.3, max: 3, noNaN: true }), fc.integer({ min: 0, max: 20 })),
        inputs: ([radius_m, turns]) =>
          [turns, turns + 1].map((count) => ({ shape: 'long-heap' as const, radius_m, turns: count })),
        expects: ([fewer, more]) =>
          expectNoLess(fewer?.unheated_share.p50 ?? Number.NaN, more?.unheated_share.p50 ?? Number.NaN, 'share'),
      }),
    ],
  },
  'metals-check': {
    scale: noScale,
    others: [
      law(metalsCheck, {
        says: 'more of a metal never clears a list',
        cases: fc.tuple(fc.double({ min: 0, max: 5000, noNaN: true }), fc.double({ min: 0, max: 5000, noNaN: true })),
        inputs: ([zinc, more]) => [{ found_mgPerKgDry: { zinc } }, { found_mgPerKgDry: { zinc: zinc + more } }],
        expects: ([less, greater]) => {
          less?.lists.forEach(({ verdict }, i) => {
            if (verdict === 'over') expect(greater?.lists[i]?.verdict).toBe('over');
          });
        },
      }),
    ],
  },
};
