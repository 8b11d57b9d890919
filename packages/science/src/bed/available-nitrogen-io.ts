import { z } from 'zod';
import { type CautionId, cautionIds } from '../caution/index.ts';
import { type Estimate, estimateSchema, fractionQuantity, freeQuantity, type Quantity } from '../estimate/index.ts';
import { type Amount, amountSchema, type OwnSizes } from '../material/index.ts';
import { ownSizesSchema, type Stuffed, stuffedShape } from '../mix/ingredient.ts';
import { type BasisId, basisIds, type KindId, kindIds, type WeatherId, weatherIds } from './release.ts';

/** Something put on a bed: what, how much, and how it was worked in. */
export interface Dressing extends Stuffed {
  readonly amount: Amount;
  /** How its nitrogen comes free, where that is not as of the material. */
  readonly kind?: KindId | undefined;
  /** Of its nitrogen, what is ammonium or nitrate. */
  readonly mineral_shareOfNitrogen?: Quantity | undefined;
  /** Dug in unless it was said. */
  readonly placed?: 'dug-in' | 'mulched' | undefined;
  /** Days until it was worked in: within the first unless it was said. */
  readonly workedInAfter_days?: number | undefined;
  readonly weather?: WeatherId | undefined;
}

/** The soil's warmth over the growing season. */
export interface Warmth {
  readonly soil_degC: Quantity;
  readonly season_days: number;
}

export interface AvailableNitrogenInput extends Dressing {
  readonly warmth?: Warmth | undefined;
  readonly ownSizes?: OwnSizes | undefined;
}

/** One published series, as it reads for this dressing: likely low and high. */
export interface BySource {
  readonly id: string;
  readonly basis: BasisId;
  readonly source: string;
  readonly place: string;
  readonly mark: 'seen' | 'memory' | 'derived';
  /** Of all the nitrogen put on; below 0 it is locked up. */
  readonly year1_share: { readonly low: number; readonly high: number };
  readonly year1_kg: { readonly low: number; readonly high: number };
  readonly year2_kg?: { readonly low: number; readonly high: number } | undefined;
  readonly year3_kg?: { readonly low: number; readonly high: number } | undefined;
}

export interface AvailableNitrogen {
  readonly kind: KindId;
  readonly mass_kg: Estimate;
  readonly dry_kg: Estimate;
  readonly nitrogen_kg: Estimate;
  readonly nitrogen_pctDry: Estimate;
  /** Absent for what has no carbon that counts. */
  readonly carbonToNitrogen_ratio?: Estimate | undefined;
  /** Ammonium and nitrate as put on. */
  readonly mineral_kg: Estimate;
  /** Lost into the air before it was worked in. */
  readonly lost_kg: Estimate;
  /** In the first 28 days, where that is published: for fresh stuff. */
  readonly first28Days_kg?: Estimate | undefined;
  /** Below 0 where it locks up more than it lets go. */
  readonly year1_kg: Estimate;
  readonly year1_share: Estimate;
  readonly year2_kg: Estimate;
  readonly year3_kg: Estimate;
  /** What three years leave bound in the soil, for a long time. */
  readonly bound_kg: Estimate;
  /** What carbon beyond the break-even takes from the soil; absent where there is none. */
  readonly lockUp?:
    | {
        readonly breakEven_ratio: number;
        /** If all of its carbon rotted, and all of it was dug in. */
        readonly most_kg: Estimate;
        /** In this season, as it was placed. */
        readonly thisSeason_kg: Estimate;
        /** To give against it, beyond what the stuff lets go itself. */
        readonly give_kg: Estimate;
      }
    | undefined;
  readonly phosphate_kg: Estimate;
  readonly phosphateYear1_kg: Estimate;
  readonly potash_kg: Estimate;
  readonly potashYear1_kg: Estimate;
  readonly bySource: readonly BySource[];
  readonly cautions: readonly CautionId[];
}

const LONGEST_DAYS = 366;

