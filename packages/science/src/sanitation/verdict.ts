import type { Day } from '../calendar/index.ts';
import type { Citation } from '../catalogue/index.ts';
import type { RuleId } from './parameters.ts';

export const verdictIds = ['met', 'not-yet', 'cannot-be-shown', 'not-meant'] as const;
/** Met; not yet, with what is missing; cannot be shown, as it was not written down; not meant by the rule at all. */
export type Verdict = (typeof verdictIds)[number];

export const demandIds = [
  'method',
  'log',
  'feeding',
  'days',
  'turns',
  'ratio',
  'all-material',
  'moisture',
  'weeks',
  'peak',
  'curing',
] as const;
/** One thing that a rule asks. */
export type DemandId = (typeof demandIds)[number];

export const whyIds = [
  'as-asked',
  'apart-unsaid',
  'too-few',
  'broken',
  'days-unrecorded',
  'nothing-logged',
  'too-few-turns',
  'outside',
  'not-recorded',
  'edges-unread',
  'edges-cold',
  'still-fed',
  'too-dry',
  'cure-first',
  'still-warm',
  'too-soon',
  'not-this-way',
  'plants-only',
] as const;
/** Why; the message `sanitation.why.ID`. */
export type WhyId = (typeof whyIds)[number];

/** One demand of a rule, and whether the log meets it. */
export interface Demand extends Citation {
  readonly demand: DemandId;
  readonly verdict: Verdict;
  readonly why: WhyId;
  readonly have?: number | undefined;
  readonly want?: number | undefined;
  /** For days: at which temperature. */
  readonly at_degC?: number | undefined;
}

/** What one rule says of a log. */
export interface RuleVerdict extends Citation {
  readonly rule: RuleId;
  readonly verdict: Verdict;
  readonly demands: readonly Demand[];
  /** Whether this heap can still meet it: a mix that was wrong at the start can't. */
  readonly canStill: boolean;
  /** The first day on which the days at heat could be full, if it stays at heat; absent where only that is not missing. */
  readonly earliest_day?: Day | undefined;
}

/** The whole of its demands: not yet where one is; else what can't be shown; else met. */
export function together(demands: readonly Demand[]): Verdict {
  const all = demands.map(({ verdict }) => verdict);
  return (['not-meant', 'not-yet', 'cannot-be-shown'] as const).find((one) => all.includes(one)) ?? 'met';
}
