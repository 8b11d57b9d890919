import { z } from 'zod';
import { type CautionId, cautionIds } from '../caution/index.ts';
import {
  between,
  type Chance,
  chanceSchema,
  type Estimate,
  estimateSchema,
  percentQuantity,
  positiveQuantity,
  type Quantity,
} from '../estimate/index.ts';
import type { OwnSizes } from '../material/index.ts';
import { ownSizesSchema, stuffedShape } from '../mix/ingredient.ts';
import { type Dressing, dressingShape, type Warmth, warmthSchema } from './available-nitrogen-io.ts';
import { type ClassId, classIds } from './budget-parameters.ts';
import { bedBounds } from './slips.ts';

/** A crop on the bed this season. */
export interface BedCrop {
  /** An id of `reference/crops.json`. */
  readonly crop: string;
  readonly area_m2: Quantity;
  readonly yield_kgPerM2?: Quantity | undefined;
  /** Nitrogen by what the harvest takes off rather than by what guides recommend. */
  readonly byRemoval?: boolean | undefined;
  /** What a tonne takes, where that is known better than the table. */
  readonly takes?:
    | { readonly nitrogen_kgPerT: number; readonly phosphate_kgPerT: number; readonly potash_kgPerT: number }
    | undefined;
  /** What a lab or a guide asks for, in place of everything above. */
  readonly wants?:
    | {
        readonly nitrogen_gPerM2?: number | undefined;
        readonly phosphate_gPerM2?: number | undefined;
        readonly potash_gPerM2?: number | undefined;
      }
    | undefined;
  /** Fruit trees, by their number and age. */
  readonly trees?: { readonly count: number; readonly age_years: number } | undefined;
}

/** Something put on the bed, and how many seasons ago: 0 for this one. */
export interface PutOn extends Dressing {
  readonly seasonsAgo?: number | undefined;
}

/** A cover crop dug in before this season, or a ley or beans before it. */
export interface Before {
  /** A cover crop of `reference/crops.json`, or `alfalfa`, `alfalfa-thin`, `dry-beans`. */
  readonly what: string;
  readonly area_m2?: Quantity | undefined;
  readonly nitrogen_pctDry?: number | undefined;
  readonly dryMatter_kgPerM2?: Quantity | undefined;
}

/** What a soil test said, as classes of its own method. */
export interface SoilTest {
  readonly phosphorusClass?: ClassId | undefined;
  readonly potassiumClass?: ClassId | undefined;
  readonly organicMatter_pctDry?: Quantity | undefined;
  readonly pH?: number | undefined;
  /** Of a saturated extract. */
  readonly conductivity_dSPerM?: Quantity | undefined;
}

/** A bought fertiliser. */
export interface Grade {
  readonly nitrogen_pctAsIs: number;
  readonly phosphate_pctAsIs?: number | undefined;
  readonly potash_pctAsIs?: number | undefined;
  /** Price of a kilogram, in any money. */
  readonly price_perKg?: number | undefined;
}

export interface BedBudgetInput {
  readonly crops: readonly BedCrop[];
  /** The whole bed, where its crops don't make it up or follow one another; else the crops together. */
  readonly area_m2?: Quantity | undefined;
  readonly put?: readonly PutOn[] | undefined;
  readonly before?: readonly Before[] | undefined;
  readonly soilTest?: SoilTest | undefined;
  /** Sand, which lets nitrogen wash through. */
  readonly sandy?: boolean | undefined;
  readonly warmth?: Warmth | undefined;
  readonly fertilisers?: readonly Grade[] | undefined;
  readonly ownSizes?: OwnSizes | undefined;
}

export const elementIds = ['nitrogen', 'phosphate', 'potash'] as const;
export type ElementId = (typeof elementIds)[number];

/** How what is supplied stands beside what is wanted. */
export const budgetStandings = ['short', 'doubtful', 'enough', 'over', 'none-wanted'] as const;

export interface ElementBudget {
  readonly need_kg: Estimate;
  /** Below 0 where the soil is robbed. */
  readonly supplied_kg: Estimate;
  readonly short_kg: Estimate;
  readonly over_kg: Estimate;
  readonly need_gPerM2: Estimate;
  readonly short_gPerM2: Estimate;
  readonly over_gPerM2: Estimate;
  readonly enough: Chance;
  readonly stands: (typeof budgetStandings)[number];
}

export interface Supplied {
  readonly from: 'put' | 'before' | 'soil';
  /** Which of those in the input. */
  readonly index: number;
  readonly what: string;
  readonly seasonsAgo: number;
  readonly nitrogen_kg: Estimate;
  readonly phosphate_kg: Estimate;
  readonly potash_kg: Estimate;
  /** All its nitrogen, as put on; absent of soil and crops before. */
  readonly allNitrogen_kg?: Estimate | undefined;
  readonly allPhosphate_kg?: Estimate | undefined;
  readonly mass_kg?: Estimate | undefined;
  readonly depth_m?: Estimate | undefined;
}

