import { findRates } from './change.ts';
import { rainOn } from './draining.ts';
import type { Setting } from './draught.ts';
import { enterDry, lookAtDry, passDry, solveDry } from './drying.ts';
import {
  AHEAD_share,
  driveByMissed,
  driveByRates,
  enterAhead,
  fromAir_W,
  lookAhead,
  passAhead,
  solveAhead,
} from './implicit.ts';
import { FLOWS } from './ledger.ts';
import { DAY_S, twinParameters } from './parameters.ts';
import { aheadPlaces, heldPlaces, insidePlaces, readOff, room, type Slate, slateSizes, writeDown } from './slate.ts';
import type { HeapState } from './state.ts';
import type { WeatherAt } from './surroundings.ts';

const {
  ACTIVITY_share,
  AMMONIACAL_N_kg,
  CELLULOSE_kg,
  ENERGY_J,
  FAST_kg,
  HEMICELLULOSE_kg,
  LIGNIN_kg,
  NITRATE_N_kg,
  ORGANIC_N_kg,
  OXYGEN_kgPerKg,
  PH,
  WATER_kg,
} = heldPlaces;
const { flat } = room;
const { ROW } = slateSizes;
const { DRYNESS_share, DRY_kg, TEMP_degC } = insidePlaces;
const { GUESS, PASSED_kg, WARMING_K } = aheadPlaces;

const SETTLES_s = twinParameters.settles_day.value * DAY_S;

/** How the time of a run is cut. */
export interface Pace {
  /** The longest step, s. */
  readonly step_s: number;
  /** A step whose first and second guess of its end differ by more is taken anew, shorter; what else differs is weighed in kelvins. */
  readonly within_K: number;
}

/** What two guesses differ by grows with the square of a step; a little less than that allows is tried. */
const CAREFUL_share = 0.9;
/** A step is at least and at most so many times the last. */
const LEAST_ratio = 0.25;
const MOST_ratio = 2;
/** No step is shorter than this share of the longest. */
const SHORTEST_share = 2 ** -12;

/**
 * Takes one heap of a run from one time to another, adding what passes in and out to the ledger.
 *
 * Each step goes on with the mean of the rates at its start and at a first guess of its end, transport taken ahead in
 * both, so that it cannot swing however stiff it is (`AHEAD_share`). The rates at the guess, with what the second guess
 * passes on, serve as those at the start of the next step, so that a step asks for them once. Every flux leaves one
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
  const { weather } = slate;
  const { traits } = setting;
  writeDown(slate, state, setting.shells);
  let now_s = time.from_s;
  const least_s = pace.step_s * SHORTEST_share;
  let steps = 0;
  while (now_s < time.to_s - least_s / 2) {
    const { start, end } = slate;
    const try_s = evenly_s(time.to_s - now_s, Math.min(slate.step_s, pace.step_s));
    if (slate.isNew) {
      weatherAt(now_s, weather);
      findRates(start, setting, weather, try_s);
      start.air_degC = weather.temp_degC;
      slate.isNew = false;
    }
    weatherAt(now_s + try_s, weather, try_s);
    end.air_degC = weather.temp_degC;
    rainOn(start, setting, weather);
    slate.isDry = lookAtDry(start, traits.plumeContact_share, try_s);
    lookAhead(start, traits.plumeContact_share, try_s);
    driveByRates(start, end);
    solveAhead(start);
    if (slate.isDry) solveDry(start);
    guessEnd(slate, try_s);
    end.settled_share = settledAfter(start.settled_share, traits.settling_share, try_s);
    findRates(end, setting, weather, try_s);
    driveByMissed(start, end, try_s);
    solveAhead(start);
    if (slate.isDry) solveDry(start);
    const lacking = settleEnd(slate, try_s);
    const off_K = lacking <= ROUNDING ? missedBy_K(slate) : Number.POSITIVE_INFINITY;
    slate.step_s = try_s * ratioAfter(off_K / pace.within_K);
    if (!(off_K <= pace.within_K) && try_s > least_s) continue;
    enterStep(slate, try_s, ledger);
    slate.start = end;
    slate.end = start;
    now_s += try_s;
    steps++;
  }
  readOff(slate, state);
  return steps;
}

/** The longest even part of a time that is no longer than asked. */
function evenly_s(time_s: number, step_s: number): number {
  return time_s / Math.ceil(time_s / step_s - EVEN);
}
/** A part longer by so little is as long as asked. */
const EVEN = 1e-9;

