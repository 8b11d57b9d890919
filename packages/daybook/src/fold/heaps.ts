import type { Entry } from '../entry/entry.ts';
import type { Told } from '../kinds/registry.ts';
import { GONE_SHARE, join, later, lay, massOf, refill, scaled, take, transfer } from './matter.ts';
import { isAfter, type OpenHeap, type OpenHolding, setLoose, warn, within_ms } from './open.ts';
import { moveStock } from './stock.ts';

type Creating = Told<'heap-built' | 'combined' | 'split'>;

/**
 * Sets up every heap that the entries tell of, before anything is done to one: a reading dated a little before the
 * build, as day-exact dates bring about, then still finds its heap. A heap that is only parted from or brought
 * together of others is there once all of these are.
 */
export function establishHeaps(state: OpenHolding, told: readonly Told[]): void {
  const waitingFor = new Map<string, Creating[]>();
  const queue: Creating[] = told.filter(isCreating).reverse();
  for (let next = queue.pop(); next !== undefined; next = queue.pop()) {
    const missing = sourcesOf(next).find((id) => !state.heaps.has(id));
    if (missing === undefined) {
      for (const { id, name, bay } of targetsOf(next)) {
        establish(state, id, name, bay, next.entry);
        queue.push(...(waitingFor.get(id) ?? []));
        waitingFor.delete(id);
      }
    } else waitingFor.set(missing, [...(waitingFor.get(missing) ?? []), next]);
  }
}

function isCreating(told: Told): told is Creating {
  return told.kind === 'heap-built' || ((told.kind === 'combined' || told.kind === 'split') && !isOfItself(told));
}

/** Whether a heap is said to be combined with itself or split into itself: that can't have happened. */
function isOfItself(told: Told<'combined' | 'split'>): boolean {
  const others = told.kind === 'combined' ? told.body.from : told.body.into;
  return others.some(({ heap }) => heap === told.subject);
}

function sourcesOf(told: Creating): readonly string[] {
  switch (told.kind) {
    case 'heap-built':
      return [];
    case 'combined':
      return told.body.from.map(({ heap }) => heap);
    case 'split':
      return [told.subject];
  }
}

interface Target {
  readonly id: string;
  readonly name: string | undefined;
  readonly bay: string | undefined;
}

function targetsOf(told: Creating): readonly Target[] {
  switch (told.kind) {
    case 'heap-built':
    case 'combined':
      return [{ id: told.subject, name: told.body.name, bay: told.body.bay }];
    case 'split':
      return told.body.into.map(({ heap, name, bay }) => ({ id: heap, name, bay }));
  }
}

function establish(
  state: OpenHolding,
  id: string,
  name: string | undefined,
  bay: string | undefined,
  entry: Entry,
): void {
  const known = state.heaps.get(id);
  if (known !== undefined) {
    if (entry.happened < known.begun) {
      known.begun = entry.happened;
      known.begunWithin_ms = within_ms[entry.precision];
    }
    return;
  }
  state.heaps.set(id, {
    id,
    name: name ?? id,
    begun: entry.happened,
    begunWithin_ms: within_ms[entry.precision],
    built: null,
    finished: false,
    left: 1,
    bay: bay ?? null,
    cover: null,
    layers: [],
    went: [],
    lastRaw: null,
    readings: [],
    ripeness: [],
    acts: [],
    series: [],
    cameFrom: [],
    wentTo: [],
  });
}

/** The heap an entry is about, with a warning where the dates don't fit; undefined (and the entry loose) where there is none. */
export function heapOf(state: OpenHolding, id: string, entry: Entry): OpenHeap | undefined {
  const heap = state.heaps.get(id);
  if (heap === undefined) return setLoose(state, entry, 'no-such-heap', id);
  const tolerance_ms = Math.max(heap.begunWithin_ms, within_ms[entry.precision]);
  if (isAfter(heap.begun, entry.happened, tolerance_ms)) warn(state, 'before-begun', entry.id, id);
  if (heap.left < GONE_SHARE) warn(state, 'after-gone', entry.id, id);
  return heap;
}

/** Puts a heap into a bay. */
export function place(state: OpenHolding, heap: OpenHeap, bay: string | undefined, entry: Entry): void {
  if (bay === undefined) return;
  heap.bay = bay;
  if (!state.bays.has(bay)) warn(state, 'no-such-bay', entry.id, bay);
}

export function heapBuilt(state: OpenHolding, told: Told<'heap-built'>): void {
  const { entry, subject, body } = told;
  const heap = heapOf(state, subject, entry);
  if (heap === undefined) return;
  if (heap.built !== null) {
    setLoose(state, entry, 'already-built', subject);
    return;
  }
  heap.built = told;
  heap.name = body.name;
  place(state, heap, body.bay, entry);
  lay(state, heap, entry, body.layers, 'built');
  heap.acts.push(told);
}

