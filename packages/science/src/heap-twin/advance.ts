import { findRates, type Heap } from './change.ts';
import { emptyFields, type Fields } from './fields.ts';
import { type Corrections, correct, noCorrections, warmingDrive, warmingRows } from './implicit.ts';
import { enter, FLOWS, LINE } from './ledger.ts';
import { DAY_S, twinParameters } from './parameters.ts';
import { noRates, type Rates } from './rates.ts';
import { emptyState, type HeapState, shellTemperature_degC } from './state.ts';
import { noWeather, type Weather, type WeatherAt } from './surroundings.ts';
import { emptyRows, type Rows, solveRows } from './tridiagonal.ts';

const WATER_JPerKgK = twinParameters.waterHeat_JPerKgK.value;
const SETTLES_s = twinParameters.settles_day.value * DAY_S;

/** Room for the reckoning of one step of one heap, used again at every step. */
export interface Workspace {
  readonly first: Fields;
  readonly second: Fields;
  readonly firstRates: Rates;
  readonly secondRates: Rates;
  readonly trial: HeapState;
  readonly rows: Rows;
  readonly warming_K: Float64Array;
  readonly scratch: Float64Array;
  readonly corrections: Corrections;
  /** The first guess of the end of the step. */
  readonly guess: {
    readonly energy_J: Float64Array;
    readonly water_kg: Float64Array;
    readonly ammoniacalN_kg: Float64Array;
  };
  readonly passing_kg: Float64Array;
  readonly weather: Weather;
}

/** A workspace for heaps of so many shells. */
export function createWorkspace(shells: number): Workspace {
  return {
    first: emptyFields(shells),
    second: emptyFields(shells),
    firstRates: noRates(shells),
    secondRates: noRates(shells),
    trial: emptyState(shells),
    rows: emptyRows(shells),
    warming_K: new Float64Array(shells),
    scratch: new Float64Array(shells),
    corrections: noCorrections(shells),
    guess: {
      energy_J: new Float64Array(shells),
      water_kg: new Float64Array(shells),
      ammoniacalN_kg: new Float64Array(shells),
    },
    passing_kg: new Float64Array(shells),
    weather: noWeather(),
  };
}

/** How the time of a run is cut. */
export interface Pace {
  /** The longest step, s. */
  readonly step_s: number;
  /** A step is halved while its first and second guess of a shell's temperature differ by more, K. */
  readonly within_K: number;
}

/** So often may a step be halved. */
const MOST_HALVINGS = 12;

/**
 * Takes one heap of a run from one time to another, adding what passes in and out to the ledger.
 *
 * Each step takes the rates at its start and, at a first guess of its end, again, and goes on with their mean (Heun's
 * method, second order); transport is taken at the end of the step in both, so that it cannot swing however stiff it
 * is. Every flux leaves one place and reaches another, so what is summed closes to the last digits.
 * @returns how many steps it took.
 */
export function advance(
  heap: Heap,
  state: HeapState,
  ledger: Float64Array,
  weatherAt: WeatherAt,
  time: { readonly from_s: number; readonly to_s: number },
  pace: Pace,
  work: Workspace,
): number {
  shareLasting(state, work.trial);
  let now_s = time.from_s;
  let step_s = pace.step_s;
  const least_s = pace.step_s / 2 ** MOST_HALVINGS;
  let steps = 0;
  while (now_s < time.to_s - least_s / 2) {
    const try_s = Math.min(step_s, time.to_s - now_s);
    const off_K = trialStep(heap, state, weatherAt, now_s, try_s, work);
    const sound = off_K <= pace.within_K;
    if (!sound && try_s > least_s) {
      step_s = try_s / 2;
      continue;
    }
    accept(state, ledger, try_s, work);
    now_s += try_s;
    steps++;
    if (off_K < pace.within_K / 8) step_s = Math.min(pace.step_s, 2 * step_s);
  }
  return steps;
}

