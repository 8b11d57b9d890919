import { z } from 'zod';
import { fractionQuantity, positiveQuantity, type Quantity } from '../estimate/index.ts';
import type { HeapSmell, SqueezeGrade } from '../heap/observed.ts';
import { type Amount, amountSchema, type OwnSizes, squeezeGrades } from '../material/index.ts';
import { type Ingredient, ingredientSchema, ownSizesSchema, type Stuffed, stuffedShape } from '../mix/ingredient.ts';
import { type Bay, baySchema } from '../mix/mix-input.ts';

/** A dry material that stands ready to go with the pails. */
export interface DryStuff extends Stuffed {
  /** What it is counted in; when left out a bucket, or for much of it what it stands in, or a barrow. */
  readonly measure?: string | undefined;
  /** What is on hand; plenty when left out. */
  readonly amount?: Amount | undefined;
  readonly packed?: boolean | undefined;
}

/** What went in before, and how long ago. */
export interface FedLayer extends Ingredient {
  readonly age_days: number;
}

/** Working, frozen to the core, or thawing after a frost. */
export const binStates = ['working', 'frozen', 'thawing'] as const;
export type BinState = (typeof binStates)[number];

/** A pail of scraps, a basket of weeds or a mowing, and the bin it goes into. */
export interface PailCoverInput {
  readonly pail: readonly Ingredient[];
  /** Dry materials on hand, the one to use first in front; the common ones when left out. */
  readonly dry?: readonly DryStuff[] | undefined;
  /** What lies in the bin, from the first layer on, dry stuff included; `[]` where it is empty, left out where unknown. */
  readonly layers?: readonly FedLayer[] | undefined;
  readonly bay?: Bay | undefined;
  /** How high the stuff stands now, before this pail: it goes before any model of sinking. */
  readonly height_m?: Quantity | undefined;
  /** How many bays or bins there are. */
  readonly bays?: 1 | 2 | 3 | undefined;
  readonly state?: BinState | undefined;
  /** Days of frost up to now: they count for no rotting. */
  readonly frozenFor_days?: number | undefined;
  readonly smell?: HeapSmell | undefined;
  /** How a handful from the middle of the bin feels. */
  readonly squeeze?: SqueezeGrade | undefined;
  /** When the compost is wanted. */
  readonly wanted_inDays?: number | undefined;
  /** So many such pails a week are to come, for so many weeks. */
  readonly ahead?: { readonly pails_perWeek: number; readonly weeks: number } | undefined;
  readonly ownSizes?: OwnSizes | undefined;
  /** The bucket that dry stuff is laid by; one of 20 L when left out. */
  readonly usualMeasure?: string | undefined;
  /** Volume once in the bin over the volume in the pail, if it was tried. */
  readonly packing_share?: Quantity | undefined;
}

const MOST_IN_PAIL = 12;
const MOST_DRY = 8;
const MOST_LAYERS = 1000;
const LONGEST_DAYS = 3650;

const days = z.number().min(0).max(LONGEST_DAYS);

const dryStuffSchema: z.ZodType<DryStuff> = z.strictObject({
  ...stuffedShape,
  measure: z.string().min(1).optional().meta({ description: 'The measure it is counted in.' }),
  amount: amountSchema.optional().meta({ description: 'What is on hand; plenty when left out.' }),
  packed: z.boolean().optional(),
});

const fedLayerSchema: z.ZodType<FedLayer> = z.strictObject({
  ...stuffedShape,
  amount: amountSchema,
  line: z.string().min(1).optional(),
  age_days: days.meta({ description: 'Days since it went in.' }),
});

export const pailCoverInputSchema: z.ZodType<PailCoverInput> = z.strictObject({
  pail: z.array(ingredientSchema).min(1).max(MOST_IN_PAIL),
  dry: z.array(dryStuffSchema).max(MOST_DRY).optional().meta({ description: 'Dry stuff on hand, in order of use.' }),
  layers: z
    .array(fedLayerSchema)
    .max(MOST_LAYERS)
    .optional()
    .meta({ description: 'What lies in the bin; left out where nobody knows.' }),
  bay: baySchema.optional(),
  height_m: positiveQuantity('How high the stuff stands now, m.').optional(),
  bays: z.union([z.literal(1), z.literal(2), z.literal(3)]).optional(),
  state: z.enum(binStates).optional(),
  frozenFor_days: days.optional(),
  smell: z.enum(['none', 'earthy', 'ammonia', 'sour', 'rotten', 'musty', 'smoke']).optional(),
  squeeze: z.enum(squeezeGrades).optional(),
  wanted_inDays: days.optional().meta({ description: 'Days until the compost is wanted.' }),
  ahead: z
    .strictObject({ pails_perWeek: z.number().positive().max(100), weeks: z.number().positive().max(104) })
    .optional(),
  ownSizes: ownSizesSchema.optional(),
  usualMeasure: z.string().min(1).optional().meta({ description: 'The bucket that dry stuff is laid by.' }),
  packing_share: fractionQuantity('Volume once in the bin over the volume in the pail.').optional(),
});
