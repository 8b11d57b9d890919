import { likely } from '../estimate/index.ts';
import { heapLimits_degC, heapTriggers, temperatureBandOf } from './bands.ts';
import type { ReadingInput } from './observed.ts';
import { pointOf, type ReadingTrend } from './trend.ts';

/** The one thing to do; the message `reading.act.ID` puts it into words. */
export const actIds = [
  'check-fire',
  'turn',
  'turn-and-water',
  'turn-with-brown',
  'mix-in-brown',
  'water',
  'probe-core',
  'turn-soon',
  'turn-once',
  'rest-and-turn-once',
  'leave-frozen',
  'leave-to-cure',
  'enlarge',
  'add-nitrogen',
  'ask',
  'wait',
  'leave',
] as const;
export type ReadingActId = (typeof actIds)[number];

/** Why; the message `reading.because.ID`. */
export const reasonIds = [
  'may-be-fire',
  'smoke',
  'was-fire-hot',
  'turning-limit',
  'turning-limit-dry',
  'turning-limit-ammonia',
  'ammonia',
  'airless',
  'too-wet',
  'too-dry',
  'not-the-core',
  'fell-far',
  'fell',
  'hot-days-done',
  'cool-with-food',
  'easy-food-spent',
  'stays-cool-after-turn',
  'turned-lately',
  'cooling-band',
  'still-fed',
  'frozen',
  'too-small',
  'slow-carbon',
  'cause-unknown',
  'young',
  'still-rising',
  'in-the-bands',
] as const;
export type ReadingReasonId = (typeof reasonIds)[number];

/** How soon. */
export type ReadingWhen = 'now' | 'today' | 'in-a-few-days' | 'no-hurry';

/** An observation of a minute's work that would narrow the answer; the message `reading.check.ID`. */
export const checkIds = [
  'second-thermometer',
  'second-place',
  'core',
  'squeeze',
  'smell',
  'size',
  'what-went-in',
  'fresh-food',
  'tomorrow',
] as const;
export type ReadingCheckId = (typeof checkIds)[number];

export interface ReadingAct {
  readonly act: ReadingActId;
  readonly because: ReadingReasonId;
  readonly when: ReadingWhen;
  /** At most three, the one that narrows most first. */
  readonly checks: readonly ReadingCheckId[];
}

interface Seen {
  readonly input: ReadingInput;
  readonly temp: number;
  readonly trend: ReadingTrend;
  readonly dry: boolean;
  readonly wet: boolean;
  readonly young: boolean;
}

interface Rule extends ReadingAct {
  readonly holds: (seen: Seen) => boolean;
}

const notCore = ({ input }: Seen): boolean => !['core', 'middle'].includes(pointOf(input));
const mild = ({ temp }: Seen): boolean => temp < heapLimits_degC.curing;
/** Still warm enough for what handbooks ask after the hot weeks. */
const COOLING_FROM_DEGC = temperatureBandOf('operating-later').low_degC ?? heapLimits_degC.curing;
/** A turn of longer ago tells nothing about the heap of today. */
const TURN_TELLS_UNTIL_DAYS = 28;

/** How long a reading hot enough for fire keeps deciding, wherever the probe was. Our own judgement: a day of caution costs little. */
const FIRE_TELLS_UNTIL_DAYS = 1;

