import { type Draws, drawsOf, fromPublished, percent, positive, type Quantity, type Scale } from '../estimate/index.ts';
import { type KnownMaterial, knownMaterial, propertyDraws } from '../material/index.ts';
import { blendParameters, type PartId, type PartRow, rowOf } from './parameters.ts';

/** One part, draw by draw. */
export interface PartDraws {
  readonly density_kgPerM3AsIs: Float64Array;
  readonly density_kgPerM3Dry: Float64Array;
  readonly organicMatter_kgPerM3: Float64Array;
  /** Water left in it once drained. */
  readonly waterHeld_pctVolume: Float64Array;
  readonly poreSpace_pctVolume: Float64Array;
  /** Of a saturated extract. */
  readonly conductivity_dSPerM: Float64Array;
}

/** A part as the models of materials see it, so that its amounts are sized like those of any other. */
export function partMaterial(part: PartId): KnownMaterial {
  const row = rowOf(blendParameters.parts, part);
  const known = row.material === undefined ? undefined : knownMaterial(row.material);
  return known ?? ofItsOwn(row);
}

function ofItsOwn(row: PartRow): KnownMaterial {
  const density = row.densityLoose_kgPerM3AsIs;
  const moisture = row.moisture_pctWet;
  if (density === undefined || moisture === undefined)
    throw new RangeError(`${row.id} has neither material nor figures`);
  const volatile = row.volatileSolids_pctDry;
  return {
    id: row.id,
    class: 'mineral',
    carbonCounts: false,
    quantities: {
      densityLoose_kgPerM3AsIs: fromPublished(density, positive),
      moisture_pctWet: fromPublished(moisture, percent),
      volatileSolids_pctDry: volatile === undefined ? 0 : exactOrRange(volatile, percent),
    },
  };
}

function exactOrRange(
  { low, typical, high }: { low?: number | undefined; typical: number; high?: number | undefined },
  scale: Scale,
): Quantity {
  return low === undefined || high === undefined ? typical : fromPublished({ low, typical, high }, scale);
}

/**
 * Pore space of a loose medium, percent of its volume: 96.72 − 0.038 × dry weight in g/l, never below 0 (Bragg and
 * Chambers 1991, from 238 substrates; not for closed pores such as polystyrene).
 */
export function poreSpace_pctVolume(density_kgPerM3Dry: number): number {
  const { none_pctVolume, perDryDensity_pctVolumePerKgPerM3 } = blendParameters.poreSpace;
  return Math.max(0, none_pctVolume - perDryDensity_pctVolumePerKgPerM3 * density_kgPerM3Dry);
}

/** The draws of a part. @param conductivity_dSPerM what is known of its salts, in place of the published range. */
export function partDraws(draws: Draws, part: PartId, conductivity_dSPerM?: Quantity): PartDraws {
  const row = rowOf(blendParameters.parts, part);
  const material = partMaterial(part);
  const need = (property: 'densityLoose_kgPerM3AsIs' | 'moisture_pctWet' | 'volatileSolids_pctDry'): Float64Array => {
    const found = propertyDraws(draws, material, property);
    if (found === undefined) throw new RangeError(`nothing is known of ${property} of ${part}`);
    return found;
  };
  const density_kgPerM3AsIs = need('densityLoose_kgPerM3AsIs');
  const moisture = need('moisture_pctWet');
  const volatile = need('volatileSolids_pctDry');
  const density_kgPerM3Dry = density_kgPerM3AsIs.map((kg, i) => kg * (1 - (moisture[i] ?? Number.NaN) / 100));
  const named = (property: string, quantity: Quantity, scale: Scale): Float64Array =>
    drawsOf(draws, `${part}/${property}`, quantity, scale);
  return {
    density_kgPerM3AsIs,
    density_kgPerM3Dry,
    organicMatter_kgPerM3: density_kgPerM3Dry.map((kg, i) => (kg * (volatile[i] ?? Number.NaN)) / 100),
    waterHeld_pctVolume: named('waterHeld_pctVolume', fromPublished(row.waterHeld_pctVolume, percent), percent),
    poreSpace_pctVolume: density_kgPerM3Dry.map(poreSpace_pctVolume),
    conductivity_dSPerM: named(
      'conductivity_dSPerM',
      conductivity_dSPerM ?? fromPublished(row.conductivity_dSPerM, positive),
      positive,
    ),
  };
}
