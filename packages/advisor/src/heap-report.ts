import { type Heap, type HeapPhase, type Holding, type MaterialShare, madeOf } from '@loamwright/daybook';
import {
  bad,
  type CautionId,
  good,
  heapLimits_degC,
  inOrder,
  materialById,
  type Needs,
  type Outcome,
  type ProbePoint,
  type Quantity,
  type ReadingMeaning,
  readingMeaning,
  temperatureBandOf,
} from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import { type ActMark, actMarks } from './act-marks.ts';
import { decidingReading, holdsManure, type ProbeReading, probeReadings, readingInput } from './heap-reading.ts';
import { makeUp } from './make-up.ts';
import { bedName, heapName, materialName, someOf } from './names.ts';
import { type ActWords, publishedTurning_degC, type ReadingWords, readingWords } from './reading-words.ts';
import { safetyNotes, staleAfter_days } from './safety.ts';
import { mass, say, sayOf } from './saying.ts';
import { ago, daysFrom, lasting } from './when.ts';

/** A reading as a point of the drawn series. */
export interface SeriesPoint {
  readonly instant: string;
  readonly temp_degC: Quantity;
  readonly where: ProbePoint;
  /** Id of the entry it stands in. */
  readonly entry: string;
}

/** A thin worded line across the drawn series. */
export interface LevelLine {
  readonly temp_degC: number;
  readonly said: Saying;
}

/** One material of a heap, by share of what was put in. */
export interface MadeOf extends MaterialShare {
  readonly said: Saying;
}

/** One addition that is still in the heap, the oldest first. */
export interface LayerLine {
  readonly entry: string;
  readonly added: string;
  readonly age_days: number;
  readonly material: string;
  readonly mass_kg: number;
  readonly said: Saying;
}

/** Everything that a heap's page tells. */
export interface HeapReport {
  readonly id: string;
  readonly name: string;
  readonly bay: string | null;
  readonly phase: HeapPhase;
  readonly begun: string;
  /** The answer: what the heap is doing. */
  readonly headline: Saying;
  /** The one act. */
  readonly act: ActWords;
  /** What the last reading means; null without one. */
  readonly reading: ReadingWords | null;
  /** The same as data. */
  readonly meaning: ReadingMeaning | null;
  readonly series: readonly SeriesPoint[];
  readonly acts: readonly ActMark[];
  readonly lines: readonly LevelLine[];
  readonly made: readonly MadeOf[];
  /** On what the shares rest, or that nothing is known. */
  readonly madeNote: Saying;
  readonly layers: readonly LayerLine[];
  readonly cautions: readonly CautionId[];
  readonly safety: readonly Saying[];
}

/**
 * What a heap is doing, what to do, and why.
 *
 * @param now the time by the reader's clock (UTC instant): what happened later is left out of the judgement.
 * Problem: `no-such-heap`.
 */
export function heapReport(holding: Holding, heapId: string, now: string, needs: Needs): Outcome<HeapReport> {
  const heap = holding.heaps.get(heapId);
  if (heap === undefined) {
    const wanted = [...holding.heaps.keys()].join(' | ');
    return bad({ code: 'no-such-heap', path: 'heap', found: heapId, wanted });
  }
  const readings = probeReadings(heap, now);
  const deciding = decidingReading(readings);
  const meaning = deciding === undefined ? null : meaningOf(heap, deciding, readings, needs);
  const words = deciding === undefined || meaning === null ? null : readingWords(meaning, deciding.point);
  const { headline, act } = judgement({ holding, heap, now, deciding, words });
  const made = madeOf(makeUp(heap));
  return good({
    id: heap.id,
    name: heap.name,
    bay: heap.bay === null ? null : (holding.bays.get(heap.bay)?.setUp.body.name ?? heap.bay),
    phase: heap.phase,
    begun: heap.begun,
    headline,
    act,
    reading: words,
    meaning,
    series: readings.map(({ told, temp_degC, point }) => ({
      instant: told.entry.happened,
      temp_degC,
      where: point,
      entry: told.entry.id,
    })),
    acts: actMarks(heap),
    lines: levelLines,
    made: made.map((one) => ({
      ...one,
      said: say('advisor.made.share', {
        pct: Math.round(100 * one.share),
        material: materialName(holding, one.material),
      }),
    })),
    madeNote: madeNote(heap.phase, made.length),
    layers: layerLines(holding, heap, now),
    cautions: cautionsOf(heap, meaning),
    safety: safetyNotes(holding, heap, readings, now),
  });
}

function meaningOf(
  heap: Heap,
  deciding: ProbeReading,
  readings: readonly ProbeReading[],
  needs: Needs,
): ReadingMeaning | null {
  const outcome = readingMeaning.run(readingInput(heap, deciding, readings), needs);
  return outcome.ok ? outcome.value : null;
}

interface Seen {
  readonly holding: Holding;
  readonly heap: Heap;
  readonly now: string;
  readonly deciding: ProbeReading | undefined;
  readonly words: ReadingWords | null;
}

