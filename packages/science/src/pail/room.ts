import { z } from 'zod';
import {
  type Chance,
  chance,
  chanceSchema,
  type Draws,
  type Estimate,
  estimateSchema,
  summarise,
} from '../estimate/index.ts';
import type { Bay } from '../mix/mix-input.ts';
import { type BinDraws, isFillingKnown, volumeAfter_m3, type WeighedLayer } from './bin.ts';
import { decayDraws } from './decay.ts';
import type { PailCoverInput } from './pail-input.ts';

/** The room that a bay has left after a feeding. */
export interface Room {
  readonly room_m3: Estimate;
  /** In how many draws it is full. */
  readonly full: Chance;
  /** Such pails with their dry stuff that would still go in today, before it sinks. */
  readonly pailsLeft: Estimate;
  /** With pails to come: draws in which it fills within two years, and after how many days. */
  readonly fills?: Chance | undefined;
  readonly fullIn_days?: Estimate | undefined;
}

export const roomSchema: z.ZodType<Room> = z.strictObject({
  room_m3: estimateSchema('Room left, m³.'),
  full: chanceSchema,
  pailsLeft: estimateSchema('Such pails that still go in today.'),
  fills: chanceSchema.optional(),
  fullIn_days: estimateSchema('Days until it is full, in the draws in which it fills.').optional(),
});

const WEEK_DAYS = 7;
const MOST_WEEKS = 104;

/** What a bay holds, filled level, m³. */
function bayVolume_m3({ width_m, depth_m, height_m }: Bay): number {
  return width_m * depth_m * height_m;
}

/**
 * Room in the bay, and when it is full at a pace of feeding; `undefined` without a bay, or where nobody knows how
 * full it is.
 */
export function roomOf(
  bin: BinDraws,
  layers: readonly WeighedLayer[],
  input: PailCoverInput,
  draws: Draws,
): Room | undefined {
  const { bay, ahead } = input;
  if (bay === undefined || !isFillingKnown(input)) return undefined;
  const bay_m3 = bayVolume_m3(bay);
  const volume_m3 = volumeAfter_m3(bin);
  const room_m3 = volume_m3.map((volume) => Math.max(0, bay_m3 - volume));
  const pailsLeft = room_m3.map((room, i) => room / (bin.fresh[i]?.volume_m3 ?? Number.NaN));
  return {
    room_m3: summarise(room_m3),
    full: chance(volume_m3, (volume) => volume >= bay_m3),
    pailsLeft: summarise(pailsLeft),
    ...(ahead === undefined ? {} : fillingOf(weeksToFull(bin, layers, input, draws, bay_m3, ahead.pails_perWeek))),
  };
}

function fillingOf(weeks: Float64Array): Pick<Room, 'fills' | 'fullIn_days'> {
  const fills = chance(weeks, Number.isFinite);
  const found = weeks.filter(Number.isFinite).map((one) => one * WEEK_DAYS);
  return 2 * fills.met > fills.of ? { fills, fullIn_days: summarise(found) } : { fills };
}

/**
 * Weeks until the bay is full at so many pails a week, draw by draw; infinite where two years do not fill it. Each week
 * part of what can still sink is gone, and the week's pails come on top. Frozen stuff does not sink.
 */
function weeksToFull(
  bin: BinDraws,
  layers: readonly WeighedLayer[],
  input: PailCoverInput,
  draws: Draws,
  bay_m3: number,
  pails_perWeek: number,
): Float64Array {
  const sinks = input.state !== 'frozen';
  return Float64Array.from(decayDraws(draws), ({ rate_perDay, volumeEnd_share }, i) => {
    const before_m3 = bin.older[i]?.volume_m3 ?? Number.NaN;
    const pail_m3 = bin.fresh[i]?.volume_m3 ?? Number.NaN;
    const stays_share = sinks ? staysShare(layers, i, volumeEnd_share) : 1;
    const pailStays_m3 = sinks ? volumeEnd_share * pail_m3 : pail_m3;
    const kept_share = Math.exp(-rate_perDay * WEEK_DAYS);
    let stays_m3 = before_m3 * stays_share + pailStays_m3;
    let sinking_m3 = before_m3 * (1 - stays_share) + pail_m3 - pailStays_m3;
    for (let week = 0; week <= MOST_WEEKS; week++) {
      if (stays_m3 + sinking_m3 >= bay_m3) return week;
      stays_m3 += pails_perWeek * pailStays_m3;
      sinking_m3 = sinking_m3 * kept_share + pails_perWeek * (pail_m3 - pailStays_m3);
    }
    return Number.POSITIVE_INFINITY;
  });
}

/** The share of what lies in the bin that will not sink any further. */
function staysShare(layers: readonly WeighedLayer[], i: number, volumeEnd_share: number): number {
  const parts = layers.map(({ portions, left }) => {
    const asFed_m3 = portions[i]?.volume_m3 ?? 0;
    const left_share = left[i]?.volume_share ?? 1;
    return { now_m3: asFed_m3 * left_share, stays_m3: asFed_m3 * Math.min(left_share, volumeEnd_share) };
  });
  const now_m3 = parts.reduce((sum, part) => sum + part.now_m3, 0);
  return now_m3 > 0 ? parts.reduce((sum, part) => sum + part.stays_m3, 0) / now_m3 : 1;
}
