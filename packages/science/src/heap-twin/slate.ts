// What a step of a heap is reckoned on: one array with a row of numbers for each shell, core first, so that a step reads
// what lies side by side and an array's bounds are looked up once. A row is made of blocks: what the shell holds at the
// start and at the end of the step, what lasts, and for both moments its rates and what it is like inside.

import { FLOWS } from './ledger.ts';
import type { Shells } from './shape.ts';
import { changingIds, type HeapState } from './state.ts';
import { noWeather, type Weather } from './surroundings.ts';

/** Sizes of a slate. */
export const slateSizes = {
  /** Numbers in a row. */
  ROW: 166,
  /** Quantities of what is held that pass from shell to shell, the first of them. */
  PASSING: 3,
  /** Quantities of what is held that change at their rates. */
  CHANGING: 11,
} as const;
/** Where the blocks of two moments start in a row: what is held, the rates, and the inside. */
const HELD = [0, 12] as const;
const RATES = [32, 44] as const;
const INSIDE = [56, 98] as const;

/** Places in a block of what is held, in the order of `changingIds`, and of its rates, per second. */
export const heldPlaces = {
  ENERGY_J: 0,
  WATER_kg: 1,
  AMMONIACAL_N_kg: 2,
  FAST_kg: 3,
  HEMICELLULOSE_kg: 4,
  CELLULOSE_kg: 5,
  LIGNIN_kg: 6,
  ORGANIC_N_kg: 7,
  NITRATE_N_kg: 8,
  ACTIVITY_share: 9,
  PH: 10,
  /** Oxygen in a kilogram of dry gas in the pores, kg/kg: where the last balance stood. */
  OXYGEN_kgPerKg: 11,
  /** In the block of rates only: loss of volatile matter, kg/s, for the heat it carries with it. */
  VOLATILE_LOST_kgPerS: 11,
} as const;

/** Places in a row of what no step changes. */
export const lastingPlaces = {
  INERT_kg: 24,
  ASH_kg: 25,
  CHAR_kg: 26,
  BUILT_m3: 27,
  BUILT_DRY_kg: 28,
  PLAN_share: 29,
  INWARD_perM: 30,
  OUTWARD_perM: 31,
} as const;

/**
 * Places in a block of what a shell is like inside. A face belongs to the shell within it; the outermost face is the
 * surface.
 */
