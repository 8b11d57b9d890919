import { describe, expect, it } from 'vitest';
import type { LayerPut } from '../kinds/layer.ts';
import { minutesIn2026 } from '../testing/ids.ts';
import { testWriter, type Writer } from '../testing/writer.ts';
import { fold } from './fold.ts';
import type { Heap, Holding } from './holding.ts';

const DAY = 24 * 60;
const on = (day: number) => ({ happened: minutesIn2026(day * DAY) });
const straw: LayerPut = { material: 'straw', mass_kg: 20, raw: false };
const bedding: LayerPut = { material: 'goat-bedding', mass_kg: 60 };

function heapOf(writer: Writer, id = 'quarry'): Heap {
  const heap = fold(writer.entries).heaps.get(id);
  if (heap === undefined) throw new Error(`no heap ${id}`);
  return heap;
}

const codes = (holding: Holding): readonly string[] =>
  holding.warnings.map(({ code, against }) => `${code} ${against}`);
const reasons = (holding: Holding): readonly string[] => holding.loose.map(({ why, of }) => `${why} ${of}`);

function built(layers: readonly LayerPut[] = [bedding, straw]): Writer {
  const writer = testWriter();
  writer.write('bay-set-up', 'bay-1', { name: 'Left bay', wall: 'pallets', width_m: 1.2, depth_m: 1.2, height_m: 1.2 });
  writer.write('bay-set-up', 'bay-2', { name: 'Right bay', wall: 'pallets' });
  writer.write('heap-built', 'quarry', { name: 'Quarry', bay: 'bay-1', layers }, on(1));
  return writer;
}

describe('a heap', () => {
  it('built stands in its bay with its layers from the ground up', () => {
    const holding = fold(built().entries);
    expect(holding.bays.get('bay-1')?.heaps).toEqual(['quarry']);
    expect(holding.bays.get('bay-2')?.heaps).toEqual([]);
    expect(holding.heaps.get('quarry')).toMatchObject({
      name: 'Quarry',
      begun: on(1).happened,
      phase: 'standing',
      left: 1,
      bay: 'bay-1',
      layers: [
        { index: 0, put: bedding, share: 1, mass_kg: 60 },
        { index: 1, put: straw, share: 1, mass_kg: 20 },
      ],
    });
  });

  it('whose build is corrected later is still built before what was told after it for the same instant', () => {
    const writer = built();
    const build = writer.entries.at(-1);
    writer.write('split', 'quarry', { into: [{ heap: 'young', name: 'Young', bay: 'bay-2', share: 0.25 }] }, on(1));
    const corrected = { name: 'Quarry', bay: 'bay-1', layers: [straw] };
    writer.write('heap-built', 'quarry', corrected, { ...on(1), amends: build?.id });
    const holding = fold(writer.entries);
    expect(holding.warnings).toEqual([]);
    expect(holding.heaps.get('quarry')?.left).toBeCloseTo(0.75, 12);
    expect(holding.heaps.get('young')?.layers.map(({ mass_kg }) => mass_kg)).toEqual([5]);
  });

  it('fed pail by pail has layers of their own ages, whatever the order of arrival', () => {
    const writer = built();
    for (const day of [3, 5, 9])
      writer.write('heap-fed', 'quarry', { layers: [{ material: 'scraps', mass_kg: 4 }, straw] }, on(day));
    const ages = fold([...writer.entries].reverse())
      .heaps.get('quarry')
      ?.layers.map(({ added }) => added);
    expect(ages).toEqual([1, 1, 3, 3, 5, 5, 9, 9].map((day) => on(day).happened));
  });

  it('turned into another bay, or moved, stands there', () => {
    const writer = built();
    writer.write('turned', 'quarry', { bay: 'bay-2', outsideIn: true }, on(4));
    expect(fold(writer.entries).bays.get('bay-2')?.heaps).toEqual(['quarry']);
    writer.write('turned', 'quarry', {}, on(6));
    expect(heapOf(writer).bay).toBe('bay-2');
    writer.write('moved', 'quarry', { bay: 'bay-1' }, on(8));
    expect(heapOf(writer).bay).toBe('bay-1');
    expect(heapOf(writer).acts.map(({ kind }) => kind)).toEqual(['heap-built', 'turned', 'turned', 'moved']);
  });

  it('covered keeps its cover until it is taken off', () => {
    const writer = built();
    writer.write('covered', 'quarry', { cover: 'straw', thickness_m: 0.1 }, on(2));
    expect(heapOf(writer).cover?.body.cover).toBe('straw');
    writer.write('covered', 'quarry', { cover: 'none' }, on(3));
    expect(heapOf(writer).cover).toBeNull();
  });

  it('called finished is finished until it is fed again', () => {
    const writer = built();
    writer.write('finished', 'quarry', { volume_m3: 0.4 }, on(90));
    expect(heapOf(writer).phase).toBe('finished');
    writer.write('heap-fed', 'quarry', { layers: [straw] }, on(91));
    expect(heapOf(writer).phase).toBe('standing');
  });

  it('of which all is spread is gone, and its bay free; fed again it begins anew', () => {
    const writer = built();
    writer.write('bed-set-up', 'leeks', { name: 'Leeks', area_m2: 6 });
    for (const share of [0.3333, 0.5, 1])
      writer.write('spread', 'leeks', { of: { type: 'heap', id: 'quarry', share }, workedIn: true }, on(100));
    const holding = fold(writer.entries);
    expect(holding.heaps.get('quarry')).toMatchObject({ phase: 'gone', layers: [] });
    expect(holding.bays.get('bay-1')?.heaps).toEqual([]);
    expect(holding.beds.get('leeks')?.spreadings.map(({ layers }) => layers[0]?.share.toFixed(4))).toEqual([
      '0.3333',
      '0.3334',
      '0.3334',
    ]);
    writer.write('heap-fed', 'quarry', { layers: [straw] }, on(101));
    expect(heapOf(writer)).toMatchObject({ phase: 'standing', left: 1, layers: [{ put: straw }] });
  });

  it('split into thirds of 0.3333 and the rest counts as gone', () => {
    const writer = built();
    writer.write('split', 'quarry', { into: ['a', 'b', 'c'].map((heap) => ({ heap, share: 0.3333 })) }, on(9));
    expect(heapOf(writer).phase).toBe('gone');
    for (const id of ['a', 'b', 'c']) expect(heapOf(writer, id).layers[0]?.share).toBeCloseTo(0.3333, 12);
  });

  it('split with shares rounded past 1 gives away no more than there is', () => {
    const writer = built();
    writer.write('split', 'quarry', { into: ['a', 'b', 'c'].map((heap) => ({ heap, share: 0.33336 })) }, on(9));
    const parts = ['a', 'b', 'c'].map((id) => heapOf(writer, id).layers[0]?.share ?? 0);
    expect(parts.reduce((sum, part) => sum + part, 0)).toBeCloseTo(1, 12);
    expect(heapOf(writer).left).toBeCloseTo(0, 12);
  });
});

