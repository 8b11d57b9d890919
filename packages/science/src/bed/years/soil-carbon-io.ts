import { z } from 'zod';
import { type CautionId, cautionIds } from '../../caution/index.ts';
import {
  between,
  type Chance,
  chanceSchema,
  type Estimate,
  estimateSchema,
  percentQuantity,
  type Quantity,
} from '../../estimate/index.ts';
import type { OwnSizes } from '../../material/index.ts';
import { ownSizesSchema } from '../../mix/ingredient.ts';
import { bedBounds } from '../slips.ts';
import { carbonParameters, type SoilTextureId, soilTextureIds } from './carbon-parameters.ts';
import { type CarbonWay, carbonWays } from './way.ts';
import { planSchema, type Yearly } from './yearly-plan.ts';

export interface SoilCarbonInput {
  readonly area_m2: number;
  readonly plan: readonly Yearly[];
  /** Of the soil looked at: 0.25 unless it was said. */
  readonly depth_m?: number | undefined;
  readonly texture?: SoilTextureId | undefined;
  /** At the start; left out, nobody tested. */
  readonly organicMatter_pctDry?: Quantity | undefined;
  /** Mean air of the year. */
  readonly year_degC?: number | undefined;
  /** False where nothing grows: then no roots and stubble feed the soil. */
  readonly cropped?: boolean | undefined;
  readonly years?: number | undefined;
  readonly ownSizes?: OwnSizes | undefined;
}

export const carbonNotes = [
  'not-tested',
  'texture-guessed',
  'climate-guessed',
  'charcoal',
  'compost-not-in-trial',
  'beyond-water',
  'peaty',
] as const;
export type CarbonNote = (typeof carbonNotes)[number];

export interface CarbonYear {
  readonly year: number;
  readonly organicMatter_pctDry: Estimate;
  /** Had nothing been brought on. */
  readonly without_pctDry: Estimate;
  /** Water that plants can draw on in the depth looked at; a millimetre is a litre on each square metre. */
  readonly available_mm: Estimate;
}

export interface SoilCarbon {
  readonly way: CarbonWay;
  readonly years: readonly CarbonYear[];
  readonly start_pctDry: Estimate;
  readonly end_pctDry: Estimate;
  /** At the end, beside the same bed with nothing brought on. */
  readonly gain_pctDry: Estimate;
  /** Higher at the end than at the start. */
  readonly rises: Chance;
  /** Carbon brought on in all years, and what of it is still there. */
  readonly brought_kg: Estimate;
  readonly kept_kg: Estimate;
  readonly rotted_kg: Estimate;
  readonly kept_share?: Estimate | undefined;
  readonly water: {
    /** More than the same bed with nothing brought on, by the equations. */
    readonly gain_mm: Estimate;
    /** The same by a survey of measurements. */
    readonly bySurvey_mm: { readonly low: number; readonly high: number };
  };
  readonly notes: readonly CarbonNote[];
  readonly cautions: readonly CautionId[];
}

const LONGEST_YEARS = 50;
const LEAST_PCT = 0.1;

export const soilCarbonInputSchema: z.ZodType<SoilCarbonInput> = z.strictObject({
  area_m2: z.number().min(bedBounds.area_m2.least).max(bedBounds.area_m2.most),
  plan: planSchema,
  depth_m: z.number().min(0.05).max(1).optional().meta({ description: 'Depth of soil looked at; 0.25 if not said.' }),
  texture: z.enum(soilTextureIds).optional(),
  organicMatter_pctDry: between(
    percentQuantity('Organic matter at the start.'),
    LEAST_PCT,
    carbonParameters.organicSoil_pctDry.value,
  ).optional(),
  year_degC: z.number().min(-10).max(35).optional().meta({ description: 'Mean air of the year.' }),
  cropped: z.boolean().optional().meta({ description: 'Something grows there; true if not said.' }),
  years: z.int().min(1).max(LONGEST_YEARS).optional().meta({ description: 'Years ahead; 20 if not said.' }),
  ownSizes: ownSizesSchema.optional(),
});

export const soilCarbonSchema: z.ZodType<SoilCarbon> = z.strictObject({
  way: z.enum(carbonWays).meta({ description: 'From what the carbon at the start is reckoned.' }),
  years: z.array(
    z.strictObject({
      year: z.int(),
      organicMatter_pctDry: estimateSchema('Organic matter under the plan.'),
      without_pctDry: estimateSchema('Organic matter with nothing brought on.'),
      available_mm: estimateSchema('Water for plants in the depth looked at.'),
    }),
  ),
  start_pctDry: estimateSchema('Organic matter at the start.'),
  end_pctDry: estimateSchema('Organic matter at the end.'),
  gain_pctDry: estimateSchema('More than with nothing brought on.'),
  rises: chanceSchema,
  brought_kg: estimateSchema('Carbon brought on in all years.'),
  kept_kg: estimateSchema('Of that, still in the soil.'),
  rotted_kg: estimateSchema('Of that, gone into the air.'),
  kept_share: estimateSchema('Still there of what was brought on.').optional(),
  water: z.strictObject({
    gain_mm: estimateSchema('Water for plants beyond the bed with nothing brought on, by equations.'),
    bySurvey_mm: z.strictObject({ low: z.number(), high: z.number() }),
  }),
  notes: z.array(z.enum(carbonNotes)),
  cautions: z.array(z.enum(cautionIds as readonly [CautionId, ...CautionId[]])),
});
