import { type ChildProcess, spawn } from 'node:child_process';
import { mkdirSync, rmSync } from 'node:fs';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { bundle } from '../../../../scripts/lib/bundle.mjs';

/** An entry that a child has said is kept. */
export interface Acknowledged {
  readonly n: number;
  readonly sum: string;
}

/** A writing process. */
export interface Child {
  readonly acknowledged: readonly Acknowledged[];
  /** Resolves when it has opened the daybook. It then waits for `go`. */
  ready(): Promise<void>;
  go(): void;
  /** Resolves when it has acknowledged at least so many entries. */
  reaches(count: number): Promise<void>;
  /** Ends it as a power cut does: with no word and no time. */
  kill(): Promise<void>;
}

export interface ChildTask {
  readonly kind: 'sqlite' | 'jsonl';
  readonly path: string;
  readonly device: string;
  readonly firstId: number;
}

/** The child as one JavaScript file, since Node runs no TypeScript. Beside the packages, so that it finds the driver. */
const script = fileURLToPath(
  new URL(`../../../../node_modules/.cache/loamwright/writer-${process.pid}.mjs`, import.meta.url),
);

export async function prepareChild(): Promise<void> {
  mkdirSync(dirname(script), { recursive: true });
  await bundle(fileURLToPath(new URL('writer.child.ts', import.meta.url)), script);
}

export function removeChild(): void {
  rmSync(script, { force: true });
}

export function startChild({ kind, path, device, firstId }: ChildTask): Child {
  const child: ChildProcess = spawn(process.execPath, [script, kind, path, device, String(firstId)], {
    stdio: ['pipe', 'pipe', 'inherit'],
  });
  const acknowledged: Acknowledged[] = [];
  const waiting: { readonly isReached: () => boolean; readonly go: () => void }[] = [];
  let rest = '';
  let isReady = false;
  child.stdout?.setEncoding('utf8').on('data', (chunk: string) => {
    const lines = (rest + chunk).split('\n');
    // A line without its end may be half of one: the child was killed while it told.
    rest = lines.pop() ?? '';
    for (const line of lines) {
      if (line === 'READY') isReady = true;
      const [, n, sum] = line.split(' ');
      if (n !== undefined && sum !== undefined) acknowledged.push({ n: Number(n), sum });
    }
    for (const { isReached, go } of waiting) if (isReached()) go();
  });
  const ended = new Promise<number | null>((resolve, reject) => {
    child.on('close', resolve);
    child.on('error', reject);
  });
  const until = (isReached: () => boolean): Promise<void> =>
    Promise.race([
      new Promise<void>((go) => {
        if (isReached()) go();
        else waiting.push({ isReached, go });
      }),
      ended.then((code) => {
        if (!isReached()) throw new Error(`the child ended (${code}) after ${acknowledged.length} entries`);
      }),
    ]);
  return {
    acknowledged,
    ready: () => until(() => isReady),
    go: () => {
      child.stdin?.write('go\n');
    },
    reaches: (count) => until(() => acknowledged.length >= count),
    kill: async () => {
      child.kill('SIGKILL');
      await ended;
    },
  };
}