export const budgetAdviceIds = [
  'lock-up',
  'leave-on-top',
  'compost-first',
  'compost-alone',
  'phosphorus-stop',
  'phosphorus-builds',
  'nitrogen-only',
  'salts-wash',
  'raw-manure',
  'on-top-burns',
  'sandy-washes',
  'deep',
  'pH-below',
  'pH-above',
  'pH-apart',
  'test-first',
] as const;
export type BudgetAdviceId = (typeof budgetAdviceIds)[number];

export interface BedBudget {
  readonly area_m2: Estimate;
  readonly elements: Readonly<Record<ElementId, ElementBudget>>;
  readonly wanted: readonly {
    readonly crop: string;
    readonly nitrogen_kg: Estimate;
    readonly phosphate_kg: Estimate;
    readonly potash_kg: Estimate;
  }[];
  readonly supplied: readonly Supplied[];
  /** Harvests that would take off the phosphorus put on this season; absent where none was. */
  readonly phosphorus_years?: Estimate | undefined;
  /** Absent where nothing put on locks nitrogen up. */
  readonly lockUp?:
    | { readonly most_gPerM2: Estimate; readonly thisSeason_gPerM2: Estimate; readonly give_gPerM2: Estimate }
    | undefined;
  readonly salts: {
    readonly conductivity_dSPerM: Estimate;
    readonly measured: boolean;
    /** The crop that minds them most, of those with a published threshold. */
    readonly crop?: string | undefined;
    readonly threshold_dSPerM?: number | undefined;
    readonly under?: Chance | undefined;
    readonly yield_pct?: Estimate | undefined;
  };
  readonly lime: {
    /** Lime brought this season, as calcium carbonate. */
    readonly brought_kgPerM2: Estimate;
    readonly pHLow: number;
    readonly pHHigh: number;
    readonly stands: 'untested' | 'below' | 'within' | 'above' | 'apart';
  };
  /** To close the gap of nitrogen with each fertiliser. */
  readonly cover: readonly {
    readonly mass_kg: Estimate;
    readonly mass_gPerM2: Estimate;
    readonly phosphate_kg: Estimate;
    readonly potash_kg: Estimate;
    readonly nitrogen_pricePerKg?: number | undefined;
  }[];
  /** What nobody tested, and so makes the answer wide. */
  readonly untested: readonly ('phosphorus' | 'potassium' | 'organic-matter' | 'pH' | 'salts')[];
  readonly advice: readonly BudgetAdviceId[];
  readonly cautions: readonly CautionId[];
}

const area_m2 = between(positiveQuantity('Area, m².'), bedBounds.area_m2.least, bedBounds.area_m2.most);
const rate = z.number().min(0).max(1000).optional();
const MOST_LINES = 40;
const MOST_SEASONS = 50;
const gradeShare = z.number().min(0).max(100);

export const bedBudgetShape: {
  readonly [Key in keyof Required<BedBudgetInput>]: z.ZodType<BedBudgetInput[Key]>;
} = {
  crops: z
    .array(
      z.strictObject({
        crop: z.string().min(1),
        area_m2,
        yield_kgPerM2: between(positiveQuantity('Harvest, kg/m².'), 0.01, 100).optional(),
        byRemoval: z.boolean().optional(),
        takes: z
          .strictObject({
            nitrogen_kgPerT: z.number().min(0).max(100),
            phosphate_kgPerT: z.number().min(0).max(100),
            potash_kgPerT: z.number().min(0).max(100),
          })
          .optional(),
        wants: z.strictObject({ nitrogen_gPerM2: rate, phosphate_gPerM2: rate, potash_gPerM2: rate }).optional(),
        trees: z.strictObject({ count: z.int().min(1).max(1000), age_years: z.number().min(0).max(200) }).optional(),
      }),
    )
    .min(1)
    .max(MOST_LINES),
  area_m2: area_m2.optional(),
  put: z
    .array(
      z.strictObject({
        ...stuffedShape,
        ...dressingShape,
        seasonsAgo: z.int().min(0).max(MOST_SEASONS).optional().meta({ description: '0 for this season.' }),
      }),
    )
    .max(MOST_LINES)
    .optional(),
  before: z
    .array(
      z.strictObject({
        what: z.string().min(1),
        area_m2: area_m2.optional(),
        nitrogen_pctDry: z.number().min(0.1).max(8).optional(),
        dryMatter_kgPerM2: between(positiveQuantity('Dry matter, kg/m².'), 0.001, 10).optional(),
      }),
    )
    .max(MOST_LINES)
    .optional(),
  soilTest: z
    .strictObject({
      phosphorusClass: z.enum(classIds).optional(),
      potassiumClass: z.enum(classIds).optional(),
      organicMatter_pctDry: percentQuantity('Organic matter of the soil.').optional(),
      pH: z.number().min(2).max(12).optional(),
      conductivity_dSPerM: between(positiveQuantity('Salts, saturated extract.'), 0, 60).optional(),
    })
    .optional(),
  sandy: z.boolean().optional().meta({ description: 'Sand, which lets nitrogen wash through.' }),
  warmth: warmthSchema.optional(),
  fertilisers: z
    .array(
      z.strictObject({
        nitrogen_pctAsIs: gradeShare.min(0.1),
        phosphate_pctAsIs: gradeShare.optional(),
        potash_pctAsIs: gradeShare.optional(),
        price_perKg: z.number().min(0).max(1e6).optional(),
      }),
    )
    .max(MOST_LINES)
    .optional(),
  ownSizes: ownSizesSchema.optional(),
};

