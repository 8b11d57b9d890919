import { Worker } from 'node:worker_threads';
import type { Worked } from './work.ts';
import type { Job } from './worker.ts';

/** Runs calculations beside the daybook. */
export interface Reckoner {
  /** `busy`: too many wait already. `too-long`: it was ended unfinished. `failed`: the thread died of it. */
  reckon(id: string, body: Uint8Array): Promise<Worked | 'busy' | 'too-long' | 'failed'>;
  stop(): Promise<void>;
}

interface Limits {
  /** How long one calculation may take. */
  readonly time_ms: number;
  /** How many may wait for their turn. */
  readonly waiting: number;
  /** How long an idle thread is kept. */
  readonly idle_ms: number;
}

/** The heaviest example takes 3 s of a busy core; on a small computer in a shed ten times as much. */
const usualLimits: Limits = { time_ms: 30_000, waiting: 8, idle_ms: 60_000 };

/** A calculation needs some megabytes; one that runs away must not take the computer's memory with it. */
const MOST_MEMORY_MB = 512;

/**
 * One thread that runs calculations one after another. A thread, and not only a limit on how many run at once: they
 * are synchronous, so even a single large mix would keep the daybook from answering; and a thread can be ended when
 * it takes too long. One, and not one for each core: the computer in the shed has other work. It starts with the
 * first calculation and ends when none has come for a while, so that a server that only keeps a daybook stays small.
 *
 * @param file the thread's program, built
 */
export function openReckoner(file: string | URL, limits: Limits = usualLimits): Reckoner {
  let thread: Worker | undefined;
  let waiting = 0;
  let last: Promise<unknown> = Promise.resolve();
  let idle: NodeJS.Timeout | undefined;
  return {
    reckon: (id, body) => {
      if (waiting > limits.waiting) return Promise.resolve('busy');
      waiting += 1;
      const turn = last
        .then(() => run({ id, body }))
        .finally(() => {
          waiting -= 1;
          if (waiting === 0) idle = setTimeout(() => void letGo(), limits.idle_ms).unref();
        });
      last = turn;
      return turn;
    },
    stop: letGo,
  };

  function run(job: Job): ReturnType<Reckoner['reckon']> {
    clearTimeout(idle);
    thread ??= begin();
    const worker = thread;
    return new Promise((resolve) => {
      const end = (answer: Worked | 'too-long' | 'failed'): void => {
        clearTimeout(limit);
        worker.off('message', end).off('error', fail).off('exit', fail);
        if (typeof answer === 'string') void letGo();
        resolve(answer);
      };
      const fail = (): void => end('failed');
      const limit = setTimeout(() => end('too-long'), limits.time_ms);
      worker.on('message', end).on('error', fail).on('exit', fail);
      worker.postMessage(job);
    });
  }

  function begin(): Worker {
    const worker = new Worker(file, { resourceLimits: { maxOldGenerationSizeMb: MOST_MEMORY_MB } });
    // What goes wrong between two jobs has nobody to be told to; the next job finds the thread gone.
    return worker
      .on('error', () => undefined)
      .on('exit', () => {
        if (thread === worker) thread = undefined;
      });
  }

  async function letGo(): Promise<void> {
    const worker = thread;
    thread = undefined;
    await worker?.terminate();
  }
}
