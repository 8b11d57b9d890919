import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createDraws } from '../estimate/index.ts';
import { allMaterials } from '../material/index.ts';
import { type BuildCard, type BuildCardInput, buildCard, type CardLine } from './build-card.ts';
import { measuresFor, repeatsFor, shareOut, shareWater_L } from './layers.ts';

const needs = { draws: createDraws() };

function card(input: BuildCardInput): BuildCard {
  const outcome = buildCard.run(input, needs);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

const bay = { width_m: 1, depth_m: 1, height_m: 1 };
const line = (material: string, count: number, measure = 'bucket-20l'): CardLine => ({ material, measure, count });

/** Measures laid of each line of the mix. */
function laid({ layers }: BuildCard, lines: number): readonly number[] {
  return Array.from({ length: lines }, (_, i) =>
    layers.flatMap(({ parts }) => parts).reduce((sum, part) => (part.line === i ? sum + part.count : sum), 0),
  );
}

describe('a build card', () => {
  const example = card(buildCard.example);

  it('lays a coarse base, then dry and wet in turn, then a cover', () => {
    const roles = example.layers.map(({ role }) => role);
    expect(roles[0]).toBe('base');
    expect(roles.at(-1)).toBe('cover');
    roles.slice(1, -1).forEach((role, i) => {
      expect(role).toBe(i % 2 === 0 ? 'dry' : 'wet');
    });
    expect(example.layers[0]?.parts.map(({ material }) => material)).toEqual(['hedge-chippings']);
    expect(example.layers.at(-1)?.parts.map(({ material }) => material)).toEqual(['straw']);
  });

  it('is drawn to scale: each layer stands on the one below, all together as high as the heap', () => {
    let top = 0;
    for (const { bottom_m, height_m } of example.layers) {
      expect(bottom_m).toBeCloseTo(top, 12);
      top = bottom_m + height_m;
    }
    expect(top).toBeGreaterThan(example.height_m.p10);
    expect(top).toBeLessThan(example.height_m.p90);
  });

  it('keeps fresh fines under about ten centimetres and any layer near fifteen', () => {
    const grass = card({ mix: [line('grass-clippings', 30), line('autumn-leaves', 30)], bay });
    for (const { role, height_m } of grass.layers) {
      expect(height_m).toBeLessThanOrEqual(role === 'wet' ? 0.12 : 0.17);
    }
    expect(grass.notes).not.toContain('mix-fines-at-once');
    const tiny = { width_m: 0.3, depth_m: 0.3, height_m: 1 };
    const thick = card({ mix: [line('grass-clippings', 4), line('autumn-leaves', 0.5)], bay: tiny });
    expect(thick.notes).toContain('mix-fines-at-once');
  });

  it('puts the starter inside, away from the outside and from ash', () => {
    const withAsh = card({
      mix: [line('grass-clippings', 20), line('straw', 40), line('wood-ash', 0.5)],
      bay,
      starter: { material: 'finished-compost', measure: 'bucket-20l', count: 2 },
    });
    const started = withAsh.layers.flatMap((layer, i) => (layer.starter === undefined ? [] : [i]));
    const ashen = withAsh.layers.flatMap(({ parts }, i) =>
      parts.some(({ material }) => material === 'wood-ash') ? [i] : [],
    );
    expect(started.length).toBeGreaterThan(0);
    for (const i of started) {
      expect(withAsh.layers[i]?.role).toBe('wet');
      expect(i).toBeGreaterThan(1);
      expect(i).toBeLessThan(withAsh.layers.length - 2);
      for (const ash of ashen) expect(Math.abs(i - ash)).toBeGreaterThan(1);
    }
    const total = withAsh.layers.reduce((sum, { starter }) => sum + (starter?.count ?? 0), 0);
    expect(total).toBe(2);
    expect(withAsh.notes).toEqual(expect.arrayContaining(['starter-inside', 'ash-apart']));
  });

  it('says where chopping pays, and what is missing for base and cover', () => {
    expect(example.chop).toContainEqual({ material: 'straw', reason: 'long-stems-mat-and-dry' });
    const scraps = card({ mix: [line('coffee-grounds', 4), line('sawdust', 4)], bay });
    expect(scraps.chop).toEqual([]);
    expect(scraps.notes).toEqual(expect.arrayContaining(['base-from-elsewhere', 'cover-from-elsewhere']));
  });

  it('says again that it is too wet or too dry, and asks for no forking of pairs where there are none', () => {
    const wet = card({ mix: [line('grass-clippings', 10)], bay });
    expect(wet.notes).toContain('too-wet');
    expect(wet.notes).not.toContain('fork-together');
    expect(card({ mix: [line('straw', 10), line('autumn-leaves', 4)], bay }).notes).toContain('too-dry');
    expect(example.notes).toContain('fork-together');
    expect(example.notes).not.toContain('too-dry');
  });

  it('says when it stands higher than the bay', () => {
    const low = { ...bay, height_m: 0.3 };
    expect(card({ ...buildCard.example, bay: low }).notes).toContain('higher-than-bay');
    expect(example.notes).not.toContain('higher-than-bay');
  });

  it('carries permits and cautions, and tells problems with their place', () => {
    expect(example.permits.map(({ material, permit }) => [material, permit])).toContainEqual([
      'goat-bedding',
      'allowed',
    ]);
    expect(example.cautions).toContain('manure-pathogens');
    expect(buildCard.run({ mix: [line('strawe', 1)], bay }, needs)).toMatchObject({
      ok: false,
      problems: [{ code: 'unknown-material', path: 'mix[0].material' }],
    });
  });

  it('uses every measure of any mix once, and all of its water', () => {
    const solids = allMaterials.filter(({ particle }) => particle !== 'liquid').map(({ id }) => id);
    const lines = fc.uniqueArray(
      fc.record({
        material: fc.constantFrom(...solids, 'urine'),
        measure: fc.constantFrom('bucket-20l', 'barrow'),
        count: fc.oneof(fc.integer({ min: 1, max: 40 }), fc.double({ min: 0.1, max: 20, noNaN: true })),
      }),
      { minLength: 1, maxLength: 6, selector: ({ material }) => material },
    );
    fc.assert(
      fc.property(lines, fc.double({ min: 0, max: 300, noNaN: true }), (mix, water_L) => {
        fc.pre(mix.some(({ material }) => material !== 'urine'));
        const made = card({ mix, bay, water_L });
        laid(made, mix.length).forEach((count, i) => {
          expect(count).toBeCloseTo(mix[i]?.count ?? Number.NaN, 6);
        });
        expect(made.layers.reduce((sum, layer) => sum + layer.water_L, 0)).toBeCloseTo(water_L, 6);
        expect(buildCard.output.safeParse(made).success).toBe(true);
      }),
      { numRuns: 60 },
    );
  });
});

describe('sharing out', () => {
  it('half measures, evenly, summing to the count', () => {
    expect(shareOut(9, 4)).toEqual([2.5, 2, 2.5, 2]);
    expect(shareOut(1, 3).filter((share) => share > 0)).toEqual([0.5, 0.5]);
    expect(shareOut(0.3, 2)).toEqual([0.3, 0]);
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 100, noNaN: true }), fc.integer({ min: 1, max: 40 }), (count, layers) => {
        const shares = shareOut(count, layers);
        expect(shares).toHaveLength(layers);
        expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(count, 6);
        expect(Math.min(...shares)).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  it('whole litres by weight, all of them', () => {
    expect(shareWater_L(10, [1, 1, 2])).toEqual([3, 2, 5]);
    expect(shareWater_L(7.5, [0, 0])).toEqual([4.5, 3]);
    expect(shareWater_L(0, [1, 2])).toEqual([0, 0]);
  });

  it('as many turns as the thickest pile asks, and no more', () => {
    const pile = { count: 10, height_m: 0.4, thickest_m: 0.1 };
    expect(repeatsFor([[pile]], 0.15)).toBe(4);
    expect(repeatsFor([[{ ...pile, height_m: 0.1 }]], 0.15)).toBe(1);
    expect(measuresFor(pile, 0.1)).toBe(2.5);
    expect(measuresFor(pile, 1)).toBe(10);
  });
});
