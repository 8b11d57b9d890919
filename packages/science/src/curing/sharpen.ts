import { normalQuantile } from '../estimate/index.ts';

const Z_P95 = normalQuantile(0.95);
const Z_P99 = normalQuantile(0.99);

/** Something seen that bears on a quantity above 0: the value, and within which factor of it nine in ten lie. */
export interface Seen {
  readonly value: number;
  readonly factor: number;
}

/**
 * Which draws are left, and how often, after something was seen: each is weighed by how likely it makes what was seen
 * (normal on the logarithm), and as many are picked anew at even steps along the weights (systematic resampling: Kitagawa G.
 * 1996, J. Comput. Graph. Stat. 5:1-25). The order of draws is kept; the same input always gives the same answer.
 *
 * @param values the quantity in each draw, above 0
 * @returns the places of the draws that are left, as many as there were
 */
export function sharpen(values: Float64Array, seen: Seen): Int32Array {
  const sd = Math.log(seen.factor) / Z_P95;
  const misfit = values.map((value) => 0.5 * ((Math.log(value) - Math.log(seen.value)) / sd) ** 2);
  const least = misfit.reduce((low, one) => Math.min(low, one), Number.POSITIVE_INFINITY);
  const weights = misfit.map((one) => Math.exp(least - one));
  const sum = weights.reduce((total, one) => total + one, 0);
  const places = new Int32Array(values.length);
  let at = 0;
  let reached = (weights[0] ?? 0) / sum;
  for (let k = 0; k < places.length; k++) {
    const wanted = (k + 0.5) / places.length;
    while (reached < wanted && at < values.length - 1) {
      at += 1;
      reached += (weights[at] ?? 0) / sum;
    }
    places[k] = at;
  }
  return places;
}

/** Whether what was seen lies so far beyond the draws that one of the two must be wrong. */
export function isBeyond(values: Float64Array, seen: Seen): boolean {
  const logs = values.map(Math.log);
  const mean = logs.reduce((sum, one) => sum + one, 0) / logs.length;
  const variance = logs.reduce((sum, one) => sum + (one - mean) ** 2, 0) / logs.length;
  const sd = Math.hypot(Math.sqrt(variance), Math.log(seen.factor) / Z_P95);
  return Math.abs(Math.log(seen.value) - mean) > Z_P99 * sd;
}
