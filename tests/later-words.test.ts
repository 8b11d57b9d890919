import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { laterEn } from '../packages/words/src/en/later.ts';

const app = join(import.meta.dirname, '../apps/web/src');
const bringsWords = "import '@loamwright/words/later'";

it('a page that says words fetched later brings them', () => {
  const files = readdirSync(app, { recursive: true, encoding: 'utf8' }).filter((name) => /\.tsx?$/u.test(name));
  expect(files.length).toBeGreaterThan(0);
  const starts = new Set(Object.keys(laterEn).map((key) => key.slice(0, key.indexOf('.') + 1)));
  const quoted = [...starts].flatMap((start) => ["'", '`', '"'].map((quote) => quote + start));
  const silent = files.filter((name) => {
    const text = readFileSync(join(app, name), 'utf8');
    return quoted.some((words) => text.includes(words)) && !text.includes(bringsWords);
  });
  expect(silent).toEqual([]);
});
