import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { listed } from '../catalogue/index.ts';
import { createDraws, type Estimate } from '../estimate/index.ts';
import { bedFill } from './bed-fill.ts';
import type { BedFill, BedFillInput } from './bed-fill-io.ts';
import { asSaturated_dSPerM } from './compost.ts';
import { methodIds, partIds, useIds } from './parameters.ts';
import { type PottingMix, type PottingMixInput, pottingMix } from './potting-mix.ts';

const draws = createDraws(64);
const runs = { seed: 31, numRuns: 60 };

function potted(input: PottingMixInput): PottingMix {
  const outcome = pottingMix.run(input, { draws });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

function filled(input: BedFillInput): BedFill {
  const outcome = bedFill.run(input, { draws });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

const parts = fc.array(
  fc.record({ part: fc.constantFrom(...partIds), parts: fc.double({ min: 0.01, max: 100, noNaN: true }) }),
  { minLength: 1, maxLength: 8 },
);
const compost = fc.record(
  {
    age_months: fc.double({ min: 0, max: 48, noNaN: true }),
    selfHeating_K: fc.double({ min: 0, max: 60, noNaN: true }),
    emergence_pctOfControl: fc.double({ min: 0, max: 150, noNaN: true }),
    smell: fc.constantFrom('earthy', 'ammonia', 'sour'),
    conductivity: fc.record({
      value_dSPerM: fc.double({ min: 0, max: 20, noNaN: true }),
      method: fc.constantFrom(...methodIds),
    }),
    madeOf: fc.constantFrom('plants', 'manure-or-salty', 'unknown'),
    provenHot: fc.boolean(),
  },
  { requiredKeys: [] },
);
const potting = fc.record({
  use: fc.constantFrom(...useIds),
  wanted: fc.array(
    fc.record({ count: fc.integer({ min: 1, max: 500 }), each_L: fc.double({ min: 0.05, max: 200, noNaN: true }) }),
    {
      minLength: 1,
      maxLength: 3,
    },
  ),
  compost,
  parts,
}) as fc.Arbitrary<PottingMixInput>;
const bed = fc.record({
  bed: fc.record({
    area_m2: fc.double({ min: 0.1, max: 100, noNaN: true }),
    depth_m: fc.double({ min: 0.1, max: 1.5, noNaN: true }),
  }),
  compost,
  parts,
}) as fc.Arbitrary<BedFillInput>;

/** Every estimate anywhere in an answer. */
function estimatesIn(value: unknown): readonly Estimate[] {
  if (typeof value !== 'object' || value === null) return [];
  if ('p10' in value) return [value as Estimate];
  return Object.values(value).flatMap(estimatesIn);
}

function sound(answer: object): void {
  for (const { p10, p50, p90 } of estimatesIn(answer)) {
    expect(Number.isFinite(p10) && Number.isFinite(p50) && Number.isFinite(p90)).toBe(true);
    expect(p10 <= p50 && p50 <= p90).toBe(true);
    expect(p10).toBeGreaterThanOrEqual(0);
  }
}

describe('any mix', () => {
  it('has ordered ranges that are never negative, and shares that make a whole', () => {
    fc.assert(
      fc.property(potting, (input) => {
        const mix = potted(input);
        sound(mix);
        expect(mix.parts.reduce((sum, { share_pctVolume }) => sum + share_pctVolume, 0)).toBeCloseTo(100, 6);
        expect(mix.wet.waterHeld_pctVolume.p90).toBeLessThanOrEqual(100);
      }),
      runs,
    );
  });

  it('twice the pots take twice the stuff, and nothing else changes', () => {
    fc.assert(
      fc.property(potting, (input) => {
        const once = potted(input);
        const twice = potted({ ...input, wanted: [...input.wanted, ...input.wanted] });
        twice.parts.forEach(({ volume_m3, mass_kg }, i) => {
          expect(volume_m3.p50).toBeCloseTo(2 * (once.parts[i]?.volume_m3.p50 ?? Number.NaN), 9);
          expect(mass_kg.p90 / (once.parts[i]?.mass_kg.p90 ?? Number.NaN)).toBeCloseTo(2, 9);
        });
        expect(twice.salts.conductivity_dSPerM).toEqual(once.salts.conductivity_dSPerM);
        expect(twice.advice).toEqual(once.advice);
      }),
      runs,
    );
  });

  it('more of a compost saltier than all else in it never lowers the salts', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 49, noNaN: true }),
        fc.double({ min: 1, max: 50, noNaN: true }),
        (less, more) => {
          const salts = (share: number): Estimate =>
            potted({
              use: 'potting-on',
              wanted: [{ count: 1, each_L: 10 }],
              compost: { conductivity: { value_dSPerM: { p10: 6, p50: 7, p90: 8 }, method: 'saturated-extract' } },
              parts: [
                { part: 'compost', parts: share },
                { part: 'sand', parts: 100 - share },
              ],
            }).salts.conductivity_dSPerM;
          expect(salts(less + more).p50).toBeGreaterThan(salts(less).p50);
          expect(salts(less + more).p10).toBeGreaterThanOrEqual(salts(less).p10);
        },
      ),
      runs,
    );
  });

  it('a saltier compost makes a saltier mix, with less room for it and a smaller chance', () => {
    const at = (value_dSPerM: number): PottingMix =>
      potted({
        use: 'potting-on',
        wanted: [{ count: 1, each_L: 10 }],
        compost: { conductivity: { value_dSPerM, method: 'saturated-extract' } },
      });
    const mixes = [1, 3, 6, 10, 20].map(at);
    mixes.slice(1).forEach((saltier, i) => {
      const before = mixes[i];
      expect(saltier.salts.conductivity_dSPerM.p50).toBeGreaterThan(
        before?.salts.conductivity_dSPerM.p50 ?? Number.NaN,
      );
      expect(saltier.salts.under.met).toBeLessThanOrEqual(before?.salts.under.met ?? 0);
      expect(saltier.salts.mostCompost_pctVolume).toBeLessThanOrEqual(before?.salts.mostCompost_pctVolume ?? 0);
    });
    expect(mixes[0]?.advice).not.toContain('salty-leach');
    expect(mixes[4]?.advice).toContain('salty-leach');
  });

  it('the most compost told does keep the salts under the limit', () => {
    const compost = { conductivity: { value_dSPerM: 6, method: 'saturated-extract' as const } };
    const base = { use: 'potting-on' as const, wanted: [{ count: 1, each_L: 10 }], compost };
    const { mostCompost_pctVolume: most } = potted(base).salts;
    expect(most).toBeGreaterThan(0);
    const made = (share: number): number => {
      const rest = (100 - share) / 2;
      const { under } = potted({
        ...base,
        parts: [
          { part: 'compost', parts: share },
          { part: 'leaf-mould', parts: rest },
          { part: 'loam', parts: rest },
        ],
      }).salts;
      return under.met / under.of;
    };
    expect(made(most)).toBeGreaterThan(0.88);
    expect(made(most + 5)).toBeLessThan(0.92);
  });

  it('is the same twice, and in any order of its parts', () => {
    fc.assert(
      fc.property(potting, (input) => {
        expect(potted(input)).toEqual(potted(input));
        const turned = potted({ ...input, parts: [...(input.parts ?? [])].reverse() });
        expect(turned.salts.conductivity_dSPerM.p50).toBeCloseTo(potted(input).salts.conductivity_dSPerM.p50, 9);
      }),
      { ...runs, numRuns: 20 },
    );
  });
});

