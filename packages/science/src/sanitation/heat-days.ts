import { type Day, daysAfter, daysBetween } from '../calendar/index.ts';
import type { LogReading, SanitationLog } from './log.ts';
import type { Door } from './parameters.ts';

/** What one day's readings come to: judged by the lowest, stopped by the highest. */
export interface LoggedDay {
  readonly day: Day;
  readonly lowest_degC: number;
  readonly highest_degC: number;
}

/** Which part of a heap is meant: the hot middle, or the outside, which is colder. */
export type Zone = 'inside' | 'outside';

const inside: readonly LogReading['point'][] = [undefined, 'core', 'middle'];

/** The days with a reading in a zone, in order. Only days after the last raw addition count. */
export function daysLogged({ readings, lastRaw_day }: SanitationLog, zone: Zone): readonly LoggedDay[] {
  const byDay = new Map<Day, { lowest_degC: number; highest_degC: number }>();
  for (const { day, temp_degC, point } of readings) {
    if (inside.includes(point) !== (zone === 'inside')) continue;
    if (lastRaw_day !== undefined && day <= lastRaw_day) continue;
    const held = byDay.get(day);
    byDay.set(day, {
      lowest_degC: Math.min(temp_degC, held?.lowest_degC ?? temp_degC),
      highest_degC: Math.max(temp_degC, held?.highest_degC ?? temp_degC),
    });
  }
  return [...byDay].map(([day, one]) => ({ day, ...one })).sort((a, b) => (a.day < b.day ? -1 : 1));
}

/** °F readings that were turned to °C come back a last digit short: 131 °F is 55 °C. */
const ROUNDING_DEGC = 1e-6;

export function isHot({ lowest_degC, highest_degC }: LoggedDay, { least_degC, most_degC }: Door): boolean {
  const notTooHot = most_degC === undefined || highest_degC <= most_degC + ROUNDING_DEGC;
  return lowest_degC >= least_degC - ROUNDING_DEGC && notTooHot;
}

/** How the days at heat lie. */
export interface HeatRun {
  /** Days at heat, wherever they lie. */
  readonly days: readonly Day[];
  readonly longest: number;
  /** The longest run if every day without a reading between two at heat had been at heat too. */
  readonly longestFilled: number;
  /** The same for the sum. */
  readonly daysFilled: number;
  /** Length of the run that the last day logged stands in; 0 where it was not at heat. */
  readonly running: number;
}

/** Days at heat and how they follow one another. */
export function heatRun(logged: readonly LoggedDay[], door: Door): HeatRun {
  const days: Day[] = [];
  let longest = 0;
  let longestFilled = 0;
  let daysFilled = 0;
  let run = 0;
  let filled = 0;
  let last: Day | undefined;
  for (const one of logged) {
    if (!isHot(one, door)) {
      run = 0;
      filled = 0;
      last = undefined;
      continue;
    }
    const gap = last === undefined ? 1 : daysBetween(last, one.day);
    run = gap === 1 ? run + 1 : 1;
    filled += gap;
    daysFilled += gap;
    longest = Math.max(longest, run);
    longestFilled = Math.max(longestFilled, filled);
    days.push(one.day);
    last = one.day;
  }
  return { days, longest, longestFilled, daysFilled, running: run };
}

/** The first day on which so many days would be full, if every day from the last logged one on were at heat. */
export function earliestFull(
  { days, longest, running }: HeatRun,
  { days: want, run }: Door,
  lastLogged_day: Day | undefined,
): Day | undefined {
  if (lastLogged_day === undefined) return undefined;
  const have = run === 'apart' || run === 'unsaid' ? days.length : running;
  return longest >= want ? lastLogged_day : daysAfter(lastLogged_day, Math.max(0, want - have));
}
