import { keptIds } from './build.ts';
import { FRESH_OXYGEN_kgPerKg } from './constants.ts';
import { enter, LINE } from './ledger.ts';
import { evaporation_JPerKg, vapourHeat_JPerKg } from './moist-air.ts';
import { twinParameters } from './parameters.ts';
import type { Shells } from './shape.ts';
import { emptyState, type HeapState, shellHeat_JPerK, shellTemperature_degC, shellVolatile_kg } from './state.ts';
import { heatOf_J, type Stuff } from './stuff.ts';

const WATER_JPerKgK = twinParameters.waterHeat_JPerKgK.value;
const POOLS = twinParameters.pools;
const TURNING = twinParameters.turning;

/** What adds up when stuff is moved from shell to shell. */
const movedIds = [...keptIds, 'energy_J'] as const;
/** What is then a mean, weighed by dry matter. */
const meantIds = ['activity_share', 'pH'] as const;

/** How a heap is turned. */
export interface Turn {
  /** Forked right through, or only lifted over. */
  readonly care: 'thorough' | 'rough';
  /** Whether what was outside comes inside. */
  readonly insideOut: boolean;
  readonly air_degC: number;
}

/** Volume of a heap as its stuff would lie unsettled, m³. */
export function looseVolume_m3(state: HeapState): number {
  let volume_m3 = 0;
  for (let i = 0; i < state.shells; i++) {
    volume_m3 += ((state.built_m3[i] as number) * dry_kg(state, i)) / (state.builtDry_kg[i] as number);
  }
  return volume_m3;
}

function dry_kg(state: HeapState, i: number): number {
  return shellVolatile_kg(state, i) + (state.ash_kg[i] as number) + (state.char_kg[i] as number);
}

/**
 * Turns a heap: mixes it, airs it, loosens it, and lets out heat and steam. `shells` are those it lies in afterwards,
 * which are others where it is moved to another bay.
 */
export function turnHeap(
  state: HeapState,
  shells: Shells,
  { care, insideOut, air_degC }: Turn,
  ledger: Float64Array,
): HeapState {
  for (let i = 0; i < state.shells; i++) coolInTurning(state, i, air_degC, ledger);
  const mixed_share = care === 'thorough' ? TURNING.thorough_share : TURNING.rough_share;
  const volume_m3 = looseVolume_m3(state);
  const order = Array.from({ length: state.shells }, (_, i) => (insideOut ? state.shells - 1 - i : i));
  const laid = layOut(
    order.map((i) => ({ from: state, shell: i, volume_m3: looseShell_m3(state, i) })),
    shells,
  );
  mixThrough(laid, mixed_share);
  settleAnew(laid, shells, volume_m3);
  return laid;
}

function looseShell_m3(state: HeapState, i: number): number {
  return ((state.built_m3[i] as number) * dry_kg(state, i)) / (state.builtDry_kg[i] as number);
}

/** A part of what is hotter than the air is lost, most of it as steam. */
function coolInTurning(state: HeapState, i: number, air_degC: number, ledger: Float64Array): void {
  const temp_degC = shellTemperature_degC(state, i);
  const lost_J = TURNING.heatLost_share * Math.max(0, temp_degC - air_degC) * shellHeat_JPerK(state, i);
  if (lost_J === 0 || temp_degC <= 0) return;
  const steam_kg = Math.min(
    (TURNING.asVapour_share * lost_J) / evaporation_JPerKg(temp_degC),
    STEAM_AT_MOST_share * (state.water_kg[i] as number),
  );
  const carried_J = lost_J - steam_kg * evaporation_JPerKg(temp_degC) + steam_kg * vapourHeat_JPerKg(temp_degC);
  state.energy_J[i] = (state.energy_J[i] as number) - carried_J;
  state.water_kg[i] = (state.water_kg[i] as number) - steam_kg;
  enter(ledger, LINE.heatTurnedOut_J, carried_J);
  enter(ledger, LINE.waterTurnedOut_kg, steam_kg);
}
/** However hot and dry, a turn does not take more of a shell's water. */
const STEAM_AT_MOST_share = 0.5;

/** A piece of a heap on its way into new shells. */
interface Piece {
  readonly from: HeapState;
  readonly shell: number;
  readonly volume_m3: number;
}

/** Lays pieces, core first, into shells, cutting them where a shell ends; nothing is lost or made. */
function layOut(pieces: readonly Piece[], shells: Shells): HeapState {
  const laid = emptyState(shells.count);
  const whole_m3 = pieces.reduce((sum, { volume_m3 }) => sum + volume_m3, 0);
  let into = 0;
  let room_m3 = (shells.volume_share[0] as number) * whole_m3;
  for (const piece of pieces) {
    let left_share = 1;
    while (left_share > 0) {
      const last = into === shells.count - 1;
      const fits_share = last ? left_share : Math.min(left_share, room_m3 / piece.volume_m3);
      move(piece, fits_share, laid, into);
      left_share -= fits_share;
      room_m3 -= fits_share * piece.volume_m3;
      if (!last && (left_share > 0 || room_m3 <= 0)) {
        into++;
        room_m3 = (shells.volume_share[into] as number) * whole_m3;
      }
    }
  }
  for (let i = 0; i < shells.count; i++) {
    const weight = dry_kg(laid, i);
    for (const id of meantIds) laid[id][i] = (laid[id][i] as number) / weight;
  }
  return laid;
}

