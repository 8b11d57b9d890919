import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const referenceFolder = new URL('../../../../../reference/', import.meta.url);

/** A row of `reference/feedstock-rows.csv`; an empty cell is absent. */
export type FeedstockRow = Readonly<Record<string, string>>;

/** The published rows on which the materials rest, by row id. */
export function feedstockRows(): ReadonlyMap<string, FeedstockRow> {
  const text = readFileSync(fileURLToPath(new URL('feedstock-rows.csv', referenceFolder)), 'utf8');
  const [head = [], ...body] = parseCsv(text);
  return new Map(
    body.map((cells) => {
      const row = Object.fromEntries(head.map((name, i) => [name, cells[i] ?? ''] as const).filter(([, cell]) => cell));
      return [row['row_id'] ?? '', row];
    }),
  );
}

/** A cell as a number; `undefined` where it is empty. */
export function numberIn(row: FeedstockRow, column: string): number | undefined {
  const cell = row[column];
  return cell === undefined ? undefined : Number(cell);
}

/** RFC 4180: cells between commas, quoted where they hold a comma or a quote. */
function parseCsv(text: string): readonly (readonly string[])[] {
  return text
    .trimEnd()
    .split('\n')
    .map((line) =>
      [...line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)].map(([, quoted, plain]) =>
        quoted === undefined ? (plain ?? '') : quoted.replaceAll('""', '"'),
      ),
    );
}
