import { FRESH_OXYGEN_kgPerKg } from './constants.ts';
import type { Shells } from './shape.ts';
import { emptyState, type HeapState } from './state.ts';
import { heatOf_J, type Stuff, volatileOf_kg } from './stuff.ts';

/** What of stuff is kept as it is. */
export const keptIds = [
  'water_kg',
  'fast_kg',
  'hemicellulose_kg',
  'cellulose_kg',
  'lignin_kg',
  'inert_kg',
  'ash_kg',
  'char_kg',
  'organicN_kg',
  'ammoniacalN_kg',
  'nitrateN_kg',
] as const;

/** A heap of one well-mixed stuff. Its volume should be that of the outline the shells were cut from. */
export function buildHeap(stuff: Stuff, shells: Shells): HeapState {
  const state = emptyState(shells.count);
  const heat_J = heatOf_J(stuff);
  const dry_kg = volatileOf_kg(stuff) + stuff.ash_kg + stuff.char_kg;
  for (let i = 0; i < shells.count; i++) {
    const share = shells.volume_share[i] as number;
    for (const id of keptIds) state[id][i] = stuff[id] * share;
    state.energy_J[i] = heat_J * share;
    state.activity_share[i] = stuff.activity_share;
    state.pH[i] = stuff.pH;
    state.oxygen_kgPerKg[i] = FRESH_OXYGEN_kgPerKg;
    state.built_m3[i] = stuff.volume_m3 * share;
    state.builtDry_kg[i] = dry_kg * share;
  }
  return state;
}