it('a reading of salts never falls as the meter rises, by any method', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...methodIds),
      fc.double({ min: 0, max: 30, noNaN: true }),
      fc.double({ min: 0, max: 30, noNaN: true }),
      (method, a, b) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        expect(asSaturated_dSPerM(high, method)).toBeGreaterThanOrEqual(asSaturated_dSPerM(low, method));
      },
    ),
    runs,
  );
});

describe('any bed', () => {
  it('has ordered ranges that are never negative', () => {
    fc.assert(
      fc.property(bed, (input) => sound(filled(input))),
      runs,
    );
  });

  it('twice as many beds take twice the stuff and weigh the same on a square metre', () => {
    fc.assert(
      fc.property(bed, (input) => {
        const one = filled(input);
        const two = filled({ ...input, beds: 2 });
        expect(two.bring_m3.p50 / one.bring_m3.p50).toBeCloseTo(2, 9);
        expect(two.topUp.volume_m3.p50).toBeCloseTo(2 * one.topUp.volume_m3.p50, 9);
        expect(two.mass_kg.p90 / one.mass_kg.p90).toBeCloseTo(2, 9);
        expect(two.load_kgPerM2.p50).toBeCloseTo(one.load_kgPerM2.p50, 9);
      }),
      runs,
    );
  });

  it('a box and its area are one', () => {
    const box = filled({ bed: { length_m: 2.4, width_m: 1.2, depth_m: 0.4 } });
    const area = filled({ bed: { area_m2: 2.88, depth_m: 0.4 } });
    expect(box.volume_m3.p50).toBeCloseTo(area.volume_m3.p50, 12);
  });

  it('more compost brings more phosphorus, organic matter and sinking, and less weight', () => {
    const beds = [10, 25, 50, 80].map((compost_pctVolume) =>
      filled({ bed: { area_m2: 2, depth_m: 0.3 }, compost_pctVolume }),
    );
    beds.slice(1).forEach((more, i) => {
      const less = beds[i];
      if (less === undefined) throw new Error('no bed');
      expect(more.phosphorus_years.p50).toBeGreaterThan(less.phosphorus_years.p50);
      expect(more.organicMatter_pctDry.p50).toBeGreaterThan(less.organicMatter_pctDry.p50);
      expect(more.drop_m.p50).toBeGreaterThan(less.drop_m.p50);
      expect(more.load_kgPerM2.p50).toBeLessThan(less.load_kgPerM2.p50);
    });
  });

  it('wood at the foot takes the place of mix, lightens it, and is said to draw nitrogen', () => {
    const bare = filled({ bed: { area_m2: 2, depth_m: 0.4 } });
    const wooded = filled({ bed: { area_m2: 2, depth_m: 0.4 }, base: { stuff: 'logs', depth_m: 0.25 } });
    expect(wooded.bring_m3.p50).toBeLessThan(bare.bring_m3.p50);
    expect(wooded.load_kgPerM2.p50).toBeLessThan(bare.load_kgPerM2.p50);
    expect(wooded.base?.volume_m3.p50).toBeCloseTo(0.5, 9);
    expect(wooded.advice).toEqual(expect.arrayContaining(['wood-below', 'shallow-over-wood']));
    expect(bare.advice).not.toContain('wood-below');
    expect(bare.base).toBeUndefined();
  });
});

