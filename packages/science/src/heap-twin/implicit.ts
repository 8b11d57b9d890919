import type { Fields } from './fields.ts';
import { evaporation_JPerKg, vapour_kgPerM3 } from './moist-air.ts';
import { twinParameters } from './parameters.ts';
import type { Rates } from './rates.ts';
import type { Rows } from './tridiagonal.ts';

const WATER_JPerKgK = twinParameters.waterHeat_JPerKgK.value;
const ORGANIC_JPerKgK = twinParameters.organicHeat_JPerKgK.typical;
const AIR_JPerKgK = twinParameters.airHeat_JPerKgK.value;
const VAPOUR_JPerKg = twinParameters.vapourAtZero_JPerKg.value;
const VAPOUR_JPerKgK = twinParameters.vapourHeat_JPerKgK.value;

/** What transport would change if each shell were a little warmer. */
export interface Corrections {
  readonly energy_W: Float64Array;
  readonly water_kgPerS: Float64Array;
  surface_W: number;
  ground_W: number;
  withAir_W: number;
  waterWithAir_kgPerS: number;
  ammoniaGone_kgPerS: number;
}

/** Room for so many shells. */
export function noCorrections(shells: number): Corrections {
  return {
    energy_W: new Float64Array(shells),
    water_kgPerS: new Float64Array(shells),
    surface_W: 0,
    ground_W: 0,
    withAir_W: 0,
    waterWithAir_kgPerS: 0,
    ammoniaGone_kgPerS: 0,
  };
}

/** Rise of the vapour in a cubic metre for 1 K, kg/(m³ K). */
function vapourRise(fields: Fields, i: number): number {
  return vapour_kgPerM3(fields.temp_degC[i] as number, fields.vapourSlope_PaPerK[i] as number);
}

/**
 * The rows that tell each shell's warming over a step from what drives it, transport taken at the end of the step:
 * conduction, draught, vapour and its latent heat. Rotting stays out, being slow against a step.
 */
export function warmingRows(fields: Fields, contact_share: number, step_s: number, rows: Rows): void {
  const count = fields.temp_degC.length;
  const last = count - 1;
  for (let i = 0; i < count; i++) {
    const latent_JPerKg = evaporation_JPerKg(fields.temp_degC[i] as number);
    const through = fields.through_kgPerS[i] as number;
    const carried = AIR_JPerKgK + (fields.humidity_kgPerKg[i] as number) * VAPOUR_JPerKgK;
    const face = fields.heatFace_WPerK[i] as number;
    const open = fields.vapourFace_m3PerS[i] as number;
    const rise = vapourRise(fields, i);
    let own =
      (fields.slope_JPerK[i] as number) / step_s +
      through * (carried + (fields.humiditySlope_perK[i] as number) * latent_JPerKg) +
      face +
      open * rise * latent_JPerKg;
    if (i === last) {
      own += fields.surface.ground_WPerK;
      rows.outer[i] = 0;
    } else {
      rows.outer[i] =
        (fields.drawn_kgPerS[i] as number) *
          (AIR_JPerKgK +
            (fields.humidity_kgPerKg[i + 1] as number) * VAPOUR_JPerKgK +
            (fields.humiditySlope_perK[i + 1] as number) * latent_JPerKg) +
        face +
        open * vapourRise(fields, i + 1) * latent_JPerKg;
    }
    if (i === 0) {
      rows.inner[i] = 0;
    } else {
      const innerFace = fields.heatFace_WPerK[i - 1] as number;
      const innerOpen = fields.vapourFace_m3PerS[i - 1] as number;
      own += innerFace + innerOpen * rise * latent_JPerKg;
      rows.inner[i] =
        contact_share *
          (fields.risen_kgPerS[i - 1] as number) *
          (AIR_JPerKgK +
            (fields.humidity_kgPerKg[i - 1] as number) * VAPOUR_JPerKgK +
            (fields.humiditySlope_perK[i - 1] as number) * latent_JPerKg) +
        innerFace +
        innerOpen * vapourRise(fields, i - 1) * latent_JPerKg;
    }
    rows.own[i] = own;
  }
}

