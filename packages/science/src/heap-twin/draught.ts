import { placeOf, saturationAt_Pa, saturationSlopeAt_PaPerK } from './air-table.ts';
import { GRAVITY_MPerS2, TWENTY_CELSIUS_K, ZERO_CELSIUS_K } from './constants.ts';
import {
  DRY_AIR_JPerKgK,
  dryAir_kgPerM3,
  humidAir_kgPerM3,
  LEAST_AIR_SHARE,
  VAPOUR_GAS_JPerKgK,
  WATER_TO_AIR,
} from './moist-air.ts';
import { type Traits, twinParameters } from './parameters.ts';
import type { Shells } from './shape.ts';
import { held, inside, lasting, type Moment } from './slate.ts';
import type { Standing, Weather } from './surroundings.ts';

const { WATER_kg } = held;
const { INWARD_perM, OUTWARD_perM, PLAN_share } = lasting;
const {
  AIR_SPACE_share,
  CONDUCTIVITY_WPerMK,
  DRAWN_kgPerS,
  DRYNESS_share,
  DRY_AIR_kgPerM3,
  DRY_GAS_share,
  DRY_kg,
  GAS_FACE_m3PerS,
  HEAT_FACE_WPerK,
  HUMIDITY_RISE_perK,
  HUMIDITY_RISE_perKg,
  HUMIDITY_kgPerKg,
  PERMEABILITY_m2,
  PLACE,
  RISEN_kgPerS,
  TEMP_degC,
  THROUGH_kgPerS,
  VAPOUR_FACE_m3PerS,
  VAPOUR_RISE_kgPerM3K,
  VAPOUR_RISE_perM3,
  VAPOUR_kgPerM3,
} = inside;

const PRESSURE_Pa = twinParameters.airPressure_Pa.value;
const VISCOSITY_PaS = twinParameters.airViscosity_PaS.value;
const DRYING_kgPerKg = twinParameters.waterActivity.u0_kgPerKg;
const OXYGEN_DIFFUSES = twinParameters.oxygenDiffusivity;
const VAPOUR_DIFFUSES = twinParameters.vapourDiffusivity;
const SURFACE_WPerM2K = twinParameters.surface_WPerM2K.value;
const WIND_JPerM3K = twinParameters.windOnSurface_JPerM3K.value;
const STILL_sPerM = twinParameters.surfaceVapour_sPerM.value;
const GROUND_WPerMK = twinParameters.groundConductivity_WPerMK.value;
const SUN_SHARE = twinParameters.sunTaken_share.value;
const WIND_SHARE = twinParameters.windPressure_share.value;

/** Above so many times the drying constant the vapour over the stuff is that over water, within one part in ten million. */
const WET = 16;
const LEAST_AIR_Pa = LEAST_AIR_SHARE * PRESSURE_Pa;
const PER_DRY_AIR = 1 / DRY_AIR_JPerKgK;
const PER_VAPOUR = 1 / VAPOUR_GAS_JPerKgK;
const PER_PRESSURE = 1 / PRESSURE_Pa;
const PER_TWENTY = 1 / TWENTY_CELSIUS_K;

/** Gas that diffuses where a face is shared by two shells: pores squared (Papendick and Campbell). */
function throughPores(air_share: number): number {
  return air_share * air_share;
}

/** What the heap stands in and how its draught runs. */
export interface Setting {
  readonly shells: Shells;
  readonly standing: Standing;
  readonly traits: Traits;
}

