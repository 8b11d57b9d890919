import type { HeapRunAnswer, HeapRunInput, Outcome } from '@loamwright/science';
import { type Remote, wrap } from 'comlink';
import { useEffect, useState } from 'react';
import type { HeapRunWorker } from './heap-run.worker.ts';

/** A heap that was followed, or why it could not be. */
export type Followed =
  | { readonly is: 'followed'; readonly answer: HeapRunAnswer }
  | { readonly is: 'refused'; readonly problems: Extract<Outcome<never>, { readonly ok: false }>['problems'] }
  | { readonly is: 'failed'; readonly why: string };

interface Beside {
  readonly remote: Remote<HeapRunWorker>;
  /** Rejects when the worker itself can't be loaded: what is asked of it would never be answered. */
  readonly broken: Promise<never>;
}

let beside: Beside | undefined;

/** A worker of its own: a mix that is asked for meanwhile does not wait for it. */
function started(): Beside {
  if (beside !== undefined) return beside;
  const worker = new Worker(new URL('./heap-run.worker.ts', import.meta.url), { type: 'module', name: 'heap-run' });
  const broken = new Promise<never>((_, reject) => {
    worker.addEventListener('error', ({ message }) => reject(new Error(message)));
  });
  broken.catch(() => {
    beside = undefined;
  });
  beside = { remote: wrap<HeapRunWorker>(worker), broken };
  return beside;
}

/** Answers that are there already, by question; so many of them, for each is a few tens of kilobytes. */
const known = new Map<string, Followed>();
const MOST_KNOWN = 24;
let last: Promise<unknown> = Promise.resolve();

/**
 * Follows a heap beside the page, one after the other. A question that nobody waits for any more when its turn comes
 * is passed over.
 */
function followHeap(input: HeapRunInput, isWanted: () => boolean): Promise<Followed | null> {
  const key = JSON.stringify(input);
  const mine = last.then(async (): Promise<Followed | null> => {
    const before = known.get(key);
    if (before !== undefined || !isWanted()) return before ?? null;
    const found = await asked(input);
    if (found.is !== 'failed') {
      if (known.size >= MOST_KNOWN) known.clear();
      known.set(key, found);
    }
    return found;
  });
  last = mine;
  return mine;
}

async function asked(input: HeapRunInput): Promise<Followed> {
  try {
    const { remote, broken } = started();
    const outcome = await Promise.race([remote.follow(input), broken]);
    return outcome.ok ? { is: 'followed', answer: outcome.value } : { is: 'refused', problems: outcome.problems };
  } catch (error) {
    return { is: 'failed', why: error instanceof Error ? error.message : String(error) };
  }
}

/** What was found of a question, and whether it is that of the question asked now. */
interface Following {
  /** The last there is; null until there is one. */
  readonly found: Followed | null;
  readonly isCurrent: boolean;
}

/** Follows a heap whenever the question changes; nothing is asked with null. The last answer stays until the next is there. */
export function useFollowed(input: HeapRunInput | null): Following {
  const [held, setHeld] = useState<{ readonly input: HeapRunInput; readonly found: Followed } | null>(null);
  useEffect(() => {
    if (input === null) return;
    let isWanted = true;
    void followHeap(input, () => isWanted).then((found) => {
      if (isWanted && found !== null) setHeld({ input, found });
    });
    return () => {
      isWanted = false;
    };
  }, [input]);
  return { found: held?.found ?? null, isCurrent: held !== null && held.input === input };
}
