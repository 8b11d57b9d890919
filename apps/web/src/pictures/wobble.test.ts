import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { waver } from './wobble.ts';

describe('a wavering line', () => {
  it('goes from one end to the other, never strays further than its reach, and is the same each time', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 30, max: 900 }),
        fc.integer(),
        fc.double({ min: 0, max: 9, noNaN: true }),
        (to, seed, reach) => {
          const points = waver({ from: 10, to, y: 50, seed, reach });
          expect([points[0]?.[0], points.at(-1)?.[0]]).toEqual([10, to]);
          // Around y = 50 a double is rounded by some 1e-14 px: a thousand millionth of a pixel is more than that.
          for (const [, y] of points) expect(Math.abs(y - 50)).toBeLessThanOrEqual(reach + 1e-9);
          expect(waver({ from: 10, to, y: 50, seed, reach })).toEqual(points);
        },
      ),
      { seed: 22 },
    );
  });
});
