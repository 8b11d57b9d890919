import {
  type About,
  compareInFold,
  type Entry,
  type Holding,
  type LooseReason,
  type Precision,
  tell,
} from '@loamwright/daybook';
import type { Saying } from '@loamwright/words';
import { entrySaying } from './entry-saying.ts';
import { say, sayOf } from './saying.ts';
import { typedAmount } from './typed.ts';

/** How an entry stands. */
export type LineStatus = 'in-force' | 'amended' | 'withdrawn' | 'waiting' | 'conflict' | 'unread' | 'loose';

/** One entry of the daybook, readable. */
export interface DaybookLine {
  /** Id and sum: one id with two sums makes two lines. */
  readonly entry: string;
  readonly sum: string;
  readonly happened: string;
  readonly zone: string;
  readonly precision: Precision;
  readonly written: string;
  readonly by: string;
  readonly device: string;
  readonly kind: string;
  readonly about: readonly About[];
  readonly said: Saying;
  /** The amounts in the measures and units that they were given in, by a person or by a build card. */
  readonly typed: readonly Saying[];
  readonly status: LineStatus;
  /** Why it does not count, that it corrects another, and what looks wrong about its dates. */
  readonly remarks: readonly Saying[];
  /** Id of the entry that corrects it or takes it back. */
  readonly outBy: string | null;
}

export interface DaybookOptions {
  /** Only entries about this. */
  readonly about?: About | undefined;
  /** Only so many, the newest. */
  readonly newest?: number | undefined;
}

/**
 * Every entry as a readable sentence, the newest first: those in force, corrected and taken back, those that wait or
 * can't be read, both versions of a doubtful one, and what looks wrong about the clocks. Nothing is left out.
 *
 * @param entries what `holding` was folded from.
 */
export function daybookLines(
  entries: readonly Entry[],
  holding: Holding,
  options: DaybookOptions = {},
): readonly DaybookLine[] {
  const { about, newest } = options;
  const byName = new Map(entries.map((entry) => [`${entry.id} ${entry.sum}`, entry]));
  const chosen = [...byName.values()]
    .filter(
      (entry) => about === undefined || entry.about.some(({ type, id }) => type === about.type && id === about.id),
    )
    .sort((a, b) => compareInFold(b, a));
  const book: Book = {
    holding,
    standing: standings(holding),
    byId: new Map(entries.map((entry) => [entry.id, entry])),
  };
  return chosen.slice(0, newest ?? chosen.length).map((entry) => lineOf(entry, book));
}

interface Standing {
  readonly status: LineStatus;
  readonly remarks: readonly Saying[];
  readonly outBy: string | null;
}

interface Book {
  readonly holding: Holding;
  readonly standing: Standings;
  readonly byId: ReadonlyMap<string, Entry>;
}

interface Standings {
  of(entry: Entry): Standing;
  warnings(entry: Entry): readonly Saying[];
}

/** Looks up how entries stand; one that is in none of the fold's lists is in force (or a withdrawal that has effect). */
function standings(holding: Holding): Standings {
  const byId = new Map<string, Standing>();
  const put = (entry: Entry, status: LineStatus, remarks: readonly Saying[], outBy: string | null = null): void => {
    byId.set(entry.id, { status, remarks, outBy });
  };
  for (const { entry, why, by } of holding.outOfForce) put(entry, why, [sayOf('advisor.status', why)], by);
  for (const { entry } of holding.waiting) put(entry, 'waiting', [say('advisor.status.waiting')]);
  for (const { entry } of holding.unread) put(entry, 'unread', []);
  for (const { entry, why } of holding.loose) put(entry, 'loose', [say(looseWords[why])]);
  for (const { versions, withdrawnBy } of holding.conflicts) {
    for (const entry of versions) put(entry, 'conflict', [say('advisor.status.conflict')], withdrawnBy);
  }
  const warnings = new Map<string, Saying[]>();
  for (const { entry, code } of holding.warnings) {
    warnings.set(entry, [...(warnings.get(entry) ?? []), sayOf('advisor.warning', code)]);
  }
  return {
    of: (entry) => byId.get(entry.id) ?? { status: 'in-force', remarks: correction(entry), outBy: null },
    warnings: (entry) => warnings.get(entry.id) ?? [],
  };
}

const looseWords: Readonly<Record<LooseReason, Saying['key']>> = {
  'amends-each-other': 'advisor.loose.amends-each-other',
  'withdraw-each-other': 'advisor.loose.withdraw-each-other',
  'amends-withdrawal': 'advisor.loose.amends-withdrawal',
  'amends-conflict': 'advisor.loose.amends-conflict',
  'other-holding': 'advisor.loose.other-holding',
  'no-such-heap': 'advisor.loose.no-such-heap',
  'no-such-bed': 'advisor.loose.no-such-bed',
  'already-built': 'advisor.loose.already-built',
  'same-heap': 'advisor.loose.same-heap',
};

function correction(entry: Entry): readonly Saying[] {
  return entry.amends === undefined ? [] : [say('advisor.status.correction')];
}

function lineOf(entry: Entry, book: Book): DaybookLine {
  const { id, sum, happened, zone, precision, written, by, device, kind, about } = entry;
  const { status, remarks, outBy } = book.standing.of(entry);
  return {
    entry: id,
    sum,
    happened,
    zone,
    precision,
    written,
    by,
    device,
    kind,
    about,
    said: saidOf(entry, book),
    typed: Object.values(entry.entered ?? {}).map((entered) =>
      say('advisor.book.as-given', { what: typedAmount(entered) }),
    ),
    status,
    remarks: [...remarks, ...book.standing.warnings(entry)],
    outBy,
  };
}

function saidOf(entry: Entry, { holding, byId }: Book): Saying {
  const told = tell(entry);
  if (!told.ok) return unreadSaying(entry, told.problems[0]?.code);
  const taken = entry.withdraws === undefined ? undefined : byId.get(entry.withdraws);
  const takenTold = taken === undefined ? undefined : tell(taken);
  if (told.value.kind !== 'withdrawal' || takenTold?.ok !== true) return entrySaying(told.value, holding);
  const what = entrySaying(takenTold.value, holding);
  const { why } = told.value.body;
  return why === undefined
    ? say('advisor.book.withdrawal-of', { what })
    : say('advisor.book.withdrawal-of-why', { what, why });
}

function unreadSaying({ kind, kv }: Entry, code: string | undefined): Saying {
  const newer = code === 'newer-header' || code === 'unknown-kind' || code === 'newer-version';
  return newer ? say('advisor.book.unread', { kind, version: kv }) : say('advisor.book.unfit', { kind });
}
