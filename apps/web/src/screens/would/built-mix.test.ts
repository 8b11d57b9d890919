import { type Entry, fold } from '@loamwright/daybook';
import { minutesIn2026, testWriter } from '@loamwright/daybook/testing';
import { describe, expect, it } from 'vitest';
import { builtMix } from './built-mix.ts';

function asBuilt(write: (writer: ReturnType<typeof testWriter>) => void): ReturnType<typeof builtMix> {
  const writer = testWriter();
  write(writer);
  const entries: readonly Entry[] = writer.entries;
  const holding = fold(entries, {});
  const heap = holding.heaps.get('heap');
  if (heap === undefined) throw new RangeError('no heap');
  return builtMix(heap, holding);
}

const built = { happened: minutesIn2026(1440) };

describe('a heap as it was built', () => {
  it('is each material once, with the water that was given, whatever was laid on or taken since', () => {
    const mix = asBuilt((writer) => {
      const layers = [
        { material: 'straw', mass_kg: 20 },
        { material: 'coffee-grounds', mass_kg: { p10: 30, p50: 40, p90: 55 } },
        { material: 'straw', mass_kg: { p10: 8, p50: 10, p90: 13 } },
      ];
      writer.write('heap-built', 'heap', { name: 'Heap', layers, water_L: 30 }, built);
      const fed = [{ material: 'grass-clippings', mass_kg: 15 }];
      writer.write('heap-fed', 'heap', { layers: fed }, { happened: minutesIn2026(3 * 1440) });
    });
    expect(mix).toEqual({
      ingredients: [
        { material: 'straw', amount: { mass_kg: { p10: 28, p50: 30, p90: 33 } } },
        { material: 'coffee-grounds', amount: { mass_kg: { p10: 30, p50: 40, p90: 55 } } },
      ],
      water_L: 30,
    });
  });

  it('is not told where nothing was laid, or where something in it is unknown', () => {
    expect(
      asBuilt((writer) => writer.write('heap-built', 'heap', { name: 'Heap', layers: [] }, built)),
    ).toBeUndefined();
    const layers = [{ material: 'pond-slime', mass_kg: 20 }];
    expect(asBuilt((writer) => writer.write('heap-built', 'heap', { name: 'Heap', layers }, built))).toBeUndefined();
  });
});
