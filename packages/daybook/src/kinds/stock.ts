import type { Quantity } from '@loamwright/science';
import { z } from 'zod';
import { longText, mass_kg, shortText, volume_m3 } from './amount.ts';
import type { Kind } from './kind.ts';

/** A material that came onto the holding, or was gathered on it, and lies in store: `stock-in`. */
export interface StockIn {
  readonly mass_kg: Quantity;
  readonly volume_m3?: Quantity | undefined;
  /** Where it comes from: the café, the neighbour's hedge. */
  readonly supplier?: string | undefined;
  /** Number or place of the certificate that came with treated matter. */
  readonly certificate?: string | undefined;
  readonly note?: string | undefined;
}

export const stockIn: Kind<StockIn> = {
  id: 'stock-in',
  kv: 1,
  subject: 'material',
  body: z.strictObject({
    mass_kg,
    volume_m3: volume_m3.optional(),
    supplier: shortText.optional(),
    certificate: shortText.optional(),
    note: longText.optional(),
  }),
};

export type StockOutReason = 'used' | 'given' | 'sold' | 'spoiled' | 'counted';

/**
 * A material that left the store other than into a heap or onto a bed: `stock-out`. A layer that says
 * `from: { type: 'stock' }` takes from the store by itself.
 */
export interface StockOut {
  readonly mass_kg: Quantity;
  readonly volume_m3?: Quantity | undefined;
  /** `counted`: a count found less than the book said. */
  readonly why: StockOutReason;
  readonly note?: string | undefined;
}

export const stockOut: Kind<StockOut> = {
  id: 'stock-out',
  kv: 1,
  subject: 'material',
  body: z.strictObject({
    mass_kg,
    volume_m3: volume_m3.optional(),
    why: z.enum(['used', 'given', 'sold', 'spoiled', 'counted']),
    note: longText.optional(),
  }),
};
