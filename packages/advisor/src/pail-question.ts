import type { Heap, Holding } from '@loamwright/daybook';
import {
  type Bay,
  type BinState,
  type DryStuff,
  type HeapSmell,
  materialById,
  type OwnSizes,
  type PailCoverInput,
  type Quantity,
  type SqueezeGrade,
} from '@loamwright/science';
import { baySize, binLayers } from './bin-layers.ts';
import { stuffed } from './own-stuff.ts';
import { isInStore, type Some } from './put.ts';
import { daysFrom } from './when.ts';

/** What the grower says of a pail and its bin; everything but the pail may be left out. */
export interface PailSaid {
  readonly pail: readonly Some[];
  /** Dry stuff on hand; what lies in store when left out. */
  readonly dry?: readonly Some[] | undefined;
  /** The heap it goes into. */
  readonly heap?: string | undefined;
  readonly bay?: Bay | undefined;
  readonly height_m?: Quantity | undefined;
  readonly squeeze?: SqueezeGrade | undefined;
  readonly smell?: HeapSmell | undefined;
  readonly state?: BinState | undefined;
  readonly ahead?: PailCoverInput['ahead'];
  readonly ownSizes?: OwnSizes | undefined;
  /** The bucket that dry stuff is laid by. */
  readonly usualMeasure?: string | undefined;
}

/** The question to `pail-cover`, and what of the bin could not be reckoned with. */
export interface PailQuestion {
  readonly input: PailCoverInput;
  readonly unknown: readonly string[];
}

/**
 * The question that a pail comes to: what is said goes before what the daybook holds.
 *
 * @param holding a folded empty daybook will do.
 */
export function pailQuestion(said: PailSaid, holding: Holding, now: string): PailQuestion {
  const { heap: id, ahead, ownSizes, usualMeasure, state } = said;
  const heap = id === undefined ? undefined : holding.heaps.get(id);
  const inBin = heap === undefined ? undefined : binLayers(heap, holding, now);
  const bay = said.bay ?? (typeof heap?.bay === 'string' ? baySize(holding, heap.bay) : undefined);
  const seen = heap === undefined ? {} : lastSeen(heap, now);
  const { squeeze = seen.squeeze, smell = seen.smell } = said;
  const height_m = said.height_m ?? (bay === undefined ? undefined : seen.height_m);
  const dry = said.dry?.map((some) => dryOf(some, holding)) ?? dryInStore(holding);
  const bays = baysOf(holding);
  const input: PailCoverInput = {
    pail: said.pail.map(({ material, doubtful, amount }, i) => ({
      ...stuffed(material, doubtful ?? [], holding),
      amount,
      ...(said.pail.findIndex((other) => other.material === material) !== i && { line: `${material}-${i + 1}` }),
    })),
    ...(dry.length > 0 || said.dry !== undefined ? { dry } : {}),
    ...(inBin === undefined ? {} : { layers: inBin.layers }),
    bay,
    height_m,
    bays,
    squeeze,
    smell,
    state,
    ahead,
    ownSizes,
    usualMeasure,
  };
  return { input, unknown: inBin?.unknown ?? [] };
}

function dryOf({ material, doubtful, amount }: Some, holding: Holding): DryStuff {
  return { ...stuffed(material, doubtful ?? [], holding), amount };
}

/** The dry stuff that the daybook says lies in store, the most of it in front. */
function dryInStore(holding: Holding): readonly DryStuff[] {
  return [...holding.stock.values()]
    .filter(({ material }) => isInStore(material, holding) && isDry(material, holding))
    .sort((a, b) => b.mass_kg - a.mass_kg)
    .slice(0, MOST_DRY)
    .map(({ material, mass_kg }) => ({ ...stuffed(material, [], holding), amount: { mass_kg } }));
}

/** As many as `pail-cover` takes. */
const MOST_DRY = 8;

function isDry(material: string, holding: Holding): boolean {
  const like = holding.materials.get(material)?.described?.body.like ?? material;
  return materialById(like)?.class === 'carbon-rich';
}

/** Beyond three it is three-bay practice all the same. */
function baysOf({ bays }: Holding): PailCoverInput['bays'] {
  if (bays.size === 0) return undefined;
  return bays.size === 1 ? 1 : bays.size === 2 ? 2 : 3;
}

/** A smell, a squeeze or a height older than this says nothing of today. */
const FRESH_DAYS = 7;

interface Seen {
  readonly squeeze?: SqueezeGrade | undefined;
  readonly smell?: HeapSmell | undefined;
  readonly height_m?: Quantity | undefined;
}

/** What was last seen of a heap and still holds. A height holds until the heap is fed or forked. */
function lastSeen({ readings, acts }: Heap, now: string): Seen {
  const fresh = readings.filter(({ entry }) => daysFrom(entry.happened, now) <= FRESH_DAYS);
  const changed = acts.findLast(({ kind }) => ['heap-fed', 'turned', 'combined', 'split'].includes(kind))?.entry;
  const holds = (happened: string): boolean => changed === undefined || daysFrom(changed.happened, happened) > 0;
  return {
    squeeze: fresh.findLast(({ body }) => body.squeeze !== undefined)?.body.squeeze,
    smell: fresh.findLast(({ body }) => body.smell !== undefined)?.body.smell,
    height_m: fresh.findLast(({ entry, body }) => body.height_m !== undefined && holds(entry.happened))?.body.height_m,
  };
}
