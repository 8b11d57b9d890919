import { type CardinalTemperatures, twinParameters } from './parameters.ts';

/**
 * Rate at a temperature over the best rate, 0 to 1; 0 outside the outer two temperatures.
 * Needs best > (coldest + hottest) / 2, or the curve is not defined between them.
 * Source: Rosso, Lobry, Bajard and Flandrois 1995, Appl. Environ. Microbiol. 61:610-616, cardinal temperature model.
 */
export function atTemperature(
  temp_degC: number,
  { coldest_degC, best_degC, hottest_degC }: CardinalTemperatures,
): number {
  if (temp_degC <= coldest_degC || temp_degC >= hottest_degC) return 0;
  const rise_K = best_degC - coldest_degC;
  const above_K = temp_degC - coldest_degC;
  const bend =
    rise_K * (temp_degC - best_degC) - (best_degC - hottest_degC) * (best_degC + coldest_degC - 2 * temp_degC);
  return ((temp_degC - hottest_degC) * above_K * above_K) / (rise_K * bend);
}

interface Logistic {
  readonly offset: number;
  readonly slope: number;
}

/** Steps of the tables for arguments from 0 to 1: 2 parts in 100,000 off at worst, for a tenth of the time. */
const STEPS = 512;

/** A logistic curve over 0 to 1 as a table, with a straight line between its values. */
function tabulated({ offset, slope }: Logistic): Float64Array {
  return Float64Array.from({ length: STEPS + 2 }, (_, i) => 1 / (1 + Math.exp(offset - (slope * i) / STEPS)));
}

function at(table: Float64Array, share: number): number {
  const place = STEPS * share;
  const below = place | 0;
  const low = table[below] as number;
  return low + (place - below) * ((table[below + 1] as number) - low);
}

const moistureTable = tabulated(twinParameters.moistureLogistic);
const airSpaceTable = tabulated(twinParameters.airSpaceLogistic);

/** Rate at a moisture over the wettest rate; kg of water per kg wet, 0 to 1. Source: Haug 1993. */
export function atMoisture(water_share: number): number {
  return at(moistureTable, water_share);
}

/** Rate at a free air space over that with all the air it can have; m³ of air per m³, 0 to 1. Source: Haug 1993. */
export function atAirSpace(air_share: number): number {
  return at(airSpaceTable, air_share);
}

/** Rate at an oxygen content over that without want, both as shares of the gas volume. Source: Haug 1993, Monod's form. */
export function atOxygen(oxygen_share: number, half_share: number): number {
  return oxygen_share / (oxygen_share + half_share);
}

/** 0 below `from`, 1 above `to`, a smooth cubic between; `per` is 1 over what lies between. */
function smoothStep(value: number, from: number, to: number, per: number): number {
  if (value <= from) return 0;
  if (value >= to) return 1;
  const t = (value - from) * per;
  return t * t * (3 - 2 * t);
}

const { left_share: LEFT_share, belowPH, aboveTemp_degC, overPH, overTemp_degC } = twinParameters.acidBrake;
const SOUR_PH = belowPH - overPH;
const SWEET_PH = belowPH + overPH;
const PER_PH = 1 / (2 * overPH);
const COOL_degC = aboveTemp_degC - overTemp_degC;
const WARM_degC = aboveTemp_degC + overTemp_degC;
const PER_KELVIN = 1 / (2 * overTemp_degC);

/**
 * What sourness leaves of the rate: acid stuff that is warm rots slowly, acid stuff that is cool does not suffer.
 * Source: Sundberg 2005 for the rule; the edges are smooth for the sake of the reckoning.
 */
export function atSourness(pH: number, temp_degC: number): number {
  if (pH >= SWEET_PH || temp_degC <= COOL_degC) return 1;
  const sour = 1 - smoothStep(pH, SOUR_PH, SWEET_PH, PER_PH);
  return 1 - (1 - LEFT_share) * sour * smoothStep(temp_degC, COOL_degC, WARM_degC, PER_KELVIN);
}
