import table from '@loamwright/reference/not-heating.json' with { type: 'json' };
import { z } from 'zod';
import { type Calculation, good, type Needs, type Outcome } from '../catalogue/index.ts';
import { type CautionId, cautionIds, inOrder } from '../caution/index.ts';
import { estimateSchema, likely } from '../estimate/index.ts';
import { balanceOf } from '../mix/mix-balance.ts';
import { weighMix } from '../mix/mix-input.ts';
import { citationsOf, heapLimits_degC, heapTriggers } from './bands.ts';
import { actFor, amountFor, type ColdActId, type ColdAmount, coldActIds } from './cold-act.ts';
import { foundOf, sizeTold, type WentIn } from './cold-found.ts';
import {
  type ColdCauseId,
  type ColdCheckId,
  type ColdObservationId,
  checksWorthMaking,
  coldCauseIds,
  coldCheckIds,
  coldObservationIds,
  coldOdds,
  reasonsFor,
} from './cold-odds.ts';
import { heatToHold } from './heat-to-hold.ts';
import { type NotHeatingInput, notHeatingInput } from './not-heating-input.ts';

/** `it-heats`: it is warm enough not to be asked about. `look`: no cause has an even chance yet, and a check may give one. */
export const coldDecisions = ['check-fire', 'it-heats', 'look', 'act'] as const;
export type ColdDecision = (typeof coldDecisions)[number];

/** One cause, how likely it is by the tables, and what speaks for it, the strongest first. */
export interface ColdCause {
  readonly cause: ColdCauseId;
  readonly share: number;
  readonly reasons: readonly ColdObservationId[];
}

/** What else is to be known of a heap whose food is spent. */
export const coldNotes = ['smaller-than-least', 'browns-need-months', 'proves-nothing'] as const;
export type ColdNoteId = (typeof coldNotes)[number];

export interface NotHeating {
  readonly decision: ColdDecision;
  /** The likeliest causes, at most three; empty for a heap that heats or may burn. */
  readonly causes: readonly ColdCause[];
  /** At most three checks of a minute, the quickest first. */
  readonly checks: readonly ColdCheckId[];
  readonly act: ColdActId;
  readonly amount?: ColdAmount | undefined;
  readonly notes: readonly ColdNoteId[];
  /** Its size beside the smallest heap in print, where it is smaller. */
  readonly ofSmallest_share?: number | undefined;
  readonly cautions: readonly CautionId[];
}

const output: z.ZodType<NotHeating> = z.strictObject({
  decision: z.enum(coldDecisions),
  causes: z
    .array(
      z.strictObject({
        cause: z.enum(coldCauseIds),
        share: z.number().meta({ description: 'How likely it is, by the tables.' }),
        reasons: z.array(z.enum(coldObservationIds)),
      }),
    )
    .max(3),
  checks: z.array(z.enum(coldCheckIds)).max(3),
  act: z.enum(coldActIds),
  amount: z
    .strictObject({
      per: z.enum(['heap', 'cubic-metre']),
      water_L: estimateSchema('Water to pour, litres.').optional(),
      material: z.string().optional(),
      mass_kg: estimateSchema('Mass of the material as it lies, kg.').optional(),
      nitrogen_kg: estimateSchema('Nitrogen that does the same, kg.').optional(),
      enough_m3: z.number().optional(),
    })
    .optional(),
  notes: z.array(z.enum(coldNotes)),
  ofSmallest_share: z.number().optional().meta({
    description: 'Its volume as a share of the smallest heap in print, where it is smaller and its food is spent.',
  }),
  cautions: z.array(z.enum(cautionIds as readonly [CautionId, ...CautionId[]])),
});

const MOST_CAUSES = 3;
/** Below this a cause is not worth a word. */
const LEAST_TOLD_SHARE = 0.1;

