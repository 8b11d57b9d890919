import table from '@loamwright/reference/not-heating.json' with { type: 'json' };

/** Why a heap may stay cold; the message `cold.cause.ID`. */
export type ColdCauseId = keyof typeof table.causes;
export const coldCauseIds: readonly [ColdCauseId, ...ColdCauseId[]] = Object.keys(table.causes) as [
  ColdCauseId,
  ...ColdCauseId[],
];

/** What can be known of a cold heap. */
export type ColdObservationId = keyof typeof table.observations;
export const coldObservationIds: readonly [ColdObservationId, ...ColdObservationId[]] = Object.keys(
  table.observations,
) as [ColdObservationId, ...ColdObservationId[]];

/** What was found, each as one of the outcomes of its table. */
export type Found = { readonly [O in ColdObservationId]?: string | undefined };

/** How likely each cause is. */
export type ColdOdds = Readonly<Record<ColdCauseId, number>>;

interface Observation {
  readonly outcomes: readonly string[];
  /** What is seen when nobody looked closely: one of several outcomes. */
  readonly either?: Readonly<Record<string, readonly string[]>>;
  readonly minutes: number;
  readonly usual: readonly number[];
  readonly where: Readonly<Partial<Record<ColdCauseId, readonly number[]>>>;
}

const observations: Readonly<Record<ColdObservationId, Observation>> = table.observations;

/** How often an outcome is met where a cause holds, by the table; the tables take the observations as independent. */
export function likelihood(observation: ColdObservationId, outcome: string, cause: ColdCauseId): number {
  const { outcomes, either, usual, where } = observations[observation];
  return (either?.[outcome] ?? [outcome]).reduce((sum, one) => {
    const share = (where[cause] ?? usual)[outcomes.indexOf(one)];
    if (share === undefined) throw new RangeError(`${observation} has no outcome ${one}`);
    return sum + share;
  }, 0);
}

/** The causes' odds by Bayes' rule, from the priors and what was found. */
export function coldOdds(found: Found): ColdOdds {
  const weights = coldCauseIds.map((cause) => {
    const seen = coldObservationIds.map((observation) => {
      const outcome = found[observation];
      return outcome === undefined ? 1 : likelihood(observation, outcome, cause);
    });
    return [cause, seen.reduce((product, factor) => product * factor, table.causes[cause].prior)] as const;
  });
  const sum = weights.reduce((total, [, weight]) => total + weight, 0);
  return Object.fromEntries(weights.map(([cause, weight]) => [cause, weight / sum])) as ColdOdds;
}

/** What can be done in a minute to know more; the message `cold.check.ID`. */
export const coldCheckIds = ['size', 'squeeze', 'what-went-in', 'smell', 'fresh-food'] as const;
export type ColdCheckId = (typeof coldCheckIds)[number];

/** What each check tells. */
const coldChecks: Readonly<Record<ColdCheckId, readonly ColdObservationId[]>> = {
  size: ['size'],
  squeeze: ['squeeze'],
  'what-went-in': ['ratio', 'age'],
  smell: ['smell'],
  'fresh-food': ['food'],
};

/** A check, and how much more often the likeliest cause would then be the right one. */
export interface WorthOfCheck {
  readonly check: ColdCheckId;
  readonly gain_share: number;
}

const MOST_CHECKS = 3;

/**
 * The checks that are worth making, at most three, the quickest first. A check's worth is the expected rise of the chance that
 * the likeliest cause is right (preposterior analysis: Raiffa and Schlaifer 1961).
 */
export function checksWorthMaking(found: Found): readonly WorthOfCheck[] {
  return coldCheckIds
    .filter((check) => coldChecks[check].every((observation) => found[observation] === undefined))
    .map((check) => ({ check, gain_share: gainOf(coldChecks[check], found) }))
    .filter(({ gain_share }) => gain_share >= table.limits.worthAsking_share.value)
    .sort((one, other) => other.gain_share - one.gain_share)
    .slice(0, MOST_CHECKS)
    .sort((one, other) => minutesOf(one.check) - minutesOf(other.check));
}

function minutesOf(check: ColdCheckId): number {
  return Math.max(...coldChecks[check].map((observation) => observations[observation].minutes));
}

function gainOf(made: readonly ColdObservationId[], found: Found): number {
  const now = coldOdds(found);
  // Over all outcomes, the sum of the greatest joint weights is the expected chance of the likeliest cause.
  const expected = outcomesOf(made).reduce((sum, outcomes) => {
    const joint = coldCauseIds.map((cause) =>
      made.reduce((weight, observation, i) => weight * likelihood(observation, outcomes[i] ?? '', cause), now[cause]),
    );
    return sum + Math.max(...joint);
  }, 0);
  return expected - Math.max(...Object.values(now));
}

/** Every combination of outcomes. */
function outcomesOf(made: readonly ColdObservationId[]): readonly (readonly string[])[] {
  return made.reduce<readonly (readonly string[])[]>(
    (all, observation) => all.flatMap((one) => observations[observation].outcomes.map((outcome) => [...one, outcome])),
    [[]],
  );
}

/** What speaks for a cause: what was found and is clearly likelier there than under the other causes together. */
export function reasonsFor(cause: ColdCauseId, found: Found): readonly ColdObservationId[] {
  const odds = coldOdds(found);
  const strength = (observation: ColdObservationId): number => {
    const outcome = found[observation];
    if (outcome === undefined) return 0;
    const others = coldCauseIds.filter((other) => other !== cause);
    const weight = others.reduce((sum, other) => sum + odds[other], 0);
    const elsewhere = others.reduce((sum, other) => sum + odds[other] * likelihood(observation, outcome, other), 0);
    return likelihood(observation, outcome, cause) / (elsewhere / weight);
  };
  return coldObservationIds
    .map((observation) => ({ observation, strong: strength(observation) }))
    .filter(({ strong }) => strong >= table.limits.tellsFor_times.value)
    .sort((one, other) => other.strong - one.strong)
    .map(({ observation }) => observation);
}
