import { DAY_S, HOUR_S, type Traits, twinParameters } from './parameters.ts';
import { atAirSpace, atMoisture, atSourness, atTemperature } from './response.ts';
import { held, inside, lasting, type Moment } from './slate.ts';
import { heatCapacity_JPerK, slope_JPerK, temperature_degC } from './state.ts';

const {
  ACTIVITY_share,
  AMMONIACAL_N_kg,
  CELLULOSE_kg,
  ENERGY_J,
  FAST_kg,
  HEMICELLULOSE_kg,
  LIGNIN_kg,
  NITRATE_N_kg,
  ORGANIC_N_kg,
  PH,
  WATER_kg,
} = held;
const { ASH_kg, BUILT_DRY_kg, BUILT_m3, CHAR_kg, INERT_kg } = lasting;
const {
  AIR_SPACE_share,
  CONDUCTIVITY_WPerMK,
  DRY_kg,
  FREED_kgPerKg,
  HUNGER_kgPerS,
  LIVELINESS_share,
  NITRIFYING_kgPerS,
  PACE_share,
  PERMEABILITY_m2,
  PORES_m3,
  SLOPE_JPerK,
  SLOW_PACE_share,
  TAKEN_kgPerKg,
  TEMP_degC,
  WARMTH_share,
} = inside;

const WATER_kgPerM3 = twinParameters.waterDensity_kgPerM3.value;
const ORGANIC_kgPerM3 = twinParameters.organicDensity_kgPerM3.value;
const ASH_kgPerM3 = twinParameters.ashDensity_kgPerM3.value;
const { dry_WPerMK: DRY_WPerMK, wet_WPerMK: WET_WPerMK } = twinParameters.conductivity;
const FAST_OXYGEN_kgPerKg = twinParameters.pools.fast.oxygen_kgPerKg;
const FAST_CARBON_kgPerKg = twinParameters.pools.fast.carbon_kgPerKg;
const HEMICELLULOSE_OXYGEN_kgPerKg = twinParameters.pools.hemicellulose.oxygen_kgPerKg;
const HEMICELLULOSE_CARBON_kgPerKg = twinParameters.pools.hemicellulose.carbon_kgPerKg;
const CELLULOSE_OXYGEN_kgPerKg = twinParameters.pools.cellulose.oxygen_kgPerKg;
const CELLULOSE_CARBON_kgPerKg = twinParameters.pools.cellulose.carbon_kgPerKg;
const LIGNIN_OXYGEN_kgPerKg = twinParameters.pools.lignin.oxygen_kgPerKg;
const LIGNIN_CARBON_kgPerKg = twinParameters.pools.lignin.carbon_kgPerKg;
const INERT_CARBON_kgPerKg = twinParameters.pools.inert.carbon_kgPerKg;
/** Nitrogen for each kilogram of carbon in the fast pool, over that in all else. */
const RICHER_ratio = twinParameters.fastNitrogen_ratio.value;
const HALF_MINERAL_kgPerKg = twinParameters.mineralHalf_kgPerKg.value;
const NITRIFIERS = twinParameters.nitrifiers;
const NITRIFYING_perS =
  (twinParameters.oxygenPerNitrified_kgPerKg.value * twinParameters.nitrification_perDay.value) / DAY_S;
const CHAR_HOLDS_kgPerKg = twinParameters.charHolds_kgPerKg.value;

/** However wet or packed, so much air is left: below it the curves say nothing, and a ratio to nothing has no bound. */
const LEAST_AIR_SHARE = 0.005;
const HALF_AIR_SHARE = twinParameters.permeabilityRises.atAir_share;
/** A trace, so that an empty shell has a C:N. */
const TRACE_KG = 1e-12;
/** Less than any crumb that is warm enough to rot at all would have eaten. */
const TRACE_kgPerS = 1e-30;
/** Pores are full of water when so much of them is. */
const FULL_SHARE = 0.97;

