import { type Attachment, compareText, type Entry, type Keeping, KeepingError, type Tip } from '@loamwright/daybook';
import type { ExchangeKeeping } from '../bring.ts';

/** A keeping in memory, with what a simulated device does to it. */
export interface MemoryKeeping extends ExchangeKeeping, Pick<Keeping, 'detach'> {
  readonly entries: ReadonlyMap<string, Entry>;
  readonly shelf: Map<string, Attachment>;
  /** Writes the device's next entries, as `write` of the port does. */
  write(device: string, compose: (tip: Tip | null) => readonly Entry[]): readonly Entry[];
  /** While true, whatever would change it rejects: a full device. */
  full: boolean;
}

export function createMemoryKeeping(start: Iterable<Entry> = []): MemoryKeeping {
  const entries = new Map<string, Entry>();
  const shelf = new Map<string, Attachment>();
  const add = (entry: Entry): boolean => {
    const name = `${entry.id} ${entry.sum}`;
    if (entries.has(name)) return false;
    entries.set(name, entry);
    return true;
  };
  const inChain = (): Entry[] =>
    [...entries.values()].sort((a, b) => compareText(a.device, b.device) || a.n - b.n || compareText(a.sum, b.sum));
  for (const entry of start) add(entry);

  const keeping: MemoryKeeping = {
    entries,
    shelf,
    full: false,
    keep: async (batch) => {
      if (keeping.full && batch.length > 0) throw new KeepingError('full', 'no room');
      const owner = [...entries.values(), ...batch][0]?.holding;
      if (batch.some((entry) => entry.holding !== owner)) throw new KeepingError('other-holding', 'of another holding');
      const kept = batch.filter(add).length;
      return { kept, there: batch.length - kept, conflicts: [] };
    },
    read: async () => ({ entries: [...entries.values()], position: entries.size }),
    pick: async (stretches) =>
      inChain().filter(({ device, n }) => stretches.some((s) => s.device === device && s.from <= n && n <= s.to)),
    holding: async () => [...entries.values()][0]?.holding ?? null,
    heads: async () => inChain().map(({ id, device, n, prev, sum }) => ({ id, device, n, prev, sum })),
    attach: async (hash, bytes, mediaType) => {
      if (keeping.full) throw new KeepingError('full', 'no room');
      shelf.set(hash, { hash, bytes, mediaType });
    },
    detach: async (hash) => {
      shelf.delete(hash);
    },
    attachment: async (hash) => shelf.get(hash) ?? null,
    attachments: async () =>
      [...shelf.values()].map(({ hash, mediaType, bytes }) => ({ hash, mediaType, size_bytes: bytes.length })),
    write: (device, compose) => {
      const chain = inChain().filter((entry) => entry.device === device);
      const top = chain.at(-1)?.n;
      const tip = chain.find(({ n }) => n === top) ?? null;
      const written = compose(tip);
      written.forEach(add);
      return written;
    },
  };
  return keeping;
}
