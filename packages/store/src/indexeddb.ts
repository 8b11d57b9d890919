import { compareText, type DeviceTip, type Entry, type Keeping, sha256Hex, type Tip } from '@loamwright/daybook';
import { type Database, openDatabase, type StoredText, type Transaction } from './indexeddb/database.ts';
import { planBatch } from './shared/batch.ts';
import { guardAttachment } from './shared/guards.ts';
import { readRecord, type StoredRecord, textOf } from './shared/record.ts';
import { type CheckedAttachment, type Findings, misfiled, reportOf } from './shared/report.ts';
import { joinStretches } from './shared/stretches.ts';
import { composed, guardFresh, passingComposeErrors } from './shared/write.ts';

export interface IndexedDbOptions {
  /** How long a call waits for another tab before it rejects with `busy`. */
  readonly wait_ms?: number | undefined;
}

const usualWait_ms = 10_000;
/** Records read at once: bounds the memory that a long read takes beside its entries. */
const textsAtOnce = 1000;

type Reading = Transaction<'readonly' | 'readwrite'>;
type Writing = Transaction<'readwrite'>;

/**
 * Opens the daybook in a browser's IndexedDB, or begins one. Transactions are strict: their data has
 * been handed to the disk before a promise resolves.
 *
 * @param name of the database; one for each holding
 * @throws KeepingError `damaged` for a database of a newer version, which is left as it is, or where
 * the browser keeps none; `busy`
 */
export async function openIndexedDbKeeping(name: string, options: IndexedDbOptions = {}): Promise<Keeping> {
  return keepingOn(await openDatabase({ name, wait_ms: options.wait_ms ?? usualWait_ms }));
}

function keepingOn(db: Database): Keeping {
  return {
    keep: (entries) =>
      db.exclusive(async (tx) => {
        const sums = await sumsOfAll(tx, entries);
        const plan = planBatch(entries, { holding: await holdingIn(tx), sumsOf: (id) => sums.get(id) ?? [] });
        await add(tx, plan.fresh, plan.holding);
        return plan.report;
      }),

    write: (device, compose) =>
      passingComposeErrors(() =>
        db.exclusive(async (tx) => {
          const holding = await holdingIn(tx);
          const entries = composed({ device, tip: await tipIn(tx, device), holding }, compose);
          const sums = await sumsOfAll(tx, entries);
          guardFresh(entries, (id) => sums.has(id));
          await add(tx, entries, holding ?? entries[0]?.holding ?? null);
          return entries;
        }),
      ),

    read: ({ after = 0, limit = Number.MAX_SAFE_INTEGER } = {}) =>
      db.reading(async (tx) => {
        const entries: Entry[] = [];
        let position = after;
        let looked = after;
        while (entries.length < limit) {
          const wanted = Math.min(limit - entries.length, textsAtOnce);
          const texts = await tx.objectStore('texts').getAll(IDBKeyRange.lowerBound(looked, true), wanted);
          for (const text of texts) {
            looked = text.position;
            const record = recordOf(text);
            if (!record.ok) continue;
            entries.push(record.entry);
            position = text.position;
          }
          if (texts.length < wanted) break;
        }
        return { entries, position };
      }),

    pick: (stretches) =>
      db.reading(async (tx) => {
        const chain = tx.objectStore('heads').index('chain');
        const keys = await Promise.all(
          joinStretches(stretches).map(({ device, from, to }) =>
            chain.getAllKeys(IDBKeyRange.bound([device, from], [device, to, []])),
          ),
        );
        const texts = await Promise.all(keys.flat().map((position) => tx.objectStore('texts').get(position)));
        return texts.map(recordOf).flatMap((record) => (record.ok ? [record.entry] : []));
      }),

    tips: () => db.reading(tipsIn),

    heads: () =>
      db.reading(async (tx) => {
        const heads = await tx.objectStore('heads').index('chain').getAll();
        return heads.map(({ position: _, ...head }) => head);
      }),

    holding: () => db.reading(holdingIn),

    attach: async (hash, bytes, mediaType) => {
      db.guardOpen();
      guardAttachment(hash, bytes);
      await db.exclusive(async (tx) => {
        if ((await tx.objectStore('notes').getKey(hash)) !== undefined) return;
        // A copy: what the caller does to its bytes later is its own affair, and a part of a large buffer stays a part.
        await tx.objectStore('bytes').put(bytes.slice(), hash);
        await tx.objectStore('notes').put({ hash, mediaType, size_bytes: bytes.length });
      });
    },

    attachment: (hash) =>
      db.reading(async (tx) => {
        const note = await tx.objectStore('notes').get(hash);
        const bytes = await tx.objectStore('bytes').get(hash);
        return note === undefined || bytes === undefined ? null : { hash, mediaType: note.mediaType, bytes };
      }),

    attachments: () => db.reading((tx) => tx.objectStore('notes').getAll()),

    detach: (hash) =>
      db.exclusive(async (tx) => {
        await tx.objectStore('notes').delete(hash);
        await tx.objectStore('bytes').delete(hash);
      }),

    check: () => db.reading(async (tx) => reportOf(await findingsIn(tx))),

    close: async () => db.close(),
  };
}

