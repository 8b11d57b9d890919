import type { Problem } from '@loamwright/science';
import type { Entry } from '../entry/entry.ts';
import type { LayerPut } from '../kinds/layer.ts';
import type { Told } from '../kinds/registry.ts';
import type { ConflictKept } from './force.ts';
import type { OutOfForce, PointsNowhere, Waiting } from './threads.ts';

/** A material of the holding: its own description, if it has one, and what was measured on it. */
export interface OwnMaterial {
  readonly id: string;
  readonly described: Told<'material-described'> | null;
  readonly measured: readonly Told<'material-measured'>[];
}

/** One thing that came into or left the store. */
export interface StockMove {
  readonly entry: string;
  readonly at: string;
  /** Likely mass, kg: above 0 in, below 0 out. */
  readonly mass_kg: number;
  /** Likely volume, m³, with the same sign; null where none was given. */
  readonly volume_m3: number | null;
  readonly why: 'in' | 'out' | 'layer' | 'spread' | 'oversize';
  /** The heap or bed it went to or came from. */
  readonly with: string | null;
}

/** What the book says lies in store of one material. */
export interface StockOfMaterial {
  readonly material: string;
  /** Sum of the likely masses, kg. Below 0 when more was used than was written down as come in. */
  readonly mass_kg: number;
  readonly moves: readonly StockMove[];
}

export interface Bay {
  readonly id: string;
  readonly setUp: Told<'bay-set-up'>;
  /** Ids of the heaps that stand in it now: one as a rule. */
  readonly heaps: readonly string[];
}

/** Part of one addition that is still in a heap, or that went on a bed. */
export interface Layer {
  /** Entry that put it on the holding's heaps, and its place in that entry: the same wherever the matter has gone since. */
  readonly entry: string;
  readonly index: number;
  /** When it was put in: its age counts from here. */
  readonly added: string;
  readonly put: LayerPut;
  /** Part of what was put in that is meant here, 0 to 1. */
  readonly share: number;
  /** Likely mass of that part, as it was put in: `share` × the likely `put.mass_kg`. */
  readonly mass_kg: number;
}

/** The last addition of raw or risky matter: the safety clock of a heap counts from here. */
export interface LastRaw {
  readonly at: string;
  readonly entry: string;
  readonly why: 'built' | 'fed' | 'combined' | 'liquid';
}

/** Where matter of a heap came from or went. */
export interface Transfer {
  readonly entry: string;
  readonly at: string;
  /** The other side: a heap, a bed, or (for oversize) a material in store. */
  readonly type: 'heap' | 'bed' | 'stock';
  readonly id: string;
  /** Part of the giving heap's matter. */
  readonly share: number;
  /** The likely mass of that part, as it was put in, kg. */
  readonly putIn_kg: number;
}

/** `gone`: nothing of it is left; all was combined, split off or spread. */
export type HeapPhase = 'standing' | 'finished' | 'gone';

/** What was done to a heap, apart from readings. */
export type HeapAct = Told<
  | 'heap-built'
  | 'heap-fed'
  | 'turned'
  | 'watered'
  | 'covered'
  | 'moved'
  | 'combined'
  | 'split'
  | 'screened'
  | 'finished'
  | 'spread'
>;

export interface Heap {
  readonly id: string;
  readonly name: string;
  /** When it came to be: built, or first split off or combined. */
  readonly begun: string;
  readonly built: Told<'heap-built'> | null;
  readonly phase: HeapPhase;
  /** Part of it that has not gone elsewhere, 0 to 1. */
  readonly left: number;
  readonly bay: string | null;
  readonly cover: Told<'covered'> | null;
  /** What is in it, oldest addition first. */
  readonly layers: readonly Layer[];
  /** What was taken of it for beds and other heaps since it was last begun: of one that is gone, what it was made of. */
  readonly went: readonly Layer[];
  readonly lastRaw: LastRaw | null;
  readonly readings: readonly Told<'reading'>[];
  readonly ripeness: readonly Told<'ripeness-tested'>[];
  readonly acts: readonly HeapAct[];
  readonly series: readonly Told<'series'>[];
  readonly cameFrom: readonly Transfer[];
  readonly wentTo: readonly Transfer[];
}

