// What a step of a heap is reckoned on: an array for each quantity, a number for each shell in it, core first. Every array
// is a constant of the program, so that the engine reads its place and length once and not at every number; whichever
// heap is written down last lies in them. What changes in a step has room for both of its moments, the second after all
// the shells that the first may have.

import { FLOWS } from './ledger.ts';
import type { Shells } from './shape.ts';
import type { ChangingId, HeapState, LastingId } from './state.ts';
import { noWeather, type Weather } from './surroundings.ts';

/** The most shells of a heap. */
export const MOST_SHELLS = 256;

/** Room for a number a shell. */
function once(): Float64Array {
  return new Float64Array(MOST_SHELLS);
}

/** Room for a number a shell at both moments of a step. */
function both(): Float64Array {
  return new Float64Array(2 * MOST_SHELLS);
}

/** What a shell holds. */
class Held {
  readonly ENERGY_J: Float64Array = both();
  readonly WATER_kg: Float64Array = both();
  readonly FAST_kg: Float64Array = both();
  readonly HEMICELLULOSE_kg: Float64Array = both();
  readonly CELLULOSE_kg: Float64Array = both();
  readonly LIGNIN_kg: Float64Array = both();
  readonly ORGANIC_N_kg: Float64Array = both();
  readonly AMMONIACAL_N_kg: Float64Array = both();
  readonly NITRATE_N_kg: Float64Array = both();
  readonly ACTIVITY_share: Float64Array = both();
  readonly PH: Float64Array = both();
  /** Oxygen in a kilogram of dry gas in the pores, kg/kg: where the last balance stood. */
  readonly OXYGEN_kgPerKg: Float64Array = both();
}
export const held: Held = new Held();

/** How fast that changes. */
class Rates {
  readonly ENERGY_JPerS: Float64Array = both();
  readonly WATER_kgPerS: Float64Array = both();
  readonly FAST_kgPerS: Float64Array = both();
  readonly HEMICELLULOSE_kgPerS: Float64Array = both();
  readonly CELLULOSE_kgPerS: Float64Array = both();
  readonly LIGNIN_kgPerS: Float64Array = both();
  readonly ORGANIC_N_kgPerS: Float64Array = both();
  readonly AMMONIACAL_N_kgPerS: Float64Array = both();
  readonly NITRATE_N_kgPerS: Float64Array = both();
  readonly ACTIVITY_perS: Float64Array = both();
  readonly PH_perS: Float64Array = both();
  /** Loss of volatile matter, for the heat it carries with it. */
  readonly VOLATILE_LOST_kgPerS: Float64Array = both();
}
export const rates: Rates = new Rates();

/** What no step changes. */
class Lasting {
  readonly INERT_kg: Float64Array = once();
  readonly ASH_kg: Float64Array = once();
  readonly CHAR_kg: Float64Array = once();
  readonly BUILT_m3: Float64Array = once();
  readonly BUILT_DRY_kg: Float64Array = once();
  readonly PLAN_share: Float64Array = once();
  readonly INWARD_perM: Float64Array = once();
  readonly OUTWARD_perM: Float64Array = once();
}
export const lasting: Lasting = new Lasting();

