import { type Attachment, type Entry, type Head, type Page, type Position, sha256Hex } from '@loamwright/daybook';
import { readRecord } from '../shared/record.ts';
import { type Findings, misfiled } from '../shared/report.ts';
import type { SqliteDatabase, SqliteStatement } from './connection.ts';

/** One row of the table of entries. */
export interface RecordRow {
  readonly position: Position;
  readonly json: string;
}

/** One row of the table of attachments. */
export interface AttachmentRow {
  readonly hash: string;
  readonly mediaType: string;
  readonly bytes: Uint8Array | ArrayBuffer;
}

/** Records read at once: bounds the memory that a long read takes beside its entries. */
const rowsAtOnce = 1000;

/** Entries in order of arrival; a record that can't be read neither stops the others nor shortens the page (rule K23). */
export function readPage(page: SqliteStatement, after: Position, limit: number): Page {
  const entries: Entry[] = [];
  let position = after;
  let looked = after;
  while (entries.length < limit) {
    const wanted = Math.min(limit - entries.length, rowsAtOnce);
    const rows = page.all(looked, wanted) as RecordRow[];
    for (const row of rows) {
      looked = row.position;
      const record = readRecord(row.json);
      if (!record.ok) continue;
      entries.push(record.entry);
      position = row.position;
    }
    if (rows.length < wanted) break;
  }
  return { entries, position };
}

/** The entry of a row; none where the record can't be read. */
export function entriesIn({ json }: RecordRow): readonly Entry[] {
  const record = readRecord(json);
  return record.ok ? [record.entry] : [];
}

export function attachmentIn(row: AttachmentRow): Attachment {
  return { hash: row.hash, mediaType: row.mediaType, bytes: bytesOf(row) };
}

function bytesOf({ bytes }: AttachmentRow): Uint8Array {
  return new Uint8Array(bytes);
}

type IndexedRow = RecordRow & Head;

/** Reads everything in the file, and what SQLite itself finds wrong with it. */
export function findingsOf(db: SqliteDatabase): Findings {
  db.exec('BEGIN');
  try {
    const rows = db
      .prepare('SELECT position, id, sum, device, n, prev, json FROM entry ORDER BY position')
      .all() as IndexedRow[];
    const records = rows.map(({ position, json, ...head }) => ({ position, record: readRecord(json), head }));
    const faults = [...faultsOfFile(db), ...records.flatMap(misfiled)];
    return { records, faults, attachments: hashedAttachments(db) };
  } finally {
    db.exec('ROLLBACK');
  }
}

/** Faults of the file itself are told under position 0, where no entry is. */
function faultsOfFile(db: SqliteDatabase): Findings['faults'] {
  const rows = db.prepare('SELECT integrity_check AS why FROM pragma_integrity_check').all() as {
    readonly why: string;
  }[];
  return rows.filter(({ why }) => why !== 'ok').map(({ why }) => ({ position: 0, why: `the file: ${why}` }));
}

function hashedAttachments(db: SqliteDatabase): Findings['attachments'] {
  const one = db.prepare('SELECT hash, media_type AS mediaType, bytes FROM attachment WHERE hash = ?');
  const hashes = db.prepare('SELECT hash FROM attachment ORDER BY hash').all() as { readonly hash: string }[];
  // One at a time: together they may be larger than memory.
  return hashes.map(({ hash }) => ({ hash, recomputed: sha256Hex(bytesOf(one.get(hash) as AttachmentRow)) }));
}
