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

const LAST = COUNT - 1.001;

/** A temperature's place in the table; outside the span, that of its end. */
export function placeOf(temp_degC: number): number {
  const place = (temp_degC - COLDEST_degC) * PER_KELVIN;
  return place < 0 ? 0 : Math.min(place, LAST);
}

function at(table: Float64Array, place: number): number {
  const below = place | 0;
  const low = table[below] as number;
  return low + (place - below) * ((table[below + 1] as number) - low);
}

/** Saturation pressure at a place, Pa. */
export function saturationAt_Pa(place: number): number {
  return at(saturation, place);
}

/** What that pressure rises by for 1 K, Pa/K. */
export function saturationSlopeAt_PaPerK(place: number): number {
  const below = place | 0;
  return ((saturation[below + 1] as number) - (saturation[below] as number)) * PER_KELVIN;
}

/** Ten to the power of ammonium's pKa at a place. */
export function ammoniumAt(place: number): number {
  return at(ammonium, place);
}

/** Ammonia in water over ammonia in gas at a place. */
export function waterOverGasAt(place: number): number {
  return at(dissolved, place);
}

const SOUREST_PH = 0;
const SWEETEST_PH = 14;
const PER_PH = 128;

/** Ten to the power of −pH, with straight lines between its values: 4 parts in 100,000 off at worst. */
const acidity = Float64Array.from(
  { length: (SWEETEST_PH - SOUREST_PH) * PER_PH + 2 },
  (_, i) => 10 ** -(SOUREST_PH + i / PER_PH),
);

/** Ten to the power of −pH; outside 0 to 14, that of its end. */
export function acidityAt(pH: number): number {
  const within = pH < SOUREST_PH ? SOUREST_PH : Math.min(pH, SWEETEST_PH);
  return at(acidity, (within - SOUREST_PH) * PER_PH);
}
