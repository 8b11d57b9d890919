import { airAsRead, daysToFollow, type HeapAsBuilt, scaled, type TempAtDay } from '@loamwright/advisor';
import type { Wall } from '@loamwright/daybook';
import {
  type Amount,
  type HeapCoverId,
  type HeapRunInput,
  type HeapShape,
  type HeapWallId,
  type Ingredient,
  type MixInput,
  type ToldAct,
  type ToldWeather,
  USUAL_MEMBERS,
  usualBlanket_m,
} from '@loamwright/science';

/** A mix in its place, and what was done to it since it was laid there. */
export interface Placed {
  readonly mix: MixInput;
  readonly shape: HeapShape | undefined;
  readonly acts: readonly ToldAct[];
  /** Air that was read beside it. */
  readonly air: readonly TempAtDay[];
  /** How long it is followed. */
  readonly days: number;
}

/** What stands around a heap, what lies on it, the air, and how warm its stuff comes: all that is asked, and nothing of it has to be said. */
export interface Here {
  /** The same all the time, or as it was read beside the heap. */
  readonly air_degC: number | 'as-read';
  readonly walls: HeapWallId;
  readonly cover: HeapCoverId;
  /** How deep a blanket lies, m; as usual where nothing is said. */
  readonly coverDepth_m?: number | undefined;
  /** Of the stuff when it is laid; as the air where nobody says it. */
  readonly start_degC?: number | undefined;
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

/** A heap of the daybook in its place; undefined where it is too old to be followed. */
export function placedAsBuilt(kept: HeapAsBuilt): Placed | undefined {
  const days = daysToFollow(kept);
  if (days === undefined) return undefined;
  const { ingredients, water_L, shape, acts, air } = kept;
  return { mix: { ingredients, ...(water_L !== undefined && { water_L }) }, shape, acts, air, days };
}

/** The question that a mix in its place comes to. */
export function wouldInput({ mix, shape, acts, air, days }: Placed, here: Here): HeapRunInput {
  const { air_degC, walls, cover, coverDepth_m, start_degC } = here;
  return {
    ...mix,
    ...(shape !== undefined && { shape }),
    walls,
    cover,
    ...(coverDepth_m !== undefined && { coverDepth_m }),
    weather: air_degC === 'as-read' ? dailyAir(airAsRead(air, days)) : { still: { temp_degC: air_degC } },
    ...(start_degC !== undefined && { start_degC }),
    days,
    acts,
    members: USUAL_MEMBERS,
  };
}

const HOURS_A_DAY = 24;

function dailyAir(days_degC: readonly number[]): ToldWeather {
  return { readings: { every_h: HOURS_A_DAY, values: days_degC.map((temp_degC) => ({ temp_degC })) } };
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
    hasAllAlong(input, 'cover', ['straw']) && isThick(input)
      ? null
      : { id: 'straw', input: allAlong(input, { cover: 'straw' }) },
    hasAllAlong(input, 'cover', ['tarpaulin']) ? null : { id: 'sheet', input: allAlong(input, { cover: 'tarpaulin' }) },
    hasAllAlong(input, 'walls', ['insulated', 'strawBales'])
      ? null
      : { id: 'insulated', input: allAlong(input, { walls: 'insulated' }) },
    input.chopped === true ? null : { id: 'chopped', input: { ...input, chopped: true } },
    { id: 'wetter', water_L, input: { ...input, water_L: poured_L + water_L } },
    less_L < CAN_L ? null : { id: 'drier', water_L: less_L, input: { ...input, water_L: poured_L - less_L } },
  ];
  return changes.flatMap((change) => change ?? []);
}

/** Whether straw lies as deep as usual on it all along. */
function isThick({ coverDepth_m, acts = [] }: HeapRunInput): boolean {
  const depths = [coverDepth_m, ...acts.map((act) => (act.act === 'stand' ? act.coverDepth_m : undefined))];
  return depths.every((depth_m) => depth_m === undefined || depth_m >= usualBlanket_m('straw'));
}

type Standing = Pick<HeapRunInput, 'cover' | 'walls'>;

/** Whether it stands so from the first day to the last. */
function hasAllAlong(input: HeapRunInput, part: keyof Standing, any: readonly (HeapCoverId | HeapWallId)[]): boolean {
  const later = (input.acts ?? []).flatMap((act) => (act.act === 'stand' ? (act[part] ?? []) : []));
  const first = input[part];
  return first !== undefined && [first, ...later].every((one) => any.includes(one));
}

/** Standing so from the first day to the last, whatever was changed on the way. */
function allAlong(input: HeapRunInput, standing: Standing): HeapRunInput {
  const acts = (input.acts ?? []).map((act) => {
    if (act.act !== 'stand') return act;
    return {
      ...act,
      ...(act.cover !== undefined &&
        standing.cover !== undefined && { cover: standing.cover, coverDepth_m: undefined }),
      ...(act.walls !== undefined && standing.walls !== undefined && { walls: standing.walls }),
    };
  });
  return { ...input, ...(standing.cover !== undefined && { coverDepth_m: undefined }), ...standing, acts };
}

/** So many times of everything, in an outline that has grown alike; null where an amount is only a word. */
function largerBy(times: number, input: HeapRunInput): HeapRunInput | null {
  const ingredients = timesAll(input.ingredients, times);
  const acts = (input.acts ?? []).map((act) => timesAct(act, times));
  if (ingredients === null || acts.includes(null)) return null;
  return {
    ...input,
    ingredients,
    ...(input.water_L !== undefined && { water_L: scaled(input.water_L, times) }),
    ...(input.shape !== undefined && { shape: grownAlike(input.shape, Math.cbrt(times)) }),
    acts: acts.flatMap((act) => act ?? []),
  };
}

function timesAct(act: ToldAct, times: number): ToldAct | null {
  if (act.act === 'water') return { ...act, water_L: times * act.water_L };
  if (act.act === 'turn' && act.into !== undefined) return { ...act, into: grownAlike(act.into, Math.cbrt(times)) };
  if (act.act !== 'add') return act;
  const ingredients = timesAll(act.mix.ingredients, times);
  return ingredients === null ? null : { ...act, mix: { ...act.mix, ingredients } };
}

function timesAll(ingredients: readonly Ingredient[], times: number): readonly Ingredient[] | null {
  const larger = ingredients.map((one): Ingredient | null => {
    const amount = timesAmount(one.amount, times);
    return amount === null ? null : { ...one, amount };
  });
  return larger.includes(null) ? null : larger.flatMap((one) => one ?? []);
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
