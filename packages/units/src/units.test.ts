import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allUnits, convert, readArea, readQuantity, readSides, siUnitOf, type Unit, unitTable } from './index.ts';

/**
 * Factors as printed in NIST Special Publication 811 (2008), Appendix B.8, to the digits given there;
 * the tolerance is half of the last printed digit.
 */
const printed: readonly [Unit, number, number][] = [
  ['ft3', 2.831685e-2, 5e-9],
  ['yd3', 7.645549e-1, 5e-8],
  ['gal', 3.785412e-3, 5e-10],
  ['bushel', 3.523907e-2, 5e-9],
  ['lb', 4.535924e-1, 5e-8],
  ['oz', 2.834952e-2, 5e-9],
  ['ft2', 9.290304e-2, 1e-15],
  ['lbPerFt3', 1.601846e1, 5e-6],
  ['lbPerYd3', 5.932764e-1, 5e-8],
  ['kmPerH', 2.777778e-1, 5e-8],
  ['mph', 4.4704e-1, 1e-15],
  ['knot', 5.144444e-1, 5e-8],
];

describe('the conversion table', () => {
  it.each(printed)('gives the NIST SP 811 factor of %s', (unit, factor, tolerance) => {
    expect(Math.abs(convert(1, unit, siUnitOf(unitTable[unit].dimension)) - factor)).toBeLessThanOrEqual(tolerance);
  });

  it('counts the acre in international feet, 4 parts in a million below the survey acre NIST prints', () => {
    // SP 811 gives 4.046 873 E+03 m² for the acre based on the US survey foot (1200/3937 m).
    const surveyFootSquared_m2 = (1200 / 3937) ** 2;
    expect(43560 * surveyFootSquared_m2).toBeCloseTo(4046.873, 3);
    expect(convert(1, 'acre', 'm2')).toBeCloseTo(4046.873 * (1 - 4e-6), 2);
  });

  it('makes a ton an acre of the short ton and the survey acre that NIST SP 811 prints, a tonne a hectare a tenth of a kg/m²', () => {
    // SP 811 gives 9.071 847 E+02 kg for the short ton.
    const perSurveyAcre = 907.1847 / 4046.873;
    expect(convert(1, 'tonPerAcre', 'kgPerM2')).toBeCloseTo(perSurveyAcre * (1 + 4e-6), 7);
    expect(convert(1, 'tPerHa', 'kgPerM2')).toBe(0.1);
  });

  it('follows NIST SP 811 B.8 for temperatures: t/°C = (t/°F − 32)/1.8, T/K = t/°C + 273.15', () => {
    expect(convert(131, 'degF', 'degC')).toBeCloseTo(55, 12);
    expect(convert(-40, 'degF', 'degC')).toBeCloseTo(-40, 12);
    expect(convert(0, 'K', 'degC')).toBeCloseTo(-273.15, 12);
    expect(convert(9, 'degFDifference', 'degCDifference')).toBeCloseTo(5, 12);
  });

  it('comes back to where it started, for every pair of units of one dimension', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...allUnits),
        fc.constantFrom(...allUnits),
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        (from, to, value) => {
          fc.pre(unitTable[from].dimension === unitTable[to].dimension);
          const back = convert(convert(value, from, to), to, from);
          // One part in 10^12 of the value, or of the offset between temperature zeros.
          expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-12 * (Math.abs(value) + 1000));
        },
      ),
      { seed: 811, numRuns: 2000 },
    );
  });

  it('a millimetre on an area is a litre on each square metre, and an inch 62.3 gallons on 100 ft²', () => {
    // NIST SP 811 B.8: an inch is 25.4 mm; a cubic foot is 28.316 85 L and a gallon 3.785 412 L, so 100/12 ft³ are 62.34 gal.
    expect(convert(25.4, 'LPerM2', 'galPer100Ft2')).toBeCloseTo(((100 / 12) * 28.31685) / 3.785412, 4);
    expect(convert(25.4, 'LPerM2', 'ft3Per100Ft2')).toBeCloseTo(100 / 12, 9);
    // SP 811 prints 4.882 428 kg/m² for lb/ft².
    expect(convert(4.882428, 'kgPerM2', 'lbPer100Ft2')).toBeCloseTo(100, 4);
  });

  it('refuses to turn a mass into a length', () => {
    expect(() => convert(1, 'kg', 'm')).toThrow(RangeError);
  });
});

describe('reading what a person typed', () => {
  it.each([
    ['148 °F', 'degF', 148],
    ['148f', 'degF', 148],
    ['64,5 C', 'degC', 64.5],
    ['−40 °C', 'degC', -40],
    ['  -3 ', 'degF', -3],
  ] as const)('reads %s as a temperature', (text, unit, value) => {
    expect(readQuantity(text, 'temperature', 'degF')).toMatchObject({ unit, value });
  });

  it.each(['', 'hot', '12 kg', '1e999', 'NaN', '12 12'])('does not guess at %j', (text) => {
    expect(readQuantity(text, 'temperature', 'degF')).toBeUndefined();
  });
});

describe('reading an area', () => {
  // A square foot is 0.092 903 04 m² exactly (NIST SP 811, B.8).
  it.each([
    ['12m2', 'metric', 12, '12m2'],
    ['12', 'metric', 12, '12 m²'],
    ['100', 'us', 9.290304, '100 ft²'],
    ['4x8ft', 'metric', 32 * 0.09290304, '4x8ft'],
    ['4ftx8ft', 'metric', 32 * 0.09290304, '4ftx8ft'],
    ['4 ft × 8', 'metric', 32 * 0.09290304, '4 ft × 8'],
    ["4' X 8'", 'metric', 32 * 0.09290304, "4' X 8'"],
    ['1.2x2.4m', 'us', 2.88, '1.2x2.4m'],
    ['120cm * 2,4m', 'us', 2.88, '120cm * 2,4m'],
    ['4x8', 'us', 32 * 0.09290304, '4x8 ft'],
  ] as const)('“%s” for a reader of %s units', (typed, system, m2, words) => {
    const read = readArea(typed, system);
    expect(read?.m2).toBeCloseTo(m2, 9);
    expect(read?.words).toBe(words);
    // What is kept reads back to the same in either house.
    for (const other of ['us', 'metric'] as const) expect(readArea(words, other)?.m2).toBeCloseTo(m2, 9);
  });

  it.each(['', 'x', '4x', 'x8ft', '4x8x2ft', '4x8ft2', '0x8ft', '-4x8ft', 'four by eight', '4x8kg'])(
    '“%s” is none',
    (typed) => expect(readArea(typed, 'metric')).toBeUndefined(),
  );

  it('as sides keeps their order', () => expect(readSides('4x8x2m', 'ft')).toEqual([4, 8, 2]));
});
