import { energy_J, heatCapacity_JPerK } from './state.ts';

/** Stuff as it goes onto a heap: what the model keeps of it, kg, its volume and how warm, sour and lively it is. */
export interface Stuff {
  readonly water_kg: number;
  readonly fast_kg: number;
  readonly hemicellulose_kg: number;
  readonly cellulose_kg: number;
  readonly lignin_kg: number;
  /** Volatile matter that does not rot in a heap. */
  readonly inert_kg: number;
  readonly ash_kg: number;
  readonly char_kg: number;
  readonly organicN_kg: number;
  readonly ammoniacalN_kg: number;
  readonly nitrateN_kg: number;
  /** Volume as it will lie in the heap, m³. */
  readonly volume_m3: number;
  readonly temp_degC: number;
  readonly pH: number;
  /** Share of the full number of microbes, 0 to 1. */
  readonly activity_share: number;
}

/** Volatile matter, kg. */
export function volatileOf_kg(
  stuff: Pick<Stuff, 'fast_kg' | 'hemicellulose_kg' | 'cellulose_kg' | 'lignin_kg' | 'inert_kg'>,
): number {
  return stuff.fast_kg + stuff.hemicellulose_kg + stuff.cellulose_kg + stuff.lignin_kg + stuff.inert_kg;
}

/** Heat held above water at 0 °C, J. */
export function heatOf_J(stuff: Stuff): number {
  const capacity_JPerK = heatCapacity_JPerK(stuff.water_kg, volatileOf_kg(stuff), stuff.ash_kg + stuff.char_kg);
  return energy_J(stuff.temp_degC, capacity_JPerK, stuff.water_kg);
}
