import type { Entry } from '../entry/entry.ts';
import { compareWriting } from '../order.ts';

/** Why an entry is kept but out of force, and the id of the entry that put it there. */
export interface OutOfForce {
  readonly entry: Entry;
  readonly why: 'withdrawn' | 'amended';
  readonly by: string;
}

/** An amendment or withdrawal whose target has not arrived; it takes effect when it does. */
export interface Waiting {
  readonly entry: Entry;
  /** Id of the entry waited for. */
  readonly for: string;
}

/** Why an amendment or withdrawal can have no effect. */
export type PointsNowhere = 'amends-each-other' | 'withdraw-each-other' | 'amends-withdrawal' | 'amends-conflict';

/** An amendment or withdrawal that has no effect, ever. */
export interface Powerless {
  readonly entry: Entry;
  readonly why: PointsNowhere;
}

type ById<Value> = ReadonlyMap<string, Value>;

/** What the withdrawals of a set take back. */
export interface Taken {
  /** Id of what is taken back → id of the withdrawal in force that does so (the first written of several). */
  readonly by: ById<string>;
  readonly waiting: readonly Waiting[];
  readonly powerless: readonly Powerless[];
}

/**
 * A withdrawal has effect unless another that has effect takes it back. Each has one target, so they are settled
 * beginning with those that nobody takes back. Those left over take back one another in a ring: none has effect.
 */
export function settleWithdrawals(
  withdrawals: readonly Entry[],
  byId: ById<Entry>,
  conflicts: ById<readonly Entry[]>,
): Taken {
  const unsettled = new Map<string, number>();
  for (const { withdraws = '' } of withdrawals) unsettled.set(withdraws, (unsettled.get(withdraws) ?? 0) + 1);
  const by = new Map<string, Entry>();
  const settled = new Set<string>();
  const queue = withdrawals.filter(({ id }) => !unsettled.has(id));
  for (let next = queue.pop(); next !== undefined; next = queue.pop()) {
    if (settled.has(next.id)) continue;
    settled.add(next.id);
    const { withdraws: target = '' } = next;
    const hasEffect = !by.has(next.id);
    const before = by.get(target);
    if (hasEffect && (before === undefined || compareWriting(next, before) < 0)) by.set(target, next);
    const left = (unsettled.get(target) ?? 1) - 1;
    unsettled.set(target, left);
    const reached = byId.get(target);
    if (reached?.withdraws !== undefined && (hasEffect || left === 0)) queue.push(reached);
  }
  return {
    by: new Map([...by].map(([target, withdrawal]) => [target, withdrawal.id])),
    waiting: withdrawals.flatMap((entry) => {
      const { id, withdraws: target = '' } = entry;
      return by.has(id) || byId.has(target) || conflicts.has(target) ? [] : [{ entry, for: target }];
    }),
    powerless: withdrawals.filter(({ id }) => !settled.has(id)).map((entry) => ({ entry, why: 'withdraw-each-other' })),
  };
}

/** Where an amendment's thread leads. */
type Thread =
  | { readonly to: 'root'; readonly root: string; readonly takenBy: string | undefined }
  | { readonly to: 'missing'; readonly id: string; readonly takenBy: string | undefined }
  | { readonly to: 'nowhere'; readonly why: PointsNowhere; readonly takenBy: string | undefined };

/** What the amendments of a set do to the entries they amend. */
export interface Threads {
  /** Id of an entry that amends nothing → the amendment in force in its place. */
  readonly latest: ById<Entry>;
  readonly outOfForce: readonly OutOfForce[];
  readonly waiting: readonly Waiting[];
  readonly powerless: readonly Powerless[];
}

/** Follows each amendment to the entry that the thread began with, and picks the latest of each thread. */
export function threadAmendments(
  amendments: readonly Entry[],
  byId: ById<Entry>,
  conflicts: ById<readonly Entry[]>,
  takenBy: ById<string>,
): Threads {
  const threads = followThreads(amendments, byId, conflicts, takenBy);
  const latest = new Map<string, Entry>();
  for (const entry of amendments) {
    const thread = threads.get(entry.id);
    if (thread?.to !== 'root' || thread.takenBy !== undefined) continue;
    const best = latest.get(thread.root);
    if (best === undefined || compareWriting(entry, best) > 0) latest.set(thread.root, entry);
  }
  const outOfForce: OutOfForce[] = [];
  const waiting: Waiting[] = [];
  const powerless: Powerless[] = [];
  for (const entry of amendments) {
    const thread = threads.get(entry.id);
    if (thread === undefined) continue;
    if (thread.takenBy !== undefined) outOfForce.push({ entry, why: 'withdrawn', by: thread.takenBy });
    else if (thread.to === 'missing') waiting.push({ entry, for: thread.id });
    else if (thread.to === 'nowhere') powerless.push({ entry, why: thread.why });
    else {
      const best = latest.get(thread.root);
      if (best !== undefined && best !== entry) outOfForce.push({ entry, why: 'amended', by: best.id });
    }
  }
  return { latest, outOfForce, waiting, powerless };
}

function followThreads(
  amendments: readonly Entry[],
  byId: ById<Entry>,
  conflicts: ById<readonly Entry[]>,
  takenBy: ById<string>,
): ById<Thread> {
  const threads = new Map<string, Thread>();
  for (const amendment of amendments) {
    // Without recursion: a thread of corrections may be as long as someone cares to make it.
    const path: Entry[] = [];
    const onPath = new Set<string>();
    let thread: Thread | undefined;
    for (let here = amendment; thread === undefined; ) {
      path.push(here);
      onPath.add(here.id);
      const id = here.amends ?? '';
      const target = byId.get(id);
      thread = threads.get(id) ?? endOfThread(id, target, conflicts, takenBy);
      if (thread !== undefined || target === undefined) break;
      if (onPath.has(id)) thread = { to: 'nowhere', why: 'amends-each-other', takenBy: undefined };
      here = target;
    }
    for (let entry = path.pop(); entry !== undefined && thread !== undefined; entry = path.pop()) {
      // In a ring there is no first entry whose withdrawal could reach the others: each stands for itself.
      const inherited = thread.to === 'nowhere' ? undefined : thread.takenBy;
      thread = { ...thread, takenBy: takenBy.get(entry.id) ?? inherited };
      threads.set(entry.id, thread);
    }
  }
  return threads;
}

/** Where a thread ends, when what it amends is no amendment itself. */
function endOfThread(
  id: string,
  target: Entry | undefined,
  conflicts: ById<readonly Entry[]>,
  takenBy: ById<string>,
): Thread | undefined {
  if (conflicts.has(id)) return { to: 'nowhere', why: 'amends-conflict', takenBy: undefined };
  if (target === undefined) return { to: 'missing', id, takenBy: undefined };
  if (target.withdraws !== undefined) return { to: 'nowhere', why: 'amends-withdrawal', takenBy: undefined };
  if (target.amends === undefined) return { to: 'root', root: id, takenBy: takenBy.get(id) };
  return undefined;
}
