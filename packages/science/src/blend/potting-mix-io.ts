import { z } from 'zod';
import { type CautionId, cautionIds } from '../caution/index.ts';
import { ratings } from '../curing/maturity-parameters.ts';
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
import { type CompostKnown, compostSchema, type MaturitySign, type Ripeness, ripenessIds } from './compost.ts';
import type { BlendPH } from './medium.ts';
import {
  type Parts,
  partIds,
  type RecipeId,
  recipeIds,
  type UseId,
  useIds,
  type VesselId,
  vesselIds,
} from './parameters.ts';

/** So many pots or trays, by what one holds or by their kind. */
export type Wanted =
  | { readonly count: number; readonly each_L: Quantity }
  | { readonly count: number; readonly vessel: VesselId };

export interface PottingMixInput {
  readonly use: UseId;
  readonly wanted: readonly Wanted[];
  readonly compost?: CompostKnown | undefined;
  /** A published recipe; else parts of one's own; else the usual recipe for the use. */
  readonly recipe?: RecipeId | undefined;
  readonly parts?: readonly Parts[] | undefined;
  readonly onHand?: readonly OnHand[] | undefined;
  readonly measure?: string | undefined;
  readonly ownSizes?: OwnSizes | undefined;
  /** Whether what grows in it is eaten raw. */
  readonly eatenRaw?: boolean | undefined;
}

/** What to do or to mind; the message `blend.advice.ID`. */
export const pottingAdviceIds = [
  'young-wait',
  'young-bigger-plants',
  'unknown-test',
  'salty-dilute',
  'salty-leach',
  'use-leaf-mould',
  'much-compost',
  'little-air',
  'charge-charcoal',
  'feed-later',
  'raw-salads',
] as const;
export type PottingAdviceId = (typeof pottingAdviceIds)[number];

export interface PottingMix {
  readonly use: UseId;
  /** Absent with parts of one's own. */
  readonly recipe?: RecipeId | undefined;
  /** Mix that the pots and trays take, m³. */
  readonly volume_m3: Estimate;
  /** Of the summed loose volumes, what is left once mixed and watered; 1 for one stuff alone. */
  readonly mixed_share: Estimate;
  readonly parts: readonly PartAmount[];
  readonly salts: {
    /** As of a saturated extract. */
    readonly conductivity_dSPerM: Estimate;
    readonly most_dSPerM: number;
    readonly under: Chance;
    readonly measured: boolean;
    /** The most compost with which salts stay under the limit nine times in ten, the other parts keeping their proportions. */
    readonly mostCompost_pctVolume: number;
    /** Water that would wash the salts out of the compost asked for, litres. */
    readonly leach_L: Estimate;
  };
  readonly maturity: { readonly ripeness: Ripeness; readonly signs: readonly MaturitySign[] };
  readonly compost: {
    readonly share_pctVolume: number;
    /** From the one to the other handbooks stop. */
    readonly low_pctVolume: number;
    readonly high_pctVolume: number;
    readonly stands: 'none' | 'within' | 'upper' | 'over';
  };
  readonly pH?: BlendPH | undefined;
  readonly wet: {
    readonly mass_kg: Estimate;
    readonly density_kgPerM3: Estimate;
    readonly waterHeld_pctVolume: Estimate;
    readonly air_pctVolume: Estimate;
    readonly leastAir_pctVolume: number;
    readonly airEnough: Chance;
  };
  readonly advice: readonly PottingAdviceId[];
  readonly cautions: readonly CautionId[];
}

const MOST_VESSELS = 10_000;
const LARGEST_VESSEL_L = 10_000;
const count = z.number().positive().max(MOST_VESSELS);

export const pottingMixInputSchema: z.ZodType<PottingMixInput> = z.strictObject({
  use: z.enum(useIds),
  wanted: z
    .array(
      z.union([
        z.strictObject({
          count,
          each_L: between(positiveQuantity('What one pot holds, litres.'), 0.01, LARGEST_VESSEL_L),
        }),
        z.strictObject({ count, vessel: z.enum(vesselIds) }),
      ]),
    )
    .min(1)
    .max(20),
  compost: compostSchema.optional(),
  recipe: z.enum(recipeIds).optional(),
  parts: z
    .array(z.strictObject({ part: z.enum(partIds), parts: z.number().min(0.01).max(1000) }))
    .min(1)
    .max(partIds.length * 2)
    .optional(),
  onHand: onHandSchema.optional(),
  measure: z.string().min(1).optional(),
  ownSizes: z.record(z.string(), between(positiveQuantity('Litres.'), 0.001, 1e6)).optional(),
  eatenRaw: z.boolean().optional(),
});

const cautionSchema = z.array(z.enum(cautionIds as readonly [CautionId, ...CautionId[]]));

export const pottingMixSchema: z.ZodType<PottingMix> = z.strictObject({
  use: z.enum(useIds),
  recipe: z.enum(recipeIds).optional(),
  volume_m3: estimateSchema('Mix that the pots take, m³.'),
  mixed_share: estimateSchema('Of the summed loose volumes, what is left once mixed.'),
  parts: z.array(partAmountSchema),
  salts: z.strictObject({
    conductivity_dSPerM: estimateSchema('As of a saturated extract, dS/m.'),
    most_dSPerM: z.number(),
    under: chanceSchema,
    measured: z.boolean(),
    mostCompost_pctVolume: z.number(),
    leach_L: estimateSchema('Water to wash the compost with, litres.'),
  }),
  maturity: z.strictObject({
    ripeness: z.enum(ripenessIds),
    signs: z.array(
      z.strictObject({
        sign: z.enum(['self-heating', 'seedlings', 'smell', 'age']),
        says: z.enum(ratings),
      }),
    ),
  }),
  compost: z.strictObject({
    share_pctVolume: z.number(),
    low_pctVolume: z.number(),
    high_pctVolume: z.number(),
    stands: z.enum(['none', 'within', 'upper', 'over']),
  }),
  pH: z
    .strictObject({
      low: z.number(),
      high: z.number(),
      wanted: z.strictObject({ id: z.enum(['with-soil', 'without-soil']), low: z.number(), high: z.number() }),
      leans: z.enum(['acid', 'right', 'alkaline']),
    })
    .optional(),
  wet: z.strictObject({
    mass_kg: estimateSchema('All of it, watered and drained, kg.'),
    density_kgPerM3: estimateSchema('Watered and drained, kg/m³.'),
    waterHeld_pctVolume: estimateSchema('Water held once drained, % of volume.'),
    air_pctVolume: estimateSchema('Air once drained, % of volume.'),
    leastAir_pctVolume: z.number(),
    airEnough: chanceSchema,
  }),
  advice: z.array(z.enum(pottingAdviceIds)),
  cautions: cautionSchema,
});
