import type { Heap, Holding } from '@loamwright/daybook';
import { type Estimate, type HeapYield, likely, type PastHeap, type YieldInput } from '@loamwright/science';
import type { Figure, Saying } from '@loamwright/words';
import { binLayers } from './bin-layers.ts';
import { twoDigits } from './blend-words.ts';
import { inHalves, measured } from './measured.ts';
import { bulk, mass, say, sayOf, smallMass } from './saying.ts';

/** How much compost a heap comes to, in sentences. */
export function yieldReport(found: HeapYield): { readonly answer: Saying; readonly notes: readonly Saying[] } {
  const { volume_m3, measure, count, wet_kg, basis, lost, carbonToNitrogen_ratio } = found;
  return {
    answer: say('yield.answer', {
      volume: bulk(volume_m3),
      range: ranged(bulk(volume_m3)),
      count: measured(measure, Math.max(LEAST_MEASURES, inHalves(count.p50))),
    }),
    notes: [
      say('yield.mass', { mass: mass(wet_kg), massRange: ranged(mass(wet_kg)), dry: mass(found.dry_kg) }),
      say('yield.moisture', ends(found.moisture_pctWet)),
      sayOf('yield.basis', basis),
      ...found.notes.map((note) => sayOf('yield.note', note, { past: found.pastHeaps })),
      ...(basis === 'volume' ? [] : [say('yield.left', ends(found.left_pctVolume))]),
      say('yield.holds', {
        nitrogen: element(found.nitrogen_kg),
        phosphorus: element(found.phosphorus_kg),
        potassium: element(found.potassium_kg),
      }),
      say('yield.shares', {
        n: twoDigits(found.nitrogen_pctDry).likely,
        p: twoDigits(found.phosphorus_pctDry).likely,
        k: twoDigits(found.potassium_pctDry).likely,
      }),
      ...(carbonToNitrogen_ratio === undefined ? [] : [say('yield.ratio', ends(carbonToNitrogen_ratio))]),
      ...(lost?.nitrogen_pct === undefined
        ? []
        : [
            say('yield.lost', {
              dry: whole(lost.dry_pct),
              carbon: whole(lost.carbon_pct),
              nitrogen: whole(lost.nitrogen_pct),
              potassium: whole(lost.potassium_pct),
            }),
          ]),
      say('yield.salts', ends(found.fromPotassium_dSPerM)),
      say('yield.sifting'),
    ],
  };
}

/** Less than half a measure is told as half of one. */
const LEAST_MEASURES = 0.5;

/** A kilogram and more of an element is no small mass. */
const element = (estimate: Estimate): Figure => (estimate.p50 < 1 ? smallMass(estimate) : mass(estimate));

const whole = ({ p50 }: Estimate): number => Math.round(p50);
const ends = (estimate: Estimate): { readonly low: string; readonly high: string } => {
  const { low, high } = twoDigits(estimate);
  return { low: String(low), high: String(high) };
};
const ranged = (figure: Figure): Figure => ({ ...figure, asRange: true });

/** The heaps of a daybook that were called ready with a volume, and how large they were built; not the one asked about. */
function pastHeaps(holding: Holding, but?: string): readonly PastHeap[] {
  return [...holding.heaps.values()].flatMap((heap) => {
    const built_m3 = builtVolume_m3(heap);
    const ready_m3 = heap.wentTo.length > 0 ? wholeReady_m3(heap) : readyVolume_m3(heap);
    return heap.id !== but && built_m3 !== undefined && ready_m3 !== undefined && ready_m3 < built_m3
      ? [{ built_m3, ready_m3 }]
      : [];
  });
}

/** What a heap was built to, as it was answered or measured then; a heap that was fed later has no such figure. */
function builtVolume_m3({ built, acts }: Heap): number | undefined {
  if (acts.some(({ kind }) => kind === 'heap-fed' || kind === 'combined' || kind === 'split')) return undefined;
  const volume = built?.body.mix?.volume_m3;
  return volume === undefined ? undefined : likely(volume);
}

/** The volume with which a heap was last called ready. */
function readyVolume_m3({ acts }: Pick<Heap, 'acts'>): number | undefined {
  const volume = acts.findLast((act) => act.kind === 'finished')?.body;
  return volume !== undefined && 'volume_m3' in volume && volume.volume_m3 !== undefined
    ? likely(volume.volume_m3)
    : undefined;
}

/** The volume with which a heap was called ready before anything was taken of it. */
function wholeReady_m3(heap: Heap): number | undefined {
  const first = heap.wentTo[0]?.at ?? '';
  return readyVolume_m3({ acts: heap.acts.filter(({ entry }) => entry.happened < first) });
}

/**
 * What the daybook knows of what lies in a heap, as `yield-estimate` asks it; undefined where nothing is known of what went in. A ready
 * volume that is not less than the built one is left out: one of the two was measured wrong. Of a heap that was partly taken, only
 * what is left counts; of one that is gone, all that it was.
 */
export function heapYieldInput(heap: Heap, holding: Holding, now: string): YieldInput | undefined {
  const { layers } = binLayers(heap, holding, now);
  if (layers.length === 0) return undefined;
  const whole_m3 = builtVolume_m3(heap);
  const part = heap.phase === 'gone' ? 1 : heap.left;
  const built_m3 = whole_m3 === undefined ? undefined : whole_m3 * part;
  const whole = heap.wentTo.length > 0 ? wholeReady_m3(heap) : readyVolume_m3(heap);
  const ready_m3 = part < 1 ? undefined : whole;
  const water_L = heap.built?.body.water_L;
  return {
    ingredients: layers.map(({ age_days: _age, ...one }) => one),
    pastHeaps: pastHeaps(holding, heap.id),
    ...(water_L !== undefined && { water_L: part < 1 ? likely(water_L) * part : water_L }),
    ...(built_m3 !== undefined && { built_m3 }),
    ...(ready_m3 !== undefined && (built_m3 === undefined || ready_m3 < built_m3) && { ready_m3 }),
  };
}
