import { type Calculation, good, type Outcome } from '../catalogue/index.ts';
import {
  type Clause,
  type ClauseCheck,
  type ClauseCheckInput,
  type ClauseFinding,
  type ClauseVerdict,
  type CodeVerdict,
  clauseCheckInputSchema,
  clauseCheckSchema,
  type DistanceKind,
  type HeapFacts,
  type LocalCode,
  type PlainKind,
  type Standing,
} from './clause-check-io.ts';
import { fallsUnder, type NamedId, type StuffId } from './stuff.ts';

/** A figure typed in feet and held in metres differs from its limit in the last digits only. */
const ROUNDING = 1e-9;

function run({ codes, heap, logMeets }: ClauseCheckInput): Outcome<ClauseCheck> {
  const judged = codes.map((code) => judge(code, heap));
  return good({
    standing: standingOf(
      judged.map(({ verdict }) => verdict),
      logMeets,
    ),
    codes: judged,
    cautions: ['local-rules'],
  });
}

/** A failed clause comes before all a log can show, and an open question before a log that falls short. */
function standingOf(verdicts: readonly ClauseVerdict[], logMeets: boolean | undefined): Standing {
  const worst = worstOf(verdicts);
  if (worst === 'fail') return 'clause-fails';
  if (worst === 'not-stated') return 'ask-first';
  return logMeets === false ? 'log-falls-short' : 'clauses-pass';
}

function worstOf(verdicts: readonly ClauseVerdict[]): ClauseVerdict {
  return (['fail', 'not-stated'] as const).find((one) => verdicts.includes(one)) ?? 'pass';
}

function judge({ of, whose, clauses }: LocalCode, heap: HeapFacts): CodeVerdict {
  const findings = [...clauses.map((clause) => findingOf(clause, heap)), ...silenceOf(clauses, heap)];
  return { of, whose, verdict: worstOf(findings.map(({ verdict }) => verdict)), findings };
}

function findingOf(clause: Clause, heap: HeapFacts): ClauseFinding {
  switch (clause.kind) {
    case 'volume':
      return atMost(clause.kind, volumeOf(heap), volumeLimit(clause, heap));
    case 'height':
      return atMost(clause.kind, heap.height_m, clause.most_m);
    case 'footprint':
      return atMost(clause.kind, footprintOf(heap), clause.most_m2);
    case 'lot-share':
      return atMost(clause.kind, lotShareOf(heap), clause.most_pctOfLot);
    case 'sides':
      return sides(clause, heap);
    case 'from-line':
    case 'from-house':
    case 'from-water':
      return atLeast(clause.kind, heap[distanceFact[clause.kind]], clause.least_m);
    case 'bars':
      return bars(clause.stuff, heap);
    case 'allows':
      return allows(clause.stuff, clause.only === true, heap);
    case 'scraps-buried':
      return hasNoScraps(heap) ? { kind: clause.kind, verdict: 'pass', why: 'none-of-it' } : plain(clause.kind, heap);
    case 'rear-yard':
    case 'covered':
    case 'enclosed':
      return plain(clause.kind, heap);
  }
}

const distanceFact: Readonly<Record<DistanceKind, 'fromLine_m' | 'fromHouse_m' | 'fromWater_m'>> = {
  'from-line': 'fromLine_m',
  'from-house': 'fromHouse_m',
  'from-water': 'fromWater_m',
};

const plainFact: Readonly<Record<PlainKind, 'rearYard' | 'covered' | 'enclosed' | 'scrapsBuried'>> = {
  'rear-yard': 'rearYard',
  covered: 'covered',
  enclosed: 'enclosed',
  'scraps-buried': 'scrapsBuried',
};

function footprintOf({ width_m, depth_m }: HeapFacts): number | undefined {
  return width_m === undefined || depth_m === undefined ? undefined : width_m * depth_m;
}

function volumeOf(heap: HeapFacts): number | undefined {
  const footprint = footprintOf(heap);
  if (heap.volume_m3 !== undefined) return heap.volume_m3;
  return footprint === undefined || heap.height_m === undefined ? undefined : footprint * heap.height_m;
}

function lotShareOf(heap: HeapFacts): number | undefined {
  const footprint = footprintOf(heap);
  if (footprint === undefined || heap.lot_m2 === undefined) return undefined;
  return (100 * footprint) / heap.lot_m2;
}

/** "So much for each so much of lot" grows with the lot; without the lot's size there is no limit to hold it against. */
function volumeLimit({ most_m3, perLot_m2 }: Clause & { kind: 'volume' }, { lot_m2 }: HeapFacts): Limit {
  if (most_m3 === undefined || perLot_m2 === undefined) return most_m3;
  return lot_m2 === undefined ? 'grower-silent' : (most_m3 * lot_m2) / perLot_m2;
}

/** Undefined where the clause names no figure; `grower-silent` where it hangs on a fact that was not told. */
type Limit = number | undefined | 'grower-silent';

function against(
  kind: ClauseFinding['kind'],
  have: number | undefined,
  limit: Limit,
  fits: (have: number, limit: number) => boolean,
): ClauseFinding {
  const figures = { ...(have !== undefined && { have }), ...(typeof limit === 'number' && { limit }) };
  if (limit === undefined) return { kind, verdict: 'not-stated', why: 'code-silent', ...figures };
  if (have === undefined || limit === 'grower-silent')
    return { kind, verdict: 'not-stated', why: 'grower-silent', ...figures };
  return fits(have, limit)
    ? { kind, verdict: 'pass', why: 'within', ...figures }
    : { kind, verdict: 'fail', why: 'beyond', ...figures };
}

function atMost(kind: ClauseFinding['kind'], have: number | undefined, limit: Limit): ClauseFinding {
  return against(kind, have, limit, (found, most) => found <= most * (1 + ROUNDING));
}

