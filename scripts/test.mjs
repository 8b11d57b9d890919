// Runs every test: those beside the sources, then with the built programs the examples in the documents and the
// journeys in a browser.
// `npm test -- packages/units` runs the files whose path contains that text.
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ensureBuilt } from './lib/build.mjs';
import { ensureInstalled } from './lib/install.mjs';
import { demandNode } from './lib/node-version.mjs';
import { run } from './lib/process.mjs';
import { root } from './lib/root.mjs';
import { isGood, lastLine, sumTallies, tallyOf } from './lib/tally.mjs';
import { provideChromium, provideGlpsol } from './lib/tools.mjs';

/** A run that takes longer hangs: the unit tests took 12.5 minutes on two busy cores, and 15 on busier ones. */
const run_timeout_ms = 20 * 60_000;

const filters = process.argv.slice(2);
const isCi = process.env['CI'] === 'true';

/** @type {{ passed: number, failed: number, skipped: number }[]} */
const tallies = [];
/** @type {string[]} */
const notes = [];

/**
 * A step without which tests cannot run, counted as a test of its own only when it fails.
 * @param {string | undefined} problem
 * @returns {boolean} whether it went well
 */
function wentWell(problem) {
  if (problem === undefined) return true;
  notes.push(problem);
  tallies.push({ passed: 0, failed: 1, skipped: 0 });
  return false;
}

/**
 * @param {string} tests
 * @param {string | undefined} problem why what they need is not there
 */
function noteMissing(tests, problem) {
  if (problem !== undefined) notes.push(`${tests} did not run: ${problem}.`);
}

/**
 * @param {string} project
 * @returns {Promise<void>}
 */
async function runTests(project) {
  const folder = mkdtempSync(join(tmpdir(), 'loamwright-test-'));
  const outputFile = join(folder, 'report.json');
  const vitest = join(root, 'node_modules/vitest/vitest.mjs');
  const args = [
    'run',
    '--project',
    project,
    '--reporter',
    'default',
    '--reporter',
    'json',
    `--outputFile.json=${outputFile}`,
  ];
  if (filters.length > 0) args.push('--passWithNoTests', ...filters);
  const began = Date.now();
  const code = await run(process.execPath, [vitest, ...args], { timeout_ms: run_timeout_ms });
  if (Date.now() - began >= run_timeout_ms) {
    notes.push(`The ${project} tests were ended after ${run_timeout_ms / 60_000} minutes: something in them hangs.`);
  }
  tallies.push(tallyOf(readReport(outputFile), code));
  rmSync(folder, { recursive: true, force: true });
}

/**
 * @param {string} path
 * @returns {import('./lib/tally.mjs').Report | undefined}
 */
function readReport(path) {
  try {
    return JSON.parse(readFileSync(path, 'utf8'));
  } catch {
    return undefined;
  }
}

demandNode();
if (wentWell(await ensureInstalled())) {
  noteMissing('The journeys in a browser', provideChromium());
  noteMissing('The comparison of the mix solver with GLPK', provideGlpsol());
  const isBuilt = wentWell(await ensureBuilt());
  await runTests('unit');
  if (isBuilt) {
    await runTests('docs');
    await runTests('browser');
  } else noteMissing('The examples in the documents and the journeys in a browser', 'the build failed');
}

const tally = sumTallies(tallies);
if (isCi && tally.skipped > 0) notes.push(`CI asks for every test; ${tally.skipped} did not run.`);
process.exitCode = isGood(tally, isCi) ? 0 : 1;
process.stdout.write(`${['', ...notes, lastLine(tally)].join('\n')}\n`);
