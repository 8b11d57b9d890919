import { good, type Outcome } from '../catalogue/index.ts';
import { chance, type Draws } from '../estimate/index.ts';
import { type Amount, type Sizing, sizeAmount } from '../material/index.ts';
import type { Ingredient } from './ingredient.ts';
import type { Extra } from './mend.ts';
import { balanceOf, type MixBalance } from './mix-balance.ts';
import { weighMix } from './mix-input.ts';
import type { Choice, Wanted } from './programme.ts';
import { type Found, whyNoMore } from './search.ts';
import type { Fetch, MixSolveInput, Used, WhyLeft } from './solution.ts';
import { type Shelf, takenFrom } from './stock.ts';

/** A mix that was found, before it is told in the grower's measures. */
export interface Chosen {
  readonly shelves: readonly Shelf[];
  /** What is not on hand; its choices come after the shelves'. */
  readonly extras: readonly Extra[];
  /** The shelves' choices and the extras', in the order of `found`. */
  readonly choices: readonly Choice[];
  readonly wanted: Wanted;
  readonly found: Found;
}

/** What each choice is made of, in the order of `found`. */
export function kindsOf({ shelves, extras }: Pick<Chosen, 'shelves' | 'extras'>): readonly string[] {
  return [...shelves.map(({ published }) => published.id), ...extras.map(({ permitted }) => permitted.material)];
}

/** Every material on hand: how much goes in, how much is left, and why. */
export function usedOf(chosen: Chosen, input: MixSolveInput, draws: Draws): readonly Used[] {
  return chosen.shelves.map((shelf, i) => {
    const used = amountUsed(shelf, i, chosen, input, draws);
    return used.left > 0 && used.left >= shelf.measuresPerStep ? { ...used, because: whyLeft(shelf, i, chosen) } : used;
  });
}

/** The same without why: another answer leans away from the best, and what holds its stuff back is that. */
export function usedElsewhere(chosen: Chosen, input: MixSolveInput, draws: Draws): readonly Used[] {
  return chosen.shelves.map((shelf, i) => amountUsed(shelf, i, chosen, input, draws));
}

function whyLeft({ choice, isDusted }: Shelf, i: number, { choices, found, wanted }: Chosen): WhyLeft {
  if (isDusted) return 'dusted';
  return (found.steps[i] ?? 0) < choice.highest ? whyNoMore(choices, found, wanted, i) : 'limit';
}

function amountUsed(shelf: Shelf, i: number, { found }: Chosen, { ownSizes }: MixSolveInput, draws: Draws): Used {
  const { counting, measuresPerStep, count, permitted, amount, name, known } = shelf;
  const used = (found.steps[i] ?? 0) * measuresPerStep;
  const sizing = { draws, material: known, name, ownSizes, path: `stock[${i}]` };
  const onHand_kg = massOf_kg(amount, sizing);
  const taken_kg = massOf_kg(takenFrom(shelf, used), sizing);
  const spare_kg = onHand_kg.map((kg, j) => kg - (taken_kg[j] ?? Number.NaN));
  return {
    ...permitted,
    stock: i,
    ...counting,
    count: used,
    left: Math.max(0, round(count - used)),
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

/** So many steps of a material to have more of, or to fetch. */
export function fetchOf({ permitted, counting, measuresPerStep, stock }: Extra, steps: number): Fetch {
  return { ...permitted, ...counting, count: steps * measuresPerStep, onHand: stock !== undefined };
}

/** Measures of each line of the stock that go in, with what is to be had more of it. */
export function countsOf({ shelves, extras, found }: Pick<Chosen, 'shelves' | 'extras' | 'found'>): readonly number[] {
  return shelves.map(({ measuresPerStep }, i) =>
    extras.reduce(
      (count, { stock, measuresPerStep: more }, j) =>
        stock === i ? count + (found.steps[shelves.length + j] ?? 0) * more : count,
      (found.steps[i] ?? 0) * measuresPerStep,
    ),
  );
}

/** What has to be fetched. */
export function fetchedOf({ shelves, extras, found }: Chosen): readonly Fetch[] {
  return extras.flatMap((extra, i) => {
    const steps = found.steps[shelves.length + i] ?? 0;
    return steps > 0 ? [fetchOf(extra, steps)] : [];
  });
}

/** The mix over its draws; `undefined` where nothing solid goes in. */
export function balanceFor(chosen: Chosen, input: MixSolveInput, draws: Draws): Outcome<MixBalance | undefined> {
  const { shelves, choices, found } = chosen;
  const counts = countsOf(chosen);
  const ofShelves = shelves.flatMap((shelf, i): readonly Ingredient[] => {
    const { given, name } = shelf;
    const count = counts[i] ?? 0;
    const { material, like, described, measured, doubtful, screenedOut } = given;
    return count > 0
      ? [{ material, like, described, measured, doubtful, screenedOut, line: name, amount: takenFrom(shelf, count) }]
      : [];
  });
  const fetched = fetchedOf(chosen).flatMap(({ material, measure, count, onHand }): readonly Ingredient[] =>
    onHand ? [] : [{ material, amount: { measure, count } }],
  );
  const anySolid = choices.some(({ step }, i) => (found.steps[i] ?? 0) > 0 && step.volume_m3 > 0);
  if (!anySolid) return good(undefined);
  const { ownSizes, packing_share, bay, goals } = input;
  const ingredients = [...ofShelves, ...fetched];
  const mix = weighMix({ ingredients, water_L: found.water_L, ownSizes, packing_share }, draws);
  return mix.ok ? good(balanceOf(mix.value, draws, { bay, goals })) : mix;
}
