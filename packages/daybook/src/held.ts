import type { Entry } from './entry/entry.ts';
import { compareText } from './order.ts';

/** The part of an entry that says where it stands in its device's chain. */
export type Head = Pick<Entry, 'id' | 'device' | 'n' | 'prev' | 'sum'>;

/** Entries `from` … `to` of one device, each linked to the one before by `prev`; `sum` is that of `to`. */
export interface Run {
  readonly from: number;
  readonly to: number;
  readonly sum: string;
}

/** A version that stands beside a run: the same device and n (and perhaps the same id) with another sum. */
export interface Side {
  readonly n: number;
  readonly id: string;
  readonly sum: string;
}

/** What is held of one device. */
export interface HeldOfDevice {
  readonly device: string;
  /** From low to high, never overlapping. */
  readonly runs: readonly Run[];
  /** Ordered by n, then sum, then id. */
  readonly sides: readonly Side[];
}

/**
 * Describes a set of entries by device, for an offer: a few runs instead of thousands of ids. Two sets are the
 * same exactly when their descriptions are.
 *
 * Because each entry carries the sum of the one before, a run's last sum speaks for the whole run. Where one n has
 * several versions, the run follows the version that the next entry names as its `prev` (else the lowest sum), and
 * the others are listed as sides.
 */
export function heldOf(heads: Iterable<Head>): readonly HeldOfDevice[] {
  const byDevice = new Map<string, Head[]>();
  for (const head of heads) {
    const ofDevice = byDevice.get(head.device);
    if (ofDevice === undefined) byDevice.set(head.device, [head]);
    else ofDevice.push(head);
  }
  return [...byDevice]
    .sort(([a], [b]) => compareText(a, b))
    .map(([device, ofDevice]) => ({ device, ...runsOf(ofDevice) }));
}

interface OpenRun extends Run {
  /** What the run's lowest entry names as the one before it. */
  readonly prev: string | null;
}

/** Walks one device's versions from the highest n down. */
function runsOf(heads: readonly Head[]): Pick<HeldOfDevice, 'runs' | 'sides'> {
  const runs: Run[] = [];
  const sides: Side[] = [];
  let open: OpenRun | undefined;
  for (const versions of groupsOfOneN(heads)) {
    const linked = versions.find(
      (version) => open !== undefined && version.n === open.from - 1 && version.sum === open.prev,
    );
    const chosen = linked ?? versions[0];
    if (chosen === undefined) continue;
    const { n, sum, prev } = chosen;
    if (open !== undefined && linked !== undefined) open = { ...open, from: n, prev };
    else {
      if (open !== undefined) runs.push(closed(open));
      open = { from: n, to: n, sum, prev };
    }
    for (const version of versions) if (version !== chosen) sides.push({ n, id: version.id, sum: version.sum });
  }
  if (open !== undefined) runs.push(closed(open));
  return { runs: runs.reverse(), sides: sides.sort(compareSides) };
}

function closed({ from, to, sum }: OpenRun): Run {
  return { from, to, sum };
}

function compareSides(a: Side, b: Side): number {
  return a.n - b.n || compareText(a.sum, b.sum) || compareText(a.id, b.id);
}

/** Heads by n, highest first; within one n by sum and id, each version once. */
function groupsOfOneN(heads: readonly Head[]): readonly (readonly Head[])[] {
  const groups: Head[][] = [];
  for (const head of [...heads].sort((a, b) => b.n - a.n || compareSides(a, b))) {
    const group = groups.at(-1);
    const newest = group?.at(-1);
    if (group === undefined || newest?.n !== head.n) groups.push([head]);
    else if (newest.sum !== head.sum || newest.id !== head.id) group.push(head);
  }
  return groups;
}
