import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { bundle } from './bundle.mjs';
import { fingerprint } from './fingerprint.mjs';
import { run } from './process.mjs';
import { root } from './root.mjs';

/**
 * @typedef {object} Target
 * @property {string} name
 * @property {string} entry what it is built from
 * @property {string} output the file that shows that it was built
 * @property {() => Promise<boolean>} make
 */

/** What goes into every target, beside its own folder. */
const shared = ['packages', 'reference', 'package-lock.json', 'scripts/lib/build.mjs', 'scripts/lib/bundle.mjs'];

/** @type {readonly Target[]} */
const targets = [
  {
    name: 'web',
    entry: 'apps/web/index.html',
    output: 'apps/web/dist/index.html',
    make: async () => {
      const vite = join(root, 'node_modules/vite/bin/vite.js');
      const args = [vite, 'build', '--logLevel', 'warn'];
      return (await run(process.execPath, args, { cwd: join(root, 'apps/web') })) === 0;
    },
  },
  program('server', { 'src/main.ts': 'dist/server.mjs', 'src/reckon/worker.ts': 'dist/reckon.mjs' }),
  program('cli', { 'src/main.ts': 'dist/loamwright.mjs' }),
];

/**
 * @param {string} name
 * @param {Readonly<Record<string, string>>} files what is built from what, the program itself first
 * @returns {Target}
 */
function program(name, files) {
  const folder = join('apps', name);
  const pairs = Object.entries(files);
  const [[entry, output] = ['', '']] = pairs;
  return {
    name,
    entry: join(folder, entry),
    output: join(folder, output),
    make: async () => {
      rmSync(join(root, folder, 'dist'), { recursive: true, force: true });
      for (const [from, to] of pairs) {
        if (!(await bundle(join(root, folder, from), join(root, folder, to)))) return false;
      }
      return true;
    },
  };
}

/** The built command line. */
export const cliPath = join(root, 'apps/cli/dist/loamwright.mjs');

/**
 * Builds the app, the server and the command line, each only when it is missing or its sources have changed.
 * @returns {Promise<string | undefined>} what went wrong, with what would do
 */
export async function ensureBuilt() {
  for (const target of targets) {
    const problem = await ensureTarget(target);
    if (problem !== undefined) return problem;
  }
  return undefined;
}

/**
 * @param {Target} target
 * @returns {Promise<string | undefined>}
 */
async function ensureTarget({ name, entry, output, make }) {
  if (!existsSync(join(root, entry))) return `Nothing to build ${name} from: ${entry} is missing.`;
  const stamp = join(root, `node_modules/.cache/loamwright/${name}.built`);
  const now = fingerprint(root, [`apps/${name}`, ...shared]);
  if (existsSync(join(root, output)) && existsSync(stamp) && readFileSync(stamp, 'utf8') === now) return undefined;
  rmSync(stamp, { force: true });
  process.stdout.write(`Building ${name}.\n`);
  if (!(await make())) return `${name} could not be built; the message above says why.`;
  if (!existsSync(join(root, output))) return `Building ${name} ended well but left no ${output}.`;
  mkdirSync(join(root, 'node_modules/.cache/loamwright'), { recursive: true });
  writeFileSync(stamp, now);
  return undefined;
}