/** What no step changes, copied for the trial. */
function shareLasting(state: HeapState, trial: HeapState): void {
  trial.inert_kg.set(state.inert_kg);
  trial.ash_kg.set(state.ash_kg);
  trial.char_kg.set(state.char_kg);
  trial.built_m3.set(state.built_m3);
  trial.builtDry_kg.set(state.builtDry_kg);
}

/** Vapour held back by dryness is as far off as so many kelvins when all of it is. */
const DRYNESS_K = 20;
const DRYING_kgPerKg = twinParameters.waterActivity.u0_kgPerKg;
const MOIST = 12;

/** How far the stuff of a shell holds its vapour back, 0 when moist to 1 when bone dry. */
function dryness(water_kg: number, { dry_kg }: Fields, i: number): number {
  const water = water_kg / (DRYING_kgPerKg * (dry_kg[i] as number));
  return water > MOIST ? 0 : Math.exp(-water);
}

/** A step into the workspace. @returns how far its two guesses lie apart, K; infinite when it cannot be taken. */
function trialStep(
  heap: Heap,
  state: HeapState,
  weatherAt: WeatherAt,
  now_s: number,
  step_s: number,
  work: Workspace,
): number {
  const {
    first,
    second,
    firstRates,
    secondRates,
    trial,
    rows,
    warming_K,
    scratch,
    corrections,
    weather,
    guess,
    passing_kg,
  } = work;
  const { traits, shells } = heap;
  const contact = traits.plumeContact_share;
  const count = shells.count;
  weatherAt(now_s, weather);
  findRates(heap, state, weather, step_s, first, firstRates);
  warmingRows(first, contact, step_s, rows);
  warmingDrive(first, firstRates, rows.right);
  solveRows(rows, warming_K, scratch);
  correct(first, contact, warming_K, corrections);
  const { ammonia } = first;
  for (let i = 0; i < count; i++) {
    ammonia.own[i] = (ammonia.own[i] as number) + 1 / step_s;
    ammonia.right[i] = firstRates.ammoniacalN_kg[i] as number;
  }
  solveRows(ammonia, passing_kg, scratch);
  const now = state.flat;
  const then = trial.flat;
  const rate = firstRates.flat;
  for (let k = 0; k < then.length; k++) then[k] = (now[k] as number) + step_s * (rate[k] as number);
  for (let i = 0; i < count; i++) {
    trial.energy_J[i] = (trial.energy_J[i] as number) + step_s * (corrections.energy_W[i] as number);
    trial.water_kg[i] = (trial.water_kg[i] as number) + step_s * (corrections.water_kgPerS[i] as number);
    guess.energy_J[i] = trial.energy_J[i] as number;
    guess.water_kg[i] = trial.water_kg[i] as number;
    trial.ammoniacalN_kg[i] = (state.ammoniacalN_kg[i] as number) + (passing_kg[i] as number);
    guess.ammoniacalN_kg[i] = trial.ammoniacalN_kg[i] as number;
    trial.oxygen_kgPerKg[i] = state.oxygen_kgPerKg[i] as number;
  }
  trial.settled_share = settledAfter(state.settled_share, traits.settling_share, step_s);
  neverLess(trial);

  weatherAt(now_s + step_s, weather);
  findRates(heap, trial, weather, step_s, second, secondRates);
  // What the first guess missed, again with transport at the end of the step.
  const half_s = 0.5 * step_s;
  for (let i = 0; i < count; i++) {
    const missed_J =
      half_s * ((firstRates.energy_J[i] as number) + (secondRates.energy_J[i] as number)) -
      ((guess.energy_J[i] as number) - (state.energy_J[i] as number));
    const missed_kg =
      half_s * ((firstRates.water_kg[i] as number) + (secondRates.water_kg[i] as number)) -
      ((guess.water_kg[i] as number) - (state.water_kg[i] as number));
    const missedN_kg =
      half_s * ((firstRates.ammoniacalN_kg[i] as number) + (secondRates.ammoniacalN_kg[i] as number)) -
      ((guess.ammoniacalN_kg[i] as number) - (state.ammoniacalN_kg[i] as number));
    ammonia.right[i] = missedN_kg / step_s;
    rows.right[i] = (missed_J - (first.temp_degC[i] as number) * WATER_JPerKgK * missed_kg) / step_s;
  }
  solveRows(rows, warming_K, scratch);
  correct(first, contact, warming_K, corrections);
  solveRows(ammonia, passing_kg, scratch);
  corrections.ammoniaGone_kgPerS = 0;
  const after = secondRates.flat;
  for (let k = 0; k < then.length; k++) {
    then[k] = (now[k] as number) + half_s * ((rate[k] as number) + (after[k] as number));
  }
  let off_K = 0;
  for (let i = 0; i < count; i++) {
    const energy_J = (trial.energy_J[i] as number) + step_s * (corrections.energy_W[i] as number);
    const water_kg = (trial.water_kg[i] as number) + step_s * (corrections.water_kgPerS[i] as number);
    const ammoniacalN_kg = (guess.ammoniacalN_kg[i] as number) + (passing_kg[i] as number);
    trial.ammoniacalN_kg[i] = ammoniacalN_kg;
    corrections.ammoniaGone_kgPerS += (first.ammoniaLeaving_perS[i] as number) * (passing_kg[i] as number);
    trial.energy_J[i] = energy_J;
    trial.water_kg[i] = water_kg;
    off_K = Math.max(off_K, Math.abs(shellTemperature_degC(trial, i) - (second.temp_degC[i] as number)));
    off_K = Math.max(
      off_K,
      DRYNESS_K * Math.abs(dryness(water_kg, second, i) - dryness(guess.water_kg[i] as number, second, i)),
    );
  }
  // A step that takes more than there is must be shorter; at the shortest so little is lacking that it is let be.
  return neverLess(trial) <= ROUNDING && Number.isFinite(off_K) ? off_K : Number.POSITIVE_INFINITY;
}

