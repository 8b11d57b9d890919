import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { flat, type Garden, garden } from '../../testing/garden.ts';

let home: Garden;
beforeEach(async () => {
  home = garden();
  expect(
    (await home.run(['build', 'straw=9 buckets', 'grass=4 buckets', '--name', 'quarry', '--bay', '1x1x1m'])).code,
  ).toBe(0);
});
afterEach(() => home.remove());

describe('a slip of the pen', () => {
  it.each([
    [['log', 'quarry', 'watered', '50000', 'L'], 'water-beyond', 'at most 20000 L'],
    [['log', 'quarry', 'turned', '--when', '2099-01-01'], 'when-ahead', 'lies ahead'],
  ] as const)('%j is not written down: %s', async (args, code, says) => {
    const before = (await home.json(['daybook', '--all'])).value;
    const refused = await home.json([...args]);
    expect(refused.ok).toBe(false);
    expect(refused.problems?.map((one) => one.code)).toEqual([code]);
    expect(flat((await home.run([...args])).err)).toContain(says);
    expect((await home.json(['daybook', '--all'])).value).toEqual(before);
  });
});
