import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { listed } from '../catalogue/index.ts';
import { bedFill } from './bed-fill.ts';
import { pottingMix } from './potting-mix.ts';
import { fewDraws as draws } from './testing/blended.ts';

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
