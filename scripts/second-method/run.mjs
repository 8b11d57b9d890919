// Integrates the heap model by SciPy as well: `node scripts/second-method/run.mjs` writes the golden figures anew.
// Needs python3 with NumPy and SciPy (Debian: python3-scipy); LOAMWRIGHT_PYTHON names another interpreter.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { bundle } from '../lib/bundle.mjs';

const here = dirname(fileURLToPath(import.meta.url));
const root = join(here, '..', '..');
const golden = join(root, 'packages/science/src/heap-twin/testing/second-method.json');

const program = join(mkdtempSync(join(tmpdir(), 'loamwright-heap-')), 'problems.mjs');
if (!(await bundle(join(here, 'problems.ts'), program))) process.exit(1);
writeFileSync(join(here, 'heap.problems.json'), execFileSync(process.execPath, [program], { maxBuffer: 2 ** 28 }));

const python = process.env['LOAMWRIGHT_PYTHON'] ?? 'python3';
/** @typedef {Record<string, number[]>} Shown */
/** @type {{ name: string, runs: { method: string, rtol: number, shown: Shown[] }[] }[]} */
const found = JSON.parse(
  execFileSync(python, [join(here, 'heap.py'), 'golden'], {
    maxBuffer: 2 ** 28,
    stdio: ['ignore', 'pipe', 'inherit'],
  }).toString(),
);
/** @param {number} value */
const rounded = (value) => Number(value.toPrecision(9));
const kept = found.map(({ name, runs }) => ({
  name,
  runs: runs.map(({ method, rtol, shown }) => ({
    method,
    rtol,
    shown: shown.map((moment) =>
      Object.fromEntries(Object.entries(moment).map(([key, values]) => [key, values.map(rounded)])),
    ),
  })),
}));
writeFileSync(golden, `${JSON.stringify(kept, null, 1)}\n`);
