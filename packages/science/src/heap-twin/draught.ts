import { placeOf, saturationAt_Pa } from './air-table.ts';
import { GRAVITY_MPerS2, TWENTY_CELSIUS_K, ZERO_CELSIUS_K } from './constants.ts';
import type { Fields } from './fields.ts';
import {
  dryAir_kgPerM3,
  humidAir_kgPerM3,
  humidity_kgPerKg,
  saturationSteepness_perK,
  WATER_TO_AIR,
} from './moist-air.ts';
import { type Traits, twinParameters } from './parameters.ts';
import type { Shells } from './shape.ts';
import type { HeapState } from './state.ts';
import type { Standing, Weather } from './surroundings.ts';

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

/** Above so many times the drying constant the vapour over the stuff is that over water, to the last digit. */
const WET = 40;

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
  fields: Fields,
  state: HeapState,
  { shells, standing, traits }: Setting,
  weather: Weather,
  left_share: number,
): void {
  const count = shells.count;
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
  let drawn = 0;
  let risen = 0;
  let inner_perG = 0;
  let innerPores = 0;
  let innerConductivity = 0;
  for (let i = 0; i < count; i++) {
    const temp_degC = fields.temp_degC[i] as number;
    const temp_K = temp_degC + ZERO_CELSIUS_K;
    const place = placeOf(temp_degC);
    const water = (state.water_kg[i] as number) / (DRYING_kgPerKg * (fields.dry_kg[i] as number));
    const vapour_Pa = saturationAt_Pa(place) * (water > WET ? 1 : 1 - Math.exp(-water));
    fields.place[i] = place;
    const steepness = saturationSteepness_perK(temp_degC);
    const humidity = humidity_kgPerKg(vapour_Pa, PRESSURE_Pa);
    const air = fields.airSpace_share[i] as number;
    fields.vapour_Pa[i] = vapour_Pa;
    fields.vapourSlope_PaPerK[i] = vapour_Pa * steepness;
    fields.humidity_kgPerKg[i] = humidity;
    fields.humiditySlope_perK[i] = humidity * steepness * (1 + humidity / WATER_TO_AIR);
    fields.dryAir_kgPerM3[i] = dryAir_kgPerM3(temp_degC, vapour_Pa, PRESSURE_Pa);

    const lift_PaPerM = Math.max(
      0,
      GRAVITY_MPerS2 * (outside_kgPerM3 - humidAir_kgPerM3(temp_degC, vapour_Pa, PRESSURE_Pa)),
    );
    const own_kgPerS =
      (outsideDry_kgPerM3 *
        (fields.permeability_m2[i] as number) *
        (lift_PaPerM + wind_PaPerM) *
        plan_m2 *
        (shells.plan_share[i] as number) *
        standing.open_share) /
      VISCOSITY_PaS;
    drawn += own_kgPerS;
    const handed = traits.plumeContact_share * risen;
    risen = own_kgPerS + handed;
    fields.drawn_kgPerS[i] = drawn;
    fields.risen_kgPerS[i] = risen;
    fields.through_kgPerS[i] = drawn + handed;

    // Faces: half a shell on either side in series.
    const conductivity = fields.conductivity_WPerMK[i] as number;
    const pores = throughPores(air) * relativeDiffusivity(temp_K);
    if (i > 0) {
      const inward = shells.inward_perM[i] as number;
      fields.heatFace_WPerK[i - 1] = overall / (inner_perG / innerConductivity + inward / conductivity);
      const open = overall / (inner_perG / innerPores + inward / pores);
      fields.gasFace_m3PerS[i - 1] = OXYGEN_DIFFUSES.at20_m2PerS * open;
      fields.vapourFace_m3PerS[i - 1] = VAPOUR_DIFFUSES.at20_m2PerS * open;
    }
    inner_perG = shells.outward_perM[i] as number;
    innerPores = pores;
    innerConductivity = conductivity;
  }
  findSurface(fields, shells, standing, weather, { overall, area, half_perM: inner_perG });
}

/** Diffusivity over that at 20 °C. */
function relativeDiffusivity(temp_K: number): number {
  const ratio = temp_K / TWENTY_CELSIUS_K;
  return ratio * ratio;
}

interface Scales {
  readonly overall: number;
  readonly area: number;
  /** From the middle of the outermost shell to the surface, 1/m. */
  readonly half_perM: number;
}

/** The surface: half a shell, then the cover or wall, then the air or the ground. */
function findSurface(fields: Fields, shells: Shells, standing: Standing, weather: Weather, scales: Scales): void {
  const { outline } = shells;
  const last = shells.count - 1;
  const whole_m2 = (outline.top_m2 + outline.side_m2 + outline.ground_m2) * scales.area;
  const half_WPerK = (scales.overall * (fields.conductivity_WPerMK[last] as number)) / scales.half_perM;
  const pores = throughPores(fields.airSpace_share[last] as number);
  const open_m =
    (scales.overall * pores * relativeDiffusivity((fields.temp_degC[last] as number) + ZERO_CELSIUS_K)) /
    scales.half_perM;
  const film_WPerM2K = SURFACE_WPerM2K + WIND_JPerM3K * weather.wind_mPerS * standing.wind_share;
  let air_WPerK = 0;
  let sun_W = 0;
  let gas_m3PerS = 0;
  let vapour_m3PerS = 0;
  const faces = [standing.top, standing.side] as const;
  for (let f = 0; f < 2; f++) {
    const face = faces[f] as (typeof faces)[number];
    const face_m2 = (f === 0 ? outline.top_m2 : outline.side_m2) * scales.area;
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
  const ground_m2 = outline.ground_m2 * scales.area;
  // An isothermal disc of the same area on soil: G = 4 k a (Carslaw and Jaeger 1959).
  const soil_WPerK = 4 * GROUND_WPerMK * Math.sqrt(ground_m2 / Math.PI);
  const toGround_WPerK = (ground_m2 / whole_m2) * half_WPerK;
  fields.surface.air_WPerK = air_WPerK;
  fields.surface.ground_WPerK = ground_m2 === 0 ? 0 : (toGround_WPerK * soil_WPerK) / (toGround_WPerK + soil_WPerK);
  fields.surface.sun_W = sun_W;
  fields.heatFace_WPerK[last] = air_WPerK;
  fields.gasFace_m3PerS[last] = gas_m3PerS;
  fields.vapourFace_m3PerS[last] = vapour_m3PerS;
}
