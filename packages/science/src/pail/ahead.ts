import { z } from 'zod';
import { good, type Outcome } from '../catalogue/index.ts';
import { type Estimate, estimateSchema, summarise } from '../estimate/index.ts';
import { countInMeasure, type OwnSizes } from '../material/index.ts';
import { likelyDraws } from '../mix/ingredient.ts';
import type { Portion } from '../mix/portion.ts';
import type { DryOption } from './cover.ts';
import { type Dry, FINE_COUNT, LARGE_MEASURE } from './dry.ts';
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
    const volume_m3 = times(better.volume_m3, pails);
    const stored = amount !== undefined && 'measure' in amount ? amount.measure : LARGE_MEASURE;
    const large = counted(volume_m3, stored, ownSizes);
    if (!large.ok) return large;
    const isMuch = large.value.p50 >= FINE_COUNT;
    const count = isMuch ? large : counted(volume_m3, measure, ownSizes);
    if (!count.ok) return count;
    dry.push({ material, wet_kg: times(better.wet_kg, pails), measure: isMuch ? stored : measure, count: count.value });
  }
  return good({ pails, pail_kg: times(summarise(pail.map(({ wet_kg }) => wet_kg)), pails), dry });
}

function times({ p10, p50, p90 }: Estimate, by: number): Estimate {
  return { p10: by * p10, p50: by * p50, p90: by * p90 };
}

function counted(volume_m3: Estimate, measure: string, ownSizes: OwnSizes | undefined): Outcome<Estimate> {
  const perM3 = countInMeasure(Float64Array.of(1), measure, { draws: likelyDraws, ownSizes, path: measure });
  return perM3.ok ? good(times(volume_m3, perM3.value[0] ?? Number.NaN)) : perM3;
}
