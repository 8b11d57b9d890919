import type { About, CheckReport, Entry, Heap, Holding } from '@loamwright/daybook';
import {
  type CautionId,
  check,
  type Draws,
  type HeapFacts,
  inOrder,
  recordKeeping,
  type SanitationInput,
  sanitationCheck,
} from '@loamwright/science';
import type { UnitSystem } from '@loamwright/units';
import type { Saying } from '@loamwright/words';
import { type DaybookLine, daybookLines } from './daybook-lines.ts';
import { heapLog } from './heap-log.ts';
import { bedName, heapName } from './names.ts';
import { placeBroken } from './place-broken.ts';
import { type SanitationReport, sanitationReport } from './sanitation-report.ts';
import { say, sayOf } from './saying.ts';

/** One entry of a record pack, and how it came to say what it says. */
export interface RecordLine extends DaybookLine {
  /** The device's own number of it. */
  readonly n: number;
  /** Of a correction: the entry that was first written, and what it said. */
  readonly corrects: { readonly entry: string; readonly said: Saying; readonly by: string } | null;
  /** Of what was corrected or taken back: what stands in its place; null for what was only taken back. */
  readonly became: { readonly entry: string; readonly said: Saying; readonly by: string } | null;
}

/** What the rules say of one heap, on the day asked. */
export interface RecordVerdict {
  readonly heap: string;
  readonly name: Saying;
  /** The instant as of which the log was read: now, or that of its spreading on a bed. */
  readonly at: string;
  /** The clauses of the place that it breaks, which come before its log; null where it breaks none. */
  readonly place: Saying | null;
  /** Null where the log can't be judged at all. */
  readonly report: SanitationReport | null;
}

/** The grower's own record of one heap or bed. It certifies nothing, and `statement` says so. */
export interface RecordPack {
  readonly of: About;
  readonly name: Saying;
  readonly statement: readonly Saying[];
  /** Every entry about it, the oldest first: also what was corrected, taken back, in doubt or can't be read. */
  readonly lines: readonly RecordLine[];
  readonly verdicts: readonly RecordVerdict[];
  readonly checked: CheckReport;
  /** Nothing is changed, missing or in doubt in the whole daybook. */
  readonly sound: boolean;
  /** Entries of this pack that the check found changed, out of their chain or in several versions. */
  readonly inDoubt: readonly string[];
  readonly cautions: readonly CautionId[];
}

/** What a record pack is made from, besides the holding. */
export interface RecordPackNeeds {
  /** What `holding` was folded from. */
  readonly entries: readonly Entry[];
  /** What the keeping's own check of the whole daybook found. */
  readonly checked: CheckReport;
  readonly now: string;
  readonly draws: Draws;
  /** By which a figure without a unit in a clause is read. */
  readonly system: UnitSystem;
  /** What the grower says of a heap beside the daybook. */
  readonly told?: ((heap: Heap) => HeapFacts) | undefined;
}

/**
 * The record pack of a heap or a bed: what went in, readings, turnings and the rest, who wrote what when, what was
 * corrected, what the rules say, and whether the daybook's chain holds. Of a bed, the heaps spread on it are judged as their
 * logs stood on that day.
 */
export function recordPack(of: About & { type: 'heap' | 'bed' }, holding: Holding, needs: RecordPackNeeds): RecordPack {
  const { entries, checked, now } = needs;
  const chosen = closure(entries, namingIds(of, holding));
  const all = daybookLines(entries, holding);
  const byId = new Map(all.map((line) => [line.entry, line]));
  const numbers = new Map(entries.map((entry) => [`${entry.id} ${entry.sum}`, entry]));
  const lines = all
    .filter(({ entry }) => chosen.has(entry))
    .toReversed()
    .map((line) => recordLine(line, numbers.get(`${line.entry} ${line.sum}`), byId));
  const verdicts = judgedHeaps(of, holding, now).map(({ heap, at }) => verdictOf(heap, at, holding, needs));
  return {
    of,
    name: of.type === 'heap' ? heapName(holding, of.id) : bedName(holding, of.id),
    statement: [say('record.statement'), say('record.statement.check'), keepSaying()],
    lines,
    verdicts,
    checked,
    sound: isSound(checked),
    inDoubt: doubtful(checked).filter((id) => chosen.has(id)),
    cautions: inOrder(['local-rules', ...verdicts.flatMap(({ report }) => report?.cautions ?? [])]),
  };
}

