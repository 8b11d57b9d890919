import type { Shells } from './shape.ts';
import { type HeapState, shellTemperature_degC, shellVolatile_kg } from './state.ts';

/** What a long thermometer reads, °C, at a place between the core (0) and the surface (1): a straight line between shells. */
export function probe_degC(state: HeapState, { middle, count }: Shells, place: number): number {
  const at = place * count - 0.5;
  const below = Math.min(count - 1, Math.max(0, Math.floor(at)));
  const above = Math.min(count - 1, below + 1);
  const low_degC = shellTemperature_degC(state, below);
  if (above === below || at <= 0) return low_degC;
  const from = middle[below] as number;
  const to = middle[above] as number;
  return low_degC + ((place - from) / (to - from)) * (shellTemperature_degC(state, above) - low_degC);
}

const total = (values: Float64Array): number => values.reduce((sum, value) => sum + value, 0);

/** What a whole heap holds. */
export interface Whole {
  readonly water_kg: number;
  readonly dry_kg: number;
  readonly nitrogen_kg: number;
  readonly volume_m3: number;
}

/** A heap's sums. */
export function wholeOf(state: HeapState): Whole {
  let dry_kg = 0;
  let volume_m3 = 0;
  for (let i = 0; i < state.shells; i++) {
    const shell_kg = shellVolatile_kg(state, i) + (state.ash_kg[i] as number) + (state.char_kg[i] as number);
    dry_kg += shell_kg;
    volume_m3 += ((state.built_m3[i] as number) * shell_kg) / (state.builtDry_kg[i] as number);
  }
  return {
    water_kg: total(state.water_kg),
    dry_kg,
    nitrogen_kg: total(state.organicN_kg) + total(state.ammoniacalN_kg) + total(state.nitrateN_kg),
    volume_m3: volume_m3 * (1 - state.settled_share),
  };
}
