import { scaled } from '@loamwright/advisor';
import type { Wall } from '@loamwright/daybook';
import type {
  Amount,
  HeapCoverId,
  HeapRunInput,
  HeapShape,
  HeapWallId,
  Ingredient,
  MixInput,
} from '@loamwright/science';

/** How long a heap is followed here, and as how many of the heaps that it may turn out to be. */
export const DAYS = 60;
export const HEAPS = 64;

/** What stands around a heap, what lies on it, and the air: all that is asked, and nothing of it has to be said. */
export interface Here {
  readonly air_degC: number;
  readonly walls: HeapWallId;
  readonly cover: HeapCoverId;
}

/** A week by name, for those who have no thermometer in the shade: its mean by day and night. */
export const weeks_degC = { cool: 5, mild: 12, warm: 20 } as const;
export type Week = keyof typeof weeks_degC;
export const weekIds: readonly Week[] = ['cool', 'mild', 'warm'];

/** A bay, as far as its outline matters. */
interface Stand {
  readonly width_m: number;
  readonly depth_m: number;
  readonly height_m: number;
  readonly wall: Wall;
}

/** A box where walls hold it; on bare ground a dome as wide and high as the place. */
export function shapeIn({ width_m, depth_m, height_m, wall }: Stand): HeapShape {
  return wall === 'open'
    ? { form: 'dome', diameter_m: (width_m + depth_m) / 2, height_m }
    : { form: 'box', width_m, depth_m, height_m };
}

/** The question that a mix in its place comes to. */
export function wouldInput(mix: MixInput, shape: HeapShape | undefined, here: Here): HeapRunInput {
  const { air_degC, walls, cover } = here;
  return {
    ...mix,
    ...(shape !== undefined && { shape }),
    walls,
    cover,
    weather: { still: { temp_degC: air_degC } },
    days: DAYS,
    members: HEAPS,
  };
}

type ChangeId = 'larger' | 'straw' | 'sheet' | 'insulated' | 'chopped' | 'wetter' | 'drier';

/** One thing done otherwise, and the question that it comes to. */
export interface Change {
  readonly id: ChangeId;
  readonly input: HeapRunInput;
  /** Water more or less, litres, where it is that. */
  readonly water_L?: number | undefined;
}

/** The next size: so many times of everything. */
const LARGER = 1.5;
/** So much water a cubic metre is seen at the squeeze: about five points of moisture in a heap of half a tonne. */
const WATER_LPerM3 = 50;
const CAN_L = 5;

/** What may be done otherwise, apart from what is so already. */
export function changesOf(input: HeapRunInput, volume_m3: number): readonly Change[] {
  const water_L = Math.max(CAN_L, CAN_L * Math.round((WATER_LPerM3 * volume_m3) / CAN_L));
  const poured = input.water_L ?? 0;
  const poured_L = typeof poured === 'number' ? poured : poured.p50;
  const less_L = Math.min(water_L, poured_L);
  const larger = largerBy(LARGER, input);
  const changes: readonly (Change | null)[] = [
    larger === null ? null : { id: 'larger', input: larger },
    input.cover === 'straw' ? null : { id: 'straw', input: { ...input, cover: 'straw' } },
    input.cover === 'tarpaulin' ? null : { id: 'sheet', input: { ...input, cover: 'tarpaulin' } },
    input.walls === 'insulated' || input.walls === 'strawBales'
      ? null
      : { id: 'insulated', input: { ...input, walls: 'insulated' } },
    input.chopped === true ? null : { id: 'chopped', input: { ...input, chopped: true } },
    { id: 'wetter', water_L, input: { ...input, water_L: poured_L + water_L } },
    less_L < CAN_L ? null : { id: 'drier', water_L: less_L, input: { ...input, water_L: poured_L - less_L } },
  ];
  return changes.flatMap((change) => change ?? []);
}

/** So many times of everything, in an outline that has grown alike; null where an amount is only a word. */
function largerBy(times: number, input: HeapRunInput): HeapRunInput | null {
  const ingredients = input.ingredients.map((one): Ingredient | null => {
    const amount = timesAmount(one.amount, times);
    return amount === null ? null : { ...one, amount };
  });
  if (ingredients.includes(null)) return null;
  return {
    ...input,
    ingredients: ingredients.flatMap((one) => one ?? []),
    ...(input.water_L !== undefined && { water_L: scaled(input.water_L, times) }),
    ...(input.shape !== undefined && { shape: grownAlike(input.shape, Math.cbrt(times)) }),
  };
}

function timesAmount(amount: Amount, times: number): Amount | null {
  if ('mass_kg' in amount) return { ...amount, mass_kg: scaled(amount.mass_kg, times) };
  if ('volume_m3' in amount) return { ...amount, volume_m3: scaled(amount.volume_m3, times) };
  if ('vague' in amount || typeof amount.count === 'string') return null;
  return { ...amount, count: scaled(amount.count, times) };
}

function grownAlike(shape: HeapShape, by: number): HeapShape {
  const sides = Object.entries(shape).map(([name, side]) => [name, typeof side === 'number' ? by * side : side]);
  return Object.fromEntries(sides) as HeapShape;
}