/** Solids, m³/kg: multiplying is quicker than dividing. */
const ORGANIC_m3PerKg = 1 / ORGANIC_kgPerM3;
const ASH_m3PerKg = 1 / ASH_kgPerM3;
const WATER_m3PerKg = 1 / WATER_kgPerM3;
const PER_HALF_AIR = 1 / HALF_AIR_SHARE;
const LEAST_VOLUME_ratio = 1 / (1 - LEAST_AIR_SHARE);

/** How freely air passes pores of a share of the volume, over pores of half of it: their cube (Poulsen and Moldrup 2007). */
function openness(air_share: number): number {
  const over = air_share * PER_HALF_AIR;
  return over * over * over;
}

/**
 * Temperature, volume, pores and appetite of every shell, out of what it holds.
 * @returns the volume of the whole heap over that when it was built.
 */
export function lookInside({ count, from, settled_share }: Moment, traits: Traits): number {
  const left_share = 1 - settled_share;
  const { curve, slowCurve, coolCurve, coolPace_ratio, wantedN_kgPerKg } = traits;
  const perWantedN = 1 / wantedN_kgPerKg;
  const { fast_perS, hemicellulose_perS, cellulose_perS, lignin_perS } = traits;
  const fastAsks = FAST_OXYGEN_kgPerKg * fast_perS;
  const hemicelluloseAsks = HEMICELLULOSE_OXYGEN_kgPerKg * hemicellulose_perS;
  const celluloseAsks = CELLULOSE_OXYGEN_kgPerKg * cellulose_perS;
  const ligninAsks = LIGNIN_OXYGEN_kgPerKg * lignin_perS;
  let volume = 0;
  let built = 0;
  for (let shell = 0; shell < count; shell++) {
    const at = shell + from;
    const water_kg = WATER_kg[at] as number;
    const fast_kg = FAST_kg[at] as number;
    const hemicellulose_kg = HEMICELLULOSE_kg[at] as number;
    const cellulose_kg = CELLULOSE_kg[at] as number;
    const lignin_kg = LIGNIN_kg[at] as number;
    const mineral_kg = (ASH_kg[shell] as number) + (CHAR_kg[shell] as number);
    const inert_kg = INERT_kg[shell] as number;
    const volatile_kg = fast_kg + hemicellulose_kg + cellulose_kg + lignin_kg + inert_kg;
    const dry_kg = volatile_kg + mineral_kg;
    const capacity_JPerK = heatCapacity_JPerK(water_kg, volatile_kg, mineral_kg);
    const temp_degC = temperature_degC(ENERGY_J[at] as number, capacity_JPerK, water_kg);
    TEMP_degC[at] = temp_degC;
    SLOPE_JPerK[at] = slope_JPerK(temp_degC, capacity_JPerK, water_kg);
    DRY_kg[at] = dry_kg;

    const wasBuilt_m3 = BUILT_m3[shell] as number;
    const solid_m3 = volatile_kg * ORGANIC_m3PerKg + mineral_kg * ASH_m3PerKg;
    const water_m3 = water_kg * WATER_m3PerKg;
    const room_m3 = ((wasBuilt_m3 * dry_kg) / (BUILT_DRY_kg[shell] as number)) * left_share;
    const filled_m3 = (solid_m3 + water_m3) * LEAST_VOLUME_ratio;
    const volume_m3 = Math.max(room_m3, filled_m3);
    const air_share = 1 - (solid_m3 + water_m3) / volume_m3;
    built += wasBuilt_m3;
    volume += volume_m3;
    PORES_m3[at] = volume_m3 - solid_m3;
    AIR_SPACE_share[at] = air_share;
    CONDUCTIVITY_WPerMK[at] = DRY_WPerMK + (WET_WPerMK * water_m3) / (volume_m3 - solid_m3);
    PERMEABILITY_m2[at] = traits.permeability_m2 * openness(air_share);

    const warmth = atTemperature(temp_degC, curve);
    // In the cold other microbes grow and eat; whichever go faster set the pace.
    const thriving = Math.max(warmth, coolPace_ratio * atTemperature(temp_degC, coolCurve));
    const slowWarmth = atTemperature(temp_degC, slowCurve);

    // Nitrogen for the microbes: what the eaten carbon sets free, and from the store of mineral nitrogen what it lacks.
    // The fast pool is the richer, so that more than the mean is set free while it lasts.
    const fastC_kg = FAST_CARBON_kgPerKg * fast_kg;
    const hemicelluloseC_kg = HEMICELLULOSE_CARBON_kgPerKg * hemicellulose_kg;
    const celluloseC_kg = CELLULOSE_CARBON_kgPerKg * cellulose_kg;
    const ligninC_kg = LIGNIN_CARBON_kgPerKg * lignin_kg;
    const slowC_kg = hemicelluloseC_kg + celluloseC_kg + ligninC_kg + INERT_CARBON_kgPerKg * inert_kg;
    const fastEaten = thriving * fast_perS * fastC_kg;
    const slowEaten =
      slowWarmth * (hemicellulose_perS * hemicelluloseC_kg + cellulose_perS * celluloseC_kg + lignin_perS * ligninC_kg);
    const richness = (RICHER_ratio * fastEaten + slowEaten) / (fastEaten + slowEaten + TRACE_kgPerS);
    const ammoniacalN_kg = AMMONIACAL_N_kg[at] as number;
    const released_kgPerKg =
      (richness * (ORGANIC_N_kg[at] as number)) / (RICHER_ratio * fastC_kg + slowC_kg + TRACE_KG);
    let taken_kgPerKg = 0;
    let freed_kgPerKg = 0;
    let nitrogen_share = 1;
    if (released_kgPerKg < wantedN_kgPerKg) {
      const mineralN_kg = ammoniacalN_kg + (NITRATE_N_kg[at] as number);
      const found_share = mineralN_kg / (mineralN_kg + HALF_MINERAL_kgPerKg * dry_kg + TRACE_KG);
      taken_kgPerKg = (wantedN_kgPerKg - released_kgPerKg) * found_share;
      nitrogen_share = (released_kgPerKg + taken_kgPerKg) * perWantedN;
    } else {
      freed_kgPerKg = released_kgPerKg - wantedN_kgPerKg;
    }
    TAKEN_kgPerKg[at] = taken_kgPerKg;
    FREED_kgPerKg[at] = freed_kgPerKg;

    const moisture = atMoisture(water_kg / (water_kg + dry_kg + TRACE_KG));
    const ease = moisture * atAirSpace(air_share) * atSourness(PH[at] as number, temp_degC) * nitrogen_share;
    const activity = ACTIVITY_share[at] as number;
    const liveliness = thriving * ease;
    const pace = activity * liveliness;
    const slowPace = activity * slowWarmth * ease;
    WARMTH_share[at] = warmth;
    LIVELINESS_share[at] = liveliness;
    PACE_share[at] = pace;
    SLOW_PACE_share[at] = slowPace;
    HUNGER_kgPerS[at] =
      pace * fastAsks * fast_kg +
      slowPace * (hemicelluloseAsks * hemicellulose_kg + celluloseAsks * cellulose_kg + ligninAsks * lignin_kg);
    NITRIFYING_kgPerS[at] = NITRIFYING_perS * ammoniacalN_kg * moisture * atTemperature(temp_degC, NITRIFIERS);
  }
  return volume / built;
}

/** Water that a shell can hold against draining, kg: what its stuff soaks up, and never more than fills its pores. */
export function held_kg(stuff_kg: number, char_kg: number, pores_m3: number, holds_kgPerKg: number): number {
  return Math.min(holds_kgPerKg * stuff_kg + CHAR_HOLDS_kgPerKg * char_kg, FULL_SHARE * WATER_kgPerM3 * pores_m3);
}

/** Rate at which water beyond what is held runs off, 1/s. */
export const DRAINING_perS: number = 1 / (twinParameters.drains_h.value * HOUR_S);
