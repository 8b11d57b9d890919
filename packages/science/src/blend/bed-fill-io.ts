import { z } from 'zod';
import { type CautionId, cautionIds } from '../caution/index.ts';
import {
  between,
  type Chance,
  chanceSchema,
  type Estimate,
  estimateSchema,
  positiveQuantity,
  type Quantity,
} from '../estimate/index.ts';
import type { OwnSizes } from '../material/index.ts';
import { type OnHand, onHandSchema, type PartAmount, partAmountSchema } from './amounts.ts';
import { type CompostKnown, compostSchema, type Ripeness, ripenessIds } from './compost.ts';
import { type BaseId, baseIds, type Parts, partIds } from './parameters.ts';

/** The inside of a bed: a box, or any shape by its area. */
export type BedSize =
  | { readonly length_m: Quantity; readonly width_m: Quantity; readonly depth_m: Quantity }
  | { readonly area_m2: Quantity; readonly depth_m: Quantity };

export const standsOnIds = ['ground', 'doubtful-ground', 'deck', 'roof'] as const;
export const wallIds = ['untreated-wood', 'treated-wood', 'unknown-wood', 'other'] as const;

export interface BedFillInput {
  readonly bed: BedSize;
  /** So many alike. */
  readonly beds?: number | undefined;
  /** Compost with garden soil for the rest; a third where nothing is said. */
  readonly compost_pctVolume?: number | undefined;
  /** Or parts of one's own. */
  readonly parts?: readonly Parts[] | undefined;
  /** Woody stuff at the foot. */
  readonly base?: { readonly stuff: BaseId; readonly depth_m: Quantity } | undefined;
  readonly compost?: CompostKnown | undefined;
  readonly standsOn?: (typeof standsOnIds)[number] | undefined;
  readonly walls?: (typeof wallIds)[number] | undefined;
  readonly onHand?: readonly OnHand[] | undefined;
  readonly measure?: string | undefined;
  readonly ownSizes?: OwnSizes | undefined;
}

/** What to do or to mind; the message `blend.advice.bed.ID`. */
export const bedAdviceIds = ['much-compost', 'salty-wash', 'young-wait', 'wood-below', 'shallow-over-wood'] as const;
export type BedAdviceId = (typeof bedAdviceIds)[number];

export interface BedFill {
  /** Of all the beds. */
  readonly area_m2: Estimate;
  readonly volume_m3: Estimate;
  /** Depth of mix above the base. */
  readonly mixDepth_m: Estimate;
  /** Of the loose volume, what is left once mixed, watered in and settled. */
  readonly settled_share: Estimate;
  /** Loose mix to bring, m³, so that the bed is full once it has settled. */
  readonly bring_m3: Estimate;
  readonly parts: readonly PartAmount[];
  readonly base?:
    | {
        readonly stuff: BaseId;
        readonly volume_m3: Estimate;
        readonly measure: string;
        readonly count: Estimate;
        readonly mass_kg: Estimate;
      }
    | undefined;
  readonly compost: {
    readonly share_pctVolume: number;
    readonly low_pctVolume: number;
    readonly high_pctVolume: number;
    readonly stands: 'none' | 'lean' | 'within' | 'over';
  };
  readonly organicMatter_pctDry: Estimate;
  /** Years of vegetables that take off as much phosphorus as the compost brings. */
  readonly phosphorus_years: Estimate;
  readonly salts: {
    /** As of a saturated extract. */
    readonly conductivity_dSPerM: Estimate;
    readonly measured: boolean;
    readonly sensitive_dSPerM: number;
    readonly underSensitive: Chance;
    readonly hardy_dSPerM: number;
    readonly underHardy: Chance;
  };
  readonly ripeness: Ripeness;
  /** Weight of the full, wet bed on each square metre, without its walls. */
  readonly load_kgPerM2: Estimate;
  readonly mass_kg: Estimate;
  /** What a deck is commonly designed to bear, people and all. */
  readonly deck_kgPerM2: number;
  readonly overDeck: Chance;
  /** How far it sinks in its first year after settling. */
  readonly drop_m: Estimate;
  readonly topUp: { readonly volume_m3: Estimate; readonly measure: string; readonly count: Estimate };
  readonly advice: readonly BedAdviceId[];
  readonly cautions: readonly CautionId[];
}

