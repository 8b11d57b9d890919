import type { Entry } from './entry/entry.ts';

/** Order by UTF-16 code units: the same on every machine and in every language. */
export function compareText(a: string, b: string): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}

/** Order of the fold: `happened`, `written`, `device`, `n`; then id and sum, where a device gave out one n twice. */
export function compareInFold(a: Entry, b: Entry): number {
  return compareText(a.happened, b.happened) || compareWriting(a, b);
}

/** Order of writing, by which the latest amendment is told: `written`, `device`, `n`; then id and sum. */
export function compareWriting(a: Entry, b: Entry): number {
  return compareText(a.written, b.written) || compareInChain(a, b);
}

/** Order by `device` and `n`; then id and sum. */
export function compareInChain(a: Pick<Entry, 'device' | 'n' | 'id' | 'sum'>, b: typeof a): number {
  return compareText(a.device, b.device) || a.n - b.n || compareText(a.id, b.id) || compareText(a.sum, b.sum);
}
