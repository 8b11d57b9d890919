import { LINE } from './ledger.ts';
import { humidity_kgPerKg, vapour_kgPerM3, vapourHeat_JPerKg } from './moist-air.ts';
import { twinParameters } from './parameters.ts';
import { heldPlaces, insidePlaces, type Moment, room, slateSizes } from './slate.ts';
import type { Weather } from './surroundings.ts';

const {
  DRAWN_kgPerS,
  HEAT_FACE_WPerK,
  HUMIDITY_RISE_perK,
  HUMIDITY_RISE_perKg,
  HUMIDITY_kgPerKg,
  RISEN_kgPerS,
  TEMP_degC,
  THROUGH_kgPerS,
  VAPOUR_FACE_m3PerS,
  VAPOUR_RISE_kgPerM3K,
  VAPOUR_RISE_perM3,
  VAPOUR_kgPerM3,
} = insidePlaces;
const { ENERGY_J, WATER_kg } = heldPlaces;
const { flat } = room;
const { ROW } = slateSizes;

const AIR_JPerKgK = twinParameters.airHeat_JPerKgK.value;
const PRESSURE_Pa = twinParameters.airPressure_Pa.value;
const TRACE_KG = 1e-12;

/**
 * A shell about to run dry gives off less: with z the share of its water that would leave in a step, 1/(1 + z²) of it.
 * For the steps in use z is a thousandth, and the bare rates have none of it.
 */
export function holdVapourBack(
  { rowsEnd, held, inside }: Moment,
  weather: Weather,
  contact_share: number,
  step_s: number,
): void {
  const end = rowsEnd - ROW;
  const outside = humidity_kgPerKg(weather.vapour_Pa, PRESSURE_Pa);
  const outside_kgPerM3 = vapour_kgPerM3(weather.temp_degC, weather.vapour_Pa);
  let given = 0;
  let inner_kgPerM3 = 0;
  let innerFace = 0;
  for (let row = 0; row <= end; row += ROW) {
    const at = row + inside;
    const here = flat[at + HUMIDITY_kgPerKg] as number;
    const here_kgPerM3 = flat[at + VAPOUR_kgPerM3] as number;
    const beyond = row === end ? outside : (flat[at + ROW + HUMIDITY_kgPerKg] as number);
    const beyond_kgPerM3 = row === end ? outside_kgPerM3 : (flat[at + ROW + VAPOUR_kgPerM3] as number);
    const face = flat[at + VAPOUR_FACE_m3PerS] as number;
    const net_kgPerS =
      (flat[at + THROUGH_kgPerS] as number) * here -
      (flat[at + DRAWN_kgPerS] as number) * beyond -
      given +
      face * (here_kgPerM3 - beyond_kgPerM3) +
      innerFace * (here_kgPerM3 - inner_kgPerM3);
    given = contact_share * (flat[at + RISEN_kgPerS] as number) * here;
    inner_kgPerM3 = here_kgPerM3;
    innerFace = face;
    const water_kg = (flat[row + held + WATER_kg] as number) + TRACE_KG;
    const leaving_kg = step_s * net_kgPerS;
    if (leaving_kg < NOTICEABLE * water_kg) continue;
    const z = leaving_kg / water_kg;
    const kept = 1 / (1 + z * z);
    flat[at + VAPOUR_kgPerM3] = here_kgPerM3 * kept;
    flat[at + HUMIDITY_kgPerKg] = here * kept;
    flat[at + VAPOUR_RISE_kgPerM3K] = (flat[at + VAPOUR_RISE_kgPerM3K] as number) * kept;
    flat[at + HUMIDITY_RISE_perK] = (flat[at + HUMIDITY_RISE_perK] as number) * kept;
    flat[at + VAPOUR_RISE_perM3] = (flat[at + VAPOUR_RISE_perM3] as number) * kept;
    flat[at + HUMIDITY_RISE_perKg] = (flat[at + HUMIDITY_RISE_perKg] as number) * kept;
  }
}
/** The square of a smaller share is nothing. */
const NOTICEABLE = 1e-3;

