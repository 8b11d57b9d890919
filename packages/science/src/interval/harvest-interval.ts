import { type Day, daysAfter, daysBetween } from '../calendar/index.ts';
import { type Calculation, type Citation, cited, good, type Outcome } from '../catalogue/index.ts';
import { type CautionId, inOrder } from '../caution/index.ts';
import {
  type HarvestInterval,
  type HarvestIntervalInput,
  harvestIntervalInputSchema,
  harvestIntervalSchema,
  type IntervalVerdict,
  type IntervalWhy,
  type RuleInterval,
} from './harvest-interval-io.ts';
import {
  type HarvestRule,
  harvestRuleIds,
  harvestRules,
  type TreatmentId,
  type Wait,
  workInWithin_days,
} from './parameters.ts';
import { type PutId, standingOf } from './put.ts';

function run(input: HarvestIntervalInput): Outcome<HarvestInterval> {
  const { treatment, because } = standingOf(input.put, input.tea);
  const rules = (input.rules ?? harvestRuleIds).flatMap((id) => harvestRules.filter((rule) => rule.id === id));
  const lay_days =
    input.spread_day === undefined || input.workedIn_day === undefined
      ? undefined
      : daysBetween(input.spread_day, input.workedIn_day);
  return good({
    treatment,
    because,
    rules: rules.map((rule) => intervalUnder(rule, treatment, input)),
    ...(lay_days !== undefined && { lay_days }),
    workedInLate: treatment === 'untreated' && lay_days !== undefined && lay_days > workInWithin_days.value,
    cautions: cautionsOf(input.put, treatment),
  });
}

/** What one rule says of it. */
function intervalUnder(rule: HarvestRule, treatment: TreatmentId, input: HarvestIntervalInput): RuleInterval {
  const says = (verdict: IntervalVerdict, why: IntervalWhy, citation: Citation, more: object = {}): RuleInterval => ({
    rule: rule.id,
    verdict,
    why,
    ...more,
    ...cited(citation),
  });
  if (treatment === 'barred') return says('barred', 'never', rule.untreated.touches);
  const wait = waitUnder(rule, treatment, input);
  if (wait.notMeant === true) return says('not-meant', 'says-nothing', wait);
  if (input.lay === 'on-leaves' && rule.onLeaves.barred.includes(treatment) && input.contact !== 'not-eaten')
    return says('barred', 'on-leaves', rule.onLeaves);
  if (wait.noFigure === true) return says('no-figure', 'reserved', wait);
  if (wait.days === 0) return says('met', 'no-wait', wait, { wait_days: 0 });
  return counted(rule, wait, input, says);
}

type Says = (verdict: IntervalVerdict, why: IntervalWhy, citation: Citation, more?: object) => RuleInterval;

/** The wait told by days. */
function counted(
  rule: HarvestRule,
  wait: Wait & { days: number },
  input: HarvestIntervalInput,
  says: Says,
): RuleInterval {
  const { harvest_day, planting_day, workedIn_day, spread_day } = input;
  const asked = { wait_days: wait.days };
  if (rule.countedFrom === 'worked-in' && input.lay !== 'worked-in')
    return says('cannot-be-shown', 'not-worked-in', wait, asked);
  const latest = harvest_day === undefined ? {} : { latest_day: daysAfter(harvest_day, -wait.days) };
  const from_day = rule.countedFrom === 'worked-in' ? workedIn_day : spread_day;
  if (from_day === undefined) return says('cannot-be-shown', 'day-unknown', wait, { ...asked, ...latest });
  const earliest_day: Day = daysAfter(from_day, wait.days);
  const dates = { ...asked, from_day, earliest_day };
  if (harvest_day === undefined) return says('open', 'count-to-it', wait, dates);
  const told = { ...dates, ...latest, waited_days: daysBetween(from_day, harvest_day) };
  const { beforePlanting_days: before } = rule;
  if (before !== undefined && planting_day !== undefined && daysBetween(from_day, planting_day) < before.days)
    return says('not-yet', 'planted-too-soon', before, told);
  return harvest_day < earliest_day ? says('not-yet', 'too-soon', wait, told) : says('met', 'long-enough', wait, told);
}

/** What a rule asks of something so treated. A rule for what is eaten raw says nothing of what is always cooked. */
function waitUnder(rule: HarvestRule, treatment: Exclude<TreatmentId, 'barred'>, input: HarvestIntervalInput): Wait {
  if (treatment !== 'untreated') return rule[treatment];
  const cookedIsFree = rule.id === 'uk-guidance' && input.eatenRaw === false;
  return rule.untreated[cookedIsFree ? 'not-eaten' : input.contact];
}

function cautionsOf(put: PutId, treatment: TreatmentId): readonly CautionId[] {
  return inOrder([
    ...(treatment === 'untreated' || treatment === 'barred' ? (['manure-pathogens'] as const) : []),
    ...(put === 'raw-manure' ? (['herbicide-carryover'] as const) : []),
    ...(put === 'ash-or-char' ? (['ash-caustic'] as const) : []),
    'local-rules',
  ]);
}

/** How long to wait from spreading to harvest, by each rule set, and the earliest day. */
export const harvestInterval: Calculation<HarvestIntervalInput, HarvestInterval> = {
  id: 'harvest-interval',
  title: 'How long from spreading to harvest',
  summary:
    'Takes what was put on a bed, how and when it was worked in, and how the crop meets the soil, and tells for each rule set whether a day of harvest will do and which is the earliest. Days run from working in (or spreading, where the rule counts so) to harvest, not to planting. Compost whose log proves nothing counts as raw manure.',
  input: harvestIntervalInputSchema,
  output: harvestIntervalSchema,
  sources: [
    ...harvestRules.flatMap((rule) => [...Object.values(rule.untreated), rule.treated, rule.plant, rule.onLeaves]),
    ...harvestRules.flatMap(({ beforePlanting_days: before }) => (before === undefined ? [] : [before])),
    workInWithin_days,
    { source: 'cfr-21-112', place: '112.51: when a tea of animal matter counts as treated', mark: 'seen' },
    { source: 'cfr-21-112', place: '112.53: human waste', mark: 'seen' },
  ],
  cautions: ['manure-pathogens', 'ash-caustic', 'herbicide-carryover', 'local-rules'],
  example: {
    put: 'raw-manure',
    lay: 'worked-in',
    workedIn_day: '2026-03-01',
    harvest_day: '2026-06-20',
    contact: 'touches',
  },
  run,
};
