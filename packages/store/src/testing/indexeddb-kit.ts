import 'fake-indexeddb/auto';
import { type IDBPDatabase, openDB } from 'idb';
import { openIndexedDbKeeping } from '../indexeddb.ts';
import { must } from './entries.ts';
import { type Fault, failsNow, type KeepingKit } from './kit.ts';

let kits = 0;

/** A kit on a database of its own. */
export async function makeIndexedDbKit(): Promise<KeepingKit & { readonly name: string }> {
  kits += 1;
  const name = `loamwright-test-${kits}`;
  const onDatabase = async <Result>(work: (db: IDBPDatabase) => Promise<Result>): Promise<Result> => {
    const db = await openDB(name);
    try {
      return await work(db);
    } finally {
      db.close();
    }
  };
  return {
    name,
    open: (options) => openIndexedDbKeeping(name, options),
    openFailing: async (fault) => {
      armPuts(fault);
      return openIndexedDbKeeping(name);
    },
    rewriteRecord: (position, change) =>
      onDatabase(async (db) => {
        const text = must(await db.get('texts', position)) as { readonly json: string };
        await db.put('texts', { position, json: change(text.json) });
      }),
    rewriteAttachment: (hash, bytes) =>
      onDatabase(async (db) => {
        await db.put('bytes', bytes, hash);
      }),
    loseAttachment: (hash) => onDatabase((db) => db.delete('bytes', hash)),
    holdLock: async () => {
      const db = await openDB(name);
      const tx = db.transaction('facts', 'readwrite');
      let held = true;
      const over = (async () => {
        // A transaction lives as long as it is asked something.
        while (held) await tx.store.get('holding');
        await tx.done;
        db.close();
      })();
      return async () => {
        held = false;
        await over;
      };
    },
    dispose: async () => {
      disarmPuts();
      await new Promise((resolve) => {
        const request = indexedDB.deleteDatabase(name);
        request.onsuccess = resolve;
        request.onblocked = resolve;
      });
    },
  };
}

const { put, add, delete: remove } = IDBObjectStore.prototype;

/** Lets a put, add or delete fail as a browser does that has no room left: the whole transaction is undone. */
function armPuts(fault: Fault): void {
  const failing = <Arguments extends unknown[]>(method: (...values: Arguments) => IDBRequest) =>
    function (this: IDBObjectStore, ...values: Arguments): IDBRequest {
      if (failsNow(fault)) throw new DOMException('no room left', 'QuotaExceededError');
      return method.apply(this, values);
    };
  IDBObjectStore.prototype.put = failing(put) as typeof put;
  IDBObjectStore.prototype.add = failing(add) as typeof add;
  IDBObjectStore.prototype.delete = failing(remove) as typeof remove;
}

function disarmPuts(): void {
  IDBObjectStore.prototype.put = put;
  IDBObjectStore.prototype.add = add;
  IDBObjectStore.prototype.delete = remove;
}
