import type { Entry, HeapBuilt } from '@loamwright/daybook';
import { likely, type MixSolution, type Quantity } from '@loamwright/science';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { flat, type Garden, garden } from '../testing/garden.ts';

let home: Garden;
beforeEach(async () => {
  home = garden();
  await home.run(['log', 'bay', 'Left bay', '1.2x1.2x1m', '--wall', 'pallets', '--units', 'metric']);
});
afterEach(() => home.remove());

async function newest(): Promise<Entry> {
  const lines = (await home.json(['daybook', '--newest', '1'])).value as readonly { readonly entry: string }[];
  return (await home.json(['daybook', '--show', lines[0]?.entry ?? ''])).value as Entry;
}

/** The body of the heap that was written down last. */
async function heapBuilt(): Promise<HeapBuilt & { readonly entry: Entry }> {
  const entry = await newest();
  expect(entry.kind).toBe('heap-built');
  return { ...(entry.body as unknown as HeapBuilt), entry };
}

function likelyMass_kg({ layers }: HeapBuilt, material: string): number {
  return layers.filter((layer) => layer.material === material).reduce((sum, { mass_kg }) => sum + likely(mass_kg), 0);
}

const spreadOf = (quantity: Quantity | undefined): number =>
  typeof quantity === 'object' ? (quantity.p90 - quantity.p10) / quantity.p50 : 0;

