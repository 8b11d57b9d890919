import { bad, good, type Outcome, type ToldReading, type ToldWeather } from '@loamwright/science';
import type { WeatherKind } from './grammar/weather-columns.ts';
import { toldKinds, type WeatherTable } from './grammar/weather-table.ts';

const HOUR_MS = 3_600_000;
const DAY_H = 24;
const S_PER_H = 3600;
const J_PER_MJ = 1e6;
const MOST_READINGS = DAY_H * 800;
/** What the model takes between two readings: a quarter of an hour to a month. */
const LEAST_h = 0.25;
const MOST_h = DAY_H * 31;
/** A straight line over two days without a reading still does; of a table of days or months, over half as much again. */
const BRIDGED_h = 2 * DAY_H;
const BRIDGED_times = 1.5;

/** From when on a run wants weather, and for how long. */
export interface SeriesAsked {
  /** The file, as it stands in problems. */
  readonly path: string;
  /** When the heap is built; the first reading where it is left out. */
  readonly from_ms?: number | undefined;
  readonly days: number;
}

/** Weather as a run takes it, and how many days of the run it covers. */
export interface Series {
  readonly weather: Extract<ToldWeather, { readonly readings: unknown }>;
  readonly covers_day: number;
}

/**
 * A table of weather as readings at equal intervals from the day on which the heap is built; straight lines between.
 * Problems: `weather-gap` at `path:line`, `weather-not-then` at the path.
 */
export function weatherSeries(table: WeatherTable, { path, from_ms, days }: SeriesAsked): Outcome<Series> {
  const temps = table.rows.filter(({ values }) => values.mean !== undefined);
  const [first, last] = [temps[0], temps.at(-1)];
  if (first === undefined || last === undefined) throw new RangeError('a table has a temperature');
  const usual_h = usualGap_h(temps.map(({ at_ms }) => at_ms));
  const bridged_h = Math.max(BRIDGED_h, BRIDGED_times * usual_h);
  const gap = temps.find((row, i) => i > 0 && row.at_ms - (temps[i - 1]?.at_ms ?? 0) > bridged_h * HOUR_MS);
  if (gap !== undefined) {
    const before_ms = temps[temps.indexOf(gap) - 1]?.at_ms ?? 0;
    const found = String(Math.round((gap.at_ms - before_ms) / HOUR_MS / DAY_H));
    return bad({ code: 'weather-gap', path: `${path}:${gap.line}`, found, wanted: String(bridged_h / DAY_H) });
  }
  const start_ms = from_ms ?? first.at_ms;
  if (start_ms < first.at_ms - bridged_h * HOUR_MS || start_ms > last.at_ms) {
    const wanted = `${dayOf(first.at_ms)} – ${dayOf(last.at_ms)}`;
    return bad({ code: 'weather-not-then', path, found: dayOf(start_ms), wanted });
  }
  const end_ms = Math.min(last.at_ms, start_ms + days * DAY_H * HOUR_MS);
  const span_h = (end_ms - start_ms) / HOUR_MS;
  const every_h = Math.min(MOST_h, Math.max(LEAST_h, usual_h, span_h / (MOST_READINGS - 1)));
  const count = 1 + Math.ceil(span_h / every_h - 1e-9);
  return good({
    weather: { readings: { every_h, values: readingsOf(table, { start_ms, every_h, count, usual_h }) } },
    covers_day: span_h / DAY_H,
  });
}

function dayOf(at_ms: number): string {
  return new Date(at_ms).toISOString().slice(0, 10);
}

/** The middle one of the times between two readings; a day where there is but one reading. */
function usualGap_h(times_ms: readonly number[]): number {
  const gaps = times_ms.slice(1).map((at_ms, i) => (at_ms - (times_ms[i] ?? 0)) / HOUR_MS);
  return gaps.toSorted((a, b) => a - b)[Math.floor(gaps.length / 2)] ?? DAY_H;
}

interface Grid {
  readonly start_ms: number;
  readonly every_h: number;
  readonly count: number;
  /** Time of a row. */
  readonly usual_h: number;
}

function readingsOf(table: WeatherTable, grid: Grid): readonly ToldReading[] {
  const kinds = toldKinds(table);
  const lines = new Map(kinds.map((kind) => [kind, lineOf(table, kind, grid)] as const));
  const rainHours = hoursOf(table.per.rain, grid);
  const sunHours = hoursOf(table.per.sun, grid);
  const at = (kind: WeatherKind, i: number): number | undefined => lines.get(kind)?.[i];
  return Array.from({ length: grid.count }, (_, i) => {
    const [temp_degC = 0, ground_degC] = [at('mean', i), at('ground', i)];
    const [humidity, wind_mPerS, rain, sun] = [at('humidity', i), at('wind', i), at('rain', i), at('sun', i)];
    return {
      temp_degC: rounded(temp_degC),
      ...(ground_degC !== undefined && { ground_degC: rounded(ground_degC) }),
      ...(humidity !== undefined && { humidity_share: rounded(humidity / 100) }),
      ...(wind_mPerS !== undefined && { wind_mPerS: rounded(wind_mPerS) }),
      ...(rain !== undefined && { rain_mmPerDay: rounded((rain * DAY_H) / rainHours) }),
      ...(sun !== undefined && {
        sun_WPerM2: rounded(table.sunInMegajoules ? (sun * J_PER_MJ) / (sunHours * S_PER_H) : sun),
      }),
    };
  });
}

/** Over how many hours an amount is told. */
function hoursOf(per: 'hour' | 'day' | undefined, { usual_h }: Grid): number {
  return per === 'hour' ? 1 : per === 'day' ? DAY_H : usual_h;
}

/** More digits than any instrument has. */
function rounded(value: number): number {
  return Number(value.toFixed(3));
}

/** A kind's values at each time of the grid, a straight line between rows. A row that says nothing of rain had none. */
function lineOf({ rows }: WeatherTable, kind: WeatherKind, { start_ms, every_h, count }: Grid): Float64Array {
  const points = rows.flatMap(({ at_ms, values }) => {
    const value = values[kind] ?? (kind === 'rain' ? 0 : undefined);
    return value === undefined ? [] : [{ at_ms, value }];
  });
  let next = 0;
  return Float64Array.from({ length: count }, (_, i) => {
    const at_ms = start_ms + i * every_h * HOUR_MS;
    while (next < points.length && (points[next]?.at_ms ?? 0) < at_ms) next++;
    const after = points[Math.min(next, points.length - 1)];
    const before = points[Math.max(0, next - 1)] ?? after;
    if (before === undefined || after === undefined) return Number.NaN;
    const span_ms = after.at_ms - before.at_ms;
    if (span_ms <= 0 || at_ms >= after.at_ms) return after.value;
    const share = Math.max(0, (at_ms - before.at_ms) / span_ms);
    return before.value + share * (after.value - before.value);
  });
}
