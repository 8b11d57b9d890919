// Runs the examples in README.md and docs/: each document's `$ loamwright …` commands in order, on a data folder
// of its own, and compares what they print with what is shown below them. Needs the built command line.
import { spawnSync } from 'node:child_process';
import {
  chmodSync,
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { cliPath } from '../../scripts/lib/build.mjs';
import { type Example, examplesIn, matches } from '../../scripts/lib/docs-examples.mjs';
import { root } from '../../scripts/lib/root.mjs';

/** An example that takes longer hangs. */
const example_timeout_ms = 60_000;

const documents = ['README.md', ...markdownIn('docs')]
  .map((path) => ({ path, examples: examplesIn(readFileSync(join(root, path), 'utf8')) }))
  .filter(({ examples }) => examples.length > 0);

function markdownIn(folder: string): readonly string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.md'))
    .map((name) => join(folder, name))
    .sort();
}

describe.each(documents)('$path', ({ path, examples }) => {
  let folder = '';
  let env: NodeJS.ProcessEnv = {};
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'loamwright-docs-'));
    env = environment(folder);
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it.each(examples.map((example) => ({ ...example, title: example.command.split('\n')[0] ?? '' })))(
    'prints what line $line shows: $title',
    (example) => {
      const { printed, status } = runExample(example, env, join(folder, 'work'));
      const isShown = status === example.exitCode && matches(example.expected, printed.split('\n'));
      if (isShown) return;
      const place = `${path}:${example.line}`;
      expect({ place, status, printed }).toEqual({
        place,
        status: example.exitCode,
        printed: example.expected.join('\n'),
      });
      throw new Error(`${place}: the lines are those shown, and yet they do not match.`);
    },
  );
});

/** One in which the examples print the same on every machine. */
function environment(at: string): NodeJS.ProcessEnv {
  const bin = join(at, 'bin');
  mkdirSync(bin);
  writeFileSync(join(bin, 'loamwright'), `#!/bin/sh\nexec '${process.execPath}' '${cliPath}' "$@"\n`);
  chmodSync(join(bin, 'loamwright'), 0o755);
  mkdirSync(join(at, 'work'));
  // A document names its example files as they lie in the project.
  if (existsSync(join(root, 'docs/examples')))
    cpSync(join(root, 'docs/examples'), join(at, 'work/docs/examples'), { recursive: true });
  return {
    PATH: `${bin}${delimiter}${process.env['PATH'] ?? ''}`,
    HOME: at,
    LOAMWRIGHT_DATA: join(at, 'data'),
    TZ: 'UTC',
    LANG: 'C.UTF-8',
    COLUMNS: '80',
    NO_COLOR: '1',
  };
}

function runExample(
  { command }: Example,
  env: NodeJS.ProcessEnv,
  cwd: string,
): { printed: string; status: number | null } {
  const { stdout, status } = spawnSync('sh', ['-c', `exec 2>&1\n${command}`], {
    cwd,
    env,
    encoding: 'utf8',
    timeout: example_timeout_ms,
  });
  return { printed: stdout, status };
}
