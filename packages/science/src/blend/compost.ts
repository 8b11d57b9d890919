import { z } from 'zod';
import type { CautionId } from '../caution/index.ts';
import { type LimitRow, type Rating, ratings } from '../curing/maturity-parameters.ts';
import { limitOf, ratingOf, worstOf } from '../curing/rating.ts';
import {
  fromPublished,
  isEstimate,
  likely,
  positive,
  positiveQuantity,
  type Quantity,
  withSpread,
} from '../estimate/index.ts';
import { blendParameters, type MethodId, methodIds, rowOf } from './parameters.ts';

export const smellIds = ['earthy', 'ammonia', 'sour'] as const;
export const madeOfIds = ['plants', 'manure-or-salty', 'unknown'] as const;

/** What a grower knows of their compost; all of it may be left out. */
export interface CompostKnown {
  /** Months since it was last fed or hot. */
  readonly age_months?: Quantity | undefined;
  /** Rise above the room in the self-heating (Dewar) test, K. */
  readonly selfHeating_K?: number | undefined;
  /** Cress, radish or bean seedlings that came up well, percent of those in a proven mix beside it. */
  readonly emergence_pctOfControl?: number | undefined;
  readonly smell?: (typeof smellIds)[number] | undefined;
  readonly conductivity?: { readonly value_dSPerM: Quantity; readonly method: MethodId } | undefined;
  readonly madeOf?: (typeof madeOfIds)[number] | undefined;
  /** Whether its heat was logged to a rule for safety. */
  readonly provenHot?: boolean | undefined;
}

const MOST_MONTHS = 600;
/** Sea water has about 50 dS/m: more is a slip of the finger or of the unit. */
const MOST_CONDUCTIVITY_DS_PER_M = 60;

/** A quantity no part of which is above a bound. */
function atMost(schema: z.ZodType<Quantity>, most: number): z.ZodType<Quantity> {
  const wanted = `≤ ${most}`;
  return schema.superRefine((quantity, context) => {
    const largest = isEstimate(quantity) ? quantity.p90 : quantity;
    if (largest > most) context.addIssue({ code: 'custom', message: wanted, params: { wanted } });
  });
}

export const compostSchema: z.ZodType<CompostKnown> = z.strictObject({
  age_months: atMost(positiveQuantity('Months since it was last fed or hot.'), MOST_MONTHS).optional(),
  selfHeating_K: z.number().min(0).max(70).optional().meta({ description: 'Rise in the self-heating test, K.' }),
  emergence_pctOfControl: z
    .number()
    .min(0)
    .max(200)
    .optional()
    .meta({ description: 'Seedlings that came up well, % of those in a proven mix beside it.' }),
  smell: z.enum(smellIds).optional(),
  conductivity: z
    .strictObject({
      value_dSPerM: atMost(positiveQuantity('Electrical conductivity, dS/m.'), MOST_CONDUCTIVITY_DS_PER_M),
      method: z.enum(methodIds),
    })
    .optional(),
  madeOf: z.enum(madeOfIds).optional(),
  provenHot: z.boolean().optional(),
});

/**
 * A reading of one method as that of a saturated extract, along straight lines between the published equivalents
 * (`reference/blends.json`, conductivityMethods); beyond them the last line goes on.
 */
export function asSaturated_dSPerM(value_dSPerM: number, method: MethodId): number {
  const { reads, saturated_dSPerM } = rowOf(blendParameters.conductivityMethods, method);
  const last = reads.length - 1;
  const above = reads.findIndex((read) => read >= value_dSPerM);
  const i = above < 1 ? (above === 0 ? 1 : last) : above;
  const [x0 = 0, x1 = 1] = [reads[i - 1], reads[i]];
  const [y0 = 0, y1 = 1] = [saturated_dSPerM[i - 1], saturated_dSPerM[i]];
  return y0 + ((y1 - y0) * (value_dSPerM - x0)) / (x1 - x0);
}

/** Salts of the compost as of a saturated extract: measured, or what such compost usually has. */
export function compostConductivity_dSPerM({ conductivity, madeOf }: CompostKnown): Quantity {
  if (conductivity !== undefined) {
    const { value_dSPerM, method } = conductivity;
    const saturated = (value: number): number => asSaturated_dSPerM(value, method);
    if (isEstimate(value_dSPerM)) {
      const { p10, p50, p90 } = value_dSPerM;
      return { p10: saturated(p10), p50: saturated(p50), p90: saturated(p90) };
    }
    if (value_dSPerM === 0) return 0;
    return withSpread(saturated(value_dSPerM), blendParameters.conductivitySpread_onLine.value, positive);
  }
  const known = madeOf === undefined || madeOf === 'unknown' ? undefined : rowOf(blendParameters.madeOf, madeOf);
  return fromPublished((known ?? rowOf(blendParameters.parts, 'compost')).conductivity_dSPerM, positive);
}

/** One sign of ripeness and what it says. */
export interface MaturitySign {
  readonly sign: 'self-heating' | 'seedlings' | 'smell' | 'age';
  readonly says: Rating;
}

const heatingLimit = limitOf('california-flask');
const seedlingLimit = limitOf('california-seedlings');

/** The limits that a grower's own tests are held against. */
export const homeLimits: readonly LimitRow[] = [heatingLimit, seedlingLimit];

/**
 * What each sign says. A smell of earth and a young age say nothing for or against; a year of rest says mature.
 * Source: California Compost Quality Council 2001; the worst rating counts.
 */
export function maturitySigns(compost: CompostKnown): readonly MaturitySign[] {
  const { age_months: age } = blendParameters.maturity;
  const signs: MaturitySign[] = [];
  const { selfHeating_K, emergence_pctOfControl, smell, age_months } = compost;
  if (selfHeating_K !== undefined) {
    signs.push({ sign: 'self-heating', says: ratingOf(heatingLimit, selfHeating_K) });
  }
  if (emergence_pctOfControl !== undefined) {
    signs.push({ sign: 'seedlings', says: ratingOf(seedlingLimit, emergence_pctOfControl) });
  }
  if (smell === 'ammonia' || smell === 'sour') signs.push({ sign: 'smell', says: 'immature' });
  if (age_months !== undefined && likely(age_months) >= age.matureFrom) signs.push({ sign: 'age', says: 'mature' });
  return signs;
}

/** How the compost stands to what it is wanted for. */
export const ripenessIds = ['ready', 'for-bigger-plants', 'young', 'unknown'] as const;
export type Ripeness = (typeof ripenessIds)[number];

export function ripenessFor(signs: readonly MaturitySign[], needs: Rating): Ripeness {
  const worst = worstOf(signs.map(({ says }) => says));
  if (worst === undefined) return 'unknown';
  if (worst === 'immature') return 'young';
  return ratings.indexOf(worst) <= ratings.indexOf(needs) ? 'ready' : 'for-bigger-plants';
}

/** What to mind with compost in the hands; manure in it counts as raw until its heat is proven. */
export function compostCautions({ madeOf, provenHot }: CompostKnown): readonly CautionId[] {
  const doubtful = madeOf !== 'plants';
  return [
    'legionella',
    'dust-spores',
    ...(doubtful && provenHot !== true ? (['manure-pathogens'] as const) : []),
    ...(doubtful ? (['herbicide-carryover'] as const) : []),
  ];
}
