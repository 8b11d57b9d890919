import { describe, expect, it } from 'vitest';
import { readCount } from './count.ts';

describe('a count as it is typed', () => {
  it.each([
    ['3', 3],
    [' 2,5 ', 2.5],
    ['0.5', 0.5],
    ['.5', 0.5],
    ['1/2', 0.5],
    ['½', 0.5],
    ['2½', 2.5],
    ['1 1/2', 1.5],
    ['11/2', 5.5],
    ['10000', 10_000],
  ])('“%s” is %d', (typed, count) => {
    expect(readCount(typed, 0.25)).toBe(count);
  });

  it.each(['', 'a few', 'half', '-3', '0', '1/0', '1e9', '99999', '½½', '1/2/3'])('“%s” is no count', (typed) => {
    expect(readCount(typed, 0.25)).toBeNull();
  });
});
