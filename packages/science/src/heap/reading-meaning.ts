import { z } from 'zod';
import { type Calculation, type Citation, good, type Needs } from '../catalogue/index.ts';
import { type CautionId, cautionIds, inOrder } from '../caution/index.ts';
import {
  type Chance,
  chance,
  chanceSchema,
  drawsOf,
  type Estimate,
  estimateSchema,
  free,
  isEstimate,
  likely,
  summarise,
} from '../estimate/index.ts';
import { actIds, actOf, checkIds, type ReadingAct, type ReadingActId, type ReadingWhen, reasonIds } from './act.ts';
import {
  bandIds,
  citationsOf,
  heapLimits_degC,
  heapTriggers,
  probeError_K,
  type TemperatureBandGroup,
  type TriggerId,
} from './bands.ts';
import { type ReadingInput, readingInput } from './observed.ts';
import {
  type HeapState,
  type Lies,
  liesToBand,
  reaches,
  standings,
  stateOf,
  type TemperatureStanding,
  type TriggerStanding,
  turnTriggers,
} from './standing.ts';
import { type Direction, pointOf, type ReadingTrend, trendOf, withProbe } from './trend.ts';

/** Something to bear in mind about the reading; the message `reading.note.ID`. */
export type ReadingNoteId = 'hottest-part' | 'not-the-core' | 'shallow-probe' | 'small-heap' | 'never-seen-hot';

/** What a reading means: where it lies, where it is going, and the one thing to do. */
export interface ReadingMeaning {
  /** The temperature of the place probed, with the probe's error. */
  readonly temp_degC: Estimate;
  readonly state: HeapState;
  readonly bands: readonly TemperatureStanding[];
  /**
   * What growers seek (145–160 °F) and what handbooks prefer (130–140 °F) are not the same: heat is speed and a surer
   * kill, and costs nitrogen and the life that finishes compost.
   */
  readonly views: {
    readonly growersSought: Lies;
    readonly handbookPreferred: Lies;
    readonly differBecause: 'speed-and-kill-against-nitrogen-and-life';
  };
  /** Whether the day counts towards a sanitising rule, at the place probed. Whether a rule is met, no reading alone can say. */
  readonly sanitisingDay: { readonly counts: boolean; readonly chance: Chance };
  readonly trend: ReadingTrend;
  readonly triggers: readonly TriggerStanding[];
  readonly act: ReadingAct;
  readonly notes: readonly ReadingNoteId[];
  readonly cautions: readonly CautionId[];
}

const lies: z.ZodType<Lies> = z.enum(['below', 'in', 'above']);
const mark: z.ZodType<Citation['mark']> = z.enum(['seen', 'memory', 'derived']);
const citation = { source: z.string(), place: z.string(), mark } as const;
const groups = ['biology', 'handbook', 'growers', 'fire'] as const satisfies readonly TemperatureBandGroup[];
const states = ['cold', 'mild', 'warm', 'hot', 'sought', 'over-limit', 'alarm'] as const satisfies readonly HeapState[];
const directions = ['rising', 'holding', 'falling', 'unknown'] as const satisfies readonly Direction[];
const triggerIds = ['limit', 'fall', 'cool-with-food', 'odour', 'hot-days'] as const satisfies readonly TriggerId[];
const noteIds = [
  'hottest-part',
  'not-the-core',
  'shallow-probe',
  'small-heap',
  'never-seen-hot',
] as const satisfies readonly ReadingNoteId[];

const band: z.ZodType<TemperatureStanding> = z.strictObject({
  id: z.enum(bandIds),
  group: z.enum(groups),
  low_degC: z.number().nullable(),
  high_degC: z.number().nullable(),
  lies,
  chanceIn: chanceSchema,
  ...citation,
});

const trend: z.ZodType<ReadingTrend> = z.strictObject({
  direction: z.enum(directions),
  change_KPerDay: z.number().optional(),
  over_days: z.number().optional(),
  chanceRisen: chanceSchema.optional(),
  peak_degC: z.number(),
  belowPeak_K: z.number().min(0),
  hot_days: z.number().min(0),
});

const act: z.ZodType<ReadingAct> = z.strictObject({
  act: z.enum(actIds),
  because: z.enum(reasonIds),
  when: z.enum(['now', 'today', 'in-a-few-days', 'no-hurry'] as const satisfies readonly ReadingWhen[]),
  checks: z.array(z.enum(checkIds)).max(3),
});

