import type { Precision } from '@loamwright/daybook';

/** When something happened, as a person means it. */
export interface Happened {
  /** UTC instant with three decimals. */
  readonly instant: string;
  readonly precision: Precision;
}

/** The device's clock, as the daybook writes instants. */
export function now(): string {
  return new Date().toISOString();
}

/** IANA zone of the device: the garden's, as far as it can know. */
export function zone(): string {
  return new Intl.DateTimeFormat().resolvedOptions().timeZone;
}

/** The value a field for date and time takes: local, to the minute. */
export function localMinute(instant: string): string {
  const date = new Date(instant);
  const two = (value: number): string => String(value).padStart(2, '0');
  const day = `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
  return `${day}T${two(date.getHours())}:${two(date.getMinutes())}`;
}

/** The instant of a local date and time as a field gives it; null when it is none. */
export function instantOf(local: string): string | null {
  const date = new Date(local);
  return Number.isNaN(date.getTime()) ? null : date.toISOString();
}

/** A time of day, so many days ago, in the device's zone. */
function daysAgoAt(daysAgo: number, hour: number): string {
  const date = new Date();
  date.setDate(date.getDate() - daysAgo);
  date.setHours(hour, 0, 0, 0);
  return date.toISOString();
}

const HOURS = { morning: 8, noon: 12, evening: 19 } as const;

/** When something happened, as it was chosen: "now" is the moment it is written down, not the moment it was chosen. */
export type When = Happened | 'now';

export function resolved(when: When): Happened {
  return when === 'now' ? { instant: now(), precision: 'minute' } : when;
}

/** The ways of saying when, that a person is offered. */
export type WhenWord = 'now' | 'this-morning' | 'yesterday' | 'yesterday-evening' | 'other';

/** What the word means today; null for a time that has to be picked. Nothing has happened in the future. */
export function meant(word: WhenWord): When | null {
  switch (word) {
    case 'now':
      return 'now';
    case 'this-morning':
      return { instant: [daysAgoAt(0, HOURS.morning), now()].sort()[0] ?? now(), precision: 'hour' };
    case 'yesterday':
      return { instant: daysAgoAt(1, HOURS.noon), precision: 'day' };
    case 'yesterday-evening':
      return { instant: daysAgoAt(1, HOURS.evening), precision: 'hour' };
    case 'other':
      return null;
  }
}
