import {
  closeSync,
  constants,
  fdatasyncSync,
  ftruncateSync,
  mkdirSync,
  openSync,
  readdirSync,
  readSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from 'node:fs';
import { KeepingError } from '@loamwright/daybook';
import { syncFolder } from '../node/folder.ts';

/**
 * The few things the JSON-lines keeping does to a disk. Each is one step that may fail by itself:
 * the tests let every one of them fail, or the power go, in turn.
 */
export interface Disk {
  /** Size of a file in bytes; null when there is none. */
  size_bytes(path: string): number | null;
  /** Bytes `from` to `to` (not included) of a file; fewer where it ends before. */
  read(path: string, from: number, to: number): Uint8Array;
  /** Writes all the bytes at `from`; begins the file where there is none. Not durable before `sync`. */
  write(path: string, from: number, bytes: Uint8Array): void;
  /** Resolves only when the file's content has reached the disk. */
  sync(path: string): void;
  truncate(path: string, size_bytes: number): void;
  rename(from: string, to: string): void;
  /** Removes a file; nothing happens where there is none. */
  remove(path: string): void;
  /** Makes a folder with those above it; nothing happens where there is one. */
  makeFolder(path: string): void;
  names(folder: string): readonly string[];
  /** Makes new, renamed and removed names in a folder durable. */
  syncFolder(folder: string): void;
}

/** The machine's own disk. */
export const nodeDisk: Disk = {
  size_bytes: (path) => statSync(path, { throwIfNoEntry: false })?.size ?? null,
  read: (path, from, to) => withFile(path, constants.O_RDONLY, (handle) => readFully(handle, from, to)),
  write: (path, from, bytes) =>
    withFile(path, constants.O_WRONLY | constants.O_CREAT, (handle) => {
      for (let done = 0; done < bytes.length; )
        done += writeSync(handle, bytes, done, bytes.length - done, from + done);
    }),
  sync: (path) => withFile(path, constants.O_RDWR, fdatasyncSync),
  truncate: (path, size_bytes) => withFile(path, constants.O_RDWR, (handle) => ftruncateSync(handle, size_bytes)),
  rename: renameSync,
  remove: (path) => rmSync(path, { force: true }),
  makeFolder: (path) => {
    mkdirSync(path, { recursive: true });
  },
  names: (folder) => readdirSync(folder),
  syncFolder,
};

function withFile<Result>(path: string, flags: number, work: (handle: number) => Result): Result {
  const handle = openSync(path, flags, 0o600);
  try {
    return work(handle);
  } finally {
    closeSync(handle);
  }
}

function readFully(handle: number, from: number, to: number): Uint8Array {
  const bytes = new Uint8Array(to - from);
  let done = 0;
  while (done < bytes.length) {
    const count = readSync(handle, bytes, done, bytes.length - done, from + done);
    if (count === 0) break;
    done += count;
  }
  return bytes.subarray(0, done);
}

const fullCodes: ReadonlySet<string> = new Set(['ENOSPC', 'EDQUOT', 'EFBIG']);

/** Puts the disk's own errors into the port's codes; any other error stays what it is. */
export function diskError(error: unknown, path: string): unknown {
  if (!(error instanceof Error) || !('syscall' in error) || !('code' in error) || typeof error.code !== 'string')
    return error;
  if (fullCodes.has(error.code))
    return new KeepingError(
      'full',
      `there is no room left for the daybook ${path}: nothing was kept; make room and try again`,
      {
        cause: error,
      },
    );
  return new KeepingError(
    'damaged',
    `the daybook ${path} can't be read or written (${error.code}): look to its disk and its permissions`,
    {
      cause: error,
    },
  );
}