/** Adds a share of a piece to a shell; means are held as sums weighed by dry matter until all is laid. */
function move({ from, shell }: Piece, share: number, laid: HeapState, into: number): void {
  for (const id of movedIds) laid[id][into] = (laid[id][into] as number) + share * (from[id][shell] as number);
  const weight = share * dry_kg(from, shell);
  for (const id of meantIds) laid[id][into] = (laid[id][into] as number) + weight * (from[id][shell] as number);
}

/** Mixes a share of every shell with every other. */
function mixThrough(state: HeapState, mixed_share: number): void {
  const weights = Array.from({ length: state.shells }, (_, i) => dry_kg(state, i));
  const whole = weights.reduce((sum, weight) => sum + weight, 0);
  for (const id of meantIds) {
    const mean = weights.reduce((sum, weight, i) => sum + weight * (state[id][i] as number), 0) / whole;
    for (let i = 0; i < state.shells; i++)
      state[id][i] = (1 - mixed_share) * (state[id][i] as number) + mixed_share * mean;
  }
  for (const id of movedIds) {
    const sum = state[id].reduce((total, held) => total + held, 0);
    for (let i = 0; i < state.shells; i++) {
      state[id][i] =
        (1 - mixed_share) * (state[id][i] as number) + (mixed_share * sum * (weights[i] as number)) / whole;
    }
  }
}

/** Fresh air in loose pores. */
function settleAnew(state: HeapState, shells: Shells, volume_m3: number): void {
  for (let i = 0; i < state.shells; i++) {
    state.oxygen_kgPerKg[i] = FRESH_OXYGEN_kgPerKg;
    state.built_m3[i] = (shells.volume_share[i] as number) * volume_m3;
    state.builtDry_kg[i] = dry_kg(state, i);
  }
}

/** Water given to a heap. */
export interface Watering {
  readonly water_kg: number;
  readonly temp_degC: number;
  /** Through all of it while it is forked over, or over the top, from where it soaks in. */
  readonly where: 'through' | 'top';
}

/** Waters a heap; what it cannot hold drains off in the hours after. */
export function waterHeap(state: HeapState, { water_kg, temp_degC, where }: Watering, ledger: Float64Array): void {
  const dry = Array.from({ length: state.shells }, (_, i) => dry_kg(state, i));
  const whole_kg = dry.reduce((sum, kg) => sum + kg, 0);
  for (let i = 0; i < state.shells; i++) {
    const share = where === 'through' ? (dry[i] as number) / whole_kg : i === state.shells - 1 ? 1 : 0;
    state.water_kg[i] = (state.water_kg[i] as number) + share * water_kg;
    state.energy_J[i] = (state.energy_J[i] as number) + share * water_kg * WATER_JPerKgK * temp_degC;
  }
  enter(ledger, LINE.waterAdded_kg, water_kg);
  enter(ledger, LINE.heatAdded_J, water_kg * WATER_JPerKgK * temp_degC);
}

/** Adds stuff as a layer over a heap, which then lies in `shells`: the new outside, the old within. */
export function layOver(state: HeapState, stuff: Stuff, shells: Shells, ledger: Float64Array): HeapState {
  const old_m3 = looseVolume_m3(state);
  const layer = emptyState(1);
  for (const id of keptIds) layer[id][0] = stuff[id];
  layer.energy_J[0] = heatOf_J(stuff);
  layer.activity_share[0] = stuff.activity_share;
  layer.pH[0] = stuff.pH;
  const pieces = Array.from({ length: state.shells }, (_, i) => ({
    from: state,
    shell: i,
    volume_m3: looseShell_m3(state, i),
  }));
  const laid = layOut([...pieces, { from: layer, shell: 0, volume_m3: stuff.volume_m3 }], shells);
  settleAnew(laid, shells, old_m3 + stuff.volume_m3);
  laid.settled_share = (state.settled_share * old_m3) / (old_m3 + stuff.volume_m3);
  enterStuff(stuff, ledger);
  return laid;
}

/** Writes stuff that was added into the ledger. */
function enterStuff(stuff: Stuff, ledger: Float64Array): void {
  enter(ledger, LINE.heatAdded_J, heatOf_J(stuff));
  enter(ledger, LINE.waterAdded_kg, stuff.water_kg);
  enter(ledger, LINE.carbonAdded_kg, carbonOf_kg(stuff));
  enter(ledger, LINE.nitrogenAdded_kg, stuff.organicN_kg + stuff.ammoniacalN_kg + stuff.nitrateN_kg);
  enter(ledger, LINE.ashAdded_kg, stuff.ash_kg);
}

/** Carbon in volatile matter, kg; charcoal's is not counted, for it stays. */
export function carbonOf_kg(
  stuff: Pick<Stuff, 'fast_kg' | 'hemicellulose_kg' | 'cellulose_kg' | 'lignin_kg' | 'inert_kg'>,
): number {
  return (
    POOLS.fast.carbon_kgPerKg * stuff.fast_kg +
    POOLS.hemicellulose.carbon_kgPerKg * stuff.hemicellulose_kg +
    POOLS.cellulose.carbon_kgPerKg * stuff.cellulose_kg +
    POOLS.lignin.carbon_kgPerKg * stuff.lignin_kg +
    POOLS.inert.carbon_kgPerKg * stuff.inert_kg
  );
}
