import type { Heap, HeapAct, Layer, Told } from '@loamwright/daybook';
import {
  type EarlierReading,
  materialById,
  type ProbePoint,
  type Quantity,
  type ReadingInput,
} from '@loamwright/science';
import { daysFrom } from './when.ts';

/** A reading that has a temperature. */
export interface ProbeReading {
  readonly told: Told<'reading'>;
  readonly temp_degC: Quantity;
  readonly point: ProbePoint;
}

/** The heap's temperature readings up to an instant, oldest first. */
export function probeReadings(heap: Heap, now: string): readonly ProbeReading[] {
  return heap.readings.flatMap((told): readonly ProbeReading[] => {
    const { temp_degC, point = 'core' } = told.body;
    return temp_degC === undefined || told.entry.happened > now ? [] : [{ told, temp_degC, point }];
  });
}

/** The reading a heap is judged by: the last, and of one round with the probe (within an hour) the one in the middle. */
export function decidingReading(readings: readonly ProbeReading[]): ProbeReading | undefined {
  const last = readings.at(-1);
  if (last === undefined || isInside(last)) return last;
  const sameRound = readings.filter(
    ({ told }) => daysFrom(told.entry.happened, last.told.entry.happened) <= ONE_ROUND_DAYS,
  );
  return sameRound.findLast(isInside) ?? last;
}

const ONE_ROUND_DAYS = 1 / 24;
/** A handful squeezed yesterday still tells how damp it is. */
const OBSERVED_WITHIN_DAYS = 3;

function isInside({ point }: ProbeReading): boolean {
  return point === 'core' || point === 'middle';
}

/** What the science is asked about a reading: the reading, and what the daybook knows of the heap at that moment. */
export function readingInput(heap: Heap, reading: ProbeReading, readings: readonly ProbeReading[]): ReadingInput {
  const { body, entry } = reading.told;
  const at = entry.happened;
  return {
    temp_degC: reading.temp_degC,
    point: reading.point,
    depth_m: body.depth_m,
    air_degC: body.ambient_degC,
    earlier: readings.flatMap((other) => earlierOf(other, at)),
    sinceWater_days: since(heap, at, ['watered']),
    sinceFeed_days: since(heap, at, ['heap-fed']),
    ...knownAt(heap, at),
  };
}

/** What the daybook knows of a heap at a moment, whether it was read or not. */
export function knownAt(heap: Heap, at: string): KnownOfHeap {
  const size = heap.built?.body.mix;
  return {
    age_days: Math.max(0, daysFrom(heap.begun, at)),
    sinceTurn_days: since(heap, at, stirring),
    squeeze: lately(heap, at, 'squeeze'),
    smell: lately(heap, at, 'smell'),
    volume_m3: isAsBuilt(heap) ? (size?.volume_m3 ?? boxOf(heap)) : undefined,
    carbonToNitrogen: isAsBuilt(heap) ? size?.carbonToNitrogen : undefined,
    holdsManure: holdsManure(heap.layers),
  };
}

type KnownOfHeap = Pick<
  ReadingInput,
  'age_days' | 'sinceTurn_days' | 'squeeze' | 'smell' | 'volume_m3' | 'carbonToNitrogen' | 'holdsManure'
>;

const stirring: readonly HeapAct['kind'][] = ['turned', 'combined', 'split', 'screened'];

/** A reading that was doubted when it was typed makes no trend. */
function earlierOf({ told, temp_degC, point }: ProbeReading, at: string): readonly EarlierReading[] {
  const before_days = daysFrom(told.entry.happened, at);
  return before_days > 0 && told.body.doubted !== true ? [{ before_days, temp_degC, point }] : [];
}

/** Days since the last act of some kinds; undefined where there was none. */
function since(heap: Heap, at: string, kinds: readonly HeapAct['kind'][]): number | undefined {
  const last = heap.acts.findLast(({ kind, entry }) => kinds.includes(kind) && entry.happened <= at);
  return last === undefined ? undefined : daysFrom(last.entry.happened, at);
}

/** What was last felt or smelt, if that is not long ago and nothing was done since. */
function lately<What extends 'squeeze' | 'smell'>(heap: Heap, at: string, what: What): Told<'reading'>['body'][What] {
  const told = heap.readings.findLast(({ body, entry }) => body[what] !== undefined && entry.happened <= at);
  if (told === undefined || daysFrom(told.entry.happened, at) > OBSERVED_WITHIN_DAYS) return undefined;
  const worked = heap.acts.some(
    ({ kind, entry }) =>
      ['turned', 'watered', 'heap-fed'].includes(kind) && entry.happened > told.entry.happened && entry.happened <= at,
  );
  // Work clears what was squeezed or smelt before it, but not smoke: only another smell does.
  return worked && told.body[what] !== 'smoke' ? undefined : told.body[what];
}

/** Whether a heap is still what it was built as: neither fed, parted nor brought together with others. */
function isAsBuilt(heap: Heap): boolean {
  return heap.built !== null && heap.acts.every(({ kind }) => !['heap-fed', 'combined', 'split'].includes(kind));
}

function boxOf(heap: Heap): number | undefined {
  const { width_m, depth_m, height_m } = heap.built?.body.size ?? {};
  if (width_m === undefined || depth_m === undefined || height_m === undefined) return undefined;
  return [width_m, depth_m, height_m].reduce<number>(
    (volume, side) => volume * (typeof side === 'number' ? side : side.p50),
    1,
  );
}

/** Whether manure went in. Stuff the tables don't know counts as it was marked. */
export function holdsManure(layers: readonly Layer[]): boolean {
  return layers.some(({ put }) => {
    const known = materialById(put.material);
    return known === undefined ? put.raw !== false : known.cautions.includes('manure-pathogens');
  });
}
