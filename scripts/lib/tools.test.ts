import { chmodSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { findChromium, findProgram } from './tools.mjs';

describe('finding a program', () => {
  let folder = '';
  const program = (path: string, mode = 0o755) => {
    const full = join(folder, path);
    mkdirSync(join(full, '..'), { recursive: true });
    writeFileSync(full, '#!/bin/sh\n');
    chmodSync(full, mode);
    return full;
  };
  const env = (extra: Record<string, string> = {}) => ({
    PATH: [join(folder, 'a'), join(folder, 'b')].join(delimiter),
    ...extra,
  });
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'loamwright-tools-'));
  });
  afterEach(() => rmSync(folder, { recursive: true, force: true }));

  it('looks through PATH in order and takes what may be run', () => {
    program('a/glpsol', 0o644);
    const second = program('b/glpsol');
    expect(findProgram(['glpsol'], env())).toBe(second);
    expect(findProgram(['nothing'], env())).toBeUndefined();
  });

  it('does not take a folder for a program', () => {
    mkdirSync(join(folder, 'a/glpsol'), { recursive: true });
    expect(findProgram(['glpsol'], env())).toBeUndefined();
  });

  it('takes the browser that LOAMWRIGHT_CHROMIUM names, and no other when that one is not there', () => {
    const installed = program('b/chromium');
    const named = program('own/browser');
    expect(findChromium(env())).toBe(installed);
    expect(findChromium(env({ LOAMWRIGHT_CHROMIUM: '' }))).toBe(installed);
    expect(findChromium(env({ LOAMWRIGHT_CHROMIUM: named }))).toBe(named);
    expect(findChromium(env({ LOAMWRIGHT_CHROMIUM: join(folder, 'gone') }))).toBeUndefined();
  });
});
