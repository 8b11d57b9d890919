import { convert } from '@loamwright/units';
import { describe, expect, it } from 'vitest';
import { createDraws } from '../estimate/index.ts';
import { shareOut } from './share-out.ts';
import { type SpreadDepth, type SpreadDepthInput, spreadDepth } from './spread-depth.ts';

const needs = { draws: createDraws() };

function answer(input: SpreadDepthInput): SpreadDepth {
  const outcome = spreadDepth.run(input, needs);
  if (!outcome.ok) throw new RangeError(JSON.stringify(outcome.problems));
  return outcome.value;
}

const compost = { material: 'finished-compost' } as const;
const ft2 = (area: number): number => convert(area, 'ft2', 'm2');
const inches = (depth: number): number => convert(depth, 'in', 'm');
const yd3 = (volume_m3: number): number => convert(volume_m3, 'm3', 'yd3');

describe('a layer over a bed', () => {
  // Cornell Composting, market-label guidelines: yd3 = ft2 × in × 0.0031, a factor of two digits: exact 0.003086.
  it.each([
    [70_000, 2, 434],
    [1200, 3, 11.16],
  ])(
    'Cornell Composting, market-label guidelines: %d ft2 at %d in: %d yd3 by the printed factor',
    (area, depth, printed) => {
      const volume = yd3(answer({ ...compost, area_m2: ft2(area), depth_m: inches(depth) }).volume_m3.p50);
      expect(volume / printed).toBeGreaterThan(0.99);
      expect(volume / printed).toBeLessThan(1.005);
    },
  );

  // Deschutes Recycling and a composter of Champlain Valley: a cubic yard covers so many square feet, to a foot.
  it.each([
    [1 / 3, 972],
    [1, 324],
    [2, 162],
    [3, 108],
  ])('Deschutes Recycling and Champlain Valley: a cubic yard at %d in covers %d ft2', (depth, area) => {
    expect(yd3(answer({ ...compost, area_m2: ft2(area), depth_m: inches(depth) }).volume_m3.p50)).toBeCloseTo(1, 6);
  });

  // The same page of Deschutes Recycling prints 1.6 yd3 for 2,000 ft2 at a quarter inch.
  it('Deschutes Recycling: 2,000 ft2 at a quarter inch are 1.55 yd3', () => {
    expect(yd3(answer({ ...compost, area_m2: ft2(2000), depth_m: inches(0.25) }).volume_m3.p50)).toBeCloseTo(1.55, 1);
  });

  // CalRecycle 2013 (mean of over 1,600 composts) at 600 kg/m3 and 45 % water: 1,123 kg P2O5 a hectare in an inch, 281 in a
  // quarter, which is 4 to 14 years of what vegetables take off. The program's compost has its own density and analysis.
  it('a quarter inch of compost holds many years of phosphorus', () => {
    const found = answer({ ...compost, area_m2: 100, depth_m: inches(0.25) });
    expect(found.phosphate_kgPerHa.p10).toBeLessThan(281);
    expect(found.phosphate_kgPerHa.p90).toBeGreaterThan(281);
    expect(found.phosphorus_years.p10).toBeLessThan(14);
    expect(found.phosphorus_years.p90).toBeGreaterThan(4);
  });

  // CalRecycle 2013, mean of over 1,600 composts: 1.53 % N, 1.34 % P2O5 (0.583 % P), 1.36 % K2O (1.13 % K) of the dry matter, 45 % water,
  // 600 kg/m3. Printed to whole percents of hundredths, so half a percent.
  it.each([
    [1, 84, 1282, 1123, 1140],
    [0.25, 21, 321, 281, 285],
  ])('CalRecycle 2013: %d in on a hectare are %d t dry, %d kg N, %d kg P2O5, %d kg K2O', (depth, dry_t, n, p, k) => {
    const dry = { moisture_pctWet: 45, densityLoose_kgPerM3AsIs: 600 } as const;
    const found = answer({
      material: 'finished-compost',
      described: { ...dry, nitrogen_pctDry: 1.53, phosphorus_pctDry: 1.34 / 2.2914, potassium_pctDry: 1.36 / 1.2046 },
      area_m2: 10_000,
      depth_m: inches(depth),
    });
    const near = (value: number, printed: number): void => {
      expect(Math.abs(value / printed - 1)).toBeLessThan(0.005);
    };
    near((found.mass_kg.p50 * 0.55) / 1000, dry_t);
    near(found.nitrogen_kg.p50, n);
    near(found.phosphate_kg.p50, p);
    near(found.potash_kg.p50, k);
  });

  // City of Greeley (Colorado), soil amendment rule: 4 cubic yards for 1,000 square feet, which is 33 L on a square metre.
  it('City of Greeley: 4 yd3 on 1,000 ft2 are 33 L/m2', () => {
    const depth_m = convert(4, 'yd3', 'm3') / ft2(1000);
    const found = answer({ ...compost, area_m2: 1, depth_m });
    expect(found.volume_m3.p50 * 1000).toBeCloseTo(32.9, 1);
  });

  it('refuses a bed without an area or a layer without depth', () => {
    for (const bad of [
      { area_m2: 0, depth_m: 0.1 },
      { area_m2: 10, depth_m: 0 },
      { area_m2: 10, depth_m: 5 },
    ])
      expect(spreadDepth.input.safeParse({ ...compost, ...bad }).success).toBe(false);
  });
});

describe('a heap shared among beds', () => {
  const beds = [
    { name: 'a', area_m2: 10, want: 1 },
    { name: 'b', area_m2: 6, want: 3 },
    { name: 'c', area_m2: 4, want: 0 },
  ];

  it('leaves none over and cuts none', () => {
    const byArea = shareOut.run({ measures: 7, beds, by: 'area' }, needs);
    expect(byArea).toMatchObject({ ok: true, value: { beds: [{ count: 4 }, { count: 2 }, { count: 1 }] } });
    const byNeed = shareOut.run({ measures: 7, beds, by: 'need' }, needs);
    expect(byNeed).toMatchObject({ ok: true, value: { beds: [{ count: 2 }, { count: 5 }, { count: 0 }] } });
  });

  it('tells where no bed wants any', () => {
    const none = beds.map(({ name, area_m2 }) => ({ name, area_m2 }));
    expect(shareOut.run({ measures: 7, beds: none, by: 'need' }, needs)).toMatchObject({ ok: false });
  });
});
