import {
  freeQuantity,
  percentQuantity,
  positiveQuantity,
  type Quantity,
  type SoilFigure,
  type SoilTextureId,
  soilFigureSchema,
  soilTextureIds,
} from '@loamwright/science';
import { z } from 'zod';
import { nameSchema } from '../entry/header.ts';
import { length_m, longText, mass_kg, share, shortText, volume_m3 } from './amount.ts';
import type { Kind } from './kind.ts';

/** A bed set up or altered: `bed-set-up`. A later one replaces an earlier one. */
export interface BedSetUp {
  readonly name: string;
  readonly area_m2: Quantity;
  /** Depth of soil that is worked. */
  readonly depth_m?: Quantity | undefined;
  /** How coarse its soil is; since version 2. */
  readonly texture?: SoilTextureId | undefined;
  readonly note?: string | undefined;
}

export const bedSetUp: Kind<BedSetUp> = {
  id: 'bed-set-up',
  kv: 2,
  subject: 'bed',
  body: z.strictObject({
    name: shortText,
    area_m2: positiveQuantity('Area, m²'),
    depth_m: length_m.optional(),
    texture: z.enum(soilTextureIds).optional(),
    note: longText.optional(),
  }),
};

/** What was spread: part of a heap, or a material straight. */
export type SpreadSource =
  /** `share` of what lay in the heap just before. */
  | { readonly type: 'heap'; readonly id: string; readonly share: number }
  /** `raw` left out counts as raw; `fromStock` takes it out of the store. */
  | {
      readonly type: 'material';
      readonly id: string;
      readonly mass_kg: Quantity;
      readonly raw?: boolean | undefined;
      readonly fromStock?: boolean | undefined;
    };

/** Compost or a raw material put on a bed: `spread`. One entry for each bed. */
export interface Spread {
  readonly of: SpreadSource;
  /** Mass that went on the bed, as it was then. */
  readonly mass_kg?: Quantity | undefined;
  readonly volume_m3?: Quantity | undefined;
  /** Whether it was worked into the soil; false for a mulch. */
  readonly workedIn: boolean;
  readonly note?: string | undefined;
}

export const spread: Kind<Spread> = {
  id: 'spread',
  kv: 1,
  subject: 'bed',
  body: z.strictObject({
    of: z.discriminatedUnion('type', [
      z.strictObject({ type: z.literal('heap'), id: nameSchema, share }),
      z.strictObject({
        type: z.literal('material'),
        id: nameSchema,
        mass_kg,
        raw: z.boolean().optional(),
        fromStock: z.boolean().optional(),
      }),
    ]),
    mass_kg: mass_kg.optional(),
    volume_m3: volume_m3.optional(),
    workedIn: z.boolean(),
    note: longText.optional(),
  }),
};

/** A crop sown or planted: `sown`. */
export interface Sown {
  /** Its name in the tables, or as it is called; since version 2 with blanks and capitals. */
  readonly crop: string;
  readonly area_m2?: Quantity | undefined;
  /** Whether the part that is eaten touches the soil. Left out, it counts as touching. */
  readonly touchesSoil?: boolean | undefined;
  readonly note?: string | undefined;
}

export const sown: Kind<Sown> = {
  id: 'sown',
  kv: 2,
  subject: 'bed',
  body: z.strictObject({
    crop: shortText,
    area_m2: positiveQuantity('Area sown, m²').optional(),
    touchesSoil: z.boolean().optional(),
    note: longText.optional(),
  }),
};

/** A crop taken: `harvested`. */
export interface Harvested {
  /** As of `sown`. */
  readonly crop: string;
  readonly mass_kg?: Quantity | undefined;
  /** Whether the crop is over. */
  readonly last?: boolean | undefined;
  readonly note?: string | undefined;
}

export const harvested: Kind<Harvested> = {
  id: 'harvested',
  kv: 2,
  subject: 'bed',
  body: z.strictObject({
    crop: shortText,
    mass_kg: mass_kg.optional(),
    last: z.boolean().optional(),
    note: longText.optional(),
  }),
};

/** A soil test: `soil-tested`. At least one result. A phosphorus or potassium figure means nothing without its method. */
export interface SoilTested {
  readonly depth_m?: Quantity | undefined;
  readonly pH?: Quantity | undefined;
  readonly organicMatter_pctDry?: Quantity | undefined;
  readonly phosphorus_mgPerKg?: Quantity | undefined;
  readonly potassium_mgPerKg?: Quantity | undefined;
  /** Phosphorus and potassium as the lab prints them, each with its own unit and method; since version 2. */
  readonly figures?: readonly SoilFigure[] | undefined;
  /** Electrical conductivity, with the way it was extracted in `method`. */
  readonly conductivity_dSPerM?: Quantity | undefined;
  /** How P, K and salts were extracted. */
  readonly method?: string | undefined;
  readonly laboratory?: string | undefined;
  readonly note?: string | undefined;
}

const MOST_FIGURES = 8;

const results = [
  'pH',
  'organicMatter_pctDry',
  'phosphorus_mgPerKg',
  'potassium_mgPerKg',
  'figures',
  'conductivity_dSPerM',
] as const;

export const soilTested: Kind<SoilTested> = {
  id: 'soil-tested',
  kv: 2,
  subject: 'bed',
  body: z
    .strictObject({
      depth_m: length_m.optional(),
      pH: freeQuantity('pH of the soil').optional(),
      organicMatter_pctDry: percentQuantity('Organic matter, % of dry mass').optional(),
      phosphorus_mgPerKg: positiveQuantity('Phosphorus (P), mg per kg of dry soil').optional(),
      potassium_mgPerKg: positiveQuantity('Potassium (K), mg per kg of dry soil').optional(),
      figures: z.array(soilFigureSchema).min(1).max(MOST_FIGURES).optional(),
      conductivity_dSPerM: positiveQuantity('Electrical conductivity, dS/m').optional(),
      method: shortText.optional(),
      laboratory: shortText.optional(),
      note: longText.optional(),
    })
    .refine((body) => results.some((key) => body[key] !== undefined), {
      params: { wanted: 'a pH, organic matter, phosphorus, potassium or a conductivity' },
    }),
};