interface Judgement {
  readonly headline: Saying;
  readonly act: ActWords;
}

function judgement(seen: Seen): Judgement {
  const { heap, now, deciding, words } = seen;
  if (heap.phase === 'gone') return { headline: goneTo(seen), act: plainAct('no-hurry', 'none', 'gone') };
  if (deciding === undefined || words === null) {
    const age = lasting(daysFrom(heap.begun, now));
    return { headline: say('advisor.heap.unread', { age }), act: plainAct('today', 'read', 'unread') };
  }
  const old_days = daysFrom(deciding.told.entry.happened, now);
  if (words.act.urgency === 'now') return { headline: headlineOf(words), act: words.act };
  if (heap.phase === 'finished') return { headline: finishedLine(seen), act: plainAct('no-hurry', 'use', 'finished') };
  if (old_days <= staleAfter_days) return { headline: headlineOf(words), act: words.act };
  const headline = say('advisor.heap.stale', { state: words.state, ago: ago(deciding.told.entry.happened, now) });
  return { headline, act: staleAct(words.act, old_days) };
}

function headlineOf({ state, trend }: ReadingWords): Saying {
  const [first] = trend;
  return first === undefined ? state : say('advisor.heap.headline', { state, trend: first });
}

/** A heap that was being left alone may go on being left alone; any other act wants a fresh reading first. */
function staleAct(act: ActWords, old_days: number): ActWords {
  if (act.urgency === 'no-hurry') return act;
  return {
    ...plainAct('today', 'read', 'unread'),
    because: say('advisor.because.stale', { days: Math.floor(old_days) }),
  };
}

function plainAct(urgency: ActWords['urgency'], what: string, because: string): ActWords {
  return {
    urgency,
    when: sayOf('reading.when', urgency),
    what: sayOf('advisor.act', what),
    because: sayOf('advisor.because', because),
    waiting: sayOf('advisor.waiting', because),
    checks: [],
  };
}

function finishedLine({ heap, now }: Seen): Saying {
  const last = heap.acts.findLast(({ kind }) => kind === 'finished');
  const pct = Math.round(100 * heap.left);
  return say('advisor.heap.finished', {
    ago: ago(last?.entry.happened ?? heap.begun, now),
    left: pct === 100 ? say('advisor.heap.all') : say('advisor.heap.share', { pct }),
  });
}

function goneTo({ holding, heap }: Seen): Saying {
  const ids = new Map(heap.wentTo.map((way) => [`${way.type} ${way.id}`, way]));
  if (ids.size === 0) return say('advisor.heap.gone-unknown');
  return say('advisor.heap.gone', {
    places: [...ids.values()].map(({ type, id }) => {
      if (type === 'bed') return bedName(holding, id);
      return type === 'heap' ? heapName(holding, id) : materialName(holding, id);
    }),
  });
}

function madeNote(phase: HeapPhase, materials: number): Saying {
  if (materials === 0) return say('advisor.made.nothing');
  return say(phase === 'gone' ? 'advisor.made.gone' : 'advisor.made.basis');
}

function layerLines(holding: Holding, heap: Heap, now: string): readonly LayerLine[] {
  return heap.layers.map(({ entry, added, put, mass_kg }) => ({
    entry,
    added,
    age_days: Math.max(0, daysFrom(added, now)),
    material: put.material,
    mass_kg,
    said: say(put.raw === false ? 'advisor.layer' : 'advisor.layer.raw', {
      stuff: someOf(holding, put.material, mass(mass_kg)),
      ago: ago(added, now),
    }),
  }));
}

/** The levels that a grower asks about, each with its words; never a coloured zone. */
const levelLines: readonly LevelLine[] = [
  { temp_degC: heapLimits_degC.curing, said: say('reading.line.curing') },
  { temp_degC: heapLimits_degC.sanitisingDay, said: say('reading.line.sanitising') },
  {
    temp_degC: temperatureBandOf('growers-sought').low_degC ?? heapLimits_degC.sanitisingDay,
    said: say('reading.line.sought'),
  },
  { temp_degC: publishedTurning_degC, said: say('reading.line.turning') },
  { temp_degC: heapLimits_degC.fire, said: say('reading.line.fire') },
];

/** Of what lies in it, only what whoever tends it must know; what the reading calls for comes first by the table's order. */
const fromMatter: ReadonlySet<CautionId> = new Set([
  'manure-pathogens',
  'rats-flies',
  'herbicide-carryover',
  'diseased-plants',
]);

function cautionsOf(heap: Heap, meaning: ReadingMeaning | null): readonly CautionId[] {
  if (heap.phase === 'gone') return [];
  const wanted = new Set<CautionId>(meaning?.cautions);
  for (const { put } of heap.layers) {
    for (const id of materialById(put.material)?.cautions ?? []) if (fromMatter.has(id)) wanted.add(id);
  }
  if (holdsManure(heap.layers)) wanted.add('manure-pathogens');
  if (heap.phase === 'finished') wanted.add('legionella');
  return inOrder(wanted);
}
