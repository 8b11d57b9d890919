import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { twinParameters } from './parameters.ts';
import { type HeapShape, outlineOf, withVolume } from './shape.ts';

const side = fc.double({ min: 0.05, max: 30, noNaN: true });
const shapes: fc.Arbitrary<HeapShape> = fc.oneof(
  fc.record({ form: fc.constant('box' as const), width_m: side, depth_m: side, height_m: side }),
  fc.record({ form: fc.constant('dome' as const), diameter_m: side, height_m: side }),
  fc.record({ form: fc.constant('cone' as const), diameter_m: side, height_m: side }),
  fc.record({ form: fc.constant('long' as const), width_m: side, height_m: side, length_m: side }),
  fc.record({ form: fc.constant('drum' as const), diameter_m: side, length_m: side }),
  fc.record({ form: fc.constant('trench' as const), width_m: side, depth_m: side, length_m: side }),
);
const volumes = fc.double({ min: 1e-4, max: 50, noNaN: true });

function deep_m(shape: HeapShape): number {
  if (shape.form === 'trench') return shape.depth_m;
  return shape.form === 'drum' ? shape.length_m : shape.height_m;
}

// By solid geometry alone.
describe('a form with another volume', () => {
  it('holds just that volume, and is as deep as so little lies', () => {
    fc.assert(
      fc.property(shapes, volumes, (shape, volume_m3) => {
        const filled = withVolume(shape, volume_m3);
        expect(outlineOf(filled).volume_m3 / volume_m3).toBeCloseTo(1, 9);
        const least_m = Math.min(twinParameters.leastDepth_m.value, Math.cbrt(volume_m3) / 2);
        expect(deep_m(filled)).toBeGreaterThan(least_m * (1 - 1e-9));
      }),
    );
  });

  it('keeps the ground of a bay that it fills', () => {
    const bay = { form: 'box', width_m: 1.2, depth_m: 1, height_m: 1 } as const;
    expect(withVolume(bay, 0.6)).toEqual({ ...bay, height_m: expect.closeTo(0.5, 12) });
    // A bucket of 10 L over 1.2 m² would lie 8 mm deep.
    const bucket = withVolume(bay, 0.01);
    expect(bucket.width_m).toBeLessThan(0.5);
    expect(bucket.width_m / bucket.depth_m).toBeCloseTo(1.2, 9);
  });
});
