import { saturation_Pa } from './moist-air.ts';
import { DAY_S, HOUR_S } from './parameters.ts';
import type { Weather, WeatherAt } from './surroundings.ts';

/** Days in a year. */
const YEAR_day = 365.25;

/** One reading of the weather, or its mean over a while. */
export interface WeatherReading {
  readonly temp_degC: number;
  /** Relative humidity, 0 to 1. */
  readonly humidity_share: number;
  readonly wind_mPerS: number;
  readonly rain_mmPerDay: number;
  readonly sun_WPerM2: number;
  /** Temperature of the ground under the heap. */
  readonly ground_degC: number;
}

/** The same weather all the time. */
export function constantWeather(reading: WeatherReading): WeatherAt {
  return (_time_s, into) => fill(reading, reading, 0, into);
}

/** Readings at equal intervals, a straight line between them; before the first and after the last, those. */
export function readWeather(
  readings: readonly [WeatherReading, ...WeatherReading[]],
  every_s: number = HOUR_S,
): WeatherAt {
  const last = readings.length - 1;
  const fallen_mm = fallenIn(readings, every_s);
  return (time_s, into, while_s = 0) => {
    const place = Math.min(last, Math.max(0, time_s / every_s));
    const below = Math.min(Math.floor(place), Math.max(0, last - 1));
    const one = readings[below] as WeatherReading;
    fill(one, (readings[below + 1] as WeatherReading | undefined) ?? one, place - below, into);
    if (while_s > 0) into.rain_kgPerM2S = (fallen_mm(time_s) - fallen_mm(time_s - while_s)) / while_s;
  };
}

/** Rain since the first reading, mm, at any time. */
function fallenIn(
  readings: readonly [WeatherReading, ...WeatherReading[]],
  every_s: number,
): (time_s: number) => number {
  const perS = readings.map(({ rain_mmPerDay }) => rain_mmPerDay / DAY_S);
  const sums_mm = new Float64Array(perS.length);
  for (let i = 1; i < perS.length; i++) {
    sums_mm[i] = (sums_mm[i - 1] as number) + 0.5 * every_s * ((perS[i - 1] as number) + (perS[i] as number));
  }
  const last = perS.length - 1;
  return (time_s) => {
    if (time_s <= 0) return time_s * (perS[0] as number);
    const over_s = time_s - last * every_s;
    if (over_s >= 0) return (sums_mm[last] as number) + over_s * (perS[last] as number);
    const below = Math.floor(time_s / every_s);
    const since_s = time_s - below * every_s;
    const from = perS[below] as number;
    const rise_perS = ((perS[below + 1] as number) - from) / every_s;
    return (sums_mm[below] as number) + since_s * (from + 0.5 * since_s * rise_perS);
  };
}

/**
 * A climate: a wave over the year and one over the day, out of the means of the warmest and the coldest month and the
 * usual span of a day; the ground follows the year's wave, later and less.
 */
export interface Climate {
  readonly warmest_degC: number;
  readonly coldest_degC: number;
  /** Highest less lowest of a usual day, K. */
  readonly daySpan_K: number;
  readonly humidity_share: number;
  readonly wind_mPerS: number;
  readonly rain_mmPerDay: number;
  /** Day of the year on which the run starts, and that of the greatest warmth: 0 is 1 January. */
  readonly start_day: number;
  readonly warmest_day: number;
}

/** How much of the year's wave is left in the ground at 0.5 m, and how much later it comes: damping depth 2 m. */
const GROUND_LEFT = Math.exp(-0.5 / 2);
const GROUND_LATER_day = (0.5 / 2) * (YEAR_day / (2 * Math.PI));
/** The day's greatest warmth, hours after midnight. */
const WARMEST_HOUR = 15;

/** The weather of a climate at its usual. */
export function climateWeather(climate: Climate): WeatherAt {
  const mean_degC = (climate.warmest_degC + climate.coldest_degC) / 2;
  const swing_K = (climate.warmest_degC - climate.coldest_degC) / 2;
  const ofYear = (day: number): number => Math.cos((2 * Math.PI * (day - climate.warmest_day)) / YEAR_day);
  return (time_s, into) => {
    const day = climate.start_day + time_s / DAY_S;
    const ofDay = Math.cos(2 * Math.PI * (day - WARMEST_HOUR / 24));
    const temp_degC = mean_degC + swing_K * ofYear(day) + (climate.daySpan_K / 2) * ofDay;
    const reading = {
      temp_degC,
      humidity_share: climate.humidity_share,
      wind_mPerS: climate.wind_mPerS,
      rain_mmPerDay: climate.rain_mmPerDay,
      sun_WPerM2: 0,
      ground_degC: mean_degC + swing_K * GROUND_LEFT * ofYear(day - GROUND_LATER_day),
    };
    fill(reading, reading, 0, into);
  };
}

function fill(one: WeatherReading, next: WeatherReading, between: number, into: Weather): void {
  const mixed = (a: number, b: number): number => a + between * (b - a);
  into.temp_degC = mixed(one.temp_degC, next.temp_degC);
  into.vapour_Pa = mixed(one.humidity_share, next.humidity_share) * saturation_Pa(into.temp_degC);
  into.wind_mPerS = mixed(one.wind_mPerS, next.wind_mPerS);
  into.rain_kgPerM2S = mixed(one.rain_mmPerDay, next.rain_mmPerDay) / DAY_S;
  into.sun_WPerM2 = mixed(one.sun_WPerM2, next.sun_WPerM2);
  into.ground_degC = mixed(one.ground_degC, next.ground_degC);
}
