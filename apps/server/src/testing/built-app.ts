import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { readFiles, type ServedFiles } from '../http/files.ts';

/** The first page of the built app that stands in. */
export const page = '<!doctype html><title>Loamwright</title>';

/** Writes a built app into a folder, and beside it a file that nobody may have. Returns where the app lies. */
export function builtApp(folder: string): string {
  const web = join(folder, 'web');
  mkdirSync(join(web, 'assets'), { recursive: true });
  mkdirSync(join(web, '.vite'));
  writeFileSync(join(web, 'index.html'), page);
  writeFileSync(join(web, 'sw.js'), 'self.x = 1');
  writeFileSync(join(web, 'manifest.webmanifest'), '{}');
  writeFileSync(join(web, 'assets', 'index-abc123.js'), 'export {}');
  writeFileSync(join(web, 'assets', 'face-abc123.woff2'), 'font');
  writeFileSync(join(web, '.vite', 'manifest.json'), '{"secret":1}');
  writeFileSync(join(folder, 'outside.html'), 'outside');
  return web;
}

/** That app as the server holds it. */
export function builtFiles(): ServedFiles {
  const folder = mkdtempSync(join(tmpdir(), 'loamwright-app-'));
  try {
    return readFiles(builtApp(folder));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
