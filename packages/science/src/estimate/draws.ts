import { hashName, permutation, scramble } from './hash.ts';
import { isEstimate, type Quantity } from './quantity.ts';
import type { Scale } from './scale.ts';
import { sobolDimensions, sobolIntegers } from './sobol.ts';
import { valueAt } from './spread.ts';

/**
 * The properties that share one Sobol point set per subject, in the order of its dimensions. Only ever
 * added to at the end: a property's place decides its draws.
 */
const propertyOrder: readonly string[] = [
  'carbonToNitrogen_ratio',
  'moisture_pctWet',
  'densityLoose_kgPerM3AsIs',
  'densityPacked_kgPerM3AsIs',
  'volatileSolids_pctDry',
  'biodegradable_shareOfVolatile',
  'phosphorus_pctDry',
  'potassium_pctDry',
  'lignin_pctDry',
  'volume_L',
  'count',
];

/** Where the draws of every uncertain thing come from; the same name always gives the same draws. */
export interface Draws {
  /** How many draws there are of each thing. */
  readonly count: number;
  /**
   * The thing's cumulative shares, each strictly between 0 and 1. A name is `subject/property`, such as
   * `straw/moisture_pctWet`; draws of one subject's properties form one scrambled Sobol point set, and
   * subjects are paired at random (Latin supercube sampling).
   */
  shares(name: string): Float64Array;
}

export const DEFAULT_DRAW_COUNT = 256;
const FIXED_SEED = 20250321;

/**
 * Draws by name: 256 points of Owen-scrambled Sobol dimensions, a fixed seed.
 *
 * A scrambled Sobol set of 256 points can hold at most 128 dimensions before two of them agree on every
 * half, and a garden has more uncertain things than that. So each subject has a Sobol set of its own
 * and its own random order of runs: Owen A. B. 1998, Latin supercube sampling for very high-dimensional
 * simulations, ACM Trans. Model. Comput. Simul. 8:71-102.
 *
 * @param count a power of two keeps every dimension evenly filled.
 */
export function createDraws(count: number = DEFAULT_DRAW_COUNT, seed: number = FIXED_SEED): Draws {
  const known = new Map<string, Float64Array>();
  return { count, shares };

  function shares(name: string): Float64Array {
    const held = known.get(name);
    if (held !== undefined) return held;
    const made = makeShares(name, count, seed);
    known.set(name, made);
    return made;
  }
}

function makeShares(name: string, count: number, seed: number): Float64Array {
  const { subject, dimension } = placeOf(name);
  const order = permutation(count, hashName(subject, seed));
  const scrambleSeed = hashName(name, seed ^ 0x5bd1e995);
  const points = sobolIntegers(dimension, count);
  return Float64Array.from(order, (index) => (scramble(points[index] ?? 0, scrambleSeed) + 0.5) / 2 ** 32);
}

/** A property outside the list makes a subject of its own, in the first dimension. */
function placeOf(name: string): { subject: string; dimension: number } {
  const slash = name.lastIndexOf('/');
  const dimension = propertyOrder.indexOf(name.slice(slash + 1));
  if (slash < 0 || dimension < 0 || dimension >= sobolDimensions) return { subject: name, dimension: 0 };
  return { subject: name.slice(0, slash), dimension };
}

/** The draws of a quantity under its name; a plain number is itself in every draw. */
export function drawsOf(draws: Draws, name: string, quantity: Quantity, scale: Scale): Float64Array {
  if (!isEstimate(quantity)) return new Float64Array(draws.count).fill(quantity);
  return draws.shares(name).map((share) => valueAt(quantity, scale, share));
}
