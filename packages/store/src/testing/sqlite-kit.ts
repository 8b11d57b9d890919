import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'libsql';
import type { OpenDatabase, SqliteDatabase } from '../sqlite/connection.ts';
import { openSqliteKeeping } from '../sqlite.ts';
import { must } from './entries.ts';
import { type Fault, failsNow, type KeepingKit } from './kit.ts';

/** A kit on a file of its own. */
export async function makeSqliteKit(): Promise<KeepingKit & { readonly path: string }> {
  const folder = await mkdtemp(join(tmpdir(), 'loamwright-sqlite-'));
  const path = join(folder, 'daybook.db');
  const onFile = <Result>(work: (db: SqliteDatabase) => Result): Result => {
    const db = new Database(path, { timeout: 2000 });
    try {
      return work(db);
    } finally {
      db.close();
    }
  };
  return {
    path,
    open: (options) => openSqliteKeeping(path, options),
    openFailing: (fault) => openSqliteKeeping(path, { openDatabase: failingDatabase(fault) }),
    rewriteRecord: async (position, change) =>
      onFile((db) => {
        const row = must(db.prepare('SELECT json FROM entry WHERE position = ?').get(position)) as {
          readonly json: string;
        };
        db.prepare('UPDATE entry SET json = ? WHERE position = ?').run(change(row.json), position);
      }),
    rewriteAttachment: async (hash, bytes) =>
      onFile((db) => {
        db.prepare('UPDATE attachment SET bytes = ? WHERE hash = ?').run(bytes, hash);
      }),
    loseAttachment: async (hash) =>
      onFile((db) => {
        db.prepare('DELETE FROM attachment WHERE hash = ?').run(hash);
      }),
    holdLock: async () => {
      const db = new Database(path, { timeout: 2000 });
      db.exec('BEGIN IMMEDIATE');
      return async () => {
        db.exec('ROLLBACK');
        db.close();
      };
    },
    dispose: () => rm(folder, { recursive: true, force: true }),
  };
}

/** Every statement that begins, changes or ends a transaction is a step; the failing one is not carried out. */
function failingDatabase(fault: Fault): OpenDatabase {
  return (path) => {
    const db: SqliteDatabase = new Database(path, { timeout: 20 });
    return {
      get inTransaction() {
        return db.inTransaction;
      },
      exec: (sql) => {
        if (sql !== 'ROLLBACK' && failsNow(fault)) throw sqliteFull();
        return db.exec(sql);
      },
      prepare: (sql) => {
        const statement = db.prepare(sql);
        return {
          get: (...values) => statement.get(...values),
          all: (...values) => statement.all(...values),
          run: (...values) => {
            if (failsNow(fault)) throw sqliteFull();
            return statement.run(...values);
          },
        };
      },
      close: () => db.close(),
    };
  };
}

function sqliteFull(): Error {
  return Object.assign(new Error('database or disk is full'), { code: 'SQLITE_FULL' });
}
