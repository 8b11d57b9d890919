import { dirname, join } from 'node:path';
import type { Entry } from '@loamwright/daybook';
import { type Contents, createContents, type Place } from './contents.ts';
import { type Disk, diskError } from './disk.ts';
import { guardHeader, headerLine, headerReach_bytes, type Line, recordIn, splitLines } from './lines.ts';
import { type Lock, takeLock } from './lock.ts';

/** The end of a file that a crash had left torn. It was never acknowledged; it is set aside, not thrown away. */
export interface TornTail {
  /** File that it was added to. */
  readonly setAside: string;
  readonly size_bytes: number;
}

/** The append-only file of a daybook, and what is known to stand in it. */
export interface Journal {
  /** What is in the file now, also what other processes have added. */
  current(): Promise<Contents>;
  /** Runs `work` while no other process writes. */
  exclusive<Result>(work: (writing: Writing) => Result): Promise<Result>;
  /** The entries at these places, in their order; undefined where a record can no longer be read. */
  entriesAt(places: readonly Place[]): readonly (Entry | undefined)[];
  /** Reads the file again from its beginning, whatever is known of it. */
  reread(): readonly Line[];
  readonly torn: readonly TornTail[];
}

/** The right to append. */
export interface Writing {
  readonly contents: Contents;
  /** Appends one line: durable when this returns; when it throws, the file is as it was. */
  append(text: string): void;
}

export interface JournalOptions {
  readonly folder: string;
  readonly disk: Disk;
  readonly wait_ms: number;
}

/** Bytes read at once where many entries are asked for. */
const readAtOnce_bytes = 1024 * 1024;

const encoder = new TextEncoder();

/** Opens the file of a folder, or begins it; a torn tail is set aside. */
export async function openJournal({ folder, disk, wait_ms }: JournalOptions): Promise<Journal> {
  const path = join(folder, 'daybook.jsonl');
  const torn: TornTail[] = [];
  let contents = createContents();
  /** Up to here the file is known, sound and durable. */
  let known_bytes = 0;

  /** Only under the lock: then no one is writing, and an unfinished last line is a torn one. */
  const catchUp = (): void => {
    const size_bytes = disk.size_bytes(path) ?? 0;
    if (size_bytes === known_bytes) return;
    if (size_bytes < known_bytes) {
      // Another hand has cut the file: what is known of it no longer holds.
      contents = createContents();
      known_bytes = 0;
    }
    const bytes = disk.read(path, known_bytes, size_bytes);
    const { lines, soundEnd } = splitLines(bytes, known_bytes);
    if (soundEnd < size_bytes) {
      torn.push(setAside(disk, path, bytes.subarray(soundEnd - known_bytes)));
      disk.truncate(path, soundEnd);
      disk.sync(path);
    }
    contents.absorb(lines);
    known_bytes = soundEnd;
  };

  const append = (lock: Lock, text: string): void => {
    const bytes = encoder.encode(text);
    try {
      lock.guardLease();
      disk.write(path, known_bytes, bytes);
      disk.sync(path);
    } catch (error) {
      undo(disk, path, known_bytes);
      throw error;
    }
    contents.absorb(splitLines(bytes, known_bytes).lines);
    known_bytes += bytes.length;
  };

  const exclusive = async <Result>(work: (writing: Writing) => Result): Promise<Result> => {
    try {
      const lock = await takeLock(join(folder, 'lock'), wait_ms);
      try {
        catchUp();
        return work({ contents, append: (text) => append(lock, `${text}\n`) });
      } finally {
        lock.release();
      }
    } catch (error) {
      throw diskError(error, path);
    }
  };

  const size_bytes = disk.size_bytes(path) ?? 0;
  if (size_bytes > 0) guardHeader(disk.read(path, 0, Math.min(size_bytes, headerReach_bytes)), path);
  await exclusive((writing) => {
    if (known_bytes > 0) return;
    writing.append(headerLine.trimEnd());
    disk.syncFolder(folder);
    disk.syncFolder(dirname(folder));
  });

  return {
    torn,
    exclusive,
    current: async () => {
      if (disk.size_bytes(path) !== known_bytes) await exclusive(() => undefined);
      return contents;
    },
    entriesAt: (places) => entriesAt(disk, path, places),
    reread: () => splitLines(disk.read(path, 0, known_bytes), 0).lines,
  };
}

/** Adds the torn tail to the file beside the daybook; a crash between this and the cut only sets it aside twice. */
function setAside(disk: Disk, path: string, tail: Uint8Array): TornTail {
  const aside = `${path}.torn`;
  const at = disk.size_bytes(aside) ?? 0;
  const line = new Uint8Array(tail.length + 1);
  line.set(tail);
  line[tail.length] = 0x0a;
  disk.write(aside, at, line);
  disk.sync(aside);
  disk.syncFolder(dirname(path));
  return { setAside: aside, size_bytes: tail.length };
}

/** Takes back a failed append, so that nothing of it is ever read. */
function undo(disk: Disk, path: string, size_bytes: number): void {
  try {
    if ((disk.size_bytes(path) ?? 0) <= size_bytes) return;
    disk.truncate(path, size_bytes);
    disk.sync(path);
  } catch {
    // The disk refuses this too. What was begun has no line feed or is whole: the next to look decides, as after a crash.
  }
}

function entriesAt(disk: Disk, path: string, places: readonly Place[]): readonly (Entry | undefined)[] {
  const byPosition = [...places].sort((a, b) => a.position - b.position);
  const found = new Map<number, Entry>();
  for (const group of neighbours(byPosition)) {
    const start = group[0]?.position ?? 0;
    const last = group.at(-1);
    const bytes = disk.read(path, start, last === undefined ? start : last.position + last.length_bytes);
    for (const { position, length_bytes } of group) {
      const record = recordIn(bytes.subarray(position - start, position - start + length_bytes));
      if (record.ok) found.set(position, record.entry);
    }
  }
  return places.map(({ position }) => found.get(position));
}

/** Groups places that lie near enough to be read at once. */
function* neighbours(places: readonly Place[]): Iterable<readonly Place[]> {
  let group: Place[] = [];
  for (const place of places) {
    const start = group[0]?.position;
    if (start !== undefined && place.position - start > readAtOnce_bytes) {
      yield group;
      group = [];
    }
    group.push(place);
  }
  if (group.length > 0) yield group;
}
