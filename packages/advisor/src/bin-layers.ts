import type { Heap, Holding, Layer } from '@loamwright/daybook';
import { type Bay, type FedLayer, isEstimate, knownMaterial, likely, type Quantity } from '@loamwright/science';
import { makeUp } from './make-up.ts';
import { stuffed } from './own-stuff.ts';
import { daysFrom } from './when.ts';

/** What lies in a heap as the science takes it. */
export interface BinLayers {
  /** From the first layer on. */
  readonly layers: readonly FedLayer[];
  /** Materials of the holding's own that are like none of the tables: nothing can be reckoned of them. */
  readonly unknown: readonly string[];
}

/** How finely ages are told apart: by the day at first, then by the week, then by the month. */
const slices = [
  { until_days: 28, slice_days: 1 },
  { until_days: 365, slice_days: 7 },
  { until_days: Number.POSITIVE_INFINITY, slice_days: 30 },
] as const;

/** Age rounded down to its slice: what lies together is taken to be as fresh as the youngest of it. */
function slicedAge_days(age_days: number): number {
  const { slice_days } = slices.find(({ until_days }) => age_days < until_days) ?? slices[0];
  return Math.floor(age_days / slice_days) * slice_days;
}

/**
 * The layers of a heap with their ages, what went in of one material in one slice of time as one. One hand guessed
 * them all, so their tenths add up.
 */
export function binLayers(heap: Heap, holding: Holding, now: string): BinLayers {
  const merged = new Map<string, FedLayer>();
  const unknown = new Set<string>();
  for (const layer of makeUp(heap)) {
    const { material } = layer.put;
    const stuff = stuffed(material, [], holding);
    if (knownMaterial(stuff.like ?? material) === undefined) {
      unknown.add(material);
      continue;
    }
    const age_days = slicedAge_days(Math.max(0, daysFrom(layer.added, now)));
    const line = `${material} ${age_days}`;
    const before = merged.get(line)?.amount;
    const mass_kg = massOf(layer);
    const all_kg = before !== undefined && 'mass_kg' in before ? added(before.mass_kg, mass_kg) : mass_kg;
    merged.set(line, { ...stuff, amount: { mass_kg: all_kg }, line, age_days });
  }
  const layers = [...merged.values()].sort((a, b) => b.age_days - a.age_days);
  return { layers, unknown: [...unknown] };
}

function massOf({ put, share }: Layer): Quantity {
  const { mass_kg } = put;
  if (!isEstimate(mass_kg)) return mass_kg * share;
  return { p10: mass_kg.p10 * share, p50: mass_kg.p50 * share, p90: mass_kg.p90 * share };
}

/** The sum of two amounts that one hand guessed: their tenths add up. */
export function added(a: Quantity, b: Quantity): Quantity {
  if (!isEstimate(a) && !isEstimate(b)) return a + b;
  const { p10, p50, p90 } = isEstimate(a) ? a : { p10: a, p50: a, p90: a };
  const other = isEstimate(b) ? b : { p10: b, p50: b, p90: b };
  return { p10: p10 + other.p10, p50: p50 + other.p50, p90: p90 + other.p90 };
}

/** The inside of a bay, where it is written down. */
export function baySize(holding: Holding, id: string): Bay | undefined {
  const body = holding.bays.get(id)?.setUp.body;
  if (body?.width_m === undefined || body.depth_m === undefined || body.height_m === undefined) return undefined;
  return { width_m: likely(body.width_m), depth_m: likely(body.depth_m), height_m: likely(body.height_m) };
}
