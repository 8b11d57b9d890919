import type { Entry } from '../entry/entry.ts';
import { isAfter, type OpenHolding, warn, within_ms } from './open.ts';

/** An hour: what a forgotten change to or from summer time puts a clock out by. */
const CLOCK_SLACK_MS = 3_600_000;

/** Writing up an old notebook is common; half a year late is more often a wrong year. */
const LONG_AFTER_MONTHS = 6;

/**
 * Points out what a wrong clock or a wrong date has left in the entries. It refuses and alters nothing.
 *
 * @param now the time by the reader's clock, to tell what lies in the future; without it that is not asked.
 */
export function readClocks(state: OpenHolding, entries: readonly Entry[], now: string | undefined): void {
  const writtenByDevice = writtenTimes(entries);
  for (const entry of entries) {
    const { id, happened, written, precision, device, n } = entry;
    const before = writtenByDevice.get(device)?.get(n - 1);
    if (before !== undefined && written < before) warn(state, 'clock-went-back', id, before);
    const slack_ms = within_ms[precision] + CLOCK_SLACK_MS;
    if (isAfter(happened, written, slack_ms)) warn(state, 'happened-after-written', id, written);
    if (isMonthsAfter(written, happened, LONG_AFTER_MONTHS)) warn(state, 'written-long-after', id, written);
    if (now === undefined) continue;
    if (isAfter(happened, now, slack_ms) || isAfter(written, now, CLOCK_SLACK_MS))
      warn(state, 'in-the-future', id, now);
  }
}

/** Per device and n when it was written; the earliest, where a device gave out one n twice. */
function writtenTimes(entries: readonly Entry[]): ReadonlyMap<string, ReadonlyMap<number, string>> {
  const byDevice = new Map<string, Map<number, string>>();
  for (const { device, n, written } of entries) {
    const times = byDevice.get(device) ?? new Map<number, string>();
    if (times.size === 0) byDevice.set(device, times);
    const other = times.get(n);
    if (other === undefined || written < other) times.set(n, written);
  }
  return byDevice;
}

function isMonthsAfter(late: string, early: string, months: number): boolean {
  // Most are written in the month in which they happened.
  return late.slice(0, 7) > early.slice(0, 7) && monthOf(late) - monthOf(early) >= months;
}

/** Months since the year 0. */
function monthOf(instant: string): number {
  return Number(instant.slice(0, 4)) * 12 + Number(instant.slice(5, 7));
}
