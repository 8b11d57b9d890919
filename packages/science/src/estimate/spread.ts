import { normalQuantile } from './normal.ts';
import { type Estimate, isEstimate, type Quantity } from './quantity.ts';
import { fromLine, type Scale, toLine } from './scale.ts';

const Z_P90 = normalQuantile(0.9);
const Z_P95 = normalQuantile(0.95);

/**
 * The value of a quantity at a cumulative share `u` in (0, 1): a two-piece normal on the quantity's
 * scale, through its three points (Fechner 1897; see Wallis K. F. 2014, Statistical Science 29:106-112).
 */
export function valueAt(quantity: Quantity, scale: Scale, u: number): number {
  if (!isEstimate(quantity)) return quantity;
  const middle = toLine(quantity.p50, scale);
  const z = normalQuantile(u);
  const end = toLine(z < 0 ? quantity.p10 : quantity.p90, scale);
  return fromLine(middle + (Math.abs(z) / Z_P90) * (end - middle), scale);
}

/** A published low–typical–high, read as 5th, 50th and 95th percentile. */
export interface PublishedRange {
  readonly low: number;
  readonly typical: number;
  readonly high: number;
}

/**
 * A published range as an estimate. A low or high on the scale's very bound is drawn in by one part
 * in a thousand of the way from the typical value, since an uncertain value never reaches a bound.
 *
 * @throws RangeError when the range is out of order or the typical value lies on a bound.
 */
export function fromPublished(range: PublishedRange, scale: Scale): Estimate {
  const { low, typical, high } = range;
  if (!(low <= typical && typical <= high)) throw new RangeError(`${low} ≤ ${typical} ≤ ${high} does not hold`);
  const middle = toLine(typical, scale);
  if (!Number.isFinite(middle)) throw new RangeError(`${typical} lies on a bound of its scale`);
  return {
    p10: fromLine(middle + (Z_P90 / Z_P95) * (toLine(offBound(low, typical), scale) - middle), scale),
    p50: typical,
    p90: fromLine(middle + (Z_P90 / Z_P95) * (toLine(offBound(high, typical), scale) - middle), scale),
  };

  function offBound(value: number, inner: number): number {
    return Number.isFinite(toLine(value, scale)) ? value : value + (inner - value) * 1e-3;
  }
}

/**
 * A lone value with the documented spread of its class: `halfWidthOnLine` is the distance on the scale's
 * line from the middle to the 5th or 95th percentile (on the logarithm, ln 1.5 = 0.405 means "within a factor of
 * 1.5, nine times in ten").
 */
export function withSpread(typical: number, halfWidthOnLine: number, scale: Scale): Estimate {
  const middle = toLine(typical, scale);
  const step = (Z_P90 / Z_P95) * halfWidthOnLine;
  return { p10: fromLine(middle - step, scale), p50: typical, p90: fromLine(middle + step, scale) };
}
