import { fold } from '@loamwright/daybook';
import { minutesIn2026, testWriter } from '@loamwright/daybook/testing';
import { createSpeaker } from '@loamwright/words';
import { expect, it } from 'vitest';
import { yearOf } from './index.ts';

const speaker = createSpeaker({ locale: 'en', system: 'metric' });
const day = (number: number): string => minutesIn2026(number * 1440);

it('gathers a season: stuff added up over heaps, compost from one heap in another counted once, the autumn for the next year', () => {
  const writer = testWriter();
  writer.write('bed-set-up', 'kale', { name: 'Kale', area_m2: 12 }, { happened: day(1) });
  const straw = { material: 'straw', mass_kg: 20 } as const;
  writer.write('heap-built', 'one', { name: 'One', layers: [straw], water_L: 10 }, { happened: day(10) });
  writer.write('heap-fed', 'one', { layers: [{ material: 'straw', mass_kg: 5 }] }, { happened: day(20) });
  const starter = { material: 'finished-compost', mass_kg: 4, from: { type: 'heap', id: 'one', share: 0.1 } } as const;
  writer.write('heap-built', 'two', { name: 'Two', layers: [straw, starter] }, { happened: day(30) });
  writer.write('sown', 'kale', { crop: 'kale' }, { happened: day(90) });
  const half = { type: 'heap', id: 'one', share: 0.5 } as const;
  writer.write('spread', 'kale', { of: half, volume_m3: 0.1, workedIn: true }, { happened: day(100) });
  const hen = { type: 'material', id: 'hen-manure', mass_kg: 8 } as const;
  writer.write('spread', 'kale', { of: hen, workedIn: false }, { happened: day(110) });
  writer.write('heap-built', 'late', { name: 'Late', layers: [straw] }, { happened: day(300) });
  const holding = fold(writer.entries, {});
  const { input, uncounted } = yearOf(holding, { season: 2026, zone: 'UTC', speaker });
  expect(input.heaped.map(({ material, amount }) => [material, amount])).toEqual([['straw', { mass_kg: 45 }]]);
  expect(input.water_L).toBe(10);
  expect(input.spread).toEqual({ volume_m3: 0.1 });
  expect(input.straight).toMatchObject([{ material: 'hen-manure', placed: 'mulched' }]);
  expect(input.crops).toEqual([{ crop: 'kale', area_m2: 12 }]);
  expect(uncounted).toBe(false);
  const next = yearOf(holding, { season: 2027, zone: 'UTC', speaker }).input;
  expect(next.heaped.map(({ amount }) => amount)).toEqual([{ mass_kg: 20 }]);
});

it('a spreading without its amount leaves the remainder untold', () => {
  const writer = testWriter();
  writer.write('bed-set-up', 'kale', { name: 'Kale', area_m2: 12 }, { happened: day(1) });
  writer.write(
    'heap-built',
    'one',
    { name: 'One', layers: [{ material: 'straw', mass_kg: 20 }] },
    { happened: day(10) },
  );
  const half = { type: 'heap', id: 'one', share: 0.5 } as const;
  writer.write('spread', 'kale', { of: half, workedIn: true }, { happened: day(100) });
  const { input, uncounted } = yearOf(fold(writer.entries, {}), { season: 2026, zone: 'UTC', speaker });
  expect(uncounted).toBe(true);
  expect(input.spread).toBeUndefined();
});
