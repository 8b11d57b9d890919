import { describe, expect, it } from 'vitest';
import { advance } from './advance.ts';
import { buildHeap } from './build.ts';
import { emptyLedger } from './ledger.ts';
import { DAY_S } from './parameters.ts';
import { cutShells, outlineOf } from './shape.ts';
import * as slate from './slate.ts';
import { changingIds } from './state.ts';
import { runLike, stuffLike, temperatures_degC } from './testing/heaps.ts';

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

  it('keeps two heaps apart that are taken on in turn', () => {
    const days = [0, 1, 2, 3].map((day) => ({ from_s: day * DAY_S, to_s: (day + 1) * DAY_S }));
    const begun = (temp_degC: number) => {
      const run = runLike({ stuff: stuffLike({ temp_degC }) });
      const own = buildHeap(run.stuff, shells);
      const on = slate.createSlate(shellCount);
      return {
        state: own,
        goOn: (time: (typeof days)[number]) =>
          advance({ ...run, shells }, own, emptyLedger(), run.weatherAt, time, run.pace, on),
      };
    };
    const alone = [begun(15), begun(30)] as const;
    for (const one of alone) for (const day of days) one.goOn(day);
    const inTurn = [begun(15), begun(30)] as const;
    for (const day of days) for (const one of inTurn) one.goOn(day);
    inTurn.forEach((one, k) => {
      const apart = temperatures_degC(one).map((temp, i) => Math.abs(temp - (temperatures_degC(alone[k])[i] ?? 0)));
      // Rates found anew each day are not those at the guess, which are a step's error off: 0.5 K at the most.
      expect(Math.max(...apart)).toBeLessThan(0.5);
    });
  });

  it('cuts no heap into more shells than there is room for', () => {
    expect(() => slate.createSlate(slate.MOST_SHELLS)).not.toThrow();
    expect(() => slate.createSlate(slate.MOST_SHELLS + 1)).toThrow('256 at the most');
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
