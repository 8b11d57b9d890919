import type { Day } from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import { say, sayOf } from './saying.ts';

/** A day as a person writes it: "29 June 2026". */
export function dayWords(day: Day): Saying {
  const [year = '', month = '', date = ''] = day.split('-');
  return say('day.told', { date: Number(date), month: sayOf('day.month', month), year });
}
