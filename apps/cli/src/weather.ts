import { airAsRead, type TempAtDay } from '@loamwright/advisor';
import { bad, good, type Outcome, type Problem, type ToldWeather } from '@loamwright/science';
import { readQuantity, type UnitSystem } from '@loamwright/units';
import type { Saying } from '@loamwright/words';
import { Temporal } from 'temporal-polyfill';
import { allOf, readOneOf } from './blend.ts';
import { readText } from './file.ts';
import { readMeasurement } from './grammar/measurement.ts';
import { dateOrders } from './grammar/stamp.ts';
import { readWeatherTable, type WeatherTable } from './grammar/weather-table.ts';
import { readWhen } from './grammar/when.ts';
import type { Session } from './session.ts';
import { namedService, weatherAtPlace } from './weather/at-place.ts';
import { weatherSeries } from './weather-series.ts';

/** What the weather is, on the command line. */
export interface WeatherOptions {
  readonly air?: string | undefined;
  readonly climate?: string | undefined;
  readonly weather?: string | undefined;
  readonly place?: string | undefined;
  readonly built?: string | undefined;
  readonly south?: boolean | undefined;
  readonly rain?: string | undefined;
  readonly wind?: string | undefined;
  readonly humidity?: string | undefined;
  readonly unit?: string | undefined;
  readonly dates?: string | undefined;
}

/** What a command knows of the weather besides. */
export interface WeatherAsked {
  readonly days: number;
  /** When the heap was built, by the daybook. */
  readonly begun?: string | undefined;
  /** Air that was read beside it. */
  readonly air?: readonly TempAtDay[] | undefined;
  /** Whether a roof keeps rain and sun off. */
  readonly roofed?: boolean | undefined;
}

/** The weather of a run, and what is to be said of it. */
export interface WeatherRead {
  readonly weather: ToldWeather;
  readonly notes: readonly Saying[];
}

/** Ten years of an hourly table. */
const MOST_BYTES = 32 * 1024 * 1024;
/** Where nobody said anything: a mild month. */
const USUAL_AIR_degC = 10;
const MM_PER_M = 1000;

/**
 * Weather by its options: still air, the usual of a climate, or a table. Problems: those of reading each; `missing` where `--south` has no
 * climate beside it.
 */
export async function readWeather(
  options: WeatherOptions,
  asked: WeatherAsked,
  session: Session,
): Promise<Outcome<WeatherRead>> {
  const { system } = session.speaker;
  const beside = readBeside(options, system);
  const built = builtAt(options.built, asked.begun, session);
  if (!beside.ok || !built.ok) return bad(...allOf(beside, built));
  if (options.south === true && options.climate === undefined)
    return bad({ code: 'missing', path: '--climate', found: '', wanted: '17C/3C' });
  const read = await weatherOf(options, asked, { beside: beside.value, built: built.value }, session);
  if (!read.ok || asked.roofed !== true) return read;
  return good({ ...read.value, weather: underRoof(read.value.weather) });
}

interface Beside {
  readonly rain_mmPerDay?: number;
  readonly wind_mPerS?: number;
  readonly humidity_share?: number;
}

/** When it is built; undefined where neither the options nor the daybook say it. */
type Built = Temporal.ZonedDateTime | undefined;

async function weatherOf(
  options: WeatherOptions,
  asked: WeatherAsked,
  { beside, built }: { readonly beside: Beside; readonly built: Built },
  session: Session,
): Promise<Outcome<WeatherRead>> {
  if (options.weather !== undefined) return readFile(options.weather, options, { asked, beside, built }, session);
  if (options.place !== undefined) return placeOf(options.place, { asked, beside, built }, session);
  if (options.climate !== undefined) return climateOf(options.climate, options, { beside, built }, session);
  if (options.air === undefined) return good(unsaid(asked, beside));
  const air = readMeasurement(options.air, 'temperature', '--air', session.speaker.system);
  return air.ok ? good({ weather: { still: { temp_degC: air.value.si, ...beside } }, notes: [] }) : air;
}

