import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BedFillInput } from './bed-fill-io.ts';
import { compost, expectRanges, filled, parts, runs } from './testing/blended.ts';

const bed = fc.record({
  bed: fc.record({
    area_m2: fc.double({ min: 0.1, max: 100, noNaN: true }),
    depth_m: fc.double({ min: 0.1, max: 1.5, noNaN: true }),
  }),
  compost,
  parts,
}) as fc.Arbitrary<BedFillInput>;

describe('any bed', () => {
  it('has ordered ranges that are never negative', () => {
    fc.assert(
      fc.property(bed, (input) => expectRanges(filled(input))),
      runs,
    );
  });

  it('twice as many beds take twice the stuff and weigh the same on a square metre', () => {
    fc.assert(
      fc.property(bed, (input) => {
        const one = filled(input);
        const two = filled({ ...input, beds: 2 });
        expect(two.bring_m3.p50 / one.bring_m3.p50).toBeCloseTo(2, 9);
        expect(two.topUp.volume_m3.p50).toBeCloseTo(2 * one.topUp.volume_m3.p50, 9);
        expect(two.mass_kg.p90 / one.mass_kg.p90).toBeCloseTo(2, 9);
        expect(two.load_kgPerM2.p50).toBeCloseTo(one.load_kgPerM2.p50, 9);
      }),
      runs,
    );
  });

  it('a box and its area are one', () => {
    const box = filled({ bed: { length_m: 2.4, width_m: 1.2, depth_m: 0.4 } });
    const area = filled({ bed: { area_m2: 2.88, depth_m: 0.4 } });
    expect(box.volume_m3.p50).toBeCloseTo(area.volume_m3.p50, 12);
  });

  it('more compost brings more phosphorus, organic matter and sinking, and less weight', () => {
    const beds = [10, 25, 50, 80].map((compost_pctVolume) =>
      filled({ bed: { area_m2: 2, depth_m: 0.3 }, compost_pctVolume }),
    );
    beds.slice(1).forEach((more, i) => {
      const less = beds[i];
      if (less === undefined) throw new Error('no bed');
      expect(more.phosphorus_years.p50).toBeGreaterThan(less.phosphorus_years.p50);
      expect(more.organicMatter_pctDry.p50).toBeGreaterThan(less.organicMatter_pctDry.p50);
      expect(more.drop_m.p50).toBeGreaterThan(less.drop_m.p50);
      expect(more.load_kgPerM2.p50).toBeLessThan(less.load_kgPerM2.p50);
    });
  });

  it('wood at the foot takes the place of mix, lightens it, and is said to draw nitrogen', () => {
    const bare = filled({ bed: { area_m2: 2, depth_m: 0.4 } });
    const wooded = filled({ bed: { area_m2: 2, depth_m: 0.4 }, base: { stuff: 'logs', depth_m: 0.25 } });
    expect(wooded.bring_m3.p50).toBeLessThan(bare.bring_m3.p50);
    expect(wooded.load_kgPerM2.p50).toBeLessThan(bare.load_kgPerM2.p50);
    expect(wooded.base?.volume_m3.p50).toBeCloseTo(0.5, 9);
    expect(wooded.advice).toEqual(expect.arrayContaining(['wood-below', 'shallow-over-wood']));
    expect(bare.advice).not.toContain('wood-below');
    expect(bare.base).toBeUndefined();
  });
});
