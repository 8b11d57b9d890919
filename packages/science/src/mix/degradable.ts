import { mixParameters } from './parameters.ts';

/**
 * Share of the volatile solids that rots, from lignin as percent of the volatile solids; kept between
 * 0.05 and 0.83. A second figure and a warning, never the only C:N: lignin was not a good predictor
 * for grass, leaves and papers in Eleazer et al. 1997.
 * Source: Chandler et al. 1980: B = 0.830 − 0.028 X.
 */
export function degradable_shareOfVolatile(lignin_pctVolatile: number): number {
  const { atNoLignin_share, perLignin_sharePerPct, least_share } = mixParameters.degradable;
  const share = atNoLignin_share - perLignin_sharePerPct * lignin_pctVolatile;
  return Math.min(atNoLignin_share, Math.max(least_share, share));
}

/** Lignin told on dry matter, told on volatile solids instead, percent. */
export function ligninOnVolatile_pctVolatile(lignin_pctDry: number, volatileSolids_pctDry: number): number {
  return (100 * lignin_pctDry) / volatileSolids_pctDry;
}
