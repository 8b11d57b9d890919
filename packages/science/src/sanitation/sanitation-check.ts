import { z } from 'zod';
import { type Day, daySchema } from '../calendar/index.ts';
import { bad, type Calculation, type Citation, cited, good, type Outcome } from '../catalogue/index.ts';
import { type CautionId, cautionIds, inOrder } from '../caution/index.ts';
import {
  allMaterialDemand,
  curingDemand,
  demand,
  moistureDemand,
  nearestDoor,
  peakDemand,
  ratioDemand,
  turnsDemand,
  weeksDemand,
} from './demands.ts';
import { daysLogged, earliestFull } from './heat-days.ts';
import { type SanitationLog, sanitationLogSchema, type WormLog, wormLogSchema } from './log.ts';
import { type RuleId, type RuleSet, ruleIds, sanitationParameters } from './parameters.ts';
import { type Demand, demandIds, type RuleVerdict, together, verdictIds, whyIds } from './verdict.ts';
import { type WormVerdict, wormVerdict, wormVerdictSchema } from './worms.ts';

const { rules: sets, turnAt_degC, worms: wormRule } = sanitationParameters;

export interface SanitationInput {
  /** The log of a heap; or that of a worm bed. */
  readonly log?: SanitationLog | undefined;
  readonly worms?: WormLog | undefined;
  /** Whose rules; left out, all of them. */
  readonly rules?: readonly RuleId[] | undefined;
}

/** As what it counts on a bed: raw manure until a rule is met; compost of plants needs no rule. */
export const countsAsIds = ['raw-manure', 'treated', 'plants-only'] as const;
export type CountsAs = (typeof countsAsIds)[number];

export interface SanitationCheck {
  readonly countsAs: CountsAs;
  /** One for each rule that was asked, in the table's order. */
  readonly rules: readonly RuleVerdict[];
  readonly worms?: WormVerdict | undefined;
  /** What was logged in the hot middle, after the last raw addition. */
  readonly logged: {
    readonly days: number;
    readonly first_day?: Day | undefined;
    readonly last_day?: Day | undefined;
    readonly hottest_degC?: number | undefined;
    /** Readings that do not count, as raw stuff went in on that day or later. */
    readonly before: number;
  };
  readonly cautions: readonly CautionId[];
}

const citationShape = { source: z.string(), place: z.string(), mark: z.enum(['seen', 'memory', 'derived']) };

const demandSchema: z.ZodType<Demand> = z.strictObject({
  demand: z.enum(demandIds),
  verdict: z.enum(verdictIds),
  why: z.enum(whyIds),
  have: z.number().optional(),
  want: z.number().optional(),
  at_degC: z.number().optional(),
  ...citationShape,
});

const ruleVerdictSchema: z.ZodType<RuleVerdict> = z.strictObject({
  rule: z.enum(ruleIds),
  verdict: z.enum(verdictIds),
  demands: z.array(demandSchema),
  canStill: z.boolean(),
  earliest_day: daySchema.optional(),
  ...citationShape,
});

const outputSchema: z.ZodType<SanitationCheck> = z.strictObject({
  countsAs: z.enum(countsAsIds),
  rules: z.array(ruleVerdictSchema),
  worms: wormVerdictSchema.optional(),
  logged: z.strictObject({
    days: z.number().min(0),
    first_day: daySchema.optional(),
    last_day: daySchema.optional(),
    hottest_degC: z.number().optional(),
    before: z.number().min(0),
  }),
  cautions: z.array(z.enum(cautionIds as readonly [CautionId, ...CautionId[]])),
});

function run({ log, worms, rules = ruleIds }: SanitationInput): Outcome<SanitationCheck> {
  if (log === undefined && worms === undefined)
    return bad({ code: 'missing', path: 'log', found: '', wanted: 'log or worms' });
  const verdicts =
    log === undefined
      ? []
      : sanitationParameters.rules.filter(({ id }) => rules.includes(id)).map((rule) => verdictOf(rule, log));
  const countsAs = countsAsOf(log, verdicts);
  return good({
    countsAs,
    rules: verdicts,
    ...(worms !== undefined && { worms: wormVerdict(worms) }),
    logged: loggedOf(log),
    cautions: inOrder([
      ...(countsAs === 'plants-only' ? [] : (['manure-pathogens'] as const)),
      ...(log?.readings.some(({ temp_degC }) => temp_degC >= turnAt_degC.value) === true ? (['fire'] as const) : []),
      'local-rules',
    ]),
  });
}

/** What a rule says of a log. */
function verdictOf(rule: RuleSet, log: SanitationLog): RuleVerdict {
  const demands = demandsOf(rule, log);
  const verdict = together(demands);
  const canStill = !demands.some((one) => one.verdict === 'not-yet' && one.demand === 'ratio');
  const earliest_day = verdict === 'not-yet' && canStill ? earliestDay(rule, log, demands) : undefined;
  return {
    rule: rule.id,
    verdict,
    demands,
    canStill,
    ...(earliest_day !== undefined && { earliest_day }),
    ...cited(rule),
  };
}

