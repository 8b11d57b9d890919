import { describe, expect, it } from 'vitest';
import { createDraws } from '../estimate/index.ts';
import { type SoilLayer, type SoilWater, soilWater } from './soil-water.ts';
import { carbonParameters } from './years/carbon-parameters.ts';

function answer(...layers: readonly SoilLayer[]): SoilWater {
  const outcome = soilWater.run({ layers }, { draws: createDraws() });
  if (!outcome.ok) throw new RangeError(JSON.stringify(outcome.problems));
  return outcome.value;
}

describe('water of a soil, layer by layer', () => {
  it('lecture slides, Relating Texture to Hydraulics: 30 cm of 0.05, 100 of 0.15 and 20 of 0.20 hold 20.5 cm, moderate', () => {
    const found = answer(
      { thickness_m: 0.3, available_pctVolume: 5 },
      { thickness_m: 1, available_pctVolume: 15 },
      { thickness_m: 0.2, available_pctVolume: 20 },
    );
    expect(found.depth_m).toBeCloseTo(1.5, 12);
    expect(found.available_mm.p50).toBeCloseTo(205, 9);
    expect(found.class).toBe('moderate');
    expect(found.notes).toEqual([]);
    expect(found.layers.map(({ available_mm }) => available_mm.p50)).toEqual([
      expect.closeTo(15, 9),
      expect.closeTo(150, 9),
      expect.closeTo(40, 9),
    ]);
  });

  // US soil surveys, glossary: 0 to 3, 6, 9, 12 inches and more in 60 inches or to a limiting layer.
  it.each([
    [2.9, 'very-low'],
    [3.1, 'low'],
    [5.9, 'low'],
    [6.1, 'moderate'],
    [9.1, 'high'],
    [11.9, 'high'],
    [12.1, 'very-high'],
  ] as const)('US soil survey glossary: %d inches in 60 are %s', (inches, grade) => {
    expect(answer({ thickness_m: 1.524, available_pctVolume: (100 * inches) / 60 }).class).toBe(grade);
  });

  it('US soil survey glossary: what lies below 60 inches adds water and changes no class', () => {
    const deep = answer({ thickness_m: 1.524, available_pctVolume: 11 }, { thickness_m: 3, available_pctVolume: 30 });
    expect(deep.class).toBe('moderate');
    expect(deep.available_mm.p50).toBeCloseTo(1524 * 0.11 + 900, 6);
  });

  // Saxton and Rawls 2006, Table 3 (recalled), 2.5 % organic matter; printed to 10 mm/m.
  it.each([
    ['sand', 50],
    ['sandy-loam', 100],
    ['loam', 140],
    ['silt-loam', 200],
    ['clay-loam', 140],
    ['clay', 120],
  ] as const)(
    'Saxton and Rawls 2006, Table 3: %s holds %d mm in a metre, and soils of the class differ',
    (texture, mm) => {
      const { available_mm, notes } = answer({ thickness_m: 1, texture, organicMatter_pctDry: 2.5 });
      expect(Math.abs(available_mm.p50 / mm - 1)).toBeLessThan(0.1);
      expect(available_mm.p10).toBeLessThan(mm);
      expect(available_mm.p90).toBeGreaterThan(mm);
      expect(notes).toContain('shallow');
    },
  );

  it('takes for a topsoil what the years of a bed take, less beneath it, and nothing where it was told or the water measured', () => {
    const taken = (...layers: readonly SoilLayer[]): readonly (number | undefined)[] =>
      answer(...layers).layers.map(({ organicTaken_pctDry }) => organicTaken_pctDry?.p50);
    const top = expect.closeTo(carbonParameters.untested_pctDry.typical, 1);
    const beneath = expect.closeTo(carbonParameters.beneathUntested_pctDry.typical, 1);
    expect(taken({ thickness_m: 0.3, texture: 'loam' }, { thickness_m: 0.7, texture: 'clay-loam' })).toEqual([
      top,
      beneath,
    ]);
    expect(taken({ thickness_m: 0.05, texture: 'loam' }, { thickness_m: 0.2, texture: 'loam' })).toEqual([top, top]);
    expect(
      taken(
        { thickness_m: 0.3, texture: 'loam', organicMatter_pctDry: 4 },
        { thickness_m: 0.7, available_pctVolume: 12 },
      ),
    ).toEqual([undefined, undefined]);
    expect(carbonParameters.beneathUntested_pctDry.high).toBeLessThan(carbonParameters.untested_pctDry.typical);
  });

  it('stones hold none', () => {
    expect(answer({ thickness_m: 1, available_pctVolume: 15, stones_pctVolume: 40 }).available_mm.p50).toBeCloseTo(
      90,
      9,
    );
  });

  it('wants a texture or the water of a layer, one of them', () => {
    const wrong = [{}, { texture: 'loam', available_pctVolume: 9 }, { texture: 'soup' }];
    for (const layer of wrong)
      expect(soilWater.input.safeParse({ layers: [{ thickness_m: 1, ...layer }] }).success).toBe(false);
  });
});
