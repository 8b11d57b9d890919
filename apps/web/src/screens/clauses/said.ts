import type { Heap } from '@loamwright/daybook';
import { type HeapFacts, stuffIds } from '@loamwright/science';
import { useMemo, useSyncExternalStore } from 'react';
import { settings, useSettings } from '../../device/settings.ts';
import { asRecord, type Stored, stored } from '../../device/stored.ts';

/** What clauses ask of a heap that the daybook has no line for, as the grower answered it here. It lies beside the daybook. */
export interface SaidOfPlace {
  readonly lot_m2: number | null;
  readonly heaps: Readonly<Record<string, HeapFacts>>;
}

const figures = ['width_m', 'depth_m', 'height_m', 'volume_m3', 'fromLine_m', 'fromHouse_m', 'fromWater_m'] as const;
const answers = ['rearYard', 'covered', 'enclosed', 'scrapsBuried'] as const;
export type FigureFact = (typeof figures)[number];
export type AnswerFact = (typeof answers)[number];

function readFacts(raw: unknown): HeapFacts {
  const kept = asRecord(raw);
  const { stuff } = kept;
  const sorts = Array.isArray(stuff) ? stuffIds.filter((id) => stuff.includes(id)) : [];
  return {
    ...Object.fromEntries(figures.flatMap((name) => (isFigure(kept[name]) ? [[name, kept[name]]] : []))),
    ...Object.fromEntries(answers.flatMap((name) => (typeof kept[name] === 'boolean' ? [[name, kept[name]]] : []))),
    ...(sorts.length > 0 && { stuff: sorts }),
  };
}

function isFigure(raw: unknown): raw is number {
  return typeof raw === 'number' && Number.isFinite(raw);
}

function readSaid(raw: unknown): SaidOfPlace {
  const { lot_m2, heaps } = asRecord(raw);
  return {
    lot_m2: isFigure(lot_m2) ? lot_m2 : null,
    heaps: Object.fromEntries(Object.entries(asRecord(heaps)).map(([id, facts]) => [id, readFacts(facts)])),
  };
}

/** The demo's answers are apart from one's own. */
const kept = { own: stored('loamwright.place', readSaid), demo: stored('loamwright.place-demo', readSaid) };

function keptOf(book: 'own' | 'demo' | null): Stored<SaidOfPlace> {
  return kept[book === 'demo' ? 'demo' : 'own'];
}

/** What was answered of any heap, with the lot that is the same for all. */
export function useSaidOf(): (heap: Heap) => HeapFacts {
  const { subscribe, get } = keptOf(useSettings().book);
  const { lot_m2, heaps } = useSyncExternalStore(subscribe, get);
  return useMemo(() => (heap) => ({ ...heaps[heap.id], ...(lot_m2 !== null && { lot_m2 }) }), [heaps, lot_m2]);
}

/** What was answered of a heap. */
export function useSaid(heap: Heap): HeapFacts {
  return useSaidOf()(heap);
}

/** Answers, or takes an answer back where it is null. */
export function sayOfHeap(heap: Heap, change: { readonly [Name in keyof HeapFacts]?: HeapFacts[Name] | null }): void {
  const said = keptOf(settings().book);
  const { heaps, lot_m2: lot } = said.get();
  const { lot_m2, ...others } = change;
  const facts = Object.entries({ ...heaps[heap.id], ...others }).filter(([, value]) => value !== null);
  said.set({
    lot_m2: lot_m2 === undefined ? lot : lot_m2,
    heaps: { ...heaps, [heap.id]: Object.fromEntries(facts) },
  });
}
