import { type Conflict, compareText, type Entry, KeepingError, type KeepReport } from '@loamwright/daybook';

/** What a keeping has to do for a batch, worked out before anything is written. */
export interface BatchPlan {
  /** Entries to add, in the order of the batch. */
  readonly fresh: readonly Entry[];
  readonly report: KeepReport;
  /** The holding of the keeping once the batch is in; null while it is empty. */
  readonly holding: string | null;
}

/** What a keeping already has, as far as a batch asks. */
export interface BatchGround {
  readonly holding: string | null;
  /** Sums kept of this id. */
  readonly sumsOf: (id: string) => readonly string[];
}

/**
 * Union by id and sum (rules K1, K2, K4, K5).
 * @throws KeepingError `other-holding` when one entry belongs to another holding than the first kept.
 */
export function planBatch(entries: readonly Entry[], ground: BatchGround): BatchPlan {
  const holding = holdingOf(entries, ground.holding);
  const sums = new Map<string, Set<string>>();
  const fresh: Entry[] = [];
  for (const entry of entries) {
    let kept = sums.get(entry.id);
    if (kept === undefined) {
      kept = new Set(ground.sumsOf(entry.id));
      sums.set(entry.id, kept);
    }
    if (kept.has(entry.sum)) continue;
    kept.add(entry.sum);
    fresh.push(entry);
  }
  const conflicts: readonly Conflict[] = [...sums]
    .filter(([, kept]) => kept.size > 1)
    .map(([id, kept]) => ({ id, sums: [...kept].sort(compareText) }))
    .sort((a, b) => compareText(a.id, b.id));
  return { fresh, holding, report: { kept: fresh.length, there: entries.length - fresh.length, conflicts } };
}

/** The one holding of a keeping (rule K4). */
export function holdingOf(entries: readonly Entry[], kept: string | null): string | null {
  const holding = kept ?? entries[0]?.holding ?? null;
  const other = entries.find((entry) => entry.holding !== holding);
  if (other === undefined) return holding;
  throw new KeepingError(
    'other-holding',
    `entry ${other.id} belongs to the holding "${other.holding}", this daybook is that of "${holding}": nothing was kept`,
  );
}
