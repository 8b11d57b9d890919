import { type Draws, drawsOf, fromPublished, type PublishedRange, positive } from '../estimate/index.ts';
import type { Resolved } from './ingredient.ts';
import type { WeighedMix } from './mix-input.ts';
import { mixParameters } from './parameters.ts';
import type { Portion } from './portion.ts';

/**
 * Water that a portion of a material can still take up before it drips, litres, draw by draw: what its
 * dry mass holds less what is in it. Fresh greens hold theirs in their cells and take up none.
 * Capacities: Spiehs et al. 2013; Whisenand 1918; `reference/mix.json`, waterCapacity.
 */
export function roomForWater_L(
  resolved: Pick<Resolved, 'published'>,
  portions: readonly Portion[],
  draws: Draws,
): Float64Array {
  const { id, class: kind, particle } = resolved.published;
  if (kind === 'mineral' || kind === 'starter' || particle === 'liquid') return new Float64Array(draws.count);
  const range: PublishedRange =
    mixParameters.waterCapacity.find((row) => row.material === id) ?? mixParameters.waterCapacityOther;
  const held_gPerG = drawsOf(draws, `${id}/waterCapacity_gPerG`, fromPublished(range, positive), positive);
  return held_gPerG.map((held, i) => {
    const { wet_kg, dry_kg } = portions[i] ?? { wet_kg: Number.NaN, dry_kg: Number.NaN };
    return Math.max(0, held * dry_kg - (wet_kg - dry_kg));
  });
}

/** Water the mix's ingredients can take up, litres, draw by draw. */
export function roomInMix_L(mix: WeighedMix, draws: Draws): Float64Array {
  const rooms = mix.ingredients.map((ingredient) => roomForWater_L(ingredient, ingredient.portions, draws));
  return mix.water_L.map((_, i) => rooms.reduce((sum, room) => sum + (room[i] ?? 0), 0));
}
