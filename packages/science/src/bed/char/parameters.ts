import table from '@loamwright/reference/charcoal.json' with { type: 'json' };
import type { Citation } from '../../catalogue/index.ts';
import type { PublishedRange } from '../../estimate/index.ts';

/** How the bed's soil is; by how heavy it is, charcoal does more or less. */
export const charSoils = ['sand', 'loam', 'clay'] as const;
export type CharSoil = (typeof charSoils)[number];

type Figure = Citation & { readonly value: number };
type Ranged = Citation & PublishedRange;
type Band = Citation & { readonly low: number; readonly high: number };

interface CharParameters {
  readonly density_kgPerM3Dry: Ranged;
  readonly start_kgPerM2: Band;
  readonly trials_tPerHa: Band;
  readonly seasonLift_pctSoilMass: Figure;
  readonly lasting_pctSoilMass: Band;
  readonly darkEarth_pctVolume: Figure;
  readonly mix_pctVolume: Band;
  readonly depth_m: Figure;
  readonly soil_kgPerM3Dry: Citation & Readonly<Record<CharSoil, number>>;
  readonly mostPH: Figure;
  readonly limeValue_pct: Ranged;
  readonly uncharged_pctOfControl: Figure;
  readonly charge_gNPerKg: Ranged;
  readonly chargeCompost_times: Figure;
  readonly charge_weeks: Band;
  readonly availableWater_pctMore: Figure;
}

/** `reference/charcoal.json`. */
export const charParameters: CharParameters = table as unknown as CharParameters;