/** What a shell is like inside. A face belongs to the shell within it; the outermost face is the surface. */
class Inside {
  readonly TEMP_degC: Float64Array = both();
  /** Heat that warms the shell by 1 K, the freezing of its water counted, J/K. */
  readonly SLOPE_JPerK: Float64Array = both();
  readonly DRY_kg: Float64Array = both();
  /** Room between the solids, m³, and the part of the whole that is air. */
  readonly PORES_m3: Float64Array = both();
  readonly AIR_SPACE_share: Float64Array = both();
  readonly CONDUCTIVITY_WPerMK: Float64Array = both();
  readonly PERMEABILITY_m2: Float64Array = both();
  /** Vapour in a cubic metre of the pores' gas, and carried by a kilogram of its dry air; what each rises by for 1 K. */
  readonly VAPOUR_kgPerM3: Float64Array = both();
  readonly VAPOUR_RISE_kgPerM3K: Float64Array = both();
  readonly HUMIDITY_kgPerKg: Float64Array = both();
  readonly HUMIDITY_RISE_perK: Float64Array = both();
  /** How far the stuff holds its vapour back: 0 when moist to 1 when bone dry. */
  readonly DRYNESS_share: Float64Array = both();
  /** What the vapour in a cubic metre, and that carried by a kilogram of dry air, rise by for a kilogram of water: nothing when moist. */
  readonly VAPOUR_RISE_perM3: Float64Array = both();
  readonly HUMIDITY_RISE_perKg: Float64Array = both();
  /** Dry air in a cubic metre of the gas, and the dry gas's share of its pressure. */
  readonly DRY_AIR_kgPerM3: Float64Array = both();
  readonly DRY_GAS_share: Float64Array = both();
  /** Place of the temperature in the table of air. */
  readonly PLACE: Float64Array = both();
  /** Pace over the best: of the heat-loving for the temperature, by which it sours and loses nitrate; and of whichever go faster, for everything but their number and oxygen. */
  readonly WARMTH_share: Float64Array = both();
  readonly LIVELINESS_share: Float64Array = both();
  /** The same with the microbes' number, for everything but oxygen: of what rots fast, and of what rots slowly. */
  readonly PACE_share: Float64Array = both();
  readonly SLOW_PACE_share: Float64Array = both();
  /** Oxygen that rotting, and that nitrifying, would take up without want, kg/s; how much of it they get, 0 to 1. */
  readonly HUNGER_kgPerS: Float64Array = both();
  readonly NITRIFYING_kgPerS: Float64Array = both();
  readonly FED_share: Float64Array = both();
  /** Dry air drawn inwards through the face, leaving the shell upwards, and through the shell, kg/s. */
  readonly DRAWN_kgPerS: Float64Array = both();
  readonly RISEN_kgPerS: Float64Array = both();
  readonly THROUGH_kgPerS: Float64Array = both();
  /** Conductance of the face to heat, W/K, to vapour and to gases that diffuse, m³/s. */
  readonly HEAT_FACE_WPerK: Float64Array = both();
  readonly VAPOUR_FACE_m3PerS: Float64Array = both();
  readonly GAS_FACE_m3PerS: Float64Array = both();
  /** Nitrogen set free for each kilogram of carbon eaten, or taken up from what is mineral, kg/kg. */
  readonly FREED_kgPerKg: Float64Array = both();
  readonly TAKEN_kgPerKg: Float64Array = both();
  /** How ammoniacal nitrogen passes: out of the shell, from the inner and the outer one, and out of the heap, 1/s. */
  readonly AMMONIA_OWN_perS: Float64Array = both();
  readonly AMMONIA_INNER_perS: Float64Array = both();
  readonly AMMONIA_OUTER_perS: Float64Array = both();
  readonly AMMONIA_LEAVING_perS: Float64Array = both();
  /** The balance of oxygen: gas from the inner and the outer shell and out of this one, kg/s, and the tangent to what is fed. */
  readonly OXYGEN_INNER_kgPerS: Float64Array = both();
  readonly OXYGEN_OUTER_kgPerS: Float64Array = both();
  readonly OXYGEN_OWN_kgPerS: Float64Array = both();
  readonly FED_STEEP: Float64Array = both();
  /** Left by elimination on the way out, for the way back in. */
  readonly UPPER_ratio: Float64Array = both();
  readonly SOLVED_kgPerKg: Float64Array = both();
}
export const inside: Inside = new Inside();

/**
 * What a warming of each shell changes in transport, so that a step can take transport ahead: heat and water through
 * the face for 1 K of the shell within it, and back for 1 K of the shell beyond; what leaves the heap from the shell; and
 * the rows of sets of equations, eliminated as far as the right sides allow.
 */
class Ahead {
  readonly HEAT_OUT_WPerK: Float64Array = once();
  readonly HEAT_BACK_WPerK: Float64Array = once();
  readonly WATER_OUT_kgPerSK: Float64Array = once();
  readonly WATER_BACK_kgPerSK: Float64Array = once();
  readonly HEAT_LEAVING_WPerK: Float64Array = once();
  readonly WATER_LEAVING_kgPerSK: Float64Array = once();
  readonly WARM_INNER_WPerK: Float64Array = once();
  readonly WARM_PER_PIVOT_KPerW: Float64Array = once();
  readonly WARM_UPPER_ratio: Float64Array = once();
  readonly AMMONIA_PER_PIVOT_s: Float64Array = once();
  readonly AMMONIA_UPPER_ratio: Float64Array = once();
  /** Drives and answers of the two: W and K; kg/s and kg. */
  readonly DRIVE_W: Float64Array = once();
  readonly WARMING_K: Float64Array = once();
  readonly DRIVE_kgPerS: Float64Array = once();
  readonly PASSED_kg: Float64Array = once();
  /** Heat that water brings or takes with it, J/kg: where the stuff is dry, what evaporates it besides. */
  readonly WITH_WATER_JPerKg: Float64Array = once();
  /** The same for 1 kg of water in a dry shell: vapour through the face and back, what leaves; and a third set of rows. */
  readonly WET_OUT_perS: Float64Array = once();
  readonly WET_BACK_perS: Float64Array = once();
  readonly WET_LEAVING_perS: Float64Array = once();
  readonly WET_PER_PIVOT_s: Float64Array = once();
  readonly WET_UPPER_ratio: Float64Array = once();
  readonly WET_DRIVE_kgPerS: Float64Array = once();
  readonly WETTING_kg: Float64Array = once();
  /** The first guess of the end of a step, of what passes from shell to shell. */
  readonly GUESSED_ENERGY_J: Float64Array = once();
  readonly GUESSED_WATER_kg: Float64Array = once();
  readonly GUESSED_AMMONIACAL_N_kg: Float64Array = once();
}
export const ahead: Ahead = new Ahead();

