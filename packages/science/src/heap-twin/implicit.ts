import { enter, LINE } from './ledger.ts';
import { vapourHeat_JPerKg } from './moist-air.ts';
import { twinParameters } from './parameters.ts';
import { aheadPlaces, heldPlaces, insidePlaces, type Moment, room, slateSizes } from './slate.ts';

const {
  AMMONIA_INNER_perS,
  AMMONIA_LEAVING_perS,
  AMMONIA_OUTER_perS,
  AMMONIA_OWN_perS,
  DRAWN_kgPerS,
  HEAT_FACE_WPerK,
  HUMIDITY_RISE_perK,
  HUMIDITY_kgPerKg,
  RISEN_kgPerS,
  SLOPE_JPerK,
  TEMP_degC,
  VAPOUR_FACE_m3PerS,
  VAPOUR_RISE_kgPerM3K,
} = insidePlaces;
const {
  AMMONIA_PER_PIVOT_s,
  AMMONIA_UPPER_ratio,
  DRIVE_W,
  DRIVE_kgPerS,
  GUESS,
  HEAT_BACK_WPerK,
  HEAT_LEAVING_WPerK,
  HEAT_OUT_WPerK,
  PASSED_kg,
  WARMING_K,
  WARM_INNER_WPerK,
  WARM_PER_PIVOT_KPerW,
  WARM_UPPER_ratio,
  WATER_BACK_kgPerSK,
  WATER_LEAVING_kgPerSK,
  WATER_OUT_kgPerSK,
  WET_DRIVE_kgPerS,
  WITH_WATER_JPerKg,
} = aheadPlaces;
const { AMMONIACAL_N_kg, ENERGY_J, VOLATILE_LOST_kgPerS, WATER_kg } = heldPlaces;
const { flat } = room;
const { ROW } = slateSizes;

/**
 * Transport is taken so far ahead in a step, as a share of it: at this share the step is of second order and forgets at
 * once whatever has long settled, however stiff it is. Source: Verwer, Spee, Blom and Hundsdorfer 1999, SIAM J. Sci.
 * Comput. 20:1456-1480, a Rosenbrock method of two stages, with the smaller of the two shares that do.
 */
export const AHEAD_share: number = 1 - Math.SQRT1_2;
const PER_AHEAD = 1 / AHEAD_share;

const ORGANIC_JPerKgK = twinParameters.organicHeat_JPerKgK.typical;
const AIR_JPerKgK = twinParameters.airHeat_JPerKgK.value;
const VAPOUR_JPerKgK = twinParameters.vapourHeat_JPerKgK.value;

/**
 * The rows that tell each shell's warming over a step from what drives it, transport taken ahead: conduction, draught,
 * vapour and its latent heat; and each shell's gain of ammoniacal nitrogen likewise. Rotting stays
 * out, being slow against a step. Eliminated from the core outwards (Thomas's algorithm): every row's own coefficient is
 * its largest, so no pivot is needed.
 */
