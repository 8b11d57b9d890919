import { freeQuantity, percentQuantity, positiveQuantity, type Quantity } from '@loamwright/science';
import { z } from 'zod';
import { nameSchema } from '../entry/header.ts';
import { length_m, longText, shortText } from './amount.ts';
import type { Kind } from './kind.ts';

/** Where in the heap the probe was. */
export type Point = 'core' | 'middle' | 'edge' | 'top' | 'bottom';

/**
 * A handful from the middle, squeezed hard: water streams out; drops come between the fingers; it shines and
 * holds together without a drop; the ball crumbles; it is dusty. (Common practice, no source.)
 */
export type Squeeze = 'streams' | 'drops' | 'holds' | 'crumbles' | 'dusty';

export type Smell = 'none' | 'earthy' | 'ammonia' | 'sour' | 'rotten' | 'musty' | 'smoke';

/** What was seen, felt or read at a heap: `reading`. At least one observation. */
export interface Reading {
  readonly temp_degC?: Quantity | undefined;
  /** Whether the temperature was asked about as one that can hardly be, and kept all the same; since version 2. */
  readonly doubted?: boolean | undefined;
  readonly point?: Point | undefined;
  /** How deep the probe was. */
  readonly depth_m?: Quantity | undefined;
  /** Which probe. */
  readonly probe?: string | undefined;
  readonly ambient_degC?: Quantity | undefined;
  readonly squeeze?: Squeeze | undefined;
  readonly smell?: Smell | undefined;
  readonly height_m?: Quantity | undefined;
  readonly moisture_pctWet?: Quantity | undefined;
  readonly oxygen_pctVol?: Quantity | undefined;
  readonly note?: string | undefined;
}

const observations = ['temp_degC', 'squeeze', 'smell', 'height_m', 'moisture_pctWet', 'oxygen_pctVol'] as const;

export const reading: Kind<Reading> = {
  id: 'reading',
  kv: 2,
  subject: 'heap',
  body: z
    .strictObject({
      temp_degC: freeQuantity('Temperature in the heap, °C').optional(),
      doubted: z.boolean().optional(),
      point: z.enum(['core', 'middle', 'edge', 'top', 'bottom']).optional(),
      depth_m: length_m.optional(),
      probe: shortText.optional(),
      ambient_degC: freeQuantity('Temperature of the air, °C').optional(),
      squeeze: z.enum(['streams', 'drops', 'holds', 'crumbles', 'dusty']).optional(),
      smell: z.enum(['none', 'earthy', 'ammonia', 'sour', 'rotten', 'musty', 'smoke']).optional(),
      height_m: length_m.optional(),
      moisture_pctWet: percentQuantity('Water, % of wet mass').optional(),
      oxygen_pctVol: percentQuantity('Oxygen in the pore air, % by volume').optional(),
      note: longText.optional(),
    })
    .refine((body) => observations.some((key) => body[key] !== undefined), {
      params: { wanted: 'a temperature, a squeeze, a smell, a height, a moisture or an oxygen' },
    }),
};

/** A heap turned, where it stands or into another bay: `turned`. */
export interface Turned {
  /** Bay it was turned into; left out, it stays where it was. */
  readonly bay?: string | undefined;
  /** Whether the outside went to the middle on purpose. */
  readonly outsideIn?: boolean | undefined;
  readonly note?: string | undefined;
}

export const turned: Kind<Turned> = {
  id: 'turned',
  kv: 1,
  subject: 'heap',
  body: z.strictObject({
    bay: nameSchema.optional(),
    outsideIn: z.boolean().optional(),
    note: longText.optional(),
  }),
};

/** What was poured: everything but clean water may carry germs back in. */
export type Liquid = 'water' | 'leachate' | 'urine' | 'slurry' | 'other';

/** A heap watered: `watered`. */
export interface Watered {
  readonly volume_L: Quantity;
  /** Left out, clean water. Any other liquid starts the safety clock again. */
  readonly liquid?: Liquid | undefined;
  readonly note?: string | undefined;
}

export const watered: Kind<Watered> = {
  id: 'watered',
  kv: 1,
  subject: 'heap',
  body: z.strictObject({
    volume_L: positiveQuantity('Volume poured, litres'),
    liquid: z.enum(['water', 'leachate', 'urine', 'slurry', 'other']).optional(),
    note: longText.optional(),
  }),
};

export type Cover = 'none' | 'sheet' | 'lid' | 'straw' | 'leaves' | 'soil' | 'compost' | 'other';

/** A heap covered, or its cover taken off (`none`): `covered`. */
export interface Covered {
  readonly cover: Cover;
  readonly thickness_m?: Quantity | undefined;
  readonly note?: string | undefined;
}

export const covered: Kind<Covered> = {
  id: 'covered',
  kv: 1,
  subject: 'heap',
  body: z.strictObject({
    cover: z.enum(['none', 'sheet', 'lid', 'straw', 'leaves', 'soil', 'compost', 'other']),
    thickness_m: length_m.optional(),
    note: longText.optional(),
  }),
};

/** A heap moved to another bay as it is, as in a drum or on a pallet: `moved`. */
export interface Moved {
  readonly bay: string;
  readonly note?: string | undefined;
}

export const moved: Kind<Moved> = {
  id: 'moved',
  kv: 1,
  subject: 'heap',
  body: z.strictObject({ bay: nameSchema, note: longText.optional() }),
};
