import { daysAfter } from '../calendar/index.ts';
import type { SanitationLog } from './log.ts';

/** The day before day 1 of the logs of the check cases. */
const DAY_0 = '2026-02-28';

/** A log from readings in °F, day 1 first, as the check cases print them; `T` after a reading says that it was turned that day. */
export function logOf(fahrenheit: string, more: Partial<SanitationLog> = {}): SanitationLog {
  const days = fahrenheit.split(' ');
  return {
    method: 'turned',
    animalMatter: true,
    carbonToNitrogen: 30,
    begun_day: DAY_0,
    readings: days.map((one, i) => ({
      day: daysAfter(DAY_0, i + 1),
      temp_degC: ((Number.parseFloat(one) - 32) * 5) / 9,
    })),
    turned: days.flatMap((one, i) => (one.endsWith('T') ? [daysAfter(DAY_0, i + 1)] : [])),
    ...more,
  };
}

/** Day so many of a log. */
export function dayOf(number: number): string {
  return daysAfter(DAY_0, number);
}

export const S1 = '90 128 140 146 150T 142 148 151T 144 149 152T 139 145 147T 136 140 142T 133 128 118';
