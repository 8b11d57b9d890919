import { createHash, randomBytes, timingSafeEqual } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import { bad, good, type Outcome } from '@loamwright/science';
import { keepPrivately } from '../private.ts';

/** 128 random bits as 22 characters that need no escaping in an address. */
const form = /^[A-Za-z0-9_-]{22}$/u;

/** The data folder's key to its daybook on the network: read, or made when there is none. */
export function openKey(file: string): Outcome<string> {
  if (!existsSync(file)) keepPrivately(file, `${randomBytes(16).toString('base64url')}\n`);
  const key = readFileSync(file, 'utf8').trim();
  return form.test(key) ? good(key) : bad({ code: 'key-file-broken', path: file, found: '', wanted: '' });
}

/** Whether two keys are the same, in a time that tells nothing about where they differ. */
export function sameKey(given: string, key: string): boolean {
  const digest = (text: string): Buffer => createHash('sha256').update(text).digest();
  return timingSafeEqual(digest(given), digest(key));
}

/** Counts wrong keys by where they came from. */
export interface Attempts {
  /** Seconds until this address may try again; 0 when it may try now. */
  blocked_s(address: string): number;
  /** One more wrong key from this address. */
  wrong(address: string): void;
}

const MOST_WRONG = 10;
const WINDOW_MS = 10 * 60_000;
/** An attacker with many addresses must not fill the memory: the oldest are forgotten. */
const MOST_ADDRESSES = 1000;

/** After ten wrong keys within ten minutes an address is not listened to until the ten minutes have passed. */
export function countAttempts(now_ms: () => number): Attempts {
  const seen = new Map<string, { count: number; since_ms: number }>();
  return {
    blocked_s: (address) => {
      const entry = current(address);
      if (entry === undefined || entry.count < MOST_WRONG) return 0;
      return Math.ceil((entry.since_ms + WINDOW_MS - now_ms()) / 1000);
    },
    wrong: (address) => {
      const entry = current(address) ?? { count: 0, since_ms: now_ms() };
      seen.delete(address);
      seen.set(address, { ...entry, count: entry.count + 1 });
      const [oldest] = seen.keys();
      if (seen.size > MOST_ADDRESSES && oldest !== undefined) seen.delete(oldest);
    },
  };

  function current(address: string): { count: number; since_ms: number } | undefined {
    const entry = seen.get(address);
    return entry !== undefined && now_ms() - entry.since_ms < WINDOW_MS ? entry : undefined;
  }
}
