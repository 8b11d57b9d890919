import { ZERO_CELSIUS_K } from './constants.ts';
import { twinParameters } from './parameters.ts';

/** Gas constant, J/(mol K). */
const GAS_JPerMolK = 8.314_462_6;
const STANDARD_K = 298.15;

/** pKa of ammonium; stated for 0 to 50 °C. Source: Emerson, Russo, Lund and Thurston 1975. */
export function ammonium_pKa(temp_degC: number): number {
  const { intercept, slope_K } = twinParameters.ammonium;
  return intercept + slope_K / (temp_degC + ZERO_CELSIUS_K);
}

/** Share of the ammoniacal nitrogen in water that is ammonia. Source: Emerson et al. 1975. */
export function unionised_share(pH: number, temp_degC: number): number {
  return 1 / (1 + 10 ** (ammonium_pKa(temp_degC) - pH));
}

/**
 * Ammonia in a volume of water over that in the same volume of gas above it; ±30 % above 50 °C.
 * Source: Sander 2023, Henry's law constants, NH3.
 */
export function waterOverGas_ratio(temp_degC: number): number {
  const { at25_molPerM3Pa, slope_K } = twinParameters.henry;
  const temp_K = temp_degC + ZERO_CELSIUS_K;
  return at25_molPerM3Pa * Math.exp(slope_K * (1 / temp_K - 1 / STANDARD_K)) * GAS_JPerMolK * temp_K;
}
