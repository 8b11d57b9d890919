import { describe, expect, it } from 'vitest';
import { advance } from './advance.ts';
import { buildHeap } from './build.ts';
import { emptyLedger } from './ledger.ts';
import { DAY_S } from './parameters.ts';
import { cutShells, outlineOf } from './shape.ts';
import * as slate from './slate.ts';
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
    for (const [one, other] of [
      [inTurn[0], alone[0]],
      [inTurn[1], alone[1]],
    ] as const) {
      const by = temperatures_degC(other);
      // Rates found anew each day are not those at the guess, which are a step's error off: half a kelvin at the most.
      for (const [i, temp] of temperatures_degC(one).entries()) expect(Math.abs(temp - (by[i] ?? 0))).toBeLessThan(0.5);
    }
  });

  it('cuts no heap into more shells than there is room for', () => {
    expect(() => slate.createSlate(slate.MOST_SHELLS)).not.toThrow();
    expect(() => slate.createSlate(slate.MOST_SHELLS + 1)).toThrow('256 at the most');
  });

  it('has an array of its own for everything', () => {
    const all = [slate.held, slate.rates, slate.lasting, slate.inside, slate.ahead].flatMap((some) =>
      Object.values(some),
    );
    expect(all.length).toBeGreaterThan(90);
    expect(new Set(all).size).toBe(all.length);
  });
});
