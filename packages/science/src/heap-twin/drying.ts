import { AHEAD_share, enterFlow } from './implicit.ts';
import { LINE } from './ledger.ts';
import { vapourHeat_JPerKg } from './moist-air.ts';
import { twinParameters } from './parameters.ts';
import { aheadPlaces, heldPlaces, insidePlaces, type Moment, room, slateSizes } from './slate.ts';

const {
  DRAWN_kgPerS,
  HUMIDITY_RISE_perKg,
  RISEN_kgPerS,
  TEMP_degC,
  THROUGH_kgPerS,
  VAPOUR_FACE_m3PerS,
  VAPOUR_RISE_perM3,
} = insidePlaces;
const { ENERGY_J, WATER_kg } = heldPlaces;
const { flat } = room;
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

/** Vapour that hangs on a shell's water so weakly that less than this share of a change is gone in a step needs no rows. */
export const SOON_share = 0.02;

/**
 * Stuff that is nearly dry gives off its last water within minutes, far less than a step: there its vapour is taken at
 * the end of the step for its water too, not for its warmth alone. What evaporates then takes its heat with it.
 * @returns whether any shell is so dry that it matters.
 */
export function lookAtDry({ rowsEnd, inside }: Moment, contact_share: number, step_s: number): boolean {
  let isDry = false;
  let innerFace = 0;
  for (let row = 0; row < rowsEnd; row += ROW) {
    const at = row + inside;
    const face = flat[at + VAPOUR_FACE_m3PerS] as number;
    const gone_perS =
      (flat[at + THROUGH_kgPerS] as number) * (flat[at + HUMIDITY_RISE_perKg] as number) +
      (innerFace + face) * (flat[at + VAPOUR_RISE_perM3] as number);
    flat[row + WITH_WATER_JPerKg] = WATER_JPerKgK * (flat[at + TEMP_degC] as number);
    if (gone_perS * step_s > SOON_share) isDry = true;
    innerFace = face;
  }
  if (!isDry) return false;
  const perStep = 1 / (AHEAD_share * step_s);
  const end = rowsEnd - ROW;
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
export function solveDry({ rowsEnd }: Moment): void {
  const end = rowsEnd - ROW;
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

/** Adds to what the end of a step holds, and to its rates, what the solved gains of water change in vapour, with its heat. */
export function passDry({ rowsEnd, inside }: Moment, { held, rates }: Moment, step_s: number): void {
  const ahead_s = AHEAD_share * step_s;
  const end = rowsEnd - ROW;
  let in_kgPerS = 0;
  let in_W = 0;
  for (let row = 0; row <= end; row += ROW) {
    const has = row + held;
    const rate = row + rates;
    const here_kg = flat[row + WETTING_kg] as number;
    const next_kg = row < end ? (flat[row + ROW + WETTING_kg] as number) : 0;
    const heat_JPerKg = vapourHeat_JPerKg(flat[row + inside + TEMP_degC] as number);
    const face_kgPerS =
      (flat[row + WET_OUT_perS] as number) * here_kg - (flat[row + WET_BACK_perS] as number) * next_kg;
    const leaving_kgPerS = (flat[row + WET_LEAVING_perS] as number) * here_kg;
    const face_W = heat_JPerKg * face_kgPerS;
    const gain_kgPerS = in_kgPerS - face_kgPerS - leaving_kgPerS;
    const gain_W = in_W - face_W - heat_JPerKg * leaving_kgPerS;
    flat[rate + WATER_kg] = (flat[rate + WATER_kg] as number) + gain_kgPerS;
    flat[rate + ENERGY_J] = (flat[rate + ENERGY_J] as number) + gain_W;
    flat[has + WATER_kg] = (flat[has + WATER_kg] as number) + ahead_s * gain_kgPerS;
    flat[has + ENERGY_J] = (flat[has + ENERGY_J] as number) + ahead_s * gain_W;
    in_kgPerS = face_kgPerS;
    in_W = face_W;
  }
}

/** Enters what leaves the heap by the solved gains of water. */
export function enterDry({ rowsEnd, inside }: Moment, { flows }: Moment, step_s: number, ledger: Float64Array): void {
  for (let row = 0; row < rowsEnd; row += ROW) {
    const leaving_kgPerS = (flat[row + WET_LEAVING_perS] as number) * (flat[row + WETTING_kg] as number);
    const heat_JPerKg = vapourHeat_JPerKg(flat[row + inside + TEMP_degC] as number);
    enterFlow(flows, ledger, LINE.waterWithAir_kg, leaving_kgPerS, step_s);
    enterFlow(flows, ledger, LINE.heatWithAir_J, heat_JPerKg * leaving_kgPerS, step_s);
  }
}
