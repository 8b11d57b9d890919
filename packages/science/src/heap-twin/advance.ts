import { findRates } from './change.ts';
import type { Setting } from './draught.ts';
import { enterDry, lookAtDry, passDry, solveDry } from './drying.ts';
import { driveByMissed, driveByRates, enterAhead, fromAir_W, lookAhead, passAhead, solveAhead } from './implicit.ts';
import { FLOWS } from './ledger.ts';
import { DAY_S, twinParameters } from './parameters.ts';
import { aheadPlaces, heldPlaces, insidePlaces, readOff, type Slate, slateSizes, writeDown } from './slate.ts';
import type { HeapState } from './state.ts';
import type { WeatherAt } from './surroundings.ts';

const { AMMONIACAL_N_kg, ENERGY_J, OXYGEN_kgPerKg, WATER_kg } = heldPlaces;
const { CHANGING, PASSING, ROW } = slateSizes;
const { DRYNESS_share, DRY_kg } = insidePlaces;
const { GUESS, PASSED_kg, WARMING_K } = aheadPlaces;

const SETTLES_s = twinParameters.settles_day.value * DAY_S;

/** How the time of a run is cut. */
export interface Pace {
  /** The longest step, s. */
  readonly step_s: number;
  /** A step is halved while its first and second guess of a shell's temperature differ by more, K. */
  readonly within_K: number;
}

/** A step is doubled again when it is so many times closer than asked: it is off by its square, four times for twice. */
const EASY = 5;
/** So often may a step be halved. */
const MOST_HALVINGS = 12;

/**
 * Takes one heap of a run from one time to another, adding what passes in and out to the ledger.
 *
 * Each step goes on with the mean of the rates at its start and at a first guess of its end (Heun's method, second
 * order); the rates at the guess serve as those at the start of the next step, so that a step asks for them once.
 * Transport is taken at the end of the step in both, so that it cannot swing however stiff it is. Every flux leaves one
 * place and reaches another, so what is summed closes to the last digits.
 * @param slate of this heap alone, its `isNew` set whenever the heap or its setting was changed since the last step
 * @returns how many steps it took.
 */
export function advance(
  setting: Setting,
  state: HeapState,
  ledger: Float64Array,
  weatherAt: WeatherAt,
  time: { readonly from_s: number; readonly to_s: number },
  pace: Pace,
  slate: Slate,
): number {
  const { flat, weather } = slate;
  const { traits } = setting;
  writeDown(slate, state, setting.shells);
  let now_s = time.from_s;
  let step_s = pace.step_s;
  const least_s = pace.step_s / 2 ** MOST_HALVINGS;
  let steps = 0;
  while (now_s < time.to_s - least_s / 2) {
    const { start, end } = slate;
    const try_s = Math.min(step_s, time.to_s - now_s);
    if (slate.isNew) {
      weatherAt(now_s, weather);
      findRates(flat, start, setting, weather, try_s);
      start.air_degC = weather.temp_degC;
      slate.isNew = false;
    }
    weatherAt(now_s + try_s, weather);
    end.air_degC = weather.temp_degC;
    slate.isDry = lookAtDry(flat, start, traits.plumeContact_share, try_s);
    lookAhead(flat, start, traits.plumeContact_share, try_s);
    driveByRates(flat, start, end);
    solveAhead(flat, start);
    if (slate.isDry) solveDry(flat);
    guessEnd(slate, try_s);
    end.settled_share = settledAfter(start.settled_share, traits.settling_share, try_s);
    findRates(flat, end, setting, weather, try_s);
    driveByMissed(flat, start, end, try_s);
    solveAhead(flat, start);
    if (slate.isDry) solveDry(flat);
    const lacking = settleEnd(slate, try_s);
    const off_K = lacking <= ROUNDING ? missedBy_K(slate) : Number.POSITIVE_INFINITY;
    if (!(off_K <= pace.within_K) && try_s > least_s) {
      step_s = try_s / 2;
      continue;
    }
    enterStep(slate, try_s, ledger);
    slate.start = end;
    slate.end = start;
    now_s += try_s;
    steps++;
    if (EASY * off_K < pace.within_K) step_s = Math.min(pace.step_s, 2 * step_s);
  }
  readOff(slate, state);
  return steps;
}

function settledAfter(settled_share: number, at_last_share: number, step_s: number): number {
  return at_last_share + (settled_share - at_last_share) * Math.exp(-step_s / SETTLES_s);
}

