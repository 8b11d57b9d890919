import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const folder = fileURLToPath(new URL('../../../../reference/', import.meta.url));
const read = (name: string): unknown => JSON.parse(readFileSync(folder + name, 'utf8'));
const sources = read('sources.json') as Readonly<Record<string, Readonly<Record<string, unknown>>>>;
const tables = readdirSync(folder).filter((name) => name.endsWith('.json') && !/^(sources|package)\.json$/.test(name));
const citing = new Set(['source', 'rangeSource', 'permitSource']);

/** Every source id cited anywhere in a table. */
function citedIn(data: unknown): readonly string[] {
  if (Array.isArray(data)) return data.flatMap(citedIn);
  if (typeof data !== 'object' || data === null) return [];
  return Object.entries(data).flatMap(([key, value]) =>
    citing.has(key) && typeof value === 'string' ? [value] : citedIn(value),
  );
}

describe('the table of sources', () => {
  it.each(tables)('knows every source cited in %s', (name) => {
    expect(citedIn(read(name)).filter((id) => !Object.hasOwn(sources, id))).toEqual([]);
  });

  it('gives each an author, a year and a title, or says there is none', () => {
    for (const [id, source] of Object.entries(sources)) {
      expect(source['title'], id).toMatch(/\w/);
      expect(source['author'] === null ? ['common-practice', 'definition'] : [id], id).toContain(id);
      expect(source['year'] === null || Number(source['year']) > 1800, id).toBe(true);
      if (source['address'] !== undefined) expect(source['address'], id).toMatch(/^https?:\/\//);
    }
  });
});
