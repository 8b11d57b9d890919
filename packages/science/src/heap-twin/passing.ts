import { LINE } from './ledger.ts';
import { humidity_kgPerKg, vapour_kgPerM3, vapourHeat_JPerKg } from './moist-air.ts';
import { twinParameters } from './parameters.ts';
import { held, inside, type Moment, rates } from './slate.ts';
import type { Weather } from './surroundings.ts';

const { WATER_kg } = held;
const { ENERGY_JPerS, WATER_kgPerS } = rates;
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
} = inside;

const AIR_JPerKgK = twinParameters.airHeat_JPerKgK.value;
const PRESSURE_Pa = twinParameters.airPressure_Pa.value;
const TRACE_KG = 1e-12;

/**
 * A shell about to run dry gives off less: with z the share of its water that would leave in a step, 1/(1 + z²) of it.
 * For the steps in use z is some hundredths at the most, and the bare rates have none of it.
 */
export function holdVapourBack({ count, from }: Moment, weather: Weather, contact_share: number, step_s: number): void {
  const last = count - 1;
  const outside = humidity_kgPerKg(weather.vapour_Pa, PRESSURE_Pa);
  const outside_kgPerM3 = vapour_kgPerM3(weather.temp_degC, weather.vapour_Pa);
  let given = 0;
  let inner_kgPerM3 = 0;
  let innerFace = 0;
  for (let shell = 0; shell <= last; shell++) {
    const at = shell + from;
    const here = HUMIDITY_kgPerKg[at] as number;
    const here_kgPerM3 = VAPOUR_kgPerM3[at] as number;
    const beyond = shell === last ? outside : (HUMIDITY_kgPerKg[at + 1] as number);
    const beyond_kgPerM3 = shell === last ? outside_kgPerM3 : (VAPOUR_kgPerM3[at + 1] as number);
    const face = VAPOUR_FACE_m3PerS[at] as number;
    const net_kgPerS =
      (THROUGH_kgPerS[at] as number) * here -
      (DRAWN_kgPerS[at] as number) * beyond -
      given +
      face * (here_kgPerM3 - beyond_kgPerM3) +
      innerFace * (here_kgPerM3 - inner_kgPerM3);
    given = contact_share * (RISEN_kgPerS[at] as number) * here;
    inner_kgPerM3 = here_kgPerM3;
    innerFace = face;
    const water_kg = (WATER_kg[at] as number) + TRACE_KG;
    const leaving_kg = step_s * net_kgPerS;
    if (leaving_kg < NOTICEABLE * water_kg) continue;
    const z = leaving_kg / water_kg;
    const kept = 1 / (1 + z * z);
    VAPOUR_kgPerM3[at] = here_kgPerM3 * kept;
    HUMIDITY_kgPerKg[at] = here * kept;
    VAPOUR_RISE_kgPerM3K[at] = (VAPOUR_RISE_kgPerM3K[at] as number) * kept;
    HUMIDITY_RISE_perK[at] = (HUMIDITY_RISE_perK[at] as number) * kept;
    VAPOUR_RISE_perM3[at] = (VAPOUR_RISE_perM3[at] as number) * kept;
    HUMIDITY_RISE_perKg[at] = (HUMIDITY_RISE_perKg[at] as number) * kept;
  }
}
/** The square of a smaller share is nothing. */
const NOTICEABLE = 1e-3;

