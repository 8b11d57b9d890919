/** Half a measure: the finest that a grower shares out. */
const SHARE_MEASURES = 0.5;
const COUNT_ROUNDING = 1e-9;
const COUNT_DIGITS = 9;

/**
 * Shares a count of measures out over so many layers as evenly as half measures allow, spread from
 * bottom to top. What is left below half a measure goes with the last share, so that the shares sum to
 * the count.
 */
export function shareOut(count: number, layers: number): readonly number[] {
  const halves = Math.floor(count / SHARE_MEASURES + COUNT_ROUNDING);
  const shares = Array.from({ length: layers }, (_, i) => {
    const upTo = (place: number): number => Math.floor((halves * place) / layers + 0.5);
    return (upTo(i + 1) - upTo(i)) * SHARE_MEASURES;
  });
  const rest = count - halves * SHARE_MEASURES;
  if (rest <= COUNT_ROUNDING) return shares;
  const last = Math.max(
    0,
    shares.findLastIndex((share) => share > 0),
  );
  return shares.map((share, i) => (i === last ? Number((share + rest).toFixed(COUNT_DIGITS)) : share));
}

/** Whole litres shared out in proportion to weights, the fraction of a litre with the largest; equal without weights. */
export function shareWater_L(water_L: number, weights: readonly number[]): readonly number[] {
  const sum = weights.reduce((total, weight) => total + weight, 0);
  const shares = weights.map((weight) => (sum > 0 ? weight / sum : 1 / weights.length));
  const whole = Math.floor(water_L);
  const exact = shares.map((share) => share * whole);
  const floors = exact.map(Math.floor);
  const spare = whole - floors.reduce((total, litres) => total + litres, 0);
  const byFraction = exact
    .map((litres, i) => ({ i, fraction: litres - Math.floor(litres) }))
    .sort((a, b) => b.fraction - a.fraction || a.i - b.i)
    .slice(0, spare)
    .map(({ i }) => i);
  const largest = shares.indexOf(Math.max(...shares));
  return floors.map((litres, i) => litres + (byFraction.includes(i) ? 1 : 0) + (i === largest ? water_L - whole : 0));
}

/** A material's stock for the card: how many measures, how high they lie in the bay, and how thick a layer of it may be. */
export interface Pile {
  readonly count: number;
  /** Likely height of all of it, spread over the bay, m. */
  readonly height_m: number;
  readonly thickest_m: number;
}

const MOST_REPEATS = 40;

/**
 * How often dry and wet alternate: the fewest turns in which no pile lies thicker in one layer than it
 * may, nor all piles of a kind together, each by more than about two centimetres. Where half measures or too little of one kind forbid that, the
 * turns in which they come nearest to it. There is something of each kind in every turn.
 */
export function repeatsFor(kinds: readonly (readonly Pile[])[], together_m: number): number {
  const sharable = kinds
    .filter((piles) => piles.length > 0)
    .map((piles) => Math.max(...piles.map(({ count }) => Math.floor(count / SHARE_MEASURES + COUNT_ROUNDING))));
  const most = Math.max(1, Math.min(MOST_REPEATS, ...sharable));
  const excess = Array.from({ length: most }, (_, i) =>
    Math.max(0, ...kinds.map((piles) => excessOf(piles, i + 1, together_m))),
  );
  const least = Math.min(...excess);
  return excess.findIndex((one) => one <= Math.max(least + HEIGHT_ROUNDING_M, ABOUT_M)) + 1;
}

const HEIGHT_ROUNDING_M = 1e-9;
/** The rules say "about": nobody spreads to a centimetre or two. */
export const ABOUT_M = 0.02;

/** By how much the thickest layer of a kind is too thick, m. */
function excessOf(piles: readonly Pile[], repeats: number, together_m: number): number {
  const heights = piles.map(({ count, height_m }) =>
    shareOut(count, repeats).map((share) => (height_m * share) / count),
  );
  const ofEach = piles.map(({ thickest_m }, i) => Math.max(...(heights[i] ?? [])) - thickest_m);
  const ofAll = Array.from({ length: repeats }, (_, repeat) =>
    heights.reduce((sum, shares) => sum + (shares[repeat] ?? 0), 0),
  );
  return Math.max(0, ...ofEach, Math.max(...ofAll) - together_m);
}

/** Measures of a pile that lie about so high: half measures, at least one, no more than there is. */
export function measuresFor(pile: Pile, height_m: number): number {
  if (pile.height_m <= height_m) return pile.count;
  const halves = Math.max(1, Math.round((pile.count * height_m) / pile.height_m / SHARE_MEASURES));
  return Math.min(pile.count, halves * SHARE_MEASURES);
}
