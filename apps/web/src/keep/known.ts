import type { Head, HeldOfDevice } from '@loamwright/daybook';
import { notThere } from '@loamwright/sync';
import { useMemo, useSyncExternalStore } from 'react';
import { asRecord, stored } from '../device/stored.ts';
import { useBook } from './useBook.ts';

/** What the computer is known to hold: as it said itself at the end of the last exchange that came through. */
interface Known {
  readonly holding: string;
  /** When that was, by this device's clock. */
  readonly at: string;
  readonly held: readonly HeldOfDevice[];
}

const known = stored('loamwright.exchanged', (raw): Known | null => {
  const { holding, at, held } = asRecord(raw);
  if (typeof holding !== 'string' || typeof at !== 'string' || !Number.isFinite(Date.parse(at))) return null;
  return isHeld(held) ? { holding, at, held } : null;
});

function isHeld(value: unknown): value is readonly HeldOfDevice[] {
  return Array.isArray(value) && value.map(asRecord).every(isHeldOfDevice);
}

function isHeldOfDevice({ device, runs, sides }: Readonly<Record<string, unknown>>): boolean {
  if (typeof device !== 'string' || !Array.isArray(runs) || !Array.isArray(sides)) return false;
  return [...runs, ...sides].every((one) => typeof asRecord(one)['sum'] === 'string');
}

export function remember(now: Known): void {
  known.set(now);
}

/** Which of these the computer is not known to have. */
export function notExchanged<H extends Head>(entries: readonly H[], holding: string | null): readonly H[] {
  const held = known.get();
  return notThere(entries, held === null || held.holding !== holding ? [] : held.held);
}

/** How many lines of the open daybook the computer is not known to have, and when it was last exchanged with. */
export function useNotExchanged(): { readonly count: number; readonly at: string | null } {
  const { entries, holding } = useBook().leaf;
  const now = useSyncExternalStore(known.subscribe, known.get);
  const at = now !== null && (holding.id === null || now.holding === holding.id) ? now.at : null;
  const count = useMemo(
    () => (now === null ? entries : notExchanged(entries, holding.id)).length,
    [now, entries, holding],
  );
  return { count, at };
}
