import table from '@loamwright/reference/slips.json' with { type: 'json' };
import { isEstimate, type Quantity } from '../estimate/index.ts';
import type { PropertyId } from './material.ts';

/** Least and most that a figure of a material may be; both ends included. */
export interface Bounds {
  readonly least: number;
  readonly most: number;
}

const density = table.material.density_kgPerM3AsIs;

/**
 * Bounds beyond which a figure that somebody gives of a material is a slip of the pen (`reference/slips.json`): C:N by
 * mass, nitrogen in % of dry mass, densities in kg/m³ as it lies. Other figures are bound by their scale alone.
 */
export const materialBounds: Readonly<Partial<Record<PropertyId, Bounds>>> = {
  carbonToNitrogen_ratio: table.material.carbonToNitrogen_ratio,
  nitrogen_pctDry: table.material.nitrogen_pctDry,
  densityLoose_kgPerM3AsIs: density,
  densityPacked_kgPerM3AsIs: density,
};

/** Whether a quantity lies within bounds, from its 10th to its 90th percentile. */
export function isWithin(value: Quantity, { least, most }: Bounds): boolean {
  const [low, high] = isEstimate(value) ? [value.p10, value.p90] : [value, value];
  return low >= least && high <= most;
}