/** The air as it was read beside the heap, straight lines between; or a mild month's. */
function unsaid({ air = [], days }: WeatherAsked, beside: Beside): WeatherRead {
  if (air.length === 0) {
    const taken = { figure: USUAL_AIR_degC, unit: 'degC', as: 'temperature' } as const;
    return {
      weather: { still: { temp_degC: USUAL_AIR_degC, ...beside } },
      notes: [{ key: 'cli.heapRun.airGuessed', places: { air: taken } }],
    };
  }
  const values = airAsRead(air, days).map((temp_degC) => ({ temp_degC, ...beside }));
  return {
    weather: { readings: { every_h: HOURS_A_DAY, values } },
    notes: [{ key: 'cli.heapRun.airRead', places: { count: air.length } }],
  };
}

function builtAt(typed: string | undefined, begun: string | undefined, { now, zone }: Session): Outcome<Built> {
  const at = (instant: string): Built => Temporal.Instant.from(instant).toZonedDateTimeISO(zone);
  if (typed === undefined) return good(begun === undefined ? undefined : at(begun));
  const read = readWhen(typed, now(), zone);
  return read.ok
    ? good(at(read.value.happened))
    : bad(...read.problems.map((problem) => ({ ...problem, path: '--built' })));
}

/** Problem: `air-measure-unreadable`. */
function readBeside({ rain, wind, humidity }: WeatherOptions, system: UnitSystem): Outcome<Beside> {
  const problems: Problem[] = [];
  const read = (
    text: string | undefined,
    path: string,
    wanted: string,
    of: (text: string) => number | undefined,
    most = Number.POSITIVE_INFINITY,
  ) => {
    if (text === undefined) return undefined;
    const value = of(text.slice(0, 40));
    if (value === undefined || value < 0 || value > most)
      problems.push({ code: 'air-measure-unreadable', path, found: text.slice(0, 40), wanted });
    return value;
  };
  const rain_m = read(
    rain,
    '--rain',
    '2mm, 0.1in',
    (text) => readQuantity(text, 'length', system === 'us' ? 'in' : 'mm')?.si,
  );
  const wind_mPerS = read(
    wind,
    '--wind',
    '3m/s, 10km/h, 7mph',
    (text) => readQuantity(text, 'speed', system === 'us' ? 'mph' : 'mPerS')?.si,
  );
  const percent = read(
    humidity,
    '--humidity',
    '80%',
    (text) => {
      const match = /^\s*(\d{1,3}(?:[.,]\d+)?)\s*%?\s*$/u.exec(text);
      return match === null ? undefined : Number((match[1] ?? '').replace(',', '.'));
    },
    100,
  );
  if (problems.length > 0) return bad(...problems);
  return good({
    ...(rain_m !== undefined && { rain_mmPerDay: MM_PER_M * rain_m }),
    ...(wind_mPerS !== undefined && { wind_mPerS }),
    ...(percent !== undefined && { humidity_share: percent / 100 }),
  });
}

/** `17C/3C`. Problem: `climate-unreadable`. */
function climateOf(
  typed: string,
  { south }: WeatherOptions,
  { beside, built }: { readonly beside: Beside; readonly built: Built },
  session: Session,
): Outcome<WeatherRead> {
  const bare = session.speaker.system === 'us' ? 'degF' : 'degC';
  const [warm = '', cold = '', ...more] = typed.slice(0, 60).split('/');
  const warmest = readQuantity(warm, 'temperature', bare);
  const coldest = readQuantity(cold, 'temperature', bare);
  if (warmest === undefined || coldest === undefined || more.length > 0 || warmest.si < coldest.si)
    return bad({ code: 'climate-unreadable', path: '--climate', found: typed.slice(0, 60), wanted: '' });
  const now = built ?? Temporal.Instant.fromEpochMilliseconds(session.now().getTime()).toZonedDateTimeISO(session.zone);
  return good({
    weather: {
      climate: {
        warmest_degC: warmest.si,
        coldest_degC: coldest.si,
        ...beside,
        start_day: now.dayOfYear - 1 + now.hour / HOURS_A_DAY,
        ...(south === true && { south: true }),
      },
    },
    notes: [],
  });
}

