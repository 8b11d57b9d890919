import { LINE } from '../ledger.ts';
import { traitsOf, typicalFigures } from '../parameters.ts';
import { type HeapRun, type Moment, runHeap, USUAL_PACE } from '../run.ts';
import { shellTemperature_degC } from '../state.ts';
import type { Stuff } from '../stuff.ts';
import type { Standing } from '../surroundings.ts';
import { constantWeather, type WeatherReading } from '../weather.ts';

/** A damp mix of manure and bedding, 1 m³ of 450 kg: the figures of the model's own example. */
export function stuffLike(change: Partial<Blend> = {}): Stuff {
  const blend = { ...usualBlend, ...change };
  const wet_kg = blend.density_kgPerM3AsIs * blend.volume_m3;
  const dry_kg = wet_kg * (1 - blend.moisture_pctWet / 100);
  const volatile_kg = (dry_kg * blend.volatile_pctDry) / 100;
  const [fast, hemicellulose, cellulose, lignin, inert] = blend.pools_shareOfVolatile;
  const nitrogen_kg = volatile_kg / 2 / blend.carbonToNitrogen_ratio;
  return {
    water_kg: wet_kg - dry_kg,
    fast_kg: fast * volatile_kg,
    hemicellulose_kg: hemicellulose * volatile_kg,
    cellulose_kg: cellulose * volatile_kg,
    lignin_kg: lignin * volatile_kg,
    inert_kg: inert * volatile_kg,
    ash_kg: dry_kg - volatile_kg,
    char_kg: 0,
    organicN_kg: 0.9 * nitrogen_kg,
    ammoniacalN_kg: 0.1 * nitrogen_kg,
    nitrateN_kg: 0,
    volume_m3: blend.volume_m3,
    temp_degC: blend.temp_degC,
    pH: blend.pH,
    activity_share: blend.activity_share,
  };
}

interface Blend {
  readonly volume_m3: number;
  readonly density_kgPerM3AsIs: number;
  readonly moisture_pctWet: number;
  readonly volatile_pctDry: number;
  readonly pools_shareOfVolatile: readonly [number, number, number, number, number];
  readonly carbonToNitrogen_ratio: number;
  readonly temp_degC: number;
  readonly pH: number;
  readonly activity_share: number;
}

const usualBlend: Blend = {
  volume_m3: 1,
  density_kgPerM3AsIs: 450,
  moisture_pctWet: 60,
  volatile_pctDry: 85,
  pools_shareOfVolatile: [0.2, 0.22, 0.3, 0.18, 0.1],
  carbonToNitrogen_ratio: 28,
  temp_degC: 15,
  pH: 7.5,
  activity_share: 0.2,
};

const bareFace = { insulation_m2KPerW: 0, vapour_sPerM: 0 };

/** Open on all sides, out of wind, rain and sun. */
export const inTheOpen: Standing = {
  top: bareFace,
  side: bareFace,
  open_share: 1,
  wind_share: 0,
  rain_share: 0,
  sun_share: 0,
};

/** Still, dry air. */
export function stillAir(temp_degC: number): WeatherReading {
  return {
    temp_degC,
    humidity_share: 0.7,
    wind_mPerS: 0,
    rain_mmPerDay: 0,
    sun_WPerM2: 0,
    ground_degC: temp_degC,
  };
}

/** A run of a heap in the open at 12 °C; what is named stands in its place. */
export function runLike(change: Partial<HeapRun> = {}): HeapRun {
  const stuff = change.stuff ?? stuffLike();
  const side_m = Math.cbrt(stuff.volume_m3);
  return {
    shape: { form: 'box', width_m: side_m, depth_m: side_m, height_m: side_m },
    stuff,
    traits: traitsOf(typicalFigures()),
    standing: inTheOpen,
    weatherAt: constantWeather(stillAir(12)),
    acts: [],
    days: 30,
    shellCount: 8,
    pace: USUAL_PACE,
    ...change,
  };
}

/** The core's temperature at the start and after each day, and the last moment. */
export function daily(run: HeapRun): { readonly core_degC: readonly number[]; readonly end: Moment } {
  const core_degC: number[] = [];
  const end = runHeap(run, 86_400, ({ state }) => core_degC.push(shellTemperature_degC(state, 0)));
  return { core_degC, end };
}

/** Every shell's temperature, °C. */
export function temperatures_degC({ state }: Pick<Moment, 'state'>): readonly number[] {
  return Array.from({ length: state.shells }, (_, i) => shellTemperature_degC(state, i));
}

/** A line of a ledger. */
export function lineOf(ledger: Float64Array, id: keyof typeof LINE): number {
  return ledger[LINE[id]] ?? Number.NaN;
}
