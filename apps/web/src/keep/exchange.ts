import { type Exchanged, exchangeWith, letGoOfRemoved } from '@loamwright/sync';
import type { Saying } from '@loamwright/words';
import { useSyncExternalStore } from 'react';
import { changeSettings, settings } from '../device/settings.ts';
import type { Book } from './book.ts';
import { sayFailure } from './failure.ts';
import { remember } from './known.ts';
import { sayProblem } from './not-written.ts';
import { computer } from './server.ts';
import { now } from './time.ts';

/** How the exchange with the computer stands at this moment. */
interface Standing {
  readonly busy: boolean;
  /** Why the last one did not come through, in words; null when it did, or none was tried. */
  readonly failed: Saying | null;
}

let standing: Standing = { busy: false, failed: null };
const listeners = new Set<() => void>();

function stand(next: Standing): void {
  standing = next;
  for (const listener of listeners) listener();
}

export function useStanding(): Standing {
  return useSyncExternalStore(
    (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    () => standing,
  );
}

/** One exchange of this origin at a time, whichever window has it: two would only do the same. */
const LOCK = 'loamwright.exchange';

/**
 * Exchanges both ways with the computer, and remembers what it then holds.
 * @returns null where another window is at it and `waits` is false
 * @throws ServerRefused, NotWritten
 */
export async function exchangeNow(book: Book, waits: boolean): Promise<Exchanged | null> {
  const options = waits ? {} : { ifAvailable: true };
  // Absent where the page does not come over a secure connection.
  return navigator.locks === undefined
    ? exchangeHere(book)
    : navigator.locks.request(LOCK, options, (lock) => (lock === null ? null : exchangeHere(book)));
}

async function exchangeHere(book: Book): Promise<Exchanged> {
  stand({ ...standing, busy: true });
  try {
    const done = await book.change(async (keeping) => {
      const exchanged = await exchangeWith(keeping, computer);
      await letGoOfRemoved(keeping);
      const holding = await keeping.holding();
      if (exchanged.held !== null && holding !== null) remember({ holding, at: now(), held: exchanged.held });
      return exchanged;
    });
    stand({ busy: false, failed: done.held === null ? sayNotAll(done) : null });
    return done;
  } catch (error) {
    stand({ busy: false, failed: sayFailure(error) });
    throw error;
  }
}

function sayNotAll({ problems }: Exchanged): Saying {
  const [first] = problems;
  return first === undefined ? { key: 'app.exchange.notAll' } : sayProblem(first);
}

/** Exchanges because the person says so, and tells what came of it. From then on it goes on by itself. */
export async function exchangeWhenTold(book: Book): Promise<Saying> {
  const done = await exchangeNow(book, true);
  if (settings().exchanges === null) changeSettings({ exchanges: 'by-itself' });
  if (done?.held === null) return sayNotAll(done);
  const entries = book.leaf().entries.length;
  if (entries === 0) return { key: 'app.kept.nothing' };
  return { key: 'app.server.exchanged', places: { kept: done?.kept ?? 0, entries } };
}
