// Writes the reference pages of the calculations (docs/calculations) out of the catalogue, and takes away those that
// no calculation stands behind. That they are so is a test: tests/docs/calculations.test.ts.
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { bundle } from './lib/bundle.mjs';
import { differences } from './lib/pages.mjs';
import { prepare } from './lib/prepare.mjs';
import { root } from './lib/root.mjs';

const folder = join(root, 'docs/calculations');

await prepare();
const wanted = await made();
const found = differences(wanted, read());
mkdirSync(folder, { recursive: true });
for (const { name } of found) {
  const page = wanted.get(name);
  if (page === undefined) rmSync(join(folder, name), { recursive: true });
  else writeFileSync(join(folder, name), page);
}
process.stdout.write(`${wanted.size} pages in docs/calculations, ${found.length} of them changed.\n`);

/**
 * The catalogue is TypeScript, so it is bundled before it is asked.
 * @returns {Promise<ReadonlyMap<string, string>>}
 */
async function made() {
  const cache = join(root, 'node_modules/.cache/loamwright');
  mkdirSync(cache, { recursive: true });
  const scratch = mkdtempSync(join(cache, 'pages-'));
  try {
    const file = join(scratch, 'pages.mjs');
    if (!(await bundle(join(root, 'scripts/calculations/main.ts'), file))) process.exit(1);
    const { pages } = await import(pathToFileURL(file).href);
    return pages;
  } finally {
    rmSync(scratch, { recursive: true, force: true });
  }
}

/** @returns {ReadonlyMap<string, string>} the pages that are there */
function read() {
  if (!existsSync(folder)) return new Map();
  return new Map(readdirSync(folder).map((name) => [name, readFileSync(join(folder, name), 'utf8')]));
}
