import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Keeping, seal } from '@loamwright/daybook';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { openJsonlKeeping } from './jsonl.ts';
import { openSqliteKeeping } from './sqlite.ts';
import { type Acknowledged, type Child, prepareChild, removeChild, startChild } from './testing/children.ts';
import { draft } from './testing/entries.ts';

const folders: string[] = [];
beforeAll(prepareChild);
afterAll(removeChild);
afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
});

const device = 'phone-of-ada';
const stores = [
  { kind: 'sqlite', inside: 'daybook.db', open: openSqliteKeeping },
  { kind: 'jsonl', inside: 'daybook', open: openJsonlKeeping },
] as const;

/** When to kill, in entries acknowledged: early, in the middle, and after some time of two that contend. */
const killsAfter = [1, 7, 20, 55, 120, 30] as const;
const idsPerChild = 1_000_000;

function newPath(inside: string): string {
  const folder = mkdtempSync(join(tmpdir(), 'loamwright-processes-'));
  folders.push(folder);
  return join(folder, inside);
}

/** Neither begins before both are ready. */
async function startTogether(children: readonly Child[]): Promise<void> {
  await Promise.all(children.map((child) => child.ready()));
  for (const child of children) child.go();
}

describe.each(stores)('$kind between processes', ({ kind, inside, open }) => {
  test('K6 K7 killed while writing, again and again: every acknowledged entry is there and the chain is whole', {
    timeout: 60_000,
  }, async () => {
    const path = newPath(inside);
    const acknowledged: Acknowledged[] = [];
    let children = 0;
    const start = (): Child => {
      children += 1;
      return startChild({ kind, path, device, firstId: children * idsPerChild });
    };
    for (const after of killsAfter) {
      // Two at once, for the same device: one dies while the other may hold the lock.
      const pair = [start(), start()] as const;
      await startTogether(pair);
      await Promise.all(pair.map((child) => child.reaches(after)));
      await pair[0].kill();
      await pair[1].reaches(pair[1].acknowledged.length + 5);
      await pair[1].kill();
      for (const child of pair) acknowledged.push(...child.acknowledged);

      const keeping: Keeping = await open(path);
      const kept = new Map((await keeping.read()).entries.map(({ n, sum }) => [n, sum]));
      for (const { n, sum } of acknowledged) expect(kept.get(n), `entry ${n}`).toBe(sum);
      const report = await keeping.check();
      expect(report).toMatchObject({ changed: [], gaps: [], breaks: [], doubled: [], conflicts: [], unreadable: [] });
      expect(report.counted).toBe(kept.size);
      // Writing goes on.
      await keeping.write(device, (tip) => seal(tip, [draft(kept.size + 1, { device })]));
      await keeping.close();
    }
    expect(children).toBe(2 * killsAfter.length);
    expect(new Set(acknowledged.map(({ n }) => n)).size).toBe(acknowledged.length);
    expect(acknowledged.length).toBeGreaterThan(400);
  });

  test('K9 two processes that write as the same device at once never give out the same n', {
    timeout: 60_000,
  }, async () => {
    const path = newPath(inside);
    const pair = [1, 2].map((i) => startChild({ kind, path, device, firstId: i * idsPerChild }));
    await startTogether(pair);
    // Neither stops before the other has written, too.
    const each = 200;
    await Promise.all(pair.map((child) => child.reaches(each)));
    await Promise.all(pair.map((child) => child.kill()));
    const numbers = pair.flatMap(({ acknowledged }) => acknowledged.map(({ n }) => n));
    expect(numbers.length).toBeGreaterThanOrEqual(2 * each);
    expect(new Set(numbers).size).toBe(numbers.length);
    const keeping = await open(path);
    const report = await keeping.check();
    expect(report).toMatchObject({ gaps: [], breaks: [], doubled: [], conflicts: [] });
    expect(report.counted).toBeGreaterThanOrEqual(Math.max(...numbers));
    await keeping.close();
  });
});
