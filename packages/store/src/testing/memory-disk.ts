import { dirname } from 'node:path';
import type { Disk } from '../jsonl/disk.ts';

/** What the power cut makes of content and names that had not been synced. */
export interface Survival {
  /** Content: all lost, the first half there, the file grown but filled with zeros, or all there. */
  readonly content: 'lost' | 'torn' | 'zeros' | 'kept';
  /** New, renamed and removed names in folders that had not been synced. */
  readonly names: 'lost' | 'kept';
}

export const survivals: readonly Survival[] = (['lost', 'torn', 'zeros', 'kept'] as const).flatMap((content) =>
  (['lost', 'kept'] as const).map((names) => ({ content, names })),
);

interface File {
  current: Uint8Array;
  durable: Uint8Array;
}

/** A disk in memory that forgets what was not synced when the power goes, as POSIX allows. */
export interface MemoryDisk extends Disk {
  /** After so many more steps that change something, nothing works any more; the last gets half done. Infinity: never. */
  stepsLeft: number;
  /** The disk as it is found when the power is back. */
  afterPowerCut(survival: Survival): MemoryDisk;
  copy(): MemoryDisk;
}

export function createMemoryDisk(start: ReadonlyMap<string, Uint8Array> = new Map()): MemoryDisk {
  const files = new Map<string, File>();
  for (const [path, bytes] of start) files.set(path, { current: bytes, durable: bytes });
  /** The names as they stand on the disk. */
  let durableNames = new Map(files);

  const fileAt = (path: string): File => {
    const file = files.get(path);
    if (file === undefined) throw Object.assign(new Error(`no file ${path}`), { code: 'ENOENT', syscall: 'open' });
    return file;
  };
  const step = (half?: () => void): void => {
    disk.stepsLeft -= 1;
    if (disk.stepsLeft === 0) half?.();
    if (disk.stepsLeft <= 0) throw new Error('the power is gone');
  };
  const put = (path: string, from: number, bytes: Uint8Array): void => {
    const file = files.get(path) ?? { current: new Uint8Array(), durable: new Uint8Array() };
    const grown = new Uint8Array(Math.max(file.current.length, from + bytes.length));
    grown.set(file.current);
    grown.set(bytes, from);
    file.current = grown;
    files.set(path, file);
  };

  const disk: MemoryDisk = {
    stepsLeft: Number.POSITIVE_INFINITY,
    size_bytes: (path) => files.get(path)?.current.length ?? null,
    read: (path, from, to) => fileAt(path).current.slice(from, to),
    write: (path, from, bytes) => {
      step(() => put(path, from, bytes.subarray(0, bytes.length >> 1)));
      put(path, from, bytes);
    },
    sync: (path) => {
      step();
      const file = fileAt(path);
      file.durable = file.current;
    },
    truncate: (path, size_bytes) => {
      step();
      const file = fileAt(path);
      file.current = file.current.slice(0, size_bytes);
    },
    rename: (from, to) => {
      step();
      files.set(to, fileAt(from));
      files.delete(from);
    },
    remove: (path) => {
      step();
      files.delete(path);
    },
    makeFolder: () => undefined,
    names: (folder) =>
      [...files.keys()].filter((path) => dirname(path) === folder).map((path) => path.slice(folder.length + 1)),
    syncFolder: (folder) => {
      step();
      const elsewhere = [...durableNames].filter(([path]) => dirname(path) !== folder);
      durableNames = new Map([...elsewhere, ...[...files].filter(([path]) => dirname(path) === folder)]);
    },
    afterPowerCut: ({ content, names }) => {
      const found = [...(names === 'kept' ? files : durableNames)];
      return createMemoryDisk(new Map(found.map(([path, file]) => [path, survivingContent(file, content)])));
    },
    copy: () => createMemoryDisk(new Map([...files].map(([path, { current }]) => [path, current]))),
  };
  return disk;
}

function survivingContent({ current, durable }: File, content: Survival['content']): Uint8Array {
  if (current === durable || content === 'kept') return current;
  if (content === 'lost' || current.length <= durable.length) return durable;
  if (content === 'zeros') return current.slice().fill(0, durable.length);
  return current.slice(0, durable.length + ((current.length - durable.length) >> 1));
}
