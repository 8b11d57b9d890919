import loadHighs from 'highs';
import { describe, expect, it } from 'vitest';
import { highsSolver, type Milp } from './index.ts';

const solve = highsSolver(await loadHighs());
const variable = (name: string, cost: number, upper: number, integer: boolean) => ({
  name,
  cost,
  lower: 0,
  upper,
  integer,
});

describe('the solver', () => {
  it('solves the two-crop textbook problem', () => {
    // Dantzig G. B., Thapa M. N. 1997, Linear Programming 1, §1.2: max 5x + 4y; 6x + 4y ≤ 24; x + 2y ≤ 6.
    // The corner x = 3, y = 1.5 follows by hand; value from memory of the book.
    const problem: Milp = {
      variables: [
        variable('x', -5, Number.POSITIVE_INFINITY, false),
        variable('y', -4, Number.POSITIVE_INFINITY, false),
      ],
      rows: [
        { name: 'land', coefficients: { x: 6, y: 4 }, lower: Number.NEGATIVE_INFINITY, upper: 24 },
        { name: 'work', coefficients: { x: 1, y: 2 }, lower: Number.NEGATIVE_INFINITY, upper: 6 },
      ],
    };
    const result = solve(problem);
    expect(result).toMatchObject({ status: 'optimal', cost: -21 });
    expect(result.status === 'optimal' && [result.values['x'], result.values['y']]).toEqual([3, 1.5]);
  });

  it('keeps whole measures whole', () => {
    const problem: Milp = {
      variables: [variable('a', -1, 10, true)],
      rows: [{ name: 'cap', coefficients: { a: 2 }, lower: Number.NEGATIVE_INFINITY, upper: 7 }],
    };
    expect(solve(problem)).toEqual({ status: 'optimal', cost: -3, values: { a: 3 } });
  });

  it('says when nothing fits', () => {
    const problem: Milp = {
      variables: [variable('a', 1, 1, false)],
      rows: [{ name: 'floor', coefficients: { a: 1 }, lower: 2, upper: Number.POSITIVE_INFINITY }],
    };
    expect(solve(problem)).toEqual({ status: 'infeasible' });
  });
});
