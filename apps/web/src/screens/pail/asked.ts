import { baySize, coverPuts, isInStore, type PailReport, pailQuestion, pailReport } from '@loamwright/advisor';
import type { Heap, Holding, LayerPut, Smell, Squeeze } from '@loamwright/daybook';
import {
  type Amount,
  type Bay,
  type BinState,
  bad,
  good,
  type Outcome,
  type PailCover,
  pailCover,
} from '@loamwright/science';
import type { Speaker } from '@loamwright/words';
import { type OwnMeasures, settings } from '../../device/settings.ts';
import type { ToWrite } from '../../keep/book.ts';
import { now, resolved } from '../../keep/time.ts';
import { sayAmount } from '../../mix/amount.ts';
import { isFed } from '../../mix/fed.ts';
import { needs } from '../../mix/needs.ts';
import { enteredOf, layerOf } from '../../mix/put.ts';

/** So much of a material in the pail. */
export interface Fed {
  readonly material: string;
  readonly amount: Amount;
}

/** What the eye, the hand and the nose say of the bin today. */
export interface Seen {
  readonly squeeze: Squeeze | null;
  readonly smell: Smell | null;
  readonly height_m: number | null;
  readonly state: Exclude<BinState, 'working'> | null;
}

export const nothingSeen: Seen = { squeeze: null, smell: null, height_m: null, state: null };

export interface Asked {
  readonly fed: readonly Fed[];
  readonly heap: Heap | undefined;
  readonly seen: Seen;
  readonly measures_L: OwnMeasures;
  readonly holding: Holding;
}

export interface Reckoned {
  readonly found: PailCover;
  readonly report: PailReport;
  /** The inside of the bay, where it is known. */
  readonly bay: Bay | undefined;
  /** What would be written down: the pail, and over it what covers it. */
  readonly puts: readonly LayerPut[];
}

/** Bins that can still be fed, the one that was fed last in front. */
export function standingBins(holding: Holding): readonly Heap[] {
  const lastFed = ({ acts, begun }: Heap): string =>
    acts.findLast(({ kind }) => kind === 'heap-fed')?.entry.happened ?? begun;
  return [...holding.heaps.values()]
    .filter(({ phase }) => phase === 'standing')
    .sort((a, b) => Number(isFed(b)) - Number(isFed(a)) || (lastFed(a) < lastFed(b) ? 1 : -1));
}

/** What goes with the pail; null while there is nothing in it. A height counts only where the bay is known. */
export function reckon({ fed, heap, seen, measures_L, holding }: Asked): Outcome<Reckoned> | null {
  if (fed.length === 0) return null;
  const bay = typeof heap?.bay === 'string' ? baySize(holding, heap.bay) : undefined;
  const said = {
    pail: fed,
    heap: heap?.id,
    squeeze: seen.squeeze ?? undefined,
    smell: seen.smell ?? undefined,
    height_m: bay === undefined ? undefined : (seen.height_m ?? undefined),
    state: seen.state ?? undefined,
    ownSizes: measures_L,
    usualMeasure: settings().system === 'us' ? 'bucket-5gal' : 'bucket-20l',
  };
  const question = pailQuestion(said, holding, now());
  const found = pailCover.run(question.input, needs);
  if (!found.ok) return found;
  const isTaken = (material: string): boolean => isInStore(material, holding);
  const covering = coverPuts(found.value, question.input, isTaken, { holding, ownSizes: measures_L, ...needs });
  if (!covering.ok) return covering;
  const pail = fed.map(({ material, amount }) => layerOf(material, amount, measures_L, holding));
  if (pail.includes(null)) return bad({ code: 'weigh-it', path: 'pail', found: '', wanted: '' });
  return good({
    found: found.value,
    report: pailReport(found.value, question, holding),
    bay,
    puts: [...pail.filter((put) => put !== null), ...covering.value],
  });
}

/** The feed with its cover as one entry, and the water that was poured as another. */
export function entriesOf(
  heap: Heap,
  fed: readonly Fed[],
  { found, puts }: Reckoned,
  speaker: Speaker,
): readonly ToWrite[] {
  const happened = resolved('now');
  const about = [{ type: 'heap' as const, id: heap.id }];
  const amounts: readonly Amount[] = [
    ...fed.map(({ amount }) => amount),
    ...found.lay.map(({ measure, count }) => ({ measure, count })),
  ];
  const entered = Object.fromEntries(
    amounts.map((amount, i) => [`/layers/${i}/mass_kg`, enteredOf(amount, sayAmount(speaker, amount))]),
  );
  return [
    { kind: 'heap-fed', about, happened, body: { layers: puts }, entered },
    ...(found.water_L > 0
      ? [{ kind: 'watered' as const, about, happened, body: { volume_L: found.water_L, liquid: 'water' as const } }]
      : []),
  ];
}
