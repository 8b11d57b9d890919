import type { Bay, BaySetUp, Cover, Entry, Heap, HeapAct, Holding, LayerPut } from '@loamwright/daybook';
import {
  blanketBounds_m,
  type HeapShape,
  type Ingredient,
  isBlanket,
  knownMaterial,
  likely,
  type NamedStanding,
  type ToldAct,
  USUAL_RUN_DAYS,
} from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import { added } from './bin-layers.ts';
import { probeReadings } from './heap-reading.ts';
import { coverOver, wallAround } from './heap-standing.ts';
import { stuffed } from './own-stuff.ts';
import { depth, say } from './saying.ts';
import { daysFrom } from './when.ts';

/** A temperature that was read, days after the heap was built. */
export interface TempAtDay {
  readonly at_day: number;
  readonly temp_degC: number;
}

/** A heap of the daybook as it was built and what was done to it since, as `heap-run` asks it. */
export interface HeapAsBuilt {
  /** When it was built, or first fed: day 0. */
  readonly begun: string;
  readonly age_days: number;
  readonly ingredients: readonly Ingredient[];
  readonly water_L?: number | undefined;
  readonly shape?: HeapShape | undefined;
  readonly standing: NamedStanding;
  /** Whether a roof keeps rain and sun off. */
  readonly roofed: boolean;
  readonly acts: readonly ToldAct[];
  /** Of the core. */
  readonly readings: readonly TempAtDay[];
  /** Air that was read beside it. */
  readonly air: readonly TempAtDay[];
  readonly notes: readonly Saying[];
}

const unlike: ReadonlySet<Cover> = new Set(['leaves', 'soil', 'other']);

/** A heap of the daybook is followed for as many days as a mix, and for so many beyond today. */
const AHEAD_DAYS = 28;
/** No run is longer: a heap that is older is not followed. */
export const MOST_RUN_DAYS = 400;
/** As many acts as a run takes; feeds beyond it are laid on together. */
const MOST_ACTS = 120;
/** How many days of feeding are then one. */
const slices_days = [1, 7, 14, 30] as const;
/** Longer than so many times its width it is a long heap. */
const LONG = 2;
const USUAL_HEIGHT_m = 1;
/** What is known by the day may stand hours before the building of the same day; what is older is of another heap. */
const SLACK_days = 1;

/**
 * What the daybook knows of a heap from the day on which it was built; undefined where nobody wrote down what went in. What can't be
 * followed is told in the notes.
 */
export function heapAsBuilt(heap: Heap, holding: Holding, now: string): HeapAsBuilt | undefined {
  const start = startOf(heap);
  if (start === undefined) return undefined;
  const notes: Saying[] = [...start.notes];
  const unknown = new Set<string>();
  const ingredients = ingredientsOf(start.layers, holding, unknown);
  if (ingredients.length === 0) return undefined;
  const bay = holding.bays.get(heap.built?.body.bay ?? '');
  const dayOf = ({ happened }: Entry): number => Math.max(0, daysFrom(start.begun, happened));
  const isSince = ({ happened }: Entry): boolean => happened <= now && daysFrom(start.begun, happened) > -SLACK_days;
  const told = heap.acts
    .filter(({ entry }) => entry.id !== start.entry && isSince(entry))
    .flatMap((act) => actTold(act, dayOf(act.entry), { holding, unknown, notes }));
  const { acts, slice_days } = joined(told);
  const water = heap.built?.body.water_L;
  return {
    begun: start.begun,
    age_days: Math.max(0, daysFrom(start.begun, now)),
    ingredients,
    ...(water !== undefined && { water_L: likely(water) }),
    ...shapeOf(heap, bay),
    ...(bay === undefined ? { standing: {}, roofed: false } : standingIn(bay.setUp.body)),
    acts,
    readings: probeReadings(heap, now)
      .filter(({ told: { entry }, point }) => isSince(entry) && (point === 'core' || point === 'middle'))
      .map(({ told: { entry }, temp_degC }) => ({ at_day: dayOf(entry), temp_degC: likely(temp_degC) })),
    air: heap.readings.flatMap(({ entry, body: { ambient_degC } }) =>
      ambient_degC === undefined || !isSince(entry) ? [] : [{ at_day: dayOf(entry), temp_degC: likely(ambient_degC) }],
    ),
    notes: once([
      ...(unknown.size > 0 ? [say('asBuilt.unknown', { names: [...unknown].join(', ') })] : []),
      ...(bay?.setUp.body.wall === 'other' ? [say('asBuilt.other-wall')] : []),
      ...notes,
      ...(slice_days === undefined ? [] : [say('asBuilt.feeds-joined', { days: slice_days })]),
    ]),
  };
}