function settledAfter(settled_share: number, at_last_share: number, step_s: number): number {
  return at_last_share + (settled_share - at_last_share) * Math.exp(-step_s / SETTLES_s);
}

/** Less than this below nothing is rounding, in any of the units. */
const ROUNDING = 1e-18;

/** Puts right whatever but heat, which comes first, has fallen below nothing. @returns by how much at most. */
function neverLess({ flat, shells }: HeapState): number {
  let most = 0;
  for (let k = shells; k < flat.length; k++) {
    const held = flat[k] as number;
    if (held < 0) {
      most = Math.max(most, -held);
      flat[k] = 0;
    }
  }
  return most;
}

/** Writes a trial step into the state and the ledger. */
function accept(state: HeapState, ledger: Float64Array, step_s: number, work: Workspace): void {
  const { trial, firstRates, secondRates, corrections } = work;
  state.flat.set(trial.flat);
  state.oxygen_kgPerKg.set(trial.oxygen_kgPerKg);
  state.settled_share = trial.settled_share;
  const first = firstRates.flows;
  const second = secondRates.flows;
  for (let line = 0; line < FLOWS; line++) {
    ledger[line] = (ledger[line] as number) + 0.5 * step_s * ((first[line] as number) + (second[line] as number));
  }
  enter(ledger, LINE.heatThroughSurface_J, step_s * corrections.surface_W);
  enter(ledger, LINE.heatToGround_J, step_s * corrections.ground_W);
  enter(ledger, LINE.heatWithAir_J, step_s * corrections.withAir_W);
  enter(ledger, LINE.waterWithAir_kg, step_s * corrections.waterWithAir_kgPerS);
  enter(ledger, LINE.ammoniaGone_kg, step_s * corrections.ammoniaGone_kgPerS);
}
