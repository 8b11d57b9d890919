import { isInStore, layerPut } from '@loamwright/advisor';
import type { Entered, Holding, LayerPut } from '@loamwright/daybook';
import type { Amount } from '@loamwright/science';
import type { OwnMeasures } from '../device/settings.ts';
import { needs } from './needs.ts';

/**
 * An amount of a material as a layer of a heap; null where it can't be weighed. What the book says lies in store is
 * taken from there.
 */
export function layerOf(material: string, amount: Amount, ownSizes: OwnMeasures, holding: Holding): LayerPut | null {
  const weighing = { holding, ownSizes, draws: needs.draws };
  const put = layerPut({ material, amount }, isInStore(material, holding), weighing);
  return put.ok ? put.value : null;
}

/** The amount as it was said, for the entry to keep beside the reckoned one. */
export function enteredOf(amount: Amount, said: string): Entered {
  if ('measure' in amount && typeof amount.count === 'number') {
    return { amount: amount.count, unit: amount.measure, words: said };
  }
  return { words: said };
}
