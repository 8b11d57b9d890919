import { mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { countAttempts, openKey, sameKey } from './key.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'loamwright-key-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

describe('the key', () => {
  it('is made once, of 128 bits, and read by its owner alone', () => {
    const file = join(folder, 'lan', 'key');
    const made = openKey(file);
    expect(made.ok && Buffer.from(made.value, 'base64url').length).toBe(16);
    expect(openKey(file)).toEqual(made);
    expect(statSync(file).mode & 0o777).toBe(0o600);
  });

  it('differs from folder to folder', () => {
    expect(openKey(join(folder, 'a'))).not.toEqual(openKey(join(folder, 'b')));
  });

  it('is refused when its file holds something else', () => {
    writeFileSync(join(folder, 'key'), '');
    expect(openKey(join(folder, 'key'))).toMatchObject({ ok: false, problems: [{ code: 'key-file-broken' }] });
  });

  it('is the same only as itself', () => {
    expect(sameKey('abc', 'abc')).toBe(true);
    expect(sameKey('abc', 'abd')).toBe(false);
    expect(sameKey('', 'abc')).toBe(false);
    expect(sameKey('abcabc', 'abc')).toBe(false);
  });
});

describe('wrong keys', () => {
  it('shut an address out after ten, until ten minutes have passed', () => {
    let now_ms = 0;
    const attempts = countAttempts(() => now_ms);
    for (let i = 0; i < 9; i++) attempts.wrong('192.168.1.30');
    expect(attempts.blocked_s('192.168.1.30')).toBe(0);
    attempts.wrong('192.168.1.30');
    expect(attempts.blocked_s('192.168.1.30')).toBe(600);
    expect(attempts.blocked_s('192.168.1.31')).toBe(0);
    now_ms = 599_000;
    expect(attempts.blocked_s('192.168.1.30')).toBe(1);
    now_ms = 600_000;
    expect(attempts.blocked_s('192.168.1.30')).toBe(0);
  });

  it('from very many addresses are forgotten, oldest first', () => {
    const attempts = countAttempts(() => 0);
    for (let i = 0; i < 10; i++) attempts.wrong('first');
    for (let i = 0; i < 1000; i++) attempts.wrong(`other-${i}`);
    expect(attempts.blocked_s('first')).toBe(0);
  });
});