describe('what is short', () => {
  const base: PottingMixInput = { use: 'potting-on', wanted: [{ count: 20, each_L: 3 }] };

  it('is told of what somebody said there is, and of nothing else', () => {
    const mix = potted({ ...base, onHand: [{ part: 'leaf-mould', amount: { volume_m3: 0.01 } }] });
    const stock = mix.parts.map(({ part, stock: one }) => [part, one !== undefined]);
    expect(stock).toEqual([
      ['compost', false],
      ['leaf-mould', true],
      ['loam', false],
    ]);
    const leaf = mix.parts[1];
    expect((leaf?.stock?.short_m3.p50 ?? 0) + 0.01).toBeCloseTo(leaf?.volume_m3.p50 ?? 0, 9);
    expect(leaf?.stock?.enough.met).toBe(0);
  });

  it('adds up two lots of one stuff, and is nothing where there is plenty', () => {
    const mix = potted({
      ...base,
      onHand: [
        { part: 'leaf-mould', amount: { measure: 'bucket-20l', count: 1 } },
        { part: 'leaf-mould', amount: { measure: 'barrow', count: 2 } },
      ],
    });
    expect(mix.parts[1]?.stock?.short_m3.p90).toBe(0);
    expect(mix.parts[1]?.stock?.enough.met).toBe(draws.count);
  });
});

describe('cautions and advice', () => {
  const base: PottingMixInput = {
    use: 'sowing',
    wanted: [{ count: 2, vessel: 'seed-tray' }],
    recipe: 'compost-seedling-mix',
  };

  it('compost that may hold manure and is not proven hot is told of, with salads more so', () => {
    const raw = potted({ ...base, eatenRaw: true });
    expect(raw.cautions).toEqual(expect.arrayContaining(['legionella', 'dust-spores', 'manure-pathogens']));
    expect(raw.advice).toContain('raw-salads');
    const proven = potted({ ...base, eatenRaw: true, compost: { provenHot: true, madeOf: 'manure-or-salty' } });
    expect(proven.cautions).not.toContain('manure-pathogens');
    expect(proven.advice).not.toContain('raw-salads');
    expect(potted({ ...base, compost: { madeOf: 'plants' } }).cautions).not.toContain('manure-pathogens');
  });

  it.each(['roof', 'deck'] as const)('a bed on a %s defers to an engineer', (standsOn) => {
    expect(filled({ bed: { area_m2: 2, depth_m: 0.3 }, standsOn }).cautions).toContain('roof-load');
  });

  it('treated wood and doubtful ground are told of, with local rules always', () => {
    const { cautions } = filled({
      bed: { area_m2: 2, depth_m: 0.3 },
      walls: 'treated-wood',
      standsOn: 'doubtful-ground',
    });
    expect(cautions).toEqual(expect.arrayContaining(['treated-wood', 'doubtful-ground', 'local-rules']));
    expect(filled({ bed: { area_m2: 2, depth_m: 0.3 } }).cautions).toContain('local-rules');
  });
});

