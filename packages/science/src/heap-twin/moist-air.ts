import { ZERO_CELSIUS_K } from './constants.ts';
import { twinParameters } from './parameters.ts';

/** Gas constant of dry air, J/(kg K). */
export const DRY_AIR_JPerKgK: number = 287.05;
/** Molar mass of water over that of dry air. */
export const WATER_TO_AIR: number = 0.622;
/** Gas constant of water vapour, J/(kg K). */
export const VAPOUR_GAS_JPerKgK: number = 461.5;
/** However near boiling, so much of the pressure is left to the air, or a ratio to it has no bound. */
export const LEAST_AIR_SHARE = 0.02;

/**
 * Saturation pressure of water, Pa, at −40 to 110 °C; over supercooled water below 0 °C.
 * Source: Buck A. L. 1981, J. Appl. Meteorol. 20:1527-1532, as revised 1996.
 */
export function saturation_Pa(temp_degC: number): number {
  return 611.21 * Math.exp(((18.678 - temp_degC / 234.5) * temp_degC) / (257.14 + temp_degC));
}

/** Heat to evaporate water, J/kg: 2501 − 2.40 T kJ/kg, within 1 kJ/kg of the steam table from 5 to 80 °C. */
export function evaporation_JPerKg(temp_degC: number): number {
  const { vapourAtZero_JPerKg, vapourHeat_JPerKgK, waterHeat_JPerKgK } = twinParameters;
  return vapourAtZero_JPerKg.value + (vapourHeat_JPerKgK.value - waterHeat_JPerKgK.value) * temp_degC;
}

const VAPOUR_JPerKg = twinParameters.vapourAtZero_JPerKg.value;
const VAPOUR_JPerKgK = twinParameters.vapourHeat_JPerKgK.value;

/** Heat in vapour, J/kg above water at 0 °C. */
export function vapourHeat_JPerKg(temp_degC: number): number {
  return VAPOUR_JPerKg + VAPOUR_JPerKgK * temp_degC;
}

/** Water carried by a kilogram of dry air at a vapour pressure, kg/kg. */
export function humidity_kgPerKg(vapour_Pa: number, pressure_Pa: number): number {
  return (WATER_TO_AIR * vapour_Pa) / Math.max(pressure_Pa - vapour_Pa, LEAST_AIR_SHARE * pressure_Pa);
}

/** Density of humid air, kg/m³: vapour makes it lighter. */
export function humidAir_kgPerM3(temp_degC: number, vapour_Pa: number, pressure_Pa: number): number {
  return (pressure_Pa - (1 - WATER_TO_AIR) * vapour_Pa) / (DRY_AIR_JPerKgK * (temp_degC + ZERO_CELSIUS_K));
}

/** Dry air in a cubic metre of humid air, kg/m³. */
export function dryAir_kgPerM3(temp_degC: number, vapour_Pa: number, pressure_Pa: number): number {
  const left_Pa = Math.max(pressure_Pa - vapour_Pa, LEAST_AIR_SHARE * pressure_Pa);
  return left_Pa / (DRY_AIR_JPerKgK * (temp_degC + ZERO_CELSIUS_K));
}

/** Vapour in a cubic metre of air, kg/m³. */
export function vapour_kgPerM3(temp_degC: number, vapour_Pa: number): number {
  return vapour_Pa / (VAPOUR_GAS_JPerKgK * (temp_degC + ZERO_CELSIUS_K));
}
