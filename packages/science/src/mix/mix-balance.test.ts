import examples from '@loamwright/reference/mix-examples.json' with { type: 'json' };
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { listed } from '../catalogue/index.ts';
import { createDraws, type Estimate, isEstimate } from '../estimate/index.ts';
import type { Ingredient } from './ingredient.ts';
import { type MixBalance, type MixBalanceInput, mixBalance } from './mix-balance.ts';
import { weighMix } from './mix-input.ts';
import { fromPercentages, mixInputs } from './testing/arbitrary.ts';

const needs = { draws: createDraws() };

function balance(input: MixBalanceInput): MixBalance {
  const outcome = mixBalance.run(input, needs);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

/** Every estimate in an answer, however deep. */
function estimatesIn(value: unknown): readonly Estimate[] {
  if (typeof value !== 'object' || value === null) return [];
  if ('p50' in value) return [value as Estimate];
  return Object.values(value).flatMap(estimatesIn);
}

describe('published examples, through the calculation', () => {
  it('O4: 10 kg grass and 6.8 kg leaves are 36.7:1 at 60 % (Cornell C/N page)', () => {
    const { grass_kg, grass, leaves_kg, leaves } = examples.O4.inputs;
    const found = balance({
      ingredients: [
        fromPercentages('grass-clippings', grass_kg, grass),
        fromPercentages('autumn-leaves', leaves_kg, leaves),
      ],
    });
    const { ratio, moisture_pctWet } = examples.O4.expected;
    expect(Math.abs((found.carbonToNitrogen_ratio?.value.p50 ?? 0) - ratio)).toBeLessThanOrEqual(
      examples.O4.tolerance.ratio,
    );
    expect(Math.abs(found.moisture_pctWet.value.p50 - moisture_pctWet)).toBeLessThanOrEqual(
      examples.O4.tolerance.moisture_pctWet,
    );
  });

  it('O12: the program answers with real carbon and says that the pair is unmatched', () => {
    const { manure_kg, manure, sawdust, sawdustCarbon_pctDry } = examples.O12.inputs;
    const manureCarbon_pctDry = manure.nitrogen_pctDry * manure.ratio;
    const sawdustLine: Ingredient = {
      ...fromPercentages('sawdust', examples.O12.expected.sawdustFor30_kg, {
        moisture_pctWet: sawdust.moisture_pctWet,
        carbon_pctDry: sawdustCarbon_pctDry,
        nitrogen_pctDry: sawdustCarbon_pctDry / sawdust.ratio,
      }),
    };
    const asPrinted: Ingredient = {
      ...sawdustLine,
      described: { ...sawdustLine.described, nitrogen_pctDry: sawdust.nitrogen_pctDry },
    };
    const found = balance({
      ingredients: [
        fromPercentages('poultry-litter', manure_kg, { ...manure, carbon_pctDry: manureCarbon_pctDry }),
        asPrinted,
      ],
    });
    // 30:1 by the printed arithmetic; 14.6 with real carbon and the printed nitrogen; 15.1 with real carbon
    // and the nitrogen that belongs to it: (0.1944 + 0.1015) / (0.01944 + 0.1015 / 475), by hand.
    expect(found.carbonToNitrogen_ratio?.value.p50).toBeCloseTo(15.06, 1);
    expect(found.warnings).toContainEqual({ code: 'unmatched-pair', materials: ['sawdust'] });
  });

  it('bands of sources that differ are all given', () => {
    const found = balance(mixBalance.example);
    const ratios = found.carbonToNitrogen_ratio?.bands.filter(({ kind }) => kind === 'reasonable') ?? [];
    expect(ratios.map(({ source, low, high }) => [source, low, high])).toEqual([
      ['lsu-3838d', 20, 40],
      ['saskatchewan-2008', 20, 40],
      ['cooperband-2002', 20, 40],
      ['composting-handbook-2022', 20, 60],
    ]);
    const [narrow, , , wide] = ratios;
    expect(wide?.chance.met).toBeGreaterThanOrEqual(narrow?.chance.met ?? Number.POSITIVE_INFINITY);
  });
});

describe('what goes in', () => {
  const grass: Ingredient = { material: 'grass-clippings', amount: { measure: 'bucket-20l', count: 4 } };

  it('every ingredient carries its permit and the reason', () => {
    const weeds: Ingredient = { ...grass, material: 'green-weeds', doubtful: ['seeding-weeds'] };
    const { ingredients, cautions } = balance({ ingredients: [grass, weeds] });
    expect(ingredients.map(({ material, permit, reason }) => [material, permit, reason])).toEqual([
      ['grass-clippings', 'allowed', 'lawn-ask-what-was-sprayed'],
      ['green-weeds', 'only-hot', 'seed-needs-heat'],
    ]);
    expect(cautions).toContain('seeding-weeds');
    expect(cautions).toContain('herbicide-carryover');
  });

  it('what may never go on a heap is refused with its reason', () => {
    const outcome = mixBalance.run({ ingredients: [grass, { ...grass, material: 'dog-cat-waste' }] }, needs);
    expect(outcome).toEqual({
      ok: false,
      problems: [{ code: 'not-for-heaps', path: 'ingredients[1]', found: 'dog-cat-waste', wanted: 'pet-parasites' }],
    });
  });

  it('all problems come at once, each with its place', () => {
    const outcome = mixBalance.run(
      {
        ingredients: [
          { ...grass, material: 'gras-clippings' },
          { ...grass, amount: { measure: 'buckit', count: 1 } },
          { ...grass, doubtful: ['dragons'] },
        ],
      },
      needs,
    );
    expect(outcome.ok ? [] : outcome.problems.map(({ code, path }) => [code, path])).toEqual([
      ['unknown-material', 'ingredients[0].material'],
      ['unknown-measure', 'ingredients[1].amount.measure'],
      ['not-one-of', 'ingredients[2].doubtful'],
    ]);
  });

  it('nothing, and water alone, is told as nothing', () => {
    const none = mixBalance.run({ ingredients: [{ ...grass, amount: { mass_kg: 0 } }] }, needs);
    const water = mixBalance.run(
      { ingredients: [{ material: 'water', amount: { measure: 'bucket-20l', count: 1 } }] },
      needs,
    );
    for (const outcome of [none, water]) {
      expect(outcome).toMatchObject({ ok: false, problems: [{ code: 'nothing-in-it', path: 'ingredients' }] });
    }
  });

  it('an amount no heap can hold is a problem, not a crash', () => {
    const outcome = mixBalance.run({ ingredients: [{ ...grass, amount: { mass_kg: 1e300 } }] }, needs);
    expect(outcome).toMatchObject({ ok: false, problems: [{ code: 'out-of-bounds', path: 'ingredients[0]' }] });
  });

  it('a nitrogen the grower had tested goes before the published C:N', () => {
    const tested: Ingredient = { ...grass, described: { nitrogen_pctDry: 2, volatileSolids_pctDry: 90 } };
    // 90 / 1.8 = 50 % carbon over 2 % nitrogen.
    expect(balance({ ingredients: [tested] }).carbonToNitrogen_ratio?.value.p50).toBeCloseTo(25, 9);
  });

  it('chips that are screened out again count for air and water, not for C:N', () => {
    const chips: Ingredient = { material: 'wood-chips', amount: { measure: 'bucket-20l', count: 4 } };
    const counted = balance({ ingredients: [grass, chips] });
    const screened = balance({ ingredients: [grass, { ...chips, screenedOut: true }] });
    const alone = balance({ ingredients: [grass] });
    expect(screened.carbonToNitrogen_ratio?.value).toEqual(alone.carbonToNitrogen_ratio?.value);
    expect(counted.carbonToNitrogen_ratio?.value.p50).toBeGreaterThan(screened.carbonToNitrogen_ratio?.value.p50 ?? 0);
    expect(screened.moisture_pctWet).toEqual(counted.moisture_pctWet);
    expect(screened.freeAirSpace_pctVolume).toEqual(counted.freeAirSpace_pctVolume);
  });

  it('a mix without nitrogen has no C:N', () => {
    const found = balance({ ingredients: [{ material: 'wood-ash', amount: { measure: 'bucket-20l', count: 1 } }] });
    expect(found.carbonToNitrogen_ratio).toBeUndefined();
    expect(found.warnings.map(({ code }) => code)).toContain('no-nitrogen');
  });

  it('points out ash with rich stuff, woody carbon, too much water, a small and a tall heap', () => {
    const codes = (input: MixBalanceInput): readonly string[] => balance(input).warnings.map(({ code }) => code);
    const ash: Ingredient = { material: 'wood-ash', amount: { measure: 'pail', count: 1 } };
    const chips: Ingredient = { material: 'wood-chips', amount: { measure: 'bucket-20l', count: 10 } };
    expect(codes({ ingredients: [grass, ash] })).toContain('ash-drives-off-ammonia');
    expect(codes({ ingredients: [chips, ash] })).not.toContain('ash-drives-off-ammonia');
    expect(codes({ ingredients: [grass, chips] })).toContain('slow-carbon');
    expect(codes({ ingredients: [grass], water_L: 20 })).toContain('more-water-than-it-holds');
    expect(codes({ ingredients: [chips], water_L: 5 })).not.toContain('more-water-than-it-holds');
    expect(codes({ ingredients: [grass] })).toContain('too-small-to-heat');
    const bay = { width_m: 0.3, depth_m: 0.3, height_m: 1 };
    expect(codes({ ingredients: [chips, grass], bay })).toContain('higher-than-bay');
  });
});

describe('laws of a balance', () => {
  const runs = { numRuns: 60 };

  it('no NaN, ranges in order, percentages within bounds, the same each time', () => {
    fc.assert(
      fc.property(mixInputs, (input) => {
        const found = balance(input);
        for (const { p10, p50, p90 } of estimatesIn(found)) {
          expect(p10 <= p50 && p50 <= p90 && p10 >= 0).toBe(true);
        }
        for (const share of [found.moisture_pctWet.value, found.freeAirSpace_pctVolume.value]) {
          expect(share.p90).toBeLessThanOrEqual(100);
        }
        expect(mixBalance.output.safeParse(found).success).toBe(true);
        expect(mixBalance.run(input, { draws: createDraws() })).toEqual({ ok: true, value: found });
      }),
      runs,
    );
  });

  it('twice of everything is twice the mass and the same ratios', () => {
    const doubled = ({ amount, ...rest }: Ingredient): Ingredient => {
      const twice = (value: number | Estimate): number | Estimate =>
        isEstimate(value) ? { p10: 2 * value.p10, p50: 2 * value.p50, p90: 2 * value.p90 } : 2 * value;
      if ('mass_kg' in amount) return { ...rest, amount: { ...amount, mass_kg: twice(amount.mass_kg) } };
      if ('measure' in amount && typeof amount.count !== 'string') {
        return { ...rest, amount: { ...amount, count: twice(amount.count) } };
      }
      throw new Error('only masses and counts are doubled');
    };
    fc.assert(
      fc.property(mixInputs, (input) => {
        const once = balance(input);
        const water_L = input.water_L as number;
        const twice = balance({ ...input, ingredients: input.ingredients.map(doubled), water_L: 2 * water_L });
        const near = (found: number, wanted: number): void =>
          expect(Math.abs(found - wanted)).toBeLessThanOrEqual(1e-9 * Math.max(1, wanted));
        near(twice.wet_kg.p50, 2 * once.wet_kg.p50);
        near(twice.volume_m3.p90, 2 * once.volume_m3.p90);
        near(twice.nitrogen_kg.p10, 2 * once.nitrogen_kg.p10);
        near(twice.moisture_pctWet.value.p50, once.moisture_pctWet.value.p50);
        near(twice.freeAirSpace_pctVolume.value.p50, once.freeAirSpace_pctVolume.value.p50);
        near(twice.carbonToNitrogen_ratio?.value.p50 ?? 0, once.carbonToNitrogen_ratio?.value.p50 ?? 0);
      }),
      runs,
    );
  });

  it('water raises moisture, lowers air space and leaves C:N alone', () => {
    fc.assert(
      fc.property(mixInputs, fc.double({ min: 1, max: 200, noNaN: true }), (input, more_L) => {
        const before = balance(input);
        const after = balance({ ...input, water_L: (input.water_L as number) + more_L });
        expect(after.moisture_pctWet.value.p50).toBeGreaterThan(before.moisture_pctWet.value.p50);
        const { p50 } = after.freeAirSpace_pctVolume.value;
        expect(p50 < before.freeAirSpace_pctVolume.value.p50 || p50 === 0).toBe(true);
        expect(after.carbonToNitrogen_ratio?.value).toEqual(before.carbonToNitrogen_ratio?.value);
      }),
      runs,
    );
  });

  it('carbon over nitrogen is conserved draw by draw: the mix is the sum of its parts', () => {
    fc.assert(
      fc.property(mixInputs, (input) => {
        const mix = weighMix(input, needs.draws);
        if (!mix.ok) throw new Error(JSON.stringify(mix.problems));
        mix.value.total.forEach((total, i) => {
          const parts = mix.value.ingredients.map(({ portions }) => portions[i]);
          const wet_kg = parts.reduce((sum, part) => sum + (part?.wet_kg ?? Number.NaN), mix.value.water_L[i] ?? 0);
          const carbon_kg = parts.reduce((sum, part) => sum + (part?.carbon_kg ?? Number.NaN), 0);
          expect(total.wet_kg).toBeCloseTo(wet_kg, 6);
          expect(total.carbon_kg).toBeCloseTo(carbon_kg, 6);
        });
      }),
      runs,
    );
  });

  it('the same bucket is the same bucket in two calculations', () => {
    const straw: Ingredient = {
      material: 'straw',
      amount: { measure: 'bucket-20l', count: { p10: 3, p50: 4, p90: 6 } },
    };
    const leaves: Ingredient = { material: 'autumn-leaves', amount: { vague: 'a-lot' } };
    const alone = weighMix({ ingredients: [straw] }, createDraws());
    const beside = weighMix({ ingredients: [leaves, straw] }, createDraws());
    expect(alone.ok && alone.value.ingredients[0]?.portions).toEqual(
      beside.ok && beside.value.ingredients[1]?.portions,
    );
  });
});

describe('in the catalogue', () => {
  it('outside data is checked at the door', () => {
    const outcome = listed(mixBalance).reckon({ ingredients: [], colour: 'brown' }, needs);
    expect(outcome.ok ? [] : outcome.problems.map(({ code }) => code).sort()).toEqual(['too-small', 'unknown-field']);
  });
});
