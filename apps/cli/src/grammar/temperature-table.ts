import type { CsvRow } from '@loamwright/advisor';
import { isAhead } from '@loamwright/daybook';
import { bad, type Day, good, isLoggable, type LogPoint, type Outcome, type Problem } from '@loamwright/science';
import { readQuantity, type TypedQuantity } from '@loamwright/units';
import { bestTable, type FoundTable, hasBareNumbers, nothing, orderOf, raggedIn, stampText } from './best-table.ts';
import { type DateOrder, readStamp, type Stamp } from './stamp.ts';
import { type Columns, columnsIn, type TempColumn } from './temperature-columns.ts';

/** A temperature of a table. */
export interface TableReading {
  readonly stamp: Stamp;
  readonly temp: TypedQuantity;
  readonly point?: LogPoint | undefined;
  /** No heap has it, and it was asked to be kept all the same. */
  readonly doubted?: boolean | undefined;
}

/** What a table of temperatures says, in the order of time. */
export interface TemperatureTable {
  readonly readings: readonly TableReading[];
  readonly turned: readonly Stamp[];
  /** Readings that stood there twice and count once. */
  readonly repeated: number;
  /** Columns that are neither a time, a temperature of the heap, nor turnings. */
  readonly aside: readonly string[];
}

export interface TableAsked {
  /** The file, as it stands in problems. */
  readonly path: string;
  readonly zone: string;
  readonly now: string;
  /** Where neither the column nor the cell says it. */
  readonly unit?: TempColumn['unit'];
  readonly order?: DateOrder | undefined;
  /** What no heap has is kept, marked doubtful, in place of being asked about. */
  readonly asTyped?: boolean | undefined;
}

const MOST_PROBLEMS = 10;
const yes = /^(?:x|y|yes|true|1|✓|turn(?:ed)?)$/iu;
const no = /^(?:|-+|–|—|n|no|false|0)$/iu;

/**
 * Reads a table of temperatures: a column of days or times, one or more of temperatures named by point, and perhaps one that says when
 * the heap was turned. The delimiter is the one that makes a table of it.
 *
 * Problems, at `path:line` or `path:line:column`: those of `readCsv`; `csv-empty`, `csv-no-header`; `csv-no-unit`, `csv-which-dates`;
 * `csv-ragged`; `csv-date`, `csv-ahead`, `csv-temperature`, `csv-no-heap`, `csv-turned`.
 */
export function readTemperatureTable(text: string, asked: TableAsked): Outcome<TemperatureTable> {
  const table = bestTable(text, asked.path, { columnsIn, rank: ({ known }) => known, noHeader: 'csv-no-header' });
  return table.ok ? tableRead(table.value, asked) : table;
}

function tableRead({ columns, header, rows }: FoundTable<Columns>, asked: TableAsked): Outcome<TemperatureTable> {
  const { path, zone, now } = asked;
  const order = orderOf(rows, columns, asked);
  if (!order.ok) return order;
  const units = unitProblems(columns, header, rows, asked);
  if (units.length > 0) return bad(...units);
  const readings: TableReading[] = [];
  const turned: Stamp[] = [];
  const problems: Problem[] = [];
  for (const row of rows) {
    if (problems.length >= MOST_PROBLEMS) break;
    const at = (index: number): string => `${path}:${row.line}:${index + 1}`;
    const ragged = raggedIn(row, header, path);
    if (ragged.length > 0) {
      problems.push(...ragged);
      continue;
    }
    const [temps, marked] = [tempsOf(row, columns, asked, at), turnOf(row, columns, at)];
    problems.push(...temps.problems, ...(marked.ok ? [] : marked.problems));
    if (temps.read.length === 0 && (!marked.ok || !marked.value)) continue;
    const said = stampText(row, columns);
    const stamp = readStamp(said, { order: order.value, zone: columns.zone ?? zone, garden: zone });
    if (stamp === undefined || isAhead(stamp.happened, now)) {
      const code = stamp === undefined ? 'csv-date' : 'csv-ahead';
      problems.push({ code, path: at(columns.date), found: said.slice(0, 60), wanted: '' });
      continue;
    }
    for (const one of temps.read) readings.push({ stamp, ...one });
    if (marked.ok && marked.value) turned.push(stamp);
  }
  if (problems.length > 0) return bad(...problems.slice(0, MOST_PROBLEMS));
  if (readings.length === 0)
    return bad({ code: 'csv-no-readings', path: `${path}:${header.line}`, found: '', wanted: '' });
  const once = distinct(readings);
  return good({
    readings: once.toSorted((a, b) => (a.stamp.happened < b.stamp.happened ? -1 : 1)),
    turned: [...new Map(turned.map((one) => [one.happened, one])).values()],
    repeated: readings.length - once.length,
    aside: columns.aside,
  });
}

