import { z } from 'zod';
import type { Estimate } from './quantity.ts';

/**
 * p10, p50 and p90 of a set of draws, by linear interpolation between order statistics
 * (Hyndman R. J., Fan Y. 1996, The American Statistician 50:361-365, definition 7).
 *
 * @throws RangeError when there is no draw or one is not a number: a model must never hand on NaN.
 */
export function summarise(values: ArrayLike<number>): Estimate {
  const sorted = Float64Array.from(values).sort();
  if (sorted.length === 0 || sorted.some(Number.isNaN)) throw new RangeError('draws must be numbers');
  return { p10: quantile(sorted, 0.1), p50: quantile(sorted, 0.5), p90: quantile(sorted, 0.9) };
}

function quantile(sorted: Float64Array, share: number): number {
  const position = (sorted.length - 1) * share;
  const below = Math.floor(position);
  const low = sorted[below] ?? Number.NaN;
  const high = sorted[Math.min(below + 1, sorted.length - 1)] ?? low;
  return low === high ? low : low + (high - low) * (position - below);
}

/** In how many draws something held. It is told as such, and never as 0 or 100 %. */
export interface Chance {
  readonly met: number;
  readonly of: number;
}

/** Counts the draws in which a condition holds. */
export function chance(values: ArrayLike<number>, holds: (value: number) => boolean): Chance {
  let met = 0;
  for (let i = 0; i < values.length; i++) if (holds(values[i] ?? Number.NaN)) met++;
  return { met, of: values.length };
}

/**
 * A chance as a share that never claims certainty: with none of n draws the share told is 1/(n + 2),
 * with all of them (n + 1)/(n + 2) (Laplace's rule of succession).
 */
export function shareOf(held: Chance): number {
  return (held.met + 1) / (held.of + 2);
}

export const chanceSchema: z.ZodType<Chance> = z
  .strictObject({ met: z.int().min(0), of: z.int().min(1) })
  .meta({ description: 'In how many draws (met) of all draws (of) it held.' });