function keepSaying(): Saying {
  return say('record.keep', {
    rules: recordKeeping.map(({ id, years, mark }) =>
      sayOf('record.keep', id, { years, recalled: mark === 'memory' ? 1 : 0 }),
    ),
  });
}

function recordLine(line: DaybookLine, entry: Entry | undefined, byId: ReadonlyMap<string, DaybookLine>): RecordLine {
  const told = (id: string | null | undefined): RecordLine['became'] => {
    const other = id === undefined || id === null ? undefined : byId.get(id);
    return other === undefined ? null : { entry: other.entry, said: other.said, by: other.by };
  };
  return {
    ...line,
    n: entry?.n ?? 0,
    corrects: told(entry?.amends),
    became: line.status === 'amended' ? told(line.outBy) : null,
  };
}

/** Ids of the subjects that an entry of the pack is about: for a heap, those it came from as well. */
function namingIds(of: About, holding: Holding): (entry: Entry) => boolean {
  const heaps = of.type === 'heap' ? withOrigins(of.id, holding) : new Set<string>();
  const told = new Set([...heaps].flatMap((id) => holding.heaps.get(id)?.acts.map(({ entry }) => entry.id) ?? []));
  const isOf = ({ type, id }: About): boolean =>
    type === of.type && (id === of.id || (type === 'heap' && heaps.has(id)));
  return (entry) => told.has(entry.id) || entry.about.some(isOf);
}

function withOrigins(id: string, holding: Holding, seen: ReadonlySet<string> = new Set()): ReadonlySet<string> {
  if (seen.has(id)) return seen;
  const origins = holding.heaps.get(id)?.cameFrom.filter(({ type }) => type === 'heap') ?? [];
  return origins.reduce<ReadonlySet<string>>(
    (known, from) => withOrigins(from.id, holding, known),
    new Set([...seen, id]),
  );
}

/** The chosen entries, and all that correct them, take them back, or are corrected or taken back by them. */
function closure(entries: readonly Entry[], isChosen: (entry: Entry) => boolean): ReadonlySet<string> {
  const chosen = new Set(entries.filter(isChosen).map(({ id }) => id));
  const points = entries.flatMap(({ id, amends, withdraws }) => {
    const to = amends ?? withdraws;
    return to === undefined ? [] : [{ id, to }];
  });
  for (let before = -1; before < chosen.size; ) {
    before = chosen.size;
    for (const { id, to } of points) {
      if (chosen.has(to)) chosen.add(id);
      else if (chosen.has(id)) chosen.add(to);
    }
  }
  return chosen;
}

function judgedHeaps(of: About, holding: Holding, now: string): readonly { heap: Heap; at: string }[] {
  const heapAt = (id: string, at: string): readonly { heap: Heap; at: string }[] => {
    const heap = holding.heaps.get(id);
    return heap === undefined ? [] : [{ heap, at }];
  };
  if (of.type === 'heap') return heapAt(of.id, now);
  const spreadings = holding.beds.get(of.id)?.spreadings ?? [];
  return spreadings.flatMap(({ told: { body, entry } }) =>
    body.of.type === 'heap' ? heapAt(body.of.id, entry.happened) : [],
  );
}

function verdictOf(heap: Heap, at: string, holding: Holding, { draws, system, told }: RecordPackNeeds): RecordVerdict {
  const place = placeBroken(heap, holding, { now: at, draws, system, told: told?.(heap) });
  const places = { heap: heap.id, name: heapName(holding, heap.id), at, place };
  const log = heapLog(holding, heap, at);
  const input = check<SanitationInput>(sanitationCheck.input, { log });
  const found = input.ok ? sanitationCheck.run(input.value, { draws }) : input;
  return { ...places, report: found.ok ? sanitationReport(log, found.value, null, at.slice(0, 10)) : null };
}

function isSound(checked: CheckReport): boolean {
  const { changed, gaps, breaks, doubled, conflicts, unreadable, attachmentsChanged, attachmentsMissing } = checked;
  const findings = [changed, gaps, breaks, doubled, conflicts, unreadable, attachmentsChanged, attachmentsMissing];
  return findings.every(({ length }) => length === 0);
}

function doubtful({ changed, breaks, conflicts, doubled }: CheckReport): readonly string[] {
  return [
    ...new Set([...[...changed, ...breaks, ...conflicts].map(({ id }) => id), ...doubled.flatMap(({ ids }) => ids)]),
  ];
}
