import { bad, good, type Outcome } from '@loamwright/science';

/** A row of a table, and the line of the file on which it begins. */
export interface CsvRow {
  readonly line: number;
  readonly cells: readonly string[];
}

export const csvDelimiters = [',', ';', '\t'] as const;
export type CsvDelimiter = (typeof csvDelimiters)[number];

/** Beyond four years of a reading every ten minutes it is another thing. */
const MOST_ROWS = 250_000;
const MOST_CELLS = 200;

/**
 * The rows of a table as RFC 4180 has them, with any of three delimiters and any ends of lines. A mark of byte order at its head and
 * rows without anything in them are passed over.
 *
 * Problems, each at `path:line`: `csv-quote-open` where a quote is never closed; `csv-too-long`, `csv-too-wide`.
 */
export function readCsv(text: string, delimiter: CsvDelimiter, path: string): Outcome<readonly CsvRow[]> {
  const rows: CsvRow[] = [];
  let line = 1;
  let at = text.startsWith('\uFEFF') ? 1 : 0;
  while (at < text.length) {
    const place = `${path}:${line}`;
    const row = readRow(text, at, delimiter);
    if (row === undefined) return bad({ code: 'csv-quote-open', path: place, found: '', wanted: '' });
    if (row.cells.length > MOST_CELLS)
      return bad({ code: 'csv-too-wide', path: place, found: '', wanted: String(MOST_CELLS) });
    if (row.cells.some((cell) => cell.trim() !== '')) rows.push({ line, cells: row.cells });
    if (rows.length > MOST_ROWS)
      return bad({ code: 'csv-too-long', path: place, found: '', wanted: String(MOST_ROWS) });
    line += row.lines;
    at = row.next;
  }
  return good(rows);
}

interface Read {
  /** Where what comes after it begins. */
  readonly next: number;
  /** Ends of lines in it. */
  readonly lines: number;
}

function readRow(
  text: string,
  start: number,
  delimiter: CsvDelimiter,
): (Read & { cells: readonly string[] }) | undefined {
  const cells: string[] = [];
  let at = start;
  let lines = 0;
  for (;;) {
    const cell = readCell(text, at, delimiter);
    if (cell === undefined) return undefined;
    cells.push(cell.text);
    lines += cell.lines;
    at = cell.next;
    if (text[at] !== delimiter) break;
    at += 1;
  }
  const isPair = text[at] === '\r' && text[at + 1] === '\n';
  return { cells, next: at + (isPair ? 2 : 1), lines: lines + 1 };
}

/** Undefined where a quote is never closed. */
function readCell(text: string, start: number, delimiter: CsvDelimiter): (Read & { text: string }) | undefined {
  if (text[start] !== '"') {
    const next = endOf(text, start, delimiter);
    return { text: text.slice(start, next), next, lines: 0 };
  }
  let close = text.indexOf('"', start + 1);
  while (close >= 0 && text[close + 1] === '"') close = text.indexOf('"', close + 2);
  if (close < 0) return undefined;
  const inside = text.slice(start + 1, close).replaceAll('""', '"');
  // What stands between the closing quote and the delimiter is kept: it is seen where it can't be read.
  const next = endOf(text, close + 1, delimiter);
  return { text: inside + text.slice(close + 1, next), next, lines: inside.match(/\r\n|\r|\n/gu)?.length ?? 0 };
}

function endOf(text: string, start: number, delimiter: CsvDelimiter): number {
  let at = start;
  while (at < text.length && text[at] !== delimiter && text[at] !== '\n' && text[at] !== '\r') at += 1;
  return at;
}
