import {
  type CautionId,
  type HarvestInterval,
  type HarvestIntervalInput,
  harvestRules,
  type RuleInterval,
} from '@loamwright/science';
import type { Place, Saying } from '@loamwright/words';
import { dayWords } from './day-words.ts';
import { say, sayOf } from './saying.ts';

/** From spreading to harvest, in sentences. */
export interface IntervalReport {
  /** What the leading rule says. */
  readonly answer: Saying;
  readonly because: Saying;
  /** Every rule in a line, the leading one first. */
  readonly rules: readonly Saying[];
  readonly notes: readonly Saying[];
  readonly cautions: readonly CautionId[];
}

/** The answer of `harvest-interval` in sentences. */
export function intervalReport(asked: HarvestIntervalInput, found: HarvestInterval): IntervalReport {
  const [leading] = found.rules;
  if (leading === undefined) throw new RangeError('a rule leads');
  return {
    answer: answerOf(leading, asked),
    because: sayOf('interval.because', found.because),
    rules: found.rules.map(lineOf),
    notes: [
      ...(found.rules.some(({ from_day }) => from_day !== undefined) ? [say('interval.note.harvest')] : []),
      ...(found.workedInLate ? [say('interval.note.late', { days: found.lay_days ?? 0 })] : []),
      ...(found.treatment === 'untreated' ? [say('interval.note.own-table')] : []),
      say('interval.note.ask'),
    ],
    cautions: found.cautions,
  };
}

function answerOf(rule: RuleInterval, { harvest_day }: HarvestIntervalInput): Saying {
  return sayOf('interval.answer', answerKey(rule, harvest_day !== undefined), {
    rule: sayOf('interval.rule', rule.rule),
    wait: rule.wait_days ?? 0,
    waited: rule.waited_days ?? 0,
    ...daysOf({ harvest: harvest_day, from: rule.from_day, earliest: rule.earliest_day, latest: rule.latest_day }),
  });
}

function answerKey({ verdict, why, latest_day, waited_days }: RuleInterval, forADay: boolean): string {
  if (verdict === 'met') return waited_days !== undefined ? 'met-waited' : forADay ? 'met' : 'met-any';
  if (verdict === 'not-yet') return why === 'planted-too-soon' ? 'not-yet-sowing' : 'not-yet';
  if (verdict !== 'cannot-be-shown') return verdict;
  if (why === 'not-worked-in') return 'cannot-be-shown-top';
  return latest_day === undefined ? 'cannot-be-shown-day' : 'cannot-be-shown-latest';
}

function lineOf(rule: RuleInterval): Saying {
  const key = rule.why === 'planted-too-soon' ? 'not-yet-sowing' : rule.verdict;
  const line = sayOf('interval.line', key, {
    rule: sayOf('interval.rule', rule.rule),
    ...daysOf({ earliest: rule.earliest_day }),
  });
  const standing = harvestRules.find(({ id }) => id === rule.rule)?.standing ?? '';
  return say('interval.line.detail', {
    line,
    standing: sayOf('interval.standing', standing),
    place: rule.place,
    recalled: rule.mark === 'memory' ? 1 : 0,
  });
}

function daysOf(days: Readonly<Record<string, string | undefined>>): Readonly<Record<string, Place>> {
  return Object.fromEntries(
    Object.entries(days).flatMap(([name, day]) => (day === undefined ? [] : [[name, dayWords(day)]])),
  );
}
