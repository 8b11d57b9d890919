import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { brotliDecompressSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { builtApp, page } from '../testing/built-app.ts';
import { askingOf } from '../testing/daybook.ts';
import { readFiles, type ServedFiles } from './files.ts';

let folder = '';
let files: ServedFiles = new Map();
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'loamwright-app-'));
  files = readFiles(builtApp(folder));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('the app’s files', () => {
  it.each(['/', '/index.html', '/sw.js', '/manifest.webmanifest'])(
    '%s is asked for anew each time, cheaply',
    async (path) => {
      const first = await askingOf({ files })(path);
      expect(first.status).toBe(200);
      expect(first.headers.get('cache-control')).toBe('no-cache');
      const etag = first.headers.get('etag') ?? '';
      const second = await askingOf({ files })(path, { headers: { 'if-none-match': etag } });
      expect(second.status).toBe(304);
      expect(await second.text()).toBe('');
    },
  );

  it('with a hash in their names are kept for ever', async () => {
    const response = await askingOf({ files })('/assets/index-abc123.js');
    expect(response.headers.get('cache-control')).toBe('public, max-age=31536000, immutable');
    expect(response.headers.get('content-type')).toBe('text/javascript; charset=utf-8');
  });

  it('go compressed to those who can read it, unless they are so already', async () => {
    const response = await askingOf({ files })('/', { headers: { 'accept-encoding': 'gzip, br' } });
    expect(response.headers.get('content-encoding')).toBe('br');
    expect(brotliDecompressSync(Buffer.from(await response.arrayBuffer())).toString()).toBe(page);
    const font = await askingOf({ files })('/assets/face-abc123.woff2', { headers: { 'accept-encoding': 'br' } });
    expect(font.headers.get('content-encoding')).toBeNull();
  });

  it('answer for every page of the app, but not for a file that is not there', async () => {
    expect(await (await askingOf({ files })('/heaps/one')).text()).toBe(page);
    expect((await askingOf({ files })('/assets/gone-000.js')).status).toBe(404);
    expect((await askingOf({ files })('/favicon.ico')).status).toBe(404);
  });

  it.each([
    '/../outside.html',
    '/%2e%2e/outside.html',
    '/..%2foutside.html',
    '/assets/../../outside.html',
    '/.vite/manifest.json',
  ])('are all that can be had: not %s', async (path) => {
    const response = await askingOf({ files })(path);
    expect(response.status).toBe(404);
    expect(await response.text()).not.toMatch(/outside<|secret/u);
  });

  it('are none when the app has not been built', async () => {
    expect((await askingOf({ files: readFiles(join(folder, 'nowhere')) })('/')).status).toBe(404);
  });
});
