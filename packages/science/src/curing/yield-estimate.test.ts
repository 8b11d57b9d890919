import { describe, expect, it } from 'vitest';
import { createDraws, normalQuantile } from '../estimate/index.ts';
import { dryLeft_kg } from './left.ts';
import { sharpen } from './sharpen.ts';
import { yieldEstimate } from './yield-estimate.ts';
import type { HeapYield, YieldInput } from './yield-io.ts';

const needs = { draws: createDraws() };

function answer(input: YieldInput): HeapYield {
  const outcome = yieldEstimate.run(input, needs);
  if (!outcome.ok) throw new RangeError(JSON.stringify(outcome.problems));
  return outcome.value;
}

function problems(input: YieldInput): readonly string[] {
  const outcome = yieldEstimate.run(input, needs);
  return outcome.ok ? [] : outcome.problems.map(({ code, path }) => `${code} ${path}`);
}

const portion = (dry_kg: number, ash_pctDry: number) => ({
  wet_kg: 2 * dry_kg,
  dry_kg,
  volatileSolids_kg: dry_kg * (1 - ash_pctDry / 100),
  carbon_kg: 0,
  degradableCarbon_kg: 0,
  nitrogen_kg: 0,
  availableNitrogen_kg: 0,
  phosphorus_kg: 0,
  potassium_kg: 0,
  volume_m3: 1,
});

const straw = (mass_kg: number, ash_pctDry: number, moisture_pctWet: number) => ({
  material: 'straw',
  amount: { mass_kg },
  described: { volatileSolids_pctDry: 100 - ash_pctDry, moisture_pctWet, carbonToNitrogen_ratio: 60 },
});

describe('the ash balance', () => {
  // Ash stays (definition): from 15 to 30 % ash half the dry mass is left and 58.8 % of the organic matter is gone.
  it('halves the dry mass as ash doubles', () => {
    expect(dryLeft_kg(portion(100, 15), 30)).toBeCloseTo(50, 10);
    const found = answer({ ingredients: [straw(100, 15, 20)], readyAsh_pctDry: 30 });
    expect(found.basis).toBe('ash');
    expect(found.dry_kg.p50).toBeCloseTo(40, 6);
    expect(found.lost?.organicMatter_pct.p50).toBeCloseTo(58.8, 1);
  });

  // Transform Compost Systems 2012, Understanding moisture loss during composting: 1000 t at 65 % become 500 t at 50 %, so 350 t of
  // dry matter become 250 t. The ash that means follows from the balance: 350 × 15 / 250 = 21 %. Exact but for rounding.
  it('halves the weight where moisture falls from 65 to 50 % and dry matter by 29 %', () => {
    const found = answer({
      ingredients: [straw(1_000_000, 15, 65)],
      readyAsh_pctDry: 21,
      readyMoisture_pctWet: 50,
    });
    expect(found.dry_kg.p50 / 1000).toBeCloseTo(250, 6);
    expect(found.wet_kg.p50 / 1000).toBeCloseTo(500, 6);
    expect(found.lost?.dry_pct.p50).toBeCloseTo(28.57, 2);
  });

  it('never leaves more than went in, and cannot have less ash than went in', () => {
    expect(dryLeft_kg(portion(100, 15), 10)).toBe(100);
    expect(problems({ ingredients: [straw(100, 15, 20)], readyAsh_pctDry: 12 })).toEqual([
      'out-of-bounds readyAsh_pctDry',
    ]);
  });

  it('says where soil or grit must have got in', () => {
    expect(answer({ ingredients: [straw(100, 8, 20)], readyAsh_pctDry: 70 }).notes).toContain('grit');
    expect(answer({ ingredients: [straw(100, 8, 20)], readyAsh_pctDry: 15 }).notes).not.toContain('grit');
  });
});

