import table from '@loamwright/reference/bed-budget.json' with { type: 'json' };
import type { Citation } from '../catalogue/index.ts';
import type { PublishedRange } from '../estimate/index.ts';
import type { KindId } from './release.ts';

type Figure = Citation & { readonly value: number };
type Ranged = Citation & PublishedRange;
type FromTo = Citation & { readonly low: number; readonly high: number };

/** How a soil test stands, whatever its method. */
export const classIds = ['low', 'medium', 'optimum', 'high', 'excessive'] as const;
export type ClassId = (typeof classIds)[number];

type ByClass = readonly (Ranged & { readonly id: ClassId | 'untested' })[];

/** The parameters of the budget with their sources, from `reference/bed-budget.json`. */
export interface BudgetParameters {
  /** Phosphorus wanted, in what the harvest takes. */
  readonly phosphorusOfRemoval_times: ByClass;
  readonly potassiumOfRemoval_times: ByClass;
  readonly yieldSpread_onLine: Figure;
  readonly gardenYield_kgPerM2: Figure;
  readonly organicMatterCounted_pct: Figure;
  readonly coverWithoutNitrogen_kgPerHa: Ranged;
  readonly mixedDepth_m: Ranged;
  readonly soilConductivity_dSPerM: Ranged;
  readonly conductivity_dSPerM: readonly (Ranged & { readonly for: readonly KindId[] })[];
  readonly saltOfShare: Citation;
  readonly limeEquivalent_share: readonly (Ranged & { readonly for: readonly string[] })[];
  readonly trees: readonly (Citation & {
    readonly crops: readonly string[];
    readonly perYear_kg: number;
    readonly most_kg: number;
  })[];
  readonly usualMost_m: Figure;
  /** How thick what goes on a bed usually lies: in a year, once on a new bed, and where it is to lie thin. */
  readonly layerYearly_m: FromTo;
  readonly layerOnNewBed_m: FromTo;
  readonly thinLayer_m: FromTo;
  readonly compostAlone_m: Figure;
  readonly absurd_m: Figure;
  readonly surely_share: Figure;
  readonly phosphorusMany_years: Figure;
  /** How far crops of named areas may pass the bed's without a word. */
  readonly overSown_share: Figure;
  /** Less of a bed is no ground for a crop. */
  readonly leastGround_share: Figure;
}

export const budgetParameters: BudgetParameters = table as unknown as BudgetParameters;
