import { likely } from '@loamwright/science';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Entry, JsonObject } from './entry/entry.ts';
import { fold } from './fold/fold.ts';
import type { Holding, Layer } from './fold/holding.ts';
import type { LayerPut } from './kinds/layer.ts';
import { lineageOf, type MaterialShare } from './lineage.ts';
import { arbitraryDaybook } from './testing/arbitrary.ts';
import { testWriter, type Writer } from './testing/writer.ts';

const seed = 1905;

/** Sums of some hundred doubles: rounding stays far below this part of the whole. */
const ROUNDING = 1e-9;

function shares(holding: Holding, type: 'heap' | 'bed', id: string): Readonly<Record<string, number>> {
  const outcome = lineageOf(holding, { type, id });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return Object.fromEntries(outcome.value.map(({ material, share }) => [material, Number(share.toFixed(9))]));
}

const layer = (material: string, mass_kg: number, more: Partial<LayerPut> = {}): LayerPut => ({
  material,
  mass_kg,
  ...more,
});

/** Quarry Lane: a heap of bedding, straw and chips, another of pomace and leaves, a bed of leeks. */
function quarryLane(): Writer {
  const writer = testWriter();
  writer.write('bed-set-up', 'leeks', { name: 'Leeks', area_m2: 6 });
  writer.write('heap-built', 'quarry', {
    name: 'Quarry',
    layers: [layer('goat-bedding', 60), layer('straw', 20), layer('hedge-chips', 20)],
  });
  writer.write('heap-built', 'pomace', { name: 'Pomace', layers: [layer('pomace', 30), layer('leaves', 20)] });
  return writer;
}

