import type { CautionId } from '../caution/index.ts';
import { mixParameters } from './parameters.ts';
import { smallestHeap_m3 } from './warnings.ts';

/** A heap as far as fire goes, on likely values. */
export interface Burnable {
  readonly volume_m3: number;
  /** In its bay; without one, that of a heap as high as it is wide. */
  readonly height_m?: number | undefined;
  readonly moisture_pctWet: number;
}

/** Whether a heap can heat itself on: too high to shed its heat, or too dry to be cooled by its steam and large enough to heat. */
export function mayBurn({ volume_m3, height_m = Math.cbrt(volume_m3), moisture_pctWet }: Burnable): boolean {
  const { higherThan_m, drierThan_pctWet } = mixParameters.fire;
  const isDry = moisture_pctWet < drierThan_pctWet.value && volume_m3 >= smallestHeap_m3('three-seasons');
  return isDry || height_m > higherThan_m.value;
}

/** The cautions of what goes in, without fire where the heap cannot catch it. */
export function demanded(cautions: readonly CautionId[], heap: Burnable): readonly CautionId[] {
  return mayBurn(heap) ? cautions : cautions.filter((id) => id !== 'fire');
}
