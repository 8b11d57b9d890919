import { ensureInstalled } from './install.mjs';
import { demandNode } from './node-version.mjs';

/**
 * A step that must be done before the next one makes sense.
 * @typedef {() => Promise<string | undefined>} Step what went wrong, or nothing
 */

/**
 * Checks Node, installs the dependencies where they are missing, then takes the steps in turn. The first that
 * fails is told, and ends the program with exit code 1.
 * @param {...Step} steps
 * @returns {Promise<void>}
 */
export async function prepare(...steps) {
  demandNode();
  for (const step of [ensureInstalled, ...steps]) {
    const problem = await step();
    if (problem === undefined) continue;
    process.stderr.write(`${problem}\n`);
    process.exit(1);
  }
}
