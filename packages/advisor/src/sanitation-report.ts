import {
  bearsOnGardens,
  type CautionId,
  type Day,
  type Demand,
  type RuleVerdict,
  type SanitationCheck,
  type SanitationLog,
} from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import type { SkinFound } from './cold-skin.ts';
import { dayWords } from './day-words.ts';
import { height, say, sayOf, temperature } from './saying.ts';

/** What the rules say of a log, in sentences. */
export interface SanitationReport {
  readonly answer: Saying;
  readonly counts: Saying;
  /** The rules that mean such a heap, in the table's order. */
  readonly rules: readonly Saying[];
  readonly notes: readonly Saying[];
  readonly cautions: readonly CautionId[];
}

/**
 * The answer of `sanitation-check` in sentences.
 *
 * @param today a day that could have been full before it is not promised
 */
export function sanitationReport(
  log: SanitationLog,
  found: SanitationCheck,
  skin: SkinFound | null,
  today: Day,
): SanitationReport {
  const meant = found.rules.filter(({ verdict }) => verdict !== 'not-meant');
  const others = found.rules.filter(({ demands }) => demands.some(({ why }) => why === 'not-this-way'));
  return {
    answer: answerOf(log, meant, today),
    counts: sayOf('sanitation.counts', found.countsAs),
    rules: [
      ...meant.map(lineOf),
      ...(others.length === 0 ? [] : [say('sanitation.not-meant', { rules: others.map(nameOf) })]),
    ],
    notes: [
      ...loggedWords(found),
      ...(skin === null ? [] : [skinWords(skin), ...turnsWords(skin)]),
      say('sanitation.home'),
      say('sanitation.ask'),
    ],
    cautions: found.cautions,
  };
}

const nameOf = ({ rule }: RuleVerdict): Saying => sayOf('sanitation.rule', rule);

function answerOf(log: SanitationLog, meant: readonly RuleVerdict[], today: Day): Saying {
  const met = meant.filter(({ verdict }) => verdict === 'met');
  const bearing = met.filter(({ rule }) => bearsOnGardens(rule));
  if (bearing.length > 0) return say('sanitation.answer.met', { rules: bearing.map(nameOf) });
  if (!log.animalMatter) return say('sanitation.answer.plants-only');
  if (log.readings.length === 0) return say('sanitation.answer.nothing-logged');
  const bears = meant.filter(({ rule }) => bearsOnGardens(rule));
  const takesAny = log.method === 'unturned' && bears.length > 0;
  if (met.length > 0 && !takesAny) return say('sanitation.answer.sludge-only', { rules: met.map(nameOf) });
  const [nearest] = (bears.length > 0 ? bears : meant).toSorted(
    (a, b) => Number(b.canStill) - Number(a.canStill) || open(a).length - open(b).length,
  );
  if (nearest === undefined) return say('sanitation.answer.none-meant');
  const places = { rule: nameOf(nearest), missing: missingOf(nearest) };
  if (takesAny) return say('sanitation.answer.unturned', places);
  return nearest.earliest_day === undefined || nearest.earliest_day < today
    ? say('sanitation.answer.nearest', places)
    : say('sanitation.answer.nearest-earliest', { ...places, day: dayWords(nearest.earliest_day) });
}

function open({ demands }: RuleVerdict): readonly Demand[] {
  return demands.filter(({ verdict }) => verdict === 'not-yet' || verdict === 'cannot-be-shown');
}

function missingOf(rule: RuleVerdict): readonly Saying[] {
  return open(rule).map(({ demand, why, have, want, at_degC }) =>
    sayOf(`sanitation.missing.${demand}`, why, {
      have: Math.round(have ?? 0),
      want: Math.round(want ?? 0),
      ...(at_degC !== undefined && { temp: temperature(at_degC) }),
    }),
  );
}

function lineOf(rule: RuleVerdict): Saying {
  const apart = rule.demands.some(({ why }) => why === 'apart-unsaid');
  const key = rule.verdict === 'met' ? (apart ? 'met-apart' : 'met') : rule.canStill ? rule.verdict : 'lost';
  return say('sanitation.detail', {
    line: sayOf('sanitation.line', key, { rule: nameOf(rule), missing: missingOf(rule) }),
    place: rule.place,
    recalled: rule.mark === 'memory' ? 1 : 0,
  });
}

function loggedWords({ logged }: SanitationCheck): readonly Saying[] {
  const { days, hottest_degC, before } = logged;
  return [
    ...(hottest_degC === undefined ? [] : [say('sanitation.logged', { days, temp: temperature(hottest_degC) })]),
    ...(before === 0 ? [] : [say('sanitation.before', { count: before })]),
    ...(days === 0 ? [] : [say('sanitation.day')]),
  ];
}

/** Percent to two digits: nobody has measured it. */
function percent(share: number): string {
  return String(Number((100 * share).toPrecision(2)));
}

function skinWords({ width_m, turns, long, dome }: SkinFound): Saying {
  return say('sanitation.skin', {
    width: height(width_m),
    cold: percent(long.cold_share.p50),
    coldest: percent(dome.cold_share.p50),
    turns,
    left: percent(long.unheated_share.p50),
    most: percent(dome.unheated_share.p50),
  });
}

/** How many turnings would do, from the shape that wants fewest to the one that wants most. */
function turnsWords({ want_logs, long, dome }: SkinFound): readonly Saying[] {
  if (want_logs === undefined || long.turnsWanted === undefined || dome.turnsWanted === undefined) return [];
  const places = { parts: 10 ** want_logs, turns: long.turnsWanted.p50, most: dome.turnsWanted.p50 };
  return [say('sanitation.skin.turns', places)];
}
