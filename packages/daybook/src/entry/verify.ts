import { compareInChain, compareText } from '../order.ts';
import type { Entry } from './entry.ts';
import { sumOf } from './sum.ts';

/** One id kept with more than one sum. Both versions are kept and shown; neither is believed. */
export interface Conflict {
  readonly id: string;
  /** All sums, in order. */
  readonly sums: readonly string[];
}

/** An entry whose content no longer gives its sum. */
export interface Changed {
  readonly id: string;
  readonly device: string;
  readonly n: number;
  readonly sum: string;
  /** The sum its content gives now. */
  readonly recomputed: string;
}

/** Numbers of a device that are missing below a number that is held. */
export interface Gap {
  readonly device: string;
  readonly from: number;
  readonly to: number;
}

/** Entry n of a device names a `prev` that none of the entries n − 1 held has: one of the two was changed. */
export interface Break {
  readonly device: string;
  readonly n: number;
  readonly id: string;
  readonly prev: string | null;
  /** Sums of the entries n − 1 that are held, in order. */
  readonly found: readonly string[];
}

/** One device gave out the same n twice, as after a restored backup. Both entries are good. */
export interface Doubled {
  readonly device: string;
  readonly n: number;
  /** The ids, in order. */
  readonly ids: readonly string[];
}

/** What the chains of a set of entries show. All lists are ordered, so equal sets give equal reports. */
export interface CheckedChain {
  readonly counted: number;
  readonly changed: readonly Changed[];
  readonly gaps: readonly Gap[];
  readonly breaks: readonly Break[];
  readonly doubled: readonly Doubled[];
  readonly conflicts: readonly Conflict[];
}

/**
 * Works out every sum anew and follows every device's chain. A version handed in twice counts once.
 *
 * What it can see: an entry changed without its sum (`changed`); an entry changed together with its sum, by
 * anyone who holds the next one (`breaks`) or the true one (`conflicts`, `doubled`); an entry missing below one
 * that is held (`gaps`). What it can't: the loss or change of a device's very last entries, of which no later
 * entry tells.
 */
export function checkChain(entries: Iterable<Entry>): CheckedChain {
  const versions = [...distinct(entries)].sort(compareInChain);
  return {
    counted: versions.length,
    changed: versions.flatMap(changeOf),
    conflicts: conflictsOf(versions),
    ...followed(versions),
  };
}

/** Every version once: entries of the same id and sum are the same. */
export function distinct(entries: Iterable<Entry>): Iterable<Entry> {
  const byVersion = new Map<string, Entry>();
  for (const entry of entries) byVersion.set(`${entry.id} ${entry.sum}`, entry);
  return byVersion.values();
}

/** The ids that stand for more than one sum, ordered by id. */
export function conflictsOf(entries: Iterable<Pick<Entry, 'id' | 'sum'>>): readonly Conflict[] {
  const sumsById = new Map<string, Set<string>>();
  for (const { id, sum } of entries) {
    const sums = sumsById.get(id);
    if (sums === undefined) sumsById.set(id, new Set([sum]));
    else sums.add(sum);
  }
  return [...sumsById]
    .filter(([, sums]) => sums.size > 1)
    .sort(([a], [b]) => compareText(a, b))
    .map(([id, sums]) => ({ id, sums: [...sums].sort(compareText) }));
}

function changeOf(entry: Entry): readonly Changed[] {
  const recomputed = sumOf(entry);
  if (recomputed === entry.sum) return [];
  return [{ id: entry.id, device: entry.device, n: entry.n, sum: entry.sum, recomputed }];
}

/** Versions in chain order, walked from each device's n = 1 upwards. */
function followed(versions: readonly Entry[]): Pick<CheckedChain, 'gaps' | 'breaks' | 'doubled'> {
  const gaps: Gap[] = [];
  const breaks: Break[] = [];
  const doubled: Doubled[] = [];
  let below: readonly Entry[] = [];
  for (const here of groupsOfOneN(versions)) {
    const [first] = here;
    if (first === undefined) continue;
    const { device, n } = first;
    const last = below[0]?.device === device ? below[0].n : 0;
    if (n > last + 1) gaps.push({ device, from: last + 1, to: n - 1 });
    else if (n > 1) breaks.push(...breaksBetween(below, here));
    const ids = [...new Set(here.map(({ id }) => id))];
    if (ids.length > 1) doubled.push({ device, n, ids });
    below = here;
  }
  return { gaps, breaks, doubled };
}

function breaksBetween(below: readonly Entry[], here: readonly Entry[]): readonly Break[] {
  const sums = below.map(({ sum }) => sum).sort(compareText);
  return here
    .filter(({ prev }) => prev === null || !sums.includes(prev))
    .map(({ device, n, id, prev }) => ({ device, n, id, prev, found: sums }));
}

function groupsOfOneN(versions: readonly Entry[]): readonly (readonly Entry[])[] {
  const groups: Entry[][] = [];
  for (const entry of versions) {
    const open = groups.at(-1);
    const newest = open?.at(-1);
    if (open !== undefined && newest?.device === entry.device && newest.n === entry.n) open.push(entry);
    else groups.push([entry]);
  }
  return groups;
}