/** What warms the shells at one moment, W: their gain of heat less the part that comes or goes with matter as warm as they. */
export function warmingDrive(fields: Fields, rates: Rates, into: Float64Array): void {
  for (let i = 0; i < into.length; i++) {
    into[i] =
      (rates.energy_J[i] as number) -
      (fields.temp_degC[i] as number) *
        (WATER_JPerKgK * (rates.water_kg[i] as number) - ORGANIC_JPerKgK * (rates.volatileLost[i] as number));
  }
}

/** What a warming of each shell changes in transport, every flux leaving one place and reaching another. */
export function correct(fields: Fields, contact_share: number, warming_K: Float64Array, into: Corrections): void {
  const count = warming_K.length;
  const last = count - 1;
  const { energy_W, water_kgPerS } = into;
  energy_W.fill(0);
  water_kgPerS.fill(0);
  into.withAir_W = 0;
  into.waterWithAir_kgPerS = 0;
  for (let i = 0; i < count; i++) {
    const warmer_K = warming_K[i] as number;
    const temp_degC = fields.temp_degC[i] as number;
    const vapour_JPerKg = VAPOUR_JPerKg + VAPOUR_JPerKgK * temp_degC;
    // In the air that leaves this shell, for each kilogram of it.
    const moister = (fields.humiditySlope_perK[i] as number) * warmer_K;
    const hotter_JPerKg =
      (AIR_JPerKgK + (fields.humidity_kgPerKg[i] as number) * VAPOUR_JPerKgK) * warmer_K + moister * vapour_JPerKg;
    const through = fields.through_kgPerS[i] as number;
    const risen = fields.risen_kgPerS[i] as number;
    energy_W[i] = (energy_W[i] as number) - through * hotter_JPerKg;
    water_kgPerS[i] = (water_kgPerS[i] as number) - through * moister;
    if (i > 0) {
      const drawn = fields.drawn_kgPerS[i - 1] as number;
      energy_W[i - 1] = (energy_W[i - 1] as number) + drawn * hotter_JPerKg;
      water_kgPerS[i - 1] = (water_kgPerS[i - 1] as number) + drawn * moister;
    }
    const leaving = i === last ? risen : (1 - contact_share) * risen;
    into.withAir_W += leaving * hotter_JPerKg;
    into.waterWithAir_kgPerS += leaving * moister;
    if (i < last) {
      const handed = contact_share * risen;
      energy_W[i + 1] = (energy_W[i + 1] as number) + handed * hotter_JPerKg;
      water_kgPerS[i + 1] = (water_kgPerS[i + 1] as number) + handed * moister;
    }
    // Through the face.
    const beyond_K = i === last ? 0 : (warming_K[i + 1] as number);
    const vapour =
      (fields.vapourFace_m3PerS[i] as number) *
      (vapourRise(fields, i) * warmer_K - (i === last ? 0 : vapourRise(fields, i + 1) * beyond_K));
    const vapour_W = vapour * vapour_JPerKg;
    const heat_W = (fields.heatFace_WPerK[i] as number) * (warmer_K - beyond_K);
    energy_W[i] = (energy_W[i] as number) - heat_W - vapour_W;
    water_kgPerS[i] = (water_kgPerS[i] as number) - vapour;
    if (i === last) {
      into.surface_W = heat_W;
      into.ground_W = fields.surface.ground_WPerK * warmer_K;
      energy_W[i] = (energy_W[i] as number) - into.ground_W;
      into.withAir_W += vapour_W;
      into.waterWithAir_kgPerS += vapour;
    } else {
      energy_W[i + 1] = (energy_W[i + 1] as number) + heat_W + vapour_W;
      water_kgPerS[i + 1] = (water_kgPerS[i + 1] as number) + vapour;
    }
  }
}