export function heapFed(state: OpenHolding, told: Told<'heap-fed'>): void {
  const heap = heapOf(state, told.subject, told.entry);
  if (heap === undefined) return;
  lay(state, heap, told.entry, told.body.layers, 'fed');
  heap.finished = false;
  heap.acts.push(told);
}

/** Adds what came from another heap. Where it meets other matter, what was not made safe makes the whole unsafe again. */
function receive(target: OpenHeap, source: OpenHeap, share: number, entry: Entry, raw: boolean | undefined): void {
  const sourceRaw = source.lastRaw;
  const meetsOther = target.layers.length > 0 || target.cameFrom.length > 0;
  target.layers = join(target.layers, transfer(source, target, share, entry));
  refill(target);
  target.finished = false;
  if (meetsOther && (raw ?? sourceRaw !== null))
    target.lastRaw = { at: entry.happened, entry: entry.id, why: 'combined' };
  else target.lastRaw = later(target.lastRaw, sourceRaw);
}

export function combined(state: OpenHolding, told: Told<'combined'>): void {
  const { entry, subject, body } = told;
  if (isOfItself(told)) {
    setLoose(state, entry, 'same-heap', subject);
    return;
  }
  const missing = body.from.find(({ heap }) => !state.heaps.has(heap))?.heap;
  const target = state.heaps.get(subject);
  if (missing !== undefined || target === undefined) {
    setLoose(state, entry, 'no-such-heap', missing ?? subject);
    return;
  }
  const wasGone = target.left < GONE_SHARE;
  for (const part of body.from) {
    const source = heapOf(state, part.heap, entry);
    if (source === undefined) continue;
    receive(target, source, part.share ?? 1, entry, part.raw);
    source.acts.push(told);
  }
  if (wasGone) warn(state, 'after-gone', entry.id, subject);
  if (body.name !== undefined) target.name = body.name;
  place(state, target, body.bay, entry);
  target.acts.push(told);
}

export function split(state: OpenHolding, told: Told<'split'>): void {
  const { entry, subject, body } = told;
  if (isOfItself(told)) {
    setLoose(state, entry, 'same-heap', subject);
    return;
  }
  const source = heapOf(state, subject, entry);
  if (source === undefined) return;
  source.acts.push(told);
  const total = body.into.reduce((sum, part) => sum + part.share, 0);
  // Rounded shares that pass 1 are brought back to it: no more can be taken than lay there.
  const fair = total > 1 ? 1 / total : 1;
  let before = 1;
  for (const part of body.into) {
    const target = state.heaps.get(part.heap);
    if (target === undefined) continue;
    const share = part.share * fair;
    receive(target, source, Math.min(1, share / before), entry, undefined);
    before -= share;
    if (part.name !== undefined) target.name = part.name;
    place(state, target, part.bay, entry);
    target.acts.push(told);
  }
}

export function screened(state: OpenHolding, told: Told<'screened'>): void {
  const { entry, subject, body } = told;
  const heap = heapOf(state, subject, entry);
  if (heap === undefined) return;
  const { material, share, of } = body.oversize;
  const before_kg = massOf(heap.layers);
  heap.layers = withoutOversize(heap, share, of);
  heap.left *= 1 - share;
  heap.wentTo.push({
    entry: entry.id,
    at: entry.happened,
    type: 'stock',
    id: material,
    share,
    putIn_kg: before_kg - massOf(heap.layers),
  });
  moveStock(state, material, 1, body.oversize, { entry: entry.id, at: entry.happened, why: 'oversize', with: subject });
  heap.acts.push(told);
}

/** Takes the oversize out of the material it chiefly is, as far as there is of it, and the rest out of everything. */
function withoutOversize(heap: OpenHeap, share: number, of: string | undefined): OpenHeap['layers'] {
  const chiefly = heap.layers.filter(({ put }) => put.material === of);
  const others = heap.layers.filter(({ put }) => put.material !== of);
  const chiefly_kg = massOf(chiefly);
  const others_kg = massOf(others);
  const out_kg = share * (chiefly_kg + others_kg);
  const fromChiefly_kg = Math.min(out_kg, chiefly_kg);
  const keep = (kept_kg: number, all_kg: number): number => (all_kg > 0 ? kept_kg / all_kg : 0);
  return [
    ...scaled(chiefly, keep(chiefly_kg - fromChiefly_kg, chiefly_kg)),
    ...scaled(others, keep(others_kg - (out_kg - fromChiefly_kg), others_kg)),
  ];
}

export function finished(state: OpenHolding, told: Told<'finished'>): void {
  const heap = heapOf(state, told.subject, told.entry);
  if (heap === undefined) return;
  heap.finished = true;
  heap.acts.push(told);
}

/** Takes what is spread out of a heap and tells how raw it was. */
export function takeForBed(heap: OpenHeap, share: number, bed: string, entry: Entry): ReturnType<typeof take> {
  const taken = take(heap, share);
  heap.wentTo.push({
    entry: entry.id,
    at: entry.happened,
    type: 'bed',
    id: bed,
    share,
    putIn_kg: massOf(taken),
  });
  return taken;
}