const output: z.ZodType<ReadingMeaning> = z.strictObject({
  temp_degC: estimateSchema('Temperature of the place probed, °C'),
  state: z.enum(states),
  bands: z.array(band),
  views: z.strictObject({
    growersSought: lies,
    handbookPreferred: lies,
    differBecause: z.literal('speed-and-kill-against-nitrogen-and-life'),
  }),
  sanitisingDay: z.strictObject({ counts: z.boolean(), chance: chanceSchema }),
  trend,
  triggers: z.array(z.strictObject({ id: z.enum(triggerIds), met: z.enum(['yes', 'no', 'not-known']), ...citation })),
  act,
  notes: z.array(z.enum(noteIds)),
  cautions: z.array(z.enum(cautionIds as readonly [CautionId, ...CautionId[]])),
});

function meaningOf(input: ReadingInput, needs: Needs): ReadingMeaning {
  const error_K = input.probeError_K ?? probeError_K;
  const temp = likely(input.temp_degC);
  const draws = drawsOf(needs.draws, 'reading/temp_degC', withProbe(input.temp_degC, error_K), free);
  const told = trendOf(input, error_K, needs.draws);
  const acted = actOf(input, told);
  const { p10, p90 } = summarise(draws);
  return {
    temp_degC: isEstimate(input.temp_degC) ? input.temp_degC : { p10, p50: temp, p90 },
    state: stateOf(temp),
    bands: standings(temp, draws),
    views: {
      growersSought: liesToBand(temp, 'growers-sought'),
      handbookPreferred: liesToBand(temp, 'preferred'),
      differBecause: 'speed-and-kill-against-nitrogen-and-life',
    },
    sanitisingDay: {
      counts: reaches(temp, heapLimits_degC.sanitisingDay),
      chance: chance(draws, (value) => reaches(value, heapLimits_degC.sanitisingDay)),
    },
    trend: told,
    triggers: turnTriggers(input, told),
    act: acted,
    notes: notesOf(input),
    cautions: cautionsOf(input, acted, Math.max(temp, p90)),
  };
}

function notesOf(input: ReadingInput): readonly ReadingNoteId[] {
  const inside = ['core', 'middle'].includes(pointOf(input));
  const notes: ReadingNoteId[] = [inside ? 'hottest-part' : 'not-the-core'];
  if (inside && likely(input.depth_m ?? heapTriggers.shallowestProbe_m) < heapTriggers.shallowestProbe_m)
    notes.push('shallow-probe');
  if (likely(input.volume_m3 ?? heapTriggers.smallestHeap_m3) < heapTriggers.smallestHeap_m3) notes.push('small-heap');
  const everHot = [input, ...(input.earlier ?? [])].some((reading) =>
    reaches(likely(reading.temp_degC), heapLimits_degC.sanitisingDay),
  );
  if (!everHot) notes.push('never-seen-hot');
  return notes;
}

/** Nobody is to dig into a heap that may be burning, so fire is named as soon as the probe's error allows it. */
function cautionsOf(input: ReadingInput, acted: ReadingAct, hottest_degC: number): readonly CautionId[] {
  const wanted = new Set<CautionId>();
  if (hottest_degC >= heapLimits_degC.fire || acted.act === 'check-fire') wanted.add('fire');
  if (input.smell === 'ammonia' || hottest_degC >= heapLimits_degC.fire) wanted.add('ammonia');
  if (input.holdsManure === true) wanted.add('manure-pathogens');
  if (stirs(acted.act)) wanted.add('dust-spores');
  return inOrder(wanted);
}

function stirs(id: ReadingActId): boolean {
  return !['check-fire', 'probe-core', 'leave-frozen', 'leave-to-cure', 'ask', 'wait', 'leave'].includes(id);
}

/** What a temperature reading means. */
export const readingMeaning: Calculation<ReadingInput, ReadingMeaning> = {
  id: 'reading-meaning',
  title: 'What a reading means',
  summary:
    'Sets a heap’s temperature beside the published bands and beside what growers seek, says where it is going, ' +
    'whether the day counts towards a sanitising rule, which published reasons to turn are met, and gives one act with its reason. ' +
    'It judges the place that was probed, and no rule: a rule looks at the whole record.',
  input: readingInput,
  output,
  sources: citationsOf('bands', 'limits', 'triggers', 'turnWhen', 'probe'),
  cautions: inOrder(['fire', 'ammonia', 'manure-pathogens', 'dust-spores']),
  example: {
    temp_degC: 64.4,
    point: 'core',
    depth_m: 0.45,
    air_degC: 14,
    earlier: [
      { before_days: 1, temp_degC: 61.1 },
      { before_days: 2, temp_degC: 52 },
    ],
    age_days: 4,
    squeeze: 'holds',
    smell: 'earthy',
    holdsManure: true,
  },
  run: (input, needs) => good(meaningOf(input, needs)),
};
