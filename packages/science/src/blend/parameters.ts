import table from '@loamwright/reference/blends.json' with { type: 'json' };
import type { Citation } from '../catalogue/index.ts';
import type { Rating } from '../curing/maturity-parameters.ts';
import type { PublishedRange } from '../estimate/index.ts';

type Figure = Citation & { readonly value: number };
type Ranged = Citation & PublishedRange;
type Band = Citation & { readonly low: number; readonly high: number };

/** What a potting mix or a bed can be made of. */
export const partIds = [
  'compost',
  'leaf-mould',
  'worm-castings',
  'loam',
  'sand',
  'charcoal',
  'perlite',
  'coir',
] as const;
export type PartId = (typeof partIds)[number];

/** One part as published: as a material of the tables, or with figures of its own. */
export interface PartRow {
  readonly id: PartId;
  /** The material of `reference/materials.json` that it is. */
  readonly material?: string | undefined;
  readonly densityLoose_kgPerM3AsIs?: Ranged | undefined;
  readonly moisture_pctWet?: Ranged | undefined;
  readonly volatileSolids_pctDry?: (Citation & { readonly typical: number } & Partial<PublishedRange>) | undefined;
  /** Water left in it once a pot of it has drained. */
  readonly waterHeld_pctVolume: Ranged;
  /** Salts: electrical conductivity of a saturated extract. */
  readonly conductivity_dSPerM: Ranged;
  readonly pH: Band;
  /** Whether it holds the pH of a blend to its own; washed mineral stuff does not. */
  readonly holdsPH: boolean;
  /** Whether it shrinks as it rots on. */
  readonly rots: boolean;
}

/** What the mix is for. */
export const useIds = ['sowing', 'potting-on', 'hungry'] as const;
export type UseId = (typeof useIds)[number];

export const recipeIds = [
  'leaf-mould-alone',
  'leaf-mould-seed-mix',
  'compost-seedling-mix',
  'thirds-with-leaf-mould',
  'thirds-with-sand',
  'seven-three-two',
  'tomato-mix',
] as const;
export type RecipeId = (typeof recipeIds)[number];

/** So many parts, by volume, of one stuff. */
export interface Parts {
  readonly part: PartId;
  readonly parts: number;
}

export const methodIds = ['saturated-extract', 'one-to-one', 'one-to-two', 'pour-through', 'one-to-five'] as const;
export type MethodId = (typeof methodIds)[number];

export const vesselIds = ['seed-tray', 'small-pot'] as const;
export type VesselId = (typeof vesselIds)[number];

export const baseIds = ['logs', 'wood-chips', 'hedge-chippings'] as const;
export type BaseId = (typeof baseIds)[number];

/** The parameters of the blends with their sources, from `reference/blends.json`. */
export interface BlendParameters {
  readonly parts: readonly PartRow[];
  readonly madeOf: readonly { readonly id: 'plants' | 'manure-or-salty'; readonly conductivity_dSPerM: Ranged }[];
  readonly conductivityMethods: readonly (Citation & {
    readonly id: MethodId;
    readonly reads: readonly number[];
    readonly saturated_dSPerM: readonly number[];
  })[];
  readonly conductivitySpread_onLine: Figure;
  readonly uses: readonly {
    readonly id: UseId;
    readonly mostConductivity_dSPerM: Figure;
    readonly needs: Rating;
    readonly recipe: RecipeId;
  }[];
  readonly recipes: readonly (Citation & {
    readonly id: RecipeId;
    readonly uses: readonly UseId[];
    readonly parts: readonly Parts[];
  })[];
  readonly mostCompost_pctVolume: Band;
  readonly mixedVolume_share: Ranged & { readonly rests: Citation };
  readonly poreSpace: Citation & {
    readonly none_pctVolume: number;
    readonly perDryDensity_pctVolumePerKgPerM3: number;
  };
  readonly leastAir_pctVolume: Figure;
  readonly pHWanted: readonly (Band & {
    readonly id: 'with-soil' | 'without-soil';
    readonly leastLoam_pctVolume: number;
  })[];
  readonly maturity: {
    readonly age_months: Citation & { readonly matureFrom: number };
    readonly smell: Citation;
  };
  /** Water that washes salts out, in volumes of the stuff washed. */
  readonly leaching_volumes: Figure;
  readonly surelyUnder_share: Figure;
  readonly vessels: readonly { readonly id: VesselId; readonly volume_L: Ranged }[];
  readonly bed: {
    readonly compost_pctVolume: Band;
    readonly usualCompost_pctVolume: Figure;
    readonly organicMatter_pctDry: Band;
    readonly settled_share: Ranged;
    readonly firstYearLoss_pctVolume: { readonly organic: Ranged; readonly wood: Ranged };
    /** Woody stuff for the foot of a bed; `filled_share`: its density over that of loose chips. */
    readonly base: readonly { readonly id: BaseId; readonly material: string; readonly filled_share: number }[];
    readonly baseWaterHeld_pctVolume: Ranged;
    readonly leastOverWood_m: Figure;
    readonly sensitiveConductivity_dSPerM: Figure;
    readonly hardyConductivity_dSPerM: Figure;
    readonly phosphorusRemoval_kgPerM2PerYear: Ranged;
    readonly deckDesignLoad_kgPerM2: Figure;
  };
}

export const blendParameters: BlendParameters = table as unknown as BlendParameters;

/** The row of an id, which the table is known to have. @throws RangeError where it has none: a mistake of the tables. */
export function rowOf<Row extends { readonly id: string }>(rows: readonly Row[], id: Row['id']): Row {
  const row = rows.find((one) => one.id === id);
  if (row === undefined) throw new RangeError(`reference/blends.json has no ${id}`);
  return row;
}
