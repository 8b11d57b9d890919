import { existsSync } from 'node:fs';
import { setTimeout as sleep } from 'node:timers/promises';
import { KeepingError } from '@loamwright/daybook';
import { closedError } from '../shared/guards.ts';

/** A prepared statement, as far as the keeping uses it. */
export interface SqliteStatement {
  run(...values: readonly unknown[]): unknown;
  get(...values: readonly unknown[]): unknown;
  all(...values: readonly unknown[]): unknown[];
}

/** A synchronous SQLite connection, as far as the keeping uses it. */
export interface SqliteDatabase {
  readonly inTransaction: boolean;
  exec(sql: string): unknown;
  prepare(sql: string): SqliteStatement;
  close(): unknown;
}

/** Opens a connection to a file path or a `file:` address. */
export type OpenDatabase = (path: string) => SqliteDatabase;

/** Where a keeping's connections come from, and how long they wait for one another. */
export interface ConnectionOptions {
  readonly path: string;
  readonly openDatabase: OpenDatabase;
  readonly wait_ms: number;
}

/** A connection that waits its turn and speaks in KeepingErrors. */
export interface Connection {
  /** Runs `work` in one exclusive transaction: all of it is durable when this resolves, or nothing has changed. */
  exclusive<Result>(work: () => Result): Promise<Result>;
  /** Runs `work`, which only reads, in one transaction: all its statements see the same state. */
  reading<Result>(work: () => Result): Promise<Result>;
  prepare(sql: string): SqliteStatement;
  /** @throws KeepingError `closed` */
  guardOpen(): void;
  close(): void;
}

const shortestPause_ms = 2;
const longestPause_ms = 25;

/** Wraps an open database. Between tries the process stays free for other work. */
export function createConnection(db: SqliteDatabase, options: ConnectionOptions): Connection {
  let closed = false;
  const guardOpen = (): void => {
    if (closed) throw closedError();
  };
  const transact = <Result>(begin: string, work: () => Result): Promise<Result> =>
    patiently(options, () => {
      guardOpen();
      return once(db, begin, work);
    });

  return {
    exclusive: (work) => transact('BEGIN IMMEDIATE', work),
    reading: (work) => transact('BEGIN', work),
    prepare: (sql) => db.prepare(sql),
    guardOpen,
    close: () => {
      if (closed) return;
      closed = true;
      shut(db);
    },
  };
}

/** Tries until no other process is in the way, or the time is up. */
export async function patiently<Result>({ path, wait_ms }: ConnectionOptions, work: () => Result): Promise<Result> {
  const end_ms = Date.now() + wait_ms;
  for (;;) {
    try {
      return work();
    } catch (error) {
      if (!isBusy(error) || Date.now() >= end_ms) throw keepingError(error, path);
    }
    await sleep(shortestPause_ms + Math.random() * (longestPause_ms - shortestPause_ms));
  }
}

function once<Result>(db: SqliteDatabase, begin: string, work: () => Result): Result {
  db.exec(begin);
  try {
    const result = work();
    db.exec('COMMIT');
    return result;
  } catch (error) {
    // A full disk or a failed write may have rolled it back already.
    if (db.inTransaction) db.exec('ROLLBACK');
    throw error;
  }
}

/** Brings everything into the one file, so that a copy of it is a whole backup; then closes. */
function shut(db: SqliteDatabase): void {
  try {
    db.prepare('PRAGMA wal_checkpoint(TRUNCATE)').get();
  } catch (error) {
    // Everything is durable in the log beside the file: it is only not yet moved over.
    if (codeOf(error) === undefined) throw error;
  } finally {
    db.close();
  }
}

/** Opens a file, or says why it can't be. */
export function openFile(options: ConnectionOptions, address: string = options.path): SqliteDatabase {
  try {
    return options.openDatabase(address);
  } catch (error) {
    const why = existsSync(options.path)
      ? 'it is no file that can be read and written'
      : 'its folder is missing or closed';
    throw new KeepingError('damaged', `the daybook ${options.path} can't be opened: ${why}`, { cause: error });
  }
}

function codeOf(error: unknown): string | undefined {
  if (!(error instanceof Error) || !('code' in error) || typeof error.code !== 'string') return undefined;
  return error.code.startsWith('SQLITE_') ? error.code : undefined;
}

function isBusy(error: unknown): boolean {
  const code = codeOf(error);
  return code !== undefined && /^SQLITE_(?:BUSY|LOCKED)/u.test(code);
}

/** Puts SQLite's own errors into the port's codes; any other error stays what it is. */
function keepingError(error: unknown, path: string): unknown {
  const code = codeOf(error);
  if (code === undefined) return error;
  if (isBusy(error))
    return new KeepingError('busy', `another process holds the daybook ${path}: try again in a moment`, {
      cause: error,
    });
  if (code === 'SQLITE_FULL')
    return new KeepingError(
      'full',
      `there is no room left for the daybook ${path}: nothing was kept; make room and try again`,
      {
        cause: error,
      },
    );
  return new KeepingError(
    'damaged',
    `the daybook ${path} can't be used (${code}): restore it from a backup, or bring it from another device`,
    {
      cause: error,
    },
  );
}