export const insidePlaces = {
  TEMP_degC: 0,
  /** Heat that warms the shell by 1 K, the freezing of its water counted, J/K. */
  SLOPE_JPerK: 1,
  DRY_kg: 2,
  /** Room between the solids, m³, and the part of the whole that is air. */
  PORES_m3: 3,
  AIR_SPACE_share: 4,
  CONDUCTIVITY_WPerMK: 5,
  PERMEABILITY_m2: 6,
  /** Vapour in a cubic metre of the pores' gas, and carried by a kilogram of its dry air; what each rises by for 1 K. */
  VAPOUR_kgPerM3: 7,
  VAPOUR_RISE_kgPerM3K: 8,
  HUMIDITY_kgPerKg: 9,
  HUMIDITY_RISE_perK: 10,
  /** How far the stuff holds its vapour back: 0 when moist to 1 when bone dry. */
  DRYNESS_share: 11,
  /** What the vapour in a cubic metre, and that carried by a kilogram of dry air, rise by for a kilogram of water: nothing when moist. */
  VAPOUR_RISE_perM3: 40,
  HUMIDITY_RISE_perKg: 41,
  /** Dry air in a cubic metre of the gas, and the dry gas's share of its pressure. */
  DRY_AIR_kgPerM3: 12,
  DRY_GAS_share: 13,
  /** Place of the temperature in the table of air. */
  PLACE: 14,
  /** Rate of rotting over the best: for the temperature, and for everything but the microbes' number and oxygen. */
  WARMTH_share: 15,
  LIVELINESS_share: 16,
  /** The same with the microbes' number, for everything but oxygen: of what rots fast, and of what rots slowly. */
  PACE_share: 17,
  SLOW_PACE_share: 39,
  /** Oxygen that rotting, and that nitrifying, would take up without want, kg/s; how much of it they get, 0 to 1. */
  HUNGER_kgPerS: 18,
  NITRIFYING_kgPerS: 19,
  FED_share: 20,
  /** Dry air drawn inwards through the face, leaving the shell upwards, and through the shell, kg/s. */
  DRAWN_kgPerS: 21,
  RISEN_kgPerS: 22,
  THROUGH_kgPerS: 23,
  /** Conductance of the face to heat, W/K, to vapour and to gases that diffuse, m³/s. */
  HEAT_FACE_WPerK: 24,
  VAPOUR_FACE_m3PerS: 25,
  GAS_FACE_m3PerS: 26,
  /** Nitrogen set free for each kilogram of carbon eaten, or taken up from what is mineral, kg/kg. */
  FREED_kgPerKg: 27,
  TAKEN_kgPerKg: 28,
  /** How ammoniacal nitrogen passes: out of the shell, from the inner and the outer one, and out of the heap, 1/s. */
  AMMONIA_OWN_perS: 29,
  AMMONIA_INNER_perS: 30,
  AMMONIA_OUTER_perS: 31,
  AMMONIA_LEAVING_perS: 32,
  /** The balance of oxygen: gas from the inner and the outer shell and out of this one, kg/s, and the tangent to what is fed. */
  OXYGEN_INNER_kgPerS: 33,
  OXYGEN_OUTER_kgPerS: 34,
  OXYGEN_OWN_kgPerS: 35,
  FED_STEEP: 36,
  /** Left by elimination on the way out, for the way back in. */
  UPPER_ratio: 37,
  SOLVED_kgPerKg: 38,
} as const;

/**
 * Places in a row of what a warming of each shell changes in transport, so that a step can take transport at its end:
 * heat and water through the face for 1 K of the shell within it, and back for 1 K of the shell beyond; what leaves the
 * heap from the shell; and the rows of sets of equations, eliminated as far as the right sides allow.
 */
export const aheadPlaces = {
  HEAT_OUT_WPerK: 140,
  HEAT_BACK_WPerK: 141,
  WATER_OUT_kgPerSK: 142,
  WATER_BACK_kgPerSK: 143,
  HEAT_LEAVING_WPerK: 144,
  WATER_LEAVING_kgPerSK: 145,
  WARM_INNER_WPerK: 146,
  WARM_PER_PIVOT_KPerW: 147,
  WARM_UPPER_ratio: 148,
  AMMONIA_PER_PIVOT_s: 149,
  AMMONIA_UPPER_ratio: 150,
  /** Drives and answers of the two: W and K; kg/s and kg. */
  DRIVE_W: 151,
  WARMING_K: 152,
  DRIVE_kgPerS: 153,
  PASSED_kg: 154,
  /** Heat that water brings or takes with it, J/kg: where the stuff is dry, what evaporates it besides. */
  WITH_WATER_JPerKg: 155,
  /** The same for 1 kg of water in a dry shell: vapour through the face and back, what leaves; and a third set of rows. */
  WET_OUT_perS: 156,
  WET_BACK_perS: 157,
  WET_LEAVING_perS: 158,
  WET_PER_PIVOT_s: 159,
  WET_UPPER_ratio: 160,
  WET_DRIVE_kgPerS: 161,
  WETTING_kg: 162,
  /** The first guess of the end of a step, in the order of what passes. */
  GUESS: 163,
} as const;

const { OXYGEN_kgPerKg } = heldPlaces;
const { ASH_kg, BUILT_DRY_kg, BUILT_m3, CHAR_kg, INERT_kg, INWARD_perM, OUTWARD_perM, PLAN_share } = lastingPlaces;
const { CHANGING, ROW } = slateSizes;

/** The most shells of a heap. */
export const MOST_SHELLS = 256;

/**
 * Room for the rows of one heap. There is one in the program, for the engine reads a constant array's place and length
 * once and not at every number; whichever heap is written down last lies in it.
 */
