import type { Quantity } from '@loamwright/science';
import { z } from 'zod';
import { length_m, longText, shortText } from './amount.ts';
import type { Kind } from './kind.ts';

/** What a bay is walled with; `open` is bare ground without walls, `drum` a closed vessel. */
export type Wall = 'boards' | 'pallets' | 'mesh' | 'masonry' | 'bales' | 'plastic' | 'drum' | 'open' | 'other';

/** A place a heap can stand, set up or altered: `bay-set-up`. A later one replaces an earlier one. */
export interface BaySetUp {
  readonly name: string;
  readonly width_m?: Quantity | undefined;
  readonly depth_m?: Quantity | undefined;
  /** Height up to which it can be filled. */
  readonly height_m?: Quantity | undefined;
  readonly wall: Wall;
  readonly roofed?: boolean | undefined;
  readonly note?: string | undefined;
}

export const baySetUp: Kind<BaySetUp> = {
  id: 'bay-set-up',
  kv: 1,
  subject: 'bay',
  body: z.strictObject({
    name: shortText,
    width_m: length_m.optional(),
    depth_m: length_m.optional(),
    height_m: length_m.optional(),
    wall: z.enum(['boards', 'pallets', 'mesh', 'masonry', 'bales', 'plastic', 'drum', 'open', 'other']),
    roofed: z.boolean().optional(),
    note: longText.optional(),
  }),
};
