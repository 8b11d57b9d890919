import { percentQuantity, positiveQuantity, type Quantity } from '@loamwright/science';
import { z } from 'zod';
import { nameSchema } from '../entry/header.ts';
import { length_m, longText, mass_kg, share, shortText, volume_m3 } from './amount.ts';
import type { Kind } from './kind.ts';
import { type LayerPut, layerPutSchema, maxLayers } from './layer.ts';

const layersSchema: z.ZodType<readonly LayerPut[]> = z.array(layerPutSchema).max(maxLayers);

/** What the mix was reckoned to be when it was built: a summary, kept as it was answered then. */
export interface MixAnswer {
  readonly carbonToNitrogen?: Quantity | undefined;
  readonly moisture_pctWet?: Quantity | undefined;
  readonly density_kgPerM3AsIs?: Quantity | undefined;
  readonly freeAirSpace_pct?: Quantity | undefined;
  readonly volume_m3?: Quantity | undefined;
  readonly height_m?: Quantity | undefined;
}

const mixAnswerSchema: z.ZodType<MixAnswer> = z.strictObject({
  carbonToNitrogen: positiveQuantity('Carbon to nitrogen of the mix, by mass').optional(),
  moisture_pctWet: percentQuantity('Water of the mix, % of wet mass').optional(),
  density_kgPerM3AsIs: positiveQuantity('Bulk density of the mix, kg/m³').optional(),
  freeAirSpace_pct: percentQuantity('Free air space, % of volume').optional(),
  volume_m3: volume_m3.optional(),
  height_m: length_m.optional(),
});

/** Length, depth and height of a heap as built. */
export interface HeapSize {
  readonly width_m?: Quantity | undefined;
  readonly depth_m?: Quantity | undefined;
  readonly height_m?: Quantity | undefined;
}

const heapSizeSchema: z.ZodType<HeapSize> = z.strictObject({
  width_m: length_m.optional(),
  depth_m: length_m.optional(),
  height_m: length_m.optional(),
});

/** A heap built, with its layers from the ground up, or begun empty to be fed: `heap-built`. */
export interface HeapBuilt {
  readonly name: string;
  /** Id of the bay it stands in. */
  readonly bay?: string | undefined;
  readonly layers: readonly LayerPut[];
  /** Water given while building, litres. */
  readonly water_L?: Quantity | undefined;
  readonly size?: HeapSize | undefined;
  readonly mix?: MixAnswer | undefined;
  readonly note?: string | undefined;
}

export const heapBuilt: Kind<HeapBuilt> = {
  id: 'heap-built',
  kv: 1,
  subject: 'heap',
  body: z.strictObject({
    name: shortText,
    bay: nameSchema.optional(),
    layers: layersSchema,
    water_L: positiveQuantity('Water given while building, litres').optional(),
    size: heapSizeSchema.optional(),
    mix: mixAnswerSchema.optional(),
    note: longText.optional(),
  }),
};

/** Something added to a standing heap, as a pail of scraps with its cover: `heap-fed`. */
export interface HeapFed {
  readonly layers: readonly LayerPut[];
  readonly note?: string | undefined;
}

export const heapFed: Kind<HeapFed> = {
  id: 'heap-fed',
  kv: 1,
  subject: 'heap',
  body: z.strictObject({
    layers: z.array(layerPutSchema).min(1).max(maxLayers),
    note: longText.optional(),
  }),
};

/** A heap, or its parts, brought together with others: `combined`. The subject is the heap they go into. */
export interface Combined {
  readonly from: readonly {
    readonly heap: string;
    /** Part of what lay there; left out, all of it. */
    readonly share?: number | undefined;
    /** False only where its record shows that it was made safe: else the safety clock starts again. */
    readonly raw?: boolean | undefined;
  }[];
  /** Name and bay, where the heap is new. */
  readonly name?: string | undefined;
  readonly bay?: string | undefined;
}

export const combined: Kind<Combined> = {
  id: 'combined',
  kv: 1,
  subject: 'heap',
  body: z.strictObject({
    from: z
      .array(z.strictObject({ heap: nameSchema, share: share.optional(), raw: z.boolean().optional() }))
      .min(1)
      .max(32),
    name: shortText.optional(),
    bay: nameSchema.optional(),
  }),
};

/** A heap parted: `split`. Shares are of what lay there just before; the rest stays. */
export interface Split {
  readonly into: readonly {
    readonly heap: string;
    readonly share: number;
    readonly name?: string | undefined;
    readonly bay?: string | undefined;
  }[];
}

/** Shares that people round (three thirds of 0.333 334) may pass 1 by this much. */
const SHARE_ROUNDING = 1e-4;

export const split: Kind<Split> = {
  id: 'split',
  kv: 1,
  subject: 'heap',
  body: z.strictObject({
    into: z
      .array(z.strictObject({ heap: nameSchema, share, name: shortText.optional(), bay: nameSchema.optional() }))
      .min(1)
      .max(32)
      .refine((parts) => parts.reduce((sum, part) => sum + part.share, 0) <= 1 + SHARE_ROUNDING, {
        params: { wanted: 'shares that together are at most 1' },
      }),
  }),
};

/** A heap sieved: `screened`. What stays on the screen goes back to stock. */
export interface Screened {
  /** Opening of the screen. */
  readonly mesh_m?: number | undefined;
  readonly oversize: {
    /** Material under which it goes back to stock. */
    readonly material: string;
    readonly mass_kg: Quantity;
    readonly volume_m3?: Quantity | undefined;
    /** Part of the heap's matter that stayed on the screen. */
    readonly share: number;
    /** Material of the heap that it chiefly is, as the chips put in to bulk it. */
    readonly of?: string | undefined;
  };
}

export const screened: Kind<Screened> = {
  id: 'screened',
  kv: 1,
  subject: 'heap',
  body: z.strictObject({
    mesh_m: z.number().gt(0).max(1).optional(),
    oversize: z.strictObject({
      material: nameSchema,
      mass_kg,
      volume_m3: volume_m3.optional(),
      share,
      of: nameSchema.optional(),
    }),
  }),
};

/** A heap called ready: `finished`. It says nothing about safety: the readings do. */
export interface Finished {
  readonly mass_kg?: Quantity | undefined;
  readonly volume_m3?: Quantity | undefined;
  readonly note?: string | undefined;
}

export const finished: Kind<Finished> = {
  id: 'finished',
  kv: 1,
  subject: 'heap',
  body: z.strictObject({
    mass_kg: mass_kg.optional(),
    volume_m3: volume_m3.optional(),
    note: longText.optional(),
  }),
};
