import { z } from 'zod';
import { type Chance, chanceSchema } from '../estimate/index.ts';
import { fillIds, type OwnSizes } from '../material/index.ts';
import type { Filled } from './filled.ts';
import { ownSizesSchema, type Permitted, permittedShape } from './ingredient.ts';
import { type Aim, aims } from './leaning.ts';
import { type MixBalance, mixBalanceSchema } from './mix-balance.ts';
import { type Bay, baySchema, type Goals, goalsSchema } from './mix-input.ts';
import { type ChargeId, chargeIds } from './search.ts';
import { type Season, seasonSchema } from './season.ts';
import { type Lack, lackSchema, type Standing, standings } from './standing.ts';
import { type Step, type StockLine, stockLineSchema } from './stock.ts';

export interface MixSolveInput {
  /** What is on hand; empty is a question too. */
  readonly stock: readonly StockLine[];
  /** The bay to fill. */
  readonly bay?: Bay | undefined;
  /** The volume to reach, if it is not the bay's. */
  readonly wanted_m3?: number | undefined;
  readonly goals?: Goals | undefined;
  /** Whole or half measures; whole by default. */
  readonly step?: Step | undefined;
  /** Litres of water there are, if it is short. */
  readonly mostWater_L?: number | undefined;
  readonly ownSizes?: OwnSizes | undefined;
  readonly packing_share?: number | undefined;
  /** Materials that could be fetched, if not the common ones. */
  readonly candidates?: readonly string[] | undefined;
  /** False to have the mix at once, without looking for what would mend it. */
  readonly mend?: boolean | undefined;
  /** False to have the one answer only. */
  readonly alternatives?: boolean | undefined;
  /** When it is, so that nobody is sent to fetch what is not to be had; unknown by default. */
  readonly season?: Season | undefined;
}

/** What holds a material back: what more of it would do, the grower's wish, or that it is only for dusting. */
export type WhyLeft = ChargeId | 'limit' | 'dusted';

/** One material of the mix. */
export interface Used extends Permitted, Filled {
  /** Position in the stock. */
  readonly stock: number;
  /** Full measures, heaped or pressed down where `fill` and `packed` say so; "half a barrow" is 0.5. */
  readonly measure: string;
  /** Measures that go in. */
  readonly count: number;
  /** Measures left over, likely; what was kept back is in it. */
  readonly left: number;
  /** What held the rest back; absent when nothing is left. */
  readonly because?: WhyLeft | undefined;
  /** In how many draws there is enough of it. */
  readonly enough: Chance;
}

/** A number of measures of one material, and a way to mend the mix. */
export interface Fetch extends Permitted, Filled {
  readonly measure: string;
  readonly count: number;
  readonly onHand: boolean;
}

export interface Mend {
  readonly fetch: readonly Fetch[];
  /** Measures of each line of the stock that go in then, in its order; with what is fetched of it. */
  readonly counts: readonly number[];
  /** Water to pour on then, whole litres. */
  readonly water_L: number;
  /** How the mix would stand then: as it is told when these amounts are judged. */
  readonly standing: Standing;
}

/** What another answer gains and costs against the first. */
export interface TradeOff {
  /** Heat in a cubic metre over the first's: 1.2 is a fifth more. */
  readonly heat_times: number;
  /** Nitrogen at risk where it comes out badly (p90), in hundredths of it, more than in the first; below 0 where less. */
  readonly nitrogenAtRiskMore_pctNitrogen: number;
  /** Nitrogen that stays, kg, over what stays of the first's. */
  readonly nitrogenKept_times: number;
  /** Wet mass to shift over the first's. */
  readonly mass_times: number;
  /** Air space as laid, in hundredths of the volume, less than the first's; below 0 where more. */
  readonly airLess_pctVolume: number;
  /** Whether it lies only in the reasonable bands where the first lies in the preferred ones. */
  readonly standsLess: boolean;
}

/** A mix that can be laid. */
export interface Laying {
  readonly standing: Standing;
  /** Every material on hand. */
  readonly use: readonly Used[];
  /** What is not on hand and goes in too. */
  readonly fetch: readonly Fetch[];
  /** Water to pour on, whole litres. */
  readonly water_L: number;
  /** The mix over its draws; absent when nothing goes in. */
  readonly balance?: MixBalance | undefined;
}

/** Another answer: at least a third of its dry mass is other stuff than in the first, and than in those before it. */
export interface Alternative extends Laying {
  readonly aim: Aim;
  readonly balance: MixBalance;
  readonly tradeOff: TradeOff;
}

