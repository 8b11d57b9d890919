import type { ChildProcess } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { type Built, built, type Ended, ended } from '../testing/built.ts';

let programs: Built;
let folder = '';
const running: { readonly child: ChildProcess; readonly end: Promise<Ended> }[] = [];
beforeAll(async () => {
  programs = await built();
});
afterAll(() => programs.remove());
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'loamwright-two-'));
});
afterEach(async () => {
  for (const { child, end } of running.splice(0)) {
    child.kill('SIGTERM');
    await end;
  }
  rmSync(folder, { recursive: true, force: true });
});

/** A computer with a data folder of its own. */
function computer(name: string) {
  const environment = { LOAMWRIGHT_DATA: join(folder, name) };
  return {
    run: (...args: readonly string[]) => programs.run(args, environment),
    json: async (...args: readonly string[]) => JSON.parse((await programs.run([...args, '--json'], environment)).out),
    serve: async (...args: readonly string[]): Promise<Serving> => {
      const child = programs.start(['start', '--port', '0', '--json', ...args], environment);
      running.push({ child, end: ended(child) });
      const first = await new Promise<string>((resolve) => child.stdout?.once('data', resolve));
      return (JSON.parse(first) as { readonly value: Serving }).value;
    },
  };
}

interface Serving {
  readonly port: number;
  readonly key: string;
  readonly fingerprint: string;
}

const flat = (text: string): string => text.replace(/\s+/gu, ' ');

describe('two computers', () => {
  it('exchange over HTTPS, the certificate known by its fingerprint, and remember each other', async () => {
    const shed = computer('shed');
    const laptop = computer('laptop');
    await shed.run('log', 'note', 'written in the shed');
    const { port, key, fingerprint } = await shed.serve('--lan');
    const address = `https://localhost:${port}`;

    // Nobody vouches for it: nothing goes, and nothing is begun here.
    const unknown = await laptop.run('exchange', address, '--key', key);
    expect(unknown.code).toBe(1);
    expect(flat(unknown.err)).toContain('Nobody this computer trusts vouches');
    const other = await laptop.run('exchange', address, '--key', key, '--fingerprint', 'AB:'.repeat(31).concat('AB'));
    expect(other.code).toBe(1);
    expect(flat(other.err)).toContain('Somebody may stand between the two');
    expect(existsSync(join(folder, 'laptop', 'exchange.json'))).toBe(false);

    const first = await laptop.json('exchange', address, '--key', key, '--fingerprint', fingerprint);
    expect(first).toMatchObject({ ok: true, value: { kept: 1, given: 0, complete: true, problems: [] } });
    expect(statSync(join(folder, 'laptop', 'exchange.json')).mode & 0o777).toBe(0o600);

    await laptop.run('log', 'note', 'written indoors');
    await shed.run('log', 'note', 'and once more in the shed');
    const told = await laptop.run('exchange');
    expect(told).toMatchObject({ code: 0, err: '' });
    expect(flat(told.out)).toContain(`Exchanged with ${address}: 1 new entry here; 1 new entry there.`);
    expect(await laptop.json('exchange')).toMatchObject({ value: { kept: 0, given: 0 } });
    for (const { run } of [shed, laptop]) {
      const { out } = await run('daybook');
      for (const text of ['written in the shed', 'written indoors', 'and once more in the shed'])
        expect(out).toContain(text);
      expect((await run('daybook', '--check')).code).toBe(0);
    }

    const wrong = await laptop.run('exchange', '--key', 'B'.repeat(22));
    expect(flat(wrong.err)).toContain('That is not the key of this daybook.');
    // What did not come through is not remembered.
    expect(readFileSync(join(folder, 'laptop', 'exchange.json'), 'utf8')).toContain(key);
  });

  it('of two holdings are kept apart', async () => {
    const shed = computer('shed');
    const laptop = computer('laptop');
    await shed.run('log', 'note', 'written in the shed');
    await laptop.run('log', 'note', 'written indoors');
    const { port } = await shed.serve();
    const refused = await laptop.run('exchange', `http://localhost:${port}`);
    expect(refused.code).toBe(2);
    expect(flat(refused.err)).toContain('two holdings never mix');
    expect((await laptop.run('daybook')).out).not.toContain('written in the shed');
    expect((await shed.run('daybook')).out).not.toContain('written indoors');
  });

  it.each<readonly [string, readonly string[], number, RegExp]>([
    ['no computer', [], 2, /not said with which computer/u],
    ['what is no address', ['the shed'], 2, /“the shed” is no address/u],
    ['plain HTTP on the network', ['http://192.168.1.20:4380'], 2, /would travel open/u],
    ['a fingerprint that is none', ['https://localhost:9', '--fingerprint', 'abc'], 2, /64 hex digits/u],
    ['a computer that is not there', ['http://127.0.0.1:9'], 1, /does not answer/u],
    ['the demo garden', ['http://127.0.0.1:9', '--demo'], 2, /made up/u],
  ])('refuse %s, with the reason', async (_, args, code, reason) => {
    const refused = await computer('laptop').run('exchange', ...args);
    expect(refused.code).toBe(code);
    expect(flat(refused.err)).toMatch(reason);
    expect(existsSync(join(folder, 'laptop', 'exchange.json'))).toBe(false);
  });
});
