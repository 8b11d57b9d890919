import {
  copyFileSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Keeping, KeepingError } from '@loamwright/daybook';
import Database from 'libsql';
import { afterEach, describe, expect, test } from 'vitest';
import type { SqliteDatabase } from './sqlite/connection.ts';
import { applicationId, migrate, schemaVersion } from './sqlite/schema.ts';
import { openSqliteKeeping } from './sqlite.ts';
import { bytesOf, chain } from './testing/entries.ts';
import { keepingContract } from './testing/keeping-contract.ts';
import { rejection } from './testing/kit.ts';
import { makeSqliteKit } from './testing/sqlite-kit.ts';

keepingContract('an SQLite file', makeSqliteKit);

const folders: string[] = [];
function newFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'loamwright-sqlite-file-'));
  folders.push(folder);
  return folder;
}
afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
});

function onFile(path: string, work: (db: SqliteDatabase) => void): void {
  const db = new Database(path, { timeout: 1000 });
  try {
    work(db);
  } finally {
    db.close();
  }
}

async function refusalOf(path: string): Promise<KeepingError> {
  const error = await openSqliteKeeping(path).catch((refused: unknown) => refused);
  if (!(error instanceof KeepingError)) throw new Error('the file was to be refused');
  return error;
}

describe('a file that is not ours to change', () => {
  test('of a newer version: refused, told so, and left byte for byte as it was', async () => {
    const path = join(newFolder(), 'newer.db');
    onFile(path, (db) =>
      db.exec(
        `PRAGMA application_id = ${applicationId}; PRAGMA user_version = ${schemaVersion + 1}; CREATE TABLE entry (x)`,
      ),
    );
    const before = readFileSync(path);
    const error = await refusalOf(path);
    expect(error.code).toBe('damaged');
    expect(error.message).toMatch(/newer version .* update the program/u);
    expect(readFileSync(path).equals(before)).toBe(true);
  });

  test('of a newer version that stands only in the log beside it: refused, and file and log left alone', async () => {
    const path = join(newFolder(), 'newer.db');
    const other = new Database(path);
    other.pragma('journal_mode = WAL');
    other.exec(
      `PRAGMA application_id = ${applicationId}; PRAGMA user_version = ${schemaVersion + 1}; CREATE TABLE entry (x)`,
    );
    const before = [readFileSync(path), readFileSync(`${path}-wal`)];
    expect(before[1]?.length).toBeGreaterThan(0);
    expect((await refusalOf(path)).message).toMatch(/newer version/u);
    expect([readFileSync(path), readFileSync(`${path}-wal`)]).toEqual(before);
    other.close();
  });

  test('of another program: refused and left as it was', async () => {
    const path = join(newFolder(), 'other.db');
    onFile(path, (db) => db.exec('CREATE TABLE stamps (album TEXT)'));
    const before = readFileSync(path);
    expect((await refusalOf(path)).message).toMatch(/no daybook/u);
    expect(readFileSync(path).equals(before)).toBe(true);
  });

  test.each([
    { title: 'no SQLite file', content: 'Dear diary, today the leeks went in.'.repeat(200) },
    { title: 'a cut-off SQLite file', content: `SQLite format 3\u0000${'\u0001'.repeat(300)}` },
  ])('$title: refused and left as it was', async ({ content }) => {
    const path = join(newFolder(), 'diary.txt');
    writeFileSync(path, content);
    expect((await refusalOf(path)).code).toBe('damaged');
    expect(readFileSync(path, 'utf8')).toBe(content);
  });

  test('a folder that is missing is named', async () => {
    expect((await refusalOf(join(newFolder(), 'none', 'daybook.db'))).message).toMatch(/folder is missing/u);
  });
});

