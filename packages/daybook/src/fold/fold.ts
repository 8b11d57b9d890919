import type { Entry } from '../entry/entry.ts';
import { type KindId, type Told, tell } from '../kinds/registry.ts';
import { compareInFold } from '../order.ts';
import { figureSlipsIn } from '../slips.ts';
import { establishPlaces, harvested, soilTested, sown, spread } from './beds.ts';
import { readClocks } from './clock.ts';
import { settle } from './force.ts';
import { combined, establishHeaps, finished, heapBuilt, heapFed, screened, split } from './heaps.ts';
import type { Heap, HeapPhase, Holding, Unread } from './holding.ts';
import { byAge, GONE_SHARE } from './matter.ts';
import { emptyHolding, type OpenHeap, type OpenHolding, setLoose, warn } from './open.ts';
import { materialDescribed, materialMeasured, stockIn, stockOut } from './stock.ts';
import { covered, moved, reading, ripenessTested, series, turned, watered } from './tending.ts';

/** What the fold may be told beside the entries. */
export interface FoldOptions {
  /** The time by the reader's clock (UTC instant): with it, entries from the future are pointed out. */
  readonly now?: string | undefined;
}

/**
 * Adds a set of entries up to the state of the holding. Pure: the same set gives the same state, in whatever order it
 * arrived, however often an entry occurs, and whichever devices wrote it.
 *
 * Entries in force (see `settle`) are told in the order `happened`, then `written`, `device`, `n` of their first
 * writing. Nothing is dropped:
 * - what can't be read here is in `unread`;
 * - what is valid but can't have happened (a reading on a heap that isn't there) is in `loose`;
 * - one id with two sums is in `conflicts`, and neither version is told: to believe one of them would be a guess,
 *   and a guess could call a heap safe;
 * - what looks wrong and is taken as it stands (clocks, stock below zero) is in `warnings`.
 *
 * The entries come from `readEntry` or `seal`; their sums are not worked out again here (see `checkChain`).
 */
export function fold(entries: Iterable<Entry>, options: FoldOptions = {}): Holding {
  const force = settle(entries);
  const state = emptyHolding();
  const every = everyOf(force);
  const id = every[0]?.holding ?? null;
  const told: Told[] = [];
  const unread: Unread[] = [];
  for (const entry of force.inForce) {
    if (entry.holding !== id) {
      setLoose(state, entry, 'other-holding', entry.holding);
      continue;
    }
    const outcome = tell(entry);
    if (outcome.ok) told.push(outcome.value);
    else unread.push({ entry, problems: outcome.problems });
  }
  for (const { entry, why } of force.powerless) setLoose(state, entry, why, entry.amends ?? entry.withdraws ?? '');
  establishPlaces(state, told);
  establishHeaps(state, told);
  for (const one of told) apply(state, one);
  for (const one of told) for (const { found } of figureSlipsIn(one)) warn(state, 'beyond-belief', one.entry.id, found);
  readClocks(state, every, options.now);
  return {
    id,
    materials: state.materials,
    stock: state.stock,
    bays: withHeaps(state),
    heaps: new Map([...state.heaps].map(([heap, open]) => [heap, closed(open)])),
    beds: state.beds,
    clauses: state.clauses,
    beanTests: state.beanTests,
    notes: state.notes,
    photos: state.photos,
    attachmentsRemoved: state.attachmentsRemoved,
    inForce: force.inForce,
    outOfForce: force.outOfForce,
    waiting: force.waiting,
    conflicts: force.conflicts,
    unread,
    loose: state.loose.sort((a, b) => compareInFold(a.entry, b.entry)),
    warnings: state.warnings,
  };
}

type Force = ReturnType<typeof settle>;

/** Every entry whose id is not in doubt, in the order of the fold. */
function everyOf(force: Force): readonly Entry[] {
  const kept = [...force.outOfForce, ...force.waiting, ...force.powerless].map(({ entry }) => entry);
  return kept.length === 0 ? force.inForce : [...force.inForce, ...kept].sort(compareInFold);
}

type Applier<Id extends KindId> = (state: OpenHolding, told: Told<Id>) => void;

/** Bays and beds are set up before anything else; a withdrawal is never among the entries in force. */
const nothingMore = (): void => undefined;

const appliers: { readonly [Id in KindId]: Applier<Id> } = {
  'material-described': materialDescribed,
  'material-measured': materialMeasured,
  'stock-in': stockIn,
  'stock-out': stockOut,
  'bay-set-up': nothingMore,
  'heap-built': heapBuilt,
  'heap-fed': heapFed,
  reading,
  turned,
  watered,
  covered,
  moved,
  combined,
  split,
  screened,
  finished,
  spread,
  'bed-set-up': nothingMore,
  sown,
  harvested,
  'soil-tested': soilTested,
  'ripeness-tested': ripenessTested,
  'bean-tested': (state, told) => state.beanTests.push(told),
  note: (state, told) => state.notes.push(told),
  photo: (state, told) => state.photos.push(told),
  series,
  'attachment-removed': (state, told) => state.attachmentsRemoved.add(told.body.attachment),
  'local-clause': (state, told) => state.clauses.set(told.subject, told),
  withdrawal: nothingMore,
};

function apply(state: OpenHolding, told: Told): void {
  // The table pairs each kind with the reader of its own body, which the type of the lookup can't say.
  const applier = appliers[told.kind] as Applier<KindId>;
  applier(state, told);
}

function phaseOf(heap: OpenHeap): HeapPhase {
  if (heap.left < GONE_SHARE) return 'gone';
  return heap.finished ? 'finished' : 'standing';
}

function closed(open: OpenHeap): Heap {
  const { finished: _finished, begunWithin_ms: _within, ...heap } = open;
  return { ...heap, phase: phaseOf(open), layers: byAge(open.layers), went: byAge(open.went) };
}

function withHeaps(state: OpenHolding): Holding['bays'] {
  for (const heap of state.heaps.values()) {
    if (heap.bay !== null && heap.left >= GONE_SHARE) state.bays.get(heap.bay)?.heaps.push(heap.id);
  }
  return state.bays;
}
