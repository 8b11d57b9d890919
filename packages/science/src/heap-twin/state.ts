import { twinParameters } from './parameters.ts';

/**
 * What a shell holds or is like and what changes by itself: J of heat above water at 0 °C, kg, shares, pH. First what
 * passes from shell to shell.
 */
export const changingIds = [
  'energy_J',
  'water_kg',
  'ammoniacalN_kg',
  'fast_kg',
  'hemicellulose_kg',
  'cellulose_kg',
  'lignin_kg',
  'organicN_kg',
  'nitrateN_kg',
  'activity_share',
  'pH',
] as const;
export type ChangingId = (typeof changingIds)[number];

/** What a shell holds and only an act changes, kg. */
export const lastingIds = ['inert_kg', 'ash_kg', 'char_kg'] as const;
export type LastingId = (typeof lastingIds)[number];

/** Arrays of one number a shell for the quantities that change by themselves, which lie one after another in `flat`. */
export interface Changing extends Readonly<Record<ChangingId, Float64Array>> {
  readonly flat: Float64Array;
}

/** Room for the changing quantities of so many shells. */
function emptyChanging(shells: number): Changing {
  const flat = new Float64Array(changingIds.length * shells);
  const named = changingIds.map((id, q) => [id, flat.subarray(q * shells, (q + 1) * shells)] as const);
  return { flat, ...(Object.fromEntries(named) as Record<ChangingId, Float64Array>) };
}

/**
 * What a heap holds: one array for each quantity, one number in it for each shell from the core outwards, so that a
 * step reads and writes them in order and makes nothing new.
 */
export interface HeapState extends Changing, Readonly<Record<LastingId, Float64Array>> {
  readonly shells: number;
  /** Oxygen in a kilogram of dry gas in the pores, kg/kg: where the last balance stood. */
  readonly oxygen_kgPerKg: Float64Array;
  /** Volume of the shell when it was last built or turned, m³, and its dry matter then, kg. */
  readonly built_m3: Float64Array;
  readonly builtDry_kg: Float64Array;
  /** Volume lost by settling since, as a share. */
  settled_share: number;
}

/** Room for a heap of so many shells, empty. */
export function emptyState(shells: number): HeapState {
  const lasting = lastingIds.map((id) => [id, new Float64Array(shells)] as const);
  return {
    shells,
    oxygen_kgPerKg: new Float64Array(shells),
    built_m3: new Float64Array(shells),
    builtDry_kg: new Float64Array(shells),
    settled_share: 0,
    ...emptyChanging(shells),
    ...(Object.fromEntries(lasting) as Record<LastingId, Float64Array>),
  };
}

const WATER = twinParameters.waterHeat_JPerKgK.value;
const ICE = twinParameters.iceHeat_JPerKgK.value;
const MELTING = twinParameters.meltingHeat_JPerKg.value;
const SPAN_K = twinParameters.freezingSpan_K.value;
const ASH = twinParameters.ashHeat_JPerKgK.value;
const ORGANIC = twinParameters.organicHeat_JPerKgK.typical;

/** Heat that warms a shell by 1 K while its water is liquid, J/K. */
export function heatCapacity_JPerK(water_kg: number, volatile_kg: number, mineral_kg: number): number {
  return WATER * water_kg + ORGANIC * volatile_kg + ASH * mineral_kg;
}

/** Temperature of a shell that holds so much heat, °C. Its water freezes between 0 °C and a little below. */
export function temperature_degC(energy_J: number, capacity_JPerK: number, water_kg: number): number {
  if (energy_J >= 0) return energy_J / capacity_JPerK;
  const freezing_JPerK = capacity_JPerK + (MELTING * water_kg) / SPAN_K;
  const frozen_J = -SPAN_K * freezing_JPerK;
  if (energy_J >= frozen_J) return energy_J / freezing_JPerK;
  return -SPAN_K + (energy_J - frozen_J) / (capacity_JPerK - (WATER - ICE) * water_kg);
}

/** Heat held at a temperature, J: the other way round. */
export function energy_J(temp_degC: number, capacity_JPerK: number, water_kg: number): number {
  if (temp_degC >= 0) return temp_degC * capacity_JPerK;
  const freezing_JPerK = capacity_JPerK + (MELTING * water_kg) / SPAN_K;
  if (temp_degC >= -SPAN_K) return temp_degC * freezing_JPerK;
  return -SPAN_K * freezing_JPerK + (temp_degC + SPAN_K) * (capacity_JPerK - (WATER - ICE) * water_kg);
}

/** Heat that warms a shell by 1 K where it stands, the freezing of its water counted, J/K. */
export function slope_JPerK(temp_degC: number, capacity_JPerK: number, water_kg: number): number {
  if (temp_degC >= 0) return capacity_JPerK;
  if (temp_degC >= -SPAN_K) return capacity_JPerK + (MELTING * water_kg) / SPAN_K;
  return capacity_JPerK - (WATER - ICE) * water_kg;
}

/** Volatile matter of a shell, kg. */
export function shellVolatile_kg(state: HeapState, i: number): number {
  return (
    (state.fast_kg[i] as number) +
    (state.hemicellulose_kg[i] as number) +
    (state.cellulose_kg[i] as number) +
    (state.lignin_kg[i] as number) +
    (state.inert_kg[i] as number)
  );
}

/** Heat that warms a shell by 1 K while its water is liquid, J/K. */
export function shellHeat_JPerK(state: HeapState, i: number): number {
  const mineral_kg = (state.ash_kg[i] as number) + (state.char_kg[i] as number);
  return heatCapacity_JPerK(state.water_kg[i] as number, shellVolatile_kg(state, i), mineral_kg);
}

/** Temperature of a shell, °C. */
export function shellTemperature_degC(state: HeapState, i: number): number {
  return temperature_degC(state.energy_J[i] as number, shellHeat_JPerK(state, i), state.water_kg[i] as number);
}