function run(input: NotHeatingInput, { draws }: Needs): Outcome<NotHeating> {
  const mix =
    input.ingredients === undefined
      ? undefined
      : weighMix({ ingredients: input.ingredients, water_L: input.water_L, ownSizes: input.ownSizes }, draws);
  if (mix !== undefined && !mix.ok) return mix;
  const balance = mix === undefined ? undefined : balanceOf(mix.value, draws);
  const temp = input.temp_degC === undefined ? undefined : likely(input.temp_degC);
  const mayBurn = input.smell === 'smoke' || (temp !== undefined && temp >= heapLimits_degC.fire);
  const cautions = cautionsOf(input, mix?.value.ingredients.flatMap((one) => one.cautions) ?? []);
  if (mayBurn) {
    return good({
      decision: 'check-fire',
      causes: [],
      checks: [],
      act: 'check-fire',
      notes: [],
      cautions: inOrder(['fire', ...cautions]),
    });
  }
  if (temp !== undefined && temp >= heapLimits_degC.curing) {
    return good({ decision: 'it-heats', causes: [], checks: [], act: 'leave', notes: [], cautions });
  }
  const ratio = balance?.carbonToNitrogen_ratio?.value ?? input.carbonToNitrogen_ratio;
  const wentIn: WentIn = {
    ratio: ratio === undefined ? undefined : likely(ratio),
    moisture_pctWet: balance?.moisture_pctWet.value.p50,
    freeAirSpace_pctVolume: balance?.freeAirSpace_pctVolume.value.p50,
  };
  const size = input.size ?? (balance === undefined ? undefined : { volume_m3: balance.volume_m3.p50 });
  const told = sizeTold(size, draws);
  const found = foundOf(input, wentIn, told?.holds_share);
  const odds = coldOdds(found);
  const causes = coldCauseIds
    .map((cause): ColdCause => ({ cause, share: odds[cause], reasons: reasonsFor(cause, found) }))
    .sort((one, other) => other.share - one.share);
  const [likeliest] = causes;
  if (likeliest === undefined) throw new RangeError('there is always a likeliest cause');
  const checks = checksWorthMaking(found).map(({ check }) => check);
  const decision = likeliest.share < table.limits.sure_share.value && checks.length > 0 ? 'look' : 'act';
  const act = decision === 'look' ? 'look' : actOn(likeliest.cause, input);
  const amount = amountFor(
    act,
    {
      volume_m3: volumeOf(size),
      dry_kg: mix === undefined ? undefined : Float64Array.from(mix.value.total, ({ dry_kg }) => dry_kg),
      squeeze: input.squeeze,
      ratio,
      enough_m3: told?.enough_m3,
    },
    draws,
  );
  const noted = notesOf(act, input, volumeOf(size));
  return good({
    decision,
    causes: causes.filter(({ share }, i) => i === 0 || share >= LEAST_TOLD_SHARE).slice(0, MOST_CAUSES),
    checks,
    act,
    ...(amount !== undefined && { amount }),
    ...noted,
    cautions: inOrder([
      ...(stirs(act) ? (['dust-spores'] as const) : []),
      ...(noted.notes.includes('proves-nothing') ? (['seeding-weeds'] as const) : []),
      ...cautions,
    ]),
  });
}

/** Turning a heap that stings drives off the nitrogen that it smells of: brown stuff goes through it, as on any such heap. */
function actOn(cause: ColdCauseId, { smell }: NotHeatingInput): ColdActId {
  const act = actFor[cause];
  return smell === 'ammonia' && (act === 'turn' || act === 'add-nitrogen') ? 'mix-in-brown' : act;
}

/** A heap with its food spent is not therefore ripe, nor clean. */
function notesOf(
  act: ColdActId,
  { brownsWhole, hottest_degC }: NotHeatingInput,
  volume_m3: number | undefined,
): Pick<NotHeating, 'notes' | 'ofSmallest_share'> {
  if (act !== 'leave-to-cure') return { notes: [] };
  const ofSmallest_share = volume_m3 === undefined ? 1 : volume_m3 / heapTriggers.smallestHeap_m3;
  const isSmaller = ofSmallest_share < 1;
  const wasHot = hottest_degC !== undefined && likely(hottest_degC) >= heapLimits_degC.sanitisingDay;
  return {
    notes: [
      ...(isSmaller ? (['smaller-than-least'] as const) : []),
      ...(brownsWhole === true ? (['browns-need-months'] as const) : []),
      ...(wasHot ? [] : (['proves-nothing'] as const)),
    ],
    ...(isSmaller && { ofSmallest_share }),
  };
}

function volumeOf(size: NotHeatingInput['size']): number | undefined {
  if (size === undefined) return undefined;
  return 'volume_m3' in size ? size.volume_m3 : size.width_m * size.depth_m * size.height_m;
}

function stirs(act: ColdActId): boolean {
  return ['water', 'turn-with-dry', 'turn', 'mix-in-brown', 'add-nitrogen', 'leave-to-cure'].includes(act);
}

/** Of what lies in it, what whoever digs in it must know. */
function cautionsOf(input: NotHeatingInput, ofStuff: readonly CautionId[]): readonly CautionId[] {
  const wanted: CautionId[] = ofStuff.filter((id) => id === 'manure-pathogens' || id === 'rats-flies');
  if (input.holdsManure === true) wanted.push('manure-pathogens');
  if (input.smell === 'ammonia') wanted.push('ammonia');
  return inOrder(wanted);
}

/** Why a heap stays cold. */
export const notHeating: Calculation<NotHeatingInput, NotHeating> = {
  id: 'not-heating',
  title: 'Why a heap does not heat',
  summary:
    'From whatever is known of a cold heap, nothing being enough to begin: the likeliest cause with its odds, at most three ' +
    'checks of a minute that would tell more, and one act with its amount. The odds rest on small tables of our own ' +
    'judgement around published thresholds; nobody has counted why heaps stay cold.',
  input: notHeatingInput,
  output,
  sources: [
    ...Object.values(table.causes),
    ...Object.values(table.observations),
    ...Object.values(table.limits),
    ...Object.values(table.amounts),
    ...citationsOf('limits', 'triggers'),
    ...heatToHold.sources,
    { source: 'raiffa-schlaifer-1961', place: 'preposterior analysis: which check to make', mark: 'memory' },
  ],
  cautions: inOrder(['fire', 'ammonia', 'manure-pathogens', 'dust-spores', 'seeding-weeds', 'rats-flies']),
  example: { size: { width_m: 0.9, depth_m: 0.9, height_m: 0.9 }, squeeze: 'dusty', age_days: 12, air_degC: 18 },
  run,
};
