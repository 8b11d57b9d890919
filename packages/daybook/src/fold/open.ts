import type { Entry } from '../entry/entry.ts';
import type { Told } from '../kinds/registry.ts';
import { epoch_ms } from '../time.ts';
import type {
  Bay,
  Bed,
  Heap,
  HeapAct,
  Layer,
  Loose,
  OwnMaterial,
  Spreading,
  StockMove,
  StockOfMaterial,
  Transfer,
  Warning,
  WarningCode,
} from './holding.ts';

/** The state while it is being added up. Nothing outside the fold sees it. */
type Open<Part> = { -readonly [Key in keyof Part]: Part[Key] };

/** A heap while entries are being added. */
export interface OpenHeap
  extends Open<
    Omit<Heap, 'phase' | 'layers' | 'went' | 'readings' | 'ripeness' | 'acts' | 'series' | 'cameFrom' | 'wentTo'>
  > {
  finished: boolean;
  /** Precision of the entry it began with, in ms. */
  begunWithin_ms: number;
  layers: readonly Layer[];
  went: readonly Layer[];
  readonly readings: Told<'reading'>[];
  readonly ripeness: Told<'ripeness-tested'>[];
  readonly acts: HeapAct[];
  readonly series: Told<'series'>[];
  readonly cameFrom: Transfer[];
  readonly wentTo: Transfer[];
}

export interface OpenBed extends Bed {
  setUp: Told<'bed-set-up'>;
  readonly spreadings: Spreading[];
  readonly sown: Told<'sown'>[];
  readonly harvested: Told<'harvested'>[];
  readonly tests: Told<'soil-tested'>[];
}

interface OpenMaterial extends OwnMaterial {
  described: Told<'material-described'> | null;
  readonly measured: Told<'material-measured'>[];
}

interface OpenStock extends StockOfMaterial {
  mass_kg: number;
  readonly moves: StockMove[];
}

interface OpenBay extends Bay {
  setUp: Told<'bay-set-up'>;
  readonly heaps: string[];
}

export interface OpenHolding {
  readonly materials: Map<string, OpenMaterial>;
  readonly stock: Map<string, OpenStock>;
  readonly bays: Map<string, OpenBay>;
  readonly heaps: Map<string, OpenHeap>;
  readonly beds: Map<string, OpenBed>;
  readonly clauses: Map<string, Told<'local-clause'>>;
  readonly beanTests: Told<'bean-tested'>[];
  readonly notes: Told<'note'>[];
  readonly photos: Told<'photo'>[];
  readonly attachmentsRemoved: Set<string>;
  readonly loose: Loose[];
  readonly warnings: Warning[];
}

export function emptyHolding(): OpenHolding {
  return {
    materials: new Map(),
    stock: new Map(),
    bays: new Map(),
    heaps: new Map(),
    beds: new Map(),
    clauses: new Map(),
    beanTests: [],
    notes: [],
    photos: [],
    attachmentsRemoved: new Set(),
    loose: [],
    warnings: [],
  };
}

/** Puts an entry among the loose ones. Returns undefined, as what was looked for. */
export function setLoose(state: OpenHolding, entry: Entry, why: Loose['why'], of: string): undefined {
  state.loose.push({ entry, why, of });
}

export function warn(state: OpenHolding, code: WarningCode, entry: string, against: string): void {
  state.warnings.push({ code, entry, against });
}

const MINUTE_MS = 60_000;

/** How far the true moment may lie from `happened`. */
export const within_ms: Readonly<Record<Entry['precision'], number>> = {
  minute: MINUTE_MS,
  hour: 60 * MINUTE_MS,
  day: 24 * 60 * MINUTE_MS,
  week: 7 * 24 * 60 * MINUTE_MS,
};

/** Whether an instant lies after another by more than a tolerance. */
export function isAfter(late: string, early: string, tolerance_ms: number): boolean {
  // Text order is time order, and the usual case is settled by it.
  return late > early && epoch_ms(late) - epoch_ms(early) > tolerance_ms;
}
