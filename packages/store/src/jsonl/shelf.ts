import { join } from 'node:path';
import type { Contents } from './contents.ts';
import type { Disk } from './disk.ts';

const unfinishedEnd = '.unfinished';

/** The folder with the bytes of attachments, one file each, named by its hash. */
export interface Shelf {
  has(hash: string): boolean;
  bytes(hash: string): Uint8Array | null;
  put(hash: string, bytes: Uint8Array): void;
  /** Takes the bytes away. Where the disk refuses, `tidy` does it when the daybook is next opened. */
  remove(hash: string): void;
  /** Finishes what a crash broke off: unfinished files, and bytes that were let go. */
  tidy(contents: Contents): void;
}

export function createShelf(disk: Disk, folder: string): Shelf {
  const pathOf = (hash: string): string => join(folder, hash);
  return {
    has: (hash) => disk.size_bytes(pathOf(hash)) !== null,
    bytes: (hash) => {
      const size_bytes = disk.size_bytes(pathOf(hash));
      return size_bytes === null ? null : disk.read(pathOf(hash), 0, size_bytes);
    },
    put: (hash, bytes) => {
      const unfinished = `${pathOf(hash)}${unfinishedEnd}`;
      try {
        // An older one may be longer, and would leave its end behind the new bytes.
        disk.remove(unfinished);
        disk.write(unfinished, 0, bytes);
        disk.sync(unfinished);
        disk.rename(unfinished, pathOf(hash));
        disk.syncFolder(folder);
      } catch (error) {
        removeQuietly(disk, unfinished, folder);
        throw error;
      }
    },
    remove: (hash) => removeQuietly(disk, pathOf(hash), folder),
    tidy: ({ attachments, detached }) => {
      for (const name of disk.names(folder))
        if (name.endsWith(unfinishedEnd) || (detached.has(name) && !attachments.has(name))) disk.remove(pathOf(name));
    },
  };
}

function removeQuietly(disk: Disk, path: string, folder: string): void {
  try {
    disk.remove(path);
    disk.syncFolder(folder);
  } catch {
    // No line names it any more, or none did yet: it is only taking up room.
  }
}