function unitProblems(
  { temps }: Columns,
  header: CsvRow,
  rows: readonly CsvRow[],
  { path, unit }: TableAsked,
): readonly Problem[] {
  return temps.flatMap(({ index, name, unit: said }) => {
    if (said !== undefined || unit !== undefined || !hasBareNumbers(rows, index)) return [];
    return [{ code: 'csv-no-unit', path: `${path}:${header.line}:${index + 1}`, found: name.slice(0, 60), wanted: '' }];
  });
}

function tempsOf(
  { cells }: CsvRow,
  { temps }: Columns,
  { unit, asTyped = false }: TableAsked,
  at: (index: number) => string,
) {
  const problems: Problem[] = [];
  const read: Omit<TableReading, 'stamp'>[] = [];
  for (const { index, point, unit: said } of temps) {
    const cell = (cells[index] ?? '').trim();
    if (nothing.test(cell)) continue;
    const temp = readQuantity(cell.slice(0, 40), 'temperature', said ?? unit ?? 'degC');
    if (temp === undefined)
      problems.push({ code: 'csv-temperature', path: at(index), found: cell.slice(0, 60), wanted: '' });
    else if (!isLoggable(temp.si) && !asTyped)
      problems.push({ code: 'csv-no-heap', path: at(index), found: cell.slice(0, 60), wanted: '' });
    else
      read.push({
        temp,
        ...(point !== undefined && { point }),
        ...(!isLoggable(temp.si) && { doubted: true }),
      });
  }
  return { problems, read };
}

function turnOf({ cells }: CsvRow, { turned }: Columns, at: (index: number) => string): Outcome<boolean> {
  if (turned === undefined) return good(false);
  const cell = (cells[turned] ?? '').trim();
  if (no.test(cell)) return good(false);
  if (yes.test(cell)) return good(true);
  return bad({ code: 'csv-turned', path: at(turned), found: cell.slice(0, 60), wanted: '' });
}

function keyOf({ stamp, point, temp }: TableReading): string {
  return `${stamp.happened} ${point ?? ''} ${temp.si}`;
}

function distinct(readings: readonly TableReading[]): readonly TableReading[] {
  return [...new Map(readings.map((one) => [keyOf(one), one])).values()];
}

/**
 * Of each day and point the lowest and the highest reading: by these the rules judge a day, and no more is asked of any other. Where
 * both are the same reading it stands once. A doubted one is no day's highest: all of them are kept beside.
 */
export function extremesOf(readings: readonly TableReading[]): readonly TableReading[] {
  const kept = new Map<string, { lowest: TableReading; highest: TableReading }>();
  for (const one of readings) {
    if (one.doubted === true) continue;
    const key = `${one.stamp.day satisfies Day} ${one.point ?? ''}`;
    const held = kept.get(key) ?? { lowest: one, highest: one };
    kept.set(key, {
      lowest: one.temp.si < held.lowest.temp.si ? one : held.lowest,
      highest: one.temp.si > held.highest.temp.si ? one : held.highest,
    });
  }
  const found = [...kept.values()].flatMap(({ lowest, highest }) => [...new Set([lowest, highest])]);
  return [...found, ...readings.filter(({ doubted }) => doubted)].toSorted((a, b) =>
    a.stamp.happened < b.stamp.happened ? -1 : 1,
  );
}