export const dressingShape: Readonly<{
  amount: z.ZodType<Amount>;
  kind: z.ZodOptional<z.ZodType<KindId>>;
  mineral_shareOfNitrogen: z.ZodOptional<z.ZodType<Quantity>>;
  placed: z.ZodOptional<z.ZodType<'dug-in' | 'mulched'>>;
  workedInAfter_days: z.ZodOptional<z.ZodType<number>>;
  weather: z.ZodOptional<z.ZodType<WeatherId>>;
}> = {
  amount: amountSchema,
  kind: z.enum(kindIds).optional().meta({ description: 'How its nitrogen comes free, if not as of the material.' }),
  mineral_shareOfNitrogen: fractionQuantity('Of its nitrogen, what is ammonium or nitrate.').optional(),
  placed: z.enum(['dug-in', 'mulched']).optional().meta({ description: 'Dug in unless it is said.' }),
  workedInAfter_days: z
    .number()
    .min(0)
    .max(LONGEST_DAYS)
    .optional()
    .meta({ description: 'Days until it was worked in; within the first unless it is said.' }),
  weather: z.enum(weatherIds).optional(),
};

const COLDEST_DEGC = -20;
const HOTTEST_DEGC = 45;
const soil_degC = freeQuantity('Usual warmth of the soil over the season, °C.').superRefine((quantity, context) => {
  const ends = typeof quantity === 'number' ? [quantity] : [quantity.p10, quantity.p90];
  if (ends.every((end) => end >= COLDEST_DEGC && end <= HOTTEST_DEGC)) return;
  const wanted = `${COLDEST_DEGC} to ${HOTTEST_DEGC}`;
  context.addIssue({ code: 'custom', message: wanted, params: { wanted } });
});

export const warmthSchema: z.ZodType<Warmth> = z.strictObject({
  soil_degC,
  season_days: z.number().min(0).max(LONGEST_DAYS).meta({ description: 'Length of the growing season.' }),
});

export const availableNitrogenInputSchema: z.ZodType<AvailableNitrogenInput> = z.strictObject({
  ...stuffedShape,
  ...dressingShape,
  warmth: warmthSchema.optional(),
  ownSizes: ownSizesSchema.optional(),
});

const ends = z.strictObject({ low: z.number(), high: z.number() });

export const availableNitrogenSchema: z.ZodType<AvailableNitrogen> = z.strictObject({
  kind: z.enum(kindIds),
  mass_kg: estimateSchema('As it lies.'),
  dry_kg: estimateSchema('Dry matter.'),
  nitrogen_kg: estimateSchema('All its nitrogen.'),
  nitrogen_pctDry: estimateSchema('All its nitrogen.'),
  carbonToNitrogen_ratio: estimateSchema('C:N.').optional(),
  mineral_kg: estimateSchema('Ammonium and nitrate as put on.'),
  lost_kg: estimateSchema('Lost into the air before it was worked in.'),
  first28Days_kg: estimateSchema('Set free in the first 28 days; below 0 it is locked up.').optional(),
  year1_kg: estimateSchema('For plants this season; below 0 it is locked up.'),
  year1_share: estimateSchema('The same of all its nitrogen.'),
  year2_kg: estimateSchema('Set free in the second year.'),
  year3_kg: estimateSchema('Set free in the third year.'),
  bound_kg: estimateSchema('Still bound after three years.'),
  lockUp: z
    .strictObject({
      breakEven_ratio: z.number(),
      most_kg: estimateSchema('Nitrogen locked if all its carbon rotted, dug in.'),
      thisSeason_kg: estimateSchema('Nitrogen it locks this season.'),
      give_kg: estimateSchema('Nitrogen to give against it.'),
    })
    .optional(),
  phosphate_kg: estimateSchema('All its phosphorus as P₂O₅.'),
  phosphateYear1_kg: estimateSchema('Of that, for plants this season.'),
  potash_kg: estimateSchema('All its potassium as K₂O.'),
  potashYear1_kg: estimateSchema('Of that, for plants this season.'),
  bySource: z.array(
    z.strictObject({
      id: z.string(),
      basis: z.enum(basisIds),
      source: z.string(),
      place: z.string(),
      mark: z.enum(['seen', 'memory', 'derived']),
      year1_share: ends,
      year1_kg: ends,
      year2_kg: ends.optional(),
      year3_kg: ends.optional(),
    }),
  ),
  cautions: z.array(z.enum(cautionIds as readonly [CautionId, ...CautionId[]])),
});
