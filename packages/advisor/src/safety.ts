import { type Heap, type Holding, localDate } from '@loamwright/daybook';
import { heapLimits_degC, heapTriggers, likely } from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import type { ProbeReading } from './heap-reading.ts';
import { heapName } from './names.ts';
import { say, temperature } from './saying.ts';
import { ago, daysFrom } from './when.ts';

/** A bin that was fed within this is still being fed. */
const FED_WITHIN_DAYS = 21;
/** °F typed and kept in °C must not fall short by a rounding. */
const HAIR_K = 0.005;

/**
 * What can be said about safety before any rule has been asked: whether a heap counts as raw, since when its clock
 * runs, and on how many days a reading reached the sanitising limit since then. No verdict.
 */
export function safetyNotes(
  holding: Holding,
  heap: Heap,
  readings: readonly ProbeReading[],
  now: string,
): readonly Saying[] {
  const { lastRaw } = heap;
  const notes: Saying[] = [];
  if (isStillFed(heap, now)) notes.push(say('advisor.safety.still-fed'));
  if (lastRaw === null) return [...notes, say('advisor.safety.plants-only')];
  notes.push(say(whyRaw[lastRaw.why], { ago: ago(lastRaw.at, now) }));
  if (heap.phase === 'finished') notes.push(say('advisor.safety.finished'));
  const days = hotDays(readings, lastRaw.at);
  const limit = temperature(heapLimits_degC.sanitisingDay);
  notes.push(days === 0 ? say('advisor.safety.unlogged', { limit }) : say('advisor.safety.hot-days', { days, limit }));
  const before = [...new Set(heap.cameFrom.map(({ id }) => id))];
  if (before.length > 0) {
    notes.push(say('advisor.safety.inherited', { heaps: before.map((id) => heapName(holding, id)) }));
  }
  return notes;
}

/** Whether a standing heap was fed within three weeks: such a bin is not finished. */
export function isStillFed({ acts, phase }: Heap, now: string): boolean {
  const fed = acts.findLast(({ kind, entry }) => kind === 'heap-fed' && entry.happened <= now);
  return fed !== undefined && phase === 'standing' && daysFrom(fed.entry.happened, now) <= FED_WITHIN_DAYS;
}

const whyRaw = {
  built: 'advisor.safety.raw',
  fed: 'advisor.safety.raw',
  combined: 'advisor.safety.raw-combined',
  liquid: 'advisor.safety.raw-liquid',
} as const;

/** Calendar days of the garden, since an instant, with a reading at the sanitising limit or above. */
function hotDays(readings: readonly ProbeReading[], since: string): number {
  const days = readings
    .filter(
      ({ told, temp_degC }) => told.body.doubted !== true && told.entry.happened >= since && isHot(likely(temp_degC)),
    )
    .map(({ told }) => localDate(told.entry.happened, told.entry.zone) ?? told.entry.happened.slice(0, 10));
  return new Set(days).size;
}

function isHot(temp_degC: number): boolean {
  return temp_degC >= heapLimits_degC.sanitisingDay - HAIR_K;
}

/** Days after which a reading says too little about today: the time in which a heap is to get hot. */
export const staleAfter_days: number = heapTriggers.reachedWithin_days;
