import { type Heap, type Holding, localDate, type Told } from '@loamwright/daybook';
import { type Day, type HeapMethod, isLoggable, likely, type SanitationLog } from '@loamwright/science';
import { isStillFed } from './safety.ts';

/** The day in the garden on which an entry's matter happened. */
function dayOf({ entry }: Told): Day {
  return localDate(entry.happened, entry.zone) ?? entry.happened.slice(0, 10);
}

/** How a heap is kept, as far as the daybook tells: in a drum; turned, if it ever was; else as it stands. */
export function methodOf(holding: Holding, heap: Heap): HeapMethod {
  const bay = heap.bay === null ? undefined : holding.bays.get(heap.bay);
  if (bay?.setUp.body.wall === 'drum') return 'in-vessel';
  return heap.acts.some(({ kind }) => kind === 'turned') ? 'turned' : 'unturned';
}

/**
 * A heap of the daybook as the log that the rules ask for. What was not written down is left out. A turning outside in
 * proves by itself nothing of all the material: readings at the edge do, or the grower says so.
 *
 * @param now the instant at which it is asked
 * @param method where it is known better than the daybook tells
 */
export function heapLog(holding: Holding, heap: Heap, now: string, method?: HeapMethod): SanitationLog {
  const turned = heap.acts.filter((act) => act.kind === 'turned' && act.entry.happened <= now);
  const ratio = heap.built?.body.mix?.carbonToNitrogen;
  return {
    method: method ?? methodOf(holding, heap),
    readings: heap.readings.flatMap((told) => {
      const { temp_degC, point, doubted } = told.body;
      // A slip of the pen that no heap can have is no reading, and one that was doubted when it was typed proves nothing.
      if (temp_degC === undefined || doubted === true || told.entry.happened > now || !isLoggable(likely(temp_degC)))
        return [];
      return [{ day: dayOf(told), temp_degC: likely(temp_degC), ...(point !== undefined && { point }) }];
    }),
    turned: turned.map(dayOf),
    animalMatter: heap.lastRaw !== null,
    begun_day: heap.begun.slice(0, 10),
    ...(heap.lastRaw !== null && { lastRaw_day: lastRawDay(heap, heap.lastRaw) }),
    stillFed: isStillFed(heap, now),
    ...(ratio !== undefined && { carbonToNitrogen: ratio }),
  };
}

function lastRawDay(heap: Heap, { at, entry }: NonNullable<Heap['lastRaw']>): Day {
  const told = heap.acts.find((act) => act.entry.id === entry);
  return told === undefined ? at.slice(0, 10) : dayOf(told);
}