describe('hostile input', () => {
  const pot = listed(pottingMix);
  const fill = listed(bedFill);
  const wanted = [{ count: 1, each_L: 3 }];

  it.each<readonly [string, unknown, string, string]>([
    ['no pots', { use: 'sowing', wanted: [] }, 'too-small', 'wanted'],
    ['a pot of nothing', { use: 'sowing', wanted: [{ count: 1, each_L: 0 }] }, 'out-of-bounds', 'wanted[0].each_L'],
    [
      'a pot beyond measure',
      { use: 'sowing', wanted: [{ count: 1, each_L: 1e300 }] },
      'out-of-bounds',
      'wanted[0].each_L',
    ],
    [
      'no pots of a kind',
      { use: 'sowing', wanted: [{ count: -2, vessel: 'seed-tray' }] },
      'too-small',
      'wanted[0].count',
    ],
    ['an unknown use', { use: 'frying', wanted }, 'not-one-of', 'use'],
    ['an unknown part', { use: 'sowing', wanted, parts: [{ part: 'gold', parts: 1 }] }, 'not-one-of', 'parts[0].part'],
    ['parts of nothing', { use: 'sowing', wanted, parts: [{ part: 'sand', parts: 0 }] }, 'too-small', 'parts[0].parts'],
    [
      'a brine',
      { use: 'sowing', wanted, compost: { conductivity: { value_dSPerM: 900, method: 'one-to-two' } } },
      'out-of-bounds',
      'compost.conductivity.value_dSPerM',
    ],
    [
      'a key of objects',
      JSON.parse('{"use":"sowing","wanted":[{"count":1,"each_L":3}],"__proto__":{"x":1}}'),
      'unknown-field',
      '__proto__',
    ],
  ])('a mix with %s', (_what, input, code, path) => {
    const outcome = pot.reckon(input, { draws });
    expect(outcome.ok ? [] : outcome.problems).toContainEqual(expect.objectContaining({ code, path }));
  });

  it('a recipe and parts at once, or a measure nobody knows, are asked about', () => {
    expect(
      pottingMix.run(
        { use: 'sowing', wanted, recipe: 'leaf-mould-alone', parts: [{ part: 'sand', parts: 1 }] },
        { draws },
      ),
    ).toMatchObject({
      problems: [{ code: 'two-recipes', path: 'parts' }],
    });
    expect(pottingMix.run({ use: 'sowing', wanted, measure: 'buckit-20l' }, { draws })).toMatchObject({
      problems: [{ code: 'unknown-measure', path: 'measure' }],
    });
    expect(
      bedFill.run(
        { bed: { area_m2: 1, depth_m: 0.3 }, compost_pctVolume: 30, parts: [{ part: 'sand', parts: 1 }] },
        { draws },
      ),
    ).toMatchObject({
      problems: [{ code: 'two-recipes' }],
    });
  });

  it.each<readonly [string, unknown, string, string]>([
    ['no bed', {}, 'missing', 'bed'],
    ['a bed without depth', { bed: { area_m2: 2 } }, 'missing', 'bed.depth_m'],
    ['a negative side', { bed: { length_m: -1, width_m: 1, depth_m: 0.3 } }, 'out-of-bounds', 'bed.length_m'],
    ['a bed down to the rock', { bed: { area_m2: 2, depth_m: 40 } }, 'out-of-bounds', 'bed.depth_m'],
    [
      'more compost than there is bed',
      { bed: { area_m2: 2, depth_m: 0.3 }, compost_pctVolume: 120 },
      'too-big',
      'compost_pctVolume',
    ],
    [
      'nothing but wood',
      { bed: { area_m2: 2, depth_m: 0.3 }, base: { stuff: 'logs', depth_m: 0.28 } },
      'base-too-deep',
      'base.depth_m',
    ],
  ])('a bed with %s', (_what, input, code, path) => {
    const outcome = fill.reckon(input, { draws });
    expect(outcome.ok ? [] : outcome.problems).toContainEqual(expect.objectContaining({ code, path }));
  });

  it('never throws, whatever it is given', () => {
    fc.assert(
      fc.property(fc.anything({ withNullPrototype: true }), (data) => {
        expect(pot.reckon(data, { draws }).ok).toBe(false);
        expect(fill.reckon(data, { draws }).ok).toBe(false);
      }),
      { seed: 7, numRuns: 200 },
    );
  });
});
