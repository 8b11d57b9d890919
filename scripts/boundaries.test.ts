import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { root } from './lib/root.mjs';

const helper = 'packages/daybook/src/testing/helper.ts';

/** A project in which some files keep the rules and some break them: each with what it imports. */
const files: Readonly<Record<string, readonly string[]>> = {
  'packages/units/src/index.ts': [],
  'packages/science/src/index.ts': ['packages/units/src/index.ts'],
  'packages/daybook/src/index.ts': ['packages/science/src/index.ts'],
  'packages/advisor/src/index.ts': ['packages/daybook/src/index.ts', 'packages/units/src/index.ts'],
  'packages/store/src/index.ts': ['packages/daybook/src/index.ts', 'node:fs'],
  'packages/units/src/units.test.ts': [helper, 'node:fs'],
  'apps/cli/src/main.ts': ['packages/store/src/index.ts', 'packages/advisor/src/index.ts'],
  [helper]: [],

  'packages/units/src/upwards.ts': ['packages/science/src/index.ts'],
  'packages/science/src/upwards.test.ts': ['packages/daybook/src/index.ts'],
  'packages/store/src/sideways.ts': ['packages/advisor/src/index.ts'],
  'apps/server/src/sideways.ts': ['apps/cli/src/main.ts'],
  'packages/units/src/round.ts': ['packages/units/src/about.ts'],
  'packages/units/src/about.ts': ['packages/units/src/round.ts'],
  'packages/sync/src/node.ts': ['node:fs'],
  'packages/store/src/indexeddb.ts': ['packages/store/src/index.ts'],
  'packages/store/src/helped.ts': [helper],
};

interface Violation {
  readonly from: string;
  readonly rule: { readonly name: string };
}

describe('the boundaries between the parts', () => {
  let folder = '';
  let violations: readonly Violation[] = [];

  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'loamwright-boundaries-'));
    cpSync(join(root, '.dependency-cruiser.mjs'), join(folder, '.dependency-cruiser.mjs'));
    writeFileSync(join(folder, 'tsconfig.json'), '{ "compilerOptions": { "noEmit": true } }');
    for (const [file, imports] of Object.entries(files)) {
      mkdirSync(dirname(join(folder, file)), { recursive: true });
      const up = '../'.repeat(file.split('/').length - 1);
      const lines = imports.map((one) => `import '${one.startsWith('node:') ? one : up + one}';`);
      writeFileSync(join(folder, file), `${lines.join('\n')}\nexport {};\n`);
    }
    const program = join(root, 'node_modules/dependency-cruiser/bin/dependency-cruise.mjs');
    const args = [program, '--output-type', 'json', 'packages', 'apps'];
    const { stdout } = spawnSync(process.execPath, args, { cwd: folder, encoding: 'utf8' });
    violations = (JSON.parse(stdout) as { summary: { violations: Violation[] } }).summary.violations;
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  const broken = (file: string) => [
    ...new Set(violations.filter(({ from }) => from === file).map(({ rule }) => rule.name)),
  ];

  it.each([
    'packages/science/src/index.ts',
    'packages/daybook/src/index.ts',
    'packages/advisor/src/index.ts',
    'packages/store/src/index.ts',
    'packages/units/src/units.test.ts',
    'apps/cli/src/main.ts',
  ])('let %s import what is below it', (file) => {
    expect(broken(file)).toEqual([]);
  });

  it.each([
    ['packages/units/src/upwards.ts', 'what-units-imports'],
    ['packages/science/src/upwards.test.ts', 'what-science-imports'],
    ['packages/store/src/sideways.ts', 'what-store-imports'],
    ['apps/server/src/sideways.ts', 'what-server-imports'],
    ['packages/units/src/about.ts', 'no-cycles'],
    ['packages/sync/src/node.ts', 'core-imports-no-node-module'],
    ['packages/store/src/indexeddb.ts', 'browser-reaches-no-node-module'],
    ['packages/store/src/helped.ts', 'only-tests-import-tests'],
  ])('refuse %s by the rule %s', (file, rule) => {
    expect(broken(file)).toEqual([rule]);
  });
});
