import amendmentTable from '@loamwright/reference/amendments.json' with { type: 'json' };
import { isMessageKey } from '@loamwright/words';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { allCrops, cropById, saltYield_pct } from './crops.ts';

describe('the table of crops', () => {
  it('has 82 crops with a need, a harvest and a contact with soil, and 13 cover crops without', () => {
    const covers = allCrops.filter(({ group }) => group === 'cover-crop');
    const crops = allCrops.filter(({ group }) => group !== 'cover-crop');
    expect([crops.length, covers.length]).toEqual([82, 13]);
    expect(new Set(allCrops.map(({ id }) => id)).size).toBe(95);
    for (const { id, soilContact, nitrogen_kgPerHa, yield_tPerHa, cover } of crops) {
      expect([soilContact, nitrogen_kgPerHa, yield_tPerHa].includes(undefined), id).toBe(false);
      expect(cover, id).toBeUndefined();
    }
    for (const { id, nitrogen_kgPerHa, cover } of covers) {
      expect(nitrogen_kgPerHa, id).toBeUndefined();
      expect(cover?.dryMatter_tPerHa.low, id).toBeGreaterThan(0);
    }
  });

  it('has a name for each', () => {
    for (const { id } of allCrops) expect(isMessageKey(`crop.${id}.name`), id).toBe(true);
  });

  it('has 27 crops whose nitrogen was read in print', () => {
    // The upgrade of the table, where 9 of the recalled rates were replaced.
    expect(allCrops.filter(({ nitrogen_kgPerHa }) => nitrogen_kgPerHa?.mark === 'seen')).toHaveLength(27);
  });
});

describe('yield in salty soil', () => {
  // Maas 1990, USDA-ARS Salinity Laboratory table 42C (read): threshold, loss with each dS/m.
  it.each([
    ['bean-snap-bush', 1, 19],
    ['strawberry', 1, 33],
    ['beet', 4, 9],
    ['tomato-staked', 2.5, 9.9],
  ])('%s loses nothing up to %d dS/m, then %d percent with each', (id, threshold, loss) => {
    const crop = cropById(id);
    if (crop === undefined) throw new Error(id);
    expect(saltYield_pct(crop, threshold)).toBe(100);
    expect(saltYield_pct(crop, threshold + 1)).toBeCloseTo(100 - loss, 9);
    expect(saltYield_pct(crop, 100)).toBe(0);
  });

  it('says nothing of a crop without a published threshold', () => {
    const kale = cropById('kale');
    expect(kale && saltYield_pct(kale, 3)).toBeUndefined();
  });
});

it('the analyses of amendments are rows with unit, source and mark, and at least one figure', () => {
  const row = z
    .strictObject({
      material: z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/u),
      form: z.string().optional(),
      parameter: z.string().min(1),
      low: z.number().optional(),
      typical: z.number().optional(),
      high: z.number().optional(),
      unit: z.string().min(1),
      basis: z.string().optional(),
      source: z.string(),
      mark: z.enum(['seen', 'memory']),
      note: z.string().optional(),
    })
    .refine(({ low, typical, high }) => [low, typical, high].some((value) => value !== undefined), 'a figure')
    .refine(({ low = 0, typical = low, high = typical }) => low <= typical && typical <= high, 'in order');
  expect(z.array(row).parse(amendmentTable.rows)).toHaveLength(324);
});
