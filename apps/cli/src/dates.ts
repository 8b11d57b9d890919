import type { Precision } from '@loamwright/daybook';
import { Temporal } from 'temporal-polyfill';

const precise: Readonly<Record<Precision, Intl.DateTimeFormatOptions>> = {
  minute: { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' },
  hour: { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' },
  day: {},
  week: {},
};

/** An instant as a person of the garden would write it: "12 Nov 2026", with the time where it is known. */
export function tellInstant(instant: string, zone: string, precision: Precision, locale: string): string {
  const options: Intl.DateTimeFormatOptions = {
    day: 'numeric',
    month: 'short',
    year: 'numeric',
    ...precise[precision],
  };
  return new Intl.DateTimeFormat(dayFirst(locale), { ...options, timeZone: knownZone(zone) }).format(new Date(instant));
}

/** "12 Nov". */
export function tellDay(instant: string, zone: string, locale: string): string {
  return new Intl.DateTimeFormat(dayFirst(locale), {
    day: 'numeric',
    month: 'short',
    timeZone: knownZone(zone),
  }).format(new Date(instant));
}

/** English here is written with the day first. */
function dayFirst(locale: string): string {
  return locale === 'en' ? 'en-GB' : locale;
}

/** An entry may come from a zone that this machine does not know yet. */
function knownZone(zone: string): string {
  try {
    Temporal.Now.zonedDateTimeISO(zone);
    return zone;
  } catch {
    return 'UTC';
  }
}
