import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { check } from '../catalogue/index.ts';
import { daySchema, daysAfter, daysBetween } from './day.ts';

/** Day number of a Gregorian date: Fliegel H. F., Van Flandern T. C. 1968, Communications of the ACM 11:657; recalled. */
function julianDay(day: string): number {
  const [year = 0, month = 0, date = 0] = day.split('-').map(Number);
  const a = Math.trunc((month - 14) / 12);
  return (
    Math.trunc((1461 * (year + 4800 + a)) / 4) +
    Math.trunc((367 * (month - 2 - 12 * a)) / 12) -
    Math.trunc((3 * Math.trunc((year + 4900 + a) / 100)) / 4) +
    date -
    32_075
  );
}

const days = fc.integer({ min: 0, max: 105_000 }).map((number) => daysAfter('1905-01-01', number));

describe('days of the calendar', () => {
  it('are apart by the difference of their day numbers', () => {
    expect(julianDay('2000-01-01')).toBe(2_451_545);
    fc.assert(
      fc.property(days, days, (one, other) => {
        expect(daysBetween(one, other)).toBe(julianDay(other) - julianDay(one));
        expect(daysAfter(one, daysBetween(one, other))).toBe(other);
      }),
    );
  });

  it.each(['2026-02-29', '1899-12-31', '2200-01-01', '2026-3-1', '', '01.03.2026', '2026-03-01T10:00:00Z'])(
    'refuses %s',
    (text) => {
      expect(check(daySchema, text).ok).toBe(false);
    },
  );
});