describe('what rotting leaves', () => {
  const household: YieldInput = {
    ingredients: [
      { material: 'kitchen-scraps', amount: { mass_kg: 75 } },
      { material: 'grass-clippings', amount: { mass_kg: 15 } },
      { material: 'hedge-chippings', amount: { mass_kg: 10 } },
    ],
  };

  // Andersen et al. 2011: six units of food and garden waste at home, one year: 63 to 77 % of the carbon and 51 to 68 % of the
  // nitrogen lost. The shares of food and garden waste are ours.
  it('loses as much carbon as home composting did', () => {
    const { carbon_pct } = answer(household).lost ?? {};
    expect(carbon_pct?.p50).toBeGreaterThan(63);
    expect(carbon_pct?.p50).toBeLessThan(77);
  });

  it('has the nitrogen that home composting lost within its range; its middle is a little below', () => {
    const { nitrogen_pct } = answer(household).lost ?? {};
    expect(nitrogen_pct?.p10).toBeLessThan(51);
    expect(nitrogen_pct?.p90).toBeGreaterThan(51);
    expect(nitrogen_pct?.p50).toBeGreaterThan(45);
  });

  it('keeps all the phosphorus, and less potassium in the open than sheltered', () => {
    const kept = answer({ ...household, shelter: 'sheltered' });
    const washed = answer({ ...household, shelter: 'open' });
    expect(kept.phosphorus_kg).toEqual(washed.phosphorus_kg);
    expect(kept.potassium_kg.p50).toBeGreaterThan(washed.potassium_kg.p50);
  });
});

describe('what the garden itself tells', () => {
  // Saskatchewan 2008: composting solid manure takes 50 to 70 % of the volume.
  it('a heap of which nothing is known but a cubic metre leaves 0.3 to 0.5', () => {
    const { volume_m3, basis, notes } = answer({ built_m3: 1 });
    expect(basis).toBe('volume');
    expect(notes).toContain('not-listed');
    expect(volume_m3.p50).toBeCloseTo(0.4, 2);
    expect(volume_m3.p10).toBeGreaterThan(0.3);
    expect(volume_m3.p90).toBeLessThan(0.5);
  });

  it('past heaps draw the answer to what they kept, more of them more so', () => {
    const past = { built_m3: 1, ready_m3: 0.5 };
    const before = answer({ built_m3: 1 });
    const once = answer({ built_m3: 1, pastHeaps: [past] });
    const often = answer({ built_m3: 1, pastHeaps: Array.from({ length: 12 }, () => past) });
    expect(once.volume_m3.p50).toBeGreaterThan(before.volume_m3.p50);
    expect(often.volume_m3.p50).toBeGreaterThan(once.volume_m3.p50);
    expect(often.volume_m3.p50).toBeLessThan(0.5);
    expect(often.notes).toContain('own-heaps');
  });

  it('a tape that contradicts the reckoning is believed for the volume, and said', () => {
    const found = answer({ built_m3: 1, ready_m3: 0.95 });
    expect(found.notes).toContain('unlike-tape');
    expect(found.volume_m3.p50).toBeCloseTo(0.95, 1);
    // Where only the volume is known mass goes with it: no compost weighs more than two tonnes to the cubic metre.
    const small = answer({ built_m3: 1, ready_m3: 0.05 });
    expect(small.notes).toContain('unlike-tape');
    expect(small.wet_kg.p90 / small.volume_m3.p10).toBeLessThan(2000);
  });

  it('a heap that grew is a slip', () => {
    expect(problems({ built_m3: 1, ready_m3: 1.2 })).toEqual(['out-of-bounds ready_m3']);
    expect(problems({ built_m3: 1, pastHeaps: [{ built_m3: 1, ready_m3: 2 }] })).toEqual([
      'out-of-bounds pastHeaps[0].ready_m3',
    ]);
    expect(problems({})).toEqual(['missing built_m3']);
  });
});

describe('sharpening', () => {
  // A normal prior and a normal error on the logarithm have a known posterior (Gelman et al., Bayesian Data Analysis, section 2.5).
  it('agrees with the posterior of two normals', () => {
    const count = 4096;
    const prior = Float64Array.from({ length: count }, (_, i) => Math.exp(0.3 * normalQuantile((i + 0.5) / count)));
    const sd = 0.2;
    const factor = Math.exp(sd * normalQuantile(0.95));
    const places = sharpen(prior, { value: 1.5, factor });
    const logs = Array.from(places, (place) => Math.log(prior[place] ?? Number.NaN));
    const mean = logs.reduce((sum, one) => sum + one, 0) / count;
    const spread = Math.sqrt(logs.reduce((sum, one) => sum + (one - mean) ** 2, 0) / count);
    const weight = 0.3 ** 2 / (0.3 ** 2 + sd ** 2);
    // 4096 even steps hold the mean to about a thousandth.
    expect(mean).toBeCloseTo(weight * Math.log(1.5), 2);
    expect(spread).toBeCloseTo(Math.sqrt(1 / (1 / 0.3 ** 2 + 1 / sd ** 2)), 2);
  });
});
