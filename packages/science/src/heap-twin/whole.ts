import { type HeapState, shellVolatile_kg } from './state.ts';

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