/** How many times a step the next may be, after one that is off by such a part of what is allowed, or by what cannot be told. */
function ratioAfter(off_share: number): number {
  const ratio = CAREFUL_share / Math.sqrt(off_share);
  return ratio >= LEAST_ratio ? Math.min(ratio, MOST_ratio) : LEAST_ratio;
}

function settledAfter(settled_share: number, at_last_share: number, step_s: number): number {
  return at_last_share + (settled_share - at_last_share) * Math.exp(-step_s / SETTLES_s);
}

/** What a place holds when its rate goes on for a while. */
function goneOn(was: number, rate: number, while_s: number, place: number): number {
  return (flat[was + place] as number) + while_s * (flat[rate + place] as number);
}

/** What it holds after both of its rates went on for a while. */
function goneOnByBoth(was: number, first: number, second: number, while_s: number, place: number): number {
  return (flat[was + place] as number) + while_s * ((flat[first + place] as number) + (flat[second + place] as number));
}

/** What cannot be less than nothing; what is not a number stays so. */
function atLeastNone(held: number): number {
  return Math.max(held, 0);
}

/** The lesser of two; not a number if either is not. */
function least(one: number, other: number): number {
  return one >= other ? other : Math.min(one, other);
}

/** The first guess of the end of a step, from the rates at its start and what lies ahead. */
function guessEnd({ start, end, isDry }: Slate, step_s: number): void {
  const { rowsEnd, held, rates } = start;
  const { held: guessed } = end;
  for (let row = 0; row < rowsEnd; row += ROW) {
    const was = row + held;
    const has = row + guessed;
    const rate = row + rates;
    flat[has + ENERGY_J] = goneOn(was, rate, step_s, ENERGY_J);
    flat[has + WATER_kg] = goneOn(was, rate, step_s, WATER_kg);
    flat[has + AMMONIACAL_N_kg] = atLeastNone(
      (flat[was + AMMONIACAL_N_kg] as number) + (flat[row + PASSED_kg] as number),
    );
    flat[has + FAST_kg] = atLeastNone(goneOn(was, rate, step_s, FAST_kg));
    flat[has + HEMICELLULOSE_kg] = atLeastNone(goneOn(was, rate, step_s, HEMICELLULOSE_kg));
    flat[has + CELLULOSE_kg] = atLeastNone(goneOn(was, rate, step_s, CELLULOSE_kg));
    flat[has + LIGNIN_kg] = atLeastNone(goneOn(was, rate, step_s, LIGNIN_kg));
    flat[has + ORGANIC_N_kg] = atLeastNone(goneOn(was, rate, step_s, ORGANIC_N_kg));
    flat[has + NITRATE_N_kg] = atLeastNone(goneOn(was, rate, step_s, NITRATE_N_kg));
    flat[has + ACTIVITY_share] = atLeastNone(goneOn(was, rate, step_s, ACTIVITY_share));
    flat[has + PH] = atLeastNone(goneOn(was, rate, step_s, PH));
    flat[has + OXYGEN_kgPerKg] = flat[was + OXYGEN_kgPerKg] as number;
  }
  if (isDry) passDry(start, end, step_s);
  passAhead(start, end, step_s);
  const last = rowsEnd - ROW + guessed + ENERGY_J;
  flat[last] = (flat[last] as number) + AHEAD_share * step_s * fromAir_W(start, end);
  for (let row = 0; row < rowsEnd; row += ROW) {
    const has = row + guessed;
    flat[row + GUESS + ENERGY_J] = flat[has + ENERGY_J] as number;
    flat[row + GUESS + WATER_kg] = flat[has + WATER_kg] as number;
    flat[row + GUESS + AMMONIACAL_N_kg] = flat[has + AMMONIACAL_N_kg] as number;
  }
}

/**
 * The end of a step: the mean of both moments' rates, and what the first guess missed of them passed on.
 * @returns the most by which anything but heat is then below nothing, which is put right.
 */
