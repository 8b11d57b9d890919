import type { Draws } from '../estimate/index.ts';
import {
  type Chance,
  chance,
  drawsOf,
  free,
  isEstimate,
  likely,
  type Quantity,
  shareOf,
  withSpread,
} from '../estimate/index.ts';
import { heapLimits_degC } from './bands.ts';
import type { EarlierReading, ProbePoint, ReadingInput } from './observed.ts';

/** How the heap has been going, in the place where the probe is now. */
export type Direction = 'rising' | 'holding' | 'falling' | 'unknown';

export interface ReadingTrend {
  readonly direction: Direction;
  /** Change since the reading it is compared with, per day, K; absent without one. */
  readonly change_KPerDay?: number | undefined;
  /** The reading it is compared with was this many days ago. */
  readonly over_days?: number | undefined;
  /** In how many draws this reading is truly above that one. */
  readonly chanceRisen?: Chance | undefined;
  /** Highest likely reading in this place since the last turn, of four weeks at the most, this one included, °C. */
  readonly peak_degC: number;
  /** How far this reading lies below that peak, K. */
  readonly belowPeak_K: number;
  /** For how many days readings in this place have stayed at the sanitising limit or above since the last turn. */
  readonly hot_days: number;
}

/** A change counts as one when nine draws in ten agree: less is the probe. */
const AGREED = 0.9;
/** A reading of more than a week ago says what the heap was, not where it is going. */
const COMPARED_WITHIN_DAYS = 7;
/** A peak of last season is no measure of a heap that is fed or left for months. */
const PEAK_WITHIN_DAYS = 28;

/**
 * A temperature with the probe's error, unless it comes as an estimate already.
 *
 * @param error_K the probe is right within this nine times in ten.
 */
export function withProbe(temp_degC: Quantity, error_K: number): Quantity {
  return isEstimate(temp_degC) ? temp_degC : withSpread(temp_degC, error_K, free);
}

/** Where the probe was; without a word the core, as growers read. */
export function pointOf(reading: { readonly point?: ProbePoint | undefined }): ProbePoint {
  return reading.point ?? 'core';
}

/** Rising, holding or falling against the last reading in the same place, and how it stands to its peak. */
export function trendOf(input: ReadingInput, error_K: number, draws: Draws): ReadingTrend {
  const now = likely(input.temp_degC);
  const before = (input.earlier ?? [])
    .filter((reading) => pointOf(reading) === pointOf(input))
    .sort((a, b) => a.before_days - b.before_days);
  const since_days = Math.min(input.sinceTurn_days ?? PEAK_WITHIN_DAYS, PEAK_WITHIN_DAYS);
  const sinceTurn = before.filter(({ before_days }) => before_days < since_days);
  const peak_degC = sinceTurn.reduce((most, { temp_degC }) => Math.max(most, likely(temp_degC)), now);
  const held = {
    peak_degC,
    belowPeak_K: peak_degC - now,
    hot_days: hotDays(now, sinceTurn),
  };
  const last = before[0];
  if (last === undefined || last.before_days > COMPARED_WITHIN_DAYS) return { direction: 'unknown', ...held };
  const risen = chanceRisen(input.temp_degC, last.temp_degC, error_K, draws);
  return {
    direction: directionOf(risen),
    change_KPerDay: (now - likely(last.temp_degC)) / last.before_days,
    over_days: last.before_days,
    chanceRisen: risen,
    ...held,
  };
}

function directionOf(risen: Chance): Direction {
  if (shareOf(risen) >= AGREED) return 'rising';
  return shareOf(risen) <= 1 - AGREED ? 'falling' : 'holding';
}

/** Each reading has its own error: the probe never stands in quite the same spot twice. */
function chanceRisen(now: Quantity, then: Quantity, error_K: number, draws: Draws): Chance {
  const after = drawsOf(draws, 'reading/temp_degC', withProbe(now, error_K), free);
  const before = drawsOf(draws, 'earlierReading/temp_degC', withProbe(then, error_K), free);
  return chance(
    after.map((value, i) => value - (before[i] ?? value)),
    (difference) => difference > 0,
  );
}

function hotDays(now: number, sinceTurn: readonly EarlierReading[]): number {
  if (now < heapLimits_degC.sanitisingDay) return 0;
  let days = 0;
  for (const { temp_degC, before_days } of sinceTurn) {
    if (likely(temp_degC) < heapLimits_degC.sanitisingDay) break;
    days = before_days;
  }
  return days;
}
