import table from '@loamwright/reference/heap-twin.json' with { type: 'json' };
import { FRESH_OXYGEN_share } from './constants.ts';

/** Every figure of the heap model, with its source: `reference/heap-twin.json`. */
export const twinParameters: typeof table = table;

/** Seconds in a day, and in an hour. */
export const DAY_S = 86_400;
export const HOUR_S = 3600;

/** The longest step of a run for a grower's questions: see `docs/models/heap-twin-speed.md`. */
export const USUAL_STEP_s: number = 3 * HOUR_S;

/** The figures that differ from heap to heap and that nobody knows well: one number of each for each member of a run. */
export const uncertainIds = [
  'fastShare_ratio',
  'startActivity_ratio',
  'fastRate_perDay',
  'hemicelluloseRate_perDay',
  'celluloseRate_perDay',
  'ligninRate_perDay',
  'coldest_degC',
  'best_degC',
  'hottest_degC',
  'oxygenHalf_pctVolume',
  'growth_perDay',
  'coolPace_ratio',
  'heat_MJPerKgOxygen',
  'permeability_m2',
  'plumeContact_share',
  'holds_kgPerKg',
  'settling_share',
  'cellCarbonToNitrogen_ratio',
  'carbonKept_share',
  'ammoniaGas_share',
  'charSorption_LPerKg',
] as const;
export type UncertainId = (typeof uncertainIds)[number];

/** One value of each uncertain figure. */
export type Figures = Readonly<Record<UncertainId, number>>;

/** The middle of each published range. */
export function typicalFigures(): Figures {
  const typical = uncertainIds.map((id) => [id, table[id].typical] as const);
  return Object.fromEntries(typical) as unknown as Figures;
}

/** The three temperatures of a cardinal curve, °C: none below the first and above the last, most at the middle one. */
export interface CardinalTemperatures {
  readonly coldest_degC: number;
  readonly best_degC: number;
  readonly hottest_degC: number;
}

/** The figures of one heap, ready for the reckoning: SI, and what follows from several of them. */
export interface Traits {
  readonly fast_perS: number;
  readonly hemicellulose_perS: number;
  readonly cellulose_perS: number;
  readonly lignin_perS: number;
  /** How the heat-loving go with temperature on what rots fast, and how cell walls and lignin rot. */
  readonly curve: CardinalTemperatures;
  readonly slowCurve: CardinalTemperatures;
  /** How the microbes that like it cool go with temperature, and their best pace over that of the others. */
  readonly coolCurve: CardinalTemperatures;
  readonly coolPace_ratio: number;
  readonly oxygenHalf_share: number;
  /** What dry fresh air lets them have of the oxygen they could take up. */
  readonly freshFed_share: number;
  readonly growth_perS: number;
  readonly heat_JPerKgOxygen: number;
  /** Permeability where half of the volume is air, m². */
  readonly permeability_m2: number;
  readonly plumeContact_share: number;
  readonly holds_kgPerKg: number;
  readonly settling_share: number;
  /** Carbon eaten for each kilogram breathed out. */
  readonly eatenPerBreathed: number;
  /** Nitrogen the microbes want for each kilogram of carbon eaten. */
  readonly wantedN_kgPerKg: number;
  readonly ammoniaGas_share: number;
  readonly charSorption_LPerKg: number;
}

/** The traits of a heap of such figures. */
export function traitsOf(figures: Figures): Traits {
  return {
    fast_perS: figures.fastRate_perDay / DAY_S,
    hemicellulose_perS: figures.hemicelluloseRate_perDay / DAY_S,
    cellulose_perS: figures.celluloseRate_perDay / DAY_S,
    lignin_perS: figures.ligninRate_perDay / DAY_S,
    curve: {
      coldest_degC: figures.coldest_degC,
      best_degC: figures.best_degC,
      hottest_degC: figures.hottest_degC,
    },
    slowCurve: table.slowCurve,
    coolCurve: table.coolCurve,
    coolPace_ratio: figures.coolPace_ratio,
    oxygenHalf_share: figures.oxygenHalf_pctVolume / 100,
    freshFed_share: FRESH_OXYGEN_share / (FRESH_OXYGEN_share + figures.oxygenHalf_pctVolume / 100),
    growth_perS: figures.growth_perDay / DAY_S,
    heat_JPerKgOxygen: 1e6 * figures.heat_MJPerKgOxygen,
    permeability_m2: figures.permeability_m2,
    plumeContact_share: figures.plumeContact_share,
    holds_kgPerKg: figures.holds_kgPerKg,
    settling_share: figures.settling_share,
    eatenPerBreathed: 1 / (1 - figures.carbonKept_share),
    wantedN_kgPerKg: figures.carbonKept_share / figures.cellCarbonToNitrogen_ratio,
    ammoniaGas_share: figures.ammoniaGas_share,
    charSorption_LPerKg: figures.charSorption_LPerKg,
  };
}
