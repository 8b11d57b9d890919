import type { Speaker } from '@loamwright/words';

const DAY_MS = 86_400_000;

/** Midnight of the day an instant falls on, here. */
function dayOf(instant: string): number {
  return new Date(instant).setHours(0, 0, 0, 0);
}

/** Whole days from one day to another, by the calendar of the device. */
function daysApart(from: string, to: string): number {
  return Math.round((dayOf(to) - dayOf(from)) / DAY_MS);
}

/** "3 October", and the year where it is another one. */
export function sayDate(speaker: Speaker, instant: string): string {
  const date = new Date(instant);
  const sameYear = date.getFullYear() === new Date().getFullYear();
  return new Intl.DateTimeFormat(dateLocale(speaker), {
    day: 'numeric',
    month: 'long',
    ...(sameYear ? {} : { year: 'numeric' }),
  }).format(date);
}

/** "Tuesday 25 November 2025": the heading of a day in the daybook. */
export function sayDay(speaker: Speaker, instant: string): string {
  return new Intl.DateTimeFormat(dateLocale(speaker), {
    weekday: 'long',
    day: 'numeric',
    month: 'long',
    year: 'numeric',
  }).format(new Date(instant));
}

/** "3 Oct": under a picture. */
export function sayShortDay(speaker: Speaker, at_ms: number): string {
  return new Intl.DateTimeFormat(dateLocale(speaker), { day: 'numeric', month: 'short' }).format(at_ms);
}

/** "14:05". */
export function sayTime(speaker: Speaker, instant: string): string {
  return new Intl.DateTimeFormat(dateLocale(speaker), { hour: 'numeric', minute: '2-digit' }).format(new Date(instant));
}

/** "today", "yesterday", "4 days ago", or the date when it is long ago. */
export function sayAgo(speaker: Speaker, instant: string): string {
  const days = daysApart(instant, new Date().toISOString());
  if (days > 13 || days < 0) return speaker.say('app.date.on', { date: sayDate(speaker, instant) });
  return new Intl.RelativeTimeFormat(speaker.locale, { numeric: 'auto' }).format(-days, 'day');
}

/** The words are English; how a date is written goes by the reader's own country. */
function dateLocale(speaker: Speaker): string {
  return navigator.languages.find((language) => language.startsWith(speaker.locale)) ?? speaker.locale;
}
