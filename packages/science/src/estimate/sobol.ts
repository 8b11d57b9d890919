/**
 * The first dimensions of Sobol's sequence.
 *
 * Source: Joe S., Kuo F. Y. 2008, Constructing Sobol sequences with better two-dimensional projections,
 * SIAM J. Sci. Comput. 30:2635-2654, direction numbers `new-joe-kuo-6`, dimensions 2 to 24. Each row is
 * the primitive polynomial (its coefficients as the bits of a number) and the initial odd numbers.
 */
const directionTable: readonly (readonly [polynomial: number, initial: readonly number[]])[] = [
  [3, [1]],
  [7, [1, 3]],
  [11, [1, 3, 1]],
  [13, [1, 1, 1]],
  [19, [1, 1, 3, 3]],
  [25, [1, 3, 5, 13]],
  [37, [1, 1, 5, 5, 17]],
  [41, [1, 1, 5, 5, 5]],
  [47, [1, 1, 7, 11, 19]],
  [55, [1, 1, 5, 1, 1]],
  [59, [1, 1, 1, 3, 11]],
  [61, [1, 3, 5, 5, 31]],
  [67, [1, 3, 3, 9, 7, 49]],
  [91, [1, 1, 1, 15, 21, 21]],
  [97, [1, 3, 1, 13, 27, 49]],
  [103, [1, 1, 1, 15, 7, 5]],
  [109, [1, 3, 1, 15, 13, 25]],
  [115, [1, 1, 5, 5, 19, 61]],
  [131, [1, 3, 7, 11, 23, 15, 103]],
  [137, [1, 3, 7, 13, 13, 15, 69]],
  [143, [1, 1, 3, 13, 7, 35, 63]],
  [145, [1, 3, 5, 9, 1, 25, 53]],
  [157, [1, 3, 1, 13, 9, 35, 107]],
];

const BITS = 32;

/** How many dimensions of the sequence stand ready. */
export const sobolDimensions: number = directionTable.length + 1;

/**
 * The direction numbers of one dimension (0 the first) as 32-bit integers, highest bit first.
 *
 * @throws RangeError for a dimension the table does not hold.
 */
function directionNumbers(dimension: number): Uint32Array {
  const directions = new Uint32Array(BITS);
  if (dimension === 0) {
    for (let k = 0; k < BITS; k++) directions[k] = 2 ** (BITS - 1 - k);
    return directions;
  }
  const row = directionTable[dimension - 1];
  if (row === undefined) throw new RangeError(`Sobol dimension ${dimension} of ${sobolDimensions}`);
  const [polynomial, initial] = row;
  const degree = initial.length;
  for (let k = 0; k < BITS; k++) {
    const given = initial[k];
    directions[k] = given !== undefined ? given << (BITS - 1 - k) : recur(directions, k, degree, polynomial);
  }
  return directions;
}

/** Bratley P., Fox B. L. 1988, Algorithm 659, ACM Trans. Math. Softw. 14:88-100, recurrence (2). */
function recur(directions: Uint32Array, k: number, degree: number, polynomial: number): number {
  const oldest = directions[k - degree] ?? 0;
  let next = oldest ^ (oldest >>> degree);
  for (let j = 1; j < degree; j++) {
    if ((polynomial >>> (degree - j)) & 1) next ^= directions[k - j] ?? 0;
  }
  return next;
}

/** The first `count` points of one dimension as 32-bit integers (divide by 2^32), in the sequence's Gray-code order. */
export function sobolIntegers(dimension: number, count: number): Uint32Array {
  const directions = directionNumbers(dimension);
  const points = new Uint32Array(count);
  let point = 0;
  for (let i = 1; i < count; i++) {
    const lowestZeroBit = 31 - Math.clz32(~(i - 1) & i);
    point ^= directions[lowestZeroBit] ?? 0;
    points[i] = point;
  }
  return points;
}
