// Runs the heap model on every heap and trial of reference/measured-heaps.json and writes what it found:
// `node scripts/measured-heaps.mjs`. The test beside the model holds the found figures, and the tables in
// docs/models/heap-twin-measured.md are made of them.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { load } from './lib/load.mjs';
import { root } from './lib/root.mjs';

const model = join(root, 'packages/science/src/heap-twin/testing');
const page = join(root, 'docs/models/heap-twin-measured.md');

const { findAll, loseAll, withTables } = await load(join(model, 'measured.ts'));
const found = findAll();
const lost = loseAll();
writeFileSync(join(model, 'measured-found.json'), `${JSON.stringify({ found, lost }, null, 2)}\n`);
writeFileSync(page, withTables(readFileSync(page, 'utf8'), found, lost));
process.stdout.write(
  `${found.length} heaps and ${lost.length} trials run; measured-found.json and heap-twin-measured.md are written.\n`,
);
