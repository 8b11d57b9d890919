/** A picture's size in pixels. */
export interface Size {
  readonly width_px: number;
  readonly height_px: number;
}

/** Longest side of a picture that is kept: enough to see the weave of the straw, small enough for a phone. */
export const LONGEST_PX = 1600;

/** Most bytes a kept picture should have: a thousand of them are 300 MB. */
export const MOST_BYTES = 300_000;

/** Scales a size down so that its longer side has at most so many pixels. Never up, and never to nothing. */
export function fitted({ width_px, height_px }: Size, longest_px: number): Size {
  const scale = Math.min(1, longest_px / Math.max(width_px, height_px));
  return { width_px: Math.max(1, Math.round(width_px * scale)), height_px: Math.max(1, Math.round(height_px * scale)) };
}

/** One way of writing a picture smaller. */
export interface Attempt {
  readonly longest_px: number;
  /** Of the JPEG encoder, 0 … 1. */
  readonly quality: number;
}

/** From the best down, until one has few enough bytes: first a coarser encoding, then a smaller picture. */
export const attempts: readonly Attempt[] = [
  { longest_px: LONGEST_PX, quality: 0.82 },
  { longest_px: LONGEST_PX, quality: 0.7 },
  { longest_px: LONGEST_PX, quality: 0.55 },
  { longest_px: 1200, quality: 0.6 },
  { longest_px: 900, quality: 0.6 },
  { longest_px: 640, quality: 0.5 },
];
