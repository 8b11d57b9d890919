import { z } from 'zod';
import {
  between,
  type Estimate,
  estimateSchema,
  percentQuantity,
  positiveQuantity,
  type Quantity,
} from '../estimate/index.ts';
import type { Bounds, OwnSizes } from '../material/index.ts';
import { type Ingredient, ingredientSchema, ownSizesSchema } from '../mix/ingredient.ts';
import { type ShelterId, shelterIds } from './yield-parameters.ts';

/** A heap of the same garden that is done: what it was built to, and what stood there ready. */
export interface PastHeap {
  readonly built_m3: number;
  readonly ready_m3: number;
}

export interface YieldInput {
  /** What the heap was made of; without it only the volume tells. */
  readonly ingredients?: readonly Ingredient[] | undefined;
  readonly water_L?: Quantity | undefined;
  /** Volume once built, if it was measured. */
  readonly built_m3?: Quantity | undefined;
  /** Volume that stands there now, ready. */
  readonly ready_m3?: number | undefined;
  /** Ash of the ready compost from a laboratory, or 100 less what burns off. */
  readonly readyAsh_pctDry?: Quantity | undefined;
  readonly readyMoisture_pctWet?: Quantity | undefined;
  readonly readyDensity_kgPerM3AsIs?: Quantity | undefined;
  readonly shelter?: ShelterId | undefined;
  readonly pastHeaps?: readonly PastHeap[] | undefined;
  readonly measure?: string | undefined;
  readonly ownSizes?: OwnSizes | undefined;
}

/** What the dry mass was reckoned from: ash that a laboratory found; what of the stuff rots; or the volume alone. */
export const yieldBases = ['ash', 'rotting', 'volume'] as const;
export type YieldBasis = (typeof yieldBases)[number];

/**
 * What is to be told beside it: `own-heaps`, `taped`: which sharpened it; `unlike-own-heaps`, `unlike-tape`: what was seen
 * contradicts the reckoning and is believed for the volume; `grit`: more ash than rotting leaves, so soil got in;
 * `not-listed`: without what went in, composts of a laboratory stand for it.
 */
export const yieldNotes = ['own-heaps', 'unlike-own-heaps', 'taped', 'unlike-tape', 'grit', 'not-listed'] as const;
export type YieldNote = (typeof yieldNotes)[number];

/** Compost that a heap comes to. */
export interface HeapYield {
  readonly basis: YieldBasis;
  readonly notes: readonly YieldNote[];
  readonly volume_m3: Estimate;
  readonly measure: string;
  readonly count: Estimate;
  readonly wet_kg: Estimate;
  readonly dry_kg: Estimate;
  readonly moisture_pctWet: Estimate;
  /** Volume that is left of what was built, percent. */
  readonly left_pctVolume: Estimate;
  readonly nitrogen_kg: Estimate;
  readonly nitrogen_pctDry: Estimate;
  readonly phosphorus_kg: Estimate;
  readonly phosphorus_pctDry: Estimate;
  readonly potassium_kg: Estimate;
  readonly potassium_pctDry: Estimate;
  /** Absent where nothing is known of what went in, or nothing with nitrogen did. */
  readonly carbonToNitrogen_ratio?: Estimate | undefined;
  /** Of what went in; absent where it is not known. */
  readonly lost?:
    | {
        readonly dry_pct: Estimate;
        readonly organicMatter_pct: Estimate;
        readonly carbon_pct: Estimate;
        readonly nitrogen_pct?: Estimate | undefined;
        readonly potassium_pct: Estimate;
      }
    | undefined;
  /** Conductivity of a 1:5 extract from its potassium alone, dS/m. */
  readonly fromPotassium_dSPerM: Estimate;
  readonly pastHeaps: number;
}

const LEAST_M3 = 0.001;
const MOST_M3 = 1000;
const LEAST_KG_PER_M3 = 100;
const MOST_KG_PER_M3 = 2000;

/** Beyond these lies a slip of the pen. */
export const yieldBounds: { readonly volume_m3: Bounds; readonly density_kgPerM3AsIs: Bounds } = {
  volume_m3: { least: LEAST_M3, most: MOST_M3 },
  density_kgPerM3AsIs: { least: LEAST_KG_PER_M3, most: MOST_KG_PER_M3 },
};

const volume = (description: string): z.ZodType<number> => z.number().min(LEAST_M3).max(MOST_M3).meta({ description });

export const yieldInputSchema: z.ZodType<YieldInput> = z.strictObject({
  ingredients: z.array(ingredientSchema).min(1).max(40).optional(),
  water_L: positiveQuantity('Water poured on, litres.').optional(),
  built_m3: between(positiveQuantity('Volume once built, m³.'), LEAST_M3, MOST_M3).optional(),
  ready_m3: volume('Volume that stands there ready, m³.').optional(),
  readyAsh_pctDry: between(percentQuantity('Ash of the ready compost, % of dry mass.'), 1, 99).optional(),
  readyMoisture_pctWet: between(percentQuantity('Its moisture, % of wet mass.'), 1, 95).optional(),
  readyDensity_kgPerM3AsIs: between(
    positiveQuantity('Its bulk density, kg/m³ as it lies.'),
    LEAST_KG_PER_M3,
    MOST_KG_PER_M3,
  ).optional(),
  shelter: z.enum(shelterIds).optional().meta({ description: 'Whether rain runs through it.' }),
  pastHeaps: z
    .array(z.strictObject({ built_m3: volume('Built to, m³.'), ready_m3: volume('Ready, m³.') }))
    .max(100)
    .optional(),
  measure: z.string().min(1).optional().meta({ description: 'Measure to count it in; a barrow unless told.' }),
  ownSizes: ownSizesSchema.optional(),
});

export const yieldSchema: z.ZodType<HeapYield> = z.strictObject({
  basis: z.enum(yieldBases),
  notes: z.array(z.enum(yieldNotes)),
  volume_m3: estimateSchema('Volume of the ready compost, m³.'),
  measure: z.string(),
  count: estimateSchema('In the measure.'),
  wet_kg: estimateSchema('Mass as it lies, kg.'),
  dry_kg: estimateSchema('Dry mass, kg.'),
  moisture_pctWet: estimateSchema('Moisture, % of wet mass.'),
  left_pctVolume: estimateSchema('Volume that is left of what was built, %.'),
  nitrogen_kg: estimateSchema('Nitrogen, kg.'),
  nitrogen_pctDry: estimateSchema('Nitrogen, % of dry mass.'),
  phosphorus_kg: estimateSchema('Phosphorus as the element, kg.'),
  phosphorus_pctDry: estimateSchema('Phosphorus as the element, % of dry mass.'),
  potassium_kg: estimateSchema('Potassium as the element, kg.'),
  potassium_pctDry: estimateSchema('Potassium as the element, % of dry mass.'),
  carbonToNitrogen_ratio: estimateSchema('C:N of the compost.').optional(),
  lost: z
    .strictObject({
      dry_pct: estimateSchema('Dry mass lost, % of what went in.'),
      organicMatter_pct: estimateSchema('Organic matter lost, %.'),
      carbon_pct: estimateSchema('Carbon lost, %.'),
      nitrogen_pct: estimateSchema('Nitrogen lost, %.').optional(),
      potassium_pct: estimateSchema('Potassium lost, %.'),
    })
    .optional(),
  fromPotassium_dSPerM: estimateSchema('Conductivity of a 1:5 extract from its potassium alone, dS/m.'),
  pastHeaps: z.int().min(0),
});
