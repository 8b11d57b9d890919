import type { Heap, Layer } from '@loamwright/daybook';

/** What a heap is made of: what lies in it, or, of one that is gone, what it was made of when it was taken. */
export function makeUp({ phase, layers, went }: Heap): readonly Layer[] {
  return phase === 'gone' ? went : layers;
}