/** Heat and vapour through the faces and with the draught, each flux leaving one place and reaching another. */
export function carry({ count, from, surface, flows }: Moment, weather: Weather, contact_share: number): void {
  const last = count - 1;
  const outsideHumidity = humidity_kgPerKg(weather.vapour_Pa, PRESSURE_Pa);
  const outside_kgPerM3 = vapour_kgPerM3(weather.temp_degC, weather.vapour_Pa);
  const outsideAir_JPerKg = AIR_JPerKgK * weather.temp_degC + outsideHumidity * vapourHeat_JPerKg(weather.temp_degC);
  let temp_degC = TEMP_degC[from] as number;
  let humidity = HUMIDITY_kgPerKg[from] as number;
  let vapour_kgPerM3Here = VAPOUR_kgPerM3[from] as number;
  let air_JPerKg = AIR_JPerKgK * temp_degC + humidity * vapourHeat_JPerKg(temp_degC);
  let inWater = 0;
  let inHeat_W = 0;
  let outWater = 0;
  let outHeat_W = 0;
  for (let shell = 0; shell < last; shell++) {
    const at = shell + from;
    const risen = RISEN_kgPerS[at] as number;
    const drawn = DRAWN_kgPerS[at] as number;
    const next = at + 1;
    const nextTemp_degC = TEMP_degC[next] as number;
    const nextHumidity = HUMIDITY_kgPerKg[next] as number;
    const next_kgPerM3 = VAPOUR_kgPerM3[next] as number;
    const nextAir_JPerKg = AIR_JPerKgK * nextTemp_degC + nextHumidity * vapourHeat_JPerKg(nextTemp_degC);
    const handed = contact_share * risen;
    const leaving = risen - handed;
    const vapour_kgPerS = (VAPOUR_FACE_m3PerS[at] as number) * (vapour_kgPerM3Here - next_kgPerM3);
    const faceWater = handed * humidity - drawn * nextHumidity + vapour_kgPerS;
    const faceHeat_W =
      handed * air_JPerKg -
      drawn * nextAir_JPerKg +
      vapour_kgPerS * vapourHeat_JPerKg(vapour_kgPerS > 0 ? temp_degC : nextTemp_degC) +
      (HEAT_FACE_WPerK[at] as number) * (temp_degC - nextTemp_degC);
    const leavingWater = leaving * humidity;
    const leavingHeat_W = leaving * air_JPerKg;
    ENERGY_JPerS[at] = (ENERGY_JPerS[at] as number) + inHeat_W - faceHeat_W - leavingHeat_W;
    WATER_kgPerS[at] = (WATER_kgPerS[at] as number) + inWater - faceWater - leavingWater;
    outWater += leavingWater;
    outHeat_W += leavingHeat_W;
    inHeat_W = faceHeat_W;
    inWater = faceWater;
    temp_degC = nextTemp_degC;
    humidity = nextHumidity;
    vapour_kgPerM3Here = next_kgPerM3;
    air_JPerKg = nextAir_JPerKg;
  }
  const at = last + from;
  const risen = RISEN_kgPerS[at] as number;
  const drawn = DRAWN_kgPerS[at] as number;
  const vapour_kgPerS = (VAPOUR_FACE_m3PerS[at] as number) * (vapour_kgPerM3Here - outside_kgPerM3);
  const vapour_W = vapour_kgPerS * vapourHeat_JPerKg(vapour_kgPerS > 0 ? temp_degC : weather.temp_degC);
  const withAir_W = risen * air_JPerKg - drawn * outsideAir_JPerKg + vapour_W;
  const withAir_kgPerS = risen * humidity - drawn * outsideHumidity + vapour_kgPerS;
  const surface_W = (HEAT_FACE_WPerK[at] as number) * (temp_degC - weather.temp_degC) - surface.sun_W;
  const ground_W = surface.ground_WPerK * (temp_degC - weather.ground_degC);
  ENERGY_JPerS[at] = (ENERGY_JPerS[at] as number) + inHeat_W - withAir_W - surface_W - ground_W;
  WATER_kgPerS[at] = (WATER_kgPerS[at] as number) + inWater - withAir_kgPerS;
  flows[LINE.heatThroughSurface_J] = surface_W;
  flows[LINE.heatToGround_J] = ground_W;
  flows[LINE.waterWithAir_kg] = outWater + withAir_kgPerS;
  flows[LINE.heatWithAir_J] = outHeat_W + withAir_W;
}
