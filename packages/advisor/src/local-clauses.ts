import type { Entry, Heap, Holding } from '@loamwright/daybook';
import {
  bearsOnGardens,
  type Clause,
  type ClauseCheck,
  type ClauseCheckInput,
  check,
  clauseCheck,
  type Draws,
  good,
  type HeapFacts,
  type HeapMethod,
  type LocalCode,
  likely,
  materialById,
  type Outcome,
  type SanitationInput,
  sanitationCheck,
  stuffOf,
  type WhoseId,
  whoseIds,
} from '@loamwright/science';
import type { UnitSystem } from '@loamwright/units';
import { readClause } from './clause-phrase.ts';
import { heapLog } from './heap-log.ts';
import { makeUp } from './make-up.ts';

/** One phrase of the daybook's clauses. */
export interface KeptClause {
  /** Id of the clause that its entry is about. */
  readonly subject: string;
  /** As it was written down. */
  readonly phrase: string;
  /** Undefined where it can't be read here: then it is held against nothing. */
  readonly clause: Clause | undefined;
}

/** What the daybook keeps under one name, in the order in which it was written down. */
export interface KeptCode {
  readonly of: string;
  readonly whose: WhoseId;
  readonly clauses: readonly KeptClause[];
}

/** The clauses of the daybook, a phrase on each line; entries of one name are one code. */
export function keptClauses(holding: Holding, system: UnitSystem): readonly KeptCode[] {
  const codes = new Map<string, KeptCode>();
  for (const { subject, body } of holding.clauses.values()) {
    const whose = whoseIds.find((one) => one === body.source) ?? 'town';
    const clauses = phrasesOf(body.text).map((phrase): KeptClause => {
      const read = readClause(phrase, body.title, system);
      return { subject, phrase, clause: read.ok ? read.value : undefined };
    });
    codes.set(body.title, { of: body.title, whose, clauses: [...(codes.get(body.title)?.clauses ?? []), ...clauses] });
  }
  return [...codes.values()].filter(({ clauses }) => clauses.length > 0);
}

export function phrasesOf(text: string): readonly string[] {
  return text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');
}

/** What of the kept clauses can be held against a heap. */
export function codesOf(kept: readonly KeptCode[]): readonly LocalCode[] {
  return kept.flatMap(({ of, whose, clauses }) => {
    const read = clauses.flatMap(({ clause }) => (clause === undefined ? [] : [clause]));
    return read.length === 0 ? [] : [{ of, whose, clauses: read }];
  });
}

/**
 * Ids of the entries that must be withdrawn so that nothing of a clause is left: every one in force that is about it, by
 * its first writing, since taking back a later one would bring the earlier back.
 *
 * @param entries what `holding` was folded from
 */
export function entriesOfClause(subject: string, holding: Holding, entries: readonly Entry[]): readonly string[] {
  const byId = new Map(entries.map((entry) => [entry.id, entry]));
  const first = (entry: Entry): Entry => {
    const before = entry.amends === undefined ? undefined : byId.get(entry.amends);
    return before === undefined ? entry : first(before);
  };
  const own = holding.inForce.filter(
    ({ kind, about }) => kind === 'local-clause' && about.some(({ type, id }) => type === 'clause' && id === subject),
  );
  return [...new Set(own.map((entry) => first(entry).id))];
}

/** What the daybook knows of a heap that clauses ask: its size as built or that of its bay, and what went in. */
export function heapFacts(heap: Heap, holding: Holding): HeapFacts {
  const bay = heap.bay === null ? undefined : holding.bays.get(heap.bay)?.setUp.body;
  const { width_m, depth_m, height_m } = heap.built?.body.size ?? bay ?? {};
  const stuff = [
    ...new Set(makeUp(heap).map(({ put: { material } }) => stuffOf(material, materialById(material)?.class))),
  ];
  return {
    ...(width_m !== undefined && { width_m: likely(width_m) }),
    ...(depth_m !== undefined && { depth_m: likely(depth_m) }),
    ...(height_m !== undefined && { height_m: likely(height_m) }),
    ...(stuff.length > 0 && { stuff }),
  };
}

/** When and how a log is read. */
export interface LogAsked {
  readonly now: string;
  readonly draws: Draws;
  /** Where it is known better than the daybook tells. */
  readonly method?: HeapMethod | undefined;
}

/** Whether the heap's log meets a rule that bears on gardens; undefined where nothing of animals is in it, so that none asks. */
export function logMeetsARule(
  heap: Heap,
  holding: Holding,
  { now, draws, method }: LogAsked,
): Outcome<boolean | undefined> {
  const log = heapLog(holding, heap, now, method);
  if (!log.animalMatter) return good(undefined);
  const input = check<SanitationInput>(sanitationCheck.input, { log });
  if (!input.ok) return input;
  const found = sanitationCheck.run(input.value, { draws });
  if (!found.ok) return found;
  return good(found.value.rules.some(({ rule, verdict }) => verdict === 'met' && bearsOnGardens(rule)));
}

/** A heap of the daybook held against the clauses of the daybook. */
export interface HeapClauses {
  readonly found: ClauseCheck;
  readonly logMeets: boolean | undefined;
}

/**
 * A heap held against what the daybook keeps; null where it keeps no clause that can be read.
 *
 * @param told what the grower says of the heap beside the daybook; it goes before what the daybook knows
 */
export function heapClauses(
  heap: Heap,
  holding: Holding,
  { kept, told, ...asked }: LogAsked & { readonly kept: readonly KeptCode[]; readonly told: HeapFacts },
): Outcome<HeapClauses> | null {
  const codes = codesOf(kept);
  if (codes.length === 0) return null;
  const met = logMeetsARule(heap, holding, asked);
  // A log that can't be judged is told on its own page; the clauses hold all the same.
  const logMeets = met.ok ? met.value : false;
  const input = check<ClauseCheckInput>(clauseCheck.input, {
    codes,
    heap: { ...heapFacts(heap, holding), ...told },
    ...(logMeets !== undefined && { logMeets }),
  });
  if (!input.ok) return input;
  const found = clauseCheck.run(input.value, { draws: asked.draws });
  return found.ok ? good({ found: found.value, logMeets }) : found;
}
