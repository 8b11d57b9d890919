import { z } from 'zod';
import { good, type Outcome } from '../catalogue/index.ts';
import { type Estimate, estimateSchema, summarise } from '../estimate/index.ts';
import { countInMeasure } from '../material/index.ts';
import { likelyDraws } from '../mix/ingredient.ts';
import type { Portion } from '../mix/portion.ts';
import type { Dry, DryOption } from './cover.ts';
import type { PailCoverInput } from './pail-input.ts';

/** How much of one dry material to keep for the pails to come. */
export interface DryAhead {
  readonly material: string;
  readonly wet_kg: Estimate;
  /** As it is stored. */
  readonly measure: string;
  readonly count: Estimate;
}

/** Dry stuff for the pails to come; any one of it will do. */
export interface Ahead {
  readonly pails: number;
  readonly pail_kg: Estimate;
  readonly dry: readonly DryAhead[];
}

export const aheadSchema: z.ZodType<Ahead> = z.strictObject({
  pails: z.number().min(0),
  pail_kg: estimateSchema('Wet mass of the pails to come, kg.'),
  dry: z.array(
    z.strictObject({
      material: z.string(),
      wet_kg: estimateSchema('Wet mass, kg.'),
      measure: z.string(),
      count: estimateSchema('In the measure.'),
    }),
  ),
});

/** Dry stuff for the pails to come, counted as it is stored. */
export function aheadOf(
  options: readonly DryOption[],
  dries: readonly Dry[],
  pail: readonly Portion[],
  { ahead, ownSizes }: PailCoverInput,
): Outcome<Ahead | undefined> {
  if (ahead === undefined) return good(undefined);
  const pails = ahead.pails_perWeek * ahead.weeks;
  const dry: DryAhead[] = [];
  for (const { material, better, measure } of options) {
    const amount = dries.find(({ stuff }) => stuff.material === material)?.stuff.amount;
    const stored = amount !== undefined && 'measure' in amount ? amount.measure : measure;
    const perM3 = countInMeasure(Float64Array.of(1), stored, { draws: likelyDraws, ownSizes, path: 'dry' });
    if (!perM3.ok) return perM3;
    const count = times(better.volume_m3, pails * (perM3.value[0] ?? Number.NaN));
    dry.push({ material, wet_kg: times(better.wet_kg, pails), measure: stored, count });
  }
  return good({ pails, pail_kg: times(summarise(pail.map(({ wet_kg }) => wet_kg)), pails), dry });
}

function times({ p10, p50, p90 }: Estimate, by: number): Estimate {
  return { p10: by * p10, p50: by * p50, p90: by * p90 };
}