describe('the safety clock', () => {
  it('runs from the last raw addition, not from the build', () => {
    const writer = built();
    expect(heapOf(writer).lastRaw).toMatchObject({ at: on(1).happened, why: 'built' });
    const fed = writer.write('heap-fed', 'quarry', { layers: [{ material: 'scraps', mass_kg: 4 }] }, on(20));
    writer.write('heap-fed', 'quarry', { layers: [straw] }, on(25));
    expect(heapOf(writer).lastRaw).toEqual({ at: on(20).happened, entry: fed.id, why: 'fed' });
  });

  it('counts what is not said to be harmless as raw', () => {
    expect(heapOf(built([{ material: 'straw', mass_kg: 3 }])).lastRaw).not.toBeNull();
    expect(heapOf(built([straw])).lastRaw).toBeNull();
  });

  it('starts again with any liquid but water', () => {
    const writer = built([straw]);
    writer.write('watered', 'quarry', { volume_L: 20 }, on(2));
    writer.write('watered', 'quarry', { volume_L: 20, liquid: 'water' }, on(3));
    expect(heapOf(writer).lastRaw).toBeNull();
    writer.write('watered', 'quarry', { volume_L: 5, liquid: 'leachate' }, on(4));
    expect(heapOf(writer).lastRaw).toMatchObject({ at: on(4).happened, why: 'liquid' });
  });

  it('starts again when raw matter of another heap comes in, unless its record shows it was made safe', () => {
    const two = (raw?: boolean): Writer => {
      const writer = built([straw]);
      writer.write('heap-built', 'old', { name: 'Old', layers: [bedding] }, on(1));
      writer.write('combined', 'quarry', { from: [{ heap: 'old', raw }] }, on(30));
      return writer;
    };
    expect(heapOf(two()).lastRaw).toMatchObject({ at: on(30).happened, why: 'combined' });
    expect(heapOf(two(true)).lastRaw).toMatchObject({ at: on(30).happened, why: 'combined' });
    expect(heapOf(two(false)).lastRaw).toMatchObject({ at: on(1).happened, why: 'built' });
  });

  it('starts again when raw matter of another heap is laid in as a layer', () => {
    const writer = built([straw]);
    writer.write('heap-built', 'old', { name: 'Old', layers: [bedding] }, on(1));
    const compost: LayerPut = { material: 'compost', mass_kg: 5, from: { type: 'heap', id: 'old', share: 0.1 } };
    writer.write('heap-fed', 'quarry', { layers: [compost] }, on(30));
    expect(heapOf(writer).lastRaw).toMatchObject({ at: on(30).happened, why: 'fed' });
  });

  it('goes on in the parts of a split heap', () => {
    const writer = built();
    writer.write('split', 'quarry', { into: [{ heap: 'east', share: 0.5 }] }, on(15));
    expect(heapOf(writer, 'east')).toMatchObject({ begun: on(15).happened, lastRaw: { at: on(1).happened } });
  });

  it('starts again where a part of a split heap meets other matter', () => {
    const writer = built();
    writer.write('heap-built', 'east', { name: 'East', layers: [straw] }, on(2));
    writer.write('split', 'quarry', { into: [{ heap: 'east', share: 0.5 }] }, on(15));
    expect(heapOf(writer, 'east').lastRaw).toMatchObject({ at: on(15).happened, why: 'combined' });
  });

  it('is told with each spreading, and a raw material spread straight is raw as of that day', () => {
    const writer = built();
    writer.write('bed-set-up', 'leeks', { name: 'Leeks', area_m2: 6 });
    writer.write('spread', 'leeks', { of: { type: 'heap', id: 'quarry', share: 0.5 }, workedIn: true }, on(60));
    writer.write('heap-fed', 'quarry', { layers: [bedding] }, on(70));
    writer.write(
      'spread',
      'leeks',
      { of: { type: 'material', id: 'rabbit-droppings', mass_kg: 10 }, workedIn: true },
      on(80),
    );
    writer.write(
      'spread',
      'leeks',
      { of: { type: 'material', id: 'leaf-mould', mass_kg: 10, raw: false }, workedIn: true },
      on(81),
    );
    const spreadings = fold(writer.entries).beds.get('leeks')?.spreadings;
    expect(spreadings?.map(({ raw, lastRaw }) => [raw, lastRaw?.at])).toEqual([
      [true, on(1).happened],
      [true, on(80).happened],
      [false, undefined],
    ]);
  });
});

