import { describe, expect, it } from 'vitest';
import { createDraws } from '../../estimate/index.ts';
import { type BuildUp, type BuildUpInput, buildUp } from './build-up.ts';

const needs = { draws: createDraws() };

function answer(input: Partial<BuildUpInput>): BuildUp {
  const found = buildUp.run({ area_m2: 10, plan: [], crops: [], ...input }, needs);
  if (!found.ok) throw new RangeError(JSON.stringify(found.problems));
  return found.value;
}

// CalRecycle's mean compost of 2013 at 600 kg/m³ and 45 % moisture: P₂O₅ 1.34 and K₂O 1.36 % of dry mass.
const quarterInch: BuildUpInput['plan'] = [
  {
    material: 'finished-compost',
    amount: { mass_kg: 10_000 * 0.0254 * 0.25 * 600 },
    described: {
      moisture_pctWet: 45,
      phosphorus_pctDry: 1.34 / 2.2914,
      potassium_pctDry: 1.36 / 1.2046,
    },
  },
];

describe('phosphorus and potassium years on', () => {
  // A quarter inch on a hectare: 281 kg P₂O₅ and 285 kg K₂O, by arithmetic on the figures above.
  it('comes on with compost as its analysis has it', () => {
    const { phosphate, potash } = answer({ area_m2: 10_000, plan: quarterInch });
    expect(phosphate.broughtEachYear_kg.p50).toBeCloseTo(280.8, 0);
    expect(potash.broughtEachYear_kg.p50).toBeCloseTo(285, 0);
  });

  // USDA SR26, NDB 11233: kale holds 92 mg P and 491 mg K in 100 g; 200 kg of it take that times 2.2914 and 1.2046.
  it('leaves with the harvest as the table has it', () => {
    const { phosphate, potash } = answer({ crops: [{ crop: 'kale', area_m2: 100, yield_kgPerM2: 2 }] });
    const [p, k] = [phosphate.takenEachYear_kg.p50, potash.takenEachYear_kg.p50];
    // The table is rounded to a hundredth of a kilogram per tonne.
    expect(Math.abs(p - 0.2 * 0.92 * 2.2914)).toBeLessThan(0.2 * 0.005);
    expect(Math.abs(k - 0.2 * 4.91 * 1.2046)).toBeLessThan(0.2 * 0.005);
    expect(phosphate.overYears_kg.p50).toBeCloseTo(-10 * p, 9);
    expect(phosphate.overYears_harvests?.p50).toBeCloseTo(-10, 9);
  });

  // Vegetables take 20 to 70 kg/ha, so a quarter inch of it is 4 to 14 harvests; a year's own harvest comes off.
  it('is some harvests each year under a quarter inch of compost', () => {
    const { phosphate } = answer({
      area_m2: 10_000,
      plan: quarterInch,
      years: 1,
      crops: [
        { crop: 'kale', area_m2: 5000 },
        { crop: 'potato', area_m2: 5000 },
      ],
    });
    expect(phosphate.overYears_harvests?.p50).toBeGreaterThan(3);
    expect(phosphate.overYears_harvests?.p50).toBeLessThan(13);
    expect(phosphate.way).toBe('builds');
  });

  it.each([
    ['low', 'fine'],
    ['optimum', 'less'],
    ['high', 'stop'],
    ['excessive', 'stop'],
    [undefined, 'test'],
  ] as const)('asks by a soil test that says %s: %s', (phosphorusClass, act) => {
    const found = answer({ area_m2: 10_000, plan: quarterInch, ...(phosphorusClass && { phosphorusClass }) });
    expect(found.phosphate.act).toBe(act);
  });

  // Common practice, no source: without a test nobody can say that a draw-down suits the soil.
  it.each([
    ['low', 'more'],
    ['optimum', 'test'],
    ['high', 'fine'],
    ['excessive', 'fine'],
    [undefined, 'test'],
  ] as const)('drawn down by harvests alone, a soil test that says %s asks: %s', (phosphorusClass, act) => {
    const found = answer({ crops: [{ crop: 'kale', area_m2: 10 }], ...(phosphorusClass && { phosphorusClass }) });
    expect([found.phosphate.way, found.phosphate.act]).toEqual(['falls', act]);
  });

  it.each([
    ['low', 'more'],
    ['optimum', 'fine'],
    [undefined, 'test'],
  ] as const)(
    'where nothing comes on or goes it stays, and a soil test that says %s asks: %s',
    (phosphorusClass, act) => {
      const found = answer({ ...(phosphorusClass && { phosphorusClass }) });
      expect([found.phosphate.way, found.phosphate.act]).toEqual(['same', act]);
    },
  );

  it('refuses what has no harvest', () => {
    const found = buildUp.run({ area_m2: 10, plan: [], crops: [{ crop: 'hairy-vetch', area_m2: 10 }] }, needs);
    expect(found).toMatchObject({ ok: false, problems: [{ code: 'cover-crop', path: 'crops[0].crop' }] });
  });
});
