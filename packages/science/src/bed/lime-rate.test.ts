import { convert } from '@loamwright/units';
import { describe, expect, it } from 'vitest';
import { createDraws } from '../estimate/index.ts';
import { type LimeRate, type LimeRateInput, limeRate } from './lime-rate.ts';

const needs = { draws: createDraws() };

function answer(input: Omit<LimeRateInput, 'area_m2'>): LimeRate {
  const outcome = limeRate.run({ area_m2: 10, ...input }, needs);
  if (!outcome.ok) throw new RangeError('an answer');
  return outcome.value;
}

const lbPer100Ft2 = (kgPerM2: number): number => convert(kgPerM2, 'kg', 'lb') * convert(100, 'ft2', 'm2');
const tonPerAcre = (kgPerM2: number): number => (convert(kgPerM2, 'kg', 'lb') / 2000) * convert(1, 'acre', 'm2');

describe('lime for a bed', () => {
  // A chart of ground limestone to pH 6.5, lb for 100 ft2: sandy loam, loam, clay loam.
  it.each([
    [5.0, 'sandy-loam', 8],
    [5.0, 'loam', 10.5],
    [5.0, 'clay-loam', 15],
    [6.0, 'loam', 4],
    [5.75, 'loam', 6],
  ] as const)('pH %d on %s wants %d lb for 100 ft2', (pH, texture, lb) => {
    expect(lbPer100Ft2(answer({ pH, texture, stuff: 'limestone' }).limestone_kgPerM2.p50)).toBeCloseTo(lb, 6);
  });

  // Oregon State University EM 9585, table 1: tons an acre by the Sikora buffer.
  it.each([
    [6.5, 6.4, 1.8],
    [6.0, 6.8, 4.6],
    [5.0, 5.6, 5.3],
    [6.55, 6.4, 1.65],
  ])('Sikora %d to pH %d wants %d tons an acre', (buffer, target_pH, tons) => {
    const found = answer({ pH: 5, target_pH, buffer: { method: 'sikora', pH: buffer }, stuff: 'limestone' });
    expect(found.by).toBe('sikora');
    expect(tonPerAcre(found.limestone_kgPerM2.p50)).toBeCloseTo(tons, 6);
  });

  // North Carolina: pH 5.0 to 6.0 with acidity 1.2 (buffer 6.3) wants 0.75 tons an acre; 0.76 is printed, from a rounded factor.
  it('Mehlich 6.3, pH 5.0 to 6.0: 0.75 tons an acre', () => {
    const found = answer({ pH: 5, target_pH: 6, buffer: { method: 'mehlich', pH: 6.3 }, stuff: 'limestone' });
    expect(tonPerAcre(found.limestone_kgPerM2.p50)).toBeCloseTo(0.75, 6);
  });

  // Pennsylvania State University: rate × 100 / equivalent: 5 lb at 70 % is 7.14 lb; dressings by 11 and 21 lb.
  it('goes by the lime value, and is split', () => {
    const pure = answer({ pH: 5.9, texture: 'loam', stuff: 'limestone' });
    const weak = answer({ pH: 5.9, texture: 'loam', stuff: 'limestone', equivalent_pct: 70 });
    expect(weak.stuff_kgPerM2.p50 / pure.stuff_kgPerM2.p50).toBeCloseTo(7.142_857 / 5, 6);
    expect(answer({ pH: 6, texture: 'loam', stuff: 'limestone' }).dressings).toBe(1);
    expect(answer({ pH: 5, texture: 'loam', stuff: 'limestone' }).dressings).toBe(2);
    expect(answer({ pH: 4, texture: 'clay-loam', stuff: 'limestone' })).toMatchObject({
      dressings: 3,
      notes: ['split'],
    });
  });
});

describe('ash for a bed', () => {
  // Kansas State University: none at pH 6.5 to 7 or above. Oregon State University: not on potatoes or acid-lovers.
  it('none on sweet soil, none for potatoes, and a test where nobody knows', () => {
    expect(answer({ pH: 7.8, stuff: 'wood-ash' })).toMatchObject({ verdict: 'none', stuff_kg: { p90: 0 } });
    expect(answer({ pH: 6.5, stuff: 'wood-ash' }).verdict).toBe('none');
    expect(answer({ pH: 5, stuff: 'wood-ash', crops: ['potato'] })).toMatchObject({
      verdict: 'none',
      notes: ['ash-not-here'],
    });
    expect(answer({ stuff: 'wood-ash' }).verdict).toBe('test-first');
  });

  // A university release of 1991: 10 to 20 lb for 1,000 ft2 a year, 0.05 to 0.1 kg/m2.
  it('never above 20 lb for 1,000 ft2', () => {
    const found = answer({ pH: 5, stuff: 'wood-ash', texture: 'loam' });
    expect(found.ashCeiling_kgPerM2?.low).toBeCloseTo(0.049, 3);
    expect(found.ashCeiling_kgPerM2?.high).toBeCloseTo(0.098, 3);
    expect(found.stuff_kgPerM2.p90).toBeLessThanOrEqual(found.ashCeiling_kgPerM2?.high ?? 0);
    expect(found.notes).toContain('ash-ceiling');
    expect(found.cautions).toContain('ash-caustic');
  });

  // The list of crops that want it sour is that of the ash leaflets (Kansas State University, The Use of Wood Ashes); that lime harms
  // them in the same way is common practice, no source.
  it.each(['limestone', 'wood-ash'] as const)('no %s for potatoes and blueberries', (stuff) => {
    expect(answer({ stuff, pH: 5.5, texture: 'loam', crops: ['potato'] }).verdict).toBe('none');
  });
});
