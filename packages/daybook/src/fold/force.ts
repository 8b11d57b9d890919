import type { Entry } from '../entry/entry.ts';
import { compareInFold, compareText, compareWriting } from '../order.ts';
import { type OutOfForce, type Powerless, settleWithdrawals, threadAmendments, type Waiting } from './threads.ts';

/** One id with more than one sum. Neither version is in force: which of them is true can't be told from here. */
export interface ConflictKept {
  readonly id: string;
  /** Every version, ordered by sum. */
  readonly versions: readonly Entry[];
  /** Id of the withdrawal by which a person has settled it, if one has. */
  readonly withdrawnBy: string | null;
}

/** Which entries of a set are in force. Lists are in the order of the fold; equal sets give equal results. */
export interface Force {
  readonly inForce: readonly Entry[];
  readonly outOfForce: readonly OutOfForce[];
  readonly waiting: readonly Waiting[];
  readonly conflicts: readonly ConflictKept[];
  readonly powerless: readonly Powerless[];
}

/**
 * Settles which entries are in force.
 *
 * - An amendment stands for a whole new content of what it amends. Of several, also amendments of amendments, the
 *   latest by `written`, `device`, `n` is in force.
 * - A withdrawal takes back an entry and what amends it. Taking back an amendment brings back what it amended;
 *   taking back a withdrawal makes it as if it had never been.
 * - What is amended keeps its place among things that happened at one instant: there the first writing decides the
 *   order, so that a build corrected tonight still comes before the split that was told after it.
 * - An amendment or withdrawal of an entry that has not arrived waits.
 * - Of an id with two sums neither version is in force, and neither amends or withdraws anything.
 */
export function settle(entries: Iterable<Entry>): Force {
  const { byId, conflicts } = parted(entries);
  const withdrawals: Entry[] = [];
  const amendments: Entry[] = [];
  for (const entry of byId.values()) {
    if (entry.withdraws !== undefined) withdrawals.push(entry);
    else if (entry.amends !== undefined) amendments.push(entry);
  }
  const taken = settleWithdrawals(withdrawals, byId, conflicts);
  const threads = threadAmendments(amendments, byId, conflicts, taken.by);

  const inForce: { readonly entry: Entry; readonly first: Entry }[] = [];
  const outOfForce: OutOfForce[] = [...threads.outOfForce];
  for (const entry of byId.values()) {
    if (entry.amends !== undefined) continue;
    const by = taken.by.get(entry.id);
    const latest = threads.latest.get(entry.id);
    if (by !== undefined) outOfForce.push({ entry, why: 'withdrawn', by });
    else if (entry.withdraws !== undefined) continue;
    else if (latest === undefined) inForce.push({ entry, first: entry });
    else {
      inForce.push({ entry: latest, first: entry });
      outOfForce.push({ entry, why: 'amended', by: latest.id });
    }
  }
  return {
    inForce: inForce
      .sort((a, b) => compareText(a.entry.happened, b.entry.happened) || compareWriting(a.first, b.first))
      .map(({ entry }) => entry),
    outOfForce: outOfForce.sort((a, b) => compareInFold(a.entry, b.entry)),
    waiting: [...taken.waiting, ...threads.waiting].sort((a, b) => compareInFold(a.entry, b.entry)),
    conflicts: [...conflicts.values()]
      .map((versions) => conflictKept(versions, taken.by))
      .sort((a, b) => compareText(a.id, b.id)),
    powerless: [...taken.powerless, ...threads.powerless].sort((a, b) => compareInFold(a.entry, b.entry)),
  };
}

/** Entries by id, those of doubtful ids apart. */
function parted(entries: Iterable<Entry>): {
  byId: Map<string, Entry>;
  conflicts: ReadonlyMap<string, readonly Entry[]>;
} {
  const byId = new Map<string, Entry>();
  const conflicts = new Map<string, Entry[]>();
  for (const entry of entries) {
    const other = byId.get(entry.id);
    if (other === undefined) byId.set(entry.id, entry);
    else if (other.sum !== entry.sum) {
      const versions = conflicts.get(entry.id) ?? [other];
      if (versions.every(({ sum }) => sum !== entry.sum)) versions.push(entry);
      conflicts.set(entry.id, versions);
    }
  }
  for (const id of conflicts.keys()) byId.delete(id);
  return { byId, conflicts };
}

function conflictKept(versions: readonly Entry[], takenBy: ReadonlyMap<string, string>): ConflictKept {
  const sorted = [...versions].sort((a, b) => compareText(a.sum, b.sum));
  const id = sorted[0]?.id ?? '';
  return { id, versions: sorted, withdrawnBy: takenBy.get(id) ?? null };
}
