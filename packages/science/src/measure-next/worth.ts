import { permutation } from '../estimate/index.ts';

/** What each way to act costs in each draw. */
export type Losses = readonly Float64Array[];

/** What knowing more is worth to a decision, in the unit of the losses. */
export interface Worth {
  /** Expected loss that the knowledge saves; about 0, on either side, for what tells nothing. */
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
 * a draw counts for an outcome as much as it makes that outcome likely.
 *
 * The way chosen after an outcome is judged on the draws that it was chosen by, which flatters it. How much, is found by
 * the same sum with the readings dealt out to the draws at random: what such readings seem to save is taken off.
 *
 * @param outcomes the chance of each outcome of the check in each draw; over the outcomes they add up to 1
 * @param met 1 where a way to act meets the aim in a draw, else 0
 * @param shuffles how often the readings are dealt out at random
 */
export function worthOf(losses: Losses, outcomes: readonly Float64Array[], met: Losses, shuffles: number): Worth {
  const now = bestNow(losses);
  const count = losses[0]?.length ?? 0;
  const told = followed(now, losses, outcomes, met);
  const nothing = Array.from({ length: shuffles }, (_, seed) => {
    const order = permutation(count, seed + 1);
    const dealt = outcomes.map((likely) => likely.map((_chance, j) => likely[order[j] ?? j] ?? Number.NaN));
    return followed(now, losses, dealt, met);
  });
  const flattery = meanOf(nothing.map(({ gain }) => gain));
  const metNow_share = sum(met[now] ?? new Float64Array(0)) / count;
  return {
    gain: told.gain - flattery,
    error: Math.hypot(told.error, deviationOf(nothing.map(({ gain }) => gain))),
    changes_share: told.changes_share,
    met: {
      now_share: metNow_share,
      then_share: told.met_share - meanOf(nothing.map(({ met_share }) => met_share - metNow_share)),
    },
  };
}

interface Followed {
  readonly gain: number;
  readonly error: number;
  readonly changes_share: number;
  readonly met_share: number;
}

/** What it saves to do after each outcome what then costs least, told by the draws that chose it. */
function followed(now: number, losses: Losses, outcomes: readonly Float64Array[], met: Losses): Followed {
  const saved = new Float64Array(losses[0]?.length ?? 0);
  let changes = 0;
  let then = 0;
  for (const likely of outcomes) {
    const act = leastOf(losses.map((loss) => weighted(loss, likely)));
    if (act !== now) changes += sum(likely);
    for (let j = 0; j < likely.length; j++) {
      const chance = likely[j] ?? 0;
      saved[j] = (saved[j] ?? 0) + chance * (at(losses, now, j) - at(losses, act, j));
      then += chance * at(met, act, j);
    }
  }
  const count = saved.length;
  return {
    gain: sum(saved) / count,
    error: deviationOf([...saved]) / Math.sqrt(count),
    changes_share: changes / count,
    met_share: then / count,
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
  let all = 0;
  for (let j = 0; j < values.length; j++) all += values[j] ?? 0;
  return all;
}

/** Plain loops: this runs some ten million times for one answer. */
function weighted(values: Float64Array, weights: Float64Array): number {
  let all = 0;
  for (let j = 0; j < values.length; j++) all += (values[j] ?? 0) * (weights[j] ?? 0);
  return all;
}

/** The position of the least cost; of equal ones the first. */
function leastOf(costs: readonly number[]): number {
  let best = 0;
  costs.forEach((cost, c) => {
    if (cost < (costs[best] ?? Number.POSITIVE_INFINITY)) best = c;
  });
  return best;
}

/** 0 of none. */
function meanOf(values: readonly number[]): number {
  return values.reduce((all, one) => all + one, 0) / Math.max(1, values.length);
}

function deviationOf(values: readonly number[]): number {
  const mean = meanOf(values);
  return Math.sqrt(values.reduce((all, one) => all + (one - mean) ** 2, 0) / Math.max(1, values.length - 1));
}
