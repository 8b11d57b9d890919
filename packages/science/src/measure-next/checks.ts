import { type Estimate, normalQuantile, percent, positive, type Scale, toLine } from '../estimate/index.ts';
import { type Amount, moistureFromSqueeze, squeezeGrades, vagueCountIds } from '../material/index.ts';
import type { Ingredient } from '../mix/ingredient.ts';
import type { MixInput, WeighedIngredient, WeighedMix } from '../mix/mix-input.ts';
import { portionMoisture_pctWet } from '../mix/portion.ts';
import { measureNextParameters } from './parameters.ts';
import { readingsIn } from './worth.ts';

/**
 * A check of a minute: squeeze a handful, weigh a bucket, see how finely it is cut, count what was guessed, shake down
 * a bucket of the mix. Its words are the message `measureNext.CHECK`.
 */
export const checkIds = ['squeeze', 'weigh-bucket', 'look-at-chop', 'count-again', 'settle'] as const;
export type CheckId = (typeof checkIds)[number];

/** A check that could be made, and how likely each of its outcomes is in each draw. */
export interface Possible {
  readonly check: CheckId;
  /** Position of the ingredient; absent for a check of the mix. */
  readonly ingredient?: number | undefined;
  readonly outcomes: readonly Float64Array[];
}

const Z_P90 = normalQuantile(0.9);
/** Nine times in ten within the error given: 5 % either side. */
const Z_NINE_IN_TEN = normalQuantile(0.95);

/** Every check that could tell something about this mix. What is known already has none. */
export function checksOf(input: MixInput, mix: WeighedMix): readonly Possible[] {
  const { bucket_times, chop_times, count_times, settled_share } = measureNextParameters.errors;
  const ofOne = mix.ingredients.flatMap((ingredient, i): readonly Possible[] => {
    const { particle, chop } = ingredient.published;
    const density = onLine(ingredient, ({ wet_kg, volume_m3 }) => wet_kg / volume_m3);
    const volume = onLine(ingredient, ({ volume_m3 }) => volume_m3);
    const solid = particle !== 'liquid';
    const isGuessed = isGuess(input.ingredients[i]);
    return [
      ...(solid ? [{ check: 'squeeze' as const, ingredient: i, outcomes: squeezed(ingredient) }] : []),
      ...(solid
        ? [{ check: 'weigh-bucket' as const, ingredient: i, outcomes: read(density, bucket_times.value) }]
        : []),
      ...(chop.pays
        ? [{ check: 'look-at-chop' as const, ingredient: i, outcomes: read(density, chop_times.value) }]
        : []),
      ...(isGuessed
        ? [{ check: 'count-again' as const, ingredient: i, outcomes: read(volume, count_times.value) }]
        : []),
    ];
  });
  const error = settled_share.value / Z_NINE_IN_TEN;
  const settling = input.packing_share === undefined ? inSteps(mix.packing_share, error) : [];
  return [...ofOne, { check: 'settle' as const, outcomes: settling }].filter(({ outcomes }) => outcomes.length > 1);
}

function onLine(
  { portions }: WeighedIngredient,
  of: (portion: WeighedIngredient['portions'][number]) => number,
): Float64Array {
  return Float64Array.from(portions, (portion) => toLine(of(portion), positive));
}

/** The grades of the squeeze, each as likely as the moisture that it stands for is near to the true one. */
function squeezed({ portions, published }: WeighedIngredient): readonly Float64Array[] {
  const truths = Float64Array.from(portions, (portion) => toLine(portionMoisture_pctWet(portion) ?? 0, percent));
  if (!hasSpread(truths)) return [];
  const grades = squeezeGrades.map((grade) => asReading(moistureFromSqueeze(grade, published.particle), percent));
  return readingsIn(truths, grades);
}

function asReading({ p10, p50, p90 }: Estimate, scale: Scale): { readonly at: number; readonly error: number } {
  return { at: toLine(p50, scale), error: (toLine(p90, scale) - toLine(p10, scale)) / (2 * Z_P90) };
}

/** A reading that is right within a factor, nine times in ten. */
function read(truths: Float64Array, within_times: number): readonly Float64Array[] {
  return inSteps(truths, Math.log(within_times) / Z_NINE_IN_TEN);
}

/** Readings in steps of equal chance over what may be true. */
function inSteps(truths: Float64Array, error: number): readonly Float64Array[] {
  if (!hasSpread(truths)) return [];
  const sorted = truths.toSorted();
  const { value: count } = measureNextParameters.method.outcomes;
  const readings = Array.from({ length: count }, (_, k) => ({
    at: sorted[Math.floor(((k + 0.5) / count) * sorted.length)] ?? Number.NaN,
    error,
  }));
  return readingsIn(truths, readings);
}

/** Draws that agree to the last digits have nothing to find out. */
const LEAST_SPREAD = 1e-9;

function hasSpread(truths: Float64Array): boolean {
  const low = Math.min(...truths);
  const high = Math.max(...truths);
  return Number.isFinite(low) && Number.isFinite(high) && high - low > LEAST_SPREAD * Math.max(1, Math.abs(low));
}

const guesses: ReadonlySet<unknown> = new Set(vagueCountIds);

/** Whether nobody has counted it. */
function isGuess(ingredient: Ingredient | undefined): boolean {
  const amount: Amount | undefined = ingredient?.amount;
  return amount !== undefined && ('vague' in amount || ('count' in amount && guesses.has(amount.count)));
}