/** The first guess of the end of a step, from the rates at its start and what lies ahead. */
function guessEnd({ flat, start, end, isDry }: Slate, step_s: number): void {
  for (let row = 0; row < flat.length; row += ROW) {
    const was = row + start.held;
    const has = row + end.held;
    const rate = row + start.rates;
    for (let q = 0; q < PASSING; q++) {
      flat[has + q] = (flat[was + q] as number) + step_s * (flat[rate + q] as number);
    }
    for (let q = PASSING; q < CHANGING; q++) {
      const held = (flat[was + q] as number) + step_s * (flat[rate + q] as number);
      flat[has + q] = Math.max(held, 0);
    }
    const held = (flat[was + AMMONIACAL_N_kg] as number) + (flat[row + PASSED_kg] as number);
    flat[has + AMMONIACAL_N_kg] = Math.max(held, 0);
    flat[has + OXYGEN_kgPerKg] = flat[was + OXYGEN_kgPerKg] as number;
  }
  if (isDry) passDry(flat, start, end, step_s);
  passAhead(flat, start, end, step_s);
  const last = flat.length - ROW + end.held + ENERGY_J;
  flat[last] = (flat[last] as number) + step_s * fromAir_W(start, end);
  for (let row = 0; row < flat.length; row += ROW) {
    for (let q = 0; q < PASSING; q++) flat[row + GUESS + q] = flat[row + end.held + q] as number;
  }
}

/**
 * The end of a step: the mean of both moments' rates, and what the first guess missed of them passed on.
 * @returns the most by which anything but heat is then below nothing, which is put right.
 */
function settleEnd({ flat, start, end, isDry }: Slate, step_s: number): number {
  const half_s = 0.5 * step_s;
  let lacking = 0;
  for (let row = 0; row < flat.length; row += ROW) {
    const was = row + start.held;
    const has = row + end.held;
    const first = row + start.rates;
    const second = row + end.rates;
    for (let q = 0; q < PASSING; q++) {
      flat[has + q] = (flat[was + q] as number) + half_s * ((flat[first + q] as number) + (flat[second + q] as number));
    }
    for (let q = PASSING; q < CHANGING; q++) {
      const held = (flat[was + q] as number) + half_s * ((flat[first + q] as number) + (flat[second + q] as number));
      flat[has + q] = Math.max(held, 0);
      if (!(held >= 0)) lacking = Math.max(lacking, -held);
    }
    const held = (flat[row + GUESS + AMMONIACAL_N_kg] as number) + (flat[row + PASSED_kg] as number);
    flat[has + AMMONIACAL_N_kg] = Math.max(held, 0);
    if (!(held >= 0)) lacking = Math.max(lacking, -held);
  }
  if (isDry) passDry(flat, start, end, step_s);
  return Math.max(lacking, passAhead(flat, start, end, step_s));
}

/** Less than this below nothing is rounding, in any of the units; a step that takes more must be shorter. */
const ROUNDING = 1e-18;

/** Vapour held back by dryness is as far off as so many kelvins when all of it is. */
const DRYNESS_K = 2.4;
/** Stuff whose vapour is held back by less is moist. */
const DRY_share = 1e-5;
/** Less water over the drying constant changes that by so little that no step fails by it. */
const NOTICED = 1e-3;
const DRYING_kgPerKg = twinParameters.waterActivity.u0_kgPerKg;

/** How far the end of a step lies from its first guess, K; not a number where it cannot be told. */
function missedBy_K({ flat, end }: Slate): number {
  let off_K = 0;
  for (let row = 0; row < flat.length; row += ROW) {
    off_K = Math.max(off_K, Math.abs(flat[row + WARMING_K] as number));
    const at = row + end.inside;
    const dryness = flat[at + DRYNESS_share] as number;
    if (dryness < DRY_share) continue;
    const drying_kg = DRYING_kgPerKg * (flat[at + DRY_kg] as number);
    const drier_kg = (flat[row + GUESS + WATER_kg] as number) - (flat[row + end.held + WATER_kg] as number);
    if (Math.abs(drier_kg) < NOTICED * drying_kg) continue;
    off_K = Math.max(off_K, DRYNESS_K * dryness * Math.abs(Math.exp(drier_kg / drying_kg) - 1));
  }
  return off_K;
}

/** Enters the flows of a step into the ledger. */
function enterStep({ flat, start, end, isDry }: Slate, step_s: number, ledger: Float64Array): void {
  const half_s = 0.5 * step_s;
  for (let line = 0; line < FLOWS; line++) {
    ledger[line] = (ledger[line] as number) + half_s * ((start.flows[line] as number) + (end.flows[line] as number));
  }
  enterAhead(flat, start, step_s, ledger);
  if (isDry) enterDry(flat, start, step_s, ledger);
}
