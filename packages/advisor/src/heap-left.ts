import type { Heap, HeapAct, Holding } from '@loamwright/daybook';
import { likely, type Needs, type OwnSizes, type Quantity, yieldEstimate } from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import { measureVolume_m3 } from './measure-volume.ts';
import { inHalves, measured } from './measured.ts';
import { bedName } from './names.ts';
import { bulk, say } from './saying.ts';
import { heapYieldInput } from './yield-report.ts';

/** What lies in a heap now. */
export interface HeapLeft {
  /** In the measure that was asked. */
  readonly count: number;
  readonly volume_m3: Quantity;
  /** By the record of what was taken, or reckoned from what went in. */
  readonly by: 'record' | 'reckoning';
}

/** In which measure it is counted, and when. */
export interface LeftAsked {
  readonly measure: string;
  readonly ownSizes?: OwnSizes | undefined;
  readonly now: string;
  readonly needs: Needs;
}

/** Whether some of a heap was taken and some is left. */
export function isPartlyGone({ left, phase }: Heap): boolean {
  return left < 1 && phase !== 'gone';
}

/**
 * What lies in a heap: of one that was partly taken what its record leaves, of any other what it is reckoned to come to. Undefined where
 * neither is known.
 */
export function heapLeft(heap: Heap, holding: Holding, asked: LeftAsked): HeapLeft | undefined {
  const { measure, ownSizes, now, needs } = asked;
  const recorded_m3 = isPartlyGone(heap) ? recordedLeft_m3(heap) : undefined;
  if (recorded_m3 !== undefined) {
    const each_m3 = measureVolume_m3(measure, ownSizes, needs);
    return each_m3.ok ? { count: recorded_m3 / each_m3.value, volume_m3: recorded_m3, by: 'record' } : undefined;
  }
  const input = heapYieldInput(heap, holding, now);
  const found = input === undefined ? undefined : yieldEstimate.run({ ...input, measure, ownSizes }, needs);
  return found?.ok === true
    ? { count: found.value.count.p50, volume_m3: found.value.volume_m3, by: 'reckoning' }
    : undefined;
}

/** How much is left of a heap of which some was taken, and where that went; null for a whole one, and where nothing is known. */
export function leftSaying(heap: Heap, holding: Holding, asked: LeftAsked): Saying | null {
  const left = isPartlyGone(heap) ? heapLeft(heap, holding, asked) : undefined;
  if (left === undefined) return null;
  const beds = [...new Set(heap.wentTo.flatMap(({ type, id }) => (type === 'bed' ? [id] : [])))];
  const places = {
    amount: measured(asked.measure, Math.max(LEAST_MEASURES, inHalves(left.count))),
    volume: bulk(left.volume_m3),
  };
  return beds.length === 0
    ? say('heapLeft.some', places)
    : say('heapLeft.beds', { ...places, beds: beds.map((id) => bedName(holding, id)) });
}

/** Less than half a measure is told as half of one. */
const LEAST_MEASURES = 0.5;

/**
 * Volume left in a heap by its own record, m³: what it was called ready with, less what was taken since. Who shares a heap out counts it
 * anew, so the last share that was told with its volume stands: one barrow of four leaves three. Undefined where no volume is written
 * down, and once more was laid on after it.
 */
export function recordedLeft_m3(heap: Heap): number | undefined {
  const acts = new Map(heap.acts.map((act) => [act.entry.id, act]));
  const changes = [
    ...heap.acts.flatMap((act): readonly Change[] =>
      act.kind === 'finished' || act.kind === 'heap-fed' ? [{ ...orderOf(act), act }] : [],
    ),
    ...heap.cameFrom.map(({ entry, at }): Change => ({ at, entry, grown: true })),
    ...heap.wentTo.map(({ entry, at, share }): Change => ({ at, entry, act: acts.get(entry), share })),
  ].toSorted((a, b) => compare(a.at, b.at) || compare(a.entry, b.entry));
  return changes.reduce<number | undefined>(after, undefined);
}

/** Something that changes how much lies in a heap. */
interface Change {
  readonly at: string;
  readonly entry: string;
  readonly act?: HeapAct | undefined;
  /** Part of what lay there that was taken. */
  readonly share?: number | undefined;
  readonly grown?: boolean | undefined;
}

function after(before_m3: number | undefined, { act, share, grown }: Change): number | undefined {
  if (grown === true || act?.kind === 'heap-fed') return undefined;
  if (act?.kind === 'finished') return act.body.volume_m3 === undefined ? before_m3 : likely(act.body.volume_m3);
  if (share === undefined) return before_m3;
  if (act?.kind === 'spread' && act.body.volume_m3 !== undefined)
    return (likely(act.body.volume_m3) * (1 - share)) / share;
  return before_m3 === undefined ? undefined : before_m3 * (1 - share);
}

const orderOf = ({ entry }: HeapAct): Pick<Change, 'at' | 'entry'> => ({ at: entry.happened, entry: entry.id });

function compare(a: string, b: string): number {
  return a === b ? 0 : a < b ? -1 : 1;
}