describe('stock', () => {
  it('is what came in less what was laid, spread and given, and oversize comes back', () => {
    const writer = built([]);
    writer.write('stock-in', 'straw', { mass_kg: { p10: 80, p50: 100, p90: 130 }, volume_m3: 1.2 });
    writer.write('heap-fed', 'quarry', { layers: [{ ...straw, volume_m3: 0.25, from: { type: 'stock' } }] }, on(2));
    writer.write('heap-fed', 'quarry', { layers: [straw] }, on(2));
    writer.write('stock-out', 'straw', { mass_kg: 10, why: 'given' }, on(3));
    const { stock } = fold(writer.entries);
    expect(stock.get('straw')).toMatchObject({
      mass_kg: 70,
      moves: [
        { why: 'in', mass_kg: 100, volume_m3: 1.2, with: null },
        { why: 'layer', mass_kg: -20, volume_m3: -0.25, with: 'quarry' },
        { why: 'out', mass_kg: -10, volume_m3: null },
      ],
    });
  });

  it('below zero is pointed out once, where it went below', () => {
    const writer = testWriter();
    writer.write('stock-in', 'straw', { mass_kg: 10 });
    const over = writer.write('stock-out', 'straw', { mass_kg: 15, why: 'used' });
    writer.write('stock-out', 'straw', { mass_kg: 5, why: 'used' });
    expect(fold(writer.entries).warnings).toEqual([{ code: 'stock-below-zero', entry: over.id, against: 'straw' }]);
  });
});

describe('what can’t have happened', () => {
  it('is loose with its reason, and the state is as if it had not been written', () => {
    const writer = built();
    const before = fold(writer.entries).heaps;
    writer.write('reading', 'nowhere', { temp_degC: 60 });
    writer.write('heap-fed', 'nowhere', { layers: [straw] });
    writer.write('sown', 'nowhere', { crop: 'leek' });
    writer.write('spread', 'nowhere', { of: { type: 'heap', id: 'quarry', share: 1 }, workedIn: true });
    writer.write('combined', 'quarry', { from: [{ heap: 'quarry' }] });
    writer.write('split', 'quarry', { into: [{ heap: 'quarry', share: 0.5 }] });
    writer.write('combined', 'both', { from: [{ heap: 'quarry' }, { heap: 'nowhere' }] });
    writer.write('heap-built', 'quarry', { name: 'Again', layers: [straw] }, on(2));
    const holding = fold(writer.entries);
    expect([...reasons(holding)].sort()).toEqual([
      'already-built quarry',
      'no-such-bed nowhere',
      'no-such-bed nowhere',
      'no-such-heap nowhere',
      'no-such-heap nowhere',
      'no-such-heap nowhere',
      'same-heap quarry',
      'same-heap quarry',
    ]);
    expect(holding.heaps).toEqual(before);
  });

  it('stops being loose when what was missing arrives', () => {
    const writer = built();
    const reading = writer.write('reading', 'quarry', { temp_degC: 60 }, on(3));
    expect(reasons(fold([reading]))).toEqual(['no-such-heap quarry']);
    expect(fold([reading, ...writer.entries]).loose).toEqual([]);
  });

  it('follows heaps that come of others, however the entries are ordered', () => {
    const writer = built();
    writer.write('split', 'second', { into: [{ heap: 'third', share: 0.5 }] }, on(2));
    writer.write('combined', 'second', { from: [{ heap: 'first' }] }, on(3));
    writer.write('split', 'quarry', { into: [{ heap: 'first', share: 0.5 }] }, on(4));
    expect(fold(writer.entries).loose).toEqual([]);
    expect([...fold(writer.entries).heaps.keys()].sort()).toEqual(['first', 'quarry', 'second', 'third']);
    expect(reasons(fold(writer.entries.filter(({ kind }) => kind !== 'heap-built')))).toEqual([
      'no-such-heap second',
      'no-such-heap first',
      'no-such-heap quarry',
    ]);
  });
});

