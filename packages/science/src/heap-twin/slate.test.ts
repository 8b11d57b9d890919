import { describe, expect, it } from 'vitest';
import { buildHeap } from './build.ts';
import { cutShells, outlineOf } from './shape.ts';
import * as slate from './slate.ts';
import { changingIds } from './state.ts';
import { runLike } from './testing/heaps.ts';

describe('a slate', () => {
  const { stuff, shape, shellCount } = runLike();
  const shells = cutShells(outlineOf(shape), shellCount);
  const state = buildHeap(stuff, shells);

  it('gives back the heap that was written down on it', () => {
    const one = slate.createSlate(shellCount);
    slate.writeDown(one, state, shells);
    const other = buildHeap({ ...stuff, water_kg: 0, fast_kg: 0 }, shells);
    slate.readOff(one, other);
    expect([...other.flat]).toEqual([...state.flat]);
    expect([...other.oxygen_kgPerKg]).toEqual([...state.oxygen_kgPerKg]);
  });

  it('has a place for each quantity in the order of the state, and blocks that do not overlap', () => {
    const { start, end } = slate.createSlate(shellCount);
    expect(slate.slateSizes.CHANGING).toBe(changingIds.length);
    expect(slate.heldPlaces.OXYGEN_kgPerKg).toBe(changingIds.length);
    expect(changingIds.indexOf('ammoniacalN_kg')).toBe(slate.heldPlaces.AMMONIACAL_N_kg);
    expect(changingIds.indexOf('pH')).toBe(slate.heldPlaces.PH);
    const held = changingIds.length + 1;
    const width = end.inside - start.inside;
    const blocks = [
      [start.held, held],
      [end.held, held],
      [slate.lastingPlaces.INERT_kg, slate.lastingPlaces.OUTWARD_perM - slate.lastingPlaces.INERT_kg + 1],
      [start.rates, held],
      [end.rates, held],
      [start.inside, width],
      [end.inside, width],
      [slate.aheadPlaces.HEAT_OUT_WPerK, slate.slateSizes.ROW - slate.aheadPlaces.HEAT_OUT_WPerK],
    ] as const;
    blocks.reduce((from, [at, size]) => {
      expect(at).toBe(from);
      return at + size;
    }, 0);
    expect(slate.insidePlaces.HUMIDITY_RISE_perKg).toBeLessThan(width);
    expect(slate.aheadPlaces.GUESS + slate.slateSizes.PASSING).toBe(slate.slateSizes.ROW);
  });

  it.each([
    ['what is held', slate.heldPlaces],
    ['what lasts', slate.lastingPlaces],
    ['the inside', slate.insidePlaces],
    ['what lies ahead', slate.aheadPlaces],
  ])('gives no two things of %s one place', (_what, places) => {
    const all: readonly number[] = Object.values(places);
    expect(all.length).toBeGreaterThan(7);
    // Oxygen, which has no rate, and matter lost, which is a rate alone.
    const shared = 'OXYGEN_kgPerKg' in places ? 1 : 0;
    expect(new Set(all).size).toBe(all.length - shared);
  });
});
