import { fold } from '@loamwright/daybook';
import { testWriter } from '@loamwright/daybook/testing';
import { createDraws } from '@loamwright/science';
import { expect, it } from 'vitest';
import { skinAcross, skinOfHeap, widthOfHeap } from './cold-skin.ts';
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

it('a heap of the daybook is as far across as the shorter side of its bay, where it was not measured itself', () => {
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
  writer.write('bay-set-up', 'long', { name: 'Long bay', width_m: 3, depth_m: 1, wall: 'boards' });
  writer.write('moved', 'heap', { bay: 'long' });
  expect(skin()).toMatchObject({ width_m: 1, turns: 1 });
});

it('a heap that was measured is as far across as its shorter side, whichever that is', () => {
  const across = (size: { width_m?: number; depth_m?: number }) => {
    const writer = testWriter();
    writer.write('heap-built', 'heap', { name: 'Heap', layers: [], size });
    const holding = fold(writer.entries, { now: noonOf(25) });
    const heap = holding.heaps.get('heap');
    return heap === undefined ? undefined : widthOfHeap(holding, heap);
  };
  expect(across({ width_m: 3, depth_m: 1 })).toBe(1);
  expect(across({ width_m: 1, depth_m: 3 })).toBe(1);
  expect(across({ width_m: 2 })).toBe(2);
});
