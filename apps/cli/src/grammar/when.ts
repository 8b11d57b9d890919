import { isAhead, type Precision } from '@loamwright/daybook';
import { bad, good, type Outcome } from '@loamwright/science';
import { Temporal } from 'temporal-polyfill';
import { toTwelve } from './number.ts';

/** When something happened, as an entry says it. */
export interface WhenRead {
  /** Instant in UTC with three decimals. */
  readonly happened: string;
  readonly precision: Precision;
}

const weekdays = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'];
const dayWords: Readonly<Record<string, number>> = { today: 0, yesterday: 1 };

const isoDay = /^(\d{4}-\d{2}-\d{2})(?:[ t](.+))?$/u;
const spoken: Readonly<Record<string, number>> = {
  a: 1,
  an: 1,
  'a couple of': 2,
  'half a': 1 / 2,
  'half an': 1 / 2,
  ...toTwelve,
};
const span = new RegExp(
  `^(\\d{1,4}|${Object.keys(spoken).join('|')}) (minute|hour|day|week|fortnight|month|year)s?(?: ago(?: (.+))?)?$`,
  'u',
);
const lastSpan = /^last (week|fortnight|month|year)$/u;
const clock = /^(?:at )?(\d{1,2})(?:[:.](\d{2}))? ?(am|pm)?$/u;
const instant = /^\d{4}-\d{2}-\d{2}t\d{2}:\d{2}(?::\d{2}(?:\.\d{1,3})?)?(?:z|[+-]\d{2}:?\d{2})$/u;

/** A day that is known only as a day is put at noon: far from both of its neighbours. */
const NOON = Temporal.PlainTime.from('12:00');

/**
 * Reads when something happened, in the garden's own zone: `now`, `18:00`, `6pm`, `yesterday`, `yesterday 18:00`,
 * `monday 7:30`, `3 days ago`, `2 hours ago`, `3 months ago` (or `3 months`), `half a year ago`, `last week`, `2026-03-01`, `2026-03-01 18:00`, or an instant with its offset. A clock
 * time alone, and a weekday, is the last one that has been.
 *
 * Problem: `when-unreadable`.
 */
export function readWhen(text: string, now: Date, zone: string): Outcome<WhenRead> {
  const here = Temporal.Instant.fromEpochMilliseconds(now.getTime()).toZonedDateTimeISO(zone);
  const asked = text.trim().toLowerCase().replace(/\s+/gu, ' ').slice(0, 60);
  try {
    const read = readAgo(asked, here) ?? readExact(asked) ?? readDay(asked, here) ?? readClock(asked, here);
    if (read !== undefined) return good(read);
  } catch (error) {
    // A date that the calendar does not have, such as 30 February.
    if (!(error instanceof RangeError)) throw error;
  }
  return bad({ code: 'when-unreadable', path: '--when', found: text.slice(0, 60), wanted: '' });
}

/** As {@link readWhen}, for what has happened. Problem besides: `when-ahead`. */
export function readPast(text: string, now: Date, zone: string): Outcome<WhenRead> {
  const read = readWhen(text, now, zone);
  if (!read.ok || !isAhead(read.value.happened, now.toISOString())) return read;
  return bad({ code: 'when-ahead', path: '--when', found: text.slice(0, 60), wanted: '' });
}

function readExact(asked: string): WhenRead | undefined {
  if (!instant.test(asked)) return undefined;
  return { happened: written(Temporal.Instant.from(asked.toUpperCase())), precision: 'minute' };
}

function readAgo(asked: string, here: Temporal.ZonedDateTime): WhenRead | undefined {
  if (asked === 'now' || asked === '') return { happened: written(here.toInstant()), precision: 'minute' };
  const last = lastSpan.exec(asked);
  const match = last === null ? span.exec(asked) : undefined;
  if (match === null) return undefined;
  const [, count = '', unit = '', time] = match ?? ['', 'one', last?.[1]];
  const number = Object.hasOwn(spoken, count) ? (spoken[count] ?? 1) : Number(count);
  if (unit === 'day' && Number.isInteger(number))
    return onDay(here.toPlainDate().subtract({ days: number }), time, here);
  const parts = time === undefined ? partsOf(unit, number) : undefined;
  return parts && past(here.subtract(parts.back), parts.precision);
}

