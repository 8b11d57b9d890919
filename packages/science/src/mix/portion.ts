import { freeAirSpace_pctVolume } from './porosity.ts';

/** What lies in a heap or a bucket, in amounts that add up. */
export interface Portion {
  readonly wet_kg: number;
  readonly dry_kg: number;
  readonly volatileSolids_kg: number;
  /** Carbon that counts in the C:N. */
  readonly carbon_kg: number;
  /** The part of that carbon that rots in one composting. */
  readonly degradableCarbon_kg: number;
  readonly nitrogen_kg: number;
  /** The nitrogen that is set free with that part of the carbon. */
  readonly availableNitrogen_kg: number;
  readonly phosphorus_kg: number;
  readonly potassium_kg: number;
  /** Volume as it lay when measured; water poured on has none, for it goes into the pores. */
  readonly volume_m3: number;
}

const nothing: Portion = {
  wet_kg: 0,
  dry_kg: 0,
  volatileSolids_kg: 0,
  carbon_kg: 0,
  degradableCarbon_kg: 0,
  nitrogen_kg: 0,
  availableNitrogen_kg: 0,
  phosphorus_kg: 0,
  potassium_kg: 0,
  volume_m3: 0,
};

/** Several portions as one. */
export function together(portions: readonly Portion[]): Portion {
  return portions.reduce(
    (sum, part) => ({
      wet_kg: sum.wet_kg + part.wet_kg,
      dry_kg: sum.dry_kg + part.dry_kg,
      volatileSolids_kg: sum.volatileSolids_kg + part.volatileSolids_kg,
      carbon_kg: sum.carbon_kg + part.carbon_kg,
      degradableCarbon_kg: sum.degradableCarbon_kg + part.degradableCarbon_kg,
      nitrogen_kg: sum.nitrogen_kg + part.nitrogen_kg,
      availableNitrogen_kg: sum.availableNitrogen_kg + part.availableNitrogen_kg,
      phosphorus_kg: sum.phosphorus_kg + part.phosphorus_kg,
      potassium_kg: sum.potassium_kg + part.potassium_kg,
      volume_m3: sum.volume_m3 + part.volume_m3,
    }),
    nothing,
  );
}

/** A portion so many times over. */
export function scaled(portion: Portion, by: number): Portion {
  return {
    wet_kg: portion.wet_kg * by,
    dry_kg: portion.dry_kg * by,
    volatileSolids_kg: portion.volatileSolids_kg * by,
    carbon_kg: portion.carbon_kg * by,
    degradableCarbon_kg: portion.degradableCarbon_kg * by,
    nitrogen_kg: portion.nitrogen_kg * by,
    availableNitrogen_kg: portion.availableNitrogen_kg * by,
    phosphorus_kg: portion.phosphorus_kg * by,
    potassium_kg: portion.potassium_kg * by,
    volume_m3: portion.volume_m3 * by,
  };
}

/** Water poured on, 1 kg to the litre. */
export function poured(water_L: number): Portion {
  return { ...nothing, wet_kg: water_L };
}

/** Moisture, percent of wet mass; `undefined` of nothing. */
export function portionMoisture_pctWet({ wet_kg, dry_kg }: Portion): number | undefined {
  return wet_kg > 0 ? (100 * (wet_kg - dry_kg)) / wet_kg : undefined;
}

/** C:N of a portion, a trace of nitrogen giving a very large one; `undefined` without any. */
export function portionRatio({ carbon_kg, nitrogen_kg }: Portion): number | undefined {
  return nitrogen_kg > 0 ? Math.min(carbon_kg / nitrogen_kg, Number.MAX_VALUE) : undefined;
}

/** What a built mix is like. */
export interface Built {
  readonly volume_m3: number;
  readonly density_kgPerM3AsIs: number;
  readonly freeAirSpace_pctVolume: number;
}

/**
 * Volume, density and air space once built: the summed volumes less what mixing, heaping and wetting
 * take off them (`packing_share` k): V = k ΣVᵢ. `undefined` where there is no volume.
 */
export function built(portion: Portion, packing_share: number): Built | undefined {
  const volume_m3 = portion.volume_m3 * packing_share;
  const moisture_pctWet = portionMoisture_pctWet(portion);
  if (volume_m3 <= 0 || moisture_pctWet === undefined) return undefined;
  const density_kgPerM3AsIs = portion.wet_kg / volume_m3;
  const volatileSolids_pctDry = portion.dry_kg > 0 ? (100 * portion.volatileSolids_kg) / portion.dry_kg : 0;
  return {
    volume_m3,
    density_kgPerM3AsIs,
    freeAirSpace_pctVolume: freeAirSpace_pctVolume({ density_kgPerM3AsIs, moisture_pctWet, volatileSolids_pctDry }),
  };
}
