import { existsSync, statSync } from 'node:fs';
import { dirname } from 'node:path';
import { pathToFileURL } from 'node:url';
import {
  type AttachmentNote,
  type DeviceTip,
  type Entry,
  type Head,
  type Keeping,
  KeepingError,
  type Tip,
} from '@loamwright/daybook';
import Database from 'libsql';
import { syncFolder } from './node/folder.ts';
import { planBatch } from './shared/batch.ts';
import { guardAttachment } from './shared/guards.ts';
import { textOf } from './shared/record.ts';
import { reportOf } from './shared/report.ts';
import { joinStretches } from './shared/stretches.ts';
import { composed, guardFresh, passingComposeErrors } from './shared/write.ts';
import {
  type Connection,
  type ConnectionOptions,
  createConnection,
  type OpenDatabase,
  openFile,
  patiently,
  type SqliteDatabase,
} from './sqlite/connection.ts';
import { type AttachmentRow, attachmentIn, entriesIn, findingsOf, type RecordRow, readPage } from './sqlite/reading.ts';
import { migrate, readMark, refusal } from './sqlite/schema.ts';
import { statementsOn } from './sqlite/statements.ts';

export interface SqliteOptions {
  /** How long a call waits for another process before it rejects with `busy`. */
  readonly wait_ms?: number | undefined;
  /** Another SQLite driver with the same interface, as the tests use to let storage fail. */
  readonly openDatabase?: OpenDatabase | undefined;
}

const usualWait_ms = 10_000;
/** SQLite's own wait, during which the process stands still: short. Longer waits go through the connection. */
const standstill_ms = 20;
/**
 * Opens the daybook in an SQLite file, or begins one. Everything is in this one file, attachments
 * included; after `close` a copy of it is a whole backup.
 *
 * WAL with `synchronous=FULL`: a commit has reached the disk before a promise resolves.
 * @throws KeepingError `damaged` for a file of a newer version or of another program (which is left
 * as it is), or one that is no SQLite file; `busy`
 */
export async function openSqliteKeeping(path: string, options: SqliteOptions = {}): Promise<Keeping> {
  const settings: ConnectionOptions = {
    path,
    wait_ms: options.wait_ms ?? usualWait_ms,
    openDatabase: options.openDatabase ?? ((address) => new Database(address, { timeout: standstill_ms })),
  };
  return keepingOn(await connect(settings), settings);
}

async function connect(settings: ConnectionOptions): Promise<Connection> {
  const isThere = existsSync(settings.path) && statSync(settings.path).size > 0;
  // Looked at through a connection that can't write: a file that isn't ours is never touched.
  if (isThere) await patiently(settings, () => lookAt(settings, (db) => guardMark(db, settings.path)));
  const db = openFile(settings);
  try {
    await patiently(settings, () => prepareFile(db, settings.path));
  } catch (error) {
    db.close();
    throw error;
  }
  if (!isThere) syncFolder(dirname(settings.path));
  return createConnection(db, settings);
}

/** Lets `look` see the file through a connection of its own that can't write. */
function lookAt<Result>(settings: ConnectionOptions, look: (db: SqliteDatabase) => Result): Result {
  const db = openFile(settings, `${pathToFileURL(settings.path).href}?mode=ro`);
  try {
    return look(db);
  } finally {
    db.close();
  }
}

function guardMark(db: SqliteDatabase, path: string): void {
  const error = refusal(readMark(db), path);
  if (error !== undefined) throw error;
}

function prepareFile(db: SqliteDatabase, path: string): void {
  const { journal_mode } = db.prepare('PRAGMA journal_mode = WAL').get() as { readonly journal_mode: string };
  if (journal_mode !== 'wal')
    throw new KeepingError(
      'damaged',
      `${path} lies where no write-ahead log can be kept: move the data to a folder of this machine`,
    );
  db.exec('PRAGMA synchronous = FULL');
  const migrated = migrate(db, path);
  if (!migrated.ok) throw migrated.error;
}

function keepingOn(connection: Connection, settings: ConnectionOptions): Keeping {
  const sql = statementsOn(connection);
  const { exclusive, reading } = connection;

  const holding = (): string | null => (sql.holding.get() as { readonly id: string } | undefined)?.id ?? null;
  const sumsOf = (id: string): readonly string[] =>
    (sql.sums.all(id) as { readonly sum: string }[]).map(({ sum }) => sum);
  const tipOf = (device: string): Tip | null => {
    const row = sql.tip.get(device) as Tip | undefined;
    return row === undefined ? null : { n: row.n, sum: row.sum };
  };
  const add = (entries: readonly Entry[], owner: string | null): void => {
    if (owner !== null) sql.settle.run(owner);
    for (const entry of entries) sql.add.run(entry.id, entry.sum, entry.device, entry.n, entry.prev, textOf(entry));
  };

  return {
    keep: (entries) =>
      exclusive(() => {
        const plan = planBatch(entries, { holding: holding(), sumsOf });
        add(plan.fresh, plan.holding);
        return plan.report;
      }),

    write: (device, compose) =>
      passingComposeErrors(() =>
        exclusive(() => {
          const ground = { device, tip: tipOf(device), holding: holding() };
          const entries = composed(ground, compose);
          guardFresh(entries, (id) => sumsOf(id).length > 0);
          add(entries, ground.holding ?? entries[0]?.holding ?? null);
          return entries;
        }),
      ),

    read: ({ after = 0, limit = Number.MAX_SAFE_INTEGER } = {}) => reading(() => readPage(sql.page, after, limit)),

    pick: (stretches) =>
      reading(() =>
        joinStretches(stretches).flatMap(({ device, from, to }) =>
          (sql.pick.all(device, from, to) as RecordRow[]).flatMap(entriesIn),
        ),
      ),

    tips: () => reading(() => sql.tips.all() as DeviceTip[]),

    heads: () => reading(() => sql.heads.all() as Head[]),

    holding: () => reading(holding),

    attach: async (hash, bytes, mediaType) => {
      connection.guardOpen();
      guardAttachment(hash, bytes);
      await exclusive(() => sql.attach.run(hash, mediaType, bytes.length, bytes));
    },

    attachment: (hash) =>
      reading(() => {
        const row = sql.attachment.get(hash) as AttachmentRow | undefined;
        return row === undefined ? null : attachmentIn(row);
      }),

    attachments: () => reading(() => sql.attachments.all() as AttachmentNote[]),

    detach: async (hash) => {
      await exclusive(() => sql.detach.run(hash));
    },

    check: async () => {
      connection.guardOpen();
      // Through a connection of its own: the keeping's may have pages in memory, and what is checked is the file.
      return patiently(settings, () => lookAt(settings, (db) => reportOf(findingsOf(db))));
    },

    close: async () => connection.close(),
  };
}
