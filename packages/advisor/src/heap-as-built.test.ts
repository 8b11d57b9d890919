import { fold } from '@loamwright/daybook';
import { minutesIn2026, testWriter, type Writer } from '@loamwright/daybook/testing';
import { check, heapRun, likely } from '@loamwright/science';
import { describe, expect, it } from 'vitest';
import { heapAsBuilt } from './heap-as-built.ts';

const day = (number: number): string => minutesIn2026(Math.round(number * 1440));
const straw = { material: 'straw', mass_kg: 60 } as const;

function builtWith(write: (writer: Writer) => void, layers: readonly object[] = [straw], at = 60) {
  const writer = testWriter();
  writer.write(
    'bay-set-up',
    'bay',
    { name: 'Bay', width_m: 1.2, depth_m: 1, wall: 'bales', roofed: true },
    { happened: day(1) },
  );
  writer.write('heap-built', 'heap', { name: 'Heap', bay: 'bay', layers, water_L: 40 } as never, { happened: day(2) });
  write(writer);
  const holding = fold(writer.entries, {});
  const heap = holding.heaps.get('heap');
  if (heap === undefined) throw new RangeError('no heap');
  return heapAsBuilt(heap, holding, day(at));
}

const keysOf = (found: ReturnType<typeof builtWith>) => found?.notes.map(({ key }) => key);

