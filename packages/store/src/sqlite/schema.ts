import { KeepingError } from '@loamwright/daybook';
import type { SqliteDatabase } from './connection.ts';

/** "Loam" in ASCII: tells a daybook from any other SQLite file (`PRAGMA application_id`). */
export const applicationId: number = 0x4c6f616d;

/**
 * One step from each version to the next; the last version is the number of steps. A step that has
 * been released is never edited. `json` is the truth, the columns beside it are its index.
 */
const steps: readonly string[] = [
  `
  CREATE TABLE entry (
    position INTEGER PRIMARY KEY AUTOINCREMENT,
    id TEXT NOT NULL,
    sum TEXT NOT NULL,
    device TEXT NOT NULL,
    n INTEGER NOT NULL,
    prev TEXT,
    json TEXT NOT NULL
  ) STRICT;
  CREATE UNIQUE INDEX entry_by_name ON entry (id, sum);
  CREATE INDEX entry_by_chain ON entry (device, n, sum, id, prev);
  CREATE TABLE attachment (
    hash TEXT PRIMARY KEY,
    media_type TEXT NOT NULL,
    size_bytes INTEGER NOT NULL,
    bytes BLOB NOT NULL
  ) STRICT;
  CREATE TABLE holding (
    only INTEGER PRIMARY KEY CHECK (only = 1),
    id TEXT NOT NULL
  ) STRICT;
  `,
];

/** Version of the file that this version of the program writes (`PRAGMA user_version`). */
export const schemaVersion: number = steps.length;

/** What became of a file's version. */
export type Migrated =
  | { readonly ok: true; readonly from: number; readonly to: number }
  | { readonly ok: false; readonly error: KeepingError };

/** What a file says of itself. */
export interface FileMark {
  readonly application: number;
  readonly version: number;
  readonly tables: number;
}

export function readMark(db: SqliteDatabase): FileMark {
  return {
    application: numberOf(db, 'SELECT application_id AS value FROM pragma_application_id'),
    version: numberOf(db, 'SELECT user_version AS value FROM pragma_user_version'),
    tables: numberOf(db, "SELECT count(*) AS value FROM sqlite_schema WHERE type = 'table'"),
  };
}

function numberOf(db: SqliteDatabase, sql: string): number {
  const row = db.prepare(sql).get() as { readonly value: number };
  return row.value;
}

/** Why a file must be left alone; undefined where it is a daybook of this version or an older one, or empty. */
export function refusal(mark: FileMark, path: string): KeepingError | undefined {
  const isEmpty = mark.application === 0 && mark.version === 0 && mark.tables === 0;
  if (isEmpty) return undefined;
  if (mark.application !== applicationId)
    return new KeepingError('damaged', `${path} is an SQLite file, but no daybook: it was left as it is`);
  if (mark.version > schemaVersion)
    return new KeepingError(
      'damaged',
      `the daybook ${path} was written by a newer version of the program (file version ${mark.version}, this program knows ${schemaVersion}): it was left as it is; update the program`,
    );
  return undefined;
}

/** Brings a file to this version's form, in one transaction: afterwards it is wholly the new one, or untouched. */
export function migrate(db: SqliteDatabase, path: string): Migrated {
  db.exec('BEGIN IMMEDIATE');
  try {
    const mark = readMark(db);
    const error = refusal(mark, path);
    if (error === undefined && mark.version < schemaVersion) {
      for (const step of steps.slice(mark.version)) db.exec(step);
      db.exec(`PRAGMA application_id = ${applicationId}; PRAGMA user_version = ${schemaVersion}`);
    }
    db.exec('COMMIT');
    return error === undefined ? { ok: true, from: mark.version, to: schemaVersion } : { ok: false, error };
  } catch (error) {
    if (db.inTransaction) db.exec('ROLLBACK');
    throw error;
  }
}