async function holdingIn(tx: Reading): Promise<string | null> {
  return (await tx.objectStore('facts').get('holding')) ?? null;
}

/** The sums kept of every id in a batch. */
async function sumsOfAll(tx: Reading, entries: readonly Entry[]): Promise<ReadonlyMap<string, readonly string[]>> {
  const byId = tx.objectStore('heads').index('id');
  const ids = [...new Set(entries.map(({ id }) => id))];
  const kept = await Promise.all(ids.map(async (id) => [id, await byId.getAll(id)] as const));
  return new Map(kept.filter(([, heads]) => heads.length > 0).map(([id, heads]) => [id, heads.map(({ sum }) => sum)]));
}

/** Adds entries behind all others. Positions are counted up here: none is ever taken away, so none comes twice. */
async function add(tx: Writing, entries: readonly Entry[], holding: string | null): Promise<void> {
  const last = await tx.objectStore('heads').openKeyCursor(null, 'prev');
  const start = (last?.primaryKey ?? 0) + 1;
  for (const [i, entry] of entries.entries()) {
    const { id, device, n, prev, sum } = entry;
    const position = start + i;
    heardByTransaction(tx.objectStore('heads').add({ position, id, device, n, prev, sum }));
    heardByTransaction(tx.objectStore('texts').add({ position, json: textOf(entry) }));
  }
  if (holding !== null) heardByTransaction(tx.objectStore('facts').put(holding, 'holding'));
}

/** Not waited for one by one: a request that fails undoes the transaction, which tells of it. */
function heardByTransaction(request: Promise<unknown>): void {
  request.catch(() => undefined);
}

/** The highest n of a device, with the lowest sum where it is doubled (rule K10). */
async function tipIn(tx: Reading, device: string): Promise<Tip | null> {
  const chain = tx.objectStore('heads').index('chain');
  const last = await chain.openKeyCursor(IDBKeyRange.bound([device], [device, []]), 'prev');
  if (last === null) return null;
  const n = last.key[1];
  const lowest = await chain.openKeyCursor(IDBKeyRange.bound([device, n], [device, n, []]));
  return lowest === null ? null : { n, sum: lowest.key[2] };
}

/** Goes from device to device, not from entry to entry. */
async function tipsIn(tx: Reading): Promise<readonly DeviceTip[]> {
  const chain = tx.objectStore('heads').index('chain');
  const tips: DeviceTip[] = [];
  for (let next = await chain.openKeyCursor(); next !== null; ) {
    const device = next.key[0];
    const tip = await tipIn(tx, device);
    if (tip !== null) tips.push({ device, ...tip });
    next = await chain.openKeyCursor(IDBKeyRange.lowerBound([device, []]));
  }
  return tips;
}

function recordOf(text: StoredText | undefined): StoredRecord {
  return typeof text?.json === 'string' ? readRecord(text.json) : { ok: false, why: 'its text is missing' };
}

async function findingsIn(tx: Reading): Promise<Findings> {
  const heads = await tx.objectStore('heads').getAll();
  const texts = new Map((await tx.objectStore('texts').getAll()).map((text) => [text.position, text]));
  const records = heads.map(({ position, ...head }) => ({ position, record: recordOf(texts.get(position)), head }));
  const headed = new Set(heads.map(({ position }) => position));
  const unfiled = [...texts.keys()].filter((position) => !headed.has(position));
  const notes = await tx.objectStore('notes').getAll();
  const attachments: CheckedAttachment[] = [];
  for (const { hash } of notes) {
    const bytes = await tx.objectStore('bytes').get(hash);
    if (bytes !== undefined) attachments.push({ hash, recomputed: sha256Hex(bytes) });
  }
  return {
    records,
    attachments: attachments.sort((a, b) => compareText(a.hash, b.hash)),
    faults: [...records.flatMap(misfiled), ...unfiled.map((position) => ({ position, why: 'no index leads to it' }))],
  };
}