export function lookAhead({ rowsEnd, inside, surface }: Moment, contact_share: number, step_s: number): void {
  const perStep = PER_AHEAD / step_s;
  const end = rowsEnd - ROW;
  let temp_degC = flat[inside + TEMP_degC] as number;
  let heat_JPerKg = vapourHeat_JPerKg(temp_degC);
  let moister = flat[inside + HUMIDITY_RISE_perK] as number;
  let rise = flat[inside + VAPOUR_RISE_kgPerM3K] as number;
  let warmer_JPerKg =
    AIR_JPerKgK + (flat[inside + HUMIDITY_kgPerKg] as number) * VAPOUR_JPerKgK + moister * heat_JPerKg;
  let innerHeatOut = 0;
  let innerHeatBack = 0;
  let innerWaterOut = 0;
  let innerWaterBack = 0;
  let warmUpper = 0;
  let ammoniaUpper = 0;
  for (let row = 0; row <= end; row += ROW) {
    const at = row + inside;
    const risen = flat[at + RISEN_kgPerS] as number;
    const face = flat[at + HEAT_FACE_WPerK] as number;
    const open = flat[at + VAPOUR_FACE_m3PerS] as number;
    const withWater = flat[row + WITH_WATER_JPerKg] as number;
    let heatOut = 0;
    let heatBack = 0;
    let waterOut = 0;
    let waterBack = 0;
    let heatLeaving: number;
    let waterLeaving: number;
    let own = (flat[at + SLOPE_JPerK] as number) * perStep;
    if (row === end) {
      heatLeaving = risen * warmer_JPerKg + open * rise * heat_JPerKg;
      waterLeaving = risen * moister + open * rise;
      own += face + surface.ground_WPerK + heatLeaving + innerHeatBack - withWater * (waterLeaving + innerWaterBack);
    } else {
      const next = at + ROW;
      const drawn = flat[at + DRAWN_kgPerS] as number;
      const nextTemp_degC = flat[next + TEMP_degC] as number;
      const nextHeat_JPerKg = vapourHeat_JPerKg(nextTemp_degC);
      const nextMoister = flat[next + HUMIDITY_RISE_perK] as number;
      const nextRise = flat[next + VAPOUR_RISE_kgPerM3K] as number;
      const nextWarmer_JPerKg =
        AIR_JPerKgK + (flat[next + HUMIDITY_kgPerKg] as number) * VAPOUR_JPerKgK + nextMoister * nextHeat_JPerKg;
      const handed = contact_share * risen;
      heatOut = handed * warmer_JPerKg + face + open * rise * heat_JPerKg;
      heatBack = drawn * nextWarmer_JPerKg + face + open * nextRise * heat_JPerKg;
      waterOut = handed * moister + open * rise;
      waterBack = drawn * nextMoister + open * nextRise;
      heatLeaving = (risen - handed) * warmer_JPerKg;
      waterLeaving = (risen - handed) * moister;
      own += heatOut + heatLeaving + innerHeatBack - withWater * (waterOut + waterLeaving + innerWaterBack);
      temp_degC = nextTemp_degC;
      heat_JPerKg = nextHeat_JPerKg;
      moister = nextMoister;
      rise = nextRise;
      warmer_JPerKg = nextWarmer_JPerKg;
    }
    flat[row + HEAT_OUT_WPerK] = heatOut;
    flat[row + HEAT_BACK_WPerK] = heatBack;
    flat[row + WATER_OUT_kgPerSK] = waterOut;
    flat[row + WATER_BACK_kgPerSK] = waterBack;
    flat[row + HEAT_LEAVING_WPerK] = heatLeaving;
    flat[row + WATER_LEAVING_kgPerSK] = waterLeaving;

    const inner = innerHeatOut - withWater * innerWaterOut;
    const perPivot = 1 / (own - inner * warmUpper);
    warmUpper = (heatBack - withWater * waterBack) * perPivot;
    flat[row + WARM_INNER_WPerK] = inner;
    flat[row + WARM_PER_PIVOT_KPerW] = perPivot;
    flat[row + WARM_UPPER_ratio] = warmUpper;
    innerHeatOut = heatOut;
    innerHeatBack = heatBack;
    innerWaterOut = waterOut;
    innerWaterBack = waterBack;

    const ammoniaInner = flat[at + AMMONIA_INNER_perS] as number;
    const ammoniaPivot = 1 / (perStep + (flat[at + AMMONIA_OWN_perS] as number) - ammoniaInner * ammoniaUpper);
    ammoniaUpper = (flat[at + AMMONIA_OUTER_perS] as number) * ammoniaPivot;
    flat[row + AMMONIA_PER_PIVOT_s] = ammoniaPivot;
    flat[row + AMMONIA_UPPER_ratio] = ammoniaUpper;
  }
}

