import { describe, expect, it } from 'vitest';
import { check } from '../catalogue/index.ts';
import { createDraws } from '../estimate/index.ts';
import { type CuringCheck, type CuringInput, curingCheck } from './curing-check.ts';
import { maturityParameters } from './maturity-parameters.ts';

function answer(input: CuringInput): CuringCheck {
  const checked = check<CuringInput>(curingCheck.input, input);
  const outcome = checked.ok ? curingCheck.run(checked.value, { draws: createDraws() }) : checked;
  if (!outcome.ok) throw new RangeError(JSON.stringify(outcome.problems));
  return outcome.value;
}

const rated = (found: CuringCheck, limit: string): string | undefined =>
  found.limits.find((one) => one.limit === limit)?.rating;

describe('the California index', () => {
  // California Compost Quality Council 2001, Compost Maturity Index: C:N at most 25, then one test of each group, the worst counts.
  // The ratings were read, the numbers are recalled.
  it('California Compost Quality Council 2001 and Minnesota: rates 3.1 mg C/g/day, ammonium to nitrate 1.4 and C:N 22 as mature', () => {
    const found = answer({
      measured: { respiration_mgCO2CPerGOMPerDay: 3.1, ammoniumToNitrate_ratio: 1.4, carbonToNitrogen_ratio: 22 },
    });
    expect(found.california).toBe('mature');
    expect(found.state).toBe('ripe');
    // Minnesota Pollution Control Agency: below 8 mg CO2-C/g/day is accepted.
    expect(rated(found, 'minnesota-co2')).toBe('mature');
  });

  it.each([
    [
      'the worst of the two counts',
      { selfHeating_K: 5, emergence_pctControl: 79, carbonToNitrogen_ratio: 15 },
      'immature',
    ],
    [
      'both in their first class',
      { selfHeating_K: 9.9, emergence_pctControl: 91, carbonToNitrogen_ratio: 15 },
      'very-mature',
    ],
    [
      'the ends of the second class belong to it',
      { selfHeating_K: 20, ammonium_mgPerKgDry: 500, carbonToNitrogen_ratio: 25 },
      'mature',
    ],
    ['a C:N above 25 ends it', { selfHeating_K: 5, emergence_pctControl: 95, carbonToNitrogen_ratio: 26 }, 'immature'],
  ])('%s', (_, measured, rating) => {
    expect(answer({ measured }).california).toBe(rating);
  });

  it('is not given without a test of each group, and says which is lacking', () => {
    const found = answer({ measured: { selfHeating_K: 5, carbonToNitrogen_ratio: 15 } });
    expect(found.california).toBeUndefined();
    expect(found.californiaLacks).toEqual(['maturity']);
    expect(found.state).toBe('not-shown');
    expect(found.next).toBe('seedlings');
  });
});

describe('other limits', () => {
  it('PAS 100 and Minnesota take breath in different units', () => {
    // Woods End 2005: PAS 100 takes 16 mg CO2, Minnesota 8 mg CO2-C, which is 29.3 mg CO2.
    const { co2PerCarbon_ratio } = maturityParameters;
    expect(16 / co2PerCarbon_ratio.value).toBeCloseTo(4.367, 2);
    const found = answer({ measured: { respiration_mgCO2CPerGOMPerDay: 5 } });
    expect(rated(found, 'united-kingdom-co2')).toBe('immature');
    expect(rated(found, 'minnesota-co2')).toBe('mature');
  });

  // Classes of the self-heating test, EN 16087-2: I and II as a composting plant tells them (peaks of 60 to 70 and 50 to 60 °C over
  // 20 °C), the rest recalled.
  it.each([
    [45, 'I'],
    [35, 'II'],
    [25, 'III'],
    [15, 'IV'],
    [6, 'V'],
  ])('a rise of %d K in the flask is class %s', (selfHeating_K, flaskClass) => {
    expect(answer({ measured: { selfHeating_K } }).flaskClass).toBe(flaskClass);
  });

  it('two schemes that disagree are both told', () => {
    const found = answer({ measured: { ammoniumToNitrate_ratio: 0.3 } });
    expect(rated(found, 'california-nitrate')).toBe('very-mature');
    expect(rated(found, 'bernal-nitrate')).toBe('immature');
  });
});

describe('nose and eye', () => {
  const passed = { selfHeating_K: 5, emergence_pctControl: 95, carbonToNitrogen_ratio: 15 };

  it.each([
    ['ammonia', { smell: 'ammonia' }],
    ['sour', { smell: 'sour' }],
    ['stuff-seen', { stuffSeen: true }],
    ['reheats', { afterTurn_degC: 48 }],
  ] as const)('%s speaks against passed tests', (sign, seen) => {
    const found = answer({ measured: passed, ...seen });
    expect(found.signs).toContain(sign);
    expect(found.state).toBe('unripe');
  });

  it('an earthy smell alone shows nothing', () => {
    expect(answer({ smell: 'earthy', stuffSeen: false, afterTurn_degC: 20 }).state).toBe('not-shown');
  });

  it('a range across a limit is no firm answer', () => {
    const wide = { p10: 70, p50: 85, p90: 96 };
    const found = answer({ measured: { ...passed, emergence_pctControl: wide } });
    expect(found.state).toBe('ripe');
    expect(found.firm).toBe(false);
    expect(answer({ measured: passed }).firm).toBe(true);
  });
});

describe('what cannot be', () => {
  it.each([[{ selfHeating_K: 80 }], [{ emergence_pctControl: -5 }], [{ carbonToNitrogen_ratio: 0 }]])(
    '%j',
    (measured) => {
      const checked = check<CuringInput>(curingCheck.input, { measured });
      expect(checked.ok).toBe(false);
    },
  );
});
