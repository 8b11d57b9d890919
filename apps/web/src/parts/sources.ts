import sources from '@loamwright/reference/sources.json' with { type: 'json' };

/** A published source as it is listed. */
export interface Source {
  readonly id: string;
  readonly author: string | null;
  readonly year: number | null;
  readonly title: string;
}

interface Row {
  readonly author?: string | null | undefined;
  readonly year?: number | null | undefined;
  readonly title: string;
}

/** Every source, in the order of the table. */
export const allSources: readonly Source[] = Object.entries<Row>(sources).map(([id, row]) => ({
  id,
  author: row.author ?? null,
  year: row.year ?? null,
  title: row.title,
}));

/** A source as it is named beside a figure: who and when. */
export function sourceName(id: string): string {
  const source = allSources.find((one) => one.id === id);
  if (source === undefined) return id;
  return [source.author ?? source.title, source.year].filter((piece) => piece !== null).join(' ');
}
