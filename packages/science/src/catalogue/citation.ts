import sourceTable from '@loamwright/reference/sources.json' with { type: 'json' };

/** Whether a figure was read in a copy of its source, recalled, or worked out from cited figures. */
export type Mark = 'seen' | 'memory' | 'derived';

/** Where a method or figure comes from: an id of `reference/sources.json` and the place in it. */
export interface Citation {
  readonly source: string;
  readonly place: string;
  readonly mark: Mark;
}

/** A row of a table in `reference/` that says where it comes from; of an imported table the mark is known as text only. */
export type Cites = Readonly<Record<keyof Citation, string>>;

/** The citation of a row, without its figures. */
export function cited({ source, place, mark }: Cites): Citation {
  return { source, place, mark: mark as Mark };
}

/** What rows rest on: each citation once, all of one source together, in the order in which they are first met. */
export function citations(rows: readonly Cites[]): readonly Citation[] {
  const once = [...new Map(rows.map((row) => [`${row.source}\n${row.place}\n${row.mark}`, cited(row)])).values()];
  const sources = new Set(once.map(({ source }) => source));
  return [...sources].flatMap((id) => once.filter(({ source }) => source === id));
}

/** The first row of each source and mark, for tables that cite a source again at every row. */
export function oneOfEach<Row extends Cites>(rows: readonly Row[]): readonly Row[] {
  const same = (one: Row, other: Row): boolean => one.source === other.source && one.mark === other.mark;
  return rows.filter((row, i) => rows.findIndex((other) => same(row, other)) === i);
}

/** A source as `reference/sources.json` has it. */
export interface Source {
  readonly author: string | null;
  readonly year: number | null;
  readonly title: string;
  readonly address?: string | undefined;
}

const sources: Readonly<Record<string, Source>> = sourceTable;

/** The source of a citation; one that the table lacks goes by its id. */
export function sourceOf({ source }: Citation): Source {
  return sources[source] ?? { author: null, year: null, title: source };
}

/** Author, year and title in one line. */
export function sourceLine({ author, year, title }: Source): string {
  return [author, year, title].filter((part) => part !== null && part !== '').join(', ');
}
