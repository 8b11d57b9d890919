import { describe, expect, it } from 'vitest';
import { createDraws } from '../estimate/index.ts';
import { bedFill } from './bed-fill.ts';
import type { BedFill, BedFillInput } from './bed-fill-io.ts';
import { asSaturated_dSPerM, type CompostKnown, maturitySigns, ripenessFor } from './compost.ts';
import type { RecipeId } from './parameters.ts';
import { poreSpace_pctVolume } from './part.ts';
import { pottingMix } from './potting-mix.ts';
import type { PottingMix, PottingMixInput } from './potting-mix-io.ts';

const draws = createDraws();
const FOOT_M = 0.3048;
const CUBIC_YARD_M3 = 0.764554857984;
const KG_PER_M2_PER_LB_PER_FT2 = 4.88243;

function potted(input: Partial<PottingMixInput>): PottingMix {
  const outcome = pottingMix.run({ use: 'potting-on', wanted: [{ count: 1, each_L: 100 }], ...input }, { draws });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

function filled(input: BedFillInput): BedFill {
  const outcome = bedFill.run(input, { draws });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

describe('published recipes by volume', () => {
  it.each<readonly [RecipeId, string, Readonly<Record<string, number>>]>([
    // Lawrence and Newell 1938, John Innes seed compost: 2 loam, 1 peat, 1 sand; potting: 7, 3, 2.
    ['leaf-mould-seed-mix', 'sowing', { loam: 50, 'leaf-mould': 25, sand: 25 }],
    ['seven-three-two', 'potting-on', { loam: 700 / 12, 'leaf-mould': 300 / 12, sand: 200 / 12 }],
    // Garden Organic: one part each of loam, leaf mould, compost.
    ['thirds-with-leaf-mould', 'potting-on', { compost: 100 / 3, 'leaf-mould': 100 / 3, loam: 100 / 3 }],
    // Kuepper and Everett 2004, Appendix 3: 2 compost, 2 peat or coir, 1 perlite.
    ['compost-seedling-mix', 'sowing', { compost: 40, coir: 40, perlite: 20 }],
  ])('%s', (recipe, use, shares) => {
    const { parts } = potted({ recipe, use: use as PottingMixInput['use'] });
    const told = Object.fromEntries(parts.map(({ part, share_pctVolume }) => [part, share_pctVolume]));
    expect(Object.keys(told).sort()).toEqual(Object.keys(shares).sort());
    for (const [part, share] of Object.entries(shares)) expect(told[part], part).toBeCloseTo(share, 9);
  });
});

describe('salts by one method told as those of another', () => {
  // UMass Extension, soluble salts of soilless media, Table 2: the same class edges by three methods.
  it.each([
    ['one-to-two', 0.8, 2],
    ['one-to-two', 1.3, 3.5],
    ['one-to-two', 1.8, 5],
    ['pour-through', 2.6, 2],
    ['pour-through', 4.6, 3.5],
    ['pour-through', 7.8, 6],
    // Missouri, Compost analysis, Table 1: desired maximum 4.0 in the paste, 2.5 at 1:1.
    ['one-to-one', 2.5, 4],
    // Bunt 1988 and McLachlan 2004 as quoted: 3.5 in the extract, 0.35 at 1:5 by volume.
    ['one-to-five', 0.35, 3.5],
    ['saturated-extract', 2.2, 2.2],
  ] as const)('%s of %d is %d in a saturated extract', (method, reading, saturated) => {
    expect(asSaturated_dSPerM(reading, method)).toBeCloseTo(saturated, 9);
  });

  it('two publications agree at 1:2 within 5 %', () => {
    // Missouri sets 1.5 at 1:2 beside 4.0 in the paste; the line between the class edges of UMass gives 4.1.
    expect(Math.abs(asSaturated_dSPerM(1.5, 'one-to-two') / 4 - 1)).toBeLessThan(0.05);
  });

  it('2.6 is extreme at 1:2, normal in an extract and low by pour-through', () => {
    // UMass Extension, the example beside Table 2: above 6.0, from 2.0 to 3.5, up to 2.0.
    expect(asSaturated_dSPerM(2.6, 'one-to-two')).toBeGreaterThan(6);
    expect(asSaturated_dSPerM(2.6, 'saturated-extract')).toBeGreaterThan(2);
    expect(asSaturated_dSPerM(2.6, 'saturated-extract')).toBeLessThan(3.5);
    expect(asSaturated_dSPerM(2.6, 'pour-through')).toBeLessThanOrEqual(2 + 1e-9);
  });
});

describe('pores and air of a medium', () => {
  it.each([
    [110, 60],
    [270, 74],
    [900, 45],
  ])('dry %d g/l with %d %% of water: the two published equations agree', (dry_gPerL, water_pct) => {
    // Acta Horticulturae 294: PS = 96.72 - 0.038 VW; AV = 96.72 + 0.062 VW - 100 DD, DD in g/ml with its water.
    const drained_gPerMl = (dry_gPerL + 10 * water_pct) / 1000;
    const air = 96.72 + 0.062 * dry_gPerL - 100 * drained_gPerMl;
    expect(poreSpace_pctVolume(dry_gPerL) - water_pct).toBeCloseTo(air, 9);
  });

  it.each([
    // Pacific Bulb Society, table of ingredients as measured: dry g/l, water %, air %. Five points, for one sample each.
    ['aged sieved compost', 270, 74, 12],
    ['gravel', 1390, 10, 34],
    ['granite grit', 1340, 13, 28],
  ])('%s', (_what, dry_gPerL, water_pct, air_pct) => {
    expect(Math.abs(poreSpace_pctVolume(dry_gPerL) - water_pct - air_pct)).toBeLessThan(5);
  });
});

describe('ripeness', () => {
  // California Compost Quality Council 2001 (numbers recalled); Minnesota: at least 80 % of the control.
  it.each<readonly [CompostKnown, string]>([
    [{ emergence_pctOfControl: 79 }, 'immature'],
    [{ emergence_pctOfControl: 80 }, 'mature'],
    [{ emergence_pctOfControl: 90 }, 'mature'],
    [{ emergence_pctOfControl: 91 }, 'very-mature'],
    [{ selfHeating_K: 9 }, 'very-mature'],
    [{ selfHeating_K: 20 }, 'mature'],
    [{ selfHeating_K: 21 }, 'immature'],
    [{ age_months: 12 }, 'mature'],
    [{ smell: 'ammonia' }, 'immature'],
  ])('%j is %s', (known, says) => {
    expect(maturitySigns(known).map((sign) => sign.says)).toEqual([says]);
  });

  it('the worst sign counts, and seeds want more than grown plants', () => {
    const good = maturitySigns({ emergence_pctOfControl: 85, selfHeating_K: 5 });
    expect(ripenessFor(good, 'mature')).toBe('ready');
    expect(ripenessFor(good, 'very-mature')).toBe('for-bigger-plants');
    expect(ripenessFor(maturitySigns({ age_months: 20, smell: 'sour' }), 'mature')).toBe('young');
    expect(ripenessFor(maturitySigns({ smell: 'earthy', age_months: 2 }), 'mature')).toBe('unknown');
  });
});

it('a third of compost is the most handbooks give pots, a quarter is within', () => {
  // University of Minnesota Extension: no more than one-quarter to one-third by volume.
  const stands = (compost: number, sand: number): string =>
    potted({
      parts: [
        { part: 'compost', parts: compost },
        { part: 'sand', parts: sand },
      ],
    }).compost.stands;
  expect(stands(1, 3)).toBe('within');
  expect(stands(1, 2)).toBe('upper');
  expect(stands(2, 3)).toBe('over');
});

it('salts are washed out with twice the volume of water', () => {
  // University of California: water of twice the volume of the pot.
  const { salts, parts } = potted({});
  const compost = parts.find(({ part }) => part === 'compost');
  expect(salts.leach_L.p50 / 1000).toBeCloseTo(2 * (compost?.volume_m3.p50 ?? 0), 9);
});

describe('a raised bed', () => {
  it('holds what a published example says', () => {
    // A garden magazine's example: 10 by 8 feet, 6 inches deep, 40 cubic feet, about 1.5 cubic yards.
    const bed = { length_m: 10 * FOOT_M, width_m: 8 * FOOT_M, depth_m: FOOT_M / 2 };
    expect(filled({ bed }).volume_m3.p50 / FOOT_M ** 3).toBeCloseTo(40, 9);
    expect(filled({ bed }).volume_m3.p50 / CUBIC_YARD_M3).toBeCloseTo(1.5, 1);
  });

  it.each([
    [32, 12],
    [80, 6],
    [70, 24],
  ])('%d square feet, %d inches deep, by Cornell’s factor', (area_ft2, depth_in) => {
    // Cornell Waste Management Institute: cubic yards = square feet × inches × 0.0031; the exact factor is 0.003086.
    const bed = { area_m2: area_ft2 * FOOT_M ** 2, depth_m: (depth_in * FOOT_M) / 12 };
    const yards = filled({ bed }).volume_m3.p50 / CUBIC_YARD_M3;
    expect(Math.abs(yards / (area_ft2 * depth_in * 0.0031) - 1)).toBeLessThan(0.006);
  });

  it('a quarter to a half of compost by volume is 5 to 15 % organic matter by weight', () => {
    // University of Maryland Extension, Filling raised beds. One point above 15, for rounding and other soils.
    const organic = (compost_pctVolume: number): number =>
      filled({ bed: { area_m2: 3, depth_m: 0.3 }, compost_pctVolume }).organicMatter_pctDry.p50;
    expect(organic(25)).toBeGreaterThan(5);
    expect(organic(50)).toBeLessThan(16);
    expect(organic(50)).toBeGreaterThan(organic(25));
  });

  it.each([0.3, 0.4, 0.45])('%d m deep weighs what is said of roof gardens', (depth_m) => {
    // Soil Science Society of America: 80 to 150 pounds per square foot.
    const { load_kgPerM2 } = filled({ bed: { area_m2: 3, depth_m } });
    expect(load_kgPerM2.p50 / KG_PER_M2_PER_LB_PER_FT2).toBeGreaterThan(80);
    expect(load_kgPerM2.p50 / KG_PER_M2_PER_LB_PER_FT2).toBeLessThan(150);
  });

  it('a deck’s usual design load is 60 pounds per square foot', () => {
    // University of Delaware 2015, quoting the American Society of Civil Engineers; rounded to a whole kilogram.
    const { deck_kgPerM2 } = filled({ bed: { area_m2: 3, depth_m: 0.3 } });
    expect(Math.abs(deck_kgPerM2 - 60 * KG_PER_M2_PER_LB_PER_FT2)).toBeLessThan(0.5);
  });

  it('vegetables take decades to use the phosphorus of a bed of compost', () => {
    // A quarter inch of compost with the mean analysis of CalRecycle (0.59 % P, 600 kg/m3, 45 % water) holds 281 kg P2O5 per hectare;
    // vegetables take off 20 to 70 (New England Vegetable Management Guide, Table 4): 4 to 14 years.
    const bed = { area_m2: 10, depth_m: 0.3 };
    const { phosphorus_years, bring_m3 } = filled({ bed, compost_pctVolume: 100 });
    const quarterInches = bring_m3.p50 / 10 / 0.00635;
    expect(phosphorus_years.p50).toBeGreaterThan(4 * quarterInches);
    expect(phosphorus_years.p50).toBeLessThan(14 * quarterInches);
  });
});
