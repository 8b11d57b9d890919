import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';

/** Folders that hold what is made or fetched, never what is written. */
const made = new Set(['node_modules', 'dist', 'coverage']);

/**
 * The files under a file or folder that go into a build: tests and their helpers do not.
 * @param {string} base
 * @param {string} path relative to base
 * @returns {string[]} paths relative to base, with `/` between their parts, in a fixed order
 */
export function sourceFiles(base, path) {
  const full = join(base, path);
  if (!existsSync(full)) return [];
  if (statSync(full).isFile()) return [path];
  return readdirSync(full, { withFileTypes: true })
    .filter((item) => (item.isDirectory() ? !made.has(item.name) && item.name !== 'testing' : !isTest(item.name)))
    .flatMap((item) => sourceFiles(base, `${path}/${item.name}`))
    .sort();
}

/**
 * @param {string} name
 * @returns {boolean}
 */
function isTest(name) {
  return /\.test\.tsx?$/.test(name);
}

/**
 * One hash over the names and contents of all sources: equal exactly when nothing that goes in has changed.
 * @param {string} base
 * @param {readonly string[]} paths files and folders, relative to base
 * @returns {string}
 */
export function fingerprint(base, paths) {
  const hash = createHash('sha256');
  for (const file of paths.flatMap((path) => sourceFiles(base, path))) {
    const content = readFileSync(join(base, file));
    hash.update(`${file}\0${content.length}\0`).update(content);
  }
  return hash.digest('hex');
}
