import { Temporal } from 'temporal-polyfill';

const form = /^(\d{4})-(\d{2})-(\d{2})T([01]\d|2[0-3]):([0-5]\d):([0-5]\d)\.(\d{3})Z$/u;

const MS_PER_DAY = 86_400_000;
const MONTH_DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

function daysInMonth(year: number, month: number): number {
  const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  return month === 2 && leap ? 29 : (MONTH_DAYS[month - 1] ?? 0);
}

/**
 * Days from 1970-01-01 to a date of the Gregorian calendar, years 0 to 9999.
 * Counted in years that begin in March, so that the leap day is the last of its year.
 */
function dayNumber(year: number, month: number, day: number): number {
  const y = month > 2 ? year : year - 1;
  const dayOfYear = Math.floor((153 * ((month + 9) % 12) + 2) / 5) + day - 1;
  return y * 365 + Math.floor(y / 4) - Math.floor(y / 100) + Math.floor(y / 400) + dayOfYear - 719_468;
}

/**
 * Whether a text is an instant as the daybook writes it: UTC with three decimals and a real
 * date, `2026-03-01T07:30:00.000Z`. In this form the order as text is the order in time.
 */
export function isInstant(text: string): boolean {
  const match = form.exec(text);
  if (match === null) return false;
  const [, year, month, day] = match.map(Number);
  if (year === undefined || month === undefined || day === undefined) return false;
  return day >= 1 && day <= daysInMonth(year, month);
}

/**
 * Milliseconds from 1970-01-01T00:00:00Z to an instant of the daybook.
 * @throws RangeError when the text is no such instant: that was to be checked at the edge.
 */
export function epoch_ms(instant: string): number {
  if (!isInstant(instant)) throw new RangeError(`not an instant of the daybook: ${instant}`);
  const part = (from: number, to: number): number => Number(instant.slice(from, to));
  const seconds = (part(11, 13) * 60 + part(14, 16)) * 60 + part(17, 19);
  return dayNumber(part(0, 4), part(5, 7), part(8, 10)) * MS_PER_DAY + seconds * 1000 + part(20, 23);
}

/** Whether this machine knows the IANA zone. An older machine may not know a newer zone. */
export function isZone(zone: string): boolean {
  return localDate('2000-01-01T00:00:00.000Z', zone) !== undefined;
}

/**
 * The calendar date (`2026-03-01`) in a zone at an instant: what "that day" means in the garden.
 * Undefined when this machine doesn't know the zone.
 */
export function localDate(instant: string, zone: string): string | undefined {
  try {
    return Temporal.Instant.from(instant).toZonedDateTimeISO(zone).toPlainDate().toString();
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

/** Whole calendar days from one date to another (`2026-03-01`), as the waits before a harvest are counted. */
export function daysBetween(from: string, to: string): number {
  return Temporal.PlainDate.from(from).until(Temporal.PlainDate.from(to), { largestUnit: 'day' }).days;
}