/** One spreading on a bed: what it was made of, and how old and how raw. */
export interface Spreading {
  readonly told: Told<'spread'>;
  readonly layers: readonly Layer[];
  /** For a heap: its last raw addition when it was spread. For raw material: the spreading itself. */
  readonly lastRaw: LastRaw | null;
  readonly raw: boolean;
}

export interface Bed {
  readonly id: string;
  readonly setUp: Told<'bed-set-up'>;
  readonly spreadings: readonly Spreading[];
  readonly sown: readonly Told<'sown'>[];
  readonly harvested: readonly Told<'harvested'>[];
  readonly tests: readonly Told<'soil-tested'>[];
}

/** An entry that is kept and passed on but can't be read here, and why. */
export interface Unread {
  readonly entry: Entry;
  readonly problems: readonly Problem[];
}

export type LooseReason =
  | PointsNowhere
  | 'other-holding'
  | 'no-such-heap'
  | 'no-such-bed'
  | 'already-built'
  | 'same-heap';

/** An entry that is valid but can't have happened as the others stand. Nothing of it is in the state; it waits here to be seen. */
export interface Loose {
  readonly entry: Entry;
  readonly why: LooseReason;
  /** Id of what is missing or in the way. */
  readonly of: string;
}

export type WarningCode =
  /** The device's clock went back: `written` is earlier than that of its entry n − 1. */
  | 'clock-went-back'
  /** It is said to have happened well after it was written. */
  | 'happened-after-written'
  /** It was written long after it happened: a wrong year, or an old notebook. */
  | 'written-long-after'
  /** It lies in the future of the `now` that was handed in. */
  | 'in-the-future'
  /** It is dated before the heap was there. */
  | 'before-begun'
  /** It is about a heap of which nothing was left: nothing more could be taken. */
  | 'after-gone'
  /** A layer is said to be from a heap that isn't there: it counts as the material it is called. */
  | 'no-such-source'
  /** It names a bay that has not been set up. */
  | 'no-such-bay'
  /** More was taken from store than was written down as come in. */
  | 'stock-below-zero'
  /** A figure in it is beyond what can be: a slip of the pen. */
  | 'beyond-belief';

/** Something that looks wrong and is taken as it stands. */
export interface Warning {
  readonly code: WarningCode;
  readonly entry: string;
  /** What it is measured against: an instant, a figure, or the id of a bay, heap or material. */
  readonly against: string;
}

/** The state of a holding: what a set of entries adds up to. Every list is in the order of the fold. */
export interface Holding {
  /** Id of the holding; null without entries. */
  readonly id: string | null;
  readonly materials: ReadonlyMap<string, OwnMaterial>;
  readonly stock: ReadonlyMap<string, StockOfMaterial>;
  readonly bays: ReadonlyMap<string, Bay>;
  readonly heaps: ReadonlyMap<string, Heap>;
  readonly beds: ReadonlyMap<string, Bed>;
  readonly clauses: ReadonlyMap<string, Told<'local-clause'>>;
  readonly beanTests: readonly Told<'bean-tested'>[];
  readonly notes: readonly Told<'note'>[];
  readonly photos: readonly Told<'photo'>[];
  /** Hashes of attachments that the keeper has let go. */
  readonly attachmentsRemoved: ReadonlySet<string>;
  /** Entries in force. */
  readonly inForce: readonly Entry[];
  readonly outOfForce: readonly OutOfForce[];
  readonly waiting: readonly Waiting[];
  readonly conflicts: readonly ConflictKept[];
  readonly unread: readonly Unread[];
  readonly loose: readonly Loose[];
  readonly warnings: readonly Warning[];
}
