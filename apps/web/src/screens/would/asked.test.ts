import { wallAround } from '@loamwright/advisor';
import type { HeapRunInput } from '@loamwright/science';
import { describe, expect, it } from 'vitest';
import { changesOf, DAYS, HEAPS, shapeIn, wouldInput } from './asked.ts';

const pallets = { width_m: 1.2, depth_m: 1, height_m: 1, wall: 'pallets' } as const;
const asked: HeapRunInput = wouldInput(
  {
    ingredients: [
      { material: 'straw', amount: { measure: 'barrow', count: 3 } },
      { material: 'goat-bedding', amount: { mass_kg: { p10: 80, p50: 100, p90: 130 } } },
    ],
    water_L: 40,
  },
  shapeIn(pallets),
  { air_degC: 12, walls: 'pallet', cover: 'open' },
);
const change = (id: string, input = asked): HeapRunInput | undefined =>
  changesOf(input, 1).find((one) => one.id === id)?.input;

describe('the question that a mix in its place comes to', () => {
  it('is a box where walls hold it, and a dome on bare ground', () => {
    expect(asked.shape).toEqual({ form: 'box', width_m: 1.2, depth_m: 1, height_m: 1 });
    expect(shapeIn({ ...pallets, wall: 'open' })).toEqual({ form: 'dome', diameter_m: 1.1, height_m: 1 });
    expect(wallAround.open).toBe('none');
  });

  it('is of the air, the walls and the cover that were said', () => {
    expect(asked).toMatchObject({
      walls: 'pallet',
      cover: 'open',
      weather: { still: { temp_degC: 12 } },
      days: DAYS,
      members: HEAPS,
    });
  });
});

describe('what is done otherwise', () => {
  it('is half as much again of everything, in a bay of as much more room', () => {
    const larger = change('larger');
    expect(larger?.ingredients.map(({ amount }) => amount)).toEqual([
      { measure: 'barrow', count: 4.5 },
      { mass_kg: { p10: 120, p50: 150, p90: 195 } },
    ]);
    expect(larger?.water_L).toBe(60);
    if (larger?.shape?.form !== 'box') throw new Error('a box stays a box');
    const { width_m, depth_m, height_m } = larger.shape;
    expect(width_m * depth_m * height_m).toBeCloseTo(1.5 * 1.2, 9);
    expect(width_m / depth_m).toBeCloseTo(1.2, 9);
  });

  it('is never a larger heap of an amount that is only a word', () => {
    const vague: HeapRunInput = { ...asked, ingredients: [{ material: 'straw', amount: { vague: 'a-lot' } }] };
    expect(change('larger', vague)).toBeUndefined();
  });

  it('is one thing at a time', () => {
    expect(change('straw')).toEqual({ ...asked, cover: 'straw' });
    expect(change('insulated')).toEqual({ ...asked, walls: 'insulated' });
    expect(change('chopped')).toEqual({ ...asked, chopped: true });
    expect(change('wetter')).toEqual({ ...asked, water_L: 90 });
  });

  it('takes no more water away than was poured on', () => {
    expect(change('drier')).toEqual({ ...asked, water_L: 0 });
    expect(change('drier', { ...asked, water_L: 0 })).toBeUndefined();
  });

  it('is nothing that is so already', () => {
    expect(change('straw', { ...asked, cover: 'straw' })).toBeUndefined();
    expect(change('insulated', { ...asked, walls: 'strawBales' })).toBeUndefined();
  });
});
