import { describe, expect, it } from 'vitest';
import { standingOf } from './standings.ts';

describe('a blanket on a heap', () => {
  // Lynch and Cherry 1996 (abstract, read) laid 15 to 20 cm of finished compost over winter windrows; at 0.2 W/(m K), the
  // table's own choice, that is 0.75 to 1 m² K/W. The table rounds 0.75 to 0.8, a fifteenth more.
  it.each([
    [0.15, 0.75],
    [0.2, 1],
  ])('of %d m of compost keeps warm as that much compost does', (coverDepth_m, wanted_m2KPerW) => {
    const { insulation_m2KPerW } = standingOf({ cover: 'compost', coverDepth_m }).top;
    expect(insulation_m2KPerW / wanted_m2KPerW).toBeGreaterThan(0.95);
    expect(insulation_m2KPerW / wanted_m2KPerW).toBeLessThan(1.1);
  });

  // Bales of 0.45 m have 6 to 8 m² K/W, 0.054 to 0.072 W/(m K): a note on straw walls (read), as in the table.
  it('of straw as deep as a bale keeps warm as a bale does', () => {
    const { insulation_m2KPerW } = standingOf({ cover: 'straw', coverDepth_m: 0.45 }).top;
    expect(insulation_m2KPerW).toBeGreaterThan(6);
    expect(insulation_m2KPerW).toBeLessThan(8);
  });

  it('is as deep as usual where nothing is said, and twice as deep lets through what passes it once more', () => {
    const usual = standingOf({ cover: 'straw' });
    expect(standingOf({ cover: 'straw', coverDepth_m: 0.2 })).toEqual(usual);
    const twice = standingOf({ cover: 'straw', coverDepth_m: 0.4 });
    expect(twice.rain_share).toBeCloseTo(usual.rain_share ** 2, 12);
    expect(twice.open_share).toBeCloseTo(usual.open_share ** 2, 12);
    expect(twice.top.insulation_m2KPerW).toBeCloseTo(2 * usual.top.insulation_m2KPerW, 12);
  });

  it('has no depth that counts when it is a sheet', () => {
    expect(standingOf({ cover: 'tarpaulin', coverDepth_m: 0.5 })).toEqual(standingOf({ cover: 'tarpaulin' }));
  });
});
