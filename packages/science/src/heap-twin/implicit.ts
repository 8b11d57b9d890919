import { enter, LINE } from './ledger.ts';
import { vapourHeat_JPerKg } from './moist-air.ts';
import { twinParameters } from './parameters.ts';
import { ahead, held, inside, type Moment, rates } from './slate.ts';

const { AMMONIACAL_N_kg, ENERGY_J, WATER_kg } = held;
const { AMMONIACAL_N_kgPerS, ENERGY_JPerS, VOLATILE_LOST_kgPerS, WATER_kgPerS } = rates;
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
} = inside;
const {
  AMMONIA_PER_PIVOT_s,
  AMMONIA_UPPER_ratio,
  DRIVE_W,
  DRIVE_kgPerS,
  GUESSED_AMMONIACAL_N_kg,
  GUESSED_ENERGY_J,
  GUESSED_WATER_kg,
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
} = ahead;

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
 * out, being slow against a step. Eliminated from the core outwards (Thomas's algorithm): every shell's own coefficient is
 * its largest, so no pivot is needed.
 */
export function lookAhead({ count, from, surface }: Moment, contact_share: number, step_s: number): void {
  const perStep = PER_AHEAD / step_s;
  const last = count - 1;
  let temp_degC = TEMP_degC[from] as number;
  let heat_JPerKg = vapourHeat_JPerKg(temp_degC);
  let moister = HUMIDITY_RISE_perK[from] as number;
  let rise = VAPOUR_RISE_kgPerM3K[from] as number;
  let warmer_JPerKg = AIR_JPerKgK + (HUMIDITY_kgPerKg[from] as number) * VAPOUR_JPerKgK + moister * heat_JPerKg;
  let innerHeatOut = 0;
  let innerHeatBack = 0;
  let innerWaterOut = 0;
  let innerWaterBack = 0;
  let warmUpper = 0;
  let ammoniaUpper = 0;
  for (let shell = 0; shell <= last; shell++) {
    const at = shell + from;
    const risen = RISEN_kgPerS[at] as number;
    const face = HEAT_FACE_WPerK[at] as number;
    const open = VAPOUR_FACE_m3PerS[at] as number;
    const withWater = WITH_WATER_JPerKg[shell] as number;
    let heatOut = 0;
    let heatBack = 0;
    let waterOut = 0;
    let waterBack = 0;
    let heatLeaving: number;
    let waterLeaving: number;
    let own = (SLOPE_JPerK[at] as number) * perStep;
    if (shell === last) {
      heatLeaving = risen * warmer_JPerKg + open * rise * heat_JPerKg;
      waterLeaving = risen * moister + open * rise;
      own += face + surface.ground_WPerK + heatLeaving + innerHeatBack - withWater * (waterLeaving + innerWaterBack);
    } else {
      const next = at + 1;
      const drawn = DRAWN_kgPerS[at] as number;
      const nextTemp_degC = TEMP_degC[next] as number;
      const nextHeat_JPerKg = vapourHeat_JPerKg(nextTemp_degC);
      const nextMoister = HUMIDITY_RISE_perK[next] as number;
      const nextRise = VAPOUR_RISE_kgPerM3K[next] as number;
      const nextWarmer_JPerKg =
        AIR_JPerKgK + (HUMIDITY_kgPerKg[next] as number) * VAPOUR_JPerKgK + nextMoister * nextHeat_JPerKg;
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
    HEAT_OUT_WPerK[shell] = heatOut;
    HEAT_BACK_WPerK[shell] = heatBack;
    WATER_OUT_kgPerSK[shell] = waterOut;
    WATER_BACK_kgPerSK[shell] = waterBack;
    HEAT_LEAVING_WPerK[shell] = heatLeaving;
    WATER_LEAVING_kgPerSK[shell] = waterLeaving;

    const inner = innerHeatOut - withWater * innerWaterOut;
    const perPivot = 1 / (own - inner * warmUpper);
    warmUpper = (heatBack - withWater * waterBack) * perPivot;
    WARM_INNER_WPerK[shell] = inner;
    WARM_PER_PIVOT_KPerW[shell] = perPivot;
    WARM_UPPER_ratio[shell] = warmUpper;
    innerHeatOut = heatOut;
    innerHeatBack = heatBack;
    innerWaterOut = waterOut;
    innerWaterBack = waterBack;

    const ammoniaInner = AMMONIA_INNER_perS[at] as number;
    const ammoniaPivot = 1 / (perStep + (AMMONIA_OWN_perS[at] as number) - ammoniaInner * ammoniaUpper);
    ammoniaUpper = (AMMONIA_OUTER_perS[at] as number) * ammoniaPivot;
    AMMONIA_PER_PIVOT_s[shell] = ammoniaPivot;
    AMMONIA_UPPER_ratio[shell] = ammoniaUpper;
  }
}

/** What warms the shells at the start, W: their gain of heat less the part that comes or goes with matter as warm as they; and their gain of water and of ammoniacal nitrogen. */
export function driveByRates(start: Moment, end: Moment): void {
  const { count, from } = start;
  for (let shell = 0; shell < count; shell++) {
    const at = shell + from;
    const lost_JPerKS = ORGANIC_JPerKgK * (VOLATILE_LOST_kgPerS[at] as number);
    const net_W =
      (ENERGY_JPerS[at] as number) -
      (WITH_WATER_JPerKg[shell] as number) * (WATER_kgPerS[at] as number) +
      (TEMP_degC[at] as number) * lost_JPerKS;
    DRIVE_W[shell] = PER_AHEAD * net_W;
    WET_DRIVE_kgPerS[shell] = PER_AHEAD * (WATER_kgPerS[at] as number);
    DRIVE_kgPerS[shell] = PER_AHEAD * (AMMONIACAL_N_kgPerS[at] as number);
  }
  DRIVE_W[count - 1] = (DRIVE_W[count - 1] as number) + fromAir_W(start, end);
}

/** Heat through the surface by what the air outside warms during a step: the first guess of its end takes it as at the end. */
export function fromAir_W(start: Moment, end: Moment): number {
  return start.surface.air_WPerK * (end.air_degC - start.air_degC);
}

/** The same for what the first guess of a step missed of the mean of both moments' rates. */
export function driveByMissed(start: Moment, end: Moment, step_s: number): void {
  const perStep = 1 / step_s;
  for (let shell = 0; shell < start.count; shell++) {
    const was = shell + start.from;
    const has = shell + end.from;
    const missed_W =
      0.5 * ((ENERGY_JPerS[was] as number) + (ENERGY_JPerS[has] as number)) -
      perStep * ((GUESSED_ENERGY_J[shell] as number) - (ENERGY_J[was] as number));
    const missed_kgPerS =
      0.5 * ((WATER_kgPerS[was] as number) + (WATER_kgPerS[has] as number)) -
      perStep * ((GUESSED_WATER_kg[shell] as number) - (WATER_kg[was] as number));
    const missedN_kgPerS =
      0.5 * ((AMMONIACAL_N_kgPerS[was] as number) + (AMMONIACAL_N_kgPerS[has] as number)) -
      perStep * ((GUESSED_AMMONIACAL_N_kg[shell] as number) - (AMMONIACAL_N_kg[was] as number));
    DRIVE_W[shell] = PER_AHEAD * (missed_W - (WITH_WATER_JPerKg[shell] as number) * missed_kgPerS);
    WET_DRIVE_kgPerS[shell] = PER_AHEAD * missed_kgPerS;
    DRIVE_kgPerS[shell] = PER_AHEAD * missedN_kgPerS;
  }
}

/** Solves both sets of rows for the drives that stand in them. */
export function solveAhead({ count, from }: Moment): void {
  let warming = 0;
  let passed = 0;
  for (let shell = 0; shell < count; shell++) {
    warming =
      ((DRIVE_W[shell] as number) + (WARM_INNER_WPerK[shell] as number) * warming) *
      (WARM_PER_PIVOT_KPerW[shell] as number);
    passed =
      ((DRIVE_kgPerS[shell] as number) + (AMMONIA_INNER_perS[shell + from] as number) * passed) *
      (AMMONIA_PER_PIVOT_s[shell] as number);
    WARMING_K[shell] = warming;
    PASSED_kg[shell] = passed;
  }
  for (let shell = count - 2; shell >= 0; shell--) {
    warming = (WARMING_K[shell] as number) + (WARM_UPPER_ratio[shell] as number) * warming;
    passed = (PASSED_kg[shell] as number) + (AMMONIA_UPPER_ratio[shell] as number) * passed;
    WARMING_K[shell] = warming;
    PASSED_kg[shell] = passed;
  }
}

/**
 * Adds to what the end of a step holds what the solved warmings change, every flux leaving one shell and reaching
 * another; and to its rates, which were found before.
 * @returns the most by which water then lacks, kg: it is put right.
 */
export function passAhead({ count, surface }: Moment, { from }: Moment, step_s: number): number {
  const ahead_s = AHEAD_share * step_s;
  const last = count - 1;
  let inHeat_W = 0;
  let in_kgPerS = 0;
  let here_K = WARMING_K[0] as number;
  let lacking_kg = 0;
  for (let shell = 0; shell <= last; shell++) {
    const at = shell + from;
    const next_K = shell < last ? (WARMING_K[shell + 1] as number) : 0;
    const beyond_WPerK = shell < last ? 0 : surface.air_WPerK + surface.ground_WPerK;
    const face_W = (HEAT_OUT_WPerK[shell] as number) * here_K - (HEAT_BACK_WPerK[shell] as number) * next_K;
    const face_kgPerS = (WATER_OUT_kgPerSK[shell] as number) * here_K - (WATER_BACK_kgPerSK[shell] as number) * next_K;
    const leaving_W = (beyond_WPerK + (HEAT_LEAVING_WPerK[shell] as number)) * here_K;
    const leaving_kgPerS = (WATER_LEAVING_kgPerSK[shell] as number) * here_K;
    const gain_W = inHeat_W - face_W - leaving_W;
    const gain_kgPerS = in_kgPerS - face_kgPerS - leaving_kgPerS;
    ENERGY_JPerS[at] = (ENERGY_JPerS[at] as number) + gain_W;
    WATER_kgPerS[at] = (WATER_kgPerS[at] as number) + gain_kgPerS;
    ENERGY_J[at] = (ENERGY_J[at] as number) + ahead_s * gain_W;
    const left_kg = (WATER_kg[at] as number) + ahead_s * gain_kgPerS;
    WATER_kg[at] = Math.max(left_kg, 0);
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
  { count, from, surface }: Moment,
  { from: to, flows }: Moment,
  step_s: number,
  ledger: Float64Array,
): void {
  const perAhead = PER_AHEAD / step_s;
  let heat_W = 0;
  let water_kgPerS = 0;
  let ammonia_kgPerS = 0;
  for (let shell = 0; shell < count; shell++) {
    const warming_K = WARMING_K[shell] as number;
    const passed_kg = PASSED_kg[shell] as number;
    const at = shell + to;
    heat_W += (HEAT_LEAVING_WPerK[shell] as number) * warming_K;
    water_kgPerS += (WATER_LEAVING_kgPerSK[shell] as number) * warming_K;
    ammonia_kgPerS += (AMMONIA_LEAVING_perS[shell + from] as number) * passed_kg;
    // What was solved for is what the drive and the passing make together.
    AMMONIACAL_N_kgPerS[at] =
      (AMMONIACAL_N_kgPerS[at] as number) + perAhead * passed_kg - (DRIVE_kgPerS[shell] as number);
  }
  const last_K = WARMING_K[count - 1] as number;
  enterFlow(flows, ledger, LINE.heatThroughSurface_J, surface.air_WPerK * last_K, step_s);
  enterFlow(flows, ledger, LINE.heatToGround_J, surface.ground_WPerK * last_K, step_s);
  enterFlow(flows, ledger, LINE.heatWithAir_J, heat_W, step_s);
  enterFlow(flows, ledger, LINE.waterWithAir_kg, water_kgPerS, step_s);
  enterFlow(flows, ledger, LINE.ammoniaGone_kg, ammonia_kgPerS, step_s);
}
