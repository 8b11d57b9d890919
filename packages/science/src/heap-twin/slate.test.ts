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
    expect(slate.CHANGING).toBe(changingIds.length);
    expect(slate.OXYGEN_kgPerKg).toBe(changingIds.length);
    expect(changingIds.indexOf('ammoniacalN_kg')).toBe(slate.AMMONIACAL_N_kg);
    expect(changingIds.indexOf('pH')).toBe(slate.PH);
    const held = changingIds.length + 1;
    const width = end.inside - start.inside;
    const blocks = [
      [start.held, held],
      [end.held, held],
      [slate.INERT_kg, slate.OUTWARD_perM - slate.INERT_kg + 1],
      [start.rates, held],
      [end.rates, held],
      [start.inside, width],
      [end.inside, width],
      [slate.HEAT_OUT_WPerK, slate.ROW - slate.HEAT_OUT_WPerK],
    ] as const;
    blocks.reduce((from, [at, size]) => {
      expect(at).toBe(from);
      return at + size;
    }, 0);
    expect(slate.HUMIDITY_RISE_perKg).toBeLessThan(width);
    expect(slate.GUESS + slate.PASSING).toBe(slate.ROW);
  });

  it('gives no two things ahead one place', () => {
    const ahead = Object.values(slate).filter((place) => typeof place === 'number' && place >= slate.HEAT_OUT_WPerK);
    expect(new Set(ahead).size).toBe(ahead.length);
    expect(ahead.length).toBeGreaterThan(20);
  });
});
