import { describe, expect, it } from 'vitest';
import { allMaterials } from './material.ts';
import { ownQuantitiesSchema } from './own.ts';
import { isWithin, materialBounds } from './slips.ts';
import { feedstockRows, numberIn } from './testing/rows.ts';

describe('bounds of a slip of the pen', () => {
  it('hold every figure of the tables', () => {
    for (const { id, values } of allMaterials)
      for (const [property, bounds] of Object.entries(materialBounds)) {
        const { low, typical, high } = values[property as keyof typeof materialBounds] ?? {};
        for (const figure of [low, typical, high])
          if (figure !== undefined) expect(isWithin(figure, bounds), `${id} ${property} ${figure}`).toBe(true);
      }
  });

  it('hold the widest printed C:N', () => {
    const printed = [...feedstockRows().values()].flatMap((row) => numberIn(row, 'carbonToNitrogenHigh_ratio') ?? []);
    const { most } = materialBounds.carbonToNitrogen_ratio ?? { most: 0 };
    expect(Math.max(...printed)).toBeGreaterThan(1000);
    expect(Math.max(...printed)).toBeLessThanOrEqual(most);
  });

  it.each([
    [{ carbonToNitrogen_ratio: 1e9 }],
    [{ carbonToNitrogen_ratio: { p10: 0.2, p50: 20, p90: 40 } }],
    [{ nitrogen_pctDry: 60 }],
    [{ densityLoose_kgPerM3AsIs: 50_000 }],
    [{ densityPacked_kgPerM3AsIs: 1 }],
  ])('refuse %o as a figure of somebody’s own stuff', (own) => {
    expect(ownQuantitiesSchema.safeParse(own).success).toBe(false);
  });

  it('let usual figures through', () => {
    const own = { carbonToNitrogen_ratio: 60, nitrogen_pctDry: 1.2, densityLoose_kgPerM3AsIs: 300 };
    expect(ownQuantitiesSchema.safeParse(own).success).toBe(true);
  });
});
