import { z } from 'zod';
import { bad, type Calculation, good, type Needs, type Outcome } from '../catalogue/index.ts';
import { type Chance, chance, chanceSchema, type Draws } from '../estimate/index.ts';
import { type Amount, materialAt, type OwnSizes, type Sizing, sizeAmount } from '../material/index.ts';
import type { MilpSolver } from '../solver/index.ts';
import { bandTable, type Goal, type JudgedQuantity } from './bands.ts';
import { type Ingredient, ownSizesSchema, type Permitted, permittedShape } from './ingredient.ts';
import { candidatesOf, type Mending, mend } from './mend.ts';
import { balanceOf, type MixBalance, mixBalanceSchema } from './mix-balance.ts';
import { type Bay, baySchema, type Goals, goalsSchema, weighMix } from './mix-input.ts';
import { mixParameters } from './parameters.ts';
import { type Choice, referenceDryOf_kgPerM3, type Wanted } from './programme.ts';
import { type ChargeId, chargeIds, type Found, search, searchNearest, whyNoMore } from './search.ts';
import { mixCautionIds, mixSources } from './sources.ts';
import { type Lack, lackSchema, lacksOf, type Standing, standingOf, standings } from './standing.ts';
import {
  type Shelf,
  type Step,
  type StockLine,
  shelve,
  stepMeasures,
  stockLineSchema,
  USUAL_MEASURE,
} from './stock.ts';

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

