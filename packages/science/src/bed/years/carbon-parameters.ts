import table from '@loamwright/reference/soil-carbon.json' with { type: 'json' };
import type { Citation } from '../../catalogue/index.ts';
import type { PublishedRange } from '../../estimate/index.ts';
import type { KindId } from '../release.ts';

type Figure = Citation & { readonly value: number };
type Ranged = Citation & PublishedRange;

/** Classes of soil by how coarse it is, coarsest first. */
export const soilTextureIds = [
  'sand',
  'loamy-sand',
  'sandy-loam',
  'loam',
  'silt-loam',
  'sandy-clay-loam',
  'clay-loam',
  'silty-clay-loam',
  'sandy-clay',
  'silty-clay',
  'clay',
] as const;
export type SoilTextureId = (typeof soilTextureIds)[number];

export interface TextureRow {
  readonly id: SoilTextureId;
  readonly sand_share: number;
  readonly clay_share: number;
}

/** The parameters of a bed's carbon and water over the years, from `reference/soil-carbon.json`. */
export interface CarbonParameters {
  readonly youngDecay_perYear: Figure;
  readonly oldDecay_perYear: Ranged;
  /** How fast a site rots by its warmth and wet; 1 where the model was fitted. */
  readonly outside_factor: Ranged;
  readonly site_degC: Figure;
  readonly q10: Figure;
  readonly yearUnknown_degC: Ranged;
  readonly youngAtStart_share: Figure;
  readonly ownPlants_kgPerM2: Ranged;
  readonly humified_share: readonly (Ranged & { readonly for: readonly KindId[] })[];
  readonly charcoalCarbon_shareOfVolatile: Ranged;
  readonly charcoalDecay_perYear: Ranged;
  readonly charcoalLasting_share: Figure;
  readonly organicMatterPerCarbon_ratio: Figure;
  /** Organic matter of a topsoil where nobody tested, and of what lies beneath it. */
  readonly untested_pctDry: Ranged;
  readonly beneathUntested_pctDry: Ranged;
  /** Most organic matter of a mineral soil. */
  readonly mineralSoil_pctDry: Figure;
  /** Most organic matter of which the pools and the equations of water may be asked at all. */
  readonly organicSoil_pctDry: Figure;
  readonly usualDepth_m: Figure;
  readonly textures: Citation & { readonly rows: readonly TextureRow[] };
  /** Coefficients of sand, clay, organic matter, sand × organic, clay × organic, sand × clay, and 1. */
  readonly pedotransfer: Citation & {
    readonly wilting: readonly number[];
    readonly field: readonly number[];
    readonly drained: readonly number[];
    readonly wiltingBend: readonly number[];
    readonly fieldBend: readonly number[];
    readonly drainedBend: readonly number[];
    readonly saturated: readonly number[];
    readonly most_pctDry: number;
    readonly particle_kgPerM3: number;
  };
  /** Classes of the water that plants can take from a profile, by its inches. */
  readonly profile: Citation & { readonly deepest_in: number; readonly classesUpTo_in: readonly number[] };
  /** So much of the depth by which soils are classed is the whole of it, as it is written. */
  readonly whole_share: Figure;
  /** How soils of one class of texture differ. */
  readonly waterOfClass_times: Ranged;
  readonly waterBySurvey_mmPerMPerPct: Citation & { readonly low: number; readonly high: number };
}

export const carbonParameters: CarbonParameters = table as unknown as CarbonParameters;

/** How much of what rots of a kind of stuff becomes old carbon. */
export function humifiedOf(kind: KindId): CarbonParameters['humified_share'][number] {
  const row = carbonParameters.humified_share.find((one) => one.for.includes(kind));
  if (row === undefined) throw new RangeError(`reference/soil-carbon.json does not place ${kind}`);
  return row;
}
