import { epoch_ms } from '@loamwright/daybook';
import type { Saying } from '@loamwright/words';
import { say } from './saying.ts';

const MS_PER_DAY = 86_400_000;

/** Days from one instant to another; parts of a day count. Below 0 where the second is the earlier. */
export function daysFrom(earlier: string, later: string): number {
  return (epoch_ms(later) - epoch_ms(earlier)) / MS_PER_DAY;
}

/** "today", "3 days ago". What lies in the future counts as today. */
export function ago(instant: string, now: string): Saying {
  return say('advisor.days-ago', { days: wholeDays(daysFrom(instant, now)) });
}

/** "less than a day", "3 days". */
export function lasting(days: number): Saying {
  return say('advisor.days', { days: wholeDays(days) });
}

function wholeDays(days: number): number {
  return Math.max(0, Math.floor(days));
}
