import { mkdirSync, mkdtempSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { fingerprint, sourceFiles } from './fingerprint.mjs';

describe('the fingerprint of sources', () => {
  let base = '';
  const write = (path: string, text: string) => {
    mkdirSync(join(base, path, '..'), { recursive: true });
    writeFileSync(join(base, path), text);
  };
  beforeEach(() => {
    base = mkdtempSync(join(tmpdir(), 'loamwright-fingerprint-'));
    write('apps/web/src/main.ts', 'export const a = 1;');
    write('apps/web/index.html', '<p>');
    write('lock.json', '{}');
  });
  afterEach(() => rmSync(base, { recursive: true, force: true }));
  const now = () => fingerprint(base, ['apps/web', 'lock.json']);

  it('stays when nothing is written, whatever the time of the files', () => {
    const before = now();
    utimesSync(join(base, 'lock.json'), 1, 1);
    expect(now()).toBe(before);
  });

  it('changes with a content, a name, a new file and a file gone', () => {
    const seen = new Set([now()]);
    write('apps/web/src/main.ts', 'export const a = 2;');
    seen.add(now());
    write('apps/web/src/other.ts', '');
    seen.add(now());
    rmSync(join(base, 'apps/web/src/other.ts'));
    write('apps/web/src/another.ts', '');
    seen.add(now());
    rmSync(join(base, 'lock.json'));
    seen.add(now());
    expect(seen.size).toBe(5);
  });

  it('leaves out tests, their helpers, and what is made or fetched', () => {
    write('apps/web/src/main.test.tsx', '');
    write('apps/web/src/testing/fixture.ts', '');
    write('apps/web/dist/index.html', '');
    write('apps/web/node_modules/x/index.js', '');
    expect(sourceFiles(base, 'apps/web')).toEqual(['apps/web/index.html', 'apps/web/src/main.ts']);
  });
});
