import type { Outcome } from '../catalogue/index.ts';
import { type Draws, fromPublished, percent, positive, type Quantity } from '../estimate/index.ts';
import { resolve, weigh } from '../mix/ingredient.ts';
import type { Portion } from '../mix/portion.ts';
import { yieldParameters } from './yield-parameters.ts';

/** What was measured on the ready compost itself. */
export interface ReadyKnown {
  readonly readyMoisture_pctWet?: Quantity | undefined;
  readonly readyDensity_kgPerM3AsIs?: Quantity | undefined;
}

/** A cubic metre of ready compost as it lies in the heap, draw by draw: with what was measured on this one, else as published. */
export function readyCompost(known: ReadyKnown, draws: Draws): Outcome<readonly Portion[]> {
  const { readyMoisture_pctWet, readyDensity_kgPerM3AsIs } = yieldParameters;
  const resolved = resolve(
    {
      material: 'finished-compost',
      described: {
        moisture_pctWet: known.readyMoisture_pctWet ?? fromPublished(readyMoisture_pctWet, percent),
        densityLoose_kgPerM3AsIs: known.readyDensity_kgPerM3AsIs ?? fromPublished(readyDensity_kgPerM3AsIs, positive),
      },
    },
    '',
  );
  return resolved.ok ? weigh(resolved.value, { volume_m3: 1 }, 'ready', { draws, path: '' }) : resolved;
}

interface Shrunk {
  /** What of it is left dry. */
  readonly dry_kg: Float64Array;
  readonly built_m3: Float64Array;
  /** A cubic metre of the compost that it becomes. */
  readonly compost: readonly Portion[];
}

/** Volume of what is left once it lies as ready compost: its dry mass at the moisture and density of that. A heap settles; it never grows. */
export function readyVolume_m3({ dry_kg, built_m3, compost }: Shrunk): Float64Array {
  return dry_kg.map((one, i) => Math.min(built_m3[i] ?? Number.NaN, one / (compost[i]?.dry_kg ?? Number.NaN)));
}