/** What warms the shells at the start, W: their gain of heat less the part that comes or goes with matter as warm as they; and their gain of water and of ammoniacal nitrogen. */
export function driveByRates(start: Moment, end: Moment): void {
  const { rowsEnd, inside, rates } = start;
  for (let row = 0; row < rowsEnd; row += ROW) {
    const rate = row + rates;
    const lost_JPerKS = ORGANIC_JPerKgK * (flat[rate + VOLATILE_LOST_kgPerS] as number);
    const net_W =
      (flat[rate + ENERGY_J] as number) -
      (flat[row + WITH_WATER_JPerKg] as number) * (flat[rate + WATER_kg] as number) +
      (flat[row + inside + TEMP_degC] as number) * lost_JPerKS;
    flat[row + DRIVE_W] = PER_AHEAD * net_W;
    flat[row + WET_DRIVE_kgPerS] = PER_AHEAD * (flat[rate + WATER_kg] as number);
    flat[row + DRIVE_kgPerS] = PER_AHEAD * (flat[rate + AMMONIACAL_N_kg] as number);
  }
  const last = rowsEnd - ROW + DRIVE_W;
  flat[last] = (flat[last] as number) + fromAir_W(start, end);
}

/** Heat through the surface by what the air outside warms during a step: the first guess of its end takes it as at the end. */
export function fromAir_W(start: Moment, end: Moment): number {
  return start.surface.air_WPerK * (end.air_degC - start.air_degC);
}

/** The same for what the first guess of a step missed of the mean of both moments' rates. */
export function driveByMissed(start: Moment, end: Moment, step_s: number): void {
  const perStep = 1 / step_s;
  for (let row = 0; row < start.rowsEnd; row += ROW) {
    const was = row + start.held;
    const first = row + start.rates;
    const second = row + end.rates;
    const missed_W =
      0.5 * ((flat[first + ENERGY_J] as number) + (flat[second + ENERGY_J] as number)) -
      perStep * ((flat[row + GUESS + ENERGY_J] as number) - (flat[was + ENERGY_J] as number));
    const missed_kgPerS =
      0.5 * ((flat[first + WATER_kg] as number) + (flat[second + WATER_kg] as number)) -
      perStep * ((flat[row + GUESS + WATER_kg] as number) - (flat[was + WATER_kg] as number));
    const missedN_kgPerS =
      0.5 * ((flat[first + AMMONIACAL_N_kg] as number) + (flat[second + AMMONIACAL_N_kg] as number)) -
      perStep * ((flat[row + GUESS + AMMONIACAL_N_kg] as number) - (flat[was + AMMONIACAL_N_kg] as number));
    flat[row + DRIVE_W] = PER_AHEAD * (missed_W - (flat[row + WITH_WATER_JPerKg] as number) * missed_kgPerS);
    flat[row + WET_DRIVE_kgPerS] = PER_AHEAD * missed_kgPerS;
    flat[row + DRIVE_kgPerS] = PER_AHEAD * missedN_kgPerS;
  }
}

/** Solves both sets of rows for the drives that stand in them. */
export function solveAhead({ rowsEnd, inside }: Moment): void {
  let warming = 0;
  let passed = 0;
  for (let row = 0; row < rowsEnd; row += ROW) {
    warming =
      ((flat[row + DRIVE_W] as number) + (flat[row + WARM_INNER_WPerK] as number) * warming) *
      (flat[row + WARM_PER_PIVOT_KPerW] as number);
    passed =
      ((flat[row + DRIVE_kgPerS] as number) + (flat[row + inside + AMMONIA_INNER_perS] as number) * passed) *
      (flat[row + AMMONIA_PER_PIVOT_s] as number);
    flat[row + WARMING_K] = warming;
    flat[row + PASSED_kg] = passed;
  }
  for (let row = rowsEnd - 2 * ROW; row >= 0; row -= ROW) {
    warming = (flat[row + WARMING_K] as number) + (flat[row + WARM_UPPER_ratio] as number) * warming;
    passed = (flat[row + PASSED_kg] as number) + (flat[row + AMMONIA_UPPER_ratio] as number) * passed;
    flat[row + WARMING_K] = warming;
    flat[row + PASSED_kg] = passed;
  }
}

/**
 * Adds to what the end of a step holds what the solved warmings change, every flux leaving one shell and reaching
 * another; and to its rates, which were found before.
 * @returns the most by which water then lacks, kg: it is put right.
 */
