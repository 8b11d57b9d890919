import { existsSync, readFileSync } from 'node:fs';

const dist = 'apps/web/dist';
const manifestPath = `${dist}/.vite/manifest.json`;

/** @typedef {{ readonly file: string, readonly isEntry?: boolean, readonly imports?: readonly string[] }} Chunk */

/**
 * The scripts a browser must load before the first screen: the entry, and all it imports before it runs.
 * @returns {string[]}
 */
function firstScripts() {
  if (!existsSync(manifestPath)) throw new Error(`${manifestPath} is missing: run npm run build.`);
  /** @type {Readonly<Record<string, Chunk>>} */
  const manifest = JSON.parse(readFileSync(manifestPath, 'utf8'));
  const found = new Set(Object.keys(manifest).filter((key) => manifest[key]?.isEntry === true));
  for (const key of found) for (const next of manifest[key]?.imports ?? []) found.add(next);
  return [...found].flatMap((key) => manifest[key]?.file ?? []).map((file) => `${dist}/${file}`);
}

export default [{ name: 'script before the first screen', path: firstScripts(), gzip: true, limit: '150 kB' }];