describe('build', () => {
  it('builds another answer of the last mix by its aim, with what had to be fetched', async () => {
    const stuff = ['straw=30buckets', 'coffee-grounds=8buckets', 'goat bedding=8barrows', 'leaves=4bags'];
    const more = ['rabbit-droppings=4buckets', 'grass=4barrows', 'cardboard=10buckets', 'hedge-chippings=3barrows'];
    const { value } = await home.json(['mix', ...stuff, ...more, '--bay', 'left bay']);
    const { alternatives } = value as MixSolution;
    const other = alternatives.find(({ aim }) => aim === 'hottest');
    expect(other).toBeDefined();
    const { code } = await home.run(['build', '--aim', 'hottest', '--name', 'Hot heap']);
    expect(code).toBe(0);
    const heap = await heapBuilt();
    const laid = [...(other?.use ?? []), ...(other?.fetch ?? [])].filter(({ count }) => count > 0);
    expect(new Set(heap.layers.map(({ material }) => material))).toEqual(new Set(laid.map(({ material }) => material)));
    expect(heap.water_L ?? 0).toBe(other?.water_L);
  });

  it('says which answers there are where one is asked for that is not there', async () => {
    await home.run(['mix', 'grass=3barrows', '--bay', 'left bay']);
    const none = await home.run(['build', '--aim', 'hottest']);
    expect(none.code).toBe(2);
    expect(flat(none.err)).toContain('It has the one answer only.');
    expect((await home.run(['build', 'straw=2bales', '--aim', 'hottest', '--bay', 'left bay'])).code).toBe(2);
  });

  it('takes what was mixed last, and its bay', async () => {
    const stuff = ['straw=2bales', 'leaves=6bags', 'coffee-grounds=4buckets', 'goat bedding=3 barrows'];
    const { value } = await home.json(['mix', ...stuff, '--bay', 'left bay']);
    const { out, code } = await home.run(['build', '--name', 'First heap']);
    expect(code).toBe(0);
    expect(flat(out)).toMatch(/Written down: First heap built in Left bay, of .*From the ground up: 1\./u);
    const heap = await heapBuilt();
    const { use, water_L, balance } = value as {
      readonly use: readonly { readonly material: string; readonly count: number }[];
      readonly water_L: number;
      readonly balance: {
        readonly ingredients: readonly { readonly material: string; readonly wet_kg: { readonly p50: number } }[];
      };
    };
    expect(heap.water_L).toBe(water_L);
    for (const { material } of use.filter(({ count }) => count > 0)) {
      const mixed = balance.ingredients.find((one) => one.material === material)?.wet_kg.p50 ?? Number.NaN;
      // The same draws behind both: only the sum over layers may differ in its last digits.
      expect(likelyMass_kg(heap, material)).toBeCloseTo(mixed, 6);
    }
    expect(heap.layers.filter(({ raw }) => raw).map(({ material }) => material)).toContain('goat-bedding');
    expect(heap.layers.every(({ material, raw }) => material !== 'straw' || raw === false)).toBe(true);
  });

  it('lays half a barrow as half a barrow, with the spread of a guess by eye', async () => {
    await home.run(['mix', 'straw=2bales', 'goat bedding=half a barrow', '--bay', '1x1x1m']);
    const { out } = await home.run(['build', '--name', 'From the mix']);
    expect(flat(out)).toContain('half a barrow of goat bedding');
    const mixed = await heapBuilt();
    await home.run(['build', 'goat bedding=1 barrow', '--name', 'Whole', '--bay', '1x1x1m']);
    const whole = await heapBuilt();
    const typed = await home.run([
      'build',
      'straw=2bales',
      'goat bedding=half a barrow',
      '--name',
      'Typed',
      '--bay',
      '1x1x1m',
    ]);
    expect(flat(typed.out)).toContain('half a barrow of goat bedding');
    for (const heap of [mixed, await heapBuilt()]) {
      // Half of a barrow, to within the draws' own noise: other things are drawn beside it.
      expect(likelyMass_kg(heap, 'goat-bedding') / likelyMass_kg(whole, 'goat-bedding')).toBeCloseTo(0.5, 1);
      const half = heap.layers.find(({ material }) => material === 'goat-bedding')?.mass_kg;
      expect(spreadOf(half)).toBeGreaterThan(spreadOf(whole.layers[0]?.mass_kg));
    }
  });

  it('keeps a weight as it was weighed, and an amount as it was given', async () => {
    await home.run([
      'build',
      'leaves=20kg',
      'coffee-grounds=2 kg',
      'straw=9buckets',
      '--name',
      'Weighed',
      '--bay',
      '1x1x1m',
    ]);
    const heap = await heapBuilt();
    expect(likelyMass_kg(heap, 'autumn-leaves')).toBeCloseTo(20, 9);
    const entered = Object.entries(heap.entry.entered ?? {});
    const of = (material: string) =>
      entered
        .filter(([pointer]) => heap.layers[Number(pointer.split('/')[2])]?.material === material)
        .map(([, one]) => one);
    expect(of('coffee-grounds')).toEqual([{ amount: 2, unit: 'kg' }]);
    expect(of('straw').reduce((sum, { amount = 0 }) => sum + amount, 0)).toBe(9);
    // Parted over several layers, of which nobody gave a weight.
    expect(heap.layers.filter(({ material }) => material === 'autumn-leaves').length).toBeGreaterThan(1);
    expect(of('autumn-leaves')).toEqual([]);
  });

  it('keeps what the mix was reckoned to be', async () => {
    await home.run(['build', 'straw=2bales', 'coffee-grounds=4buckets', '--water', '20 L', '--bay', 'left bay']);
    const { mix, size, water_L, bay, name } = await heapBuilt();
    expect(name).toBe('Heap of 15 Jul');
    expect(bay).toBeDefined();
    expect(water_L).toBeCloseTo(20, 9);
    expect(Object.keys(mix ?? {})).toEqual(
      expect.arrayContaining([
        'carbonToNitrogen',
        'moisture_pctWet',
        'density_kgPerM3AsIs',
        'freeAirSpace_pct',
        'volume_m3',
        'height_m',
      ]),
    );
    expect(size).toMatchObject({ width_m: 1.2, depth_m: 1.2 });
  });

  it('takes from stock only when told to', async () => {
    await home.run(['log', 'stock', 'straw=3bales']);
    const inStore = async (): Promise<string> => flat((await home.run(['daybook'])).out);
    await home.run(['build', 'straw=2bales', '--bay', 'left bay']);
    const before = await inStore();
    await home.run(['build', 'straw=2bales', '--bay', 'left bay', '--from-stock']);
    expect(before).toMatch(/In store.* of straw/u);
    expect(await inStore()).not.toBe(before);
  });

  it('prints the card and writes nothing with --card-only', async () => {
    const { out } = await home.run(['build', 'straw=2bales', '--bay', '1x1x1m', '--card-only']);
    expect(out).toContain('From the ground up:');
    expect((await newest()).kind).toBe('bay-set-up');
  });

  it.each<readonly [readonly string[], string]>([
    [[], 'no-last-mix'],
    [['straw=2bales'], 'bay-needed'],
    [['straw=2bales', '--bay', 'nowhere'], 'no-such-bay'],
    [['straw=2bales', '--bay', 'No size'], 'bay-without-size'],
    [['dog mess=1bucket', '--bay', '1x1x1m'], 'not-for-heaps'],
    [['straw=2bales', '--bay', '1x1x1m', '--water', 'much'], 'measurement-unreadable'],
    [['straw=2bales', '--bay', '1x1x1m', '--when', 'soon'], 'when-unreadable'],
  ])('asks again for %j: %s', async (args, problem) => {
    await home.run(['log', 'bay', 'No size']);
    const { ok, problems } = await home.json(['build', ...args]);
    expect(ok).toBe(false);
    expect(problems?.map(({ code }) => code)).toContain(problem);
  });
});
