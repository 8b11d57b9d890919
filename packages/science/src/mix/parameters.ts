import materialTable from '@loamwright/reference/materials.json' with { type: 'json' };
import table from '@loamwright/reference/mix.json' with { type: 'json' };
import type { Citation } from '../catalogue/index.ts';
import type { Estimate, PublishedRange } from '../estimate/index.ts';

/** A single figure with its source. */
export interface Figure extends Citation {
  readonly value: number;
}

/** A depth of stuff in a heap, from shallowest to deepest. */
export interface DepthRule extends Citation {
  readonly low_m: number;
  readonly high_m: number;
}

/** A figure that rests on a printed range. */
export type RangedFigure = Citation & PublishedRange;

/** Which way a material pulls the pH of a heap at first. */
export interface TendencyRow extends Citation {
  readonly material: string;
  readonly tendency: 'acid' | 'alkaline';
  readonly low_pH: number;
  readonly high_pH: number;
}

/** When a material is commonly to be had. */
export interface SeasonRow extends Citation {
  readonly material: string;
  /** Months 1 to 12 north of the equator; six later south of it. */
  readonly months_north: readonly number[];
}

/** How far trials bear a starter out: some found a gain and some none; a side effect only; no gain. */
export const evidenceGrades = ['mixed', 'slight', 'none'] as const;
export type Evidence = (typeof evidenceGrades)[number];

/** What is said to start a heap, and what bears it out; bought ones are no material of the table. */
export interface StarterRow {
  readonly id: string;
  readonly materials: readonly string[];
  readonly evidence: Evidence;
  readonly sources: readonly Citation[];
}

/** The parameters of the mixing models; the unit and basis stand in each name. */
export interface MixParameters {
  readonly waterDensity_kgPerM3: Figure;
  readonly organicDensity_kgPerM3: Figure;
  readonly ashDensity_kgPerM3: Figure;
  /** Chandler's line: share of the volatile solids that rots, by lignin. */
  readonly degradable: Citation & {
    readonly atNoLignin_share: number;
    readonly perLignin_sharePerPct: number;
    readonly least_share: number;
  };
  readonly phosphorusPerP2O5: Figure;
  readonly potassiumPerK2O: Figure;
  /** Volume of the built mix over the summed volumes of what went in. */
  readonly packing_share: Citation & { readonly estimate: Estimate };
  /** Stuff whose degradable share lies below this is woody. */
  readonly woodyBelow_share: Figure;
  /** A mix with more than this share of its carbon in woody stuff rots slowly for its C:N. */
  readonly woodyCarbon_share: Figure;
  readonly squeezeLimit_pctWet: Figure;
  readonly goalMoisture_pctWet: Figure;
  readonly wantedVolume_m3: Figure;
  readonly smallestHeap: readonly (Citation & { readonly volume_m3: number; readonly season: string })[];
  /** Water one gram of a dry material holds before it drips, in grams. */
  readonly waterCapacity: readonly (Citation & PublishedRange & { readonly material: string })[];
  readonly waterCapacityOther: Citation & PublishedRange;
  /** C:N to which nitrogen is given: the least that heats, and the most that is of use. */
  readonly nitrogenGoals: Readonly<
    Record<'leafy' | 'woody', Citation & { readonly high: number; readonly low: number }>
  >;
  readonly fertilisers: readonly (Citation & { readonly id: string; readonly nitrogen_pctAsIs: number })[];
  readonly solver: Readonly<
    Record<
      | 'referenceDensity_kgPerM3AsIs'
      | 'referenceCarbon_pctDry'
      | 'referenceRatio'
      | 'referenceMoisture_pctWet'
      | 'aimWeight'
      | 'preferredWeight'
      | 'reasonableWeight'
      | 'volumeWeight'
      | 'overfullWeight'
      | 'materialCost'
      | 'waterCost'
      | 'rankStep'
      | 'worthwhile',
      Figure
    >
  >;
  /** Common materials that may mend a mix, dry ones and rich ones. */
  readonly mends: readonly string[];
  /** Further ones, when the season is known and they are in it. */
  readonly seasonalMends: readonly string[];
  readonly inSeason: readonly SeasonRow[];
  /** A heap that is higher, or drier and large enough to heat, may heat itself on. */
  readonly fire: Readonly<Record<'higherThan_m' | 'drierThan_pctWet', Figure>>;
  /** How many times what is on hand a grower may still come by. */
  readonly mostMore_times: Figure;
  /** From this size of a heap on bulky stuff is fetched in barrows. */
  readonly barrowsFrom_m3: Figure;
  /** What is not bulky and is fetched in buckets. */
  readonly byTheBucket: readonly (Citation & { readonly material: string })[];
  /** Heat that each kg of carbon gives as it rots. */
  readonly heatPerCarbon_MJPerKg: RangedFigure;
  /** Carbon that rots to nitrogen set free, from which on microbes hold that nitrogen. */
  readonly availableRatio: Figure;
  /** C:N at which compost ends. */
  readonly finalRatio: RangedFigure;
  readonly alternatives: Readonly<
    Record<
      | 'apart_share'
      | 'heatWeight'
      | 'nitrogenWeight'
      | 'fetchWeight'
      | 'mostFetched_share'
      | 'hotter_times'
      | 'keptMore_pctNitrogen'
      | 'gap',
      Figure
    >
  >;
  /** What is dusted on and never laid by the measure unless the grower says so. */
  readonly dusted: readonly (Citation & { readonly material: string })[];
  readonly pH: readonly TendencyRow[];
  readonly sourStart_shareOfWet: Figure;
  readonly starters: readonly StarterRow[];
  readonly soilHoldsAmmonia_shareOfDry: Figure;
  readonly potassium_gPerMol: Figure;
  /** Equivalent conductivity of potassium salts in water. */
  readonly potassiumSalts_SCm2PerMol: RangedFigure;
  /** Water to each kg of dry compost in the extract whose conductivity is told. */
  readonly saltExtract_LPerKgDry: Figure;
  /** Conductivity of that extract in the composts of one laboratory. */
  readonly usualSalt_dSPerM: Citation & { readonly low: number; readonly high: number };
  /** From this share of the volume on mown grass mats. */
  readonly grassMats_shareOfVolume: Figure;
  /** Common dry materials that dry a mix. */
  readonly driers: readonly string[];
  /** From this moisture on stuff counts as wet in a build card. */
  readonly wetFrom_pctWet: Figure;
  /** The most of a low heap that its base, or its cover, takes. */
  readonly thinHeap_share: Figure;
  readonly layers: Readonly<Record<'layer_m' | 'fines_m' | 'base_m' | 'cover_m', DepthRule>>;
}

/** Every parameter of the mixing models with its source, from `reference/mix.json`. */
export const mixParameters: MixParameters = table as unknown as MixParameters;

/** The rules that belong to the materials themselves, from `reference/materials.json`. */
export const materialRules: typeof materialTable.rules = materialTable.rules;
