import { z } from 'zod';
import { type Day, daySchema } from '../calendar/index.ts';
import type { Citation } from '../catalogue/index.ts';
import { type CautionId, cautionIds } from '../caution/index.ts';
import {
  type ContactId,
  contactIds,
  type HarvestRuleId,
  harvestRuleIds,
  type TreatmentId,
  treatmentIds,
} from './parameters.ts';
import { type BecauseId, becauseIds, type PutId, putIds, type Tea } from './put.ts';

/** How it came onto the bed: forked in, left on top, or sprayed or poured over leaves that stand. */
export const layIds = ['worked-in', 'on-top', 'on-leaves'] as const;
export type LayId = (typeof layIds)[number];

export interface HarvestIntervalInput {
  readonly put: PutId;
  readonly tea?: Tea | undefined;
  readonly lay: LayId;
  readonly spread_day?: Day | undefined;
  /** Where it is left out, it was not worked in. */
  readonly workedIn_day?: Day | undefined;
  readonly planting_day?: Day | undefined;
  /** The day meant or done: it is judged. Without it, only the earliest day is told. */
  readonly harvest_day?: Day | undefined;
  readonly contact: ContactId;
  /** False for what is always cooked. Left out, it may be eaten raw. */
  readonly eatenRaw?: boolean | undefined;
  /** Whose rules; left out, all of them. The first leads. */
  readonly rules?: readonly HarvestRuleId[] | undefined;
}

export const intervalVerdicts = [
  'met',
  'not-yet',
  'cannot-be-shown',
  'barred',
  'no-figure',
  'not-meant',
  'open',
] as const;
/** `open`: no day of harvest was told, so there is only a day from which it would be met. */
export type IntervalVerdict = (typeof intervalVerdicts)[number];

/** Why the verdict is what it is; the message `interval.why.ID`. */
export const intervalWhys = [
  'long-enough',
  'too-soon',
  'count-to-it',
  'not-worked-in',
  'day-unknown',
  'planted-too-soon',
  'on-leaves',
  'never',
  'reserved',
  'says-nothing',
  'no-wait',
] as const;
export type IntervalWhy = (typeof intervalWhys)[number];

export interface RuleInterval extends Citation {
  readonly rule: HarvestRuleId;
  readonly verdict: IntervalVerdict;
  readonly why: IntervalWhy;
  /** Days the rule asks; absent where it names none. */
  readonly wait_days?: number | undefined;
  /** The day it counts from. */
  readonly from_day?: Day | undefined;
  /** The first day on which the crop may be taken under it. */
  readonly earliest_day?: Day | undefined;
  /** Days from there to the harvest told. */
  readonly waited_days?: number | undefined;
  /** To take the crop on the day told, it would have to have been worked in (or spread) by this day. */
  readonly latest_day?: Day | undefined;
}

export interface HarvestInterval {
  readonly treatment: TreatmentId;
  readonly because: BecauseId;
  /** One for each rule, in the order asked; the first leads. */
  readonly rules: readonly RuleInterval[];
  /** Days between spreading and working in; absent where one is unknown. */
  readonly lay_days?: number | undefined;
  /** Whether that is longer than is advised for raw manure. */
  readonly workedInLate: boolean;
  readonly cautions: readonly CautionId[];
}

export const harvestIntervalInputSchema: z.ZodType<HarvestIntervalInput> = z
  .strictObject({
    put: z.enum(putIds),
    tea: z
      .strictObject({
        of: z.enum(['proven-compost', 'unproven-compost', 'plant-compost']),
        fed: z.boolean(),
        water: z.enum(['clean', 'untreated-surface', 'unknown']),
      })
      .optional(),
    lay: z.enum(layIds),
    spread_day: daySchema.optional(),
    workedIn_day: daySchema.optional(),
    planting_day: daySchema.optional(),
    harvest_day: daySchema.optional(),
    contact: z.enum(contactIds),
    eatenRaw: z.boolean().optional(),
    rules: z.array(z.enum(harvestRuleIds)).min(1).max(harvestRuleIds.length).optional(),
  })
  .refine(({ spread_day, workedIn_day }) => !before(workedIn_day, spread_day), {
    path: ['workedIn_day'],
    params: { wanted: 'a day not before spread_day' },
  })
  .refine(({ planting_day, harvest_day }) => !before(harvest_day, planting_day), {
    path: ['harvest_day'],
    params: { wanted: 'a day not before planting_day' },
  })
  .refine(({ workedIn_day, lay }) => workedIn_day === undefined || lay === 'worked-in', {
    path: ['workedIn_day'],
    params: { wanted: 'only with lay worked-in' },
  });

function before(one: Day | undefined, other: Day | undefined): boolean {
  return one !== undefined && other !== undefined && one < other;
}

const ruleIntervalSchema: z.ZodType<RuleInterval> = z.strictObject({
  rule: z.enum(harvestRuleIds),
  verdict: z.enum(intervalVerdicts),
  why: z.enum(intervalWhys),
  wait_days: z.number().min(0).optional(),
  from_day: daySchema.optional(),
  earliest_day: daySchema.optional(),
  waited_days: z.number().optional(),
  latest_day: daySchema.optional(),
  source: z.string(),
  place: z.string(),
  mark: z.enum(['seen', 'memory', 'derived']),
});

export const harvestIntervalSchema: z.ZodType<HarvestInterval> = z.strictObject({
  treatment: z.enum(treatmentIds),
  because: z.enum(becauseIds),
  rules: z.array(ruleIntervalSchema),
  lay_days: z.number().min(0).optional(),
  workedInLate: z.boolean(),
  cautions: z.array(z.enum(cautionIds as readonly [CautionId, ...CautionId[]])),
});
