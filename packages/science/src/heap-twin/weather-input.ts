import { z } from 'zod';
import { HOUR_S } from './parameters.ts';
import type { WeatherAt } from './surroundings.ts';
import { climateWeather, constantWeather, readWeather, type WeatherReading } from './weather.ts';

/** Weather as it is told: only the air's temperature must be known. */
export interface ToldReading {
  readonly temp_degC: number;
  readonly humidity_share?: number | undefined;
  readonly wind_mPerS?: number | undefined;
  readonly rain_mmPerDay?: number | undefined;
  readonly sun_WPerM2?: number | undefined;
  readonly ground_degC?: number | undefined;
}

/** The same all the time; the usual of a climate; or readings at equal intervals. */
export type ToldWeather =
  | { readonly still: ToldReading }
  | {
      readonly climate: {
        readonly warmest_degC: number;
        readonly coldest_degC: number;
        readonly daySpan_K?: number | undefined;
        readonly humidity_share?: number | undefined;
        readonly wind_mPerS?: number | undefined;
        readonly rain_mmPerDay?: number | undefined;
        /** Day of the year on which the heap is built, 0 for 1 January. */
        readonly start_day: number;
        readonly south?: boolean | undefined;
      };
    }
  | { readonly readings: { readonly every_h: number; readonly values: readonly ToldReading[] } };

const temp = z.number().min(-60).max(60);
const humidity = z
  .number()
  .min(0)
  .max(1)
  .optional()
  .meta({ description: 'Relative humidity, 0 to 1; 0.75 when left out.' });
const wind = z
  .number()
  .min(0)
  .max(60)
  .optional()
  .meta({ description: 'Wind of a weather station, m/s; 0 when left out.' });
const rain = z.number().min(0).max(1000).optional().meta({ description: 'Rain, mm a day; none when left out.' });

const reading: z.ZodType<ToldReading> = z.strictObject({
  temp_degC: temp.meta({ description: 'Air, °C.' }),
  humidity_share: humidity,
  wind_mPerS: wind,
  rain_mmPerDay: rain,
  sun_WPerM2: z
    .number()
    .min(0)
    .max(1500)
    .optional()
    .meta({ description: 'Sun on level ground, W/m²; none when left out.' }),
  ground_degC: temp.optional().meta({ description: 'Ground at half a metre, °C; as the air when left out.' }),
});

const MOST_READINGS = 24 * 800;

export const toldWeatherSchema: z.ZodType<ToldWeather> = z.union([
  z.strictObject({ still: reading }),
  z.strictObject({
    climate: z
      .strictObject({
        warmest_degC: temp.meta({ description: 'Mean of the warmest month, °C.' }),
        coldest_degC: temp.meta({ description: 'Mean of the coldest month, °C.' }),
        daySpan_K: z
          .number()
          .min(0)
          .max(40)
          .optional()
          .meta({ description: 'Highest less lowest of a usual day, K; 8 when left out.' }),
        humidity_share: humidity,
        wind_mPerS: wind,
        rain_mmPerDay: rain,
        start_day: z.number().min(0).max(366).meta({ description: 'Day of the year it is built, 0 for 1 January.' }),
        south: z.boolean().optional().meta({ description: 'South of the equator.' }),
      })
      .refine(({ warmest_degC, coldest_degC }) => warmest_degC >= coldest_degC, {
        path: ['warmest_degC'],
        params: { wanted: 'no colder than the coldest month' },
      }),
  }),
  z.strictObject({
    readings: z.strictObject({
      every_h: z
        .number()
        .min(0.25)
        .max(24 * 31),
      values: z.array(reading).min(1).max(MOST_READINGS),
    }),
  }),
]);

const USUAL_HUMIDITY = 0.75;
const USUAL_DAY_SPAN_K = 8;
/** The warmest day of the year north and south of the equator: a month after midsummer. */
const WARMEST_DAY = { north: 201, south: 18 } as const;

function full(told: ToldReading): WeatherReading {
  return {
    temp_degC: told.temp_degC,
    humidity_share: told.humidity_share ?? USUAL_HUMIDITY,
    wind_mPerS: told.wind_mPerS ?? 0,
    rain_mmPerDay: told.rain_mmPerDay ?? 0,
    sun_WPerM2: told.sun_WPerM2 ?? 0,
    ground_degC: told.ground_degC ?? told.temp_degC,
  };
}

/** Told weather as the model asks for it. */
export function weatherOf(told: ToldWeather): WeatherAt {
  if ('still' in told) return constantWeather(full(told.still));
  if ('readings' in told) {
    const [first, ...rest] = told.readings.values.map(full);
    if (first === undefined) throw new RangeError('weather needs a reading');
    return readWeather([first, ...rest], told.readings.every_h * HOUR_S);
  }
  const { south, ...climate } = told.climate;
  return climateWeather({
    ...climate,
    daySpan_K: climate.daySpan_K ?? USUAL_DAY_SPAN_K,
    humidity_share: climate.humidity_share ?? USUAL_HUMIDITY,
    wind_mPerS: climate.wind_mPerS ?? 0,
    rain_mmPerDay: climate.rain_mmPerDay ?? 0,
    warmest_day: south === true ? WARMEST_DAY.south : WARMEST_DAY.north,
  });
}
