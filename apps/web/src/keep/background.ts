import { keyToComputer } from '../device/key.ts';
import { onSettings, settings } from '../device/settings.ts';
import { exchangeNow } from './exchange.ts';
import { notExchanged } from './known.ts';
import { findServer, ServerRefused } from './server.ts';
import { bookNamed } from './shelf.ts';

/** After the first screen, which must not be held up. */
const START_MS = 2000;
/** After something was written: what is written together goes together. */
const AFTER_WRITING_MS = 1500;
/** After the network or the person came back: a moment, until the network carries. */
const BACK_MS = 800;
/** Whoever looks again this soon sees nothing new, and a radio woken for nothing costs charge. */
const REST_MS = 60_000;
const FIRST_WAIT_MS = 30_000;
const LONGEST_WAIT_MS = 30 * 60_000;

/** What may pass by itself; everything else waits for the person. */
const passing: readonly string[] = ['unreachable', 'busy', 'full', 'server-failed'];

/**
 * Exchanges with the computer that serves this page, without being asked: at the start, after something was written, and
 * when the network or the person comes back. Where nobody answers it asks again after half a minute, then a minute, and
 * so on up to half an hour, and only while the page is looked at and something is waiting to go. It never holds up
 * writing.
 */
export async function exchangeInBackground(): Promise<void> {
  let timer: number | undefined;
  let wait_ms = FIRST_WAIT_MS;
  let last_ms = 0;
  /** This host is no computer of ours, or it refused: until something changes, asking again is useless. */
  let stopped = false;

  const mayTry = (): boolean => {
    const { book, exchanges } = settings();
    return book === 'own' && exchanges === 'by-itself' && !stopped && navigator.onLine && !document.hidden;
  };
  const soon = (delay_ms: number): void => {
    clearTimeout(timer);
    timer = window.setTimeout(() => void attempt(), delay_ms);
  };
  const later = async (): Promise<void> => {
    const { entries, holding } = (await bookNamed('own')).leaf();
    if (notExchanged(entries, holding.id).length > 0) soon(wait_ms);
    wait_ms = Math.min(2 * wait_ms, LONGEST_WAIT_MS);
  };
  const attempt = async (): Promise<void> => {
    if (!mayTry()) return;
    last_ms = Date.now();
    const server = await findServer();
    if (server === 'silent') return later();
    if (server === 'none' || (server.asksKey && keyToComputer.get() === null)) {
      stopped = true;
      return;
    }
    try {
      await exchangeNow(await bookNamed('own'), false);
      wait_ms = FIRST_WAIT_MS;
    } catch (error) {
      // Said where the daybook is kept; here it only matters whether to try again.
      if (error instanceof ServerRefused && passing.includes(error.problem.code)) await later();
      else stopped = true;
    }
  };
  const back = (): void => {
    wait_ms = FIRST_WAIT_MS;
    if (mayTry() && Date.now() - last_ms > REST_MS) soon(BACK_MS);
  };

  globalThis.addEventListener('online', () => {
    last_ms = 0;
    back();
  });
  document.addEventListener('visibilitychange', back);
  const anew = (): void => {
    stopped = false;
    last_ms = 0;
    back();
  };
  keyToComputer.subscribe(() => keyToComputer.get() !== null && anew());
  let before = settings();
  onSettings(() => {
    const after = settings();
    if (after.exchanges !== before.exchanges || after.book !== before.book) watch().then(anew, () => undefined);
    before = after;
  });

  let watched = false;
  const watch = async (): Promise<void> => {
    // A daybook is not opened, nor made, before it is begun.
    if (watched || settings().book !== 'own') return;
    watched = true;
    const book = await bookNamed('own');
    book.subscribe(() => {
      const { entries, holding } = book.leaf();
      if (mayTry() && notExchanged(entries, holding.id).length > 0) soon(AFTER_WRITING_MS);
    });
  };
  soon(START_MS);
  await watch();
}