/** Vapour over every shell, the draught through it, and the conductances of its faces. */
export function findDraught(
  moment: Moment,
  { shells, standing, traits }: Setting,
  weather: Weather,
  left_share: number,
): void {
  const { outline } = shells;
  const n = outline.directions;
  // Lengths shrink with the heap alike in all its directions.
  const length = n === 3 ? Math.cbrt(left_share) : n === 2 ? Math.sqrt(left_share) : left_share;
  const overall = n === 3 ? length : n === 2 ? 1 : 1 / length;
  const area = n === 3 ? length * length : n === 2 ? length : 1;
  const plan_m2 = outline.plan_m2 * area;
  const outside_kgPerM3 = humidAir_kgPerM3(weather.temp_degC, weather.vapour_Pa, PRESSURE_Pa);
  const outsideDry_kgPerM3 = dryAir_kgPerM3(weather.temp_degC, weather.vapour_Pa, PRESSURE_Pa);
  const wind_MPerS = weather.wind_mPerS * standing.wind_share;
  const wind_PaPerM = (WIND_SHARE * 0.5 * outside_kgPerM3 * wind_MPerS * wind_MPerS) / (outline.height_m * length);
  // What the draught of a shell is for each pascal a metre of lift and square metre of permeability.
  const draws = (outsideDry_kgPerM3 * plan_m2 * standing.open_share) / VISCOSITY_PaS;
  const { plumeContact_share: contact } = traits;
  const { count, from } = moment;
  let drawn = 0;
  let risen = 0;
  let inner_perG = 0;
  let innerPores = 1;
  let innerConductivity = 1;
  for (let shell = 0; shell < count; shell++) {
    const at = shell + from;
    const temp_degC = TEMP_degC[at] as number;
    const temp_K = temp_degC + ZERO_CELSIUS_K;
    const perK = 1 / temp_K;
    const place = placeOf(temp_degC);
    const water_kg = WATER_kg[at] as number;
    const drying_kg = DRYING_kgPerKg * (DRY_kg[at] as number);
    const dryness = water_kg > WET * drying_kg ? 0 : Math.exp(-water_kg / drying_kg);
    const saturation_Pa = saturationAt_Pa(place);
    const vapour_Pa = saturation_Pa * (1 - dryness);
    const slope_PaPerK = saturationSlopeAt_PaPerK(place) * (1 - dryness);
    const airMost_Pa = PRESSURE_Pa - vapour_Pa;
    const air_Pa = Math.max(airMost_Pa, LEAST_AIR_Pa);
    const perAir_Pa = 1 / air_Pa;
    const ratio = vapour_Pa * perAir_Pa;
    PLACE[at] = place;
    DRYNESS_share[at] = dryness;
    VAPOUR_kgPerM3[at] = vapour_Pa * perK * PER_VAPOUR;
    VAPOUR_RISE_kgPerM3K[at] = slope_PaPerK * perK * PER_VAPOUR;
    HUMIDITY_kgPerKg[at] = WATER_TO_AIR * ratio;
    HUMIDITY_RISE_perK[at] = WATER_TO_AIR * perAir_Pa * (1 + ratio) * slope_PaPerK;
    const wet_PaPerKg = dryness === 0 ? 0 : (saturation_Pa * dryness) / drying_kg;
    VAPOUR_RISE_perM3[at] = wet_PaPerKg * perK * PER_VAPOUR;
    HUMIDITY_RISE_perKg[at] = WATER_TO_AIR * perAir_Pa * (1 + ratio) * wet_PaPerKg;
    DRY_AIR_kgPerM3[at] = air_Pa * perK * PER_DRY_AIR;
    DRY_GAS_share[at] = airMost_Pa * PER_PRESSURE;

    const lighter_kgPerM3 = outside_kgPerM3 - (PRESSURE_Pa - (1 - WATER_TO_AIR) * vapour_Pa) * perK * PER_DRY_AIR;
    const lift_PaPerM = lighter_kgPerM3 > 0 ? GRAVITY_MPerS2 * lighter_kgPerM3 : 0;
    const own_kgPerS =
      draws * (PERMEABILITY_m2[at] as number) * (lift_PaPerM + wind_PaPerM) * (PLAN_share[shell] as number);
    drawn += own_kgPerS;
    const handed = contact * risen;
    risen = own_kgPerS + handed;
    DRAWN_kgPerS[at] = drawn;
    RISEN_kgPerS[at] = risen;
    THROUGH_kgPerS[at] = drawn + handed;

    // Faces: half a shell on either side in series.
    const conductivity = CONDUCTIVITY_WPerMK[at] as number;
    const pores = throughPores(AIR_SPACE_share[at] as number) * relativeDiffusivity(temp_K);
    if (shell > 0) {
      const inward = INWARD_perM[shell] as number;
      const within = at - 1;
      HEAT_FACE_WPerK[within] =
        (overall * innerConductivity * conductivity) / (inner_perG * conductivity + inward * innerConductivity);
      const open = (overall * innerPores * pores) / (inner_perG * pores + inward * innerPores);
      GAS_FACE_m3PerS[within] = OXYGEN_DIFFUSES.at20_m2PerS * open;
      VAPOUR_FACE_m3PerS[within] = VAPOUR_DIFFUSES.at20_m2PerS * open;
    }
    inner_perG = OUTWARD_perM[shell] as number;
    innerPores = pores;
    innerConductivity = conductivity;
  }
  findSurface(moment, shells, standing, weather, overall, area, inner_perG);
}

