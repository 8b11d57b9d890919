import { bad, check, good, type Outcome, type Problem } from '@loamwright/science';
import type { Entry } from '../entry/entry.ts';
import { type BaySetUp, baySetUp } from './bay.ts';
import { type BeanTested, beanTested } from './bean-test.ts';
import {
  type BedSetUp,
  bedSetUp,
  type Harvested,
  harvested,
  type SoilTested,
  type Sown,
  type Spread,
  soilTested,
  sown,
  spread,
} from './bed.ts';
import { type LocalClause, localClause } from './clause.ts';
import {
  type Combined,
  combined,
  type Finished,
  finished,
  type HeapBuilt,
  type HeapFed,
  heapBuilt,
  heapFed,
  type Screened,
  type Split,
  screened,
  split,
} from './heap.ts';
import type { Kind } from './kind.ts';
import { type MaterialDescribed, type MaterialMeasured, materialDescribed, materialMeasured } from './material.ts';
import {
  type AttachmentRemoved,
  attachmentRemoved,
  type Note,
  note,
  type Photo,
  photo,
  type Series,
  series,
  type Withdrawal,
  withdrawal,
} from './record.ts';
import { type RipenessTested, ripenessTested } from './ripeness-test.ts';
import { type StockIn, type StockOut, stockIn, stockOut } from './stock.ts';
import {
  type Covered,
  covered,
  type Moved,
  moved,
  type Reading,
  reading,
  type Turned,
  turned,
  type Watered,
  watered,
} from './tending.ts';

/** The body of each kind. */
export interface Bodies {
  readonly 'material-described': MaterialDescribed;
  readonly 'material-measured': MaterialMeasured;
  readonly 'stock-in': StockIn;
  readonly 'stock-out': StockOut;
  readonly 'bay-set-up': BaySetUp;
  readonly 'heap-built': HeapBuilt;
  readonly 'heap-fed': HeapFed;
  readonly reading: Reading;
  readonly turned: Turned;
  readonly watered: Watered;
  readonly covered: Covered;
  readonly moved: Moved;
  readonly combined: Combined;
  readonly split: Split;
  readonly screened: Screened;
  readonly finished: Finished;
  readonly spread: Spread;
  readonly 'bed-set-up': BedSetUp;
  readonly sown: Sown;
  readonly harvested: Harvested;
  readonly 'soil-tested': SoilTested;
  readonly 'bean-tested': BeanTested;
  readonly 'ripeness-tested': RipenessTested;
  readonly note: Note;
  readonly photo: Photo;
  readonly series: Series;
  readonly 'attachment-removed': AttachmentRemoved;
  readonly 'local-clause': LocalClause;
  readonly withdrawal: Withdrawal;
}

export type KindId = keyof Bodies;

/** Every kind this version knows, by id. Any other kind is kept, shown as unread and passed on. */
export const kinds: { readonly [Id in KindId]: Kind<Bodies[Id]> } = {
  'material-described': materialDescribed,
  'material-measured': materialMeasured,
  'stock-in': stockIn,
  'stock-out': stockOut,
  'bay-set-up': baySetUp,
  'heap-built': heapBuilt,
  'heap-fed': heapFed,
  reading,
  turned,
  watered,
  covered,
  moved,
  combined,
  split,
  screened,
  finished,
  spread,
  'bed-set-up': bedSetUp,
  sown,
  harvested,
  'soil-tested': soilTested,
  'bean-tested': beanTested,
  'ripeness-tested': ripenessTested,
  note,
  photo,
  series,
  'attachment-removed': attachmentRemoved,
  'local-clause': localClause,
  withdrawal,
};

export function isKindId(kind: string): kind is KindId {
  return Object.hasOwn(kinds, kind);
}

/** An entry whose body has been read: what happened, to which subject. */
export type Told<Id extends KindId = KindId> = {
  readonly [K in Id]: {
    readonly kind: K;
    readonly entry: Entry;
    /** Id of the subject; empty for kinds that may be about anything. */
    readonly subject: string;
    readonly body: Bodies[K];
  };
}[Id];

/**
 * Reads the body of an entry. Problems: `newer-header`, `unknown-kind`, `newer-version` (all three: keep it,
 * show it as unread), `about-wrong`, and those of the body's schema, with paths that begin at `body`.
 */
export function tell(entry: Entry): Outcome<Told> {
  if (entry.v > 1) return bad(problem('newer-header', 'v', String(entry.v), '1'));
  if (!isKindId(entry.kind)) return bad(problem('unknown-kind', 'kind', entry.kind, Object.keys(kinds).join(' | ')));
  const kind = kinds[entry.kind];
  if (entry.kv > kind.kv) return bad(problem('newer-version', 'kv', String(entry.kv), `at most ${kind.kv}`));
  const withdraws = entry.withdraws !== undefined;
  if (withdraws !== (entry.kind === 'withdrawal'))
    return bad(
      problem(
        'withdraws-wrong',
        'withdraws',
        entry.kind,
        'an entry that withdraws is of the kind withdrawal, and only such',
      ),
    );
  const subject = subjectOf(entry, kind.subject);
  if (subject === undefined)
    return bad(
      problem('about-wrong', 'about', JSON.stringify(entry.about).slice(0, 60), `exactly one ${kind.subject}`),
    );
  const checked = check<unknown>(kind.body, entry.body);
  if (!checked.ok) return bad(...checked.problems.map(insideBody));
  return good({ kind: entry.kind, entry, subject, body: entry.body } as unknown as Told);
}

function subjectOf(entry: Entry, type: string | null): string | undefined {
  if (type === null) return '';
  let subject: string | undefined;
  for (const about of entry.about) {
    if (about.type !== type) continue;
    if (subject !== undefined) return undefined;
    subject = about.id;
  }
  return subject;
}

function insideBody(inner: Problem): Problem {
  return { ...inner, path: inner.path === '' ? 'body' : `body.${inner.path}` };
}

function problem(code: string, path: string, found: string, wanted: string): Problem {
  return { code, path, found, wanted };
}
