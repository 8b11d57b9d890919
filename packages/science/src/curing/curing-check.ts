import { z } from 'zod';
import { type Calculation, good, type Outcome } from '../catalogue/index.ts';
import { between, freeQuantity, likely, type Quantity } from '../estimate/index.ts';
import {
  type FlaskClassId,
  flaskClassIds,
  maturityParameters,
  type Rating,
  type RipenessId,
  ratings,
  ripenessIds,
  type Scheme,
} from './maturity-parameters.ts';
import { type LimitRead, readLimit, worstOf } from './rating.ts';

/** How it smells; the message `ripe.smell.ID`. */
export const compostSmellIds = ['earthy', 'none', 'ammonia', 'sour'] as const;
export type SmellId = (typeof compostSmellIds)[number];

export interface CuringInput {
  readonly measured?: { readonly [Id in RipenessId]?: Quantity | undefined } | undefined;
  readonly smell?: SmellId | undefined;
  /** Whether what went in can still be told, other than wood and shells. */
  readonly stuffSeen?: boolean | undefined;
  /** The hottest it went after its last turn, moist enough. */
  readonly afterTurn_degC?: Quantity | undefined;
}

/** What speaks against its being ripe; the message `ripe.sign.ID`. */
export const signIds = ['ammonia', 'sour', 'stuff-seen', 'reheats', 'published-limit'] as const;
export type SignId = (typeof signIds)[number];

/**
 * `ripe`: one test of stability and one of maturity were passed and nothing speaks against it; `unripe`: something does;
 * `not-shown`: too little was measured to tell.
 */
export const ripenessStates = ['ripe', 'unripe', 'not-shown'] as const;
export type RipenessState = (typeof ripenessStates)[number];

export interface CuringCheck {
  readonly state: RipenessState;
  /** Whether the verdict holds over the whole range of what was measured. */
  readonly firm: boolean;
  readonly signs: readonly SignId[];
  readonly limits: readonly LimitRead[];
  /** The California rating: the C:N, one test of each group, the worst counts; absent where one of them is missing. */
  readonly california?: Rating | undefined;
  /** What that rating still lacks. */
  readonly californiaLacks: readonly Scheme[];
  /** Class of the self-heating test: I hottest, V ripe. */
  readonly flaskClass?: FlaskClassId | undefined;
  /** The test to do next: seedlings cost nothing; the flask needs a thermometer. */
  readonly next?: 'seedlings' | 'flask' | undefined;
  readonly how: { readonly seeds: number; readonly days: { readonly low: number; readonly high: number } };
}

const { limits, flaskClasses, reheats_degC, seedlings, signs: signSource } = maturityParameters;

function run({ measured = {}, smell, stuffSeen, afterTurn_degC }: CuringInput): Outcome<CuringCheck> {
  const read = limits.flatMap((row) => {
    const value = measured[row.quantity];
    return value === undefined ? [] : [readLimit(row, value)];
  });
  const seen = signsOf({ smell, stuffSeen, afterTurn_degC });
  const at = (end: 'best' | 'rating' | 'worst') =>
    stateOf(
      read.map((one) => ({ ...one, rating: one[end] })),
      seen,
    );
  const state = at('rating');
  const tested = (scheme: Scheme): boolean => read.some((one) => one.scheme === scheme);
  const signs: readonly SignId[] = fails(read) ? [...seen, 'published-limit'] : seen;
  const next = tested('maturity') ? (tested('stability') ? undefined : 'flask') : 'seedlings';
  return good({
    state,
    firm: at('best') === state && at('worst') === state,
    signs,
    limits: read,
    ...californiaOf(read),
    ...(measured.selfHeating_K !== undefined && { flaskClass: flaskClassOf(likely(measured.selfHeating_K)) }),
    ...(next !== undefined && { next }),
    how: { seeds: seedlings.seeds.value, days: { low: seedlings.days.low, high: seedlings.days.high } },
  });
}

function signsOf({ smell, stuffSeen, afterTurn_degC }: Omit<CuringInput, 'measured'>): readonly SignId[] {
  return [
    ...(smell === 'ammonia' || smell === 'sour' ? [smell] : []),
    ...(stuffSeen === true ? ['stuff-seen' as const] : []),
    ...(afterTurn_degC !== undefined && likely(afterTurn_degC) > reheats_degC.value ? ['reheats' as const] : []),
  ];
}

/** The California index is the one that says how its tests go together, so it decides; the other limits are told beside it. */
const isCalifornia = ({ limit }: LimitRead): boolean => limit.startsWith('california-');

/** Quantities that only other schemes have are failed when every one of their limits is. */
function fails(read: readonly LimitRead[]): boolean {
  return ripenessIds.some((quantity) => {
    const deciding = decidingFor(quantity, read);
    return deciding.length > 0 && deciding.every(({ rating }) => rating === 'immature');
  });
}

function decidingFor(quantity: RipenessId, read: readonly LimitRead[]): readonly LimitRead[] {
  const own = read.filter((one) => one.quantity === quantity);
  const californian = own.filter(isCalifornia);
  return californian.length > 0 ? californian : own;
}

function stateOf(read: readonly LimitRead[], seen: readonly SignId[]): RipenessState {
  if (seen.length > 0 || fails(read)) return 'unripe';
  const passed = (scheme: Scheme): boolean => read.some((one) => one.scheme === scheme);
  return passed('stability') && passed('maturity') ? 'ripe' : 'not-shown';
}

