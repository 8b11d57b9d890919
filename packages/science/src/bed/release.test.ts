import budgetTable from '@loamwright/reference/bed-budget.json' with { type: 'json' };
import releaseTable from '@loamwright/reference/nitrogen-release.json' with { type: 'json' };
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { basisIds, kindIds } from './release.ts';

const citation = { source: z.string(), place: z.string().min(1), mark: z.enum(['seen', 'memory', 'derived']) };
const inOrder = ({ low, high }: { readonly low: number; readonly high: number }): boolean => low <= high;
const share = z.number().min(-0.1).max(1);
const years = z
  .array(z.strictObject({ low: share, high: share }).refine(inOrder))
  .min(1)
  .max(4);
const series = z.strictObject({
  id: z.string(),
  for: z.array(z.enum(kindIds)).min(1),
  upTo_ratio: z.number().positive().optional(),
  basis: z.enum(basisIds),
  brackets: z
    .array(
      z.strictObject({
        dryMatterBelow_pct: z.number().optional(),
        carbonToNitrogenUpTo_ratio: z.number().optional(),
        nitrogenFrom_pctDry: z.number().optional(),
        years,
      }),
    )
    .optional(),
  line: z
    .strictObject({
      none_pctDry: z.number(),
      slope_pctPerPct: z.number().optional(),
      kgPerTPerPct: z.number().optional(),
      most_pct: z.number().optional(),
    })
    .optional(),
  points: z.array(z.strictObject({ carbonToNitrogen_ratio: z.number(), low: share, high: share })).optional(),
  later: years.optional(),
  ...citation,
});

describe('the table of releases', () => {
  const rows = z.array(series).parse(releaseTable.series);

  it('names each series once, by its basis has what that basis needs, and ends in a bracket that takes all', () => {
    expect(new Set(rows.map(({ id }) => id)).size).toBe(rows.length);
    for (const { id, basis, brackets, line, points } of rows) {
      expect([basis === 'nitrogen-line', basis === 'ratio-line'], id).toEqual([
        line !== undefined,
        points !== undefined,
      ]);
      expect(brackets === undefined, id).toBe(basis.endsWith('-line'));
      const { years: _years, ...conditions } = brackets?.at(-1) ?? { years: [] };
      expect(conditions, id).toEqual({});
    }
  });

  it('never lets go of more than all, in whatever year', () => {
    for (const { id, basis, brackets = [] } of rows) {
      if (basis === 'remaining') continue;
      for (const bracket of brackets) {
        expect(
          bracket.years.reduce((sum, { high }) => sum + high, 0),
          id,
        ).toBeLessThanOrEqual(1);
      }
    }
  });

  it('marks the equations of Gale 2006 as recalled', () => {
    const gale = rows.filter(({ source }) => source === 'gale-2006');
    expect(gale).toHaveLength(3);
    expect(gale.every(({ mark }) => mark === 'memory')).toBe(true);
  });

  it('has droppings a day by animal, of which Wales prints five', () => {
    // Wales 2021, WSI 2021/77, Schedule 1: goat 3.5 L, 41 g of nitrogen, 18.8 g of phosphate per head and day.
    const row = z.strictObject({
      id: z.string(),
      manure_L: z.number().positive(),
      nitrogen_g: z.number().positive(),
      phosphate_g: z.number().positive(),
      ...citation,
    });
    const animals = z.array(row).parse(releaseTable.excretion);
    expect(animals.filter(({ source }) => source === 'wsi-2021-77')).toHaveLength(5);
    expect(animals.find(({ id }) => id === 'goat')).toMatchObject({ manure_L: 3.5, nitrogen_g: 41, phosphate_g: 18.8 });
  });
});

it('a soil that tests richer is never said to want more', () => {
  const times = z.array(
    z.strictObject({
      id: z.string(),
      low: z.number().min(0),
      typical: z.number().min(0),
      high: z.number().min(0),
      ...citation,
    }),
  );
  for (const table of [budgetTable.phosphorusOfRemoval_times, budgetTable.potassiumOfRemoval_times]) {
    const classes = times.parse(table).slice(0, 5);
    expect(classes.map(({ id }) => id)).toEqual(['low', 'medium', 'optimum', 'high', 'excessive']);
    for (const end of ['low', 'typical', 'high'] as const) {
      const values = classes.map((row) => row[end]);
      expect(values).toEqual(values.toSorted((a, b) => b - a));
    }
  }
});
