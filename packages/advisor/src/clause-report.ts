import type { CautionId, Clause, ClauseCheck, ClauseFinding, CodeVerdict, NamedId } from '@loamwright/science';
import type { Place, Saying } from '@loamwright/words';
import { area, bulk, height, say, sayOf } from './saying.ts';

/** The clauses of one town, landlord or market in sentences. */
export interface CodeReport {
  readonly verdict: Saying;
  readonly clauses: readonly Saying[];
}

/** A heap held against local clauses, in sentences. */
export interface ClauseReport {
  /** Failed clauses first, then what is not stated; the log comes last. */
  readonly answer: Saying;
  readonly codes: readonly CodeReport[];
  readonly notes: readonly Saying[];
  readonly cautions: readonly CautionId[];
}

/**
 * The answer of `clause-check` in sentences.
 *
 * @param logMeets whether the heap's log meets a rule, where there is one
 */
export function clauseReport(found: ClauseCheck, logMeets?: boolean): ClauseReport {
  return {
    answer: sayOf('clauses.answer', found.standing, {
      clauses: leading(found),
      log: logMeets === undefined ? 'none' : logMeets ? 'meets' : 'short',
    }),
    codes: found.codes.map((code) => ({
      verdict: sayOf('clauses.code', code.verdict, { of: code.of }),
      clauses: code.findings.map(lineOf),
    })),
    notes: [say('clauses.note.as-you-gave'), say('clauses.note.decides')],
    cautions: found.cautions,
  };
}

/** A clause by itself, as it binds. */
export function clauseSaying(clause: Clause): Saying {
  switch (clause.kind) {
    case 'volume': {
      const { most_m3, perLot_m2 } = clause;
      if (most_m3 === undefined) return untold(clause);
      const limit = bulk(most_m3);
      return perLot_m2 === undefined
        ? say('clauses.says.volume', { limit })
        : say('clauses.says.volume-per', { limit, lot: area(perLot_m2) });
    }
    case 'height':
      return clause.most_m === undefined
        ? untold(clause)
        : say('clauses.says.height', { limit: height(clause.most_m) });
    case 'footprint':
      return clause.most_m2 === undefined
        ? untold(clause)
        : say('clauses.says.footprint', { limit: area(clause.most_m2) });
    case 'lot-share':
      return clause.most_pctOfLot === undefined
        ? untold(clause)
        : say('clauses.says.lot-share', { limit: clause.most_pctOfLot });
    case 'sides':
      return say('clauses.says.sides', { long: height(clause.long_m), short: height(clause.short_m) });
    case 'from-line':
    case 'from-house':
    case 'from-water':
      return clause.least_m === undefined
        ? untold(clause)
        : sayOf('clauses.says', clause.kind, { limit: height(clause.least_m) });
    case 'bars':
      return say('clauses.says.bars', { stuff: namedWords(clause.stuff) });
    case 'allows':
      return say(clause.only === true ? 'clauses.says.allows-only' : 'clauses.says.allows', {
        stuff: namedWords(clause.stuff),
      });
    default:
      return sayOf('clauses.says', clause.kind);
  }
}

function untold({ kind }: Clause): Saying {
  return say('clauses.says.untold', { what: sayOf('clauses.what', kind) });
}

function namedWords(stuff: readonly NamedId[]): readonly Saying[] {
  return stuff.map((one) => sayOf('clauses.stuff', one));
}

function leading({ standing, codes }: ClauseCheck): readonly Saying[] {
  const each = (verdict: ClauseFinding['verdict'], tell: (code: CodeVerdict, finding: ClauseFinding) => Saying) =>
    codes.flatMap((code) =>
      code.findings.filter((finding) => finding.verdict === verdict).map((finding) => tell(code, finding)),
    );
  return standing === 'clause-fails' ? each('fail', failed) : each('not-stated', open);
}

function failed({ of }: CodeVerdict, finding: ClauseFinding): Saying {
  return say('clauses.failed', { of, what: sayOf('clauses.failed', finding.kind, placesOf(finding)) });
}

function open({ of }: CodeVerdict, finding: ClauseFinding): Saying {
  return say('clauses.open', { of, what: sayOf('clauses.open', finding.why, { what: whatOf(finding) }) });
}

function lineOf(finding: ClauseFinding): Saying {
  const what =
    finding.verdict === 'not-stated'
      ? sayOf('clauses.open', finding.why, { what: whatOf(finding) })
      : detailOf(finding);
  return sayOf('clauses.line', finding.verdict, { what });
}

function detailOf(finding: ClauseFinding): Saying {
  const places = { what: whatOf(finding), ...placesOf(finding) };
  if (finding.why === 'none-of-it') return say('clauses.detail.none', places);
  if (finding.limit === undefined) return whatOf(finding);
  if (finding.kind === 'lot-share') return say('clauses.detail.share', places);
  return say(finding.kind.startsWith('from-') ? 'clauses.detail.least' : 'clauses.detail.most', places);
}

function whatOf(finding: ClauseFinding): Saying {
  const what = sayOf('clauses.what', finding.kind);
  return finding.stuff === undefined ? what : say('clauses.what.with-stuff', { what, stuff: stuffWords(finding) });
}

function stuffWords({ stuff = [] }: ClauseFinding): readonly Saying[] {
  return stuff.map((one) => sayOf('clauses.stuff', one));
}

/** The figures of a finding, each in the unit of its kind. */
function placesOf(finding: ClauseFinding): Readonly<Record<string, Place>> {
  const { kind, have, limit } = finding;
  const shown = (figure: number): Place => {
    if (kind === 'volume') return bulk(figure);
    if (kind === 'footprint') return area(figure);
    return kind === 'lot-share' ? figure : height(figure);
  };
  return {
    stuff: stuffWords(finding),
    ...(have !== undefined && { have: shown(have) }),
    ...(limit !== undefined && { limit: shown(limit) }),
  };
}
