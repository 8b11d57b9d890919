import { describe, expect, it } from 'vitest';
import { check } from '../catalogue/index.ts';
import { bedBudget } from './bed-budget.ts';
import { areaSlips, bedBounds, depthSlips } from './slips.ts';
import { spreadDepth } from './spread-depth.ts';

describe('an area that no bed has', () => {
  const { least, most } = bedBounds.area_m2;

  it.each([0.0001, 1e7])(
    '%d m² is refused by the calculations within the bounds of what is written down',
    (area_m2) => {
      expect(areaSlips(area_m2, 'area_m2')).toMatchObject([{ code: 'area-beyond', wanted: `${least} to ${most}` }]);
      const asked = { crops: [{ crop: 'kale', area_m2 }] };
      expect(check(bedBudget.input, asked)).toMatchObject({ ok: false, problems: [{ wanted: `${least} to ${most}` }] });
      expect(check(spreadDepth.input, { material: 'finished-compost', area_m2, depth_m: 0.02 }).ok).toBe(false);
    },
  );

  it('ends where the bounds do', () => {
    for (const area_m2 of [least, most]) {
      expect(areaSlips(area_m2, 'area_m2')).toEqual([]);
      expect(check(bedBudget.input, { crops: [{ crop: 'kale', area_m2 }] }).ok).toBe(true);
    }
  });
});

it('a depth of 40 m is no bed’s, one of half a metre is', () => {
  expect(depthSlips(40, 'depth_m')).toMatchObject([{ code: 'depth-beyond', found: '40' }]);
  expect(depthSlips(0.5, 'depth_m')).toEqual([]);
  expect(depthSlips(undefined, 'depth_m')).toEqual([]);
});
