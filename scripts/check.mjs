// Everything that is checked beside the tests. `npm run check -- types style` takes only those named; with
// `--after-tests` what `npm test` has run already is left out.
import { join } from 'node:path';
import { prepare } from './lib/prepare.mjs';
import { run } from './lib/process.mjs';
import { root } from './lib/root.mjs';

/**
 * @typedef {object} Check
 * @property {string} name
 * @property {readonly (readonly string[])[]} commands each a file that Node runs, with its arguments
 * @property {boolean} [isTested] whether `npm test` runs it too
 */

const tsc = 'node_modules/typescript/bin/tsc';
const knip = 'node_modules/knip/bin/knip.js';

/** @type {readonly Check[]} */
const checks = [
  {
    name: 'types',
    commands: [
      [tsc, '-p', 'tsconfig.core.json'],
      [tsc, '-p', 'tsconfig.json'],
      [tsc, '-p', 'tsconfig.web.json'],
    ],
  },
  { name: 'style', commands: [['node_modules/@biomejs/biome/bin/biome', 'check', '--error-on-warnings']] },
  {
    name: 'boundaries',
    commands: [['node_modules/dependency-cruiser/bin/dependency-cruise.mjs', 'reference', 'packages', 'apps']],
  },
  { name: 'unused', commands: [[knip]] },
  { name: 'size', commands: [['scripts/build.mjs'], ['node_modules/size-limit/bin.js']] },
  {
    name: 'docs',
    commands: [['scripts/build.mjs'], ['node_modules/vitest/vitest.mjs', 'run', '--project', 'docs']],
    isTested: true,
  },
];

const args = process.argv.slice(2);
const isAfterTests = args.includes('--after-tests');
const wanted = args.filter((arg) => arg !== '--after-tests');
const unknown = wanted.filter((name) => !checks.some((check) => check.name === name));
if (unknown.length > 0) {
  const names = checks.map(({ name }) => name).join(', ');
  process.stderr.write(`There is no check named ${unknown.join(', ')}; there are: ${names}.\n`);
  process.exit(2);
}
const chosen = checks.filter(
  ({ name, isTested }) => (wanted.length === 0 || wanted.includes(name)) && !(isAfterTests && isTested === true),
);
await prepare();

/** @type {string[]} */
const failed = [];
for (const { name, commands } of chosen) {
  process.stdout.write(`\nCheck: ${name}\n`);
  for (const [file = '', ...args] of commands) {
    const code = await run(process.execPath, [join(root, file), ...args]);
    if (code !== 0 && !failed.includes(name)) failed.push(name);
  }
}
process.stdout.write(
  failed.length === 0 ? '\nAll checks hold.\n' : `\nThese checks do not hold: ${failed.join(', ')}.\n`,
);
if (failed.length > 0) process.exitCode = 1;
