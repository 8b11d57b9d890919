import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { run } from './process.mjs';
import { root } from './root.mjs';

/**
 * One package of a lock file, as far as it is read here.
 * @typedef {object} LockedPackage
 * @property {string} [version]
 * @property {string} [integrity]
 * @property {boolean} [link]
 * @property {boolean} [optional]
 * @property {readonly string[]} [os]
 * @property {readonly string[]} [cpu]
 * @property {readonly string[]} [libc]
 */

/** @typedef {{ readonly packages?: Readonly<Record<string, LockedPackage>> }} Lock */

/** @typedef {{ readonly os: string, readonly cpu: string, readonly libc: string | undefined }} Machine */

/**
 * The packages that a lock file asks for and that are not installed as it says.
 * @param {Lock} wanted package-lock.json
 * @param {Lock} installed node_modules/.package-lock.json, which npm writes when an install is complete
 * @param {Machine} machine
 * @returns {readonly string[]} their paths
 */
export function missingPackages(wanted, installed, machine) {
  const here = installed.packages ?? {};
  return Object.entries(wanted.packages ?? {})
    .filter(([path, entry]) => {
      if (!path.startsWith('node_modules/') || !isNeeded(entry, machine)) return false;
      const found = here[path];
      return found === undefined || found.version !== entry.version || found.integrity !== entry.integrity;
    })
    .map(([path]) => path);
}

/**
 * An optional package is needed only where it names this very machine: it then carries a prebuilt program.
 * @param {LockedPackage} entry
 * @param {Machine} machine
 * @returns {boolean}
 */
function isNeeded(entry, { os, cpu, libc }) {
  if (entry.optional !== true) return true;
  if (entry.os === undefined && entry.cpu === undefined) return false;
  return allows(entry.os, os) && allows(entry.cpu, cpu) && (libc === undefined || allows(entry.libc, libc));
}

/**
 * @param {readonly string[] | undefined} list
 * @param {string} value
 * @returns {boolean}
 */
function allows(list, value) {
  return list === undefined || list.includes(value);
}

/** @returns {Machine} */
function thisMachine() {
  return { os: process.platform, cpu: process.arch, libc: process.platform === 'linux' ? linuxLibc() : undefined };
}

/** @returns {'glibc' | 'musl'} */
function linuxLibc() {
  const report = /** @type {{ header?: { glibcVersionRuntime?: string } } | undefined} */ (process.report?.getReport());
  return report?.header?.glibcVersionRuntime === undefined ? 'musl' : 'glibc';
}

/** @returns {boolean} */
function isInstalled() {
  const stamp = join(root, 'node_modules/.package-lock.json');
  if (!existsSync(stamp)) return false;
  const missing = missingPackages(readLock(join(root, 'package-lock.json')), readLock(stamp), thisMachine());
  return missing.length === 0;
}

/**
 * @param {string} path
 * @returns {Lock}
 */
function readLock(path) {
  return JSON.parse(readFileSync(path, 'utf8'));
}

/**
 * Installs the dependencies exactly as package-lock.json says, unless they are there already.
 * @returns {Promise<string | undefined>} what went wrong, with what would do
 */
export async function ensureInstalled() {
  if (isInstalled()) return undefined;
  process.stdout.write('Installing the dependencies (npm ci); this takes a minute the first time.\n');
  const args = ['ci', '--include=dev', '--include=optional', '--no-audit', '--no-fund'];
  // npm says which file it runs from; that file runs the same on every system.
  const npm = process.env['npm_execpath'];
  const code = npm === undefined ? await run('npm', args) : await run(process.execPath, [npm, ...args]);
  if (code === 0) return undefined;
  return `The dependencies could not be installed: npm ci ended with ${code}. Its message stands above; with a network connection, or a filled npm cache, run the command again.`;
}
