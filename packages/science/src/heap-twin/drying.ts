import { enter, LINE } from './ledger.ts';
import { vapourHeat_JPerKg } from './moist-air.ts';
import { twinParameters } from './parameters.ts';
import { aheadPlaces, heldPlaces, insidePlaces, type Moment, slateSizes } from './slate.ts';

const { DRAWN_kgPerS, HUMIDITY_RISE_perKg, RISEN_kgPerS, TEMP_degC, VAPOUR_FACE_m3PerS, VAPOUR_RISE_perM3 } =
  insidePlaces;
const { ENERGY_J, WATER_kg } = heldPlaces;
const { ROW } = slateSizes;
const {
  WARMING_K,
  WATER_BACK_kgPerSK,
  WATER_LEAVING_kgPerSK,
  WATER_OUT_kgPerSK,
  WETTING_kg,
  WET_BACK_perS,
  WET_DRIVE_kgPerS,
  WET_LEAVING_perS,
  WET_OUT_perS,
  WET_PER_PIVOT_s,
  WET_UPPER_ratio,
  WITH_WATER_JPerKg,
} = aheadPlaces;

const WATER_JPerKgK = twinParameters.waterHeat_JPerKgK.value;

/**
 * Stuff that is nearly dry gives off its last water within minutes, far less than a step: there its vapour is taken at
 * the end of the step for its water too, not for its warmth alone. What evaporates then takes its heat with it.
 * @returns whether any shell is so dry that it matters.
 */
export function lookAtDry(flat: Float64Array, { inside }: Moment, contact_share: number, step_s: number): boolean {
  let isDry = false;
  for (let row = 0; row < flat.length; row += ROW) {
    flat[row + WITH_WATER_JPerKg] = WATER_JPerKgK * (flat[row + inside + TEMP_degC] as number);
    if ((flat[row + inside + HUMIDITY_RISE_perKg] as number) > 0) isDry = true;
  }
  if (!isDry) return false;
  const perStep = 1 / step_s;
  const end = flat.length - ROW;
  let innerOut = 0;
  let innerBack = 0;
  let upper = 0;
  for (let row = 0; row <= end; row += ROW) {
    const at = row + inside;
    const moister = flat[at + HUMIDITY_RISE_perKg] as number;
    const through = (flat[at + VAPOUR_FACE_m3PerS] as number) * (flat[at + VAPOUR_RISE_perM3] as number);
    const risen = flat[at + RISEN_kgPerS] as number;
    const handed = row === end ? 0 : contact_share * risen;
    const out = row === end ? 0 : handed * moister + through;
    const leaving = row === end ? risen * moister + through : (risen - handed) * moister;
    const next = at + ROW;
    const back =
      row === end
        ? 0
        : (flat[at + DRAWN_kgPerS] as number) * (flat[next + HUMIDITY_RISE_perKg] as number) +
          (flat[at + VAPOUR_FACE_m3PerS] as number) * (flat[next + VAPOUR_RISE_perM3] as number);
    const own = out + leaving + innerBack;
    const withWater = flat[row + WITH_WATER_JPerKg] as number;
    const evaporating_JPerKg = vapourHeat_JPerKg(flat[at + TEMP_degC] as number) - withWater;
    flat[row + WITH_WATER_JPerKg] = withWater + (own / (perStep + own)) * evaporating_JPerKg;
    const perPivot = 1 / (perStep + own - innerOut * upper);
    upper = back * perPivot;
    flat[row + WET_OUT_perS] = out;
    flat[row + WET_BACK_perS] = back;
    flat[row + WET_LEAVING_perS] = leaving;
    flat[row + WET_PER_PIVOT_s] = perPivot;
    flat[row + WET_UPPER_ratio] = upper;
    innerOut = out;
    innerBack = back;
  }
  return true;
}

/** Solves for the gain of water of each shell, of which the solved warmings have taken their part. */
export function solveDry(flat: Float64Array): void {
  const end = flat.length - ROW;
  let innerOut = 0;
  let in_kgPerS = 0;
  let wetting = 0;
  for (let row = 0; row <= end; row += ROW) {
    const here_K = flat[row + WARMING_K] as number;
    const next_K = row < end ? (flat[row + ROW + WARMING_K] as number) : 0;
    const face_kgPerS =
      (flat[row + WATER_OUT_kgPerSK] as number) * here_K - (flat[row + WATER_BACK_kgPerSK] as number) * next_K;
    const drive =
      (flat[row + WET_DRIVE_kgPerS] as number) +
      in_kgPerS -
      face_kgPerS -
      (flat[row + WATER_LEAVING_kgPerSK] as number) * here_K;
    wetting = (drive + innerOut * wetting) * (flat[row + WET_PER_PIVOT_s] as number);
    flat[row + WETTING_kg] = wetting;
    in_kgPerS = face_kgPerS;
    innerOut = flat[row + WET_OUT_perS] as number;
  }
  for (let row = end - ROW; row >= 0; row -= ROW) {
    wetting = (flat[row + WETTING_kg] as number) + (flat[row + WET_UPPER_ratio] as number) * wetting;
    flat[row + WETTING_kg] = wetting;
  }
}

/** Adds to what the end of a step holds what the solved gains of water change in vapour, with its heat. */
export function passDry(flat: Float64Array, { inside }: Moment, { held }: Moment, step_s: number): void {
  const end = flat.length - ROW;
  let in_kg = 0;
  let in_J = 0;
  for (let row = 0; row <= end; row += ROW) {
    const has = row + held;
    const here_kg = flat[row + WETTING_kg] as number;
    const next_kg = row < end ? (flat[row + ROW + WETTING_kg] as number) : 0;
    const heat_JPerKg = vapourHeat_JPerKg(flat[row + inside + TEMP_degC] as number);
    const face_kg =
      step_s * ((flat[row + WET_OUT_perS] as number) * here_kg - (flat[row + WET_BACK_perS] as number) * next_kg);
    const leaving_kg = step_s * (flat[row + WET_LEAVING_perS] as number) * here_kg;
    const face_J = heat_JPerKg * face_kg;
    flat[has + WATER_kg] = (flat[has + WATER_kg] as number) + in_kg - face_kg - leaving_kg;
    flat[has + ENERGY_J] = (flat[has + ENERGY_J] as number) + in_J - face_J - heat_JPerKg * leaving_kg;
    in_kg = face_kg;
    in_J = face_J;
  }
}

/** Enters into the ledger what leaves the heap by the solved gains of water. */
export function enterDry(flat: Float64Array, { inside }: Moment, step_s: number, ledger: Float64Array): void {
  for (let row = 0; row < flat.length; row += ROW) {
    const leaving_kg = step_s * (flat[row + WET_LEAVING_perS] as number) * (flat[row + WETTING_kg] as number);
    enter(ledger, LINE.waterWithAir_kg, leaving_kg);
    enter(ledger, LINE.heatWithAir_J, leaving_kg * vapourHeat_JPerKg(flat[row + inside + TEMP_degC] as number));
  }
}
