import { z } from 'zod';
import { type Chance, chanceSchema } from '../estimate/index.ts';
import type { OwnSizes } from '../material/index.ts';
import { ownSizesSchema, type Permitted, permittedShape } from './ingredient.ts';
import { type MixBalance, mixBalanceSchema } from './mix-balance.ts';
import { type Bay, baySchema, type Goals, goalsSchema } from './mix-input.ts';
import { type ChargeId, chargeIds } from './search.ts';
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
}

/** One material of the mix. */
export interface Used extends Permitted {
  /** Position in the stock. */
  readonly stock: number;
  readonly measure: string;
  /** Measures that go in. */
  readonly count: number;
  /** Measures left over, likely; what was kept back is in it. */
  readonly left: number;
  /** What held the rest back; absent when nothing is left. */
  readonly because?: ChargeId | 'limit' | undefined;
  /** In how many draws there is enough of it. */
  readonly enough: Chance;
}

/** A number of measures of one material, and a way to mend the mix. */
export interface Fetch {
  readonly material: string;
  readonly measure: string;
  readonly count: number;
  readonly onHand: boolean;
}

export interface Mend {
  readonly fetch: readonly Fetch[];
  /** How the mix would stand then. */
  readonly standing: Standing;
}

export interface MixSolution {
  readonly standing: Standing;
  readonly wanted_m3: number;
  readonly use: readonly Used[];
  /** Water to pour on, whole litres. */
  readonly water_L: number;
  /** The mix over its draws; absent when nothing goes in. */
  readonly balance?: MixBalance | undefined;
  /** What it is short of, or has too much of, on likely values. */
  readonly lacks: readonly Lack[];
  /** What would mend it, best first. */
  readonly mends: readonly Mend[];
  /** The objective reached; see `docs/models/mix-solve.md`. */
  readonly cost: number;
}

const usedSchema: z.ZodType<Used> = z.strictObject({
  ...permittedShape,
  stock: z.int().min(0),
  measure: z.string(),
  count: z.number().min(0),
  left: z.number().min(0),
  because: z.enum([...chargeIds, 'limit']).optional(),
  enough: chanceSchema,
});

const mendSchema: z.ZodType<Mend> = z.strictObject({
  fetch: z.array(
    z.strictObject({ material: z.string(), measure: z.string(), count: z.number().positive(), onHand: z.boolean() }),
  ),
  standing: z.enum(standings),
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
});

export const mixSolutionSchema: z.ZodType<MixSolution> = z.strictObject({
  standing: z.enum(standings),
  wanted_m3: z.number(),
  use: z.array(usedSchema),
  water_L: z.number().min(0),
  balance: mixBalanceSchema.optional(),
  lacks: z.array(lackSchema),
  mends: z.array(mendSchema),
  cost: z.number(),
});
