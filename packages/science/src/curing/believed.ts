import { type Draws, drawsOf, positive, withSpread } from '../estimate/index.ts';
import type { Portion } from '../mix/portion.ts';
import { isBeyond, type Seen, sharpen } from './sharpen.ts';
import type { PastHeap, YieldBasis, YieldInput, YieldNote } from './yield-io.ts';
import { yieldParameters } from './yield-parameters.ts';

/** What went in and what of it is left, draw by draw; without a list nothing is known of what went in. */
export interface Left {
  readonly basis: YieldBasis;
  readonly notes: readonly YieldNote[];
  readonly built_m3: Float64Array;
  readonly volume_m3: Float64Array;
  readonly moisture_pctWet: Float64Array;
  readonly wet_kg: Float64Array;
  readonly dry_kg: Float64Array;
  readonly nitrogen_kg: Float64Array;
  readonly phosphorus_kg: Float64Array;
  readonly potassium_kg: Float64Array;
  readonly carbon_kg?: Float64Array | undefined;
  readonly before?: readonly Portion[] | undefined;
}

/** What is left to believe once the garden's past heaps and the tape have spoken. */
export function believed(left: Left, { pastHeaps = [], ready_m3 }: YieldInput, draws: Draws): Left {
  const sights = [
    ...(pastHeaps.length > 0
      ? [
          {
            seen: shareLeftOf(pastHeaps),
            of: (m3: number, built: number) => m3 / built,
            notes: ['own-heaps', 'unlike-own-heaps'] as const,
          },
        ]
      : []),
    ...(ready_m3 === undefined
      ? []
      : [
          {
            seen: { value: ready_m3, factor: yieldParameters.tape_factor.value },
            of: (m3: number) => m3,
            notes: ['taped', 'unlike-tape'] as const,
          },
        ]),
  ];
  let places = Int32Array.from(left.dry_kg, (_, i) => i);
  let volume_m3 = left.volume_m3;
  const notes: YieldNote[] = [...left.notes];
  for (const {
    seen,
    of,
    notes: [borneOut, unlike],
  } of sights) {
    const built = Float64Array.from(places, (place) => left.built_m3[place] ?? Number.NaN);
    const sight = volume_m3.map((one, i) => of(one, built[i] ?? Number.NaN));
    if (isBeyond(sight, seen)) {
      notes.push(unlike);
      const asSeen = withSpread(seen.value, Math.log(seen.factor), positive);
      const value = drawsOf(draws, `heap/${unlike}`, asSeen, positive);
      volume_m3 = volume_m3.map((one, i) =>
        Math.min(built[i] ?? Number.NaN, (one * (value[i] ?? Number.NaN)) / (sight[i] ?? Number.NaN)),
      );
    } else {
      notes.push(borneOut);
      const kept = sharpen(sight, seen);
      const before = { places, volume_m3 };
      places = kept.map((place) => before.places[place] ?? 0);
      volume_m3 = Float64Array.from(kept, (place) => before.volume_m3[place] ?? Number.NaN);
    }
  }
  const kept = (values: Float64Array): Float64Array =>
    Float64Array.from(places, (place) => values[place] ?? Number.NaN);
  const before = kept(left.volume_m3);
  // Where only the volume is known, mass and nutrients are so much of it, and go with it.
  const scale = volume_m3.map((one, i) => (left.before === undefined ? one / (before[i] ?? Number.NaN) : 1));
  const scaled = (values: Float64Array): Float64Array => kept(values).map((one, i) => one * (scale[i] ?? Number.NaN));
  return {
    basis: left.basis,
    notes,
    built_m3: kept(left.built_m3),
    volume_m3,
    moisture_pctWet: kept(left.moisture_pctWet),
    wet_kg: scaled(left.wet_kg),
    dry_kg: scaled(left.dry_kg),
    nitrogen_kg: scaled(left.nitrogen_kg),
    phosphorus_kg: scaled(left.phosphorus_kg),
    potassium_kg: scaled(left.potassium_kg),
    ...(left.carbon_kg !== undefined && { carbon_kg: kept(left.carbon_kg) }),
    ...(left.before !== undefined && { before: Array.from(places, (place) => at(left.before ?? [], place)) }),
  };
}

/**
 * The share of its volume that the next heap will keep, from the garden's past ones: their geometric mean, as far off as heaps of
 * one garden lie apart, and their mean by chance and by the tape.
 */
function shareLeftOf(pastHeaps: readonly PastHeap[]): Seen {
  const logs = pastHeaps.map(({ built_m3, ready_m3 }) => Math.log(ready_m3 / built_m3));
  const { betweenHeaps_factor, tape_factor } = yieldParameters;
  const between = Math.log(betweenHeaps_factor.value) ** 2;
  const tape = Math.log(tape_factor.value) ** 2;
  const halfWidth = Math.sqrt(between + (between + 2 * tape) / logs.length);
  return { value: Math.exp(logs.reduce((sum, one) => sum + one, 0) / logs.length), factor: Math.exp(halfWidth) };
}

function at<Value>(values: readonly Value[], place: number): Value {
  const value = values[place];
  if (value === undefined) throw new RangeError(`no draw ${place}`);
  return value;
}