describe('lineage at Quarry Lane', () => {
  it('of a built and fed heap is what went in, by mass', () => {
    const writer = quarryLane();
    writer.write('heap-fed', 'quarry', { layers: [layer('scraps', 15), layer('straw', 10)] });
    const holding = fold(writer.entries);
    expect(shares(holding, 'heap', 'quarry')).toEqual({
      'goat-bedding': 0.48,
      straw: 0.24,
      'hedge-chips': 0.16,
      scraps: 0.12,
    });
  });

  it('of an estimate takes the likely value', () => {
    const writer = testWriter();
    const estimate = { material: 'straw', mass_kg: { p10: 5, p50: 10, p90: 30 } };
    writer.write('heap-built', 'a', { name: 'A', layers: [estimate, layer('scraps', 30)] });
    expect(shares(fold(writer.entries), 'heap', 'a')).toEqual({ scraps: 0.75, straw: 0.25 });
  });

  it('goes through combining: half of one heap into the other', () => {
    const writer = quarryLane();
    writer.write('combined', 'quarry', { from: [{ heap: 'pomace', share: 0.5 }] });
    const holding = fold(writer.entries);
    // 100 kg as built and half of 50 kg.
    expect(shares(holding, 'heap', 'quarry')).toEqual({
      'goat-bedding': 0.48,
      straw: 0.16,
      'hedge-chips': 0.16,
      pomace: 0.12,
      leaves: 0.08,
    });
    expect(shares(holding, 'heap', 'pomace')).toEqual({ pomace: 0.6, leaves: 0.4 });
    expect(holding.heaps.get('pomace')).toMatchObject({ left: 0.5, phase: 'standing' });
    expect(holding.heaps.get('quarry')?.cameFrom).toMatchObject([
      { type: 'heap', id: 'pomace', share: 0.5, putIn_kg: 25 },
    ]);
  });

  it('goes through splitting: both parts are made of the same, and what comes later is not shared', () => {
    const writer = quarryLane();
    writer.write('split', 'quarry', {
      into: [
        { heap: 'east', share: 0.3, name: 'East' },
        { heap: 'west', share: 0.2 },
      ],
    });
    writer.write('heap-fed', 'east', { layers: [layer('scraps', 30)] });
    const holding = fold(writer.entries);
    expect(shares(holding, 'heap', 'west')).toEqual({ 'goat-bedding': 0.6, straw: 0.2, 'hedge-chips': 0.2 });
    expect(shares(holding, 'heap', 'quarry')).toEqual(shares(holding, 'heap', 'west'));
    expect(shares(holding, 'heap', 'east')).toEqual({
      scraps: 0.5,
      'goat-bedding': 0.3,
      straw: 0.1,
      'hedge-chips': 0.1,
    });
    expect(holding.heaps.get('quarry')?.left).toBeCloseTo(0.5, 12);
  });

  it('goes through screening: the oversize is taken from the material it chiefly is, then from all', () => {
    const writer = quarryLane();
    const oversize = { material: 'oversize', mass_kg: 15, share: 0.15, of: 'hedge-chips' };
    writer.write('screened', 'quarry', { mesh_m: 0.012, oversize });
    const holding = fold(writer.entries);
    // 15 of 20 kg of chips are gone: 60, 20 and 5 of 85 are left.
    expect(shares(holding, 'heap', 'quarry')).toEqual({
      'goat-bedding': 0.705882353,
      straw: 0.235294118,
      'hedge-chips': 0.058823529,
    });
    expect(holding.heaps.get('quarry')?.left).toBeCloseTo(0.85, 12);
    expect(holding.stock.get('oversize')).toMatchObject({ mass_kg: 15, moves: [{ why: 'oversize', with: 'quarry' }] });

    const more = quarryLane();
    more.write('screened', 'quarry', { oversize: { ...oversize, share: 0.6 } });
    // All 20 kg of chips and half of the other 80 kg.
    expect(shares(fold(more.entries), 'heap', 'quarry')).toEqual({ 'goat-bedding': 0.75, straw: 0.25 });
  });

  it('goes on to the beds, from two heaps and from a material spread as it was', () => {
    const writer = quarryLane();
    writer.write('spread', 'leeks', { of: { type: 'heap', id: 'quarry', share: 0.5 }, workedIn: true });
    writer.write('spread', 'leeks', { of: { type: 'heap', id: 'pomace', share: 1 }, workedIn: true });
    writer.write('spread', 'leeks', { of: { type: 'material', id: 'leaves', mass_kg: 20 }, workedIn: false });
    const holding = fold(writer.entries);
    expect(shares(holding, 'bed', 'leeks')).toEqual({
      leaves: 0.333333333,
      'goat-bedding': 0.25,
      pomace: 0.25,
      'hedge-chips': 0.083333333,
      straw: 0.083333333,
    });
    expect(holding.heaps.get('pomace')).toMatchObject({ phase: 'gone', wentTo: [{ type: 'bed', id: 'leeks' }] });
    expect(shares(holding, 'heap', 'pomace')).toEqual({});
  });

  it('goes through ripe compost laid into a new heap as a starter', () => {
    const writer = quarryLane();
    writer.write('heap-built', 'new', {
      name: 'New',
      layers: [layer('straw', 40), layer('compost', 7, { from: { type: 'heap', id: 'quarry', share: 0.1 } })],
    });
    const holding = fold(writer.entries);
    expect(shares(holding, 'heap', 'new')).toEqual({ straw: 0.84, 'goat-bedding': 0.12, 'hedge-chips': 0.04 });
    expect(holding.heaps.get('quarry')?.left).toBeCloseTo(0.9, 12);
  });

  it('of a heap or bed that isn’t there is a problem', () => {
    const holding = fold(quarryLane().entries);
    expect(lineageOf(holding, { type: 'heap', id: 'nowhere' })).toMatchObject({
      ok: false,
      problems: [{ code: 'no-such-heap' }],
    });
    expect(lineageOf(holding, { type: 'bed', id: 'nowhere' })).toMatchObject({
      ok: false,
      problems: [{ code: 'no-such-bed' }],
    });
    expect(lineageOf(holding, { type: 'bed', id: 'leeks' })).toEqual({ ok: true, value: [] });
  });
});

function everyLayer(holding: Holding): readonly Layer[] {
  return [
    ...[...holding.heaps.values()].flatMap(({ layers }) => layers),
    ...[...holding.beds.values()].flatMap(({ spreadings }) => spreadings.flatMap(({ layers }) => layers)),
  ];
}

const sum = (numbers: readonly number[]): number => numbers.reduce((total, number) => total + number, 0);