/** How many days it is followed where nobody says it; undefined where it is too old to be followed. */
export function daysToFollow({ age_days }: Pick<HeapAsBuilt, 'age_days'>): number | undefined {
  if (age_days > MOST_RUN_DAYS) return undefined;
  return Math.min(MOST_RUN_DAYS, Math.max(USUAL_RUN_DAYS, Math.ceil(age_days) + AHEAD_DAYS));
}

/** How a heap stands in a bay. */
export function standingIn({ wall, roofed }: BaySetUp): Pick<HeapAsBuilt, 'standing' | 'roofed'> {
  return { standing: { walls: wallAround[wall] }, roofed: roofed === true };
}

interface Start {
  readonly begun: string;
  readonly entry: string;
  readonly layers: readonly LayerPut[];
  readonly notes: readonly Saying[];
}

/** How it was built; a heap begun empty counts from the first that went in. */
function startOf({ built, acts }: Heap): Start | undefined {
  if (built === null) return undefined;
  if (built.body.layers.length > 0)
    return { begun: built.entry.happened, entry: built.entry.id, layers: built.body.layers, notes: [] };
  const fed = acts.find((act) => act.kind === 'heap-fed');
  if (fed?.kind !== 'heap-fed') return undefined;
  return {
    begun: fed.entry.happened,
    entry: fed.entry.id,
    layers: fed.body.layers,
    notes: [say('asBuilt.fed-first')],
  };
}

/** Layers as ingredients, what went in of one material as one: one hand guessed it. */
function ingredientsOf(layers: readonly LayerPut[], holding: Holding, unknown: Set<string>): readonly Ingredient[] {
  const all = new Map<string, Ingredient>();
  for (const { material, mass_kg } of layers) {
    const stuff = stuffed(material, [], holding);
    if (knownMaterial(stuff.like ?? material) === undefined) {
      unknown.add(material);
      continue;
    }
    const before = all.get(material)?.amount;
    const sum = before !== undefined && 'mass_kg' in before ? added(before.mass_kg, mass_kg) : mass_kg;
    all.set(material, { ...stuff, amount: { mass_kg: sum } });
  }
  return [...all.values()];
}

interface Around {
  readonly holding: Holding;
  readonly unknown: Set<string>;
  readonly notes: Saying[];
}

function actTold(act: HeapAct, at_day: number, { holding, unknown, notes }: Around): readonly ToldAct[] {
  const wallsOf = (bay: Bay | undefined): readonly ToldAct[] => {
    if (bay === undefined) return [];
    const { wall } = bay.setUp.body;
    if (wall === 'other') notes.push(say('asBuilt.other-wall'));
    return [{ at_day, act: 'stand', walls: wallAround[wall] }];
  };
  switch (act.kind) {
    case 'heap-fed': {
      const ingredients = ingredientsOf(act.body.layers, holding, unknown);
      return ingredients.length === 0 ? [] : [{ at_day, act: 'add', mix: { ingredients } }];
    }
    case 'turned': {
      const bay = holding.bays.get(act.body.bay ?? '');
      const into = boxOf(bay);
      if (bay !== undefined && into === undefined)
        notes.push(say('asBuilt.turned-unmeasured', { bay: bay.setUp.body.name }));
      return [{ at_day, act: 'turn', ...(into !== undefined && { into }) }, ...wallsOf(bay)];
    }
    case 'moved':
      return wallsOf(holding.bays.get(act.body.bay));
    case 'watered': {
      const { liquid, volume_L } = act.body;
      if (liquid !== undefined && liquid !== 'water') notes.push(say('asBuilt.other-liquid'));
      return [{ at_day, act: 'water', water_L: likely(volume_L) }];
    }
    case 'covered':
      if (unlike.has(act.body.cover)) notes.push(say('asBuilt.other-cover'));
      return [{ at_day, act: 'stand', cover: coverOver[act.body.cover], ...depthOf(act.body, notes) }];
    case 'combined':
      notes.push(say('asBuilt.came-from'));
      return [];
    case 'split':
    case 'spread':
    case 'screened':
      notes.push(say('asBuilt.taken-from'));
      return [];
    default:
      return [];
  }
}

