import { added, stuffed } from '@loamwright/advisor';
import type { Heap, Holding } from '@loamwright/daybook';
import { type Ingredient, knownMaterial, type MixInput, type Quantity } from '@loamwright/science';

/**
 * The mix of a heap on the day it was built: each material once, for one hand guessed all of it, with the water that
 * was given. Undefined where nothing was laid then, or where the tables do not know all of it.
 */
export function builtMix({ built }: Heap, holding: Holding): MixInput | undefined {
  if (built === null || built.body.layers.length === 0) return undefined;
  const mass_kg = new Map<string, Quantity>();
  for (const { material, mass_kg: more } of built.body.layers) {
    const before = mass_kg.get(material);
    mass_kg.set(material, before === undefined ? more : added(before, more));
  }
  const ingredients = [...mass_kg].map(
    ([material, mass]): Ingredient => ({ ...stuffed(material, [], holding), amount: { mass_kg: mass } }),
  );
  if (ingredients.some(({ material, like }) => knownMaterial(like ?? material) === undefined)) return undefined;
  const { water_L } = built.body;
  return { ingredients, ...(water_L !== undefined && { water_L }) };
}
