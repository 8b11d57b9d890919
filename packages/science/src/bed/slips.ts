import table from '@loamwright/reference/slips.json' with { type: 'json' };
import type { Problem } from '../catalogue/index.ts';
import { isEstimate, type Quantity } from '../estimate/index.ts';
import { type Bounds, isWithin } from '../material/index.ts';

/** Bounds beyond which the area or the worked depth of a bed is a slip of the pen (`reference/slips.json`). */
export const bedBounds: { readonly area_m2: Bounds; readonly depth_m: Bounds } = table.bed;

/** Problem: `area-beyond`; none for an area that a bed, or a crop on one, may have. */
export function areaSlips(area_m2: Quantity | undefined, path: string): readonly Problem[] {
  return slipsOf('area-beyond', area_m2, bedBounds.area_m2, path);
}

/** Problem: `depth-beyond`; none for a depth to which a bed may be worked. */
export function depthSlips(depth_m: Quantity | undefined, path: string): readonly Problem[] {
  return slipsOf('depth-beyond', depth_m, bedBounds.depth_m, path);
}

function slipsOf(code: string, value: Quantity | undefined, bounds: Bounds, path: string): readonly Problem[] {
  if (value === undefined || isWithin(value, bounds)) return [];
  const found = isEstimate(value) ? `${plain(value.p10)} to ${plain(value.p90)}` : plain(value);
  return [{ code, path, found, wanted: `${bounds.least} to ${bounds.most}` }];
}

/** Sides in feet come to many digits, of which a reader wants few. */
const plain = (value: number): string => String(Number(value.toPrecision(4)));
