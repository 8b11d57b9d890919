import { z } from 'zod';
import type { CautionId } from '../caution/index.ts';
import { type Estimate, estimateSchema, summarise } from '../estimate/index.ts';
import { waterToReach_kg } from '../mix/balance.ts';
import { bandTable } from '../mix/bands.ts';
import { type Permitted, permittedShape } from '../mix/ingredient.ts';
import type { WeighedMix } from '../mix/mix-input.ts';
import { mixParameters } from '../mix/parameters.ts';
import { type Portion, portionMoisture_pctWet, poured, scaled, together } from '../mix/portion.ts';
import { type Dry, oneOf, type Wet } from './dry.ts';
import type { PailCoverInput } from './pail-input.ts';
import { pailParameters } from './parameters.ts';
import { type Laid, planFor } from './plan.ts';

/** Dry stuff laid with this pail. */
export interface LaidLine extends Permitted {
  readonly measure: string;
  readonly count: number;
  readonly wet_kg: Estimate;
}

export const laidLineSchema: z.ZodType<LaidLine> = z.strictObject({
  ...permittedShape,
  measure: z.string(),
  count: z.number().positive(),
  wet_kg: estimateSchema('Wet mass, kg.'),
});

/** Dry stuff that is still missing. */
export interface Short {
  readonly material: string;
  readonly measure: string;
  readonly count: number;
}

export const shortSchema: z.ZodType<Short> = z.strictObject({
  material: z.string(),
  measure: z.string(),
  count: z.number().positive(),
});

/** Food is hidden from flies and rats by dry stuff at least half as thick as itself, spread a hand's breadth. */
export function coverFor_m3(pail: WeighedMix): Float64Array {
  const { feedCover_m, handSpread_m } = pailParameters;
  const food = pail.ingredients.filter(({ cautions }) => cautions.includes('rats-flies'));
  return Float64Array.from(
    pail.total,
    (_, i) =>
      (feedCover_m.low / handSpread_m.value) *
      food.reduce((sum, { portions }) => sum + (portions[i]?.volume_m3 ?? 0), 0),
  );
}

/** What is laid, weighed. */
export interface LaidOut {
  readonly lay: readonly LaidLine[];
  readonly short?: Short | undefined;
  readonly water_L: number;
  /** The pail, its dry stuff and its water, draw by draw. */
  readonly fresh: readonly Portion[];
  readonly cautions: readonly CautionId[];
}

/**
 * Lays dry stuff of what is on hand, and waters it where it is likely too dry to rot; frozen or thawing stuff gets no
 * water.
 */
export function layOut(wet: Wet, dries: readonly Dry[], { state = 'working' }: PailCoverInput): LaidOut {
  const { laid, short } = planFor(wet, dries);
  const covered = wet.portions.map((portion, i) =>
    together([portion, ...laid.map(({ dry, count }) => scaled(oneOf(dry, i), count))]),
  );
  const water_L = state === 'working' ? waterFor_L(covered) : 0;
  return {
    lay: laid.map(({ dry, count }) => ({
      ...dry.permitted,
      measure: dry.measure,
      count,
      wet_kg: summarise(dry.ones.map(({ wet_kg }) => count * wet_kg)),
    })),
    ...(short === undefined ? {} : { short: shortOf(short) }),
    water_L,
    fresh: covered.map((portion) => together([portion, poured(water_L)])),
    cautions: laid.flatMap(({ dry }) => dry.cautions),
  };
}

/** Water that brings stuff to the usual moisture in half of the draws, where it is likely drier than is preferred. */
function waterFor_L(portions: readonly Portion[]): number {
  const moisture_pctWet = summarise(portions.map((portion) => portionMoisture_pctWet(portion) ?? 0)).p50;
  const { low } = bandTable.goals.moisture_pctWet.preferred;
  if (low === undefined || moisture_pctWet >= low) return 0;
  const goal_pctWet = mixParameters.goalMoisture_pctWet.value;
  return Math.round(
    Math.max(0, summarise(portions.map(({ wet_kg, dry_kg }) => waterToReach_kg({ wet_kg, dry_kg, goal_pctWet }))).p50),
  );
}

function shortOf({ dry, count }: Laid): Short {
  return { material: dry.stuff.material, measure: dry.measure, count };
}
