// Runs the examples in README.md and docs/: each document's `$ loamwright …` commands in order, on a data folder
// of its own, and compares what they print with what is shown below them.
import { spawnSync } from 'node:child_process';
import {
  chmodSync,
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { cliPath, ensureBuilt } from './lib/build.mjs';
import { examplesIn, matches } from './lib/docs-examples.mjs';
import { prepare } from './lib/prepare.mjs';
import { root } from './lib/root.mjs';

/** An example that takes longer hangs. */
const example_timeout_ms = 60_000;

await prepare(ensureBuilt);

const documents = ['README.md', ...markdownIn('docs')].filter((path) => existsSync(join(root, path)));
const results = documents.flatMap(check);
const failed = results.filter((isFine) => !isFine).length;
process.stdout.write(`${results.length - failed} of ${results.length} examples print what their documents show.\n`);
if (results.length === 0)
  process.stderr.write('There is no example to run: mark a fenced block in README.md `console`.\n');
if (failed > 0 || results.length === 0) process.exitCode = 1;

/**
 * @param {string} folder
 * @returns {string[]}
 */
function markdownIn(folder) {
  if (!existsSync(join(root, folder))) return [];
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.md'))
    .map((name) => join(folder, name))
    .sort();
}

/**
 * @param {string} document
 * @returns {boolean[]} for each example whether it printed what is shown
 */
function check(document) {
  const examples = examplesIn(readFileSync(join(root, document), 'utf8'));
  if (examples.length === 0) return [];
  const folder = mkdtempSync(join(tmpdir(), 'loamwright-docs-'));
  const env = environment(folder);
  const isFine = examples.map((example) => runExample(document, example, env, join(folder, 'work')));
  rmSync(folder, { recursive: true, force: true });
  return isFine;
}

/**
 * @param {string} folder
 * @returns {NodeJS.ProcessEnv} one in which the examples print the same on every machine
 */
function environment(folder) {
  const bin = join(folder, 'bin');
  mkdirSync(bin);
  writeFileSync(join(bin, 'loamwright'), `#!/bin/sh\nexec '${process.execPath}' '${cliPath}' "$@"\n`);
  chmodSync(join(bin, 'loamwright'), 0o755);
  mkdirSync(join(folder, 'work'));
  // A document names its example files as they lie in the project.
  if (existsSync(join(root, 'docs/examples')))
    cpSync(join(root, 'docs/examples'), join(folder, 'work/docs/examples'), { recursive: true });
  return {
    PATH: `${bin}${delimiter}${process.env['PATH'] ?? ''}`,
    HOME: folder,
    LOAMWRIGHT_DATA: join(folder, 'data'),
    TZ: 'UTC',
    LANG: 'C.UTF-8',
    COLUMNS: '80',
    NO_COLOR: '1',
  };
}

/**
 * @param {string} document
 * @param {import('./lib/docs-examples.mjs').Example} example
 * @param {NodeJS.ProcessEnv} env
 * @param {string} cwd
 * @returns {boolean}
 */
function runExample(document, { command, expected, exitCode, line }, env, cwd) {
  const result = spawnSync('sh', ['-c', `exec 2>&1\n${command}`], {
    cwd,
    env,
    encoding: 'utf8',
    timeout: example_timeout_ms,
  });
  const printed = result.stdout.split('\n');
  if (result.status === exitCode && matches(expected, printed)) return true;
  const ended = result.status === exitCode ? '' : `It ended with ${result.status ?? result.signal}, not ${exitCode}. `;
  process.stderr.write(`${document}:${line}: ${command}\n${ended}It printed:\n${result.stdout}\n`);
  return false;
}