const HOURS_A_DAY = 24;

interface Around {
  readonly asked: WeatherAsked;
  readonly beside: Beside;
  readonly built: Built;
}

async function readFile(
  path: string,
  { unit, dates }: WeatherOptions,
  { asked, beside, built }: Around,
  session: Session,
): Promise<Outcome<WeatherRead>> {
  const said = unit === undefined ? good(undefined) : readOneOf(unit.replace('°', ''), ['c', 'f'] as const, '--unit');
  const order = dates === undefined ? good(undefined) : readOneOf(dates, dateOrders, '--dates');
  if (!said.ok || !order.ok) return bad(...allOf(said, order));
  const text = await readText(path, session, MOST_BYTES);
  if (!text.ok) return text;
  const table = readWeatherTable(text.value, {
    path,
    zone: session.zone,
    ...(said.value !== undefined && { unit: said.value === 'c' ? 'degC' : 'degF' }),
    order: order.value,
  });
  if (!table.ok) return table;
  const series = weatherSeries(table.value, { path, from_ms: built?.epochMilliseconds, days: asked.days });
  if (!series.ok) return series;
  const { readings } = series.value.weather;
  return good({
    // What the table has no column for is as it was said.
    weather: { readings: { ...readings, values: readings.values.map((one) => ({ ...beside, ...one })) } },
    notes: notesOf(table.value, series.value.covers_day, asked.days),
  });
}

/** The weather that a service has of a place, asked for only where the grower named both. */
async function placeOf(
  place: string,
  { asked, beside, built }: Around,
  session: Session,
): Promise<Outcome<WeatherRead>> {
  const source = namedService(session.environment);
  if (!source.ok) return source;
  const now = Temporal.Instant.fromEpochMilliseconds(session.now().getTime()).toZonedDateTimeISO(session.zone);
  const found = await weatherAtPlace(source.value, { place, from: built ?? now, now, days: asked.days });
  if (!found.ok) return found;
  const { readings } = found.value.weather;
  return good({
    weather: { readings: { ...readings, values: readings.values.map((one) => ({ ...beside, ...one })) } },
    notes: endsWords(found.value.covers_day, asked.days),
  });
}

/** That weather ends before the run does. */
function endsWords(covers_day: number, days: number): readonly Saying[] {
  return covers_day + 1 < days ? [{ key: 'cli.heapRun.weatherEnds', places: { day: Math.round(covers_day) } }] : [];
}

function notesOf({ aside, rows }: WeatherTable, covers_day: number, days: number): readonly Saying[] {
  const isMiddle = rows.some(({ values }) => values.lowest !== undefined && values.highest !== undefined);
  return [
    ...(isMiddle ? [{ key: 'cli.heapRun.weatherMeans' } as const] : []),
    ...endsWords(covers_day, days),
    ...(aside.length === 0 ? [] : [{ key: 'cli.heapRun.aside', places: { names: aside.join(', ') } } as const]),
  ];
}

/** The same without rain and sun. */
function underRoof(weather: ToldWeather): ToldWeather {
  if ('still' in weather) return { still: { ...weather.still, rain_mmPerDay: 0, sun_WPerM2: 0 } };
  if ('climate' in weather) return { climate: { ...weather.climate, rain_mmPerDay: 0 } };
  const { every_h, values } = weather.readings;
  return { readings: { every_h, values: values.map((one) => ({ ...one, rain_mmPerDay: 0, sun_WPerM2: 0 })) } };
}
