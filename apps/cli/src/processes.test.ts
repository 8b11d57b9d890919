import type { ChildProcess } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { type Built, built, ended } from './testing/built.ts';

let programs: Built;
let folder = '';
let environment: Readonly<Record<string, string>> = {};
beforeAll(async () => {
  programs = await built();
});
afterAll(() => programs.remove());
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'loamwright-process-'));
  environment = { LOAMWRIGHT_DATA: folder };
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const run = (...args: readonly string[]) => programs.run(args, environment);
const shell = (line: string) => programs.shell(line, environment);

/** Nobody who typed something wrong is shown the inside of the program. */
const trace = /\n\s+at .+:\d+:\d+/u;

describe('a process', () => {
  it('says its version, its commands and its exit codes', async () => {
    expect((await run('--version')).out).toMatch(/^\d+\.\d+\.\d+\n$/u);
    const { code, out } = await run('--help');
    expect(code).toBe(0);
    for (const name of [
      'start',
      'mix',
      'build',
      'feed',
      'log',
      'heap',
      'daybook',
      'bring',
      'take',
      'exchange',
      'reckon',
    ]) {
      expect(out).toMatch(new RegExp(`^  ${name}\\b`, 'mu'));
      expect((await run(name, '--help')).out).toContain('Exit codes: 0 fine, 1 failed, 2 bad input');
    }
  });

  it.each([['weigh'], ['mix', '--nonsense'], ['log'], ['bring'], ['mix', 'straw=1bale', '--whole', '--half']])(
    'ends with 2 for what it does not know: %s %s',
    async (...args) => {
      const { code, err } = await run(...args);
      expect(code).toBe(2);
      expect(err).toMatch(/^error: /u);
      expect(err).not.toMatch(trace);
      const data = await run(...args, '--json');
      expect(data).toMatchObject({ code: 2, err: '' });
      expect(JSON.parse(data.out)).toMatchObject({ ok: false, problems: [{ code: 'command-line' }] });
    },
  );

  it('prints the answer to standard output, what is wrong to standard error, and both as JSON when asked', async () => {
    const wrong = await run('mix', 'strwa=1bale');
    expect(wrong).toMatchObject({ code: 2, out: '' });
    expect(wrong.err).toContain('strwa');
    const data = await run('mix', 'strwa=1bale', '--json');
    expect(data).toMatchObject({ code: 2, err: '' });
    expect(JSON.parse(data.out)).toMatchObject({ ok: false, problems: [{ code: 'unknown-material', found: 'strwa' }] });
  });

  it('ends quietly when nobody reads on', async () => {
    await run('heap', '--demo');
    for (const [command, reader] of [
      ['daybook --demo --all', 'head -n 1'],
      ['take --demo', 'head -c 10'],
      ['reckon mix-balance --schema', 'true'],
    ]) {
      const code = join(folder, 'code');
      const { err } = await shell(`{ $loamwright ${command}; echo $? > '${code}'; } | ${reader}`);
      expect({ command, err, code: readFileSync(code, 'utf8') }).toEqual({ command, err: '', code: '0\n' });
    }
  });

  it('says what is wrong when standard input is closed, empty, a folder or not text', async () => {
    for (const line of [
      '$loamwright reckon reading-meaning <&-',
      '$loamwright reckon reading-meaning </dev/null',
      `$loamwright bring '${folder}'`,
      '$loamwright bring - <&-',
      "printf '\\377\\376\\000' | $loamwright reckon reading-meaning",
      'head -c 20000000 /dev/zero | $loamwright reckon reading-meaning',
    ]) {
      const { code, err } = await shell(line);
      expect([1, 2]).toContain(code);
      expect(err.length).toBeGreaterThan(10);
      expect(err).not.toMatch(trace);
    }
    expect(existsSync(join(folder, 'daybook.sqlite'))).toBe(false);
  });

  it('reads a path and a material in any script', async () => {
    const data = join(folder, 'Gärten 🐐', '庭');
    expect((await run('log', 'note', 'Schön 🌱', '--data', data)).code).toBe(0);
    expect((await run('daybook', '--data', data)).out).toContain('Schön 🌱');
  });
});