/** In the order in which they count: what can hurt comes first, what costs most by waiting next. The first that holds is the act. */
const rules: readonly Rule[] = [
  {
    act: 'check-fire',
    because: 'may-be-fire',
    when: 'now',
    checks: ['second-place', 'second-thermometer', 'smell'],
    holds: ({ temp }) => temp >= heapLimits_degC.fire,
  },
  {
    act: 'check-fire',
    because: 'smoke',
    when: 'now',
    checks: ['second-place', 'second-thermometer'],
    holds: ({ input }) => input.smell === 'smoke',
  },
  {
    act: 'check-fire',
    because: 'was-fire-hot',
    when: 'now',
    checks: ['second-place', 'second-thermometer', 'smell'],
    // A cooler reading elsewhere, or a sudden fall, is no sign that the hot one was wrong.
    holds: ({ input }) =>
      (input.earlier ?? []).some(
        ({ before_days, temp_degC }) =>
          before_days <= FIRE_TELLS_UNTIL_DAYS && likely(temp_degC) >= heapLimits_degC.fire,
      ),
  },
  {
    act: 'turn-with-brown',
    because: 'turning-limit-ammonia',
    when: 'today',
    checks: ['squeeze'],
    holds: ({ temp, input }) => temp >= heapLimits_degC.turning && input.smell === 'ammonia',
  },
  {
    act: 'turn-and-water',
    because: 'turning-limit-dry',
    when: 'today',
    checks: ['second-place'],
    holds: ({ temp, dry }) => temp >= heapLimits_degC.turning && dry,
  },
  {
    act: 'turn',
    because: 'turning-limit',
    when: 'today',
    checks: ['squeeze', 'second-place'],
    holds: ({ temp }) => temp >= heapLimits_degC.turning,
  },
  {
    act: 'mix-in-brown',
    because: 'ammonia',
    when: 'today',
    checks: ['squeeze'],
    holds: ({ input }) => input.smell === 'ammonia',
  },
  {
    act: 'turn-with-brown',
    because: 'airless',
    when: 'today',
    checks: ['squeeze'],
    holds: ({ input }) => input.smell === 'rotten' || input.smell === 'sour',
  },
  {
    act: 'probe-core',
    because: 'not-the-core',
    when: 'today',
    checks: ['core'],
    holds: (seen) => notCore(seen) && seen.temp < heapLimits_degC.sanitisingDay,
  },
  {
    act: 'leave-frozen',
    because: 'frozen',
    when: 'no-hurry',
    checks: ['core'],
    holds: ({ temp }) => temp <= heapLimits_degC.frozen,
  },
  {
    act: 'water',
    because: 'too-dry',
    // Waiting costs nothing but time, so it is never told as a thing of today.
    when: 'in-a-few-days',
    checks: ['second-place'],
    holds: ({ dry, temp, input }) => input.squeeze === 'dusty' || (dry && temp < heapLimits_degC.sanitisingDay),
  },
  {
    act: 'turn-with-brown',
    because: 'too-wet',
    when: 'today',
    checks: ['smell'],
    holds: ({ temp, wet }) => wet && temp < heapLimits_degC.sanitisingDay,
  },
  {
    act: 'turn',
    because: 'fell-far',
    when: 'today',
    checks: ['squeeze', 'fresh-food'],
    holds: ({ temp, trend }) => temp >= heapLimits_degC.coolWithFood && trend.belowPeak_K >= heapTriggers.fallTo_K,
  },
  {
    act: 'turn-soon',
    because: 'fell',
    when: 'in-a-few-days',
    checks: ['squeeze', 'tomorrow'],
    holds: ({ temp, trend }) => temp >= heapLimits_degC.coolWithFood && trend.belowPeak_K >= heapTriggers.fallFrom_K,
  },
  {
    act: 'turn-soon',
    because: 'hot-days-done',
    when: 'in-a-few-days',
    checks: ['squeeze'],
    holds: ({ trend }) => trend.hot_days >= heapTriggers.hotDays_days,
  },
  {
    act: 'leave',
    because: 'in-the-bands',
    when: 'no-hurry',
    checks: ['squeeze', 'tomorrow'],
    holds: ({ temp }) => temp >= heapLimits_degC.sanitisingDay,
  },
  {
    act: 'leave',
    because: 'still-rising',
    when: 'no-hurry',
    checks: ['tomorrow'],
    holds: ({ trend }) => trend.direction === 'rising',
  },
  {
    act: 'wait',
    because: 'turned-lately',
    when: 'no-hurry',
    checks: ['tomorrow', 'squeeze'],
    holds: ({ input }) => sinceTurn(input) < heapTriggers.turnTells_days,
  },
  {
    act: 'wait',
    because: 'young',
    when: 'no-hurry',
    checks: ['tomorrow', 'squeeze'],
    holds: ({ young, trend }) => young && trend.belowPeak_K < heapTriggers.fallFrom_K,
  },
  {
    act: 'leave-to-cure',
    because: 'stays-cool-after-turn',
    when: 'no-hurry',
    checks: ['smell', 'fresh-food'],
    holds: (seen) =>
      mild(seen) &&
      sinceTurn(seen.input) <= TURN_TELLS_UNTIL_DAYS &&
      seen.input.squeeze === 'holds' &&
      seen.input.freshFood !== true,
  },
  {
    act: 'turn',
    because: 'cool-with-food',
    when: 'today',
    checks: ['squeeze'],
    holds: ({ temp, input }) => temp < heapLimits_degC.coolWithFood && input.freshFood === true && !tooSmall(input),
  },
  {
    act: 'leave',
    because: 'cooling-band',
    when: 'no-hurry',
    checks: ['fresh-food', 'squeeze'],
    holds: (seen) => seen.temp >= COOLING_FROM_DEGC && !hasCooled(seen),
  },
  {
    act: 'rest-and-turn-once',
    because: 'easy-food-spent',
    when: 'in-a-few-days',
    checks: ['squeeze', 'size'],
    holds: ({ temp, trend, input }) => trend.direction === 'falling' && temp < COOLING_FROM_DEGC && fedLately(input),
  },
  {
    act: 'leave',
    because: 'still-fed',
    when: 'no-hurry',
    checks: ['squeeze', 'smell'],
    holds: (seen) => mild(seen) && fedLately(seen.input),
  },
  {
    act: 'turn-once',
    because: 'easy-food-spent',
    when: 'in-a-few-days',
    checks: ['squeeze', 'fresh-food'],
    holds: hasCooled,
  },
  {
    act: 'enlarge',
    because: 'too-small',
    when: 'in-a-few-days',
    checks: ['squeeze', 'what-went-in'],
    holds: ({ input }) => tooSmall(input),
  },
  {
    act: 'add-nitrogen',
    because: 'slow-carbon',
    when: 'in-a-few-days',
    checks: ['squeeze'],
    holds: ({ input }) => likely(input.carbonToNitrogen ?? 0) > heapTriggers.slowCarbonToNitrogen,
  },
  {
    act: 'ask',
    because: 'cause-unknown',
    when: 'today',
    checks: ['size', 'squeeze', 'what-went-in'],
    holds: (seen) => mild(seen) && seen.input.squeeze === undefined,
  },
];

