import { layOver, looseVolume_m3, type Turn, turnHeap, type Watering, waterHeap } from './acts.ts';
import { advance, type Pace } from './advance.ts';
import { buildHeap } from './build.ts';
import { emptyLedger } from './ledger.ts';
import { DAY_S, type Traits, USUAL_STEP_s } from './parameters.ts';
import { cutShells, type HeapShape, outlineOf, type Shells, withVolume } from './shape.ts';
import { createSlate, type Slate } from './slate.ts';
import type { HeapState } from './state.ts';
import type { Stuff } from './stuff.ts';
import type { Standing, WeatherAt } from './surroundings.ts';

/** Something done to a heap during a run. */
export type HeapAct = { readonly at_day: number } & (
  | {
      readonly act: 'turn';
      readonly care: Turn['care'];
      readonly insideOut: boolean;
      readonly into?: HeapShape | undefined;
    }
  | { readonly act: 'water'; readonly water_L: number; readonly where: Watering['where'] }
  | { readonly act: 'add'; readonly stuff: Stuff; readonly mixed: boolean }
  | { readonly act: 'stand'; readonly standing: Standing }
);

/** A heap, where it stands, and what is done to it. */
export interface HeapRun {
  /** Its form when it is built: a box's width and depth hold, its height follows from the volume. */
  readonly shape: HeapShape;
  readonly stuff: Stuff;
  readonly traits: Traits;
  readonly standing: Standing;
  readonly weatherAt: WeatherAt;
  /** In any order. */
  readonly acts: readonly HeapAct[];
  readonly days: number;
  readonly shellCount: number;
  readonly pace: Pace;
}

/** A heap at a moment of its run. */
export interface Moment {
  readonly time_day: number;
  readonly state: HeapState;
  readonly shells: Shells;
  readonly ledger: Float64Array;
}

/** The step and the closeness that do for a grower's questions: see `docs/models/heap-twin.md`. */
export const USUAL_PACE: Pace = { step_s: USUAL_STEP_s, within_K: 0.5 };
/** Shells that do for them. */
export const USUAL_SHELLS = 8;

/**
 * Runs a heap through its days and shows it as often as asked, at the start and the end too. The moment shown is the
 * run's own: read it, keep nothing of it.
 * @returns the last moment.
 */
export function runHeap(run: HeapRun, every_s: number, show: (moment: Moment) => void): Moment {
  const slate = createSlate(run.shellCount);
  const end_s = run.days * DAY_S;
  const acts = [...run.acts].sort((a, b) => a.at_day - b.at_day);
  let shape = run.shape;
  const built = cutShells(outlineOf(withVolume(shape, run.stuff.volume_m3)), run.shellCount);
  let moment: Moment = {
    time_day: 0,
    shells: built,
    state: buildHeap(run.stuff, built),
    ledger: emptyLedger(),
  };
  let { standing } = run;
  let next = 0;
  const doDue = (now_s: number): void => {
    for (let due = acts[next]; due !== undefined && due.at_day * DAY_S <= now_s; due = acts[++next]) {
      // Nothing is changed by it, so no rates are to be found anew.
      if (due.act === 'water' && due.water_L === 0) continue;
      slate.isNew = true;
      if (due.act === 'stand') standing = due.standing;
      else ({ moment, shape } = doAct(due, moment, shape, run, slate));
    }
  };
  doDue(0);
  show(moment);
  for (let now_s = 0; now_s < end_s; ) {
    const due_s = (acts[next]?.at_day ?? Number.POSITIVE_INFINITY) * DAY_S;
    const shown_s = (Math.floor(now_s / every_s + 1e-9) + 1) * every_s;
    const to_s = Math.min(due_s, shown_s, end_s);
    const heap = { shells: moment.shells, standing, traits: run.traits };
    advance(heap, moment.state, moment.ledger, run.weatherAt, { from_s: now_s, to_s }, run.pace, slate);
    now_s = to_s;
    moment = { ...moment, time_day: now_s / DAY_S };
    doDue(now_s);
    if (now_s === shown_s || now_s === end_s) show(moment);
  }
  return moment;
}

function doAct(
  act: Exclude<HeapAct, { readonly act: 'stand' }>,
  moment: Moment,
  shape: HeapShape,
  run: HeapRun,
  { weather }: Slate,
): { readonly moment: Moment; readonly shape: HeapShape } {
  run.weatherAt(moment.time_day * DAY_S, weather);
  const { ledger } = moment;
  switch (act.act) {
    case 'water':
      waterHeap(
        moment.state,
        { water_kg: act.water_L, temp_degC: Math.max(0, weather.temp_degC), where: act.where },
        ledger,
      );
      return { moment, shape };
    case 'turn':
      return turned(moment, act.into ?? shape, { ...act, air_degC: weather.temp_degC }, run.shellCount);
    case 'add': {
      const volume_m3 = looseVolume_m3(moment.state) + act.stuff.volume_m3;
      const shells = cutShells(outlineOf(withVolume(shape, volume_m3)), run.shellCount);
      const laid = { ...moment, shells, state: layOver(moment.state, act.stuff, shells, ledger) };
      if (!act.mixed) return { moment: laid, shape };
      return turned(laid, shape, { care: 'thorough', insideOut: false, air_degC: weather.temp_degC }, run.shellCount);
    }
  }
}

function turned(moment: Moment, into: HeapShape, turn: Turn, shellCount: number): { moment: Moment; shape: HeapShape } {
  const shells = cutShells(outlineOf(withVolume(into, looseVolume_m3(moment.state))), shellCount);
  return { moment: { ...moment, shells, state: turnHeap(moment.state, shells, turn, moment.ledger) }, shape: into };
}