describe('what looks wrong', () => {
  it('a reading dated before the build is kept and pointed out, beyond what the precision allows', () => {
    const writer = built();
    writer.write('reading', 'quarry', { temp_degC: 60 }, { happened: minutesIn2026(DAY - 1), written: on(2).happened });
    expect(codes(fold(writer.entries))).toEqual([]);
    writer.write('reading', 'quarry', { temp_degC: 60 }, { happened: minutesIn2026(DAY - 2), written: on(2).happened });
    expect(codes(fold(writer.entries))).toEqual(['before-begun quarry']);
    expect(heapOf(writer).readings.length).toBe(2);
  });

  it('a heap built some time on a day may have readings at any hour of it', () => {
    const writer = testWriter();
    writer.write(
      'heap-built',
      'quarry',
      { name: 'Quarry', layers: [] },
      { happened: minutesIn2026(12 * 60), precision: 'day' },
    );
    writer.write('reading', 'quarry', { temp_degC: 20 }, { happened: minutesIn2026(9 * 60), written: on(1).happened });
    expect(codes(fold(writer.entries))).toEqual([]);
    expect(heapOf(writer).readings.length).toBe(1);
  });

  it('taking from a heap of which nothing is left is kept and pointed out', () => {
    const writer = built();
    writer.write('combined', 'new', { from: [{ heap: 'quarry' }], name: 'New' }, on(5));
    writer.write('reading', 'quarry', { temp_degC: 30 }, on(6));
    writer.write('combined', 'new', { from: [{ heap: 'quarry' }] }, on(7));
    expect(codes(fold(writer.entries))).toEqual(['after-gone quarry', 'after-gone quarry']);
    expect(heapOf(writer, 'new').layers.map(({ share }) => share)).toEqual([1, 1]);
  });

  it('a bay that was not set up, and a layer of a heap that is not there', () => {
    const writer = built();
    writer.write('moved', 'quarry', { bay: 'bay-9' }, on(2));
    writer.write(
      'heap-fed',
      'quarry',
      { layers: [{ ...straw, from: { type: 'heap', id: 'nowhere', share: 1 } }] },
      on(3),
    );
    expect(codes(fold(writer.entries))).toEqual(['no-such-bay bay-9', 'no-such-source nowhere']);
    expect(heapOf(writer).layers.at(-1)).toMatchObject({ put: { material: 'straw' }, share: 1 });
  });
});

describe('an amendment', () => {
  it('of the build puts other layers in, and everything that followed is told anew', () => {
    const writer = built();
    const build = writer.entries[2]?.id ?? '';
    writer.write('split', 'quarry', { into: [{ heap: 'east', share: 0.5 }] }, on(5));
    writer.write(
      'heap-built',
      'quarry',
      { name: 'Quarry', bay: 'bay-2', layers: [bedding] },
      { ...on(1), amends: build, written: minutesIn2026(10 * DAY) },
    );
    const holding = fold(writer.entries);
    expect(holding.heaps.get('east')?.layers).toMatchObject([{ put: bedding, share: 0.5 }]);
    expect(holding.bays.get('bay-2')?.heaps).toEqual(['quarry']);
    expect(holding.loose).toEqual([]);
  });

  it('withdrawn together with the build leaves the rest loose, not lost', () => {
    const writer = built();
    writer.write('reading', 'quarry', { temp_degC: 60 }, on(3));
    writer.withdraw(writer.entries[2]?.id ?? '');
    const holding = fold(writer.entries);
    expect(holding.heaps.size).toBe(0);
    expect(reasons(holding)).toEqual(['no-such-heap quarry']);
  });
});