/** What is left is cool for no cause that shows: one turn tells whether there is food in it. */
const last: ReadingAct = {
  act: 'turn-once',
  because: 'easy-food-spent',
  when: 'in-a-few-days',
  checks: ['squeeze', 'fresh-food'],
};

function tooSmall(input: ReadingInput): boolean {
  return input.volume_m3 !== undefined && likely(input.volume_m3) < heapTriggers.smallestHeap_m3;
}

/** Scraps go in for a fortnight or so before they are spent. */
const FED_LATELY_DAYS = 14;

function fedLately(input: ReadingInput): boolean {
  return (input.sinceFeed_days ?? Number.POSITIVE_INFINITY) <= FED_LATELY_DAYS;
}

function sinceTurn(input: ReadingInput): number {
  return input.sinceTurn_days ?? Number.POSITIVE_INFINITY;
}

function hasCooled({ trend, temp }: Seen): boolean {
  return trend.belowPeak_K >= heapTriggers.fallFrom_K || (trend.direction === 'falling' && temp < COOLING_FROM_DEGC);
}

/** What to do about a reading, from the published triggers and what else was seen. */
export function actOf(input: ReadingInput, trend: ReadingTrend): ReadingAct {
  const seen: Seen = {
    input,
    temp: likely(input.temp_degC),
    trend,
    dry: input.squeeze === 'crumbles' || input.squeeze === 'dusty',
    wet: input.squeeze === 'streams',
    young: (input.age_days ?? Number.POSITIVE_INFINITY) <= heapTriggers.reachedWithin_days,
  };
  const rule = rules.find(({ holds }) => holds(seen)) ?? last;
  return { act: rule.act, because: rule.because, when: rule.when, checks: rule.checks };
}
