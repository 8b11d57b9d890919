import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { bundle } from './bundle.mjs';
import { root } from './root.mjs';

/**
 * What a TypeScript module exports. Bundled first, under node_modules, so that the packages a bundle leaves out are found.
 * @param {string} entry
 * @returns {Promise<any>} ends the process where it does not bundle; the messages have been printed
 */
export async function load(entry) {
  const cache = join(root, 'node_modules/.cache/loamwright');
  mkdirSync(cache, { recursive: true });
  const scratch = mkdtempSync(join(cache, 'load-'));
  try {
    const file = join(scratch, 'module.mjs');
    if (!(await bundle(entry, file))) process.exit(1);
    return await import(pathToFileURL(file).href);
  } finally {
    rmSync(scratch, { recursive: true, force: true });
  }
}
