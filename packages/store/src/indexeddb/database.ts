import { type AttachmentNote, type Head, KeepingError, type Position } from '@loamwright/daybook';
import { type DBSchema, type IDBPDatabase, type IDBPTransaction, openDB } from 'idb';
import { closedError } from '../shared/guards.ts';

/** Where an entry stands in its chain and in the order of arrival. Apart from its text, so that an offer reads little. */
export interface StoredHead extends Head {
  readonly position: Position;
}

/** The canonical JSON of an entry: the truth, of which the head is the index. */
export interface StoredText {
  readonly position: Position;
  readonly json: string;
}

interface Layout extends DBSchema {
  heads: { key: number; value: StoredHead; indexes: { id: string; chain: [string, number, string] } };
  texts: { key: number; value: StoredText };
  notes: { key: string; value: AttachmentNote };
  bytes: { key: string; value: Uint8Array };
  facts: { key: string; value: string };
}

type StoreName = 'heads' | 'texts' | 'notes' | 'bytes' | 'facts';
const everyStore: readonly StoreName[] = ['heads', 'texts', 'notes', 'bytes', 'facts'];

export type Transaction<Mode extends 'readonly' | 'readwrite'> = IDBPTransaction<Layout, StoreName[], Mode>;

/** Version of the database that this version of the program writes. */
export const databaseVersion: number = 1;

/** A database whose transactions wait their turn and speak in KeepingErrors. */
export interface Database {
  /** Runs `work` in one exclusive transaction: all of it is durable when this resolves, or nothing has changed. */
  exclusive<Result>(work: (tx: Transaction<'readwrite'>) => Promise<Result>): Promise<Result>;
  /** Runs `work`, which only reads, in one transaction. */
  reading<Result>(work: (tx: Transaction<'readonly'>) => Promise<Result>): Promise<Result>;
  /** @throws KeepingError `closed` */
  guardOpen(): void;
  close(): void;
}

export interface DatabaseOptions {
  readonly name: string;
  readonly wait_ms: number;
}

/** Opens the database, or begins it. */
export async function openDatabase({ name, wait_ms }: DatabaseOptions): Promise<Database> {
  let closed = false;
  const close = (): void => {
    closed = true;
    db.close();
  };
  const guardOpen = (): void => {
    if (closed) throw closedError();
  };
  const db = await inTime(
    openDB<Layout>(name, databaseVersion, {
      upgrade,
      // A newer version of the app waits in another tab: it may have the daybook.
      blocking: () => close(),
      // The browser has ended the connection.
      terminated: () => {
        closed = true;
      },
    }),
    wait_ms,
  );

  const transact = async <Mode extends 'readonly' | 'readwrite', Result>(
    mode: Mode,
    work: (tx: Transaction<Mode>) => Promise<Result>,
  ): Promise<Result> => {
    guardOpen();
    let tx: Transaction<Mode> | undefined;
    let late = false;
    try {
      tx = db.transaction([...everyStore], mode, { durability: 'strict' });
      const begun = tx;
      // Heard below; without this an abort would also count as an unheard rejection.
      begun.done.catch(() => undefined);
      const timer = setTimeout(() => {
        late = true;
        begun.abort();
      }, wait_ms);
      // The first answer comes when the transaction has its turn.
      await begun
        .objectStore('facts')
        .count()
        .finally(() => clearTimeout(timer));
      const result = await work(begun);
      await begun.done;
      return result;
    } catch (error) {
      throw late ? busyError() : await failed(tx, error);
    }
  };

  return {
    exclusive: (work) => transact('readwrite', work),
    reading: (work) => transact('readonly', work),
    guardOpen,
    close,
  };
}

/** Steps from each version to the next; a step that has been released is never edited. */
function upgrade(db: IDBPDatabase<Layout>, from: number): void {
  if (from < 1) {
    const heads = db.createObjectStore('heads', { keyPath: 'position' });
    heads.createIndex('id', 'id');
    heads.createIndex('chain', ['device', 'n', 'sum'], { unique: false });
    db.createObjectStore('texts', { keyPath: 'position' });
    db.createObjectStore('notes', { keyPath: 'hash' });
    db.createObjectStore('bytes');
    db.createObjectStore('facts');
  }
}

/** Waits for the opening; one that comes too late is closed again. */
async function inTime(opening: Promise<IDBPDatabase<Layout>>, wait_ms: number): Promise<IDBPDatabase<Layout>> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const tooLate = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(busyError()), wait_ms);
  });
  try {
    return await Promise.race([opening, tooLate]);
  } catch (error) {
    opening.then(
      (db) => db.close(),
      () => undefined,
    );
    throw keepingError(error);
  } finally {
    clearTimeout(timer);
  }
}

/** Undoes a transaction that failed, waits until it is undone, and says why it failed. */
async function failed(tx: Transaction<'readonly' | 'readwrite'> | undefined, error: unknown): Promise<unknown> {
  if (tx === undefined) return keepingError(error);
  try {
    tx.abort();
  } catch {
    // It was undone already.
  }
  await tx.done.catch(() => undefined);
  // The browser's own reason, such as a full disk, stands in the transaction; the request only says "aborted".
  return keepingError(isAbort(error) ? (tx.error ?? error) : error);
}

function isAbort(error: unknown): boolean {
  return error instanceof DOMException && error.name === 'AbortError';
}

function busyError(): KeepingError {
  return new KeepingError('busy', 'another tab holds the daybook: close the other tabs, or try again in a moment');
}

/** Puts the browser's own errors into the port's codes; any other error stays what it is. */
function keepingError(error: unknown): unknown {
  if (!(error instanceof DOMException)) return error;
  switch (error.name) {
    case 'QuotaExceededError':
      return new KeepingError(
        'full',
        'there is no room left for the daybook on this device: nothing was kept; make room and try again',
        {
          cause: error,
        },
      );
    case 'VersionError':
      return new KeepingError(
        'damaged',
        'the daybook on this device was written by a newer version of the app: it was left as it is; reload to get the newer version',
        { cause: error },
      );
    case 'InvalidStateError':
      return closedError();
    default:
      return new KeepingError(
        'damaged',
        `this browser can't keep or read the daybook (${error.name}): private windows often can't; else bring it from another device`,
        { cause: error },
      );
  }
}
