/**
 * Rows that each touch their two neighbours: −inner[i] x[i−1] + own[i] x[i] − outer[i] x[i+1] = right[i].
 * All three coefficients are 0 or more, own[i] the largest sum of a row or a column: no pivot is needed.
 */
export interface Rows {
  readonly inner: Float64Array;
  readonly own: Float64Array;
  readonly outer: Float64Array;
  readonly right: Float64Array;
}

/** Room for so many rows. */
export function emptyRows(count: number): Rows {
  const room = (): Float64Array => new Float64Array(count);
  return { inner: room(), own: room(), outer: room(), right: room() };
}

/** Solves the rows into `into`, which may not be one of their arrays; `scratch` is written over. Thomas's algorithm. */
export function solveRows({ inner, own, outer, right }: Rows, into: Float64Array, scratch: Float64Array): void {
  const count = own.length;
  let up = 0;
  let last = 0;
  for (let i = 0; i < count; i++) {
    const low = inner[i] as number;
    const pivot = (own[i] as number) - low * up;
    up = (outer[i] as number) / pivot;
    last = ((right[i] as number) + low * last) / pivot;
    scratch[i] = up;
    into[i] = last;
  }
  for (let i = count - 2; i >= 0; i--) {
    last = (into[i] as number) + (scratch[i] as number) * last;
    into[i] = last;
  }
}
