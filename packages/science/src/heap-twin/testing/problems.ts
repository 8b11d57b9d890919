import { traitsOf, typicalFigures } from '../parameters.ts';
import type { HeapRun } from '../run.ts';
import { constantWeather } from '../weather.ts';
import { inTheOpen, runLike, stillAir, stuffLike } from './heaps.ts';

/** A heap that is also integrated by SciPy: built once, in weather that stands still, and left alone. */
export interface Problem {
  readonly name: string;
  readonly run: HeapRun;
  /** Days on which the two are compared. */
  readonly shown_day: readonly number[];
}

const cover = { insulation_m2KPerW: 0.9, vapour_sPerM: 2000 };

/** Unlike one another in whatever makes the model stiff: wet, fast, cold, covered, rained on, long. */
export const problems: readonly Problem[] = [
  { name: 'usual', run: runLike(), shown_day: [1, 2, 3, 5, 8, 14, 30, 60] },
  {
    name: 'wet-and-close',
    run: runLike({
      stuff: stuffLike({ moisture_pctWet: 74, density_kgPerM3AsIs: 700 }),
      traits: traitsOf({ ...typicalFigures(), permeability_m2: 2e-9, holds_kgPerKg: 3.2 }),
    }),
    shown_day: [1, 3, 6, 10, 20, 40],
  },
  {
    name: 'grass-in-a-small-bin',
    run: runLike({
      stuff: stuffLike({
        volume_m3: 0.32,
        density_kgPerM3AsIs: 350,
        moisture_pctWet: 74,
        pools_shareOfVolatile: [0.4, 0.13, 0.19, 0.17, 0.11],
        carbonToNitrogen_ratio: 16,
        temp_degC: 20,
      }),
      traits: traitsOf({ ...typicalFigures(), fastRate_perDay: 0.5, growth_perDay: 4 }),
      weatherAt: constantWeather(stillAir(18)),
    }),
    shown_day: [1, 2, 3, 5, 10, 20],
  },
  {
    name: 'covered-in-the-cold',
    run: runLike({
      stuff: stuffLike({ volume_m3: 2, temp_degC: 8 }),
      standing: { ...inTheOpen, top: cover, side: cover, open_share: 0.4 },
      weatherAt: constantWeather(stillAir(-4)),
    }),
    shown_day: [2, 5, 10, 20, 40],
  },
  {
    name: 'long-and-rained-on',
    run: runLike({
      shape: { form: 'long', width_m: 1.6, height_m: 1, length_m: 6 },
      stuff: stuffLike({ volume_m3: 7.5398, moisture_pctWet: 55, pH: 6 }),
      standing: { ...inTheOpen, rain_share: 1, wind_share: 0.3 },
      weatherAt: constantWeather({ ...stillAir(10), wind_mPerS: 3, rain_mmPerDay: 4 }),
    }),
    shown_day: [1, 3, 6, 12, 25],
  },
  {
    name: 'poor-and-slow',
    run: runLike({
      stuff: stuffLike({
        density_kgPerM3AsIs: 220,
        moisture_pctWet: 52,
        pools_shareOfVolatile: [0.12, 0.1, 0.15, 0.38, 0.25],
        carbonToNitrogen_ratio: 55,
        activity_share: 0.05,
      }),
    }),
    shown_day: [5, 10, 20, 40],
  },
];
