import { ammonium_pKa, waterOverGas_ratio } from './ammonia.ts';
import { saturation_Pa } from './moist-air.ts';

/** The table spans these temperatures, °C, in steps of a quarter of a kelvin; between them a straight line. */
const COLDEST_degC = -60;
const HOTTEST_degC = 140;
const PER_KELVIN = 4;
const COUNT = (HOTTEST_degC - COLDEST_degC) * PER_KELVIN + 1;

/** A function of temperature as a table: 1 part in 10,000 off at worst for saturation, below 10 °C, for a tenth of the time. */
function tabulated(of: (temp_degC: number) => number): Float64Array {
  return Float64Array.from({ length: COUNT }, (_, i) => of(COLDEST_degC + i / PER_KELVIN));
}

/** Saturation pressure, Pa. */
const saturation = tabulated(saturation_Pa);
/** Ammonium over ammonia in water at pH 0, as its logarithm's power: 10^pKa. */
const ammonium = tabulated((temp_degC) => 10 ** ammonium_pKa(temp_degC));
/** Ammonia in water over ammonia in gas. */
const dissolved = tabulated(waterOverGas_ratio);

/** A temperature's place in the table; outside the span, that of its end. */
export function placeOf(temp_degC: number): number {
  return Math.min(COUNT - 1.001, Math.max(0, (temp_degC - COLDEST_degC) * PER_KELVIN));
}

function at(table: Float64Array, place: number): number {
  const below = Math.floor(place);
  const low = table[below] as number;
  return low + (place - below) * ((table[below + 1] as number) - low);
}

/** Saturation pressure at a place, Pa. */
export function saturationAt_Pa(place: number): number {
  return at(saturation, place);
}

/** Ten to the power of ammonium's pKa at a place. */
export function ammoniumAt(place: number): number {
  return at(ammonium, place);
}

/** Ammonia in water over ammonia in gas at a place. */
export function waterOverGasAt(place: number): number {
  return at(dissolved, place);
}
