import { createHash, randomUUID } from 'node:crypto';
import { closeSync, mkdirSync, openSync, readdirSync, readFileSync, readlinkSync, rmSync, statSync } from 'node:fs';
import { hostname } from 'node:os';
import { basename, join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { KeepingError } from '@loamwright/daybook';

/*
 * The lock of a JSON-lines keeping.
 *
 * Whoever wants to write puts a file of its own name into the folder `lock/`, then lists the folder.
 * Alone, it holds the lock; otherwise it takes its file away, waits a moment and tries again. Each
 * puts its file there before it looks, so of two at least one sees the other.
 *
 * A killed process leaves its file behind. The name says who it was, so that the next one can tell
 * that it is gone, and remove it. No two files ever have the same name, so removing a dead one never
 * removes a live one. Gone is:
 *   - a process of this machine from before its last start (another boot),
 *   - a process of this machine that no longer runs, or whose number another process now has
 *     (told by the time it started, where /proc says it),
 *   - a process that can't be looked at from here (another machine or container on a shared folder)
 *     whose file is older than `strangerGone_ms`, by the clock of the disk. A holder writes nothing
 *     once it has held the lock for `lease_ms`, which is shorter.
 */

/** The right to write, until released. */
export interface Lock {
  /** @throws KeepingError `busy` when it was held so long that another machine may think it is gone. */
  guardLease(): void;
  release(): void;
}

/** Where a lock's holder lives, as its file's name tells. Every part is lower-case letters and digits. */
export interface Holder {
  /** The machine. */
  readonly host: string;
  /** Its last start; `0` where it can't be told. */
  readonly boot: string;
  /** The space of process numbers (containers have their own); `0` where there is only one. */
  readonly space: string;
  readonly pid: number;
  /** When the process started, in the machine's own count; `0` where it can't be told. */
  readonly started: string;
}

const lease_ms = 30_000;
const strangerGone_ms = 60_000;
const shortestPause_ms = 1;
const longestPause_ms = 12;

/** @throws KeepingError `busy` after `wait_ms` */
export async function takeLock(folder: string, wait_ms: number): Promise<Lock> {
  mkdirSync(folder, { recursive: true });
  const self = thisProcess();
  const own = join(folder, `${nameOf(self)}.${randomUUID().replaceAll('-', '')}`);
  const end_ms = Date.now() + wait_ms;
  for (;;) {
    // Looked at before as well, so that those who wait don't keep getting in one another's way.
    if (!isTaken(folder, own, self)) {
      const since_ms = Date.now();
      closeSync(openSync(own, 'wx', 0o600));
      if (!isTaken(folder, own, self)) return lockOn(own, since_ms);
      rmSync(own, { force: true });
    }
    if (Date.now() >= end_ms)
      throw new KeepingError(
        'busy',
        `another process is writing to this daybook: try again in a moment; if none runs on any machine, empty the folder ${folder}`,
      );
    await sleep(shortestPause_ms + Math.random() * (longestPause_ms - shortestPause_ms));
  }
}

function lockOn(own: string, since_ms: number): Lock {
  return {
    guardLease: () => {
      if (Date.now() - since_ms < lease_ms) return;
      throw new KeepingError(
        'busy',
        'writing took so long that another machine may have begun: nothing was kept; try again',
      );
    },
    release: () => rmSync(own, { force: true }),
  };
}

/** Whether anyone else holds or wants the lock. The files of those who are gone are removed. */
function isTaken(folder: string, own: string, self: Holder): boolean {
  let taken = false;
  for (const path of readdirSync(folder).map((name) => join(folder, name))) {
    if (path === own) continue;
    const holder = holderOf(basename(path));
    const ended = holder === undefined ? undefined : hasEnded(holder, self);
    if (ended ?? isOld(path, own)) rmSync(path, { force: true });
    else taken = true;
  }
  return taken;
}

/** True or false where it can be told; undefined where the holder can't be looked at from here. */
export function hasEnded(holder: Holder, self: Holder): boolean | undefined {
  if (holder.host !== self.host) return undefined;
  if (holder.boot !== self.boot) return true;
  if (holder.space !== self.space) return undefined;
  return !isRunning(holder.pid) || holder.started !== startOf(holder.pid);
}

/** Whether a file is so old that a holder who can't be looked at has given up. The own file, made just now, is the measure. */
function isOld(path: string, own: string): boolean {
  const made_ms = statSync(path, { throwIfNoEntry: false })?.mtimeMs;
  const now_ms = statSync(own, { throwIfNoEntry: false })?.mtimeMs ?? Date.now();
  return made_ms === undefined || now_ms - made_ms > strangerGone_ms;
}

function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    // Only "no such process" says that it is gone: not being allowed to signal it does not.
    return !(error instanceof Error && 'code' in error && error.code === 'ESRCH');
  }
}

let known: Holder | undefined;

/** Who this process is. */
export function thisProcess(): Holder {
  known ??= {
    host: shortHash(`${hostname()} ${textOf('/etc/machine-id')}`),
    boot: shortHash(textOf('/proc/sys/kernel/random/boot_id')),
    space: shortHash(linkOf('/proc/self/ns/pid')),
    pid: process.pid,
    started: startOf(process.pid),
  };
  return known;
}

export function nameOf({ host, boot, space, pid, started }: Holder): string {
  return [host, boot, space, pid, started].join('.');
}

/** Who made a file of this name; undefined where it is no lock's name. */
export function holderOf(name: string): Holder | undefined {
  const [host, boot, space, pid, started, own] = name.split('.');
  if (host === undefined || boot === undefined || space === undefined || started === undefined || own === undefined)
    return undefined;
  if (pid === undefined || !/^[1-9][0-9]*$/u.test(pid)) return undefined;
  return { host, boot, space, pid: Number(pid), started };
}

/**
 * When a process started, from /proc/PID/stat: field 22, clock ticks since boot (proc(5)). `ended`
 * where it has ended and only its parent has not yet looked; `0` where this machine has no /proc.
 */
function startOf(pid: number): string {
  const stat = textOf(`/proc/${pid}/stat`);
  // The name of the program, in brackets, may hold spaces: fields are counted from its end, which is field 2.
  const [state = '', ...fields] = stat.slice(stat.lastIndexOf(')') + 2).split(' ');
  return state === 'Z' || state === 'X' ? 'ended' : (fields[22 - 4] ?? '0');
}

/** Content of a small system file; empty where this machine has none such. */
function textOf(path: string): string {
  try {
    return readFileSync(path, 'utf8').trim();
  } catch {
    return '';
  }
}

function linkOf(path: string): string {
  try {
    return readlinkSync(path);
  } catch {
    return '';
  }
}

/** `0` for an empty text, else twelve hex digits. */
function shortHash(text: string): string {
  return text === '' ? '0' : createHash('sha256').update(text).digest('hex').slice(0, 12);
}
