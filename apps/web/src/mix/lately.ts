import type { Holding } from '@loamwright/daybook';

/** How many of the last materials are worth offering first. */
const OFFERED = 6;

/** Materials that went into heaps lately, the latest first. */
export function lately(holding: Holding): readonly string[] {
  const last = new Map<string, string>();
  for (const { layers } of holding.heaps.values()) {
    for (const { put, added } of layers) {
      if ((last.get(put.material) ?? '') < added) last.set(put.material, added);
    }
  }
  return [...last]
    .sort(([, a], [, b]) => (a < b ? 1 : -1))
    .slice(0, OFFERED)
    .map(([material]) => material);
}
