import type { z } from 'zod';
import { isEstimate, type Quantity } from './quantity.ts';

/** A quantity of at least so much, so that there is something to reckon with. */
export function between(schema: z.ZodType<Quantity>, least: number, most: number): z.ZodType<Quantity> {
  const wanted = `${least} to ${most}`;
  return schema.superRefine((quantity, context) => {
    const [low, high] = isEstimate(quantity) ? [quantity.p10, quantity.p90] : [quantity, quantity];
    if (low < least || high > most) context.addIssue({ code: 'custom', message: wanted, params: { wanted } });
  });
}
