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
import { ahead, held, inside, rates, readOff, type Slate, writeDown } from './slate.ts';
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
} = held;
const {
  ACTIVITY_perS,
  CELLULOSE_kgPerS,
  ENERGY_JPerS,
  FAST_kgPerS,
  HEMICELLULOSE_kgPerS,
  LIGNIN_kgPerS,
  NITRATE_N_kgPerS,
  ORGANIC_N_kgPerS,
  PH_perS,
  WATER_kgPerS,
} = rates;
const { DRYNESS_share, DRY_kg, TEMP_degC } = inside;
const { GUESSED_AMMONIACAL_N_kg, GUESSED_ENERGY_J, GUESSED_WATER_kg, PASSED_kg, WARMING_K } = ahead;

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
/** Steps tried for one of the longest, and besides: a heap that needs more is so thin or so dry that its outside changes by the second. */
const MOST_TRIES = 600;
const TRIES_BESIDES = 200;

/** A heap that no step can follow. */
export class CannotFollow extends Error {}

/**
 * Takes one heap of a run from one time to another, adding what passes in and out to the ledger.
 *
 * Each step goes on with the mean of the rates at its start and at a first guess of its end, transport taken ahead in
 * both, so that it cannot swing however stiff it is (`AHEAD_share`). The rates at the guess, with what the second guess
 * passes on, serve as those at the start of the next step, so that a step asks for them once. Every flux leaves one
 * place and reaches another, so what is summed closes to the last digits.
 * @param slate of this heap alone, its `isNew` set whenever the heap or its setting was changed since the last step
 * @returns how many steps it took.
 * @throws CannotFollow; the slate, the state and the ledger are then spent.
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
  let tries = TRIES_BESIDES + (MOST_TRIES * (time.to_s - time.from_s)) / pace.step_s;
  while (now_s < time.to_s - least_s / 2) {
    const { start, end } = slate;
    const most_s = Math.min(slate.step_s, pace.step_s);
    const try_s = evenly_s(time.to_s - now_s, most_s);
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
    const next_s = try_s * ratioAfter(off_K / pace.within_K);
    // A step that only the end of the time cut short says nothing against one as long as was meant.
    slate.step_s = Math.max(least_s, next_s < try_s ? next_s : Math.max(most_s, next_s));
    if (tries-- < 0) throw new CannotFollow();
    if (!(off_K <= pace.within_K)) {
      if (try_s > least_s) continue;
      if (!Number.isFinite(off_K)) throw new CannotFollow();
    }
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

/** What is held of something after its rate at the start went on for a while. */
function goneOn(held: Float64Array, rate: Float64Array, was: number, while_s: number): number {
  return (held[was] as number) + while_s * (rate[was] as number);
}

/** What is held of something after both of its rates went on for a while. */
function goneOnByBoth(held: Float64Array, rate: Float64Array, was: number, has: number, while_s: number): number {
  return (held[was] as number) + while_s * ((rate[was] as number) + (rate[has] as number));
}

/** Puts right what cannot be less than nothing. @returns what it was, if that is less; not a number where it is none. */
function put(held: Float64Array, has: number, amount: number): number {
  held[has] = Math.max(amount, 0);
  return Math.min(amount, 0);
}

/** The first guess of the end of a step, from the rates at its start and what lies ahead. */
function guessEnd({ start, end, isDry }: Slate, step_s: number): void {
  const { count, from } = start;
  const { from: to } = end;
  for (let shell = 0; shell < count; shell++) {
    const was = shell + from;
    const has = shell + to;
    ENERGY_J[has] = goneOn(ENERGY_J, ENERGY_JPerS, was, step_s);
    WATER_kg[has] = goneOn(WATER_kg, WATER_kgPerS, was, step_s);
    put(AMMONIACAL_N_kg, has, (AMMONIACAL_N_kg[was] as number) + (PASSED_kg[shell] as number));
    put(FAST_kg, has, goneOn(FAST_kg, FAST_kgPerS, was, step_s));
    put(HEMICELLULOSE_kg, has, goneOn(HEMICELLULOSE_kg, HEMICELLULOSE_kgPerS, was, step_s));
    put(CELLULOSE_kg, has, goneOn(CELLULOSE_kg, CELLULOSE_kgPerS, was, step_s));
    put(LIGNIN_kg, has, goneOn(LIGNIN_kg, LIGNIN_kgPerS, was, step_s));
    put(ORGANIC_N_kg, has, goneOn(ORGANIC_N_kg, ORGANIC_N_kgPerS, was, step_s));
    put(NITRATE_N_kg, has, goneOn(NITRATE_N_kg, NITRATE_N_kgPerS, was, step_s));
    put(ACTIVITY_share, has, goneOn(ACTIVITY_share, ACTIVITY_perS, was, step_s));
    put(PH, has, goneOn(PH, PH_perS, was, step_s));
    OXYGEN_kgPerKg[has] = OXYGEN_kgPerKg[was] as number;
  }
  if (isDry) passDry(start, end, step_s);
  passAhead(start, end, step_s);
  const outermost = to + count - 1;
  ENERGY_J[outermost] = (ENERGY_J[outermost] as number) + AHEAD_share * step_s * fromAir_W(start, end);
  for (let shell = 0; shell < count; shell++) {
    const has = shell + to;
    GUESSED_ENERGY_J[shell] = ENERGY_J[has] as number;
    GUESSED_WATER_kg[shell] = WATER_kg[has] as number;
    GUESSED_AMMONIACAL_N_kg[shell] = AMMONIACAL_N_kg[has] as number;
  }
}

