import type { Heap, Holding } from '@loamwright/daybook';
import { type ColdSkin, check, coldSkin, likely, type Needs, type Outcome } from '@loamwright/science';

/** The cold skin of a heap so wide, as a long heap and as a dome: its true shape lies between. */
export interface SkinFound {
  readonly width_m: number;
  readonly turns: number;
  readonly long: ColdSkin;
  readonly dome: ColdSkin;
}

interface Heaped {
  /** At the foot, m. */
  readonly width_m: number;
  readonly turns: number;
}

/** The cold skin of a heap by its width; null where no heap is so wide. */
export function skinAcross({ width_m, turns }: Heaped, needs: Needs): SkinFound | null {
  const shaped = (shape: 'long-heap' | 'dome'): Outcome<ColdSkin> => {
    const input = check(coldSkin.input, { shape, radius_m: width_m / 2, turns });
    return input.ok ? coldSkin.run(input.value, needs) : input;
  };
  const long = shaped('long-heap');
  const dome = shaped('dome');
  return long.ok && dome.ok ? { width_m, turns, long: long.value, dome: dome.value } : null;
}

/** The cold skin of a heap of the daybook, by its own width or that of its bay; null where nobody knows either. */
export function skinOfHeap(holding: Holding, heap: Heap, turns: number, needs: Needs): SkinFound | null {
  const width = heap.built?.body.size?.width_m ?? holding.bays.get(heap.bay ?? '')?.setUp.body.width_m;
  return width === undefined ? null : skinAcross({ width_m: likely(width), turns }, needs);
}
