import type { Heap, Holding } from '@loamwright/daybook';
import {
  type ColdSkin,
  check,
  coldSkin,
  good,
  likely,
  type Needs,
  type Outcome,
  type Quantity,
} from '@loamwright/science';

/** The cold skin of a heap so wide, as a long heap and as a dome: its true shape lies between. */
export interface SkinFound {
  readonly width_m: number;
  readonly turns: number;
  /** Tenfold steps that were asked for. */
  readonly want_logs?: number | undefined;
  readonly long: ColdSkin;
  readonly dome: ColdSkin;
}

/** How often a heap was turned, and how many tenfold steps the turnings are to bring. */
export interface SkinAsked {
  readonly turns: number;
  readonly want_logs?: number | undefined;
}

interface Heaped extends SkinAsked {
  /** At the foot, m. */
  readonly width_m: number;
}

/** The cold skin of a heap by its width. Problems at `radius_m`, where no heap is so wide, and at `want_logs`. */
export function skinAcross({ width_m, turns, want_logs }: Heaped, needs: Needs): Outcome<SkinFound> {
  const steps = want_logs === undefined ? {} : { want_logs };
  const shaped = (shape: 'long-heap' | 'dome'): Outcome<ColdSkin> => {
    const input = check(coldSkin.input, { shape, radius_m: width_m / 2, turns, ...steps });
    return input.ok ? coldSkin.run(input.value, needs) : input;
  };
  const long = shaped('long-heap');
  const dome = shaped('dome');
  if (!long.ok) return long;
  return dome.ok ? good({ width_m, turns, ...steps, long: long.value, dome: dome.value }) : dome;
}

/**
 * How far across a heap of the daybook is, m: the shorter of its own sides or else of its bay’s, since heat leaves by the nearest skin;
 * nothing where nobody knows either.
 */
export function widthOfHeap(holding: Holding, heap: Heap): number | undefined {
  return shorterOf(heap.built?.body.size) ?? shorterOf(holding.bays.get(heap.bay ?? '')?.setUp.body);
}

interface Sides {
  readonly width_m?: Quantity | undefined;
  readonly depth_m?: Quantity | undefined;
}

function shorterOf({ width_m, depth_m }: Sides = {}): number | undefined {
  const sides = [width_m, depth_m].filter((side) => side !== undefined).map(likely);
  return sides.length === 0 ? undefined : Math.min(...sides);
}

/** The cold skin of a heap of the daybook; null where nobody knows its width, or where no heap is so wide. */
export function skinOfHeap(holding: Holding, heap: Heap, turns: number, needs: Needs): SkinFound | null {
  const width_m = widthOfHeap(holding, heap);
  const skin = width_m === undefined ? undefined : skinAcross({ width_m, turns }, needs);
  return skin?.ok === true ? skin.value : null;
}
