import table from '@loamwright/reference/slips.json' with { type: 'json' };
import {
  areaSlips,
  depthSlips,
  isEstimate,
  isWithin,
  likely,
  materialBounds,
  type Problem,
  type Quantity,
} from '@loamwright/science';
import type { MaterialFigures } from './kinds/material.ts';
import type { Told } from './kinds/registry.ts';
import { epoch_ms } from './time.ts';

const MS_PER_HOUR = 3_600_000;

/** Whether an instant lies further ahead of now than clocks differ (`reference/slips.json`, ahead_h). */
export function isAhead(happened: string, now: string): boolean {
  return epoch_ms(happened) > epoch_ms(now) + table.ahead_h.most * MS_PER_HOUR;
}

/**
 * Slips of the pen in what is about to be written down. What has come from another device is kept as it stands: the
 * fold points them out there.
 *
 * Problems: `when-ahead`, and those of `figureSlipsIn`.
 */
export function slipsIn(told: Told): readonly Problem[] {
  const { happened, written } = told.entry;
  const ahead: readonly Problem[] = isAhead(happened, written)
    ? [{ code: 'when-ahead', path: 'happened', found: happened, wanted: `≤ ${written}` }]
    : [];
  return [...ahead, ...figureSlipsIn(told)];
}

/**
 * Figures that are beyond what can be (`reference/slips.json`).
 *
 * Problems: `water-beyond` (litres poured at one go), `figure-beyond` (a figure of a material), `area-beyond` and `depth-beyond` (a bed).
 */
export function figureSlipsIn(told: Told): readonly Problem[] {
  switch (told.kind) {
    case 'watered':
      return waterSlips(told.body.volume_L);
    case 'material-described':
    case 'material-measured':
      return materialSlips(told.body);
    case 'bed-set-up':
      return [...areaSlips(told.body.area_m2, 'body.area_m2'), ...depthSlips(told.body.depth_m, 'body.depth_m')];
    case 'sown':
      return areaSlips(told.body.area_m2, 'body.area_m2');
    default:
      return [];
  }
}

function waterSlips(volume_L: Quantity): readonly Problem[] {
  const { most } = table.watered_L;
  if (likely(volume_L) <= most) return [];
  return [{ code: 'water-beyond', path: 'body.volume_L', found: written(volume_L), wanted: String(most) }];
}

const boundsOf = {
  carbonToNitrogen: materialBounds.carbonToNitrogen_ratio,
  nitrogen_pctDry: materialBounds.nitrogen_pctDry,
  density_kgPerM3AsIs: materialBounds.densityLoose_kgPerM3AsIs,
  densityPacked_kgPerM3AsIs: materialBounds.densityPacked_kgPerM3AsIs,
} as const;

function materialSlips(figures: MaterialFigures): readonly Problem[] {
  return (Object.keys(boundsOf) as (keyof typeof boundsOf)[]).flatMap((name) => {
    const value = figures[name];
    const bounds = boundsOf[name];
    if (value === undefined || bounds === undefined || isWithin(value, bounds)) return [];
    const wanted = `${bounds.least} to ${bounds.most}`;
    return [{ code: 'figure-beyond', path: `body.${name}`, found: written(value), wanted }];
  });
}

function written(value: Quantity): string {
  return isEstimate(value) ? `${value.p10} to ${value.p90}` : String(value);
}
