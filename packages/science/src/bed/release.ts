import table from '@loamwright/reference/nitrogen-release.json' with { type: 'json' };
import type { Citation } from '../catalogue/index.ts';
import type { PublishedRange } from '../estimate/index.ts';

type Figure = Citation & { readonly value: number };
type Ranged = Citation & PublishedRange;

interface Ends {
  readonly low: number;
  readonly high: number;
}

/** What is put on, by how its nitrogen comes free. */
export const kindIds = [
  'finished-compost',
  'manure-compost',
  'young-compost',
  'worm-castings',
  'cattle-manure',
  'farmyard-manure',
  'horse-manure',
  'sheep-manure',
  'rabbit-manure',
  'pig-manure',
  'poultry-manure',
  'poultry-litter',
  'fresh-plants',
  'dry-plants',
  'meal',
  'mineral',
  'none',
] as const;
export type KindId = (typeof kindIds)[number];

export interface KindRow {
  readonly id: KindId;
  /** The materials that are of this kind. */
  readonly materials: readonly string[];
  /** Not composted: its ammonium goes off into the air, and the lines of the first weeks hold. */
  readonly fresh: boolean;
  /** Above this C:N it locks nitrogen up. */
  readonly breakEven_ratio: number;
  /** Of its nitrogen, what is ammonium or nitrate when put on. */
  readonly mineral_shareOfNitrogen: Ranged;
}

/**
 * What the figures of a series are shares of: the organic nitrogen as it was put on, all the nitrogen as it was put on,
 * or what is left of all the nitrogen at the beginning of each year. A line tells the first year by nitrogen or C:N.
 */
export const basisIds = ['original-organic', 'total', 'remaining', 'nitrogen-line', 'ratio-line'] as const;
export type BasisId = (typeof basisIds)[number];

interface Bracket {
  readonly dryMatterBelow_pct?: number | undefined;
  readonly carbonToNitrogenUpTo_ratio?: number | undefined;
  readonly nitrogenFrom_pctDry?: number | undefined;
  /** Shares of the first, second, third year. */
  readonly years: readonly Ends[];
}

/** One published series of releases; the bases are never mixed within one. */
export type Series = Citation & {
  readonly id: string;
  readonly for: readonly KindId[];
  /** It was measured on ripe compost, and says nothing of stuff whose likely C:N is above this. */
  readonly upTo_ratio?: number | undefined;
} & (
    | { readonly basis: 'original-organic' | 'total' | 'remaining'; readonly brackets: readonly Bracket[] }
    | {
        readonly basis: 'nitrogen-line';
        readonly line: {
          /** Nitrogen content at which nothing comes free. */
          readonly none_pctDry: number;
          /** Percent of all nitrogen with each percent of nitrogen more … */
          readonly slope_pctPerPct?: number | undefined;
          /** … or kilograms with each tonne of dry matter. */
          readonly kgPerTPerPct?: number | undefined;
          readonly most_pct?: number | undefined;
        };
        readonly later: readonly Ends[];
      }
    | {
        readonly basis: 'ratio-line';
        readonly points: readonly (Ends & { readonly carbonToNitrogen_ratio: number })[];
        readonly later: readonly Ends[];
      }
  );

export const weatherIds = ['average', 'cool-wet', 'cool-dry', 'warm-wet', 'warm-dry'] as const;
export type WeatherId = (typeof weatherIds)[number];

/** The parameters of what comes free, with their sources, from `reference/nitrogen-release.json`. */
export interface ReleaseParameters {
  readonly kinds: readonly KindRow[];
  readonly series: readonly Series[];
  readonly sums: readonly (Citation & { readonly id: string; readonly threeYears_share: number } & Partial<Ends>)[];
  readonly laterOfPlants: Citation;
  readonly breakEven: Citation;
  /** Share of the ammonium kept, by days until it was worked in. */
  readonly retention: Citation & {
    readonly weathers: readonly WeatherId[];
    readonly withinDays: readonly { readonly days: number; readonly kept: readonly number[] }[];
    readonly never: readonly number[];
    readonly elsewhere: Citation & { readonly withinDays: readonly number[]; readonly never: number };
  };
  readonly firstWeeks: Citation & {
    readonly days: number;
    readonly slope_pctPerPct: number;
    readonly none_pctDry: number;
    readonly most_pct: number;
  };
  readonly assimilation_share: Ranged;
  readonly lockUp_degreeDays: Figure;
  readonly fullSeason_degreeDays: Ranged;
  readonly coldest_degC: Figure;
  readonly mulched_share: Figure;
  readonly phosphorusFirstYear_share: Ranged;
  readonly phosphorusLater_share: Citation & { readonly second: number; readonly third: number };
  readonly potassiumFirstYear_share: Ranged;
  readonly oxides: Citation & {
    readonly phosphatePerPhosphorus_ratio: number;
    readonly potashPerPotassium_ratio: number;
  };
  /** Nitrogen that a soil lets go with each percent of organic matter, kg/ha. */
  readonly organicMatter: Ranged;
  readonly credits: readonly (Citation & Ends & { readonly id: string })[];
}

export const releaseParameters: ReleaseParameters = table as unknown as ReleaseParameters;

const kindOfMaterial: ReadonlyMap<string, KindRow> = new Map(
  releaseParameters.kinds.flatMap((kind) => kind.materials.map((material) => [material, kind] as const)),
);

/** The row of a kind. @throws RangeError where the table lacks it: a mistake of the tables. */
export function kindRow(id: KindId): KindRow {
  const row = releaseParameters.kinds.find((kind) => kind.id === id);
  if (row === undefined) throw new RangeError(`reference/nitrogen-release.json has no ${id}`);
  return row;
}

/** How the nitrogen of a published material comes free. */
export function kindOf(material: string): KindRow {
  const row = kindOfMaterial.get(material);
  if (row === undefined) throw new RangeError(`reference/nitrogen-release.json does not place ${material}`);
  return row;
}
