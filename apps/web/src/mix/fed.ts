import type { Heap } from '@loamwright/daybook';

/** Whether it still stands and has been fed since it was built. */
export function isFed({ acts, phase }: Heap): boolean {
  return phase === 'standing' && acts.some(({ kind }) => kind === 'heap-fed');
}
