import { describe, expect, it } from 'vitest';
import { type LimitRow, maturityParameters, type Rating } from './maturity-parameters.ts';
import { limitOf, ratingOf, readLimit, worstOf } from './rating.ts';

const { limits } = maturityParameters;

describe('the class a value falls in', () => {
  // California Compost Quality Council 2001, Compost Maturity Index, groups A and B; the figures are recalled.
  it.each<[string, number, Rating]>([
    ['california-co2', 1.9, 'very-mature'],
    ['california-co2', 2, 'mature'],
    ['california-co2', 8, 'mature'],
    ['california-co2', 8.1, 'immature'],
    ['california-seedlings', 90.1, 'very-mature'],
    ['california-seedlings', 90, 'mature'],
    ['california-seedlings', 80, 'mature'],
    ['california-seedlings', 79.9, 'immature'],
    ['california-ratio', 25, 'mature'],
    ['california-ratio', 25.1, 'immature'],
    // Minnesota Pollution Control Agency: one limit, no first class.
    ['minnesota-co2', 0, 'mature'],
    ['minnesota-seedlings', 100, 'mature'],
  ])('%s reads %d as %s', (id, value, rating) => {
    expect(ratingOf(limitOf(id), value)).toBe(rating);
  });

  it.each(limits.map((row) => [row.id, row] as const))('%s only gets worse as its value does', (_id, row) => {
    const steps = [0.5, 0.99, 1, 1.01, 2].flatMap((times) => [
      times * row.mature,
      times * (row.veryMature ?? row.mature),
    ]);
    const better = (a: number, b: number): number => (row.better === 'less' ? a - b : b - a);
    const found = steps.toSorted(better).map((value) => ratingOf(row, value));
    const order: readonly Rating[] = ['very-mature', 'mature', 'immature'];
    expect(found).toEqual(found.toSorted((a, b) => order.indexOf(a) - order.indexOf(b)));
    expect(new Set(found).size).toBe(row.veryMature === undefined ? 2 : 3);
  });

  it('is told as of a row that there is', () => {
    expect(() => limitOf('nobody')).toThrow(RangeError);
    expect(new Set(limits.map(({ id }) => id)).size).toBe(limits.length);
  });
});

describe('a measurement with its range', () => {
  const reads = (row: LimitRow): readonly Rating[] => {
    const { best, rating, worst } = readLimit(row, { p10: 75, p50: 85, p90: 95 });
    return [best, rating, worst];
  };

  it('has its better end where its quantity is better', () => {
    expect(reads(limitOf('california-seedlings'))).toEqual(['very-mature', 'mature', 'immature']);
    expect(reads({ ...limitOf('california-seedlings'), better: 'less', veryMature: 80, mature: 90 })).toEqual([
      'very-mature',
      'mature',
      'immature',
    ]);
  });
});

it('the worst of several counts', () => {
  expect(worstOf(['mature', 'very-mature'])).toBe('mature');
  expect(worstOf(['immature', 'very-mature', 'mature'])).toBe('immature');
  expect(worstOf([])).toBeUndefined();
});
