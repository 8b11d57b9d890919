import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { deskEn } from '../packages/words/src/en/desk.ts';

const app = join(import.meta.dirname, '../apps/web/src');

it('the app says nothing that it is built without', () => {
  const files = readdirSync(app, { recursive: true, encoding: 'utf8' }).filter((name) => /\.tsx?$/u.test(name));
  expect(files.length).toBeGreaterThan(0);
  // Of a key made at run time (`cli.option.${name}`) the part that stands still is enough to tell it.
  const starts = new Set(Object.keys(deskEn).map((key) => key.slice(0, key.indexOf('.') + 1)));
  const quoted = [...starts].flatMap((start) => ["'", '`', '"'].map((quote) => quote + start));
  const found = files.flatMap((name) => {
    const text = readFileSync(join(app, name), 'utf8');
    return quoted.filter((words) => text.includes(words)).map((words) => `${name}: ${words}`);
  });
  expect(found).toEqual([]);
});
