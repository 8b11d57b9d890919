import cautionTable from '@loamwright/reference/cautions.json' with { type: 'json' };
import type { Citation } from '../catalogue/citation.ts';

/** The cautions the program shows; the words of each are the message `caution.ID`. */
export type CautionId = keyof typeof cautionTable;

/** Every caution with its sources, from the one table. */
export const cautions: Readonly<Record<CautionId, { readonly sources: readonly Citation[] }>> =
  cautionTable as Readonly<Record<CautionId, { readonly sources: readonly Citation[] }>>;

/** Every caution's id, in the order in which they are shown: what can hurt soonest comes first. */
export const cautionIds: readonly CautionId[] = Object.keys(cautionTable) as CautionId[];

/** Each caution once, in the table's order. */
export function inOrder(ids: Iterable<CautionId>): readonly CautionId[] {
  const wanted = new Set(ids);
  return cautionIds.filter((id) => wanted.has(id));
}
