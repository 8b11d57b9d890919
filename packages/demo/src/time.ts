import { Temporal } from 'temporal-polyfill';

/** Where Quarry Lane lies, as far as its clocks go. */
export const zone = 'America/New_York';

/** A day of the year told, and what the calendar says of it. */
export interface Day {
  /** 0 on the first day. */
  readonly number: number;
  /** 1 to 12. */
  readonly month: number;
  readonly dayOfMonth: number;
  /** 1 to 366. */
  readonly dayOfYear: number;
}

/**
 * A day some days after the first.
 * @throws RangeError when the first is no calendar date such as `2025-11-01`.
 */
export function dayFrom(startDay: string, number: number): Day {
  const date = Temporal.PlainDate.from(startDay).add({ days: number });
  return { number, month: date.month, dayOfMonth: date.day, dayOfYear: date.dayOfYear };
}

/** The instant of a time of day in the garden; minutes may pass 59, and hours 23. */
export function instantAt(startDay: string, day: number, minutes: number): string {
  return Temporal.PlainDate.from(startDay)
    .add({ days: day })
    .toZonedDateTime({ timeZone: zone, plainTime: '00:00' })
    .add({ minutes })
    .toInstant()
    .toString({ smallestUnit: 'millisecond' });
}

/** Milliseconds since 1970 of an instant. */
export function sinceEpoch_ms(instant: string): number {
  return Temporal.Instant.from(instant).epochMilliseconds;
}
