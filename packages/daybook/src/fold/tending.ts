import type { Told } from '../kinds/registry.ts';
import { heapOf, place } from './heaps.ts';
import type { OpenHolding } from './open.ts';

/** Ripeness tried: nothing is done to the heap by it. */
export function ripenessTested(state: OpenHolding, told: Told<'ripeness-tested'>): void {
  heapOf(state, told.subject, told.entry)?.ripeness.push(told);
}

export function reading(state: OpenHolding, told: Told<'reading'>): void {
  heapOf(state, told.subject, told.entry)?.readings.push(told);
}

export function series(state: OpenHolding, told: Told<'series'>): void {
  heapOf(state, told.subject, told.entry)?.series.push(told);
}

export function turned(state: OpenHolding, told: Told<'turned'>): void {
  const heap = heapOf(state, told.subject, told.entry);
  if (heap === undefined) return;
  place(state, heap, told.body.bay, told.entry);
  heap.acts.push(told);
}

export function watered(state: OpenHolding, told: Told<'watered'>): void {
  const { entry, body, subject } = told;
  const heap = heapOf(state, subject, entry);
  if (heap === undefined) return;
  if ((body.liquid ?? 'water') !== 'water') heap.lastRaw = { at: entry.happened, entry: entry.id, why: 'liquid' };
  heap.acts.push(told);
}

export function covered(state: OpenHolding, told: Told<'covered'>): void {
  const heap = heapOf(state, told.subject, told.entry);
  if (heap === undefined) return;
  heap.cover = told.body.cover === 'none' ? null : told;
  heap.acts.push(told);
}

export function moved(state: OpenHolding, told: Told<'moved'>): void {
  const heap = heapOf(state, told.subject, told.entry);
  if (heap === undefined) return;
  place(state, heap, told.body.bay, told.entry);
  heap.acts.push(told);
}
