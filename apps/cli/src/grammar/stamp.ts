import type { Day } from '@loamwright/science';
import { Temporal } from 'temporal-polyfill';
import type { WhenRead } from './when.ts';

/** Which of the two numbers before the year is the day, where both could be: 3/4/2026. */
export const dateOrders = ['dmy', 'mdy'] as const;
export type DateOrder = (typeof dateOrders)[number];

/** When a row of a table happened, and on which day in the garden. */
export interface Stamp extends WhenRead {
  readonly day: Day;
}

interface Reading {
  readonly order: DateOrder | undefined;
  /** Of the garden, or an offset that the table says. */
  readonly zone: string;
  /** The garden's own zone, in which its days begin. */
  readonly garden: string;
}

const yearFirst = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?!\d)/u;
const yearLast = /^(\d{1,2})([-/.])(\d{1,2})\2(\d{4}|\d{2})(?!\d)/u;
const dayMonth = /^(\d{1,2})[ -]([a-z]{3,9})\.?[ ,-]+(\d{4}|\d{2})(?!\d)/u;
const monthDay = /^([a-z]{3,9})\.? (\d{1,2}),? (\d{4})(?!\d)/u;
const clock = /^(\d{1,2}):(\d{2})(?::(\d{2})(?:[.,]\d{1,9})?)?(?: ?([ap])\.?m\.?)?(?: ?(z|utc|[+-]\d{2}:?\d{2}))?$/u;
const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
/** Outside of it a year is a slip, or a clock that was never set. */
const [FIRST_YEAR, LAST_YEAR] = [1990, 2100];
const CENTURY = 2000;
const NOON = Temporal.PlainTime.from('12:00');

/** Which order a date shows by itself; `either` where both numbers may be a month; undefined where there is no such doubt. */
export function orderShown(text: string): DateOrder | 'either' | undefined {
  const match = yearLast.exec(plain(text));
  if (match === null || match[2] === '.') return undefined;
  const [first, second] = [Number(match[1]), Number(match[3])];
  if (first > months.length) return 'dmy';
  return second > months.length ? 'mdy' : first === second ? undefined : 'either';
}

/**
 * A day with or without its time: `2026-03-01`, `2026-03-01T18:00Z`, `1/3/2026 6:00 pm` in the order that is given, `1.3.26` with the day
 * first, `1 Mar 2026`. A day alone is put at noon. Undefined for what can't be read or is in no calendar.
 */
export function readStamp(text: string, { order, zone, garden }: Reading): Stamp | undefined {
  const asked = plain(text);
  const read = dateIn(asked, order);
  if (read === undefined || read.year < FIRST_YEAR || read.year > LAST_YEAR) return undefined;
  const rest = asked.slice(read.length).replace(/^(?:t|,)?\s*/u, '');
  try {
    const { year, month, day } = read;
    const date = Temporal.PlainDate.from({ year, month, day }, { overflow: 'reject' });
    if (rest === '') return stampOf(date.toZonedDateTime({ timeZone: garden, plainTime: NOON }), 'day', garden);
    const time = timeIn(rest);
    if (time === undefined) return undefined;
    const moment = date.toZonedDateTime({ timeZone: time.zone ?? zone, plainTime: time.plain });
    return stampOf(moment, 'minute', garden);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return undefined;
  }
}

function plain(text: string): string {
  return text.normalize('NFC').trim().toLowerCase().replace(/\s+/gu, ' ').slice(0, 60);
}

function stampOf(moment: Temporal.ZonedDateTime, precision: Stamp['precision'], garden: string): Stamp {
  return {
    happened: moment.toInstant().toString({ fractionalSecondDigits: 3 }),
    precision,
    day: moment.withTimeZone(garden).toPlainDate().toString(),
  };
}

interface DateRead {
  readonly year: number;
  readonly month: number;
  readonly day: number;
  /** How much of the text it took. */
  readonly length: number;
}

function dateIn(asked: string, order: DateOrder | undefined): DateRead | undefined {
  const iso = yearFirst.exec(asked);
  if (iso !== null) return dated(iso, [1, 2, 3]);
  const last = yearLast.exec(asked);
  if (last !== null) {
    const dayFirst = last[2] === '.' || Number(last[1]) === Number(last[3]) || order === 'dmy';
    if (!dayFirst && order === undefined) return undefined;
    return dated(last, dayFirst ? [4, 3, 1] : [4, 1, 3]);
  }
  const named = dayMonth.exec(asked);
  if (named !== null) return dated(named, [3, 2, 1]);
  const american = monthDay.exec(asked);
  return american === null ? undefined : dated(american, [3, 1, 2]);
}

function dated(match: RegExpExecArray, [y, m, d]: readonly [number, number, number]): DateRead {
  const year = match[y] ?? '';
  const month = match[m] ?? '';
  return {
    year: year.length === 2 ? CENTURY + Number(year) : Number(year),
    month: /\d/u.test(month) ? Number(month) : months.indexOf(month.slice(0, 3)) + 1,
    day: Number(match[d]),
    length: match[0].length,
  };
}

function timeIn(text: string): { readonly plain: Temporal.PlainTime; readonly zone: string | undefined } | undefined {
  const match = clock.exec(text);
  if (match === null) return undefined;
  const [, hourText = '', minute, second = '0', half, offset] = match;
  const hour = Number(hourText);
  if (half !== undefined && (hour < 1 || hour > 12)) return undefined;
  const of24 = half === undefined ? hour : (hour % 12) + (half === 'p' ? 12 : 0);
  const time = { hour: of24, minute: Number(minute), second: Number(second) };
  return { plain: Temporal.PlainTime.from(time, { overflow: 'reject' }), zone: offset && zoneOf(offset) };
}

/** `z`, `utc` or `+0100` as the calendar's library takes it. */
export function zoneOf(offset: string): string {
  if (!/\d/u.test(offset)) return 'UTC';
  const [, sign = '+', hours = '0', minutes = '00'] = /^([+-])(\d{1,2}):?(\d{2})?$/u.exec(offset) ?? [];
  return `${sign}${hours.padStart(2, '0')}:${minutes}`;
}
