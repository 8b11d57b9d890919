import type { Fields } from './fields.ts';
import { DAY_S, HOUR_S, type Traits, twinParameters } from './parameters.ts';
import { atAirSpace, atMoisture, atSourness, atTemperature } from './response.ts';
import { type HeapState, heatCapacity_JPerK, slope_JPerK, temperature_degC } from './state.ts';

const WATER_kgPerM3 = twinParameters.waterDensity_kgPerM3.value;
const ORGANIC_kgPerM3 = twinParameters.organicDensity_kgPerM3.value;
const ASH_kgPerM3 = twinParameters.ashDensity_kgPerM3.value;
const { dry_WPerMK: DRY_WPerMK, wet_WPerMK: WET_WPerMK } = twinParameters.conductivity;
const { fast: FAST, hemicellulose: HEMICELLULOSE, cellulose: CELLULOSE, lignin: LIGNIN } = twinParameters.pools;
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

/** How freely air passes pores of a share of the volume, over pores of half of it: their cube (Poulsen and Moldrup 2007). */
function openness(air_share: number): number {
  const over = air_share / HALF_AIR_SHARE;
  return over * over * over;
}

/** Solids of a shell, m³. */
function solids_m3(volatile_kg: number, mineral_kg: number): number {
  return volatile_kg / ORGANIC_kgPerM3 + mineral_kg / ASH_kgPerM3;
}

/**
 * Temperature, volume, pores and appetite of every shell, out of what it holds.
 * @returns the volume of the whole heap over that when it was built.
 */