function settleEnd({ start, end, isDry }: Slate, step_s: number): number {
  const { rowsEnd, held, rates } = start;
  const { held: settled, rates: later } = end;
  const half_s = 0.5 * step_s;
  let lowest = 0;
  for (let row = 0; row < rowsEnd; row += ROW) {
    const was = row + held;
    const has = row + settled;
    const first = row + rates;
    const second = row + later;
    flat[has + ENERGY_J] = goneOnByBoth(was, first, second, half_s, ENERGY_J);
    flat[has + WATER_kg] = goneOnByBoth(was, first, second, half_s, WATER_kg);
    const fast = goneOnByBoth(was, first, second, half_s, FAST_kg);
    flat[has + FAST_kg] = atLeastNone(fast);
    lowest = least(fast, lowest);
    const hemicellulose = goneOnByBoth(was, first, second, half_s, HEMICELLULOSE_kg);
    flat[has + HEMICELLULOSE_kg] = atLeastNone(hemicellulose);
    lowest = least(hemicellulose, lowest);
    const cellulose = goneOnByBoth(was, first, second, half_s, CELLULOSE_kg);
    flat[has + CELLULOSE_kg] = atLeastNone(cellulose);
    lowest = least(cellulose, lowest);
    const lignin = goneOnByBoth(was, first, second, half_s, LIGNIN_kg);
    flat[has + LIGNIN_kg] = atLeastNone(lignin);
    lowest = least(lignin, lowest);
    const organicN = goneOnByBoth(was, first, second, half_s, ORGANIC_N_kg);
    flat[has + ORGANIC_N_kg] = atLeastNone(organicN);
    lowest = least(organicN, lowest);
    const nitrateN = goneOnByBoth(was, first, second, half_s, NITRATE_N_kg);
    flat[has + NITRATE_N_kg] = atLeastNone(nitrateN);
    lowest = least(nitrateN, lowest);
    const activity = goneOnByBoth(was, first, second, half_s, ACTIVITY_share);
    flat[has + ACTIVITY_share] = atLeastNone(activity);
    lowest = least(activity, lowest);
    const pH = goneOnByBoth(was, first, second, half_s, PH);
    flat[has + PH] = atLeastNone(pH);
    lowest = least(pH, lowest);
    const ammoniacalN = (flat[row + GUESS + AMMONIACAL_N_kg] as number) + (flat[row + PASSED_kg] as number);
    flat[has + AMMONIACAL_N_kg] = atLeastNone(ammoniacalN);
    lowest = least(ammoniacalN, lowest);
  }
  if (isDry) passDry(start, end, step_s);
  return Math.max(-lowest, passAhead(start, end, step_s));
}

/** Less than this below nothing is rounding, in any of the units; a step that takes more must be shorter. */
const ROUNDING = 1e-18;

/** Vapour held back by dryness is as far off as so many kelvins when all of it is. */
const DRYNESS_K = 14;
/** Stuff whose vapour is held back by less is moist. */
const DRY_share = 1e-5;
/** Less water over the drying constant changes that by so little that no step fails by it. */
const NOTICED = 1e-3;
const DRYING_kgPerKg = twinParameters.waterActivity.u0_kgPerKg;

/** What a shell is off while it heats itself grows with it, and counts for so many times as much. */
const QUICKENING = 3;

/** How far the end of a step lies from its first guess, K, as it is weighed; not a number where it cannot be told. */
function missedBy_K({ start, end }: Slate): number {
  const { rowsEnd } = start;
  const inner = rowsEnd / 2;
  let off_K = 0;
  for (let row = 0; row < rowsEnd; row += ROW) {
    const missed_K = flat[row + WARMING_K] as number;
    const rises_K = (flat[row + end.inside + TEMP_degC] as number) - (flat[row + start.inside + TEMP_degC] as number);
    // In the inner half it is not the weather that makes a shell warm faster than the guess.
    const quickens = row < inner && rises_K > 0 && missed_K > 0;
    off_K = Math.max(off_K, (quickens ? QUICKENING : 1) * Math.abs(missed_K));
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
function enterStep({ start, end, isDry }: Slate, step_s: number, ledger: Float64Array): void {
  const half_s = 0.5 * step_s;
  for (let line = 0; line < FLOWS; line++) {
    ledger[line] = (ledger[line] as number) + half_s * ((start.flows[line] as number) + (end.flows[line] as number));
  }
  enterAhead(start, end, step_s, ledger);
  if (isDry) enterDry(start, end, step_s, ledger);
}
