import { z } from 'zod';
import { daysBetween } from '../calendar/index.ts';
import { type Citation, cited } from '../catalogue/index.ts';
import { likely } from '../estimate/index.ts';
import type { WormLog } from './log.ts';
import { sanitationParameters } from './parameters.ts';
import { type Verdict, verdictIds } from './verdict.ts';

/** A worm bed by the months that a task force named in 2002; guidance since then only asks for a finished product. */
export interface WormVerdict extends Citation {
  readonly verdict: Verdict;
  readonly have_days: number;
  readonly want_days: number;
  readonly moistureWithin?: boolean | undefined;
  readonly fedOftenEnough?: boolean | undefined;
}

export const wormVerdictSchema: z.ZodType<WormVerdict> = z.strictObject({
  verdict: z.enum(verdictIds),
  have_days: z.number().min(0),
  want_days: z.number().min(0),
  moistureWithin: z.boolean().optional(),
  fedOftenEnough: z.boolean().optional(),
  source: z.string(),
  place: z.string(),
  mark: z.enum(['seen', 'memory', 'derived']),
});

/** The verdict of the months, the moisture and the feeding. */
export function wormVerdict({ kind, from_day, to_day, moisture_pctWet, fedEvery_days }: WormLog): WormVerdict {
  const { worms } = sanitationParameters;
  const want_days = worms.kinds.find(({ id }) => id === kind)?.days ?? Number.NaN;
  const have_days = daysBetween(from_day, to_day);
  const { low_pctWet, high_pctWet } = worms.moisture;
  const moistureWithin =
    moisture_pctWet === undefined
      ? undefined
      : likely(moisture_pctWet) >= low_pctWet && likely(moisture_pctWet) <= high_pctWet;
  const fedOftenEnough = fedEvery_days === undefined ? undefined : fedEvery_days <= worms.feedEvery_days.most;
  return {
    verdict: verdictOf(have_days >= want_days, moistureWithin, fedOftenEnough),
    have_days,
    want_days,
    ...(moistureWithin !== undefined && { moistureWithin }),
    ...(fedOftenEnough !== undefined && { fedOftenEnough }),
    ...cited(worms),
  };
}

function verdictOf(...held: readonly (boolean | undefined)[]): Verdict {
  if (held.includes(false)) return 'not-yet';
  return held.includes(undefined) ? 'cannot-be-shown' : 'met';
}
