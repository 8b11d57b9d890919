import { z } from 'zod';
import { free, insideScale, onScale, positive, type Scale } from './scale.ts';

/** An uncertain quantity: one chance in ten below `p10`, as likely above as below `p50`, one in ten above `p90`. */
export interface Estimate {
  readonly p10: number;
  readonly p50: number;
  readonly p90: number;
}

/** A number known well enough to be taken as it stands, or an estimate. */
export type Quantity = number | Estimate;

export function isEstimate(quantity: Quantity): quantity is Estimate {
  return typeof quantity !== 'number';
}

/** The likely value: the number itself, or the estimate's middle. */
export function likely(quantity: Quantity): number {
  return isEstimate(quantity) ? quantity.p50 : quantity;
}

/** What is wrong with a quantity on its scale, or `undefined`. */
function fault(quantity: Quantity, scale: Scale): string | undefined {
  if (!isEstimate(quantity)) return onScale(quantity, scale) ? undefined : describeBounds(scale, true);
  const { p10, p50, p90 } = quantity;
  if (!(p10 <= p50 && p50 <= p90)) return 'p10 ≤ p50 ≤ p90';
  return [p10, p50, p90].every((value) => insideScale(value, scale)) ? undefined : describeBounds(scale, false);
}

function describeBounds(scale: Scale, certain: boolean): string {
  switch (scale.kind) {
    case 'positive':
      return certain ? 'a number of 0 or more' : 'numbers above 0';
    case 'share':
      return certain
        ? `a number from ${scale.lower} to ${scale.upper}`
        : `numbers above ${scale.lower} and below ${scale.upper}`;
    case 'free':
      return 'a finite number';
  }
}

/**
 * The schema of a quantity on a scale. Its JSON Schema carries the scale as `scale`.
 * Refused: an estimate out of order, a value outside the scale, anything not finite.
 */
export function quantityOn(scale: Scale, description: string): z.ZodType<Quantity> {
  const estimate = z.strictObject({ p10: z.number(), p50: z.number(), p90: z.number() });
  return z
    .union([z.number(), estimate])
    .superRefine((quantity, context) => {
      const wanted = fault(quantity, scale);
      if (wanted !== undefined) context.addIssue({ code: 'custom', message: wanted, params: { wanted } });
    })
    .meta({ description, scale });
}

/** The schema of an estimate in an answer. */
export function estimateSchema(description: string): z.ZodType<Estimate> {
  return z.strictObject({ p10: z.number(), p50: z.number(), p90: z.number() }).meta({ description });
}

/** A quantity that can't be negative (mass, volume, ratio). */
export function positiveQuantity(description: string): z.ZodType<Quantity> {
  return quantityOn(positive, description);
}

/** A percentage. */
export function percentQuantity(description: string): z.ZodType<Quantity> {
  return quantityOn({ kind: 'share', lower: 0, upper: 100 }, description);
}

/** A fraction from 0 to 1. */
export function fractionQuantity(description: string): z.ZodType<Quantity> {
  return quantityOn({ kind: 'share', lower: 0, upper: 1 }, description);
}

/** A quantity without bounds (a temperature in °C). */
export function freeQuantity(description: string): z.ZodType<Quantity> {
  return quantityOn(free, description);
}
