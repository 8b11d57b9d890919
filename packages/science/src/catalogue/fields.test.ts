import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { chanceSchema, estimateSchema, percentQuantity } from '../estimate/index.ts';
import { fieldsOf } from './index.ts';

const amount = z.strictObject({ measure: z.string(), count: z.number().positive().max(9) });
const schema = z.strictObject({
  moisture_pctWet: percentQuantity('Moisture.'),
  smell: z.enum(['none', 'sour']).optional(),
  parts: z.array(z.strictObject({ amount })).min(1).max(4),
  others: z.array(z.strictObject({ amount })).optional(),
  sizes: z.record(z.string(), z.number().min(0)),
  water_L: estimateSchema('Water.'),
  enough: chanceSchema,
  day: z.int(),
  low: z.union([z.number(), z.null()]),
});

describe('the fields of a schema', () => {
  const fields = fieldsOf(z.toJSONSchema(schema));
  const field = (path: string) => fields.find((one) => one.path === path);

  it('are listed in order, those of a group under it, and the same group only once', () => {
    expect(fields.map(({ path }) => path)).toEqual([
      'moisture_pctWet',
      'smell',
      'parts',
      'parts[].amount',
      'parts[].amount.measure',
      'parts[].amount.count',
      'others',
      'sizes',
      'sizes{}',
      'water_L',
      'enough',
      'day',
      'low',
    ]);
    expect(field('others')?.sameAs).toBe('parts');
  });

  it('carry unit, kind, bounds, choices and meaning', () => {
    expect(field('moisture_pctWet')).toMatchObject({
      unit: 'pctWet',
      kind: 'quantity',
      isOptional: false,
      lowest: { value: 0, included: true },
      highest: { value: 100, included: true },
      description: 'Moisture.',
    });
    expect(field('smell')).toMatchObject({ kind: 'text', isOptional: true, choices: ['none', 'sour'] });
    expect(field('parts')).toMatchObject({ kind: 'list', items: { least: 1, most: 4 } });
    expect(field('parts[].amount.count')).toMatchObject({
      lowest: { value: 0, included: false },
      highest: { value: 9, included: true },
    });
    expect(field('water_L')).toMatchObject({ kind: 'estimate', unit: 'L' });
    expect(field('day')).toMatchObject({ kind: 'whole-number', lowest: undefined, highest: undefined });
    expect(field('low')).toMatchObject({ kind: 'number' });
  });
});
