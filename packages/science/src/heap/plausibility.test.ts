import { convert } from '@loamwright/units';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { check } from '../catalogue/index.ts';
import { plausibilityOf, readingPlausibility, type TypedReading } from './index.ts';

const fahrenheit = (value: number): number => convert(value, 'degF', 'degC');

function asked(typed: TypedReading): readonly string[] {
  return plausibilityOf(typed).suggestions.map(({ code, suggested }) =>
    suggested === undefined ? code : `${code} ${suggested.value} ${suggested.unit}`,
  );
}

describe('an odd reading is asked about', () => {
  it('300 °F: did you mean 130, or 100?', () => {
    expect(asked({ value: 300, unit: 'degF' })).toEqual(['one-place-along 130 degF', 'wrong-digit 100 degF']);
  });

  it('1000 °F: a point is missing; 0100 is no number with two digits changed about', () => {
    expect(asked({ value: 1000, unit: 'degF' })).toEqual(['point-missing 100 degF']);
  });

  it('250 °F: a 1 left out before it, or one digit wrong', () => {
    expect(asked({ value: 250, unit: 'degF' })).toEqual(['one-place-along 125 degF', 'wrong-digit 150 degF']);
  });

  it('offers nothing twice', () => {
    fc.assert(
      fc.property(fc.integer({ min: -50, max: 9999 }), fc.constantFrom('degC', 'degF'), (value, unit) => {
        const meant = plausibilityOf({ value, unit }).suggestions.map(({ suggested }) => JSON.stringify(suggested));
        expect(new Set(meant).size).toBe(meant.length);
      }),
      { seed: 250 },
    );
  });

  it('315 °F: two digits changed places', () => {
    expect(asked({ value: 315, unit: 'degF' })[0]).toBe('digits-swapped 135 degF');
  });

  it('148 on a metric phone: °F?', () => {
    expect(asked({ value: 148, unit: 'degC', unitTyped: false })).toEqual(['unit-swapped 148 degF']);
    expect(plausibilityOf({ value: 148, unit: 'degC' }).suggestions[0]?.suggested?.temp_degC).toBeCloseTo(64.44, 2);
  });

  it('62 on a phone set to °F, the day after 145 °F: °C?', () => {
    expect(asked({ value: 62, unit: 'degF', last_degC: fahrenheit(145), last_daysAgo: 1 })[0]).toBe(
      'unit-swapped 62 degC',
    );
  });

  it('195 °F the day after 60 °F: fire is named beside the slip of the finger', () => {
    const { odd, cautions } = plausibilityOf({
      value: 195,
      unit: 'degF',
      last_degC: fahrenheit(60),
      last_daysAgo: 0.1,
    });
    expect(odd).toContain('rose-fast');
    expect(cautions).toEqual(['fire']);
  });

  it('1482 °F: a point is missing', () => {
    expect(asked({ value: 1482, unit: 'degF' })).toContain('point-missing 148.2 degF');
  });

  it('14 °F the day after 145 °F: a digit is missing', () => {
    expect(asked({ value: 14, unit: 'degF', last_degC: fahrenheit(145), last_daysAgo: 1 })).toContain(
      'digit-missed 145 degF',
    );
  });

  it('12 °C the day after 65 °C: another digit, or a probe that had not settled', () => {
    const told = plausibilityOf({ value: 12, unit: 'degC', last_degC: 65, last_daysAgo: 1, air_degC: 24 });
    expect(told.odd).toEqual(['fell-fast', 'below-air']);
    expect(told.suggestions.map(({ code }) => code)).toContain('probe-not-settled');
    expect(told.suggestions[0]?.suggested?.value).toBe(62);
  });

  it('hotter than a heap makes: fire is named, for it may be true', () => {
    expect(plausibilityOf({ value: 210, unit: 'degF' }).cautions).toEqual(['fire']);
    expect(plausibilityOf({ value: 199, unit: 'degF' }).odd).toEqual([]);
  });
});

describe('what heaps have really done is not asked about', () => {
  // Measured heaps: the fastest falls and rises between readings a day apart (github.com/Goodyzhang/Composting,
  // groups CK, L and the cold start; WH6FQE 2019; °C), and the fall of a hot cage heap on turning (73.9 to 57.2 °C).
  it.each([
    [59.25, 48.34],
    [48.34, 38.04],
    [20.73, 53.93],
    [33.94, 54.09],
    [67.2, 75.6],
    [35, 73.9],
    [73.9, 57.2],
  ])('%d → %d °C in a day', (last_degC, value) => {
    expect(plausibilityOf({ value, unit: 'degC', last_degC, last_daysAgo: 1 }).odd).toEqual([]);
  });

  it('a heap turned and watered may fall to the air’s temperature', () => {
    const typed: TypedReading = { value: 27, unit: 'degC', last_degC: 60, last_daysAgo: 1 };
    expect(plausibilityOf(typed).odd).toEqual(['fell-fast']);
    expect(plausibilityOf({ ...typed, workedSince: true }).odd).toEqual([]);
  });
});

it('suggests only what it would not ask about, and at most three things', () => {
  const typed: fc.Arbitrary<TypedReading> = fc.record(
    {
      value: fc.oneof(fc.integer({ min: -50, max: 2000 }), fc.double({ min: -50, max: 2000, noNaN: true })),
      unit: fc.constantFrom('degC', 'degF'),
      unitTyped: fc.boolean(),
      last_degC: fc.double({ min: -20, max: 90, noNaN: true }),
      last_daysAgo: fc.double({ min: 0.1, max: 30, noNaN: true }),
      workedSince: fc.boolean(),
      air_degC: fc.double({ min: -30, max: 45, noNaN: true }),
    },
    { requiredKeys: ['value', 'unit'] },
  );
  fc.assert(
    fc.property(typed, (reading) => {
      const told = plausibilityOf(reading);
      expect(check(readingPlausibility.output, told).ok).toBe(true);
      if (told.odd.length === 0) expect(told.suggestions).toEqual([]);
      for (const { suggested } of told.suggestions) {
        if (suggested === undefined) continue;
        expect(plausibilityOf({ ...reading, value: suggested.value, unit: suggested.unit }).odd).toEqual([]);
      }
    }),
    { seed: 130, numRuns: 500 },
  );
});
