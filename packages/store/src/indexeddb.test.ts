import { type IDBPDatabase, openDB } from 'idb';
import { build } from 'rolldown';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { databaseVersion } from './indexeddb/database.ts';
import { openIndexedDbKeeping } from './indexeddb.ts';
import { bytesOf, chain } from './testing/entries.ts';
import { makeIndexedDbKit } from './testing/indexeddb-kit.ts';
import { keepingContract } from './testing/keeping-contract.ts';
import { rejection } from './testing/kit.ts';

keepingContract('IndexedDB', makeIndexedDbKit);

afterEach(() => vi.restoreAllMocks());

describe('the database', () => {
  test('K7 a call resolves only when its transaction is complete', async () => {
    const { open, dispose } = await makeIndexedDbKit();
    const keeping = await open();
    let completed = 0;
    const transaction = IDBDatabase.prototype.transaction;
    vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(function (this: IDBDatabase, ...values) {
      const tx = transaction.apply(this, values);
      tx.addEventListener('complete', () => {
        completed += 1;
      });
      return tx;
    });
    const photo = bytesOf('a photo');
    const calls = [
      () => keeping.keep(chain(3)),
      () => keeping.write('phone-of-ada', () => []),
      () => keeping.attach(photo.hash, photo.bytes, 'image/jpeg'),
      () => keeping.detach(photo.hash),
    ];
    for (const [i, call] of calls.entries()) {
      await call();
      expect(completed).toBe(i + 1);
    }
    await keeping.close();
    await dispose();
  });

  test('K7 every transaction that writes asks for strict durability', async () => {
    const { open, dispose } = await makeIndexedDbKit();
    const keeping = await open();
    const transaction = vi.spyOn(IDBDatabase.prototype, 'transaction');
    const photo = bytesOf('a photo');
    await keeping.keep(chain(1));
    await keeping.write('phone-of-ada', () => []);
    await keeping.attach(photo.hash, photo.bytes, 'image/jpeg');
    await keeping.detach(photo.hash);
    const writing = transaction.mock.calls.filter(([, mode]) => mode === 'readwrite');
    expect(writing).toHaveLength(4);
    for (const [, , options] of writing) expect(options).toEqual({ durability: 'strict' });
    await keeping.close();
    await dispose();
  });

  test('of a newer version: refused, told so, and left as it was', async () => {
    const name = 'newer';
    const newer: IDBPDatabase = await openDB(name, databaseVersion + 1, {
      upgrade: (db) => void db.createObjectStore('runes'),
    });
    newer.close();
    const error = await openIndexedDbKeeping(name).catch((refused: unknown) => refused);
    expect(error).toMatchObject({ code: 'damaged', message: expect.stringMatching(/newer version/u) });
    const again = await openDB(name);
    expect([again.version, [...again.objectStoreNames]]).toEqual([databaseVersion + 1, ['runes']]);
    again.close();
  });

  test('makes way for a newer version of the app in another tab; its own calls are then closed', async () => {
    const keeping = await openIndexedDbKeeping('makes-way');
    const newer = await openDB('makes-way', databaseVersion + 1);
    expect(await rejection(keeping.keep(chain(1)))).toBe('closed');
    newer.close();
  });

  test('K25 busy when it can’t be opened in time', async () => {
    const name = 'held-open';
    const stubborn = await openDB(name, databaseVersion);
    const removal = indexedDB.deleteDatabase(name);
    expect(await rejection(openIndexedDbKeeping(name, { wait_ms: 60 }))).toBe('busy');
    stubborn.close();
    await new Promise((resolve) => {
      removal.onsuccess = resolve;
    });
  });

  test('K25 a tab that reads waits for one that writes no longer than it was told', async () => {
    const kit = await makeIndexedDbKit();
    const impatient = await kit.open({ wait_ms: 60 });
    const release = await kit.holdLock();
    expect(await rejection(impatient.read())).toBe('busy');
    await release();
    expect(await impatient.read()).toEqual({ entries: [], position: 0 });
    await impatient.close();
    await kit.dispose();
  });

  test('needs nothing of Node: it bundles for a browser', async () => {
    const { output } = await build({
      input: new URL('indexeddb.ts', import.meta.url).pathname,
      platform: 'browser',
      write: false,
      output: { format: 'esm', codeSplitting: false },
      logLevel: 'silent',
    });
    const own = output[0].moduleIds.filter((path) => path.includes('packages/store/'));
    expect(own.length).toBeGreaterThan(5);
    expect(own.filter((path) => /\/(?:node|sqlite|jsonl)\b/u.test(path))).toEqual([]);
  });
});