describe('a heap of the daybook as a run takes it', () => {
  it('stands in its bay, with what was done on its day after building', () => {
    const found = builtWith((writer) => {
      writer.write('turned', 'heap', {}, { happened: day(8) });
      writer.write('watered', 'heap', { volume_L: { p10: 10, p50: 20, p90: 30 } }, { happened: day(9.5) });
      writer.write('reading', 'heap', { temp_degC: 52, ambient_degC: 9 }, { happened: day(5) });
      writer.write('reading', 'heap', { temp_degC: 30, point: 'edge' }, { happened: day(5) });
      writer.write('reading', 'heap', { temp_degC: 61, ambient_degC: 20 }, { happened: day(0.5) });
      writer.write('turned', 'heap', {}, { happened: day(70) });
    });
    expect(found).toMatchObject({
      begun: day(2),
      age_days: 58,
      water_L: 40,
      shape: { form: 'box', width_m: 1.2, depth_m: 1 },
      standing: { walls: 'strawBales' },
      roofed: true,
      acts: [
        { at_day: 6, act: 'turn' },
        { at_day: 7.5, act: 'water', water_L: 20 },
      ],
      readings: [{ at_day: 3, temp_degC: 52 }],
      air: [{ at_day: 3, temp_degC: 9 }],
      notes: [],
    });
  });

  it('turned into another bay it lies in that one from then on, between its walls', () => {
    const found = builtWith((writer) => {
      writer.write(
        'bay-set-up',
        'next',
        { name: 'Next', width_m: 2, depth_m: 1.5, wall: 'pallets' },
        { happened: day(1) },
      );
      writer.write('bay-set-up', 'bare', { name: 'Bare', wall: 'boards' }, { happened: day(1) });
      writer.write('turned', 'heap', { bay: 'next' }, { happened: day(8) });
      writer.write('turned', 'heap', { bay: 'bare' }, { happened: day(12) });
      writer.write('moved', 'heap', { bay: 'bay' }, { happened: day(14) });
    });
    expect(found?.shape).toMatchObject({ width_m: 1.2 });
    expect(found?.acts).toEqual([
      { at_day: 6, act: 'turn', into: { form: 'box', width_m: 2, depth_m: 1.5, height_m: 1 } },
      { at_day: 6, act: 'stand', walls: 'pallet' },
      // Of a bay that nobody measured only the walls are known; and what is moved as it is keeps its form.
      { at_day: 10, act: 'turn' },
      { at_day: 10, act: 'stand', walls: 'timber' },
      { at_day: 12, act: 'stand', walls: 'strawBales' },
    ]);
    expect(found?.notes).toEqual([{ key: 'asBuilt.turned-unmeasured', places: { bay: 'Bare' } }]);
  });

  it('built in the open it lies there until it is turned into a bay', () => {
    const writer = testWriter();
    writer.write('bay-set-up', 'bay', { name: 'Bay', width_m: 1.2, depth_m: 1, wall: 'bales' }, { happened: day(1) });
    const size = { width_m: 1.5, depth_m: 1.5, height_m: 1 };
    writer.write('heap-built', 'heap', { name: 'Heap', layers: [straw], size }, { happened: day(2) });
    writer.write('turned', 'heap', { bay: 'bay' }, { happened: day(8) });
    const holding = fold(writer.entries, {});
    const heap = holding.heaps.get('heap');
    expect(heap && heapAsBuilt(heap, holding, day(20))).toMatchObject({
      shape: { form: 'dome', diameter_m: 1.5 },
      standing: {},
      acts: [
        { at_day: 6, act: 'turn', into: { form: 'box', width_m: 1.2 } },
        { at_day: 6, act: 'stand', walls: 'strawBales' },
      ],
    });
  });

  it('begun empty it counts from what first went in', () => {
    const found = builtWith((writer) => {
      writer.write('heap-fed', 'heap', { layers: [straw] }, { happened: day(10) });
      writer.write('heap-fed', 'heap', { layers: [straw] }, { happened: day(12) });
    }, []);
    expect(found).toMatchObject({ begun: day(10), acts: [{ at_day: 2, act: 'add' }] });
    expect(keysOf(found)).toEqual(['asBuilt.fed-first']);
  });

  it('nothing is known of it where nothing went in', () => {
    expect(builtWith(() => undefined, [])).toBeUndefined();
    expect(builtWith(() => undefined, [{ material: 'moon-dust', mass_kg: 3 }])).toBeUndefined();
  });

  it('a blanket lies as deep as was written down, within what is reckoned with', () => {
    const found = builtWith((writer) => {
      writer.write('covered', 'heap', { cover: 'straw', thickness_m: 0.4 }, { happened: day(3) });
      writer.write('covered', 'heap', { cover: 'sheet', thickness_m: 0.4 }, { happened: day(4) });
      writer.write('covered', 'heap', { cover: 'compost', thickness_m: 2 }, { happened: day(5) });
    });
    expect(found?.acts).toMatchObject([
      { cover: 'straw', coverDepth_m: 0.4 },
      { cover: 'tarpaulin' },
      { cover: 'compost', coverDepth_m: 1 },
    ]);
    expect(found?.acts[1]).not.toHaveProperty('coverDepth_m');
    expect(keysOf(found)).toContain('asBuilt.other-depth');
  });

  it('says what it can’t follow, each thing once', () => {
    const found = builtWith((writer) => {
      writer.write('covered', 'heap', { cover: 'leaves' }, { happened: day(3) });
      writer.write('covered', 'heap', { cover: 'other' }, { happened: day(4) });
      writer.write('watered', 'heap', { volume_L: 5, liquid: 'urine' }, { happened: day(5) });
      writer.write('heap-fed', 'heap', { layers: [{ material: 'moon-dust', mass_kg: 1 }] }, { happened: day(6) });
      writer.write('split', 'heap', { into: [{ heap: 'other', share: 0.5, name: 'Other' }] }, { happened: day(7) });
    });
    expect(keysOf(found)).toEqual([
      'asBuilt.unknown',
      'asBuilt.other-cover',
      'asBuilt.other-liquid',
      'asBuilt.taken-from',
    ]);
    expect(found?.acts.map((act) => act.act)).toEqual(['stand', 'stand', 'water']);
  });

  it('what was fed oftener than a run takes is joined, and no kilogram of it lost', () => {
    const found = builtWith(
      (writer) => {
        for (let i = 0; i < 200; i++) {
          writer.write('heap-fed', 'heap', { layers: [straw] }, { happened: day(3 + i / 2) });
        }
        writer.write('turned', 'heap', {}, { happened: day(90) });
      },
      [straw],
      120,
    );
    const fed = found?.acts.flatMap((act) => (act.act === 'add' ? act.mix.ingredients : [])) ?? [];
    const all_kg = fed.reduce((sum, { amount }) => sum + ('mass_kg' in amount ? likely(amount.mass_kg) : 0), 0);
    expect(all_kg).toBeCloseTo(200 * 60, 6);
    expect(found?.acts.length).toBeLessThanOrEqual(120);
    expect(keysOf(found)).toEqual(['asBuilt.feeds-joined']);
    const input = {
      ingredients: found?.ingredients,
      weather: { still: { temp_degC: 9 } },
      days: 200,
      acts: found?.acts ?? [],
    };
    expect(check(heapRun.input, input).ok).toBe(true);
  });
});
