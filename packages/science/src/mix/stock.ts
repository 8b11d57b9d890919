import { z } from 'zod';
import { bad, good, type Outcome, type Problem } from '../catalogue/index.ts';
import { type Amount, allMaterials, amountSchema, type OwnSizes } from '../material/index.ts';
import { type Filled, filledAs, shareOfFull, toldFilling } from './filled.ts';
import { type Resolved, resolve, type Stuffed, stuffedShape, weighLikely } from './ingredient.ts';
import { mixParameters } from './parameters.ts';
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

/** How a material is counted: in full measures, which may be heaped or pressed down. */
export interface Counting extends Filled {
  readonly measure: string;
}

/** A material on hand as the solver takes it. */
export interface Shelf extends Resolved {
  /** The subject of the draws of its amount. */
  readonly name: string;
  readonly amount: Amount;
  readonly counting: Counting;
  /** What a measure of the stock is of a full one: a half for buckets that are half full. */
  readonly part_share: number;
  /** Measures in one step. */
  readonly measuresPerStep: number;
  /** Measures on hand, likely. */
  readonly count: number;
  readonly choice: Choice;
  /** Whether it is only for dusting and stays apart unless the grower says how much is to go in. */
  readonly isDusted: boolean;
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

function countingOf({ amount, measure }: StockLine): Counting {
  if ('measure' in amount && isCountedAsGiven(amount, measure)) {
    return { measure: amount.measure, ...toldFilling(filledAs(amount)) };
  }
  return { measure: measure ?? USUAL_MEASURE, ...toldFilling({ packed: amount.packed }) };
}

function isCountedAsGiven(amount: Amount, measure: string | undefined): boolean {
  return 'measure' in amount && (measure === undefined || measure === amount.measure);
}

/** So many full measures off a shelf, as the stock lies in them: half full where its buckets are. */
export function takenFrom({ amount, counting, part_share }: Shelf, count: number): Amount {
  return 'measure' in amount && part_share < 1
    ? { ...amount, count: count / part_share }
    : { measure: counting.measure, fill: counting.fill, packed: counting.packed, count };
}

/**
 * Measures in one step. Part-full ones go in as they come, or by halves and quarters of a full one; a stock
 * too small for a step goes in by half steps, or all at once.
 */
function stepOf(step: Step, part_share: number, usable: number): number {
  const finer = [0.5, 0.25].find((share) => Number.isInteger(part_share / share)) ?? part_share;
  const wanted = step === 'whole' ? part_share : finer;
  const fits = [wanted, wanted / 2].find((measures) => usable + COUNT_ROUNDING >= measures);
  return fits ?? (usable > COUNT_ROUNDING ? usable : wanted);
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
  const part_share =
    'measure' in line.amount && isCountedAsGiven(line.amount, line.measure) ? shareOfFull(line.amount.fill) : 1;
  const isDusted = isDustedUnlessSaid(line, resolved.value.published.id);
  const limits = limitsOf(isDusted ? { ...line, atMost: 0 } : line, count, { step, part_share, path });
  if (!limits.ok) return limits;
  const { lowest, highest, measuresPerStep } = limits.value;
  const choice: Choice = { step: scaled(one.value, measuresPerStep), lowest, highest, rank };
  return good({
    ...resolved.value,
    name,
    amount: line.amount,
    counting,
    part_share,
    measuresPerStep,
    count,
    choice,
    isDusted,
  });
}

/** Ash and lime are caustic and drive ammonia off: nobody is told to lay them by the bucket who did not ask to. */
function isDustedUnlessSaid({ useAll, atLeast, atMost }: StockLine, material: string): boolean {
  const isSaid = useAll === true || (atLeast ?? 0) > 0 || atMost !== undefined;
  return !isSaid && mixParameters.dusted.some((row) => row.material === material);
}

function limitsOf(
  line: StockLine,
  count: number,
  { step, part_share, path }: { readonly step: Step; readonly part_share: number; readonly path: string },
): Outcome<{ readonly lowest: number; readonly highest: number; readonly measuresPerStep: number }> {
  if (line.useAll === true) {
    const all = count > 0 ? 1 : 0;
    return good({ lowest: all, highest: all, measuresPerStep: count });
  }
  const most = Math.min(count - (line.keepBack ?? 0), line.atMost ?? Number.POSITIVE_INFINITY);
  const measuresPerStep = stepOf(step, part_share, most);
  const highest = Math.max(0, Math.floor(most / measuresPerStep + COUNT_ROUNDING));
  const lowest = Math.ceil((line.atLeast ?? 0) / measuresPerStep - COUNT_ROUNDING);
  if (lowest > highest) {
    const wanted = `≤ ${highest * measuresPerStep}, what is on hand and may be used`;
    return bad({ code: 'too-big', path: `${path}.atLeast`, found: String(line.atLeast), wanted });
  }
  return good({ lowest: Math.max(0, lowest), highest, measuresPerStep });
}
