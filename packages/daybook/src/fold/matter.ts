import { likely } from '@loamwright/science';
import type { Entry } from '../entry/entry.ts';
import type { LayerPut } from '../kinds/layer.ts';
import { compareText } from '../order.ts';
import type { LastRaw, Layer } from './holding.ts';
import { type OpenHeap, type OpenHolding, warn } from './open.ts';
import { moveStock } from './stock.ts';

/** Less of a heap than this is a rounding of shares (thirds of 0.333), not matter. */
export const GONE_SHARE = 0.001;

/** Part of some layers. Nothing of nothing is no layer. */
export function scaled(layers: readonly Layer[], share: number): readonly Layer[] {
  if (share <= 0) return [];
  if (share === 1) return layers;
  // Field by field: a fold does this hundreds of thousands of times, and spreading an object is several times slower.
  return layers.map(({ entry, index, added, put, share: part, mass_kg }) => ({
    entry,
    index,
    added,
    put,
    share: part * share,
    mass_kg: mass_kg * share,
  }));
}

/** Likely mass of layers as they were put in, kg. */
export function massOf(layers: readonly Layer[]): number {
  return layers.reduce((sum, layer) => sum + layer.mass_kg, 0);
}

/** Takes part of what lies in a heap out of it. */
export function take(heap: OpenHeap, share: number): readonly Layer[] {
  const taken = scaled(heap.layers, share);
  heap.layers = scaled(heap.layers, 1 - share);
  heap.went = join(heap.went, taken);
  heap.left *= 1 - share;
  return taken;
}

/** A heap of which nothing was left begins anew with what is added. */
export function refill(heap: OpenHeap): void {
  if (heap.left >= GONE_SHARE) return;
  heap.left = 1;
  heap.went = [];
}

/** Adds layers to a heap. Parts of one addition that come together again become one layer. */
export function join(layers: readonly Layer[], more: readonly Layer[]): readonly Layer[] {
  if (layers.length === 0) return more;
  const joined = new Map<string, Layer>();
  for (const layer of [...layers, ...more]) {
    const key = `${layer.entry} ${layer.index}`;
    const same = joined.get(key);
    joined.set(key, same === undefined ? layer : summed(same, layer));
  }
  return [...joined.values()];
}

function summed(a: Layer, b: Layer): Layer {
  return { ...a, share: a.share + b.share, mass_kg: a.mass_kg + b.mass_kg };
}

/** Layers by age, the oldest first; those of one entry as they were put. */
export function byAge(layers: readonly Layer[]): readonly Layer[] {
  return [...layers].sort(
    (a, b) => compareText(a.added, b.added) || compareText(a.entry, b.entry) || a.index - b.index,
  );
}

export function later(a: LastRaw | null, b: LastRaw | null): LastRaw | null {
  if (a === null || b === null) return a ?? b;
  return a.at >= b.at ? a : b;
}

/** Lays what an entry put in into a heap: taken from store, from another heap, or brought straight. */
export function lay(
  state: OpenHolding,
  heap: OpenHeap,
  entry: Entry,
  puts: readonly LayerPut[],
  why: 'built' | 'fed',
): void {
  const fresh: Layer[] = [];
  let raw = false;
  for (const [index, put] of puts.entries()) {
    const plain: Layer = { entry: entry.id, index, added: entry.happened, put, share: 1, mass_kg: likely(put.mass_kg) };
    if (put.from?.type !== 'heap') {
      if (put.from?.type === 'stock')
        moveStock(state, put.material, -1, put, { entry: entry.id, at: entry.happened, why: 'layer', with: heap.id });
      fresh.push(plain);
      raw ||= put.raw !== false;
      continue;
    }
    const source = state.heaps.get(put.from.id);
    if (source === undefined || source === heap) {
      warn(state, 'no-such-source', entry.id, put.from.id);
      fresh.push(plain);
      raw ||= put.raw !== false;
      continue;
    }
    const isRaw = put.raw ?? source.lastRaw !== null;
    if (!isRaw) heap.lastRaw = later(heap.lastRaw, source.lastRaw);
    raw ||= isRaw;
    const taken = transfer(source, heap, put.from.share, entry);
    if (taken.length === 0) fresh.push(plain);
    else heap.layers = join(heap.layers, taken);
  }
  heap.layers = heap.layers.length === 0 ? fresh : [...heap.layers, ...fresh];
  refill(heap);
  if (raw) heap.lastRaw = { at: entry.happened, entry: entry.id, why };
}

/** Takes part of one heap for another and writes down the way it went. What is taken is still to be added. */
export function transfer(source: OpenHeap, target: OpenHeap, share: number, entry: Entry): readonly Layer[] {
  const taken = take(source, share);
  const way = { entry: entry.id, at: entry.happened, type: 'heap', share, putIn_kg: massOf(taken) } as const;
  source.wentTo.push({ ...way, id: target.id });
  target.cameFrom.push({ ...way, id: source.id });
  return taken;
}
