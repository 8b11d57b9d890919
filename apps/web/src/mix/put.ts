import { believedOf } from '@loamwright/advisor';
import type { Entered, Holding, LayerPut } from '@loamwright/daybook';
import { type Amount, createDraws, materialById, sizeAmount, summarise } from '@loamwright/science';
import type { OwnMeasures } from '../device/settings.ts';

const draws = createDraws();

/** Stuff that heat must make safe. */
const riskyCautions: ReadonlySet<string> = new Set(['manure-pathogens', 'rats-flies', 'diseased-plants']);

/** Whether a material counts as raw: manure, scraps, what may be sick. An unknown one does. */
function isRaw(material: string): boolean {
  return materialById(material)?.cautions.some((id) => riskyCautions.has(id)) ?? true;
}

/**
 * An amount of a material as a layer of a heap, weighed with its spread; null where it can't be weighed. What the book
 * says lies in store is taken from there.
 */
export function layerPut(material: string, amount: Amount, ownSizes: OwnMeasures, holding: Holding): LayerPut | null {
  const own = holding.materials.get(material)?.described?.body;
  const known = believedOf(material, holding);
  if (known === undefined) return null;
  const sized = sizeAmount(amount, { draws, material: known, name: material, ownSizes, path: '' });
  if (!sized.ok) return null;
  const inStore = (holding.stock.get(material)?.mass_kg ?? 0) > 0;
  return {
    material,
    mass_kg: summarise(sized.value.mass_kg),
    volume_m3: summarise(sized.value.volume_m3),
    raw: own?.raw ?? isRaw(own?.like ?? material),
    ...(inStore ? { from: { type: 'stock' } } : {}),
  };
}

/** The amount as it was said, for the entry to keep beside the reckoned one. */
export function enteredOf(amount: Amount, said: string): Entered {
  if ('measure' in amount && typeof amount.count === 'number') {
    return { amount: amount.count, unit: amount.measure, words: said };
  }
  return { words: said };
}
