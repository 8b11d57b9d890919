import type { Heap } from '@loamwright/daybook';
import { heapLimits_degC, type Ingredient, likely, materialById, type NotHeatingInput } from '@loamwright/science';
import { decidingReading, knownAt, probeReadings } from './heap-reading.ts';
import { staleAfter_days } from './safety.ts';
import { daysFrom } from './when.ts';

/** What the daybook knows of a heap that will not heat. */
export function coldInput(heap: Heap, now: string): NotHeatingInput {
  const readings = probeReadings(heap, now);
  const last = decidingReading(readings);
  const isFresh = last !== undefined && daysFrom(last.told.entry.happened, now) <= staleAfter_days;
  // What was felt with the last reading belongs to it, as long as the reading itself counts.
  const { volume_m3, carbonToNitrogen, ...known } = knownAt(heap, isFresh ? last.told.entry.happened : now);
  const hottest = readings.reduce<number | undefined>(
    (most, { temp_degC }) => Math.max(most ?? Number.NEGATIVE_INFINITY, likely(temp_degC)),
    undefined,
  );
  const ingredients = ingredientsOf(heap);
  return {
    ...known,
    age_days: Math.max(0, daysFrom(heap.begun, now)),
    ...(isFresh && { temp_degC: last.temp_degC, air_degC: last.told.body.ambient_degC }),
    ...(volume_m3 !== undefined && { size: { volume_m3: likely(volume_m3) } }),
    ...(carbonToNitrogen !== undefined && { carbonToNitrogen_ratio: carbonToNitrogen }),
    ...(hottest !== undefined && { hottest_degC: hottest }),
    ...(ingredients !== undefined && { ingredients }),
  };
}

/** Whether a heap that stands was lately read and is cold: then it is asked why. */
export function standsCold(heap: Heap, now: string): boolean {
  const { temp_degC } = coldInput(heap, now);
  return heap.phase === 'standing' && temp_degC !== undefined && likely(temp_degC) < heapLimits_degC.curing;
}

/** What lies in it by material, as it was put in; `undefined` where the tables do not know all of it. */
function ingredientsOf(heap: Heap): readonly Ingredient[] | undefined {
  const mass_kg = new Map<string, number>();
  for (const layer of heap.layers) {
    const { material } = layer.put;
    mass_kg.set(material, (mass_kg.get(material) ?? 0) + layer.mass_kg);
  }
  const all = [...mass_kg].filter(([, mass]) => mass > 0);
  if (all.length === 0 || all.some(([material]) => materialById(material) === undefined)) return undefined;
  return all.map(([material, mass]) => ({ material, amount: { mass_kg: mass } }));
}
