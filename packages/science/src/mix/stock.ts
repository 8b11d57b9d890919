import { z } from 'zod';
import { bad, good, type Outcome, type Problem } from '../catalogue/index.ts';
import { likely } from '../estimate/index.ts';
import { type Amount, allMaterials, amountSchema, type FillId, fillTimes, type OwnSizes } from '../material/index.ts';
import { type Resolved, resolve, type Stuffed, stuffedShape, weighLikely } from './ingredient.ts';
import { scaled } from './portion.ts';
import type { Choice } from './programme.ts';

/** A material on hand, and the grower's limits on it; limits count in its measure. */
export interface StockLine extends Stuffed {
  readonly amount: Amount;
  /** Tells two lines of one material apart. */
  readonly line?: string | undefined;
  /** The measure it is counted in; by default that of the amount, else a 20 L bucket. */
  readonly measure?: string | undefined;
  readonly atLeast?: number | undefined;
  readonly atMost?: number | undefined;
  readonly keepBack?: number | undefined;
  /** All of it must go in. */
  readonly useAll?: boolean | undefined;
}

const limit = (description: string): z.ZodOptional<z.ZodType<number>> =>
  z.number().min(0).meta({ description }).optional();

export const stockLineSchema: z.ZodType<StockLine> = z.strictObject({
  ...stuffedShape,
  amount: amountSchema,
  line: z.string().min(1).optional(),
  measure: z.string().min(1).optional().meta({ description: 'The measure it is counted in.' }),
  atLeast: limit('Fewest measures that must go in.'),
  atMost: limit('Most measures that may go in.'),
  keepBack: limit('Measures to keep for something else.'),
  useAll: z.boolean().optional().meta({ description: 'All of it must go in.' }),
});

/** A bucket of 20 litres, when nothing else says what the grower counts in. */
export const USUAL_MEASURE = 'bucket-20l';

/** How a material is counted. */
export interface Counting {
  readonly measure: string;
  readonly fill?: FillId | undefined;
  readonly packed?: boolean | undefined;
}

/** A material on hand as the solver takes it. */
export interface Shelf extends Resolved {
  /** The subject of the draws of its amount. */
  readonly name: string;
  readonly amount: Amount;
  readonly counting: Counting;
  /** Measures in one step. */
  readonly measuresPerStep: number;
  /** Measures on hand, likely. */
  readonly count: number;
  readonly choice: Choice;
}

/** Whole or half measures. */
export type Step = 'whole' | 'half';
export const stepMeasures: Readonly<Record<Step, number>> = { whole: 1, half: 0.5 };

/** A count that is a step short by less than this is taken for the step: nobody counts finer. */
const COUNT_ROUNDING = 1e-6;
const COUNT_DIGITS = 9;

/** Makes the solver's choices out of the stock. All problems come back at once. */
export function shelve(
  stock: readonly StockLine[],
  step: Step,
  ownSizes: OwnSizes | undefined,
): Outcome<readonly Shelf[]> {
  const order = rankByStorageLife(stock);
  const shelves = stock.map((line, i) => shelveOne(line, `stock[${i}]`, step, ownSizes, order[i] ?? i));
  const problems: readonly Problem[] = shelves.flatMap((one) => (one.ok ? [] : one.problems));
  return problems.length > 0 ? bad(...problems) : good(shelves.flatMap((one) => (one.ok ? [one.value] : [])));
}

/** What spoils soonest is used first. */
function rankByStorageLife(stock: readonly StockLine[]): readonly number[] {
  const life = stock.map(({ material, like }) => {
    const published = allMaterials.find(({ id }) => id === (like ?? material));
    return published?.values.storageLife_days?.typical ?? Number.POSITIVE_INFINITY;
  });
  const order = life.map((_, i) => i).sort((a, b) => lifeOf(a) - lifeOf(b) || a - b);
  return life.map((_, i) => order.indexOf(i));

  function lifeOf(i: number): number {
    return Math.min(life[i] ?? Number.MAX_VALUE, Number.MAX_VALUE);
  }
}

const partFills: readonly FillId[] = ['three-quarters', 'half', 'quarter'];

/** What a measure that is only partly filled is of a full one: "half a barrow" is told as half of one. */
function partOf(amount: Amount): number {
  if (!('measure' in amount) || amount.fill === undefined || !partFills.includes(amount.fill)) return 1;
  return likely(fillTimes[amount.fill]);
}

function countingOf({ amount, measure }: StockLine): Counting {
  const packed = amount.packed;
  if ('measure' in amount && (measure === undefined || measure === amount.measure)) {
    return partOf(amount) === 1
      ? { measure: amount.measure, fill: amount.fill, packed }
      : { measure: amount.measure, packed };
  }
  return { measure: measure ?? USUAL_MEASURE, packed };
}

function shelveOne(
  line: StockLine,
  path: string,
  step: Step,
  ownSizes: OwnSizes | undefined,
  rank: number,
): Outcome<Shelf> {
  const resolved = resolve(line, path);
  if (!resolved.ok) return resolved;
  const name = line.line ?? line.material;
  const counting = countingOf(line);
  const weighing = { ownSizes, path };
  const one = weighLikely(resolved.value, { ...counting, count: 1 }, name, weighing);
  if (!one.ok) return one;
  const all = weighLikely(resolved.value, line.amount, name, weighing);
  if (!all.ok) return all;
  const count = one.value.wet_kg > 0 ? Number((all.value.wet_kg / one.value.wet_kg).toFixed(COUNT_DIGITS)) : 0;
  const limits = limitsOf(line, count, line.useAll === true ? count : stepMeasures[step] * partOf(line.amount), path);
  if (!limits.ok) return limits;
  const { lowest, highest, measuresPerStep } = limits.value;
  const choice: Choice = { step: scaled(one.value, measuresPerStep), lowest, highest, rank };
  return good({ ...resolved.value, name, amount: line.amount, counting, measuresPerStep, count, choice });
}

function limitsOf(
  line: StockLine,
  count: number,
  measuresPerStep: number,
  path: string,
): Outcome<{ readonly lowest: number; readonly highest: number; readonly measuresPerStep: number }> {
  if (line.useAll === true) return good({ lowest: count > 0 ? 1 : 0, highest: count > 0 ? 1 : 0, measuresPerStep });
  const most = Math.min(count - (line.keepBack ?? 0), line.atMost ?? Number.POSITIVE_INFINITY);
  const highest = Math.max(0, Math.floor(most / measuresPerStep + COUNT_ROUNDING));
  const lowest = Math.ceil((line.atLeast ?? 0) / measuresPerStep - COUNT_ROUNDING);
  if (lowest > highest) {
    const wanted = `≤ ${highest * measuresPerStep}, what is on hand and may be used`;
    return bad({ code: 'too-big', path: `${path}.atLeast`, found: String(line.atLeast), wanted });
  }
  return good({ lowest: Math.max(0, lowest), highest, measuresPerStep });
}