const LONGEST_M = 200;
const DEEPEST_M = 3;
const LARGEST_M2 = 10_000;
const depth_m = between(positiveQuantity('Depth inside, m.'), 0.05, DEEPEST_M);
const side = (description: string): z.ZodType<Quantity> => between(positiveQuantity(description), 0.05, LONGEST_M);

export const bedFillInputSchema: z.ZodType<BedFillInput> = z.strictObject({
  bed: z.union([
    z.strictObject({ length_m: side('Length inside, m.'), width_m: side('Width inside, m.'), depth_m }),
    z.strictObject({ area_m2: between(positiveQuantity('Area inside, m².'), 0.01, LARGEST_M2), depth_m }),
  ]),
  beds: z.int().min(1).max(1000).optional(),
  compost_pctVolume: z.number().min(0).max(100).optional(),
  parts: z
    .array(z.strictObject({ part: z.enum(partIds), parts: z.number().min(0.01).max(1000) }))
    .min(1)
    .max(partIds.length * 2)
    .optional(),
  base: z
    .strictObject({
      stuff: z.enum(baseIds),
      depth_m: between(positiveQuantity('Depth of the woody foot, m.'), 0.01, DEEPEST_M),
    })
    .optional(),
  compost: compostSchema.optional(),
  standsOn: z.enum(standsOnIds).optional(),
  walls: z.enum(wallIds).optional(),
  onHand: onHandSchema.optional(),
  measure: z.string().min(1).optional(),
  ownSizes: z.record(z.string(), between(positiveQuantity('Litres.'), 0.001, 1e6)).optional(),
});

export const bedFillSchema: z.ZodType<BedFill> = z.strictObject({
  area_m2: estimateSchema('Area inside, m².'),
  volume_m3: estimateSchema('Volume inside, m³.'),
  mixDepth_m: estimateSchema('Depth of mix above the base, m.'),
  settled_share: estimateSchema('Of the loose volume, what is left once settled.'),
  bring_m3: estimateSchema('Loose mix to bring, m³.'),
  parts: z.array(partAmountSchema),
  base: z
    .strictObject({
      stuff: z.enum(baseIds),
      volume_m3: estimateSchema('Volume as it lies, m³.'),
      measure: z.string(),
      count: estimateSchema('In the measure.'),
      mass_kg: estimateSchema('Mass as it lies, kg.'),
    })
    .optional(),
  compost: z.strictObject({
    share_pctVolume: z.number(),
    low_pctVolume: z.number(),
    high_pctVolume: z.number(),
    stands: z.enum(['none', 'lean', 'within', 'over']),
  }),
  organicMatter_pctDry: estimateSchema('Organic matter of the mix, % of dry mass.'),
  phosphorus_years: estimateSchema('Years of vegetables that take off the compost’s phosphorus.'),
  salts: z.strictObject({
    conductivity_dSPerM: estimateSchema('As of a saturated extract, dS/m.'),
    measured: z.boolean(),
    sensitive_dSPerM: z.number(),
    underSensitive: chanceSchema,
    hardy_dSPerM: z.number(),
    underHardy: chanceSchema,
  }),
  ripeness: z.enum(ripenessIds),
  load_kgPerM2: estimateSchema('Weight of the full, wet bed, kg/m².'),
  mass_kg: estimateSchema('Weight of all of it, wet, kg.'),
  deck_kgPerM2: z.number(),
  overDeck: chanceSchema,
  drop_m: estimateSchema('How far it sinks in the first year, m.'),
  topUp: z.strictObject({
    volume_m3: estimateSchema('To top up with, m³.'),
    measure: z.string(),
    count: estimateSchema('In the measure.'),
  }),
  advice: z.array(z.enum(bedAdviceIds)),
  cautions: z.array(z.enum(cautionIds as readonly [CautionId, ...CautionId[]])),
});
