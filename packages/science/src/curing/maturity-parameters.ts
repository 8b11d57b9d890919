import table from '@loamwright/reference/maturity.json' with { type: 'json' };
import type { Citation } from '../catalogue/index.ts';

/** What is measured on compost to tell how ripe it is; unit and basis stand in the name. */
export const ripenessIds = [
  'carbonToNitrogen_ratio',
  'respiration_mgCO2CPerGOMPerDay',
  'oxygenUptake_mmolPerKgOMPerHour',
  'oxygenDemand_mgPerGVSPerHour',
  'selfHeating_K',
  'ammonium_mgPerKgDry',
  'ammoniumToNitrate_ratio',
  'emergence_pctControl',
  'germinationIndex_pct',
  'fattyAcids_mgPerKgDry',
  'solubleCarbon_pctDry',
  'solubleCarbonToOrganicNitrogen_ratio',
] as const;
export type RipenessId = (typeof ripenessIds)[number];

/** From ripest to least ripe. */
export const ratings = ['very-mature', 'mature', 'immature'] as const;
export type Rating = (typeof ratings)[number];

/** `gate`: must hold before anything else counts; `stability`: it hardly rots on; `maturity`: it does not hurt plants. */
export type Scheme = 'gate' | 'stability' | 'maturity';

/** One published limit of one quantity. */
export interface LimitRow extends Citation {
  readonly id: string;
  readonly quantity: RipenessId;
  readonly scheme: Scheme;
  readonly better: 'less' | 'more';
  /** Where its first class ends, if it has three. */
  readonly veryMature?: number | undefined;
  readonly mature: number;
}

/** From the hottest to the coolest. */
export const flaskClassIds = ['I', 'II', 'III', 'IV', 'V'] as const;
export type FlaskClassId = (typeof flaskClassIds)[number];

type Figure = Citation & { readonly value: number };

export interface MaturityParameters {
  readonly limits: readonly LimitRow[];
  readonly flaskClasses: readonly (Citation & { readonly id: FlaskClassId; readonly to_K?: number | undefined })[];
  readonly co2PerCarbon_ratio: Figure;
  /** A heap that goes above it after a turn is still at work. */
  readonly reheats_degC: Figure;
  /** Of what is younger, a test that finds it ripe is asked about. */
  readonly youngest_days: Figure;
  readonly signs: Citation;
  readonly seedlings: {
    readonly seeds: Figure;
    readonly days: Citation & { readonly low: number; readonly high: number };
    /** Of fewer that came up in the mix beside it a share means little. */
    readonly leastControl: Figure;
  };
  /** What none found counts as. */
  readonly leastNitrate_mgPerKgDry: Figure;
}

/** Limits of ripeness, from `reference/maturity.json`. */
export const maturityParameters: MaturityParameters = table as unknown as MaturityParameters;
