import { describe, expect, test } from 'vitest';
import { makeIndexedDbKit } from './testing/indexeddb-kit.ts';
import { makeJsonlKit } from './testing/jsonl-kit.ts';
import { runModel } from './testing/keeping-model.ts';
import { makeSqliteKit } from './testing/sqlite-kit.ts';

const seed = 20260301;

describe('random commands against a plain map', () => {
  test.each([
    { name: 'an SQLite file', makeKit: makeSqliteKit },
    { name: 'a JSON-lines file', makeKit: makeJsonlKit },
    { name: 'IndexedDB', makeKit: makeIndexedDbKit },
  ])(
    'K1 K2 K5 K10 K13 K14 K16 K17 K19 K20 K21 $name does as the map does',
    { timeout: 60_000 },
    async ({ makeKit }) => {
      const { commands, counts } = await runModel(makeKit, { runs: 60, commands: 40, seed });
      // The run did something: every kind of command, many times.
      expect(commands).toBeGreaterThan(700);
      expect([...counts.keys()].sort()).toEqual([
        'attach',
        'check',
        'detach',
        'heads',
        'keep',
        'pick',
        'read',
        'reopen',
        'write',
      ]);
      for (const [kind, count] of counts) expect(count, kind).toBeGreaterThan(40);
    },
  );
});
