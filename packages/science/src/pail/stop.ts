import { z } from 'zod';
import { type Estimate, summarise } from '../estimate/index.ts';
import { thawedAge_days, type WeighedLayer } from './bin.ts';
import type { PailCoverInput } from './pail-input.ts';
import { pailParameters } from './parameters.ts';
import type { Room } from './room.ts';

/** Why to stop feeding this bin and begin the next; the words are the message `pail.stop.REASON`. */
export const stopReasons = ['full', 'next-will-not-fit', 'wanted-soon', 'fed-long'] as const;
export type StopReason = (typeof stopReasons)[number];

export interface Stop {
  /** Whether this pail should be the last, or go into the next bin. */
  readonly now: boolean;
  readonly reasons: readonly StopReason[];
  /** How long a bin rests after its last pail before it is compost, days: one grower's mean. */
  readonly rest_days: number;
}

export const stopSchema: z.ZodType<Stop> = z.strictObject({
  now: z.boolean(),
  reasons: z.array(z.enum(stopReasons)),
  rest_days: z.number(),
});

/**
 * When to stop: the bay is full, or the next such pail will not fit; it is wanted sooner than a bin rests; or it has
 * been fed as long as a measured home bin is filled, and as much for its size (`reference/pail.json`, feeding).
 */
export function stopOf(layers: readonly WeighedLayer[], room: Room | undefined, input: PailCoverInput): Stop {
  const { fedFor_days, restFor_days } = pailParameters.feeding;
  const { wanted_inDays } = input;
  const isFull = room !== undefined && 2 * room.full.met > room.full.of;
  const reasons: readonly StopReason[] = [
    ...(isFull ? (['full'] as const) : []),
    ...(!isFull && room !== undefined && room.pailsLeft.p50 < 1 ? (['next-will-not-fit'] as const) : []),
    ...(wanted_inDays !== undefined && wanted_inDays < restFor_days.value ? (['wanted-soon'] as const) : []),
    ...(isFedLong(layers, input, fedFor_days.value) ? (['fed-long'] as const) : []),
  ];
  return { now: reasons.length > 0, reasons, rest_days: restFor_days.value };
}

function isFedLong(layers: readonly WeighedLayer[], input: PailCoverInput, fedFor_days: number): boolean {
  const { bay, frozenFor_days } = input;
  const ages = layers.map(({ layer }) => thawedAge_days(layer.age_days, frozenFor_days));
  if (bay === undefined || Math.max(0, ...ages) < fedFor_days) return false;
  const fed_m3 = likelyVolume(layers).p50;
  return fed_m3 >= pailParameters.feeding.fedTimesVolume.value * bay.width_m * bay.depth_m * bay.height_m;
}

/** Volume of everything that went in before, m³. */
function likelyVolume(layers: readonly WeighedLayer[]): Estimate {
  const [first] = layers;
  if (first === undefined) return { p10: 0, p50: 0, p90: 0 };
  return summarise(
    first.portions.map((_, i) => layers.reduce((sum, { portions }) => sum + (portions[i]?.volume_m3 ?? 0), 0)),
  );
}