/**
 * The end of a step: the mean of both moments' rates, and what the first guess missed of them passed on.
 * @returns the most by which anything but heat is then below nothing, which is put right.
 */
function settleEnd({ start, end, isDry }: Slate, step_s: number): number {
  const { count, from } = start;
  const { from: to } = end;
  const half_s = 0.5 * step_s;
  let lowest = 0;
  for (let shell = 0; shell < count; shell++) {
    const was = shell + from;
    const has = shell + to;
    ENERGY_J[has] = goneOnByBoth(ENERGY_J, ENERGY_JPerS, was, has, half_s);
    WATER_kg[has] = goneOnByBoth(WATER_kg, WATER_kgPerS, was, has, half_s);
    lowest = Math.min(lowest, put(FAST_kg, has, goneOnByBoth(FAST_kg, FAST_kgPerS, was, has, half_s)));
    lowest = Math.min(
      lowest,
      put(HEMICELLULOSE_kg, has, goneOnByBoth(HEMICELLULOSE_kg, HEMICELLULOSE_kgPerS, was, has, half_s)),
    );
    lowest = Math.min(lowest, put(CELLULOSE_kg, has, goneOnByBoth(CELLULOSE_kg, CELLULOSE_kgPerS, was, has, half_s)));
    lowest = Math.min(lowest, put(LIGNIN_kg, has, goneOnByBoth(LIGNIN_kg, LIGNIN_kgPerS, was, has, half_s)));
    lowest = Math.min(lowest, put(ORGANIC_N_kg, has, goneOnByBoth(ORGANIC_N_kg, ORGANIC_N_kgPerS, was, has, half_s)));
    lowest = Math.min(lowest, put(NITRATE_N_kg, has, goneOnByBoth(NITRATE_N_kg, NITRATE_N_kgPerS, was, has, half_s)));
    lowest = Math.min(lowest, put(ACTIVITY_share, has, goneOnByBoth(ACTIVITY_share, ACTIVITY_perS, was, has, half_s)));
    lowest = Math.min(lowest, put(PH, has, goneOnByBoth(PH, PH_perS, was, has, half_s)));
    const ammoniacalN_kg = (GUESSED_AMMONIACAL_N_kg[shell] as number) + (PASSED_kg[shell] as number);
    lowest = Math.min(lowest, put(AMMONIACAL_N_kg, has, ammoniacalN_kg));
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
  const { count, from } = start;
  const { from: to } = end;
  const inner = count / 2;
  let off_K = 0;
  for (let shell = 0; shell < count; shell++) {
    const at = shell + to;
    const missed_K = WARMING_K[shell] as number;
    const rises_K = (TEMP_degC[at] as number) - (TEMP_degC[shell + from] as number);
    // In the inner half it is not the weather that makes a shell warm faster than the guess.
    const quickens = shell < inner && rises_K > 0 && missed_K > 0;
    off_K = Math.max(off_K, (quickens ? QUICKENING : 1) * Math.abs(missed_K));
    const dryness = DRYNESS_share[at] as number;
    if (dryness < DRY_share) continue;
    const drying_kg = DRYING_kgPerKg * (DRY_kg[at] as number);
    const drier_kg = (GUESSED_WATER_kg[shell] as number) - (WATER_kg[at] as number);
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