function demandsOf(rule: RuleSet, log: SanitationLog): readonly Demand[] {
  if (rule.ofAnimalMatterOnly && !log.animalMatter) return [demand('method', ['not-meant', 'plants-only'], rule)];
  if (!rule.methods.includes(log.method)) return [demand('method', ['not-meant', 'not-this-way'], rule)];
  const stand = nearestDoor(rule, log);
  return [
    ...(log.stillFed === true ? [demand('feeding', ['not-yet', 'still-fed'], rule)] : []),
    stand.demand,
    ...peakDemand(rule, log),
    ...turnsDemand(rule, stand, log),
    ...weeksDemand(rule, log),
    ...allMaterialDemand(rule, stand, log),
    ...ratioDemand(rule, log),
    ...moistureDemand(rule, log),
    ...curingDemand(rule, log),
  ];
}

/** When the days could be full, where they are what is missing and the feeding has stopped. */
function earliestDay(rule: RuleSet, log: SanitationLog, demands: readonly Demand[]): Day | undefined {
  const missing = demands.filter(({ verdict }) => verdict === 'not-yet').map(({ demand: id }) => id);
  if (!missing.includes('days') || missing.includes('feeding')) return undefined;
  const last = daysLogged(log, 'inside').at(-1)?.day;
  const { door, run: heat } = nearestDoor(rule, log);
  return earliestFull(heat, door, last);
}

/**
 * Rules for sludge, rules for registered plants (whose other conditions are not asked here), and those no longer in
 * force say nothing of a garden's compost: they are shown, and count for nothing.
 */
const notForGardens: readonly string[] = ['law-for-sludge', 'law-for-plants', 'former-law'];

/** Whether a rule that was read, not only recalled, bears on a garden's compost. */
export function bearsOnGardens(rule: RuleId): boolean {
  return sets.some(({ id, standing, mark }) => id === rule && mark !== 'memory' && !notForGardens.includes(standing));
}

function countsAsOf(log: SanitationLog | undefined, verdicts: readonly RuleVerdict[]): CountsAs {
  if (log === undefined) return 'raw-manure';
  if (!log.animalMatter) return 'plants-only';
  return verdicts.some(({ rule, verdict }) => verdict === 'met' && bearsOnGardens(rule)) ? 'treated' : 'raw-manure';
}

function loggedOf(log: SanitationLog | undefined): SanitationCheck['logged'] {
  if (log === undefined) return { days: 0, before: 0 };
  const days = daysLogged(log, 'inside');
  const [first] = days;
  const last = days.at(-1);
  return {
    days: days.length,
    ...(first !== undefined && { first_day: first.day }),
    ...(last !== undefined && { last_day: last.day }),
    ...(days.length > 0 && {
      hottest_degC: days.reduce((most, { highest_degC }) => Math.max(most, highest_degC), -Infinity),
    }),
    before: log.readings.filter(({ day }) => log.lastRaw_day !== undefined && day <= log.lastRaw_day).length,
  };
}

const within = (rule: RuleSet): readonly Citation[] =>
  [rule.turns, rule.carbonToNitrogen, rule.allMaterial, rule.moisture, rule.curing, rule.weeks, rule.peak].filter(
    (one) => one !== undefined,
  );

/** What the rules say of a heap's log. */
export const sanitationCheck: Calculation<SanitationInput, SanitationCheck> = {
  id: 'sanitation-check',
  title: 'What the rules say of a heap’s log',
  summary:
    'Takes one log of a heap (temperatures by day and place, turnings, how it was kept, its C:N, when raw stuff last went in, its curing) and gives a verdict by each rule set: met; not yet, with what is missing; or cannot be shown, with what was not written down. Rules differ on purpose, and a log may meet one and miss another. A heap with manure that meets none counts as raw manure. A worm bed is judged by its months.',
  input: z.strictObject({
    log: sanitationLogSchema.optional(),
    worms: wormLogSchema.optional(),
    rules: z.array(z.enum(ruleIds)).min(1).max(ruleIds.length).optional(),
  }),
  output: outputSchema,
  sources: [...sets, ...sets.flatMap(within), wormRule, wormRule.guidance, wormRule.moisture],
  cautions: ['fire', 'manure-pathogens', 'local-rules'],
  example: {
    log: {
      method: 'turned',
      animalMatter: true,
      carbonToNitrogen: 30,
      readings: [
        { day: '2026-04-02', temp_degC: 58 },
        { day: '2026-04-03', temp_degC: 63 },
        { day: '2026-04-04', temp_degC: 66 },
        { day: '2026-04-05', temp_degC: 61, point: 'core' },
        { day: '2026-04-05', temp_degC: 48, point: 'edge' },
      ],
      turned: ['2026-04-05'],
    },
  },
  run,
};