/** Heat and vapour through the faces and with the draught, each flux leaving one place and reaching another. */
export function carry(
  { rowsEnd, inside, rates, surface, flows }: Moment,
  weather: Weather,
  contact_share: number,
): void {
  const end = rowsEnd - ROW;
  const outsideHumidity = humidity_kgPerKg(weather.vapour_Pa, PRESSURE_Pa);
  const outside_kgPerM3 = vapour_kgPerM3(weather.temp_degC, weather.vapour_Pa);
  const outsideAir_JPerKg = AIR_JPerKgK * weather.temp_degC + outsideHumidity * vapourHeat_JPerKg(weather.temp_degC);
  let temp_degC = flat[inside + TEMP_degC] as number;
  let humidity = flat[inside + HUMIDITY_kgPerKg] as number;
  let vapour_kgPerM3Here = flat[inside + VAPOUR_kgPerM3] as number;
  let air_JPerKg = AIR_JPerKgK * temp_degC + humidity * vapourHeat_JPerKg(temp_degC);
  let inWater = 0;
  let inHeat_W = 0;
  let outWater = 0;
  let outHeat_W = 0;
  for (let row = 0; row < end; row += ROW) {
    const at = row + inside;
    const rate = row + rates;
    const risen = flat[at + RISEN_kgPerS] as number;
    const drawn = flat[at + DRAWN_kgPerS] as number;
    const next = at + ROW;
    const nextTemp_degC = flat[next + TEMP_degC] as number;
    const nextHumidity = flat[next + HUMIDITY_kgPerKg] as number;
    const next_kgPerM3 = flat[next + VAPOUR_kgPerM3] as number;
    const nextAir_JPerKg = AIR_JPerKgK * nextTemp_degC + nextHumidity * vapourHeat_JPerKg(nextTemp_degC);
    const handed = contact_share * risen;
    const leaving = risen - handed;
    const vapour_kgPerS = (flat[at + VAPOUR_FACE_m3PerS] as number) * (vapour_kgPerM3Here - next_kgPerM3);
    const faceWater = handed * humidity - drawn * nextHumidity + vapour_kgPerS;
    const faceHeat_W =
      handed * air_JPerKg -
      drawn * nextAir_JPerKg +
      vapour_kgPerS * vapourHeat_JPerKg(vapour_kgPerS > 0 ? temp_degC : nextTemp_degC) +
      (flat[at + HEAT_FACE_WPerK] as number) * (temp_degC - nextTemp_degC);
    const leavingWater = leaving * humidity;
    const leavingHeat_W = leaving * air_JPerKg;
    flat[rate + ENERGY_J] = (flat[rate + ENERGY_J] as number) + inHeat_W - faceHeat_W - leavingHeat_W;
    flat[rate + WATER_kg] = (flat[rate + WATER_kg] as number) + inWater - faceWater - leavingWater;
    outWater += leavingWater;
    outHeat_W += leavingHeat_W;
    inHeat_W = faceHeat_W;
    inWater = faceWater;
    temp_degC = nextTemp_degC;
    humidity = nextHumidity;
    vapour_kgPerM3Here = next_kgPerM3;
    air_JPerKg = nextAir_JPerKg;
  }
  const last = end + rates;
  const risen = flat[end + inside + RISEN_kgPerS] as number;
  const drawn = flat[end + inside + DRAWN_kgPerS] as number;
  const vapour_kgPerS = (flat[end + inside + VAPOUR_FACE_m3PerS] as number) * (vapour_kgPerM3Here - outside_kgPerM3);
  const vapour_W = vapour_kgPerS * vapourHeat_JPerKg(vapour_kgPerS > 0 ? temp_degC : weather.temp_degC);
  const withAir_W = risen * air_JPerKg - drawn * outsideAir_JPerKg + vapour_W;
  const withAir_kgPerS = risen * humidity - drawn * outsideHumidity + vapour_kgPerS;
  const surface_W = (flat[end + inside + HEAT_FACE_WPerK] as number) * (temp_degC - weather.temp_degC) - surface.sun_W;
  const ground_W = surface.ground_WPerK * (temp_degC - weather.ground_degC);
  flat[last + ENERGY_J] = (flat[last + ENERGY_J] as number) + inHeat_W - withAir_W - surface_W - ground_W;
  flat[last + WATER_kg] = (flat[last + WATER_kg] as number) + inWater - withAir_kgPerS;
  flows[LINE.heatThroughSurface_J] = surface_W;
  flows[LINE.heatToGround_J] = ground_W;
  flows[LINE.waterWithAir_kg] = outWater + withAir_kgPerS;
  flows[LINE.heatWithAir_J] = outHeat_W + withAir_W;
}
