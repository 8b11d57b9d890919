import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { catalogue } from '@loamwright/science';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { bundle } from '../../../../scripts/lib/bundle.mjs';
import { root } from '../../../../scripts/lib/root.mjs';
import { openReckoner } from './crew.ts';

const body = new TextEncoder().encode('{}');
const limits = { time_ms: 20_000, waiting: 2, idle_ms: 60_000 };

let folder = '';
beforeAll(async () => {
  const cache = join(root, 'node_modules/.cache/loamwright');
  mkdirSync(cache, { recursive: true });
  folder = mkdtempSync(join(cache, 'reckon-'));
  await bundle(join(root, 'apps/server/src/reckon/worker.ts'), join(folder, 'real.mjs'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** A thread that does as it is told. */
function thread(script: string): string {
  const file = join(folder, `${Math.abs(hash(script))}.mjs`);
  writeFileSync(file, `import { parentPort, threadId } from 'node:worker_threads';\n${script}`);
  return file;
}

function hash(text: string): number {
  return [...text].reduce((sum, letter) => (Math.imul(sum, 31) + letter.charCodeAt(0)) | 0, 7);
}

const answering = "parentPort.on('message', () => parentPort.postMessage({ ok: true, json: String(threadId) }));";
const spins =
  "parentPort.on('message', ({ id }) => { while (id === 'spin'); parentPort.postMessage({ ok: true, json: id }); });";

describe('the thread that runs calculations', () => {
  it('runs them one after another in the same thread, with the solver', async () => {
    const reckoner = openReckoner(join(folder, 'real.mjs'), limits);
    for (const { id, example } of catalogue.filter((one) => ['mix-solve', 'moisture-from-weights'].includes(one.id))) {
      const worked = await reckoner.reckon(id, new TextEncoder().encode(JSON.stringify(example)));
      expect(worked).toMatchObject({ ok: true });
    }
    expect(await reckoner.reckon('moisture-from-weights', body)).toMatchObject({ ok: false });
    await reckoner.stop();
  });

  it('leaves this thread free: a calculation that never ends stops nobody else, and is ended', async () => {
    const reckoner = openReckoner(thread(spins), { ...limits, time_ms: 500 });
    let turns = 0;
    const counting = setInterval(() => (turns += 1), 10);
    expect(await reckoner.reckon('spin', body)).toBe('too-long');
    clearInterval(counting);
    expect(turns).toBeGreaterThan(10);
    expect(await reckoner.reckon('next', body)).toEqual({ ok: true, json: 'next' });
    await reckoner.stop();
  });

  it('lets only so many wait', async () => {
    const reckoner = openReckoner(thread(answering), limits);
    const asked = await Promise.all(Array.from({ length: 5 }, () => reckoner.reckon('one', body)));
    expect(asked.filter((answer) => answer === 'busy')).toHaveLength(2);
    const [first, ...others] = asked.filter((answer) => answer !== 'busy');
    for (const other of others) expect(other).toEqual(first);
    await reckoner.stop();
  });

  it('says so when it dies, and starts anew', async () => {
    const dies = thread(
      "parentPort.on('message', ({ id }) => { if (id === 'die') throw new Error('dead'); parentPort.postMessage({ ok: true, json: id }); });",
    );
    const reckoner = openReckoner(dies, limits);
    expect(await reckoner.reckon('die', body)).toBe('failed');
    expect(await reckoner.reckon('live', body)).toEqual({ ok: true, json: 'live' });
    await reckoner.stop();
    const missing = openReckoner(join(folder, 'nowhere.mjs'), limits);
    expect(await missing.reckon('one', body)).toBe('failed');
  });

  it('ends when nothing has come for a while', async () => {
    const reckoner = openReckoner(thread(answering), { ...limits, idle_ms: 20 });
    const first = await reckoner.reckon('one', body);
    await new Promise((resolve) => setTimeout(resolve, 300));
    const second = await reckoner.reckon('two', body);
    expect(second).not.toEqual(first);
    await reckoner.stop();
  });
});
