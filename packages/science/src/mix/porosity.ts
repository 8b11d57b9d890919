import { mixParameters } from './parameters.ts';

/** A bulk material as it lies, for its air space. */
export interface Bulk {
  /** Wet mass over the volume it fills. */
  readonly density_kgPerM3AsIs: number;
  readonly moisture_pctWet: number;
  readonly volatileSolids_pctDry: number;
}

/** Densities of the three phases that are not air. */
export interface PhaseDensities {
  readonly water_kgPerM3: number;
  readonly organic_kgPerM3: number;
  readonly ash_kgPerM3: number;
}

/** Water 1000, organic matter 1600, ash 2500 kg/m³: Van Ginkel et al. 1999; Richard et al. 2002, 2004. */
export const phaseDensities: PhaseDensities = {
  water_kgPerM3: mixParameters.waterDensity_kgPerM3.value,
  organic_kgPerM3: mixParameters.organicDensity_kgPerM3.value,
  ash_kgPerM3: mixParameters.ashDensity_kgPerM3.value,
};

/**
 * Free air space, percent of the volume: what water, organic matter and ash leave over.
 * Never below 0: a density that leaves no room is water-logged.
 * Source: Van Ginkel et al. 1999; Richard et al. 2002, 2004:
 * FAS = 1 − BD [(1 − d)/ρw + d v/ρo + d (1 − v)/ρa], d dry fraction, v volatile share of dry.
 */
export function freeAirSpace_pctVolume(bulk: Bulk, densities: PhaseDensities = phaseDensities): number {
  const dry = 1 - bulk.moisture_pctWet / 100;
  const volatile = bulk.volatileSolids_pctDry / 100;
  const filled =
    (1 - dry) / densities.water_kgPerM3 +
    (dry * volatile) / densities.organic_kgPerM3 +
    (dry * (1 - volatile)) / densities.ash_kgPerM3;
  return Math.max(0, 100 * (1 - bulk.density_kgPerM3AsIs * filled));
}

/**
 * Free air space after a loss of volume, percent: solids and water do not compress.
 * Principle: Richard, Inadequate Porosity, Cornell: 1 − FAS₂ = (1 − FAS₁) V₁/V₂.
 */
export function settledFreeAirSpace_pctVolume(before_pctVolume: number, volumeAfterOverBefore_share: number): number {
  return Math.max(0, 100 - (100 - before_pctVolume) / volumeAfterOverBefore_share);
}

/**
 * Volume that a heap may lose by settling until its air space has sunk to a limit, percent; 0 where it lies
 * there already. The same principle, solved for the volume: how deep stuff must lie to settle so far is
 * not published for garden mixes.
 */
export function settlingRoom_pctVolume(freeAirSpace_pctVolume: number, limit_pctVolume: number): number {
  return Math.max(0, 100 - (100 * (100 - freeAirSpace_pctVolume)) / (100 - limit_pctVolume));
}

/**
 * Wet bulk density at another moisture and the same volume, kg/m³; moisture below 100 %.
 * Source: Briggs 1994, Table 7-2A (its figures follow BD dry / (1 − M/100)).
 */
export function wettedDensity_kgPerM3AsIs(dryDensity_kgPerM3: number, moisture_pctWet: number): number {
  return dryDensity_kgPerM3 / (1 - moisture_pctWet / 100);
}

/** Bulk density from a weighed bucket, kg/m³. */
export function densityOfBucket_kgPerM3AsIs(bucket: {
  readonly full_kg: number;
  readonly empty_kg: number;
  readonly volume_L: number;
}): number {
  return ((bucket.full_kg - bucket.empty_kg) * 1000) / bucket.volume_L;
}
