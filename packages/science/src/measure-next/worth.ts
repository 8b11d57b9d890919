/** What each way to act costs in each draw. */
export type Losses = readonly Float64Array[];

/** What knowing more is worth to a decision, in the unit of the losses. */
export interface Worth {
  /** Expected loss that the knowledge saves; told low, and below 0 for what saves next to nothing. */
  readonly gain: number;
  /** Standard error of that gain over the draws. */
  readonly error: number;
  /** How often, over draws and outcomes, something else is then done. */
  readonly changes_share: number;
  /** Share of draws that would be met, acting now and acting on what was learnt. */
  readonly met: { readonly now_share: number; readonly then_share: number };
}

/** The way to act that costs least over all draws. */
export function bestNow(losses: Losses): number {
  return leastOf(losses.map((loss) => sum(loss)));
}

/**
 * Expected value of sample information (Raiffa and Schlaifer, 1961): what a check saves, when after each outcome one
 * does what then costs least. By reweighting the draws (as Strong, Oakley, Brennan and Breeze, 2015, do by regression):
 * a draw counts for an outcome as much as it makes that outcome likely. What is done after an outcome is always chosen
 * without the draw that it is then judged on, so that 256 draws don't flatter a check that tells nothing. Where two ways
 * cost all but the same after an outcome, that makes the worth come out low, by about a hundredth of a soft edge on
 * common mixes: a check that is just worth its minute may be missed.
 *
 * @param outcomes the chance of each outcome of the check in each draw; over the outcomes they add up to 1
 * @param met 1 where a way to act meets the aim in a draw, else 0
 */
export function worthOf(losses: Losses, outcomes: readonly Float64Array[], met: Losses): Worth {
  const now = bestNow(losses);
  const count = losses[0]?.length ?? 0;
  const saved = new Float64Array(count);
  let changes = 0;
  let then = 0;
  for (const likely of outcomes) {
    const costs = losses.map((loss) => weighted(loss, likely));
    for (let j = 0; j < count; j++) {
      const chance = likely[j] ?? 0;
      const act = leastOf(costs, (c) => chance * at(losses, c, j));
      saved[j] = (saved[j] ?? 0) + chance * (at(losses, now, j) - at(losses, act, j));
      if (act !== now) changes += chance;
      then += chance * at(met, act, j);
    }
  }
  const gain = sum(saved) / count;
  const spread = saved.reduce((all, one) => all + (one - gain) ** 2, 0) / Math.max(1, count - 1);
  return {
    gain,
    error: Math.sqrt(spread / count),
    changes_share: changes / count,
    met: { now_share: sum(met[now] ?? new Float64Array(0)) / count, then_share: then / count },
  };
}

/** Expected value of perfect information: what is saved where everything is known before acting. Never below 0. */
export function worthOfAll(losses: Losses): number {
  const now = losses[bestNow(losses)] ?? new Float64Array(0);
  const saved = now.map((loss, j) => loss - Math.min(...losses.map((one) => one[j] ?? Number.NaN)));
  return sum(saved) / now.length;
}

/**
 * The chance of each of some readings in each draw: the closer the reading to what is true there, the likelier, by a
 * normal error. Each reading has its own error where `errors` gives more than one.
 */
export function readingsIn(
  truths: Float64Array,
  readings: readonly { readonly at: number; readonly error: number }[],
): readonly Float64Array[] {
  const densities = readings.map((reading) =>
    truths.map((truth) => -0.5 * ((truth - reading.at) / reading.error) ** 2 - Math.log(reading.error)),
  );
  const highest = truths.map((_, j) => Math.max(...densities.map((one) => one[j] ?? Number.NEGATIVE_INFINITY)));
  const shares = densities.map((one) => one.map((log, j) => Math.exp(log - (highest[j] ?? 0))));
  const totals = truths.map((_, j) => shares.reduce((all, one) => all + (one[j] ?? 0), 0));
  return shares.map((one) => one.map((share, j) => share / (totals[j] ?? Number.NaN)));
}

function at(table: Losses, row: number, column: number): number {
  return table[row]?.[column] ?? Number.NaN;
}

function sum(values: Float64Array): number {
  return values.reduce((all, one) => all + one, 0);
}

function weighted(values: Float64Array, weights: Float64Array): number {
  return values.reduce((all, one, j) => all + one * (weights[j] ?? 0), 0);
}

/** The position of the least cost, less what is to be left out of it; of equal ones the first. */
function leastOf(costs: readonly number[], without: (position: number) => number = () => 0): number {
  let best = 0;
  let least = Number.POSITIVE_INFINITY;
  costs.forEach((cost, c) => {
    const left = cost - without(c);
    if (left < least) {
      least = left;
      best = c;
    }
  });
  return best;
}
