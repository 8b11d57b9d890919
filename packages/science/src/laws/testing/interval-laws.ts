import fc from 'fast-check';
import { expect } from 'vitest';
import { daysAfter } from '../../calendar/index.ts';
import { harvestInterval } from '../../interval/harvest-interval.ts';
import type { HarvestIntervalInput } from '../../interval/harvest-interval-io.ts';
import { contactIds } from '../../interval/parameters.ts';
import { putIds } from '../../interval/put.ts';
import { type LawsOf, law } from './law.ts';

const START = '2020-01-01';

/** Worked in on the day of spreading, and taken some days later. */
const cases: fc.Arbitrary<HarvestIntervalInput> = fc
  .record({
    put: fc.constantFrom(...putIds),
    contact: fc.constantFrom(...contactIds),
    worked: fc.integer({ min: 0, max: 400 }),
    waits: fc.integer({ min: 0, max: 500 }),
  })
  .map(({ put, contact, worked, waits }) => ({
    put,
    contact,
    lay: 'worked-in',
    spread_day: daysAfter(START, worked),
    workedIn_day: daysAfter(START, worked),
    harvest_day: daysAfter(START, worked + waits),
  }));

export const intervalLaws: Readonly<Record<string, LawsOf>> = {
  'harvest-interval': {
    scale: 'no scale law because a wait does not hang on how much was spread',
    others: [
      law(harvestInterval, {
        says: 'a later harvest never turns met into not met',
        cases: fc.tuple(cases, fc.integer({ min: 0, max: 400 })),
        inputs: ([input, later]) => [input, { ...input, harvest_day: daysAfter(input.harvest_day ?? START, later) }],
        expects: ([sooner, later]) => {
          sooner?.rules.forEach(({ verdict }, i) => {
            if (verdict === 'met') expect(later?.rules[i]?.verdict).toBe('met');
          });
        },
      }),
      law(harvestInterval, {
        says: 'the earliest day told is the first that is met: the day before it is not',
        cases,
        inputs: (input) => [input],
        expects: ([told], input, needs) => {
          for (const { rule, earliest_day } of told?.rules ?? []) {
            if (earliest_day === undefined) continue;
            const verdictOn = (harvest_day: string): string | undefined => {
              const again = harvestInterval.run({ ...input, rules: [rule], harvest_day }, needs);
              return again.ok ? again.value.rules[0]?.verdict : undefined;
            };
            expect(verdictOn(earliest_day)).toBe('met');
            expect(verdictOn(daysAfter(earliest_day, -1))).toBe('not-yet');
          }
        },
      }),
      law(harvestInterval, {
        says: 'a crop that touches the soil never waits less than one that stays clear of it, and neither less than one that is not eaten',
        cases,
        inputs: (input) =>
          (['touches', 'splash', 'clear', 'not-eaten'] as const).map((contact) => ({ ...input, contact })),
        expects: ([touches, splash, clear, none]) => {
          touches?.rules.forEach(({ wait_days = 0 }, i) => {
            expect(splash?.rules[i]?.wait_days ?? 0).toBe(wait_days);
            expect(clear?.rules[i]?.wait_days ?? 0).toBeLessThanOrEqual(wait_days);
            expect(none?.rules[i]?.wait_days ?? 0).toBeLessThanOrEqual(clear?.rules[i]?.wait_days ?? 0);
          });
        },
      }),
    ],
  },
};
