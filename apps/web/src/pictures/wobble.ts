/** Step of a drawn line, px: fine enough to look drawn by hand, coarse enough to stay small. */
const STEP = 22;

/** A share from 0 to 1 that looks like chance and is the same for the same numbers. */
function jitter(seed: number, i: number): number {
  const x = Math.sin(seed * 127.1 + i * 311.7) * 43758.5453;
  return x - Math.floor(x);
}

/** Points of a line from left to right that wavers a little about `y`, as the edge of a layer does. */
export function waver(options: {
  readonly from: number;
  readonly to: number;
  readonly y: number;
  readonly seed: number;
  readonly reach: number;
}): readonly (readonly [number, number])[] {
  const { from, to, y, seed, reach } = options;
  const steps = Math.max(2, Math.round((to - from) / STEP));
  return Array.from({ length: steps + 1 }, (_, i) => [
    from + ((to - from) * i) / steps,
    y + (jitter(seed, i) - 0.5) * 2 * reach,
  ]);
}
