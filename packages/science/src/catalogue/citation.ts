import sourceTable from '@loamwright/reference/sources.json' with { type: 'json' };

/** Whether a figure was read in a copy of its source, recalled, or worked out from cited figures. */
export type Mark = 'seen' | 'memory' | 'derived';

/** Where a method or figure comes from: an id of `reference/sources.json` and the place in it. */
export interface Citation {
  readonly source: string;
  readonly place: string;
  readonly mark: Mark;
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
