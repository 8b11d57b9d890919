import type { CsvRow } from '@loamwright/advisor';
import { epoch_ms } from '@loamwright/daybook';
import { bad, good, type Outcome, type Problem } from '@loamwright/science';
import { readQuantity, type Unit } from '@loamwright/units';
import { bestTable, type FoundTable, hasBareNumbers, nothing, orderOf, raggedIn, stampText } from './best-table.ts';
import { type DateOrder, readStamp } from './stamp.ts';
import {
  type WeatherColumn,
  type WeatherColumns,
  type WeatherKind,
  weatherColumnsIn,
  weatherKinds,
} from './weather-columns.ts';

/** Weather at one time, as far as the table says it, in SI; rain and sun are those of the time of a row, or by the hour or day. */
export interface WeatherRow {
  readonly at_ms: number;
  readonly line: number;
  readonly values: Readonly<Partial<Record<WeatherKind, number>>>;
}

/** A table of weather, in the order of time. */
export interface WeatherTable {
  readonly rows: readonly WeatherRow[];
  /** Over which time its rain and its sun are told, where its header says so. */
  readonly per: Readonly<Partial<Record<'rain' | 'sun', 'hour' | 'day'>>>;
  /** Whether its sun is told in MJ/m², not in W/m². */
  readonly sunInMegajoules: boolean;
  readonly aside: readonly string[];
}

/** How a table of weather is to be read. */
export interface WeatherTableAsked {
  /** The file, as it stands in problems. */
  readonly path: string;
  readonly zone: string;
  /** Of temperatures, where neither the column nor the cell says it. */
  readonly unit?: 'degC' | 'degF' | undefined;
  readonly order?: DateOrder | undefined;
}

const MOST_PROBLEMS = 10;

/** What a column wants, and what no weather goes beyond. */
interface Bounds {
  readonly low: number;
  readonly high: number;
  readonly wanted: string;
  readonly units: string;
}
const degrees: Bounds = { low: -60, high: 60, wanted: '-60 to 60 °C', units: '°C, °F' };
const bounds: Readonly<Record<WeatherKind, Bounds>> = {
  mean: degrees,
  lowest: degrees,
  highest: degrees,
  ground: degrees,
  humidity: { low: 0, high: 100, wanted: '0 to 100 %', units: '%' },
  wind: { low: 0, high: 60, wanted: '0 to 60 m/s', units: 'm/s, km/h, mph' },
  rain: { low: 0, high: 1000, wanted: '0 to 1000 mm', units: 'mm, in' },
  sun: { low: 0, high: 1500, wanted: '0 to 1500 W/m²', units: 'W/m², MJ/m²' },
};

/**
 * Reads a table of weather: a column of days or times, one of temperatures (or two, of a day's lowest and highest), and perhaps humidity,
 * wind, rain, sun and the ground. The delimiter is the one that makes a table of it.
 *
 * Problems, at `path:line` or `path:line:column`: those of `readCsv`; `csv-empty`, `weather-no-header`, `weather-no-unit`,
 * `csv-which-dates`, `csv-date`, `csv-ragged`, `weather-figure`, `weather-beyond`, `weather-twice`, `weather-no-rows`.
 */
export function readWeatherTable(text: string, asked: WeatherTableAsked): Outcome<WeatherTable> {
  const table = bestTable(text, asked.path, {
    columnsIn: weatherColumnsIn,
    rank: ({ columns }) => columns.length,
    noHeader: 'weather-no-header',
  });
  return table.ok ? tableRead(table.value, asked) : table;
}

function tableRead(
  { columns: found, header, rows }: FoundTable<WeatherColumns>,
  asked: WeatherTableAsked,
): Outcome<WeatherTable> {
  const { path, zone } = asked;
  const order = orderOf(rows, found.when, asked);
  if (!order.ok) return order;
  const units = unitProblems(found.columns, header, rows, asked);
  if (units.length > 0) return bad(...units);
  const problems: Problem[] = [];
  const read: WeatherRow[] = [];
  for (const row of rows) {
    if (problems.length >= MOST_PROBLEMS) break;
    const ragged = raggedIn(row, header, path);
    if (ragged.length > 0) {
      problems.push(...ragged);
      continue;
    }
    const said = stampText(row, found.when);
    const stamp = readStamp(said, { order: order.value, zone: found.when.zone ?? zone, garden: zone });
    if (stamp === undefined) {
      const at = `${path}:${row.line}:${found.when.date + 1}`;
      problems.push({ code: 'csv-date', path: at, found: said.slice(0, 60), wanted: '' });
      continue;
    }
    const values = valuesOf(row, found.columns, asked);
    if (values.ok) read.push({ at_ms: epoch_ms(stamp.happened), line: row.line, values: values.value });
    else problems.push(...values.problems);
  }
  if (problems.length > 0) return bad(...problems.slice(0, MOST_PROBLEMS));
  return inOrder(withMeans(read), found, { path, header });
}

