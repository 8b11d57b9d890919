import { z } from 'zod';
import { type Calculation, good, type Outcome } from '../catalogue/index.ts';
import { measuringSources } from '../material/measured.ts';
import { type Goals, goalsSchema, type MixInput, mixShape, weighMix } from '../mix/mix-input.ts';
import { mixSources } from '../mix/sources.ts';
import { type CheckId, checkIds, checksOf, type Possible } from './checks.ts';
import { measureNextParameters } from './parameters.ts';
import { waysOf } from './ways.ts';
import { bestNow, type Worth, worthOf, worthOfAll } from './worth.ts';

export interface BestMeasurementInput extends MixInput {
  readonly goals?: Goals | undefined;
}

/** A check of a minute and what it is worth to this mix. */
export interface ValuedCheck {
  readonly check: CheckId;
  /** Position of the ingredient; absent for a check of the mix as a whole. */
  readonly ingredient?: number | undefined;
  readonly material?: string | undefined;
  /** How much nearer the mix comes to its preferred bands on average, in soft edges. */
  readonly gain_softEdges: number;
  /** Standard error of that, over the draws. */
  readonly error_softEdges: number;
  /** How often its outcome changes what is laid. */
  readonly changes_share: number;
  /** Chance that C:N, moisture and air all lie in their reasonable bands, laid now and laid after the check. */
  readonly inBands: { readonly now_share: number; readonly then_share: number };
}

/** Which check would change a mix most. */
export interface BestMeasurement {
  /** What to check first, best first; at most three, and none where none is worth a minute. */
  readonly ask: readonly ValuedCheck[];
  /** The other checks that could be made, best first. */
  readonly others: readonly ValuedCheck[];
  /** What is best laid as long as nothing is measured. */
  readonly asItStands: {
    readonly water_L: number;
    /** The dry stuff of the mix, so many times over. */
    readonly dry_times: number;
    readonly loss_softEdges: number;
  };
  /** What it would be worth to know everything: no check is worth more. */
  readonly perfect_softEdges: number;
}

const valuedSchema: z.ZodType<ValuedCheck> = z.strictObject({
  check: z.enum(checkIds),
  ingredient: z.int().min(0).optional(),
  material: z.string().optional(),
  gain_softEdges: z.number().meta({ description: 'How much nearer to the preferred bands, in soft edges.' }),
  error_softEdges: z.number().min(0).meta({ description: 'Standard error of the gain.' }),
  changes_share: z.number().min(0).max(1).meta({ description: 'How often it changes what is laid.' }),
  inBands: z.strictObject({ now_share: z.number().min(0).max(1), then_share: z.number().min(0).max(1) }),
});

const outputSchema: z.ZodType<BestMeasurement> = z.strictObject({
  ask: z.array(valuedSchema),
  others: z.array(valuedSchema),
  asItStands: z.strictObject({
    water_L: z.number().min(0),
    dry_times: z.number().min(0),
    loss_softEdges: z.number().min(0),
  }),
  perfect_softEdges: z.number().min(0),
});

/** What a check tells of: a material's figure is asked for once, by the better check of it. */
const tells: Readonly<Record<CheckId, string>> = {
  squeeze: 'moisture',
  'weigh-bucket': 'density',
  'look-at-chop': 'density',
  'count-again': 'amount',
  settle: 'packing',
};

/** Sums of shares may leave 0 to 1 by the last digit. */
function asShare(value: number): number {
  return Math.min(1, Math.max(0, value));
}

function isWorthAMinute({ gain_softEdges, error_softEdges, changes_share, inBands }: ValuedCheck): boolean {
  const { decision, method } = measureNextParameters;
  return (
    gain_softEdges >= decision.worthwhile_softEdges.value &&
    gain_softEdges > method.surely_errors.value * error_softEdges &&
    changes_share >= decision.changes_share.value &&
    inBands.then_share - inBands.now_share >= decision.chanceGain_share.value
  );
}

/** The best few, no figure asked for twice. */
function chosenFrom(valued: readonly ValuedCheck[]): readonly ValuedCheck[] {
  const told = new Set<string>();
  const once = valued.filter(isWorthAMinute).filter(({ check, ingredient }) => {
    const figure = `${tells[check]} ${ingredient ?? ''}`;
    if (told.has(figure)) return false;
    told.add(figure);
    return true;
  });
  return once.slice(0, measureNextParameters.decision.mostAsked.value);
}

export const bestMeasurement: Calculation<BestMeasurementInput, BestMeasurement> = {
  id: 'best-measurement',
  title: 'What to measure first',
  summary:
    'For a mix: which check of a minute would change most what is laid, and so bring C:N, moisture and air nearest to their bands: a squeeze, a weighed bucket, a look at how finely it is cut, a count of what was guessed, or a bucket of the mix shaken down. At most three, best first; none where none is worth the minute. Their gains do not add up.',
  input: z.strictObject({ ...mixShape, goals: goalsSchema.optional() }),
  output: outputSchema,
  sources: [
    { source: 'raiffa-schlaifer-1961', place: 'the expected value of sample information', mark: 'memory' },
    { source: 'strong-2015', place: 'from one set of draws', mark: 'seen' },
    ...Object.values(measureNextParameters.decision),
    ...Object.values(measureNextParameters.errors),
    ...Object.values(measureNextParameters.method),
    ...measuringSources,
    ...mixSources,
  ],
  cautions: [],
  example: {
    ingredients: [
      { material: 'straw', amount: { measure: 'barrow', count: 4 } },
      { material: 'grass-clippings', amount: { measure: 'bucket-20l', count: 8 } },
      { material: 'goat-bedding', amount: { measure: 'barrow', count: 2 } },
    ],
  },
  run: (input, { draws }): Outcome<BestMeasurement> => {
    const mix = weighMix(input, draws);
    if (!mix.ok) return mix;
    const { ways, losses, met } = waysOf(mix.value, input.goals);
    const { shuffles } = measureNextParameters.method;
    const valued = checksOf(input, mix.value)
      .map((possible) => valuedAs(possible, worthOf(losses, possible.outcomes, met, shuffles.value), input))
      .sort((a, b) => b.gain_softEdges - a.gain_softEdges);
    const ask = chosenFrom(valued);
    const now = bestNow(losses);
    const { water_L = 0, dry_times = 1 } = ways[now] ?? {};
    const loss = losses[now] ?? new Float64Array(0);
    return good({
      ask,
      others: valued.filter((one) => !ask.includes(one)),
      asItStands: { water_L, dry_times, loss_softEdges: loss.reduce((all, one) => all + one, 0) / loss.length },
      perfect_softEdges: Math.max(0, worthOfAll(losses)),
    });
  },
};

function valuedAs({ check, ingredient }: Possible, worth: Worth, { ingredients }: MixInput): ValuedCheck {
  const material = ingredient === undefined ? undefined : ingredients[ingredient]?.material;
  return {
    check,
    ...(ingredient === undefined ? {} : { ingredient }),
    ...(material === undefined ? {} : { material }),
    gain_softEdges: worth.gain,
    error_softEdges: worth.error,
    changes_share: asShare(worth.changes_share),
    inBands: { now_share: asShare(worth.met.now_share), then_share: asShare(worth.met.then_share) },
  };
}
