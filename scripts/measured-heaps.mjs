// Runs the heap model on every heap and trial of reference/measured-heaps.json and writes what it found:
// `node scripts/measured-heaps.mjs`. The test beside the model holds the found figures, and the tables in
// docs/models/heap-twin-measured.md are made of them.
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { bundle } from './lib/bundle.mjs';
import { root } from './lib/root.mjs';

const model = join(root, 'packages/science/src/heap-twin/testing');
const page = join(root, 'docs/models/heap-twin-measured.md');

const { findAll, loseAll, withTables } = await loaded();
const found = findAll();
const lost = loseAll();
writeFileSync(join(model, 'measured-found.json'), `${JSON.stringify({ found, lost }, null, 2)}\n`);
writeFileSync(page, withTables(readFileSync(page, 'utf8'), found, lost));
process.stdout.write(
  `${found.length} heaps and ${lost.length} trials run; measured-found.json and heap-twin-measured.md are written.\n`,
);

/** The runner is TypeScript, so it is bundled before it is asked. */
async function loaded() {
  const cache = join(root, 'node_modules/.cache/loamwright');
  mkdirSync(cache, { recursive: true });
  const scratch = mkdtempSync(join(cache, 'measured-'));
  try {
    const file = join(scratch, 'measured.mjs');
    if (!(await bundle(join(model, 'measured.ts'), file))) process.exit(1);
    return await import(pathToFileURL(file).href);
  } finally {
    rmSync(scratch, { recursive: true, force: true });
  }
}