const inputSchema: z.ZodType<MixSolveInput> = z.strictObject({
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

const outputSchema: z.ZodType<MixSolution> = z.strictObject({
  standing: z.enum(standings),
  wanted_m3: z.number(),
  use: z.array(usedSchema),
  water_L: z.number().min(0),
  balance: mixBalanceSchema.optional(),
  lacks: z.array(lackSchema),
  mends: z.array(mendSchema),
  cost: z.number(),
});

/** The quantities the solver judges together with the volume, unless the grower names others too. */
const solvedFor: readonly JudgedQuantity[] = ['carbonToNitrogen_ratio', 'moisture_pctWet', 'freeAirSpace_pctVolume'];

function goalsOf(goals: Goals | undefined): Wanted['goals'] {
  const own = (Object.keys(goals ?? {}) as JudgedQuantity[]).filter((quantity) => !solvedFor.includes(quantity));
  return [...solvedFor, ...own].map((quantity): readonly [JudgedQuantity, Goal] => {
    const { preferred, reasonable } = goals?.[quantity] ?? bandTable.goals[quantity];
    return [quantity, { preferred, reasonable }];
  });
}

function wantedOf(input: MixSolveInput, choices: readonly Choice[]): Wanted {
  const { bay } = input;
  const packing_share = input.packing_share ?? mixParameters.packing_share.estimate.p50;
  const ofBay = bay === undefined ? undefined : bay.width_m * bay.depth_m * bay.height_m;
  return {
    volume_m3: input.wanted_m3 ?? ofBay ?? mixParameters.wantedVolume_m3.value,
    goals: goalsOf(input.goals),
    packing_share,
    mostWater_L: input.mostWater_L ?? Number.POSITIVE_INFINITY,
    floor_m3: 0,
    referenceDry_kgPerM3: referenceDryOf_kgPerM3(choices, packing_share),
  };
}

interface Solved {
  readonly shelves: readonly Shelf[];
  readonly choices: readonly Choice[];
  readonly wanted: Wanted;
  readonly step: Step;
  readonly best: Found;
}

/** The best mix in the wanted steps; where whole measures give nothing, in half ones; else the nearest. */
function solveStock(input: MixSolveInput, solver: MilpSolver): Outcome<Solved> {
  const steps: readonly Step[] = input.step === 'half' ? ['half'] : ['whole', 'half'];
  let solved: Solved | undefined;
  for (const step of steps) {
    const shelved = shelve(input.stock, step, input.ownSizes);
    if (!shelved.ok) return shelved;
    const shelves = shelved.value;
    const choices = shelves.map(({ choice }) => choice);
    const wanted = wantedOf(input, choices);
    const found = search(choices, wanted, solver);
    if (!found.ok) return found;
    if (found.value.steps.some((count) => count > 0)) {
      return good({ shelves, choices, wanted, step, best: roundWater(found.value) });
    }
    solved ??= { shelves, choices, wanted, step, best: found.value };
  }
  if (solved === undefined) throw new RangeError('there is always a step to solve in');
  const nearest = searchNearest(solved.choices, solved.wanted, solver);
  if (!nearest.ok) return nearest;
  return good({ ...solved, best: roundWater(nearest.value ?? solved.best) });
}

/** The mix that fits the wanted bands and volume best, from what is on hand; always an answer. */
function solve(input: MixSolveInput, needs: Needs): Outcome<MixSolution> {
  const { solver, draws } = needs;
  if (solver === undefined) return bad({ code: 'no-solver', path: 'mix-solve', found: '', wanted: 'a solver' });
  const unknown = (input.candidates ?? []).map((id, i) => materialAt(id, `candidates[${i}]`)).find(({ ok }) => !ok);
  if (unknown !== undefined && !unknown.ok) return unknown;
  const solved = solveStock(input, solver);
  if (!solved.ok) return solved;
  const { shelves, choices, wanted, best } = solved.value;
  const balance = balanceFor(shelves, best, input, draws);
  if (!balance.ok) return balance;
  const mends = mendsFor(solved.value, input, solver);
  if (!mends.ok) return mends;
  return good({
    standing: standingOf(choices, best, wanted),
    wanted_m3: wanted.volume_m3,
    use: shelves.map((shelf, i) => usedOf(shelf, i, solved.value, input, draws)),
    water_L: best.water_L,
    ...(balance.value === undefined ? {} : { balance: balance.value }),
    lacks: lacksOf(choices, best, wanted),
    mends: mends.value,
    cost: best.cost,
  });
}

/** What would mend a mix that does not stand well. */
function mendsFor(solved: Solved, input: MixSolveInput, solver: MilpSolver): Outcome<readonly Mend[]> {
  const { shelves, choices, wanted, step, best } = solved;
  if (input.mend === false || isWellOff(standingOf(choices, best, wanted))) return good([]);
  const candidates = candidatesOf({
    ids: input.candidates ?? mixParameters.mends,
    onHand: shelves.map(({ published }) => published.id),
    measure: usualMeasure(shelves),
    measuresPerStep: stepMeasures[step],
    wanted,
    ownSizes: input.ownSizes,
  });
  if (!candidates.ok) return candidates;
  const isGood = ({ choices: all, found }: Mending): boolean => standingOf(all, found, wanted) === 'good';
  const mended = mend({ shelves, candidates: candidates.value, wanted, best, solver, isGood });
  return mended.ok ? good(mended.value.map((mending) => mendOf(mending, wanted))) : mended;
}

function isWellOff(standing: Standing): boolean {
  return standing === 'good' || standing === 'fair';
}

/** Nobody pours tenths of a litre. */
function roundWater(found: Found): Found {
  return { ...found, water_L: Math.round(found.water_L) };
}

/** The measure most lines are counted in. */
function usualMeasure(shelves: readonly Shelf[]): string {
  const counts = new Map<string, number>();
  for (const { counting } of shelves) counts.set(counting.measure, (counts.get(counting.measure) ?? 0) + 1);
  const most = Math.max(0, ...counts.values());
  return [...counts].find(([, count]) => count === most)?.[0] ?? USUAL_MEASURE;
}

function mendOf({ extras, choices, found }: Mending, wanted: Wanted): Mend {
  return {
    fetch: extras.map(({ extra: { material, measure, measuresPerStep, onHand }, steps }) => ({
      material,
      measure,
      count: steps * measuresPerStep,
      onHand,
    })),
    standing: standingOf(choices, found, wanted),
  };
}

function usedOf(shelf: Shelf, i: number, solved: Solved, input: MixSolveInput, draws: Draws): Used {
  const { best, choices, wanted } = solved;
  const { counting, measuresPerStep, count, choice, permitted, amount, name, known } = shelf;
  const steps = best.steps[i] ?? 0;
  const used = steps * measuresPerStep;
  const left = Math.max(0, round(count - used));
  const sizing = { draws, material: known, name, ownSizes: input.ownSizes, path: `stock[${i}]` };
  const onHand_kg = massOf_kg(amount, sizing);
  const taken_kg = massOf_kg({ ...counting, count: used }, sizing);
  const spare_kg = onHand_kg.map((kg, j) => kg - (taken_kg[j] ?? Number.NaN));
  const held =
    left > 0 && left >= measuresPerStep
      ? steps < choice.highest
        ? whyNoMore(choices, best, wanted, i)
        : 'limit'
      : undefined;
  return {
    ...permitted,
    stock: i,
    measure: counting.measure,
    count: used,
    left,
    ...(held === undefined ? {} : { because: held }),
    enough: chance(spare_kg, (kg) => kg >= -SPARE_ROUNDING_KG),
  };
}

/** The mass of an amount that was sized before, when the stock was shelved. */
function massOf_kg(amount: Amount, sizing: Sizing): Float64Array {
  const sized = sizeAmount(amount, sizing);
  if (!sized.ok) throw new RangeError('an amount on the shelf has a size');
  return sized.value.mass_kg;
}

/** Counts are told to a hundredth of a measure. */
function round(count: number): number {
  return Math.round(100 * count) / 100;
}

/** The same buckets weighed twice may differ in the last digit. */
const SPARE_ROUNDING_KG = 1e-9;

function balanceFor(
  shelves: readonly Shelf[],
  best: Found,
  input: MixSolveInput,
  draws: Draws,
): Outcome<MixBalance | undefined> {
  const ingredients = shelves.flatMap(({ given, counting, measuresPerStep, name }, i): readonly Ingredient[] => {
    const count = (best.steps[i] ?? 0) * measuresPerStep;
    const { material, like, described, measured, doubtful, screenedOut } = given;
    return count > 0
      ? [{ material, like, described, measured, doubtful, screenedOut, line: name, amount: { ...counting, count } }]
      : [];
  });
  const anySolid = shelves.some(({ choice }, i) => (best.steps[i] ?? 0) > 0 && choice.step.volume_m3 > 0);
  if (!anySolid) return good(undefined);
  const { ownSizes, packing_share, bay, goals } = input;
  const mix = weighMix({ ingredients, water_L: best.water_L, ownSizes, packing_share }, draws);
  return mix.ok ? good(balanceOf(mix.value, draws, { bay, goals })) : mix;
}

export const mixSolve: Calculation<MixSolveInput, MixSolution> = {
  id: 'mix-solve',
  title: 'The best mix from what is on hand',
  summary:
    'How many measures of each material on hand, and how much water, to come nearest to the wanted C:N, moisture, air space and volume together; what that leaves over or lacks; and which other material would mend it. Bands are soft, the grower’s limits are hard, and there is always an answer.',
  input: inputSchema,
  output: outputSchema,
  sources: mixSources,
  cautions: mixCautionIds,
  example: {
    stock: [
      { material: 'straw', amount: { measure: 'barrow', count: 8 } },
      { material: 'coffee-grounds', amount: { measure: 'bucket-20l', count: 4 } },
      { material: 'goat-bedding', amount: { measure: 'barrow', count: 3 } },
      { material: 'grass-clippings', amount: { measure: 'barrow', count: 3 } },
      { material: 'apple-pomace', amount: { measure: 'bucket-20l', count: 6 } },
    ],
    bay: { width_m: 1, depth_m: 1, height_m: 1 },
  },
  run: solve,
};
