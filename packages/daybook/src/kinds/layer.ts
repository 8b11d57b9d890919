import { percentQuantity, type Quantity } from '@loamwright/science';
import { z } from 'zod';
import { nameSchema } from '../entry/header.ts';
import { mass_kg, share, shortText, volume_m3 } from './amount.ts';

/** Where a layer was taken from on the holding. Without it, it came straight to the heap. */
export type LayerSource =
  | { readonly type: 'stock' }
  /** Matter of another heap, as ripe compost laid in as a starter: `share` of what lay there. */
  | { readonly type: 'heap'; readonly id: string; readonly share: number };

/** What a layer is for in the build. */
export type LayerPart = 'base' | 'body' | 'starter' | 'cover';

/** One layer as it was laid, or one pail as it was tipped in. */
export interface LayerPut {
  /** Id of the material, of the tables or own. */
  readonly material: string;
  readonly mass_kg: Quantity;
  readonly volume_m3?: Quantity | undefined;
  readonly moisture_pctWet?: Quantity | undefined;
  readonly part?: LayerPart | undefined;
  /** How it was cut up: whole, shredded, mown … */
  readonly chopped?: string | undefined;
  /**
   * Raw or risky: manure, kitchen scraps, sick plants; whatever heat must make safe. Left out, it counts
   * as raw: the safety clock rather starts again once too often.
   */
  readonly raw?: boolean | undefined;
  readonly from?: LayerSource | undefined;
}

const sourceSchema: z.ZodType<LayerSource> = z.discriminatedUnion('type', [
  z.strictObject({ type: z.literal('stock') }),
  z.strictObject({ type: z.literal('heap'), id: nameSchema, share }),
]);

export const layerPutSchema: z.ZodType<LayerPut> = z.strictObject({
  material: nameSchema,
  mass_kg,
  volume_m3: volume_m3.optional(),
  moisture_pctWet: percentQuantity('Water, % of wet mass').optional(),
  part: z.enum(['base', 'body', 'starter', 'cover']).optional(),
  chopped: shortText.optional(),
  raw: z.boolean().optional(),
  from: sourceSchema.optional(),
});

/** Most layers in one entry. */
export const maxLayers: number = 200;