/** Diffusivity over that at 20 °C. */
function relativeDiffusivity(temp_K: number): number {
  const ratio = temp_K * PER_TWENTY;
  return ratio * ratio;
}

/** The surface: half a shell (`half_perM` from its middle outwards), then the cover or wall, then the air or the ground. */
function findSurface(
  { from, surface }: Moment,
  shells: Shells,
  standing: Standing,
  weather: Weather,
  overall: number,
  area: number,
  half_perM: number,
): void {
  const { outline } = shells;
  const at = from + shells.count - 1;
  const whole_m2 = (outline.top_m2 + outline.side_m2 + outline.ground_m2) * area;
  const half_WPerK = (overall * (CONDUCTIVITY_WPerMK[at] as number)) / half_perM;
  const pores = throughPores(AIR_SPACE_share[at] as number);
  const open_m = (overall * pores * relativeDiffusivity((TEMP_degC[at] as number) + ZERO_CELSIUS_K)) / half_perM;
  const film_WPerM2K = SURFACE_WPerM2K + WIND_JPerM3K * weather.wind_mPerS * standing.wind_share;
  let air_WPerK = 0;
  let sun_W = 0;
  let gas_m3PerS = 0;
  let vapour_m3PerS = 0;
  for (let f = 0; f < 2; f++) {
    const face = f === 0 ? standing.top : standing.side;
    const face_m2 = (f === 0 ? outline.top_m2 : outline.side_m2) * area;
    if (face_m2 === 0) continue;
    const share = face_m2 / whole_m2;
    const cover_WPerK = face_m2 / (face.insulation_m2KPerW + 1 / film_WPerM2K);
    const through_WPerK = (share * half_WPerK * cover_WPerK) / (share * half_WPerK + cover_WPerK);
    air_WPerK += through_WPerK;
    if (f === 0) sun_W += (through_WPerK * SUN_SHARE * standing.sun_share * weather.sun_WPerM2) / film_WPerM2K;
    const out_m3PerS = face_m2 / (face.vapour_sPerM + STILL_sPerM);
    const gas = share * open_m * OXYGEN_DIFFUSES.at20_m2PerS;
    const vapour = share * open_m * VAPOUR_DIFFUSES.at20_m2PerS;
    gas_m3PerS += (gas * out_m3PerS) / (gas + out_m3PerS);
    vapour_m3PerS += (vapour * out_m3PerS) / (vapour + out_m3PerS);
  }
  const ground_m2 = outline.ground_m2 * area;
  // An isothermal disc of the same area on soil: G = 4 k a (Carslaw and Jaeger 1959).
  const soil_WPerK = 4 * GROUND_WPerMK * Math.sqrt(ground_m2 / Math.PI);
  const toGround_WPerK = (ground_m2 / whole_m2) * half_WPerK;
  surface.air_WPerK = air_WPerK;
  surface.ground_WPerK = ground_m2 === 0 ? 0 : (toGround_WPerK * soil_WPerK) / (toGround_WPerK + soil_WPerK);
  surface.sun_W = sun_W;
  HEAT_FACE_WPerK[at] = air_WPerK;
  GAS_FACE_m3PerS[at] = gas_m3PerS;
  VAPOUR_FACE_m3PerS[at] = vapour_m3PerS;
}
