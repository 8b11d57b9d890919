import { normalQuantile } from './normal.ts';
import { type Estimate, isEstimate, type Quantity } from './quantity.ts';
import { fromLine, type Scale, toLine } from './scale.ts';

const Z_P90 = normalQuantile(0.9);
/** Grid of the numerical integral: 4001 points over ±6 standard deviations of the wider of the two. */
const GRID_POINTS = 4001;
const GRID_REACH = 6;

/**
 * What is believed after a measurement, by Bayes' rule on the quantity's own scale: the prior is the
 * quantity's two-piece normal, the measurement's error the two-piece normal through `measured`.
 * Numerical integration; p10, p50 and p90 of the posterior come back.
 * A prior known as a plain number stays what it is; a measurement given as a plain number replaces
 * the prior, for it claims to have no error.
 */
export function narrow(prior: Quantity, measured: Quantity, scale: Scale): Quantity {
  if (!isEstimate(prior)) return prior;
  if (!isEstimate(measured)) return measured;
  const a = onLine(prior, scale);
  const b = onLine(measured, scale);
  if (widest(a) === 0) return prior;
  if (widest(b) === 0) return measured;
  const from = Math.min(a.middle - GRID_REACH * a.below, b.middle - GRID_REACH * b.below);
  const to = Math.max(a.middle + GRID_REACH * a.above, b.middle + GRID_REACH * b.above);
  const step = (to - from) / (GRID_POINTS - 1);
  const logWeights = Float64Array.from({ length: GRID_POINTS }, (_, i) => {
    const x = from + i * step;
    return logDensity(a, x) + logDensity(b, x);
  });
  return posteriorPercentiles(logWeights, from, step, scale);
}

interface OnLine {
  readonly middle: number;
  readonly below: number;
  readonly above: number;
}

function onLine(estimate: Estimate, scale: Scale): OnLine {
  const middle = toLine(estimate.p50, scale);
  return {
    middle,
    below: (middle - toLine(estimate.p10, scale)) / Z_P90,
    above: (toLine(estimate.p90, scale) - middle) / Z_P90,
  };
}

function widest(distribution: OnLine): number {
  return Math.max(distribution.below, distribution.above);
}

/** Up to a constant: the two-piece normal's halves carry half the mass each, so each half has its own height. */
function logDensity(distribution: OnLine, x: number): number {
  const sd = x < distribution.middle ? distribution.below : distribution.above;
  if (sd === 0) return x === distribution.middle ? 0 : Number.NEGATIVE_INFINITY;
  return -0.5 * ((x - distribution.middle) / sd) ** 2 - Math.log(sd);
}

function posteriorPercentiles(logWeights: Float64Array, from: number, step: number, scale: Scale): Estimate {
  const peak = logWeights.reduce((most, value) => Math.max(most, value), Number.NEGATIVE_INFINITY);
  const cumulative = new Float64Array(logWeights.length);
  let sum = 0;
  for (let i = 1; i < logWeights.length; i++) {
    const left = Math.exp((logWeights[i - 1] ?? Number.NEGATIVE_INFINITY) - peak);
    const right = Math.exp((logWeights[i] ?? Number.NEGATIVE_INFINITY) - peak);
    sum += (left + right) / 2;
    cumulative[i] = sum;
  }
  const at = (share: number): number => {
    const target = share * sum;
    const i = cumulative.findIndex((value) => value >= target);
    const below = cumulative[i - 1] ?? 0;
    const width = (cumulative[i] ?? 0) - below;
    const part = width > 0 ? (target - below) / width : 0;
    return fromLine(from + (i - 1 + part) * step, scale);
  };
  return { p10: at(0.1), p50: at(0.5), p90: at(0.9) };
}
