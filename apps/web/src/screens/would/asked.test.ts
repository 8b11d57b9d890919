import { heapAsBuilt, MOST_RUN_DAYS, wallAround } from '@loamwright/advisor';
import { fold } from '@loamwright/daybook';
import { minutesIn2026, testWriter } from '@loamwright/daybook/testing';
import { check, type HeapRunInput, heapRun, USUAL_MEMBERS, USUAL_RUN_DAYS } from '@loamwright/science';
import { describe, expect, it } from 'vitest';
import { changesOf, type Here, type Placed, placedAsBuilt, shapeIn, wouldInput } from './asked.ts';

const pallets = { width_m: 1.2, depth_m: 1, height_m: 1, wall: 'pallets' } as const;
const here: Here = { air_degC: 12, walls: 'pallet', cover: 'open' };
const placed: Placed = {
  mix: {
    ingredients: [
      { material: 'straw', amount: { measure: 'barrow', count: 3 } },
      { material: 'goat-bedding', amount: { mass_kg: { p10: 80, p50: 100, p90: 130 } } },
    ],
    water_L: 40,
  },
  shape: shapeIn(pallets),
  acts: [],
  air: [],
  days: USUAL_RUN_DAYS,
};
const asked = wouldInput(placed, here);
/** The same, covered with a sheet on the third day, watered, and fed. */
const tended: HeapRunInput = {
  ...asked,
  acts: [
    { at_day: 3, act: 'stand', cover: 'tarpaulin' },
    { at_day: 8, act: 'water', water_L: 20 },
    { at_day: 9, act: 'add', mix: { ingredients: [{ material: 'straw', amount: { mass_kg: 10 } }] } },
  ],
};
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
      days: USUAL_RUN_DAYS,
      members: USUAL_MEMBERS,
    });
  });

  it('is of stuff as warm as it was said to come, and of nothing where nobody said it', () => {
    expect(wouldInput(placed, { ...here, start_degC: 35 })).toEqual({ ...asked, start_degC: 35 });
    expect(asked).not.toHaveProperty('start_degC');
  });

  it('is of the air as it was read beside it, a figure a day', () => {
    const air = [
      { at_day: 0, temp_degC: 8 },
      { at_day: 2, temp_degC: 12 },
    ];
    const { weather } = wouldInput({ ...placed, air, days: 3 }, { ...here, air_degC: 'as-read' });
    const values = [8, 10, 12, 12].map((temp_degC) => ({ temp_degC }));
    expect(weather).toEqual({ readings: { every_h: 24, values } });
  });
});

describe('a heap of the daybook', () => {
  const day = (number: number): string => minutesIn2026(number * 1440);
  const asBuilt = (today: number): Placed | undefined => {
    const writer = testWriter();
    const layers = [{ material: 'straw', mass_kg: 60 }];
    writer.write('heap-built', 'heap', { name: 'Heap', layers, water_L: 30 }, { happened: day(2) });
    writer.write('turned', 'heap', {}, { happened: day(8) });
    writer.write('covered', 'heap', { cover: 'sheet' }, { happened: day(9) });
    writer.write('reading', 'heap', { temp_degC: 52, ambient_degC: 9 }, { happened: day(5) });
    const holding = fold(writer.entries, {});
    const heap = holding.heaps.get('heap');
    if (heap === undefined) throw new RangeError('no heap');
    const kept = heapAsBuilt(heap, holding, day(today));
    return kept === undefined ? undefined : placedAsBuilt(kept);
  };

  it('is followed with what was done to it, from its building to four weeks from now', () => {
    const found = asBuilt(52);
    expect(found).toEqual({
      mix: { ingredients: [{ material: 'straw', amount: { mass_kg: 60 } }], water_L: 30 },
      shape: undefined,
      acts: [
        { at_day: 6, act: 'turn' },
        { at_day: 7, act: 'stand', cover: 'tarpaulin' },
      ],
      air: [{ at_day: 3, temp_degC: 9 }],
      days: 50 + 28,
    });
    expect(found && check(heapRun.input, wouldInput(found, { ...here, air_degC: 'as-read' })).ok).toBe(true);
  });

  it('is followed for two months at least, and not at all where it is older than any run', () => {
    expect(asBuilt(12)?.days).toBe(USUAL_RUN_DAYS);
    expect(asBuilt(2 + MOST_RUN_DAYS)?.days).toBe(MOST_RUN_DAYS);
    expect(asBuilt(3 + MOST_RUN_DAYS)).toBeUndefined();
  });
});

describe('what is done otherwise', () => {
  it('is a thick blanket of straw, unless one lies there: not as deep as what lies there now', () => {
    const straw = (lying: Partial<Here>) =>
      changesOf(wouldInput(placed, { ...here, ...lying }), 1).find(({ id }) => id === 'straw')?.input;
    const over = straw({ cover: 'compost', coverDepth_m: 0.03 });
    expect([over?.cover, over?.coverDepth_m]).toEqual(['straw', undefined]);
    expect(straw({ cover: 'straw', coverDepth_m: 0.03 })?.coverDepth_m).toBeUndefined();
    expect(straw({ cover: 'straw', coverDepth_m: 0.03 })).toBeDefined();
    expect(straw({ cover: 'straw', coverDepth_m: 0.5 })).toBeUndefined();
    expect(straw({ cover: 'straw' })).toBeUndefined();
  });

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

  it('is half as much again of what is poured and laid on later, too', () => {
    expect(change('larger', tended)?.acts).toEqual([
      tended.acts?.[0],
      { at_day: 8, act: 'water', water_L: 30 },
      { at_day: 9, act: 'add', mix: { ingredients: [{ material: 'straw', amount: { mass_kg: 15 } }] } },
    ]);
  });

  it('is a larger bay where it is turned into another, too', () => {
    const into = { form: 'box', width_m: 2, depth_m: 1, height_m: 1 } as const;
    const [turned] = change('larger', { ...asked, acts: [{ at_day: 5, act: 'turn', into }] })?.acts ?? [];
    if (turned?.act !== 'turn' || turned.into?.form !== 'box') throw new Error('it is turned into a box');
    const { width_m, depth_m, height_m } = turned.into;
    expect(width_m * depth_m * height_m).toBeCloseTo(1.5 * 2, 9);
    expect(width_m / depth_m).toBeCloseTo(2, 9);
  });

  it('lies on it to the end, in place of what was laid on it on the way', () => {
    expect(change('straw', tended)).toMatchObject({ cover: 'straw', acts: [{ cover: 'straw' }, {}, {}] });
    expect(change('sheet', tended)).toMatchObject({ cover: 'tarpaulin', acts: [{ cover: 'tarpaulin' }, {}, {}] });
    expect(change('sheet', { ...tended, cover: 'tarpaulin' })).toBeUndefined();
    expect(change('straw', { ...tended, cover: 'straw' })).toBeDefined();
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
