import table from '@loamwright/reference/crops.json' with { type: 'json' };
import { z } from 'zod';
import type { Citation } from '../catalogue/index.ts';

interface Span extends Citation {
  readonly low: number;
  readonly high: number;
}

/** Whether what is eaten touches the soil; `splash`: it does not, but rain throws soil on it. */
export const soilContactIds = ['yes', 'splash', 'no'] as const;
export type SoilContact = (typeof soilContactIds)[number];

export const cropGroups = [
  'perennial-vegetable',
  'legume',
  'root',
  'brassica',
  'stem',
  'leafy',
  'grain-veg',
  'fruiting',
  'bulb',
  'herb',
  'small-fruit',
  'tree-fruit',
  'cover-crop',
] as const;

/** A crop as published: what it wants, takes off, roots in and bears. A cover crop has no need and no harvest. */
export interface Crop {
  /** Kebab-case; its names are the messages `crop.ID.name` and `crop.ID.words`. */
  readonly id: string;
  readonly family: string;
  readonly group: (typeof cropGroups)[number];
  readonly soilContact?: SoilContact | undefined;
  /** Nitrogen a guide recommends in all, credits included. */
  readonly nitrogen_kgPerHa?: Span | undefined;
  /** What guides of other regions say, where that differs. */
  readonly nitrogenElsewhere_kgPerHa?: Span | undefined;
  /** What leaves with each tonne harvested. */
  readonly removal?:
    | (Citation & {
        readonly nitrogen_kgPerT: number;
        readonly phosphate_kgPerT: number;
        readonly potash_kgPerT: number;
        readonly basis: 'fresh-edible' | 'grain';
        readonly refuse_pct?: number | undefined;
      })
    | undefined;
  /** A usual field yield. */
  readonly yield_tPerHa?: (Citation & { readonly typical: number }) | undefined;
  readonly rootDepth_m?: Span | undefined;
  /** Days to harvest, from sowing, planting or bloom. */
  readonly days?: (Span & { readonly from: string }) | undefined;
  /** Yield in salty soil: nothing is lost up to the threshold, then so many percent with each dS/m. */
  readonly salt?:
    | (Citation & {
        readonly rating?: string | undefined;
        readonly threshold_dSPerM?: number | undefined;
        readonly loss_pctPerDSPerM?: number | undefined;
      })
    | undefined;
  readonly pH: Span;
  /** Dry matter and whole nitrogen above ground of a cover crop. */
  readonly cover?:
    | (Citation & {
        readonly dryMatter_tPerHa: { readonly low: number; readonly high: number };
        readonly nitrogen_kgPerHa?: { readonly low: number; readonly high: number } | undefined;
      })
    | undefined;
  readonly note?: string | undefined;
}

const citation = { source: z.string(), place: z.string().min(1), mark: z.enum(['seen', 'memory', 'derived']) };
const ends = { low: z.number().min(0), high: z.number().min(0) };
const inOrder = ({ low, high }: { readonly low: number; readonly high: number }): boolean => low <= high;
const span: z.ZodType<Span> = z.strictObject({ ...ends, ...citation }).refine(inOrder, 'low ≤ high');
const bare = z.strictObject(ends).refine(inOrder, 'low ≤ high');

const cropSchema: z.ZodType<Crop> = z.strictObject({
  id: z.string().regex(/^[a-z]+(-[a-z]+)*$/u),
  family: z.string(),
  group: z.enum(cropGroups),
  soilContact: z.enum(soilContactIds).optional(),
  nitrogen_kgPerHa: span.optional(),
  nitrogenElsewhere_kgPerHa: span.optional(),
  removal: z
    .strictObject({
      nitrogen_kgPerT: z.number().min(0),
      phosphate_kgPerT: z.number().min(0),
      potash_kgPerT: z.number().min(0),
      basis: z.enum(['fresh-edible', 'grain']),
      refuse_pct: z.number().min(0).max(100).optional(),
      ...citation,
    })
    .optional(),
  yield_tPerHa: z.strictObject({ typical: z.number().positive(), ...citation }).optional(),
  rootDepth_m: span.optional(),
  days: z
    .strictObject({ ...ends, from: z.string(), ...citation })
    .refine(inOrder, 'low ≤ high')
    .optional(),
  salt: z
    .strictObject({
      rating: z.string().optional(),
      threshold_dSPerM: z.number().positive().optional(),
      loss_pctPerDSPerM: z.number().positive().optional(),
      ...citation,
    })
    .refine(
      ({ threshold_dSPerM, loss_pctPerDSPerM }) =>
        (threshold_dSPerM === undefined) === (loss_pctPerDSPerM === undefined),
      'threshold and loss come together',
    )
    .optional(),
  pH: span,
  cover: z.strictObject({ dryMatter_tPerHa: bare, nitrogen_kgPerHa: bare.optional(), ...citation }).optional(),
  note: z.string().optional(),
});

/** Every crop and cover crop, from `reference/crops.json`. */
export const allCrops: readonly Crop[] = z.array(cropSchema).parse(table.crops);

const byId: ReadonlyMap<string, Crop> = new Map(allCrops.map((crop) => [crop.id, crop]));

export function cropById(id: string): Crop | undefined {
  return byId.get(id);
}

/**
 * Yield in salty soil, percent of that without salt: 100 − b (ECe − a) above the threshold a, never below 0
 * (Maas and Grattan 1999, as reproduced in FAO Irrigation and Drainage Paper 61, Annex 1, equation 1).
 *
 * @param conductivity_dSPerM of a saturated extract of the soil
 * @returns undefined where no threshold is published for the crop
 */
export function saltYield_pct(crop: Crop, conductivity_dSPerM: number): number | undefined {
  const { threshold_dSPerM, loss_pctPerDSPerM } = crop.salt ?? {};
  if (threshold_dSPerM === undefined || loss_pctPerDSPerM === undefined) return undefined;
  return Math.max(0, 100 - loss_pctPerDSPerM * Math.max(0, conductivity_dSPerM - threshold_dSPerM));
}