/** The first answer fetches nothing: it is the one with the least fetching. */
export interface MixSolution extends Laying {
  readonly wanted_m3: number;
  /** Whether that was asked for, as a bay or a volume; else it is what handbooks call the smallest heap. */
  readonly sizeSaid: boolean;
  /** What it is short of, or has too much of, on likely values. */
  readonly lacks: readonly Lack[];
  /** What would mend it, best first. */
  readonly mends: readonly Mend[];
  /**
   * Other answers, good or fair: the hottest, and the one that keeps most nitrogen. Empty where the first is not
   * good or fair, or where none is far enough from it and better at its aim by enough to tell.
   */
  readonly alternatives: readonly Alternative[];
  /** Common materials that were passed over in what to fetch because they are not in season; empty where nothing was to be fetched. */
  readonly outOfSeason: readonly string[];
  /** The objective reached by the first answer; see `docs/models/mix-solve.md`. */
  readonly cost: number;
}

/**
 * The solution with another of its answers in the place of the first, to be laid; it lacks nothing to be mended.
 * `undefined` where it has no answer for that aim.
 */
export function withAim(solution: MixSolution, aim: Aim): MixSolution | undefined {
  const other = solution.alternatives.find((alternative) => alternative.aim === aim);
  if (other === undefined) return undefined;
  const { standing, use, fetch, water_L, balance } = other;
  return { ...solution, standing, use, fetch, water_L, balance, lacks: [], mends: [] };
}

const filledShape = { fill: z.enum(fillIds).optional(), packed: z.boolean().optional() };

const usedSchema: z.ZodType<Used> = z.strictObject({
  ...permittedShape,
  ...filledShape,
  stock: z.int().min(0),
  measure: z.string(),
  count: z.number().min(0),
  left: z.number().min(0),
  because: z.enum([...chargeIds, 'limit', 'dusted']).optional(),
  enough: chanceSchema,
});

const fetchSchema: z.ZodType<Fetch> = z.strictObject({
  ...permittedShape,
  ...filledShape,
  measure: z.string(),
  count: z.number().positive(),
  onHand: z.boolean(),
});

const mendSchema: z.ZodType<Mend> = z.strictObject({
  fetch: z.array(fetchSchema),
  counts: z.array(z.number().min(0)),
  water_L: z.number().min(0),
  standing: z.enum(standings),
});

const layingShape = {
  standing: z.enum(standings),
  use: z.array(usedSchema),
  fetch: z.array(fetchSchema),
  water_L: z.number().min(0),
};

const alternativeSchema: z.ZodType<Alternative> = z.strictObject({
  ...layingShape,
  aim: z.enum(aims),
  balance: mixBalanceSchema,
  tradeOff: z.strictObject({
    heat_times: z.number().min(0),
    nitrogenAtRiskMore_pctNitrogen: z.number(),
    nitrogenKept_times: z.number().min(0),
    mass_times: z.number().min(0),
    airLess_pctVolume: z.number(),
    standsLess: z.boolean(),
  }),
});

const MOST_LINES = 24;

export const mixSolveInputSchema: z.ZodType<MixSolveInput> = z.strictObject({
  stock: z.array(stockLineSchema).max(MOST_LINES),
  bay: baySchema.optional(),
  wanted_m3: z.number().positive().max(1000).optional().meta({ description: 'Volume to reach, m³.' }),
  goals: goalsSchema.optional(),
  step: z.enum(['whole', 'half']).optional(),
  mostWater_L: z.number().min(0).optional().meta({ description: 'Litres of water there are.' }),
  ownSizes: ownSizesSchema.optional(),
  packing_share: z.number().min(0.3).max(1).optional(),
  candidates: z.array(z.string()).max(12).optional().meta({ description: 'Materials that could be fetched.' }),
  mend: z.boolean().optional().meta({ description: 'False: do not look for what would mend the mix.' }),
  alternatives: z.boolean().optional().meta({ description: 'False: the one answer only.' }),
  season: seasonSchema.optional(),
});

export const mixSolutionSchema: z.ZodType<MixSolution> = z.strictObject({
  ...layingShape,
  wanted_m3: z.number(),
  sizeSaid: z.boolean(),
  balance: mixBalanceSchema.optional(),
  lacks: z.array(lackSchema),
  mends: z.array(mendSchema),
  alternatives: z.array(alternativeSchema),
  outOfSeason: z.array(z.string()),
  cost: z.number(),
});
