import { spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync, readFileSync, statSync } from 'node:fs';
import { delimiter, isAbsolute, join } from 'node:path';

/** Names under which Chromium and Chrome are installed, in the order in which they are tried. */
const chromiumNames = [
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

/** An apt-get that waits for a mirror or a lock longer than this is given up. */
const apt_timeout_ms = 10 * 60_000;

/**
 * The Chromium or Chrome that drives the browser journeys: the one LOAMWRIGHT_CHROMIUM names, else one installed.
 * @param {NodeJS.ProcessEnv} [env]
 * @returns {string | undefined} its full path
 */
export function findChromium(env = process.env) {
  const named = env['LOAMWRIGHT_CHROMIUM'];
  return findProgram(named === undefined || named === '' ? chromiumNames : [named], env);
}

/**
 * @param {readonly string[]} names names to look up in PATH, or full paths
 * @param {NodeJS.ProcessEnv} [env]
 * @returns {string | undefined} the full path of the first that is there and may be run
 */
export function findProgram(names, env = process.env) {
  const folders = (env['PATH'] ?? '').split(delimiter).filter((folder) => folder !== '');
  return names
    .flatMap((name) => (isAbsolute(name) ? [name] : folders.map((folder) => join(folder, name))))
    .find(isRunnable);
}

/**
 * @param {string} path
 * @returns {boolean}
 */
function isRunnable(path) {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
}

/**
 * Finds the browser, or installs Debian's where it may.
 * @returns {string | undefined} why there is none, with what would do
 */
export function provideChromium() {
  if (findChromium() !== undefined) return undefined;
  const named = process.env['LOAMWRIGHT_CHROMIUM'];
  if (named !== undefined && named !== '') {
    return `LOAMWRIGHT_CHROMIUM names ${named}, which is not a program here; name another, or unset it`;
  }
  const reason = installDebianPackage('chromium');
  if (findChromium() !== undefined) return undefined;
  return `there is no Chromium or Chrome here, and ${reason ?? 'the one installed was not found'}; install one, or name it in LOAMWRIGHT_CHROMIUM`;
}

/**
 * Finds GLPK's solver, which the mix solver is compared with, or installs Debian's where it may.
 * @returns {string | undefined} why there is none, with what would do
 */
export function provideGlpsol() {
  if (findProgram(['glpsol']) !== undefined) return undefined;
  const reason = installDebianPackage('glpk-utils');
  if (findProgram(['glpsol']) !== undefined) return undefined;
  return `there is no glpsol here, and ${reason ?? 'the one installed was not found'}; install GLPK`;
}

/**
 * Installs a Debian package, where this is Debian and we may.
 * @param {string} name
 * @returns {string | undefined} why it is not installed
 */
function installDebianPackage(name) {
  if (!isDebian()) return 'this is not Debian';
  if (process.getuid?.() !== 0) return 'only root may install packages';
  if (findProgram(['apt-get']) === undefined) return 'there is no apt-get';
  process.stdout.write(`Installing Debian's ${name} with apt-get.\n`);
  return aptGet('update') ?? aptGet('install', '-y', '--no-install-recommends', name);
}

/**
 * @param {...string} args
 * @returns {string | undefined} why it failed
 */
function aptGet(...args) {
  const { status, stderr, error } = spawnSync('apt-get', ['-q', ...args], {
    env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    stdio: ['ignore', 'ignore', 'pipe'],
    encoding: 'utf8',
    timeout: apt_timeout_ms,
  });
  if (status === 0) return undefined;
  const said = (error?.message ?? stderr).trim().split('\n').at(-1);
  return `apt-get ${args[0]} failed: ${said}`;
}

/** @returns {boolean} */
function isDebian() {
  return existsSync('/etc/os-release') && /^ID=debian$/m.test(readFileSync('/etc/os-release', 'utf8'));
}