export const room: { readonly flat: Float64Array } = { flat: new Float64Array(ROW * MOST_SHELLS) };

const { flat } = room;

/** One moment of a step: where its blocks start in a row, what its surface is like, and the flows in the order of the ledger, per second. */
export interface Moment {
  /** Where the rows of the heap end. */
  readonly rowsEnd: number;
  readonly held: number;
  readonly rates: number;
  readonly inside: number;
  /** Conductance of the surface to the air and to the ground, W/K, and the sun's heat. */
  readonly surface: { air_WPerK: number; ground_WPerK: number; sun_W: number };
  readonly flows: Float64Array;
  /** Volume lost by settling since the heap was built or turned, as a share. */
  settled_share: number;
  /** The air outside. */
  air_degC: number;
}

/** What the reckoning of one heap keeps from step to step besides its rows. */
export interface Slate {
  start: Moment;
  end: Moment;
  /** Whether the rates at the start are still to be found: at first, and when the heap or what it stands in was changed. */
  isNew: boolean;
  /** Whether the stuff of a shell is so dry at the start that its vapour hangs on its water. */
  isDry: boolean;
  /** The step to try next, s; no bound on it at first. */
  step_s: number;
  readonly weather: Weather;
}

/** The slate whose rows lie in the room. */
let lying: Slate | undefined;

/** A slate for a heap of so many shells, `MOST_SHELLS` at the most. */
export function createSlate(shells: number): Slate {
  if (shells > MOST_SHELLS) throw new RangeError(`${shells} shells: a heap is cut into ${MOST_SHELLS} at the most`);
  const moment = (which: 0 | 1): Moment => ({
    rowsEnd: ROW * shells,
    held: HELD[which],
    rates: RATES[which],
    inside: INSIDE[which],
    surface: { air_WPerK: 0, ground_WPerK: 0, sun_W: 0 },
    flows: new Float64Array(FLOWS),
    settled_share: 0,
    air_degC: 0,
  });
  return {
    start: moment(0),
    end: moment(1),
    isNew: true,
    isDry: false,
    step_s: Number.POSITIVE_INFINITY,
    weather: noWeather(),
  };
}

const lasting = [
  ['inert_kg', INERT_kg],
  ['ash_kg', ASH_kg],
  ['char_kg', CHAR_kg],
  ['built_m3', BUILT_m3],
  ['builtDry_kg', BUILT_DRY_kg],
] as const;
const geometry = [
  ['plan_share', PLAN_share],
  ['inward_perM', INWARD_perM],
  ['outward_perM', OUTWARD_perM],
] as const;

/** Writes a heap down as the start of a step; where another lay in the room, the rates are to be found anew. */
export function writeDown(slate: Slate, state: HeapState, shells: Shells): void {
  const { start } = slate;
  if (lying !== slate) slate.isNew = true;
  lying = slate;
  for (let i = 0, row = 0; i < shells.count; i++, row += ROW) {
    for (let q = 0; q < CHANGING; q++) flat[row + start.held + q] = state.flat[q * shells.count + i] as number;
    flat[row + start.held + OXYGEN_kgPerKg] = state.oxygen_kgPerKg[i] as number;
    for (const [id, place] of lasting) flat[row + place] = state[id][i] as number;
    for (const [id, place] of geometry) flat[row + place] = shells[id][i] as number;
  }
  start.settled_share = state.settled_share;
}

/** Takes the heap written down last back. */
export function readOff({ start }: Slate, state: HeapState): void {
  for (let i = 0, row = start.held; i < state.shells; i++, row += ROW) {
    for (let q = 0; q < changingIds.length; q++) state.flat[q * state.shells + i] = flat[row + q] as number;
    state.oxygen_kgPerKg[i] = flat[row + OXYGEN_kgPerKg] as number;
  }
  state.settled_share = start.settled_share;
}

/** What is at a place of a shell's block, of the heap written down last. */
export function placeIn(block: number, place: number, shell: number): number {
  return flat[ROW * shell + block + place] ?? Number.NaN;
}
