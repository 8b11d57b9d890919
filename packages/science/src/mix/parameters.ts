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
