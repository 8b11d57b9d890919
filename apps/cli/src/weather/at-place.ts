import { bad, good, type Outcome, type ToldWeather } from '@loamwright/science';
import { Temporal } from 'temporal-polyfill';
import { hourlyService } from './hourly-service.ts';
import type { WeatherSource } from './source.ts';

const HOURS_A_DAY = 24;
/** So far ahead services foretell (common practice, no source); what lies beyond is not asked for. */
const FORETOLD_DAYS = 14;
const MOST_NORTH_DEG = 90;
const MOST_EAST_DEG = 180;

/** The service named in the environment. Problem: `weather-no-service`. */
export function namedService(environment: Readonly<Record<string, string | undefined>>): Outcome<WeatherSource> {
  const base = environment['LOAMWRIGHT_WEATHER'];
  return base === undefined || base === ''
    ? bad({ code: 'weather-no-service', path: 'LOAMWRIGHT_WEATHER', found: '', wanted: 'https://…' })
    : good(hourlyService(base));
}

/** A run that begins at a moment and lasts so long, as it is now. */
export interface PlaceAsked {
  /** Degrees north and east, `46.5,7.25`. */
  readonly place: string;
  readonly from: Temporal.ZonedDateTime;
  readonly now: Temporal.ZonedDateTime;
  readonly days: number;
}

/** The weather of a place from the hour on in which a run begins, and how many days of the run it covers. */
export interface PlaceWeather {
  readonly weather: Extract<ToldWeather, { readonly readings: unknown }>;
  readonly covers_day: number;
}

/** Problems: `place-unreadable`, `weather-not-then`, and those of the source. */
export async function weatherAtPlace(source: WeatherSource, asked: PlaceAsked): Promise<Outcome<PlaceWeather>> {
  const place = readPlace(asked.place);
  if (!place.ok) return place;
  const from = asked.from.withTimeZone('UTC');
  const last = asked.now.withTimeZone('UTC').add({ days: FORETOLD_DAYS });
  const wanted = from.add({ hours: Math.ceil(asked.days * HOURS_A_DAY) });
  const to = Temporal.ZonedDateTime.compare(wanted, last) < 0 ? wanted : last;
  if (Temporal.ZonedDateTime.compare(from, to) >= 0) {
    const found = from.toPlainDate().toString();
    return bad({ code: 'weather-not-then', path: '--place', found, wanted: `… – ${last.toPlainDate().toString()}` });
  }
  const dates = { from: from.toPlainDate().toString(), to: to.toPlainDate().toString() };
  const hourly = await source.hourly({ ...place.value, ...dates });
  if (!hourly.ok) return hourly;
  const values = hourly.value.values.slice(from.hour);
  return good({
    weather: { readings: { every_h: hourly.value.every_h, values } },
    covers_day: Math.min(asked.days, (values.length - 1) / HOURS_A_DAY),
  });
}

function readPlace(typed: string): Outcome<{ readonly north_deg: number; readonly east_deg: number }> {
  const match = /^\s*(-?\d{1,2}(?:\.\d+)?)\s*[,;\s]\s*(-?\d{1,3}(?:\.\d+)?)\s*$/u.exec(typed.slice(0, 60));
  const [north_deg, east_deg] = [Number(match?.[1]), Number(match?.[2])];
  return match !== null && Math.abs(north_deg) <= MOST_NORTH_DEG && Math.abs(east_deg) <= MOST_EAST_DEG
    ? good({ north_deg, east_deg })
    : bad({ code: 'place-unreadable', path: '--place', found: typed.slice(0, 60), wanted: '46.5,7.25' });
}