describe('the laws of lineage', () => {
  it('the shares of any heap and any bed add up to 1, or there are none', () => {
    let told = 0;
    fc.assert(
      fc.property(arbitraryDaybook(), (entries) => {
        const holding = fold(entries);
        const subjects = [
          ...[...holding.heaps.keys()].map((id) => ({ type: 'heap' as const, id })),
          ...[...holding.beds.keys()].map((id) => ({ type: 'bed' as const, id })),
        ];
        for (const subject of subjects) {
          const outcome = lineageOf(holding, subject);
          const list: readonly MaterialShare[] = outcome.ok ? outcome.value : [];
          if (list.length > 1) told++;
          if (list.length > 0) expect(Math.abs(sum(list.map(({ share }) => share)) - 1)).toBeLessThan(ROUNDING);
          for (const { share } of list) expect(share).toBeGreaterThan(0);
        }
      }),
      { seed, numRuns: 300 },
    );
    expect(told).toBeGreaterThan(100);
  });

  it('without screening, the parts of each addition that lie in heaps and on beds add up to the whole of it', () => {
    let parted = 0;
    fc.assert(
      fc.property(arbitraryDaybook(), (entries) => {
        const shareOfAddition = new Map<string, number>();
        for (const { entry, index, share } of everyLayer(fold(entries.filter(({ kind }) => kind !== 'screened')))) {
          const key = `${entry} ${index}`;
          if (shareOfAddition.has(key)) parted++;
          shareOfAddition.set(key, (shareOfAddition.get(key) ?? 0) + share);
        }
        for (const share of shareOfAddition.values()) expect(Math.abs(share - 1)).toBeLessThan(ROUNDING);
      }),
      { seed, numRuns: 300 },
    );
    expect(parted).toBeGreaterThan(100);
  });

  it('all mass put in lies in heaps, on beds, or went back to stock as oversize', () => {
    let screened = 0;
    fc.assert(
      fc.property(arbitraryDaybook(), (daybook) => {
        const entries = daybook.map(withoutHeapSources);
        const holding = fold(entries);
        const heaps = [...holding.heaps.values()];
        const put_kg = sum(
          heaps.flatMap(({ acts }) =>
            acts.flatMap((act) =>
              act.kind === 'heap-built' || act.kind === 'heap-fed'
                ? act.body.layers.map(({ mass_kg }) => likely(mass_kg))
                : [],
            ),
          ),
        );
        const straight_kg = sum(
          [...holding.beds.values()].flatMap(({ spreadings }) =>
            spreadings.map(({ told: { body } }) => (body.of.type === 'material' ? likely(body.of.mass_kg) : 0)),
          ),
        );
        const oversize = heaps.flatMap(({ wentTo }) => wentTo.filter(({ type }) => type === 'stock'));
        if (sum(oversize.map(({ putIn_kg }) => putIn_kg)) > 0) screened++;
        const found_kg =
          sum(everyLayer(holding).map(({ mass_kg }) => mass_kg)) + sum(oversize.map(({ putIn_kg }) => putIn_kg));
        expect(Math.abs(found_kg - put_kg - straight_kg)).toBeLessThanOrEqual(ROUNDING * Math.max(1, put_kg));
      }),
      { seed, numRuns: 300 },
    );
    expect(screened).toBeGreaterThan(20);
  });

  it('a heap has never more or less than between nothing and all of it left', () => {
    fc.assert(
      fc.property(arbitraryDaybook(), (entries) => {
        for (const { left, layers } of fold(entries).heaps.values()) {
          expect(left >= 0 && left <= 1).toBe(true);
          for (const { share, mass_kg } of layers) expect(share > 0 && share <= 1 + ROUNDING && mass_kg > 0).toBe(true);
        }
      }),
      { seed },
    );
  });
});

/** The same entry with its layers brought straight: matter of other heaps is counted where it first went in. */
function withoutHeapSources(entry: Entry): Entry {
  const { layers } = entry.body;
  if (!Array.isArray(layers)) return entry;
  const straight = (layers as JsonObject[]).map(({ from: _from, ...put }) => put);
  return { ...entry, body: { ...entry.body, layers: straight } };
}
