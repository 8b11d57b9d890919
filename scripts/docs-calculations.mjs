// Writes the reference pages of the calculations (docs/calculations) out of the catalogue, and takes away those that
// no calculation stands behind. That they are so is a test: tests/docs/calculations.test.ts.
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { load } from './lib/load.mjs';
import { differences } from './lib/pages.mjs';
import { prepare } from './lib/prepare.mjs';
import { root } from './lib/root.mjs';

const folder = join(root, 'docs/calculations');

await prepare();
/** @type {{ pages: ReadonlyMap<string, string> }} */
const { pages: wanted } = await load(join(root, 'scripts/calculations/main.ts'));
const found = differences(wanted, read());
mkdirSync(folder, { recursive: true });
for (const { name } of found) {
  const page = wanted.get(name);
  if (page === undefined) rmSync(join(folder, name), { recursive: true });
  else writeFileSync(join(folder, name), page);
}
process.stdout.write(`${wanted.size} pages in docs/calculations, ${found.length} of them changed.\n`);

/** @returns {ReadonlyMap<string, string>} the pages that are there */
function read() {
  if (!existsSync(folder)) return new Map();
  return new Map(readdirSync(folder).map((name) => [name, readFileSync(join(folder, name), 'utf8')]));
}