export const bedBudgetInputSchema: z.ZodType<BedBudgetInput> = z.strictObject(bedBudgetShape);

const element: z.ZodType<ElementBudget> = z.strictObject({
  need_kg: estimateSchema('Wanted this season.'),
  supplied_kg: estimateSchema('Supplied this season; below 0 the soil is robbed.'),
  short_kg: estimateSchema('What is short.'),
  over_kg: estimateSchema('What is too much.'),
  need_gPerM2: estimateSchema('Wanted this season.'),
  short_gPerM2: estimateSchema('What is short.'),
  over_gPerM2: estimateSchema('What is too much.'),
  enough: chanceSchema,
  stands: z.enum(budgetStandings),
});

const three = {
  nitrogen_kg: estimateSchema('Nitrogen.'),
  phosphate_kg: estimateSchema('Phosphorus as P₂O₅.'),
  potash_kg: estimateSchema('Potassium as K₂O.'),
};

export const bedBudgetSchema: z.ZodType<BedBudget> = z.strictObject({
  area_m2: estimateSchema('The bed.'),
  elements: z.strictObject({ nitrogen: element, phosphate: element, potash: element }),
  wanted: z.array(z.strictObject({ crop: z.string(), ...three })),
  supplied: z.array(
    z.strictObject({
      from: z.enum(['put', 'before', 'soil']),
      index: z.number(),
      what: z.string(),
      seasonsAgo: z.number(),
      ...three,
      allNitrogen_kg: estimateSchema('All its nitrogen as put on.').optional(),
      allPhosphate_kg: estimateSchema('All its phosphorus as put on, P₂O₅.').optional(),
      mass_kg: estimateSchema('As it lies.').optional(),
      depth_m: estimateSchema('Over the whole bed.').optional(),
    }),
  ),
  phosphorus_years: estimateSchema('Harvests that take off the phosphorus put on this season.').optional(),
  lockUp: z
    .strictObject({
      most_gPerM2: estimateSchema('Nitrogen locked if all carbon put on rotted, dug in.'),
      thisSeason_gPerM2: estimateSchema('Nitrogen locked this season.'),
      give_gPerM2: estimateSchema('To give against it, beyond what the stuff lets go.'),
    })
    .optional(),
  salts: z.strictObject({
    conductivity_dSPerM: estimateSchema('Of a saturated extract of the soil.'),
    measured: z.boolean(),
    crop: z.string().optional(),
    threshold_dSPerM: z.number().optional(),
    under: chanceSchema.optional(),
    yield_pct: estimateSchema('Of the yield without salt.').optional(),
  }),
  lime: z.strictObject({
    brought_kgPerM2: estimateSchema('Lime brought, as calcium carbonate.'),
    pHLow: z.number(),
    pHHigh: z.number(),
    stands: z.enum(['untested', 'below', 'within', 'above', 'apart']),
  }),
  cover: z.array(
    z.strictObject({
      mass_kg: estimateSchema('To close the gap of nitrogen.'),
      mass_gPerM2: estimateSchema('The same on each square metre.'),
      phosphate_kg: estimateSchema('Phosphorus that comes with it, P₂O₅.'),
      potash_kg: estimateSchema('Potassium that comes with it, K₂O.'),
      nitrogen_pricePerKg: z.number().optional(),
    }),
  ),
  untested: z.array(z.enum(['phosphorus', 'potassium', 'organic-matter', 'pH', 'salts'])),
  advice: z.array(z.enum(budgetAdviceIds)),
  cautions: z.array(z.enum(cautionIds as readonly [CautionId, ...CautionId[]])),
});
