import type { Entry } from './entry/entry.ts';
import { type Conflict, conflictsOf, distinct } from './entry/verify.ts';
import { compareInChain } from './order.ts';

/** The union of daybooks. */
export interface Merged {
  /** Every version once, ordered by device and n. */
  readonly entries: readonly Entry[];
  /** Ids that stand for more than one sum: both versions are among the entries. */
  readonly conflicts: readonly Conflict[];
}

/**
 * Union of daybooks by id and sum. The order of the daybooks, of their entries, and how often each occurs make
 * no difference: merging commutes, associates and is idempotent.
 */
export function merge(...daybooks: readonly Iterable<Entry>[]): Merged {
  const entries = [...distinct(everyOf(daybooks))].sort(compareInChain);
  return { entries, conflicts: conflictsOf(entries) };
}

function* everyOf(daybooks: readonly Iterable<Entry>[]): Iterable<Entry> {
  for (const daybook of daybooks) yield* daybook;
}