export function passAhead({ rowsEnd, surface }: Moment, { held, rates }: Moment, step_s: number): number {
  const ahead_s = AHEAD_share * step_s;
  const last = rowsEnd - ROW;
  let inHeat_W = 0;
  let in_kgPerS = 0;
  let here_K = flat[WARMING_K] as number;
  let lacking_kg = 0;
  for (let row = 0; row <= last; row += ROW) {
    const has = row + held;
    const next_K = row < last ? (flat[row + ROW + WARMING_K] as number) : 0;
    const beyond_WPerK = row < last ? 0 : surface.air_WPerK + surface.ground_WPerK;
    const face_W = (flat[row + HEAT_OUT_WPerK] as number) * here_K - (flat[row + HEAT_BACK_WPerK] as number) * next_K;
    const face_kgPerS =
      (flat[row + WATER_OUT_kgPerSK] as number) * here_K - (flat[row + WATER_BACK_kgPerSK] as number) * next_K;
    const leaving_W = (beyond_WPerK + (flat[row + HEAT_LEAVING_WPerK] as number)) * here_K;
    const leaving_kgPerS = (flat[row + WATER_LEAVING_kgPerSK] as number) * here_K;
    const gain_W = inHeat_W - face_W - leaving_W;
    const gain_kgPerS = in_kgPerS - face_kgPerS - leaving_kgPerS;
    const rate = row + rates;
    flat[rate + ENERGY_J] = (flat[rate + ENERGY_J] as number) + gain_W;
    flat[rate + WATER_kg] = (flat[rate + WATER_kg] as number) + gain_kgPerS;
    flat[has + ENERGY_J] = (flat[has + ENERGY_J] as number) + ahead_s * gain_W;
    const left_kg = (flat[has + WATER_kg] as number) + ahead_s * gain_kgPerS;
    flat[has + WATER_kg] = Math.max(left_kg, 0);
    if (!(left_kg >= 0)) lacking_kg = Math.max(lacking_kg, -left_kg);
    inHeat_W = face_W;
    in_kgPerS = face_kgPerS;
    here_K = next_K;
  }
  return lacking_kg;
}

/**
 * Adds to a flow and to its line of the ledger what leaves the heap by what was solved for.
 * @param step_s the whole step
 */
export function enterFlow(flows: Float64Array, ledger: Float64Array, line: number, rate: number, step_s: number): void {
  enter(flows, line, rate);
  enter(ledger, line, AHEAD_share * step_s * rate);
}

/** Enters what leaves the heap by the solved warmings and passings of nitrogen, and the passings into the rates. */
export function enterAhead(
  { rowsEnd, inside, surface }: Moment,
  { flows, rates }: Moment,
  step_s: number,
  ledger: Float64Array,
): void {
  const perAhead = PER_AHEAD / step_s;
  let heat_W = 0;
  let water_kgPerS = 0;
  let ammonia_kgPerS = 0;
  for (let row = 0; row < rowsEnd; row += ROW) {
    const warming_K = flat[row + WARMING_K] as number;
    const passed_kg = flat[row + PASSED_kg] as number;
    const rate = row + rates + AMMONIACAL_N_kg;
    heat_W += (flat[row + HEAT_LEAVING_WPerK] as number) * warming_K;
    water_kgPerS += (flat[row + WATER_LEAVING_kgPerSK] as number) * warming_K;
    ammonia_kgPerS += (flat[row + inside + AMMONIA_LEAVING_perS] as number) * passed_kg;
    // What was solved for is what the drive and the passing make together.
    flat[rate] = (flat[rate] as number) + perAhead * passed_kg - (flat[row + DRIVE_kgPerS] as number);
  }
  const last_K = flat[rowsEnd - ROW + WARMING_K] as number;
  enterFlow(flows, ledger, LINE.heatThroughSurface_J, surface.air_WPerK * last_K, step_s);
  enterFlow(flows, ledger, LINE.heatToGround_J, surface.ground_WPerK * last_K, step_s);
  enterFlow(flows, ledger, LINE.heatWithAir_J, heat_W, step_s);
  enterFlow(flows, ledger, LINE.waterWithAir_kg, water_kgPerS, step_s);
  enterFlow(flows, ledger, LINE.ammoniaGone_kg, ammonia_kgPerS, step_s);
}