describe('several processes on one folder', () => {
  it('write one unbroken chain', async () => {
    await run('log', 'note', 'first');
    const notes = Array.from({ length: 6 }, (_, i) => `note ${i}`);
    const all = await Promise.all(notes.map((text) => run('log', 'note', text)));
    expect(all.map(({ code, err }) => ({ code, err }))).toEqual(notes.map(() => ({ code: 0, err: '' })));
    const { out, code } = await run('daybook', '--check');
    expect(out).toContain('7 entries read again: nothing is changed');
    expect(code).toBe(0);
  });

  it('work while the server runs, and the server hands out what they wrote', async () => {
    const server = programs.start(['start', '--port', '0', '--json'], environment);
    const printed = ended(server);
    const address = await addressOf(server);
    expect((await run('log', 'note', 'beside the server')).code).toBe(0);
    expect(await (await fetch(`${address}/api/daybook`)).text()).toContain('beside the server');
    server.kill('SIGTERM');
    expect(await printed).toMatchObject({ code: 0, err: '' });
    expect((await run('daybook', '--check')).code).toBe(0);
  });
});

describe('start', () => {
  it('stops the server when it is stopped, even by force', async () => {
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGKILL'] as const) {
      const child = programs.start(['start', '--port', '0', '--json'], environment);
      const end = ended(child);
      const address = await addressOf(child);
      expect((await fetch(`${address}/api/about`)).status).toBe(200);
      // As a terminal does, the signal would reach both; here only the command line gets it.
      child.kill(signal === 'SIGINT' ? 'SIGTERM' : signal);
      await end;
      await expect
        .poll(
          () =>
            fetch(address).then(
              () => 'there',
              () => 'gone',
            ),
          { timeout: 10_000 },
        )
        .toBe('gone');
    }
  });

  it('serves the demo garden apart', async () => {
    const child = programs.start(['start', '--port', '0', '--json', '--demo'], environment);
    const end = ended(child);
    expect(await (await fetch(`${await addressOf(child)}/api/daybook`)).text()).toContain('quarry-lane-demo');
    child.kill('SIGTERM');
    await end;
    expect(existsSync(join(folder, 'daybook.sqlite'))).toBe(false);
  });

  it.each<readonly [string, Readonly<Record<string, string>>, readonly string[], number, RegExp]>([
    ['a host beyond this computer', { HOST: '0.0.0.0' }, [], 2, /plain HTTP is not offered/u],
    ['a port that is none', { PORT: 'http' }, [], 2, /PORT is “http”/u],
    ['an option it does not know', {}, ['--lam'], 2, /--lam/u],
  ])('refuses %s, with the reason', async (_, more, args, code, reason) => {
    const refused = await programs.run(['start', ...args], { ...environment, ...more });
    expect(refused.code).toBe(code);
    expect(refused.err.replace(/\s+/gu, ' ')).toMatch(reason);
    expect(refused.err).not.toMatch(trace);
  });

  it('says so when the port is taken, and does not take another', async () => {
    const child = programs.start(['start', '--port', '0', '--json'], environment);
    const end = ended(child);
    const { port } = new URL(await addressOf(child));
    const second = await run('start', '--port', port);
    expect(second.code).toBe(1);
    expect(second.err).toContain(`Port ${port} is in use`);
    child.kill('SIGTERM');
    await end;
  });
});

describe('a daybook that is damaged', () => {
  it('is told, and left as it is, by every command that needs it', async () => {
    const file = join(folder, 'daybook.sqlite');
    const text = 'somebody’s own file, and no daybook at all. '.repeat(200);
    writeFileSync(file, text);
    for (const args of [['heap'], ['daybook'], ['daybook', '--check'], ['take'], ['log', 'note', 'one'], ['start']]) {
      const { code, err } = await run(...args);
      expect({ args, code }).toEqual({ args, code: 1 });
      expect(err).toContain('daybook.sqlite');
      expect(err).not.toMatch(trace);
    }
    expect(readFileSync(file, 'utf8')).toBe(text);
  });
});

/** The address that a server prints for programs, once it answers. */
function addressOf(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let text = '';
    child.stdout?.on('data', (more: string) => {
      text += more;
      const line = /^.*\n/u.exec(text)?.[0];
      if (line !== undefined) resolve(JSON.parse(line).value.address);
    });
    child.once('exit', (code) => reject(new Error(`it ended with ${code} before it answered`)));
  });
}