describe('the file', () => {
  test('K7 commits wait for the disk: write-ahead log with synchronous=FULL', async () => {
    const path = join(newFolder(), 'daybook.db');
    const opened: SqliteDatabase[] = [];
    const keeping = await openSqliteKeeping(path, {
      openDatabase: (address) => {
        const db = new Database(address, { timeout: 20 });
        opened.push(db);
        return db;
      },
    });
    const db = opened.at(-1);
    expect(db?.prepare('PRAGMA journal_mode').get()).toMatchObject({ journal_mode: 'wal' });
    // 2 is FULL: SQLite manual, "PRAGMA synchronous".
    expect(db?.prepare('PRAGMA synchronous').get()).toMatchObject({ synchronous: 2 });
    await keeping.close();
  });

  test('after close the one file is a whole backup, attachments included', async () => {
    const folder = newFolder();
    const path = join(folder, 'daybook.db');
    const photo = bytesOf('a photo of the squash');
    const keeping = await openSqliteKeeping(path);
    await keeping.keep(chain(5));
    await keeping.attach(photo.hash, photo.bytes, 'image/jpeg');
    await keeping.close();
    copyFileSync(path, join(folder, 'backup.db'));
    const backup = await openSqliteKeeping(join(folder, 'backup.db'));
    expect((await backup.read()).entries).toEqual(chain(5));
    expect((await backup.attachment(photo.hash))?.bytes).toEqual(photo.bytes);
    await backup.close();
  });

  test('a fresh file is brought to this version, one of this version stays, and two may begin it at once', async () => {
    const path = join(newFolder(), 'daybook.db');
    onFile(path, (db) => {
      expect(migrate(db, path)).toEqual({ ok: true, from: 0, to: schemaVersion });
      expect(migrate(db, path)).toEqual({ ok: true, from: schemaVersion, to: schemaVersion });
    });
    const fresh = join(newFolder(), 'daybook.db');
    const both = await Promise.all([openSqliteKeeping(fresh), openSqliteKeeping(fresh)]);
    await both[0].keep(chain(1));
    expect((await both[1].read()).entries).toHaveLength(1);
    await Promise.all(both.map((keeping) => keeping.close()));
  });

  test('K6 K8 K25 a file that may not grow any more: full, before or after, and it goes on when there is room', async () => {
    const path = join(newFolder(), 'daybook.db');
    let db: SqliteDatabase | undefined;
    const keeping = await openSqliteKeeping(path, {
      openDatabase: (address) => {
        db = new Database(address, { timeout: 20 });
        return db;
      },
    });
    const limit = (pages: number): unknown => db?.prepare(`PRAGMA max_page_count = ${pages}`).get();
    // SQLite itself says "full" once the file has this many pages.
    limit(24);
    const all = chain(400);
    let acknowledged = 0;
    let outcome = 'resolved';
    while (outcome === 'resolved' && acknowledged < all.length) {
      outcome = await rejection(keeping.keep(all.slice(acknowledged, acknowledged + 5)));
      if (outcome === 'resolved') acknowledged += 5;
    }
    expect(outcome).toBe('full');
    expect(acknowledged).toBeGreaterThan(0);
    expect((await keeping.read()).entries).toHaveLength(acknowledged);
    limit(100_000);
    expect(await keeping.keep(all)).toEqual({ kept: all.length - acknowledged, there: acknowledged, conflicts: [] });
    expect(await keeping.check()).toMatchObject({ counted: all.length, changed: [], unreadable: [] });
    await keeping.close();
  });

  test('K6 a power cut at any byte of a commit: reopened, the batch is there whole or not at all', async () => {
    const folder = newFolder();
    const path = join(folder, 'daybook.db');
    const keeping = await openSqliteKeeping(path);
    await keeping.keep(chain(3));
    const start_bytes = statSync(`${path}-wal`).size;
    await keeping.keep(chain(6));
    const log = readFileSync(`${path}-wal`);
    const file = readFileSync(path);
    expect(log.length).toBeGreaterThan(start_bytes);

    const reopened = async (tail: Buffer): Promise<number> => {
      const cut = join(folder, 'cut.db');
      for (const name of readdirSync(folder)) if (name.startsWith('cut.db')) rmSync(join(folder, name));
      writeFileSync(cut, file);
      writeFileSync(`${cut}-wal`, tail);
      const after: Keeping = await openSqliteKeeping(cut);
      const { entries } = await after.read();
      expect(entries).toEqual(chain(entries.length));
      expect(await after.check()).toMatchObject({ counted: entries.length, changed: [], gaps: [], unreadable: [] });
      await after.close();
      return entries.length;
    };
    const seen = new Map<number, number>();
    for (let length = start_bytes; length <= log.length; length += 331) {
      const zeros = Buffer.alloc(log.length);
      log.copy(zeros, 0, 0, length);
      for (const tail of [log.subarray(0, length), zeros]) {
        const count = await reopened(tail);
        seen.set(count, (seen.get(count) ?? 0) + 1);
      }
    }
    expect(await reopened(log)).toBe(6);
    expect([...seen.keys()]).toEqual([3]);
    expect(seen.get(3)).toBeGreaterThan(40);
    await keeping.close();
  });

  test('closing leaves no log behind that a backup would miss', async () => {
    const path = join(newFolder(), 'daybook.db');
    const keeping = await openSqliteKeeping(path);
    await keeping.keep(chain(2));
    await keeping.close();
    expect(existsSync(`${path}-wal`) ? statSync(`${path}-wal`).size : 0).toBe(0);
  });
});