/** A bare number of a column without a unit tells nothing. Humidity has but one. */
function unitProblems(
  columns: readonly WeatherColumn[],
  header: CsvRow,
  rows: readonly CsvRow[],
  { path, unit: ofTemperatures }: WeatherTableAsked,
): readonly Problem[] {
  return columns.flatMap(({ index, name, kind, unit }) => {
    const isTemperature = bounds[kind] === degrees;
    if (kind === 'humidity' || unit !== undefined || (isTemperature && ofTemperatures !== undefined)) return [];
    if (!hasBareNumbers(rows, index)) return [];
    const wanted = bounds[kind].units;
    return [{ code: 'weather-no-unit', path: `${path}:${header.line}:${index + 1}`, found: name, wanted }];
  });
}

function valuesOf(
  row: CsvRow,
  columns: readonly WeatherColumn[],
  asked: WeatherTableAsked,
): Outcome<WeatherRow['values']> {
  const values: Partial<Record<WeatherKind, number>> = {};
  const problems: Problem[] = [];
  for (const column of columns) {
    const cell = (row.cells[column.index] ?? '').trim();
    if (nothing.test(cell)) continue;
    const { low, high, wanted, units } = bounds[column.kind];
    const value = figureOf(cell.slice(0, 40), column, asked.unit);
    const path = `${asked.path}:${row.line}:${column.index + 1}`;
    const found = cell.slice(0, 60);
    if (value === undefined) problems.push({ code: 'weather-figure', path, found, wanted: `12.5 (${units})` });
    else if (value < low || value > high) problems.push({ code: 'weather-beyond', path, found, wanted });
    else values[column.kind] = value;
  }
  return problems.length > 0 ? bad(...problems) : good(values);
}

const MM_PER_M = 1000;

/** °C, percent, m/s and mm; sun as it is told. */
function figureOf(cell: string, { kind, unit }: WeatherColumn, ofTemperatures: Unit = 'degC'): number | undefined {
  switch (kind) {
    case 'humidity':
      return plainNumber(cell.replace('%', ''));
    case 'wind':
      return readQuantity(cell, 'speed', (unit as Unit | undefined) ?? 'mPerS')?.si;
    case 'rain': {
      const depth_m = readQuantity(cell, 'length', (unit as Unit | undefined) ?? 'mm')?.si;
      return depth_m === undefined ? undefined : MM_PER_M * depth_m;
    }
    case 'sun':
      return plainNumber(cell);
    default:
      return readQuantity(cell, 'temperature', (unit as Unit | undefined) ?? ofTemperatures)?.si;
  }
}

function plainNumber(cell: string): number | undefined {
  const text = cell.trim().replace(',', '.').replace('−', '-');
  return /^[+-]?\d+(?:\.\d+)?$/u.test(text) ? Number(text) : undefined;
}

/** Where only the lowest and the highest are told, the middle between them stands for the mean. */
function withMeans(rows: readonly WeatherRow[]): readonly WeatherRow[] {
  return rows.map((row) => {
    const { mean, lowest, highest } = row.values;
    if (mean !== undefined || lowest === undefined || highest === undefined) return row;
    return { ...row, values: { ...row.values, mean: (lowest + highest) / 2 } };
  });
}

/** In the order of time, from the first row that has a temperature to the last. */
function inOrder(
  rows: readonly WeatherRow[],
  { columns, aside }: WeatherColumns,
  { path, header }: { readonly path: string; readonly header: CsvRow },
): Outcome<WeatherTable> {
  const sorted = rows.toSorted((a, b) => a.at_ms - b.at_ms || a.line - b.line);
  const twice = sorted.find((row, i) => sorted[i - 1]?.at_ms === row.at_ms);
  if (twice !== undefined) {
    const found = new Date(twice.at_ms).toISOString();
    return bad({ code: 'weather-twice', path: `${path}:${twice.line}`, found, wanted: '' });
  }
  const known = sorted.map(({ values }) => values.mean !== undefined);
  const first = known.indexOf(true);
  if (first < 0) return bad({ code: 'weather-no-rows', path: `${path}:${header.line}`, found: '', wanted: '' });
  const perOf = (kind: 'rain' | 'sun') => columns.find((one) => one.kind === kind)?.per;
  const [rain, sun] = [perOf('rain'), perOf('sun')];
  return good({
    rows: inPercent(sorted.slice(first, known.lastIndexOf(true) + 1)),
    per: { ...(rain !== undefined && { rain }), ...(sun !== undefined && { sun }) },
    sunInMegajoules: columns.some(({ kind, unit }) => kind === 'sun' && unit === 'MJPerM2'),
    aside,
  });
}

/** Humidity that is nowhere above 1 is told as a share. */
function inPercent(rows: readonly WeatherRow[]): readonly WeatherRow[] {
  const isShare = rows.every(({ values: { humidity = 0 } }) => humidity <= 1);
  if (!isShare) return rows;
  return rows.map((row) => {
    const { humidity } = row.values;
    return humidity === undefined ? row : { ...row, values: { ...row.values, humidity: 100 * humidity } };
  });
}

/** The kinds that a table tells anything of. */
export function toldKinds({ rows }: WeatherTable): readonly WeatherKind[] {
  return weatherKinds.filter((kind) => rows.some(({ values }) => values[kind] !== undefined));
}
