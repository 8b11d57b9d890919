import { bad, good, type Outcome } from '@loamwright/science';
import type { Draft, Entry, Tip } from './entry.ts';
import { sumOf } from './sum.ts';

/** Version of the header that this version writes. */
export const headerVersion: number = 1;

/**
 * Numbers drafts after a device's tip and seals each with its sum: what `compose` of a keeping's `write`
 * returns. The drafts come from `readDraft` or `draftOf`.
 *
 * @param tip the device's last entry, null before its first.
 * @throws RangeError when the drafts are not all of one device.
 */
export function seal(tip: Tip | null, drafts: readonly Draft[]): readonly Entry[] {
  const entries: Entry[] = [];
  let last = tip;
  for (const draft of drafts) {
    if (draft.device !== drafts[0]?.device) throw new RangeError('drafts sealed together must be of one device');
    const unsealed = { ...draft, v: headerVersion, n: (last?.n ?? 0) + 1, prev: last?.sum ?? null };
    const entry: Entry = { ...unsealed, sum: sumOf(unsealed) };
    entries.push(entry);
    last = entry;
  }
  return entries;
}

/**
 * Whether new entries continue a device's chain: same device, n rising by one, each `prev` the sum before,
 * each sum its content's, no id twice. For a keeping to check what `compose` returned.
 * Problem: `broken-chain`.
 */
export function continues(device: string, tip: Tip | null, entries: readonly Entry[]): Outcome<readonly Entry[]> {
  const ids = new Set<string>();
  let last = tip;
  for (const [i, entry] of entries.entries()) {
    const broken = (field: string, found: unknown, wanted: unknown): Outcome<never> =>
      bad({ code: 'broken-chain', path: `[${i}].${field}`, found: String(found), wanted: String(wanted) });
    const n = (last?.n ?? 0) + 1;
    const prev = last?.sum ?? null;
    if (entry.device !== device) return broken('device', entry.device, device);
    if (entry.n !== n) return broken('n', entry.n, n);
    if (entry.prev !== prev) return broken('prev', entry.prev, prev);
    if (ids.has(entry.id)) return broken('id', entry.id, 'an id not used before');
    const sum = sumOf(entry);
    if (entry.sum !== sum) return broken('sum', entry.sum, sum);
    ids.add(entry.id);
    last = entry;
  }
  return good(entries);
}
