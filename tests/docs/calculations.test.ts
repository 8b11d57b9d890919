import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { highsSolver } from '@loamwright/science';
import loadHighs from 'highs';
import { expect, it } from 'vitest';
import { calculationPages } from '../../scripts/calculations/pages.ts';
import { differences } from '../../scripts/lib/pages.mjs';
import { root } from '../../scripts/lib/root.mjs';

const folder = join(root, 'docs/calculations');

it('docs/calculations has the page of every calculation as the catalogue has it (else: npm run docs)', async () => {
  const wanted = calculationPages(highsSolver(await loadHighs()));
  const names = existsSync(folder) ? readdirSync(folder) : [];
  const found = new Map(names.map((name) => [name, readFileSync(join(folder, name), 'utf8')]));
  expect(differences(wanted, found)).toEqual([]);
});
