import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Disk, nodeDisk } from '../jsonl/disk.ts';
import { takeLock } from '../jsonl/lock.ts';
import { openJsonlKeeping } from '../jsonl.ts';
import { type Fault, failsNow, type KeepingKit } from './kit.ts';

/** A kit on a folder of its own. */
export async function makeJsonlKit(): Promise<KeepingKit & { readonly folder: string; readonly file: string }> {
  const folder = await mkdtemp(join(tmpdir(), 'loamwright-jsonl-'));
  const file = join(folder, 'daybook.jsonl');
  return {
    folder,
    file,
    open: (options) => openJsonlKeeping(folder, options),
    openFailing: (fault) => openJsonlKeeping(folder, { disk: failingDisk(fault) }),
    rewriteRecord: async (position, change) => {
      const bytes = readFileSync(file);
      const end = bytes.indexOf('\n', position);
      const before = bytes.toString('utf8', position, end);
      const after = change(before);
      if (Buffer.byteLength(after) !== end - position) throw new Error('a record must keep its length');
      bytes.write(after, position);
      writeFileSync(file, bytes);
    },
    rewriteAttachment: async (hash, bytes) => writeFileSync(join(folder, 'attachments', hash), bytes),
    loseAttachment: async (hash) => rmSync(join(folder, 'attachments', hash)),
    holdLock: async () => {
      const lock = await takeLock(join(folder, 'lock'), 2000);
      return async () => lock.release();
    },
    dispose: () => rm(folder, { recursive: true, force: true }),
  };
}

/** Steps of a disk that change something: each may fail. A failing write gets half of its bytes down first. */
function failingDisk(fault: Fault, disk: Disk = nodeDisk): Disk {
  const guard = (): void => {
    if (failsNow(fault)) throw diskFull();
  };
  return {
    ...disk,
    write: (path, from, bytes) => {
      if (failsNow(fault)) {
        disk.write(path, from, bytes.subarray(0, bytes.length >> 1));
        throw diskFull();
      }
      disk.write(path, from, bytes);
    },
    sync: (path) => {
      guard();
      disk.sync(path);
    },
    rename: (from, to) => {
      guard();
      disk.rename(from, to);
    },
    remove: (path) => {
      guard();
      disk.remove(path);
    },
    syncFolder: (folder) => {
      guard();
      disk.syncFolder(folder);
    },
  };
}

function diskFull(): Error {
  return Object.assign(new Error('no space left on device'), { code: 'ENOSPC', syscall: 'write' });
}
