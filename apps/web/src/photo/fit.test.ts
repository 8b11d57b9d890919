import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { attempts, fitted, LONGEST_PX } from './fit.ts';

describe('the size of a kept picture', () => {
  it.each([
    [
      { width_px: 4000, height_px: 3000 },
      { width_px: 1600, height_px: 1200 },
    ],
    [
      { width_px: 3000, height_px: 4000 },
      { width_px: 1200, height_px: 1600 },
    ],
    [
      { width_px: 800, height_px: 600 },
      { width_px: 800, height_px: 600 },
    ],
    [
      { width_px: 20_000, height_px: 3 },
      { width_px: 1600, height_px: 1 },
    ],
  ])('of %j is %j', (size, wanted) => {
    expect(fitted(size, LONGEST_PX)).toEqual(wanted);
  });

  it('keeps its shape to within a pixel, is never larger than it was nor than it may be', () => {
    const side = fc.integer({ min: 1, max: 20_000 });
    void fc.assert(
      fc.property(side, side, fc.constantFrom(...attempts), (width_px, height_px, { longest_px }) => {
        const fit = fitted({ width_px, height_px }, longest_px);
        expect(Math.max(fit.width_px, fit.height_px)).toBeLessThanOrEqual(
          Math.min(longest_px, Math.max(width_px, height_px)),
        );
        const scale = Math.min(1, longest_px / Math.max(width_px, height_px));
        // Half a pixel is the rounding; a picture that would vanish keeps one pixel.
        expect(Math.abs(fit.width_px - width_px * scale)).toBeLessThanOrEqual(1);
        expect(Math.abs(fit.height_px - height_px * scale)).toBeLessThanOrEqual(1);
      }),
      { numRuns: 500, seed: 5 },
    );
  });

  it('goes down from attempt to attempt', () => {
    const sizes = attempts.map(({ longest_px, quality }) => longest_px * longest_px * quality);
    expect([...sizes].sort((a, b) => b - a)).toEqual(sizes);
  });
});
