import {
  attachmentsOf,
  type CheckReport,
  checkChain,
  compareText,
  type Entry,
  type Head,
  type Position,
} from '@loamwright/daybook';
import type { StoredRecord } from './record.ts';

/** One record as it stands on the medium. */
export interface CheckedRecord {
  readonly position: Position;
  readonly record: StoredRecord;
}

/** One attachment as it stands on the medium. */
export interface CheckedAttachment {
  readonly hash: string;
  /** Hash of its bytes now. */
  readonly recomputed: string;
}

/** Everything a keeping found on its medium. */
export interface Findings {
  readonly records: readonly CheckedRecord[];
  readonly attachments: readonly CheckedAttachment[];
  /** Faults of the medium itself, such as an index that disagrees with its records. */
  readonly faults: CheckReport['unreadable'];
}

/** Puts what was found on the medium into one report (rule K21). */
export function reportOf({ records, attachments, faults }: Findings): CheckReport {
  const entries: Entry[] = [];
  const unreadable = [...faults];
  for (const { position, record } of records) {
    if (record.ok) entries.push(record.entry);
    else unreadable.push({ position, why: record.why });
  }
  const here = new Set(attachments.map(({ hash }) => hash));
  return {
    ...checkChain(entries),
    unreadable: unreadable.sort((a, b) => a.position - b.position),
    attachmentsChanged: attachments
      .filter(({ hash, recomputed }) => hash !== recomputed)
      .map(({ hash }) => hash)
      .sort(compareText),
    attachmentsMissing: attachmentsOf(entries).wanted.filter((hash) => !here.has(hash)),
  };
}

const filedBy = ['id', 'sum', 'device', 'n', 'prev'] as const;

/** A record that an index files under something else than it says: it would be looked for in the wrong place. */
export function misfiled({ position, record, head }: CheckedRecord & { readonly head: Head }): Findings['faults'] {
  if (!record.ok) return [];
  const { entry } = record;
  if (filedBy.every((field) => entry[field] === head[field])) return [];
  const why = `filed as entry ${head.id} (${head.device} ${head.n}), but it says ${entry.id} (${entry.device} ${entry.n})`;
  return [{ position, why }];
}