/** One moment of a step: what its surface is like, and the flows in the order of the ledger, per second. */
export interface Moment {
  /** How many shells the heap has, and where the first stands in an array of both moments. */
  readonly count: number;
  readonly from: number;
  /** Conductance of the surface to the air and to the ground, W/K, and the sun's heat. */
  readonly surface: { air_WPerK: number; ground_WPerK: number; sun_W: number };
  readonly flows: Float64Array;
  /** Volume lost by settling since the heap was built or turned, as a share. */
  settled_share: number;
  /** The air outside. */
  air_degC: number;
}

/** What the reckoning of one heap keeps from step to step besides the arrays. */
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

/** The slate whose heap lies in the arrays. */
let lying: Slate | undefined;

/** A slate for a heap of so many shells, `MOST_SHELLS` at the most. */
export function createSlate(shells: number): Slate {
  if (shells > MOST_SHELLS) throw new RangeError(`${shells} shells: a heap is cut into ${MOST_SHELLS} at the most`);
  const moment = (from: number): Moment => ({
    count: shells,
    from,
    surface: { air_WPerK: 0, ground_WPerK: 0, sun_W: 0 },
    flows: new Float64Array(FLOWS),
    settled_share: 0,
    air_degC: 0,
  });
  return {
    start: moment(0),
    end: moment(MOST_SHELLS),
    isNew: true,
    isDry: false,
    step_s: Number.POSITIVE_INFINITY,
    weather: noWeather(),
  };
}

const changing: Readonly<Record<ChangingId, Float64Array>> = {
  energy_J: held.ENERGY_J,
  water_kg: held.WATER_kg,
  ammoniacalN_kg: held.AMMONIACAL_N_kg,
  fast_kg: held.FAST_kg,
  hemicellulose_kg: held.HEMICELLULOSE_kg,
  cellulose_kg: held.CELLULOSE_kg,
  lignin_kg: held.LIGNIN_kg,
  organicN_kg: held.ORGANIC_N_kg,
  nitrateN_kg: held.NITRATE_N_kg,
  activity_share: held.ACTIVITY_share,
  pH: held.PH,
};
const kept: Readonly<Record<LastingId | 'built_m3' | 'builtDry_kg', Float64Array>> = {
  inert_kg: lasting.INERT_kg,
  ash_kg: lasting.ASH_kg,
  char_kg: lasting.CHAR_kg,
  built_m3: lasting.BUILT_m3,
  builtDry_kg: lasting.BUILT_DRY_kg,
};
const changes = Object.entries(changing) as [ChangingId, Float64Array][];
const lasts = Object.entries(kept) as [keyof typeof kept, Float64Array][];

/** Writes a heap down as the start of a step; where another lay in the arrays, the rates are to be found anew. */
export function writeDown(slate: Slate, state: HeapState, shells: Shells): void {
  const { start } = slate;
  if (lying !== slate) slate.isNew = true;
  lying = slate;
  for (const [id, array] of changes) array.set(state[id], start.from);
  for (const [id, array] of lasts) array.set(state[id]);
  held.OXYGEN_kgPerKg.set(state.oxygen_kgPerKg, start.from);
  lasting.PLAN_share.set(shells.plan_share);
  lasting.INWARD_perM.set(shells.inward_perM);
  lasting.OUTWARD_perM.set(shells.outward_perM);
  start.settled_share = state.settled_share;
}

/** Takes the heap that was written down last back. */
export function readOff({ start }: Slate, state: HeapState): void {
  const { from, count } = start;
  for (const [id, array] of changes) state[id].set(array.subarray(from, from + count));
  state.oxygen_kgPerKg.set(held.OXYGEN_kgPerKg.subarray(from, from + count));
  state.settled_share = start.settled_share;
}
