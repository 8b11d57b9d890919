import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { root } from './lib/root.mjs';

const core = 'packages/science/src';

/** What the core must not use, and the category of the complaint. */
const banned: Readonly<Record<string, string>> = {
  'Date.now()': 'lint/style/noRestrictedGlobals',
  'performance.now()': 'lint/style/noRestrictedGlobals',
  'Math.random()': 'plugin',
  'crypto.randomUUID()': 'lint/style/noRestrictedGlobals',
  "fetch('x')": 'lint/style/noRestrictedGlobals',
  'setTimeout(String, 1)': 'lint/style/noRestrictedGlobals',
  'process.env': 'lint/style/noRestrictedGlobals',
  'document.title': 'lint/style/noRestrictedGlobals',
  'window.name': 'lint/style/noRestrictedGlobals',
  "localStorage.getItem('x')": 'lint/style/noRestrictedGlobals',
  'globalThis.Date': 'lint/style/noRestrictedGlobals',
  "console.log('x')": 'lint/suspicious/noConsole',
};
const uses = Object.keys(banned);
const program = (use: string) => `export const probe = (): unknown => ${use};\n`;

interface Complaint {
  readonly category: string;
  readonly location: { readonly path: string };
}

describe('the lint of the core', () => {
  let folder = '';
  let complaints: readonly Complaint[] = [];

  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'loamwright-lint-'));
    for (const name of ['biome.json', '.gitignore', 'scripts/lint']) {
      cpSync(join(root, name), join(folder, name), { recursive: true });
    }
    const write = (path: string, text: string) => {
      mkdirSync(dirname(join(folder, path)), { recursive: true });
      writeFileSync(join(folder, path), text);
    };
    for (const [index, use] of uses.entries()) {
      write(`${core}/probe-${index}.ts`, program(use));
      write(`${core}/probe-${index}.test.ts`, program(use));
      write(`apps/cli/src/probe-${index}.ts`, program(use));
    }
    const biome = join(root, 'node_modules/@biomejs/biome/bin/biome');
    const args = [biome, 'lint', '--reporter=json', '--max-diagnostics=none', '.'];
    const { stdout } = spawnSync(process.execPath, args, { cwd: folder, encoding: 'utf8' });
    complaints = (JSON.parse(stdout) as { diagnostics: Complaint[] }).diagnostics;
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  const about = (path: string) =>
    complaints.filter(({ location }) => location.path.endsWith(path)).map(({ category }) => category);

  it.each(uses.map((use, index) => ({ use, index })))('refuses $use', ({ use, index }) => {
    expect(about(`${core}/probe-${index}.ts`)).toEqual([banned[use]]);
  });

  it('lets tests and apps use them', () => {
    const elsewhere = uses.flatMap((_, index) => [
      ...about(`${core}/probe-${index}.test.ts`),
      ...about(`apps/cli/src/probe-${index}.ts`),
    ]);
    expect(elsewhere).toEqual([]);
  });
});
