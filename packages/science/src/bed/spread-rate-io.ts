import { z } from 'zod';
import { type CautionId, cautionIds } from '../caution/index.ts';
import { type Estimate, estimateSchema } from '../estimate/index.ts';
import { type Amount, amountSchema } from '../material/index.ts';
import { stuffedShape } from '../mix/ingredient.ts';
import { type Dressing, dressingShape } from './available-nitrogen-io.ts';
import { type BedBudget, type BedBudgetInput, bedBudgetSchema, bedBudgetShape } from './bed-budget-io.ts';

/** Something that could go on the bed. */
export interface Product extends Omit<Dressing, 'amount'> {
  /** What there is of it; left out, as much as is wanted. */
  readonly onHand?: Amount | undefined;
  /** The measure it is counted in; barrows, or buckets where they are few, where nothing is said. */
  readonly measure?: string | undefined;
}

/** What bought fertiliser costs, for each kilogram of what is in it, in any money. */
export interface Prices {
  readonly nitrogen_perKg?: number | undefined;
  readonly phosphate_perKg?: number | undefined;
  readonly potash_perKg?: number | undefined;
}

export interface SpreadRateInput extends BedBudgetInput {
  readonly products: readonly Product[];
  readonly prices?: Prices | undefined;
}

/** What stops more of it; the message `spread.limit.ID`. */
export const limitIds = ['nitrogen', 'phosphorus', 'salts', 'depth', 'supply', 'locks-up'] as const;
export type LimitId = (typeof limitIds)[number];

/** How much of one thing by itself each limit lets on. */
export interface ProductRate {
  readonly material: string;
  readonly measure: string;
  /** By limit, in the measure; a limit that it never meets is absent. */
  readonly alone: readonly { readonly limit: LimitId; readonly count: number }[];
  /** The limit that is met first, by itself. */
  readonly stops: LimitId;
  /** What to put on of it, beside the others, in half measures. */
  readonly count: number;
  readonly volume_m3: Estimate;
  readonly mass_kg: Estimate;
  /** Over the whole bed. */
  readonly depth_m: Estimate;
}

export interface SpreadRate {
  readonly products: readonly ProductRate[];
  /** What stops all of it together; `nitrogen` where nothing more is wanted. */
  readonly stops: LimitId;
  /** Nitrogen still short this season, beside what is put on. */
  readonly short_kg: Estimate;
  /** Harvests that take off as much phosphorus as the limit lets on; absent on poor soil, which has none. */
  readonly phosphorusLimit_years?: number | undefined;
  /** The bed with it. */
  readonly after: BedBudget;
  /** What bought fertiliser with the same use would cost; absent where no price was told. */
  readonly worth?: Estimate | undefined;
  readonly cautions: readonly CautionId[];
}

const price = z.number().min(0).max(1e6).optional();
const { amount: _amount, ...laidShape } = dressingShape;
const MOST_PRODUCTS = 12;

export const spreadRateInputSchema: z.ZodType<SpreadRateInput> = z.strictObject({
  ...bedBudgetShape,
  products: z
    .array(
      z.strictObject({
        ...stuffedShape,
        ...laidShape,
        onHand: amountSchema.optional(),
        measure: z.string().min(1).optional(),
      }),
    )
    .min(1)
    .max(MOST_PRODUCTS),
  prices: z.strictObject({ nitrogen_perKg: price, phosphate_perKg: price, potash_perKg: price }).optional(),
});

export const spreadRateSchema: z.ZodType<SpreadRate> = z.strictObject({
  products: z.array(
    z.strictObject({
      material: z.string(),
      measure: z.string(),
      alone: z.array(z.strictObject({ limit: z.enum(limitIds), count: z.number().min(0) })),
      stops: z.enum(limitIds),
      count: z.number().min(0),
      volume_m3: estimateSchema('Volume to put on, as it lies.'),
      mass_kg: estimateSchema('Mass to put on, as it lies.'),
      depth_m: estimateSchema('Depth over the whole bed.'),
    }),
  ),
  stops: z.enum(limitIds),
  short_kg: estimateSchema('Nitrogen still short.'),
  phosphorusLimit_years: z.number().min(0).optional(),
  after: bedBudgetSchema,
  worth: estimateSchema('What bought fertiliser of the same use would cost.').optional(),
  cautions: z.array(z.enum(cautionIds as readonly [CautionId, ...CautionId[]])),
});