function californiaOf(read: readonly LimitRead[]): Pick<CuringCheck, 'california' | 'californiaLacks'> {
  const own = read.filter(isCalifornia);
  const gate = own.find(({ scheme }) => scheme === 'gate');
  if (gate?.rating === 'immature') return { california: 'immature', californiaLacks: [] };
  const californiaLacks = (['gate', 'stability', 'maturity'] as const).filter(
    (scheme) => !own.some((one) => one.scheme === scheme),
  );
  if (californiaLacks.length > 0) return { californiaLacks };
  const tested = own.filter(({ scheme }) => scheme !== 'gate').map(({ rating }) => rating);
  return { california: worstOf(tested), californiaLacks };
}

function flaskClassOf(rise_K: number): FlaskClassId {
  return flaskClasses.find(({ to_K }) => to_K === undefined || rise_K <= to_K)?.id ?? 'I';
}

/** What a laboratory can find; beyond it lies a slip of the pen. */
export const ripenessBounds: Readonly<Record<RipenessId, readonly [number, number]>> = {
  carbonToNitrogen_ratio: [1, 500],
  respiration_mgCO2CPerGOMPerDay: [0, 100],
  oxygenUptake_mmolPerKgOMPerHour: [0, 500],
  oxygenDemand_mgPerGVSPerHour: [0, 50],
  selfHeating_K: [0, 60],
  ammonium_mgPerKgDry: [0, 50_000],
  ammoniumToNitrate_ratio: [0, 100_000],
  emergence_pctControl: [0, 150],
  germinationIndex_pct: [0, 300],
  fattyAcids_mgPerKgDry: [0, 100_000],
  solubleCarbon_pctDry: [0, 50],
  solubleCarbonToOrganicNitrogen_ratio: [0, 100],
};

/** What a heap can have after a turn, °C; beyond it lies a slip of the pen. */
export const afterTurnBounds_degC: readonly [number, number] = [-30, 90];

const figure = (id: RipenessId): z.ZodOptional<z.ZodType<Quantity>> =>
  between(freeQuantity(`As its name says: ${id}.`), ...ripenessBounds[id]).optional();

const rating = z.enum(ratings);
const scheme = z.enum(['gate', 'stability', 'maturity'] as const);

/** How ripe a compost is, by what was measured, smelt and seen. */
export const curingCheck: Calculation<CuringInput, CuringCheck> = {
  id: 'curing-check',
  title: 'Whether a compost is ripe',
  summary:
    'Holds what was measured on a compost against published limits: how much it breathes, how far it heats itself in a flask, its ammonium and nitrate, how many seedlings come up in it, and what nose and eye say. Stable means that it hardly rots on, mature that it does not hurt plants; one does not show the other. It says nothing about germs.',
  input: z.strictObject({
    measured: z
      .strictObject({
        carbonToNitrogen_ratio: figure('carbonToNitrogen_ratio'),
        respiration_mgCO2CPerGOMPerDay: figure('respiration_mgCO2CPerGOMPerDay'),
        oxygenUptake_mmolPerKgOMPerHour: figure('oxygenUptake_mmolPerKgOMPerHour'),
        oxygenDemand_mgPerGVSPerHour: figure('oxygenDemand_mgPerGVSPerHour'),
        selfHeating_K: figure('selfHeating_K'),
        ammonium_mgPerKgDry: figure('ammonium_mgPerKgDry'),
        ammoniumToNitrate_ratio: figure('ammoniumToNitrate_ratio'),
        emergence_pctControl: figure('emergence_pctControl'),
        germinationIndex_pct: figure('germinationIndex_pct'),
        fattyAcids_mgPerKgDry: figure('fattyAcids_mgPerKgDry'),
        solubleCarbon_pctDry: figure('solubleCarbon_pctDry'),
        solubleCarbonToOrganicNitrogen_ratio: figure('solubleCarbonToOrganicNitrogen_ratio'),
      })
      .optional(),
    smell: z.enum(compostSmellIds).optional(),
    stuffSeen: z.boolean().optional(),
    afterTurn_degC: between(
      freeQuantity('The hottest it went after its last turn, °C.'),
      ...afterTurnBounds_degC,
    ).optional(),
  }),
  output: z.strictObject({
    state: z.enum(ripenessStates),
    firm: z.boolean(),
    signs: z.array(z.enum(signIds)),
    limits: z.array(
      z.strictObject({
        limit: z.string(),
        quantity: z.enum(ripenessIds),
        scheme,
        rating,
        best: rating,
        worst: rating,
      }),
    ),
    california: rating.optional(),
    californiaLacks: z.array(scheme),
    flaskClass: z.enum(flaskClassIds).optional(),
    next: z.enum(['seedlings', 'flask'] as const).optional(),
    how: z.strictObject({ seeds: z.number(), days: z.strictObject({ low: z.number(), high: z.number() }) }),
  }),
  sources: [...limits, ...flaskClasses, reheats_degC, signSource, seedlings.seeds, seedlings.days],
  cautions: ['manure-pathogens', 'dust-spores'],
  example: { measured: { selfHeating_K: 8, emergence_pctControl: 92, carbonToNitrogen_ratio: 18 }, smell: 'earthy' },
  run,
};
