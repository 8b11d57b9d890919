/**
 * The scale on which an uncertain quantity is spread: a mass can be three times as much but never
 * negative, a moisture can never leave 0 to 100.
 * - `positive`: evenly on the logarithm; values above 0.
 * - `share`: evenly on the logit between its bounds; values strictly between them.
 * - `free`: evenly as it stands.
 */
export type Scale =
  | { readonly kind: 'positive' }
  | { readonly kind: 'share'; readonly lower: number; readonly upper: number }
  | { readonly kind: 'free' };

export const positive: Scale = { kind: 'positive' };
export const free: Scale = { kind: 'free' };
/** A percentage of something, 0 to 100. */
export const percent: Scale = { kind: 'share', lower: 0, upper: 100 };
/** A fraction of something, 0 to 1. */
export const fraction: Scale = { kind: 'share', lower: 0, upper: 1 };

/** Whether an uncertain value may stand on this scale (its bounds themselves may not). */
export function insideScale(value: number, scale: Scale): boolean {
  if (!Number.isFinite(value)) return false;
  switch (scale.kind) {
    case 'positive':
      return value > 0;
    case 'share':
      return value > scale.lower && value < scale.upper;
    case 'free':
      return true;
  }
}

/** Whether a certain value may stand on this scale (bounds included). */
export function onScale(value: number, scale: Scale): boolean {
  if (!Number.isFinite(value)) return false;
  switch (scale.kind) {
    case 'positive':
      return value >= 0;
    case 'share':
      return value >= scale.lower && value <= scale.upper;
    case 'free':
      return true;
  }
}

/** From the quantity to the unbounded line on which its distribution is normal. */
export function toLine(value: number, scale: Scale): number {
  switch (scale.kind) {
    case 'positive':
      return Math.log(value);
    case 'share':
      return Math.log((value - scale.lower) / (scale.upper - value));
    case 'free':
      return value;
  }
}

/** How near a share may come to its bound, as a part of its span: far below anything a grower could weigh. */
const NEAREST_BOUND = 1e-12;

/** Back from the line to the quantity; never outside the scale's bounds, whatever the rounding. */
export function fromLine(x: number, scale: Scale): number {
  switch (scale.kind) {
    case 'positive':
      return Math.min(Math.max(Math.exp(x), Number.MIN_VALUE), Number.MAX_VALUE);
    case 'share': {
      const share = Math.min(Math.max(1 / (1 + Math.exp(-x)), NEAREST_BOUND), 1 - NEAREST_BOUND);
      return scale.lower + (scale.upper - scale.lower) * share;
    }
    case 'free':
      return x;
  }
}
