import { join } from 'node:path';
import { compareText, type Entry, type Keeping, sha256Hex } from '@loamwright/daybook';
import { firstWhere, placesWithin, tipOf } from './jsonl/contents.ts';
import { type Disk, diskError, nodeDisk } from './jsonl/disk.ts';
import { type Journal, openJournal, type TornTail } from './jsonl/journal.ts';
import type { Line } from './jsonl/lines.ts';
import { createShelf, type Shelf } from './jsonl/shelf.ts';
import { planBatch } from './shared/batch.ts';
import { closedError, guardAttachment } from './shared/guards.ts';
import { createQueue } from './shared/queue.ts';
import { textOf } from './shared/record.ts';
import { type CheckedAttachment, type CheckedRecord, reportOf } from './shared/report.ts';
import { composed, guardFresh, passingComposeErrors } from './shared/write.ts';

export type { TornTail } from './jsonl/journal.ts';

export interface JsonlOptions {
  /** How long a call waits for another process before it rejects with `busy`. */
  readonly wait_ms?: number | undefined;
  /** Another disk, as the tests use to let storage fail. */
  readonly disk?: Disk | undefined;
}

/** A keeping in plain files. */
export interface JsonlKeeping extends Keeping {
  /** Torn ends that this keeping has found and set aside since it was opened: of a write that a crash broke off. */
  readonly torn: readonly TornTail[];
}

const usualWait_ms = 10_000;

/**
 * Opens the daybook in a folder, or begins one: `daybook.jsonl`, to which lines are only ever
 * added, and `attachments/` with one file per attachment. `FORMAT.md` of this package tells what stands in them.
 *
 * @throws KeepingError `damaged` for a file of a newer version or of another program, which is left
 * as it is; `busy`; `full`
 */
export async function openJsonlKeeping(folder: string, options: JsonlOptions = {}): Promise<JsonlKeeping> {
  const disk = options.disk ?? nodeDisk;
  const shelf = join(folder, 'attachments');
  try {
    disk.makeFolder(shelf);
  } catch (error) {
    throw diskError(error, folder);
  }
  const journal = await openJournal({ folder, disk, wait_ms: options.wait_ms ?? usualWait_ms });
  const attachments = createShelf(disk, shelf);
  await journal.exclusive(({ contents }) => attachments.tidy(contents));
  return keepingOn(folder, journal, attachments);
}

function keepingOn(folder: string, journal: Journal, shelf: Shelf): JsonlKeeping {
  const inTurn = createQueue();
  let closed = false;
  /** One call after the other: what one has appended is known when the next looks. */
  const call = <Result>(work: () => Promise<Result>): Promise<Result> =>
    inTurn(async () => {
      if (closed) throw closedError();
      try {
        return await work();
      } catch (error) {
        throw diskError(error, folder);
      }
    });

  return {
    torn: journal.torn,

    keep: (entries) =>
      call(() =>
        journal.exclusive(({ contents, append }) => {
          const plan = planBatch(entries, contents);
          if (plan.fresh.length > 0) append(lineOf(plan.fresh));
          return plan.report;
        }),
      ),

    write: (device, compose) =>
      call(() =>
        passingComposeErrors(() =>
          journal.exclusive(({ contents, append }) => {
            const last = tipOf(contents.chainOf(device));
            const tip = last === null ? null : { n: last.n, sum: last.sum };
            const entries = composed({ device, tip, holding: contents.holding }, compose);
            guardFresh(entries, (id) => contents.sumsOf(id).length > 0);
            if (entries.length > 0) append(lineOf(entries));
            return entries;
          }),
        ),
      ),

    read: ({ after = 0, limit = Number.MAX_SAFE_INTEGER } = {}) =>
      call(async () => {
        const { inOrder } = await journal.current();
        const entries: Entry[] = [];
        let position = after;
        let next = firstWhere(inOrder, (place) => place.position > after);
        while (entries.length < limit && next < inOrder.length) {
          const places = inOrder.slice(next, next + limit - entries.length);
          next += places.length;
          for (const [i, entry] of journal.entriesAt(places).entries()) {
            if (entry === undefined) continue;
            entries.push(entry);
            position = places[i]?.position ?? position;
          }
        }
        return { entries, position };
      }),

    pick: (stretches) =>
      call(async () => {
        const places = placesWithin(await journal.current(), stretches);
        return journal.entriesAt(places).filter((entry) => entry !== undefined);
      }),

    tips: () => call(async () => (await journal.current()).tips()),

    heads: () =>
      call(async () =>
        (await journal.current()).heads().map(({ id, device, n, prev, sum }) => ({ id, device, n, prev, sum })),
      ),

    holding: () => call(async () => (await journal.current()).holding),

    attach: (hash, bytes, mediaType) =>
      call(async () => {
        guardAttachment(hash, bytes);
        await journal.exclusive(({ contents, append }) => {
          const isNoted = contents.attachments.has(hash);
          if (isNoted && shelf.has(hash)) return;
          shelf.put(hash, bytes);
          // Named in the file only once its bytes are durable: a name without bytes never comes about.
          if (isNoted) return;
          try {
            append(JSON.stringify({ attached: { hash, mediaType, size_bytes: bytes.length } }));
          } catch (error) {
            shelf.remove(hash);
            throw error;
          }
        });
      }),

    attachment: (hash) =>
      call(async () => {
        const note = (await journal.current()).attachments.get(hash);
        const bytes = note === undefined ? null : shelf.bytes(hash);
        return note === undefined || bytes === null ? null : { hash, mediaType: note.mediaType, bytes };
      }),

    attachments: () =>
      call(async () => {
        const notes = [...(await journal.current()).attachments.values()];
        return notes.filter(({ hash }) => shelf.has(hash)).sort((a, b) => compareText(a.hash, b.hash));
      }),

    detach: (hash) =>
      call(() =>
        journal.exclusive(({ contents, append }) => {
          if (!contents.attachments.has(hash)) return;
          append(JSON.stringify({ detached: hash }));
          shelf.remove(hash);
        }),
      ),

    check: () =>
      call(async () => {
        const { attachments } = await journal.current();
        return reportOf({
          ...recordsIn(journal.reread()),
          attachments: [...attachments.keys()].flatMap((hash): readonly CheckedAttachment[] => {
            const bytes = shelf.bytes(hash);
            return bytes === null ? [] : [{ hash, recomputed: sha256Hex(bytes) }];
          }),
        });
      }),

    close: () =>
      inTurn(async () => {
        closed = true;
      }),
  };
}

/** One line: what is kept together is torn together. */
function lineOf(entries: readonly Entry[]): string {
  const texts = entries.map(textOf);
  return texts.length === 1 ? (texts[0] ?? '') : `[${texts.join(',')}]`;
}

function recordsIn(lines: readonly Line[]): {
  readonly records: readonly CheckedRecord[];
  readonly faults: readonly [];
} {
  const records = lines.flatMap(({ position, content }): readonly CheckedRecord[] => {
    if (content.type === 'unreadable') return [{ position, record: { ok: false, why: content.why } }];
    return content.type === 'records' ? content.records : [];
  });
  return { records, faults: [] };
}
