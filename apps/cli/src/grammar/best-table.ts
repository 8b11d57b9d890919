import { type CsvRow, csvDelimiters, readCsv } from '@loamwright/advisor';
import { bad, good, type Outcome, type Problem } from '@loamwright/science';
import { type DateOrder, orderShown } from './stamp.ts';
import type { TimeColumns } from './temperature-columns.ts';

/** A table in a text: its columns, as they were understood, the row that names them, and the rows below. */
export interface FoundTable<Columns> {
  readonly columns: Columns;
  readonly header: CsvRow;
  readonly rows: readonly CsvRow[];
}

/** What makes a table of the rows of a text. */
interface TableKind<Columns> {
  /** The columns that a row names; undefined where it is no header. */
  readonly columnsIn: (cells: readonly string[]) => Columns | undefined;
  /** The more, the better the text was split into cells. */
  readonly rank: (columns: Columns) => number;
  /** The code of the problem that no row is a header. */
  readonly noHeader: string;
}

/** A table may begin with words about itself. */
const MOST_BEFORE_HEADER = 30;
/** A cell that says nothing. */
export const nothing = /^(?:|-+|–|—|n\/?a|nan|null)$/iu;
/** A number without a unit. */
const bare = /^[\s\d.,+−-]*\d[\s\d.,]*$/u;
/** So much of what was written is told in a problem. */
const TOLD_LETTERS = 60;

/**
 * The table in a text, split by the delimiter that makes most of it. Problems, at `path`: those of `readCsv`; `csv-empty`; that no row is
 * a header.
 */
export function bestTable<Columns>(
  text: string,
  path: string,
  { columnsIn, rank, noHeader }: TableKind<Columns>,
): Outcome<FoundTable<Columns>> {
  const said = text.replace('\uFEFF', '').trim();
  if (said === '') return bad({ code: 'csv-empty', path, found: '', wanted: '' });
  const read = csvDelimiters.map((delimiter) => readCsv(text, delimiter, path));
  const tables = read.flatMap((rows) => (rows.ok ? (tableIn(rows.value, columnsIn) ?? []) : []));
  const [table] = tables.toSorted((a, b) => rank(b.columns) - rank(a.columns));
  if (table !== undefined) return good(table);
  const [broken] = read.flatMap((rows) => (rows.ok ? [] : rows.problems));
  const [firstLine = ''] = said.split(/[\r\n]/u);
  return bad(broken ?? { code: noHeader, path, found: firstLine.slice(0, TOLD_LETTERS), wanted: '' });
}

function tableIn<Columns>(
  rows: readonly CsvRow[],
  columnsIn: TableKind<Columns>['columnsIn'],
): FoundTable<Columns> | undefined {
  for (const [i, header] of rows.slice(0, MOST_BEFORE_HEADER).entries()) {
    const columns = columnsIn(header.cells);
    if (columns !== undefined) return { columns, header, rows: rows.slice(i + 1) };
  }
  return undefined;
}

/** `csv-ragged`: a row that goes on beyond the columns that are named. */
export function raggedIn(row: CsvRow, header: CsvRow, path: string): readonly Problem[] {
  const isRagged = row.cells.some((cell, i) => i >= header.cells.length && cell.trim() !== '');
  const [found, wanted] = [String(row.cells.length), String(header.cells.length)];
  return isRagged ? [{ code: 'csv-ragged', path: `${path}:${row.line}`, found, wanted }] : [];
}

/** Whether a column has numbers without a unit. */
export function hasBareNumbers(rows: readonly CsvRow[], index: number): boolean {
  return rows.some(({ cells }) => bare.test(cells[index] ?? ''));
}

/** What a row says of when it was. */
export function stampText({ cells }: CsvRow, { date, time }: TimeColumns): string {
  return `${cells[date] ?? ''} ${time === undefined ? '' : (cells[time] ?? '')}`.trim();
}

/** The order that was said, else the one that the dates of the table show. Problem: `csv-which-dates`. */
export function orderOf(
  rows: readonly CsvRow[],
  columns: TimeColumns,
  { path, order }: { readonly path: string; readonly order?: DateOrder | undefined },
): Outcome<DateOrder | undefined> {
  if (order !== undefined) return good(order);
  const shown = rows.map((row) => ({ row, as: orderShown(stampText(row, columns)) }));
  const first = shown.find(({ as }) => as === 'dmy' || as === 'mdy')?.as;
  const doubt = shown.find(({ as }) => as !== undefined && as !== first && (as !== 'either' || first === undefined));
  if (doubt === undefined) return good(first === 'either' ? undefined : first);
  const place = `${path}:${doubt.row.line}:${columns.date + 1}`;
  const found = stampText(doubt.row, columns).slice(0, TOLD_LETTERS);
  return bad({ code: 'csv-which-dates', path: place, found, wanted: '' });
}
