import { AHEAD_share, enterFlow } from './implicit.ts';
import { LINE } from './ledger.ts';
import { vapourHeat_JPerKg } from './moist-air.ts';
import { twinParameters } from './parameters.ts';
import { ahead, held, inside, type Moment, rates } from './slate.ts';

const { ENERGY_J, WATER_kg } = held;
const { ENERGY_JPerS, WATER_kgPerS } = rates;
const {
  DRAWN_kgPerS,
  HUMIDITY_RISE_perKg,
  RISEN_kgPerS,
  TEMP_degC,
  THROUGH_kgPerS,
  VAPOUR_FACE_m3PerS,
  VAPOUR_RISE_perM3,
} = inside;
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
} = ahead;

const WATER_JPerKgK = twinParameters.waterHeat_JPerKgK.value;

/** Vapour that hangs on a shell's water so weakly that less than this share of a change is gone in a step needs no set of rows. */
export const SOON_share = 0.02;

/**
 * Stuff that is nearly dry gives off its last water within minutes, far less than a step: there its vapour is taken
 * ahead for its water too, not for its warmth alone. What evaporates then takes its heat with it.
 * @returns whether any shell is so dry that it matters.
 */
export function lookAtDry({ count, from }: Moment, contact_share: number, step_s: number): boolean {
  let isDry = false;
  let innerFace = 0;
  for (let shell = 0; shell < count; shell++) {
    const at = shell + from;
    const face = VAPOUR_FACE_m3PerS[at] as number;
    const gone_perS =
      (THROUGH_kgPerS[at] as number) * (HUMIDITY_RISE_perKg[at] as number) +
      (innerFace + face) * (VAPOUR_RISE_perM3[at] as number);
    WITH_WATER_JPerKg[shell] = WATER_JPerKgK * (TEMP_degC[at] as number);
    if (gone_perS * step_s > SOON_share) isDry = true;
    innerFace = face;
  }
  if (!isDry) return false;
  const perStep = 1 / (AHEAD_share * step_s);
  const last = count - 1;
  let innerOut = 0;
  let innerBack = 0;
  let upper = 0;
  for (let shell = 0; shell <= last; shell++) {
    const at = shell + from;
    const moister = HUMIDITY_RISE_perKg[at] as number;
    const through = (VAPOUR_FACE_m3PerS[at] as number) * (VAPOUR_RISE_perM3[at] as number);
    const risen = RISEN_kgPerS[at] as number;
    const handed = shell === last ? 0 : contact_share * risen;
    const out = shell === last ? 0 : handed * moister + through;
    const leaving = shell === last ? risen * moister + through : (risen - handed) * moister;
    const next = at + 1;
    const back =
      shell === last
        ? 0
        : (DRAWN_kgPerS[at] as number) * (HUMIDITY_RISE_perKg[next] as number) +
          (VAPOUR_FACE_m3PerS[at] as number) * (VAPOUR_RISE_perM3[next] as number);
    const own = out + leaving + innerBack;
    const withWater = WITH_WATER_JPerKg[shell] as number;
    const evaporating_JPerKg = vapourHeat_JPerKg(TEMP_degC[at] as number) - withWater;
    WITH_WATER_JPerKg[shell] = withWater + (own / (perStep + own)) * evaporating_JPerKg;
    const perPivot = 1 / (perStep + own - innerOut * upper);
    upper = back * perPivot;
    WET_OUT_perS[shell] = out;
    WET_BACK_perS[shell] = back;
    WET_LEAVING_perS[shell] = leaving;
    WET_PER_PIVOT_s[shell] = perPivot;
    WET_UPPER_ratio[shell] = upper;
    innerOut = out;
    innerBack = back;
  }
  return true;
}

/** Solves for the gain of water of each shell, of which the solved warmings have taken their part. */
export function solveDry({ count }: Moment): void {
  const last = count - 1;
  let innerOut = 0;
  let in_kgPerS = 0;
  let wetting = 0;
  for (let shell = 0; shell <= last; shell++) {
    const here_K = WARMING_K[shell] as number;
    const next_K = shell < last ? (WARMING_K[shell + 1] as number) : 0;
    const face_kgPerS = (WATER_OUT_kgPerSK[shell] as number) * here_K - (WATER_BACK_kgPerSK[shell] as number) * next_K;
    const drive =
      (WET_DRIVE_kgPerS[shell] as number) + in_kgPerS - face_kgPerS - (WATER_LEAVING_kgPerSK[shell] as number) * here_K;
    wetting = (drive + innerOut * wetting) * (WET_PER_PIVOT_s[shell] as number);
    WETTING_kg[shell] = wetting;
    in_kgPerS = face_kgPerS;
    innerOut = WET_OUT_perS[shell] as number;
  }
  for (let shell = last - 1; shell >= 0; shell--) {
    wetting = (WETTING_kg[shell] as number) + (WET_UPPER_ratio[shell] as number) * wetting;
    WETTING_kg[shell] = wetting;
  }
}

/** Adds to what the end of a step holds, and to its rates, what the solved gains of water change in vapour, with its heat. */
export function passDry({ count, from }: Moment, { from: to }: Moment, step_s: number): void {
  const ahead_s = AHEAD_share * step_s;
  const last = count - 1;
  let in_kgPerS = 0;
  let in_W = 0;
  for (let shell = 0; shell <= last; shell++) {
    const at = shell + to;
    const here_kg = WETTING_kg[shell] as number;
    const next_kg = shell < last ? (WETTING_kg[shell + 1] as number) : 0;
    const heat_JPerKg = vapourHeat_JPerKg(TEMP_degC[shell + from] as number);
    const face_kgPerS = (WET_OUT_perS[shell] as number) * here_kg - (WET_BACK_perS[shell] as number) * next_kg;
    const leaving_kgPerS = (WET_LEAVING_perS[shell] as number) * here_kg;
    const face_W = heat_JPerKg * face_kgPerS;
    const gain_kgPerS = in_kgPerS - face_kgPerS - leaving_kgPerS;
    const gain_W = in_W - face_W - heat_JPerKg * leaving_kgPerS;
    WATER_kgPerS[at] = (WATER_kgPerS[at] as number) + gain_kgPerS;
    ENERGY_JPerS[at] = (ENERGY_JPerS[at] as number) + gain_W;
    WATER_kg[at] = (WATER_kg[at] as number) + ahead_s * gain_kgPerS;
    ENERGY_J[at] = (ENERGY_J[at] as number) + ahead_s * gain_W;
    in_kgPerS = face_kgPerS;
    in_W = face_W;
  }
}

/** Enters what leaves the heap by the solved gains of water. */
export function enterDry({ count, from }: Moment, { flows }: Moment, step_s: number, ledger: Float64Array): void {
  for (let shell = 0; shell < count; shell++) {
    const leaving_kgPerS = (WET_LEAVING_perS[shell] as number) * (WETTING_kg[shell] as number);
    const heat_JPerKg = vapourHeat_JPerKg(TEMP_degC[shell + from] as number);
    enterFlow(flows, ledger, LINE.waterWithAir_kg, leaving_kgPerS, step_s);
    enterFlow(flows, ledger, LINE.heatWithAir_J, heat_JPerKg * leaving_kgPerS, step_s);
  }
}
