import { describe, expect, it } from 'vitest';
import type { PottingMixInput } from './potting-mix-io.ts';
import { filled, potted } from './testing/blended.ts';

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