function atLeast(kind: DistanceKind, have: number | undefined, limit: Limit): ClauseFinding {
  return against(kind, have, limit, (found, least) => found >= least * (1 - ROUNDING));
}

/** The longer side of the heap against the longer of the clause, the shorter against the shorter; the worse is told. */
function sides({ kind, long_m, short_m }: Clause & { kind: 'sides' }, { width_m, depth_m }: HeapFacts): ClauseFinding {
  if (width_m === undefined || depth_m === undefined) return atMost(kind, undefined, Math.max(long_m, short_m));
  const long = atMost(kind, Math.max(width_m, depth_m), Math.max(long_m, short_m));
  const short = atMost(kind, Math.min(width_m, depth_m), Math.min(long_m, short_m));
  return long.verdict === 'fail' ? long : short.verdict === 'fail' ? short : long;
}

function plain(kind: PlainKind, heap: HeapFacts): ClauseFinding {
  const told = heap[plainFact[kind]];
  if (told === undefined) return { kind, verdict: 'not-stated', why: 'grower-silent' };
  return told ? { kind, verdict: 'pass', why: 'as-asked' } : { kind, verdict: 'fail', why: 'otherwise' };
}

const scraps: readonly StuffId[] = ['kitchen-scraps', 'meat-or-fish', 'dairy-or-fat'];

function hasNoScraps({ stuff }: HeapFacts): boolean {
  return stuff?.every((one) => !scraps.includes(one)) ?? false;
}

/** The sorts of the heap that fall under one of the words for sure, and those that only may. */
function sorted(
  stuff: readonly StuffId[],
  named: readonly NamedId[],
): Record<'is' | 'maybe' | 'no', readonly StuffId[]> {
  const of = (one: StuffId): 'is' | 'maybe' | 'no' => {
    const all = named.map((name) => fallsUnder(one, name));
    return (['is', 'maybe'] as const).find((how) => all.includes(how)) ?? 'no';
  };
  return {
    is: stuff.filter((one) => of(one) === 'is'),
    maybe: stuff.filter((one) => of(one) === 'maybe'),
    no: stuff.filter((one) => of(one) === 'no'),
  };
}

function bars(named: readonly NamedId[], { stuff }: HeapFacts): ClauseFinding {
  const kind = 'bars';
  if (stuff === undefined) return { kind, verdict: 'not-stated', why: 'grower-silent' };
  const { is, maybe } = sorted(stuff, named);
  if (is.length > 0) return { kind, verdict: 'fail', why: 'barred', stuff: is };
  if (maybe.length > 0) return { kind, verdict: 'not-stated', why: 'unclear', stuff: maybe };
  return { kind, verdict: 'pass', why: 'none-of-it' };
}

/** A clause that names stuff as allowed says nothing of the rest, unless it allows that alone. */
function allows(named: readonly NamedId[], only: boolean, { stuff }: HeapFacts): ClauseFinding {
  const kind = 'allows';
  if (stuff === undefined) return { kind, verdict: 'not-stated', why: 'grower-silent' };
  const { is, maybe, no } = sorted(stuff, named);
  if (only && no.length > 0) return { kind, verdict: 'fail', why: 'not-named', stuff: no };
  if (maybe.length > 0) return { kind, verdict: 'not-stated', why: 'unclear', stuff: maybe };
  return is.length > 0
    ? { kind, verdict: 'pass', why: 'named', stuff: is }
    : { kind, verdict: 'pass', why: 'none-of-it' };
}

/** What is in the heap and spoken of nowhere in the code: neither allowed by it nor barred. */
function silenceOf(clauses: readonly Clause[], { stuff = [] }: HeapFacts): readonly ClauseFinding[] {
  const spokenOf = (one: StuffId): boolean =>
    clauses.some((clause) => {
      if (clause.kind === 'scraps-buried') return one === 'kitchen-scraps';
      if (clause.kind === 'allows' && clause.only === true) return true;
      if (clause.kind !== 'allows' && clause.kind !== 'bars') return false;
      return clause.stuff.some((name) => fallsUnder(one, name) !== 'no');
    });
  const silent = [...new Set(stuff)].filter((one) => !spokenOf(one));
  return silent.length === 0 ? [] : [{ kind: 'silence', verdict: 'not-stated', why: 'code-silent', stuff: silent }];
}

/** A heap held against the clauses of a town, a landlord or a market. */
export const clauseCheck: Calculation<ClauseCheckInput, ClauseCheck> = {
  id: 'clause-check',
  title: 'A heap and the clauses of the place',
  summary:
    'Holds a heap as it is described against the clauses of the grower’s own town, landlord or market: size, distances, stuff, place and cover. Each clause passes, fails, or is not stated, by the code or by the grower. A failed clause comes before the best of logs. The authority itself decides.',
  input: clauseCheckInputSchema,
  output: clauseCheckSchema,
  sources: [
    { source: 'own-judgement', place: 'a clause is held as it is told; nothing is added to it', mark: 'derived' },
  ],
  cautions: ['local-rules'],
  example: {
    codes: [
      {
        of: 'Our town',
        whose: 'town',
        clauses: [
          { kind: 'height', most_m: 1.5 },
          { kind: 'from-line', least_m: 1.5 },
          { kind: 'lot-share', most_pctOfLot: 1 },
          { kind: 'bars', stuff: ['pet-waste'] },
          { kind: 'rear-yard' },
        ],
      },
    ],
    heap: {
      width_m: 1.2,
      depth_m: 1.2,
      height_m: 1.2,
      lot_m2: 1000,
      fromLine_m: 2,
      stuff: ['garden-stuff', 'rabbit-droppings'],
      rearYard: true,
    },
  },
  run,
};