/** Feeds laid on together as far as the acts of a run make it needful: of so many days as one, at the first of them. */
function joined(acts: readonly ToldAct[]): { readonly acts: readonly ToldAct[]; readonly slice_days?: number } {
  if (acts.length <= MOST_ACTS) return { acts };
  const others = acts.filter(({ act }) => act !== 'add');
  const tried = slices_days.map((slice_days) => ({ slice_days, acts: [...others, ...feedsOf(acts, slice_days)] }));
  return tried.find((one) => one.acts.length <= MOST_ACTS) ?? tried.at(-1) ?? { acts };
}

function feedsOf(acts: readonly ToldAct[], slice_days: number): readonly ToldAct[] {
  const bySlice = new Map<number, Extract<ToldAct, { readonly act: 'add' }>>();
  for (const act of acts) {
    if (act.act !== 'add') continue;
    const slice = Math.floor(act.at_day / slice_days);
    const before = bySlice.get(slice);
    bySlice.set(slice, before === undefined ? act : { ...act, mix: { ingredients: together(before, act) } });
  }
  return [...bySlice.values()];
}

function together(
  one: Extract<ToldAct, { readonly act: 'add' }>,
  other: Extract<ToldAct, { readonly act: 'add' }>,
): readonly Ingredient[] {
  const all = new Map<string, Ingredient>();
  for (const ingredient of [...one.mix.ingredients, ...other.mix.ingredients]) {
    const before = all.get(ingredient.material)?.amount;
    const { amount } = ingredient;
    if (before === undefined || !('mass_kg' in before) || !('mass_kg' in amount)) {
      all.set(ingredient.material, ingredient);
    } else {
      all.set(ingredient.material, { ...ingredient, amount: { mass_kg: added(before.mass_kg, amount.mass_kg) } });
    }
  }
  return [...all.values()];
}

type CoverLaid = Extract<HeapAct, { readonly kind: 'covered' }>['body'];

/** How deep a blanket was laid, where that was written down. */
function depthOf({ cover, thickness_m }: CoverLaid, notes: Saying[]): { readonly coverDepth_m?: number } {
  if (thickness_m === undefined || !isBlanket(coverOver[cover])) return {};
  const { least, most } = blanketBounds_m;
  const told_m = likely(thickness_m);
  const coverDepth_m = Math.min(most, Math.max(least, told_m));
  if (coverDepth_m !== told_m) notes.push(say('asBuilt.other-depth', { depth: depth(coverDepth_m) }));
  return { coverDepth_m };
}

/** The inside of a bay whose width and depth are written down; its height, where it is not, follows from what is in it. */
export function boxOf(bay: Bay | undefined): Extract<HeapShape, { readonly form: 'box' }> | undefined {
  const { width_m, depth_m, height_m = USUAL_HEIGHT_m } = bay?.setUp.body ?? {};
  if (width_m === undefined || depth_m === undefined) return undefined;
  return { form: 'box', width_m: likely(width_m), depth_m: likely(depth_m), height_m: likely(height_m) };
}

/** In a bay a box; free, by the size that was written down. */
function shapeOf({ built }: Heap, bay: Bay | undefined): { readonly shape?: HeapShape } {
  const box = boxOf(bay);
  if (box !== undefined) return { shape: box };
  const height_m = likely(built?.body.size?.height_m ?? USUAL_HEIGHT_m);
  const { width_m, depth_m } = built?.body.size ?? {};
  if (width_m === undefined || depth_m === undefined) return {};
  const [across_m = 0, along_m = 0] = [likely(width_m), likely(depth_m)].sort((a, b) => a - b);
  if (along_m > LONG * across_m) return { shape: { form: 'long', width_m: across_m, height_m, length_m: along_m } };
  return { shape: { form: 'dome', diameter_m: (across_m + along_m) / 2, height_m } };
}

function once(notes: readonly Saying[]): readonly Saying[] {
  return [...new Map(notes.map((note) => [note.key, note])).values()];
}