export function lookInside(state: HeapState, traits: Traits, into: Fields): number {
  const shells = into.temp_degC.length;
  const left_share = 1 - state.settled_share;
  const { curve, slowCurve, wantedN_kgPerKg } = traits;
  let volume = 0;
  let built = 0;
  for (let i = 0; i < shells; i++) {
    const water_kg = state.water_kg[i] as number;
    const fast_kg = state.fast_kg[i] as number;
    const hemicellulose_kg = state.hemicellulose_kg[i] as number;
    const cellulose_kg = state.cellulose_kg[i] as number;
    const lignin_kg = state.lignin_kg[i] as number;
    const mineral_kg = (state.ash_kg[i] as number) + (state.char_kg[i] as number);
    const inert_kg = state.inert_kg[i] as number;
    const volatile_kg = fast_kg + hemicellulose_kg + cellulose_kg + lignin_kg + inert_kg;
    const dry_kg = volatile_kg + mineral_kg;
    const capacity_JPerK = heatCapacity_JPerK(water_kg, volatile_kg, mineral_kg);
    const temp_degC = temperature_degC(state.energy_J[i] as number, capacity_JPerK, water_kg);
    into.temp_degC[i] = temp_degC;
    into.slope_JPerK[i] = slope_JPerK(temp_degC, capacity_JPerK, water_kg);
    into.dry_kg[i] = dry_kg;

    const built_m3 = state.built_m3[i] as number;
    const solid_m3 = solids_m3(volatile_kg, mineral_kg);
    const water_m3 = water_kg / WATER_kgPerM3;
    const room_m3 = ((built_m3 * dry_kg) / (state.builtDry_kg[i] as number)) * left_share;
    const volume_m3 = Math.max(room_m3, (solid_m3 + water_m3) / (1 - LEAST_AIR_SHARE));
    const air_share = 1 - (solid_m3 + water_m3) / volume_m3;
    built += built_m3;
    volume += volume_m3;
    into.pores_m3[i] = volume_m3 - solid_m3;
    into.airSpace_share[i] = air_share;
    into.conductivity_WPerMK[i] = DRY_WPerMK + (WET_WPerMK * water_m3) / (volume_m3 - solid_m3);
    into.permeability_m2[i] = traits.permeability_m2 * openness(air_share);

    const warmth = atTemperature(temp_degC, curve);
    const slowWarmth = atTemperature(temp_degC, slowCurve);

    // Nitrogen for the microbes: what the eaten carbon sets free, and from the store of mineral nitrogen what it lacks.
    // The fast pool is the richer, so that more than the mean is set free while it lasts.
    const fastC_kg = FAST.carbon_kgPerKg * fast_kg;
    const hemicelluloseC_kg = HEMICELLULOSE.carbon_kgPerKg * hemicellulose_kg;
    const celluloseC_kg = CELLULOSE.carbon_kgPerKg * cellulose_kg;
    const ligninC_kg = LIGNIN.carbon_kgPerKg * lignin_kg;
    const slowC_kg = hemicelluloseC_kg + celluloseC_kg + ligninC_kg + INERT_CARBON_kgPerKg * inert_kg;
    const fastEaten = warmth * traits.fast_perS * fastC_kg;
    const slowEaten =
      slowWarmth *
      (traits.hemicellulose_perS * hemicelluloseC_kg +
        traits.cellulose_perS * celluloseC_kg +
        traits.lignin_perS * ligninC_kg);
    const richness = (RICHER_ratio * fastEaten + slowEaten) / (fastEaten + slowEaten + TRACE_kgPerS);
    const ammoniacalN_kg = state.ammoniacalN_kg[i] as number;
    const released_kgPerKg =
      (richness * (state.organicN_kg[i] as number)) / (RICHER_ratio * fastC_kg + slowC_kg + TRACE_KG);
    let taken_kgPerKg = 0;
    let nitrogen_share = 1;
    if (released_kgPerKg < wantedN_kgPerKg) {
      const mineralN_kg = ammoniacalN_kg + (state.nitrateN_kg[i] as number);
      const found_share = mineralN_kg / (mineralN_kg + HALF_MINERAL_kgPerKg * dry_kg + TRACE_KG);
      taken_kgPerKg = (wantedN_kgPerKg - released_kgPerKg) * found_share;
      nitrogen_share = (released_kgPerKg + taken_kgPerKg) / wantedN_kgPerKg;
    }
    into.taken_kgPerKg[i] = taken_kgPerKg;
    into.freed_kgPerKg[i] = Math.max(0, released_kgPerKg - wantedN_kgPerKg);

    const moisture = atMoisture(water_kg / (water_kg + dry_kg + TRACE_KG));
    const rest = moisture * atAirSpace(air_share) * atSourness(state.pH[i] as number, temp_degC) * nitrogen_share;
    const activity = state.activity_share[i] as number;
    const liveliness = warmth * rest;
    const pace = activity * liveliness;
    const slowPace = activity * slowWarmth * rest;
    into.warmth_share[i] = warmth;
    into.liveliness_share[i] = liveliness;
    into.pace_share[i] = pace;
    into.slowPace_share[i] = slowPace;
    into.hunger_kgPerS[i] =
      pace * FAST.oxygen_kgPerKg * traits.fast_perS * fast_kg +
      slowPace *
        (HEMICELLULOSE.oxygen_kgPerKg * traits.hemicellulose_perS * hemicellulose_kg +
          CELLULOSE.oxygen_kgPerKg * traits.cellulose_perS * cellulose_kg +
          LIGNIN.oxygen_kgPerKg * traits.lignin_perS * lignin_kg);
    into.nitrifying_kgPerS[i] = NITRIFYING_perS * ammoniacalN_kg * moisture * atTemperature(temp_degC, NITRIFIERS);
  }
  return volume / built;
}

/** Water that a shell can hold against draining, kg: what its stuff soaks up, and never more than fills its pores. */
export function held_kg(stuff_kg: number, char_kg: number, pores_m3: number, holds_kgPerKg: number): number {
  return Math.min(holds_kgPerKg * stuff_kg + CHAR_HOLDS_kgPerKg * char_kg, FULL_SHARE * WATER_kgPerM3 * pores_m3);
}

/** Rate at which water beyond what is held runs off, 1/s. */
export const DRAINING_perS: number = 1 / (twinParameters.drains_h.value * HOUR_S);
