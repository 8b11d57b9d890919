import { likely } from '@loamwright/science';
import type { LayerPut } from '../kinds/layer.ts';
import type { Told } from '../kinds/registry.ts';
import { heapOf, takeForBed } from './heaps.ts';
import type { Spreading } from './holding.ts';
import { type OpenBed, type OpenHolding, setLoose } from './open.ts';
import { moveStock } from './stock.ts';

/** Sets up bays and beds before anything happens on them. The latest setting up of each stands. */
export function establishPlaces(state: OpenHolding, told: readonly Told[]): void {
  for (const one of told) {
    if (one.kind === 'bay-set-up') state.bays.set(one.subject, { id: one.subject, setUp: one, heaps: [] });
    else if (one.kind === 'bed-set-up')
      state.beds.set(one.subject, { id: one.subject, setUp: one, spreadings: [], sown: [], harvested: [], tests: [] });
  }
}

function bedOf(state: OpenHolding, { subject, entry }: Told): OpenBed | undefined {
  return state.beds.get(subject) ?? setLoose(state, entry, 'no-such-bed', subject);
}

export function sown(state: OpenHolding, told: Told<'sown'>): void {
  bedOf(state, told)?.sown.push(told);
}

export function harvested(state: OpenHolding, told: Told<'harvested'>): void {
  bedOf(state, told)?.harvested.push(told);
}

export function soilTested(state: OpenHolding, told: Told<'soil-tested'>): void {
  bedOf(state, told)?.tests.push(told);
}

export function spread(state: OpenHolding, told: Told<'spread'>): void {
  const bed = bedOf(state, told);
  if (bed === undefined) return;
  const spreading = told.body.of.type === 'heap' ? spreadOfHeap(state, told) : spreadOfMaterial(state, told);
  if (spreading !== undefined) bed.spreadings.push(spreading);
}

function spreadOfHeap(state: OpenHolding, told: Told<'spread'>): Spreading | undefined {
  const { body, entry, subject } = told;
  if (body.of.type !== 'heap') return undefined;
  const heap = heapOf(state, body.of.id, entry);
  if (heap === undefined) return undefined;
  const layers = takeForBed(heap, body.of.share, subject, entry);
  heap.acts.push(told);
  return { told, layers, lastRaw: heap.lastRaw, raw: heap.lastRaw !== null };
}

function spreadOfMaterial(state: OpenHolding, told: Told<'spread'>): Spreading | undefined {
  const { body, entry, subject } = told;
  if (body.of.type !== 'material') return undefined;
  const { id: material, mass_kg, raw = true, fromStock = false } = body.of;
  if (fromStock)
    moveStock(
      state,
      material,
      -1,
      { mass_kg, volume_m3: body.volume_m3 },
      {
        entry: entry.id,
        at: entry.happened,
        why: 'spread',
        with: subject,
      },
    );
  const put: LayerPut = { material, mass_kg, raw };
  return {
    told,
    layers: [{ entry: entry.id, index: 0, added: entry.happened, put, share: 1, mass_kg: likely(mass_kg) }],
    lastRaw: raw ? { at: entry.happened, entry: entry.id, why: 'fed' } : null,
    raw,
  };
}
