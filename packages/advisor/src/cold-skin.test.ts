import { fold } from '@loamwright/daybook';
import { createDraws } from '@loamwright/science';
import { expect, it } from 'vitest';
import { skinAcross, skinOfHeap } from './cold-skin.ts';
import { hotHeap, noonOf } from './testing/hot-heap.ts';

const needs = { draws: createDraws() };

it('a dome is colder than a long heap, and both colder the narrower they are', () => {
  // Geometry: with a skin of 0.15 m, 1 - (1 - 0.15 / 0.6)^2 = 0.44 of a half cylinder 1.2 m across and 0.58 of a half
  // ball; the skin itself is 10 to 20 cm (reference/rule-sets.json, shell), so the middle of the draws lies near them.
  const across = (width_m: number) => {
    const skin = skinAcross({ width_m, turns: 5 }, needs);
    return skin.ok ? skin.value : undefined;
  };
  const narrow = across(1.2);
  expect(narrow?.long.cold_share.p50).toBeCloseTo(0.44, 1);
  expect(narrow?.dome.cold_share.p50).toBeCloseTo(0.58, 1);
  const wide = across(3);
  expect(wide?.long.cold_share.p50).toBeLessThan(narrow?.long.cold_share.p50 ?? 0);
});

it('no heap is a hand wide', () => {
  expect(skinAcross({ width_m: 0.1, turns: 5 }, needs)).toMatchObject({ ok: false, problems: [{ path: 'radius_m' }] });
});

it('a heap of the daybook is as wide as its bay, where it was not measured itself', () => {
  const writer = hotHeap('150 150T 150');
  const skin = () => {
    const holding = fold(writer.entries, { now: noonOf(25) });
    const heap = holding.heaps.get('heap');
    return heap === undefined ? undefined : skinOfHeap(holding, heap, 1, needs);
  };
  expect(skin()).toBeNull();
  writer.write('bay-set-up', 'bay', { name: 'Bay', width_m: 1.5, wall: 'boards' });
  writer.write('moved', 'heap', { bay: 'bay' });
  expect(skin()).toMatchObject({ width_m: 1.5, turns: 1 });
});
