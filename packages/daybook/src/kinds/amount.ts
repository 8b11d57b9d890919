import { positiveQuantity, type Quantity } from '@loamwright/science';
import { z } from 'zod';

/** Mass as it lies there, moisture included. */
export const mass_kg: z.ZodType<Quantity> = positiveQuantity('Mass as it lies there, in kg');
/** Volume as it lies there, loose unless said. */
export const volume_m3: z.ZodType<Quantity> = positiveQuantity('Volume as it lies there, in m³');
/** A length, as of a side or a depth. */
export const length_m: z.ZodType<Quantity> = positiveQuantity('Length in m');

/** Part of a whole, above 0 and up to 1. */
export const share: z.ZodType<number> = z
  .number()
  .gt(0)
  .max(1)
  .meta({ description: 'Part of the whole, above 0 up to 1' });

/** A short name a person gives. */
export const shortText: z.ZodType<string> = z.string().min(1).max(120);
/** A few sentences. */
export const longText: z.ZodType<string> = z.string().min(1).max(20_000);