interface Parts {
  readonly back: Temporal.DurationLike;
  readonly precision: Precision;
}

/** A span in whole parts of the calendar. Nobody means a day by "3 months ago": the coarsest precision there is. */
function partsOf(unit: string, number: number): Parts | undefined {
  if (unit === 'hour') return { back: { minutes: number * 60 }, precision: 'hour' };
  if (unit === 'year') return { back: { months: number * 12 }, precision: 'week' };
  if (unit === 'fortnight') return { back: { days: number * 14 }, precision: 'week' };
  if (!Number.isInteger(number)) return undefined;
  if (unit === 'minute') return { back: { minutes: number }, precision: 'minute' };
  if (unit === 'week') return { back: { weeks: number }, precision: 'week' };
  return unit === 'month' ? { back: { months: number }, precision: 'week' } : undefined;
}

function past(moment: Temporal.ZonedDateTime, precision: Precision): WhenRead {
  return { happened: written(moment.toInstant()), precision };
}

function readDay(asked: string, here: Temporal.ZonedDateTime): WhenRead | undefined {
  const iso = isoDay.exec(asked);
  if (iso !== null) return onDay(Temporal.PlainDate.from(iso[1] ?? ''), iso[2], here);
  const [first = '', ...rest] = asked.replace(/^(?:last|on) /u, '').split(' ');
  const time = rest.length === 0 ? undefined : rest.join(' ');
  const back = Object.hasOwn(dayWords, first) ? dayWords[first] : daysBack(first, asked.startsWith('last '), here);
  return back === undefined ? undefined : onDay(here.toPlainDate().subtract({ days: back }), time, here);
}

/** Today counts for its own name, unless "last" stands before it. */
function daysBack(name: string, last: boolean, here: Temporal.ZonedDateTime): number | undefined {
  const index =
    name.length < 3 ? -1 : weekdays.findIndex((weekday) => weekday === name || weekday.slice(0, 3) === name);
  if (index < 0) return undefined;
  const back = (here.dayOfWeek - 1 - index + 7) % 7;
  return last && back === 0 ? 7 : back;
}

function onDay(day: Temporal.PlainDate, time: string | undefined, here: Temporal.ZonedDateTime): WhenRead | undefined {
  if (time === undefined) {
    const noon = day.toZonedDateTime({ timeZone: here.timeZoneId, plainTime: NOON });
    const isToday = day.equals(here.toPlainDate());
    return past(isToday && Temporal.ZonedDateTime.compare(noon, here) > 0 ? here : noon, 'day');
  }
  const plainTime = readTime(time);
  return plainTime === undefined
    ? undefined
    : past(day.toZonedDateTime({ timeZone: here.timeZoneId, plainTime }), 'minute');
}

function readClock(asked: string, here: Temporal.ZonedDateTime): WhenRead | undefined {
  const plainTime = readTime(asked);
  if (plainTime === undefined) return undefined;
  const today = here.toPlainDate().toZonedDateTime({ timeZone: here.timeZoneId, plainTime });
  return past(Temporal.ZonedDateTime.compare(today, here) > 0 ? today.subtract({ days: 1 }) : today, 'minute');
}

function readTime(text: string): Temporal.PlainTime | undefined {
  if (text === 'noon') return NOON;
  const match = clock.exec(text);
  if (match === null) return undefined;
  const [, hourText = '', minuteText, half] = match;
  if (minuteText === undefined && half === undefined) return undefined;
  const hour = Number(hourText);
  if (half !== undefined && (hour < 1 || hour > 12)) return undefined;
  const of24 = half === undefined ? hour : (hour % 12) + (half === 'pm' ? 12 : 0);
  return Temporal.PlainTime.from({ hour: of24, minute: Number(minuteText ?? 0) }, { overflow: 'reject' });
}

function written(moment: Temporal.Instant): string {
  return moment.toString({ fractionalSecondDigits: 3 });
}
