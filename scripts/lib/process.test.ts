import { describe, expect, it } from 'vitest';
import { exitCode, run } from './process.mjs';

describe('running a program', () => {
  it('gives its exit code', async () => {
    expect(await run(process.execPath, ['-e', ''])).toBe(0);
    expect(await run(process.execPath, ['-e', 'process.exit(3)'])).toBe(3);
  });

  it('gives 128 and the number of the signal that ended it, as a shell does', async () => {
    expect(exitCode(null, 'SIGINT')).toBe(130);
    expect(await run(process.execPath, ['-e', 'process.kill(process.pid, "SIGTERM")'])).toBe(143);
  });

  it('ends what takes too long', async () => {
    expect(await run(process.execPath, ['-e', 'setInterval(() => {}, 1000)'], { timeout_ms: 300 })).toBe(143);
  });

  it('gives 127 when there is no such program', async () => {
    expect(await run('no-such-program-here', [])).toBe(127);
  });
});
