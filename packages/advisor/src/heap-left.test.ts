import { fold } from '@loamwright/daybook';
import { minutesIn2026, testWriter } from '@loamwright/daybook/testing';
import { createDraws } from '@loamwright/science';
import { createSpeaker } from '@loamwright/words';
import { describe, expect, it } from 'vitest';
import { recordedLeft_m3 } from './heap-left.ts';
import { heapLeft, heapYieldInput, isPartlyGone, leftSaying } from './index.ts';

const day = (number: number): string => minutesIn2026(number * 1440);
const asked = { measure: 'barrow', ownSizes: { barrow: 80 }, now: day(200), needs: { draws: createDraws(64) } };
const speaker = createSpeaker({ locale: 'en', system: 'metric' });

function heap(write: (writer: ReturnType<typeof testWriter>) => void = () => undefined) {
  const writer = testWriter();
  writer.write('bed-set-up', 'kale', { name: 'Kale', area_m2: 12 }, { happened: day(1) });
  const layers = [{ material: 'straw', mass_kg: 60 }];
  writer.write(
    'heap-built',
    'heap',
    { name: 'Heap', layers, water_L: 40, mix: { volume_m3: 1 } },
    { happened: day(2) },
  );
  write(writer);
  const holding = fold(writer.entries, {});
  const found = holding.heaps.get('heap');
  if (found === undefined) throw new RangeError('no heap');
  return { heap: found, holding };
}

const part = (share: number) => ({ type: 'heap', id: 'heap', share }) as const;

// What a barrow holds is drawn, and the middle of 64 draws lies within a percent of it.
describe('what is left of a heap', () => {
  it('is what it came to less what was taken, share by share and volume by volume', () => {
    const { heap: found, holding } = heap((writer) => {
      writer.write('finished', 'heap', { volume_m3: 0.4 }, { happened: day(90) });
      writer.write('spread', 'kale', { of: part(0.25), volume_m3: 0.1, workedIn: true }, { happened: day(91) });
      writer.write('spread', 'kale', { of: part(1 / 3), workedIn: true }, { happened: day(92) });
    });
    expect(recordedLeft_m3(found)).toBeCloseTo(0.2, 12);
    const left = heapLeft(found, holding, asked);
    expect(left?.by).toBe('record');
    expect(left?.count).toBeCloseTo(2.5, 2);
    const said = leftSaying(found, holding, asked);
    expect(said === null ? '' : speaker.tell(said)).toContain('2.5 barrows (200 L)');
    expect(said === null ? '' : speaker.tell(said)).toContain('some went to Kale');
  });

  it('goes by what was counted when it was last shared out', () => {
    // One barrow of 80 L was a quarter of it: three are there.
    const { heap: found, holding } = heap((writer) => {
      writer.write('spread', 'kale', { of: part(0.25), volume_m3: 0.08, workedIn: true }, { happened: day(91) });
    });
    expect(heapLeft(found, holding, asked)?.count).toBeCloseTo(3, 2);
  });

  it('is measured anew by calling it ready, and not known by the record once more is laid on', () => {
    const spread = (writer: ReturnType<typeof testWriter>) =>
      writer.write('spread', 'kale', { of: part(0.5), volume_m3: 0.2, workedIn: true }, { happened: day(91) });
    const again = heap((writer) => {
      spread(writer);
      writer.write('finished', 'heap', { volume_m3: 0.15 }, { happened: day(95) });
    });
    expect(recordedLeft_m3(again.heap)).toBe(0.15);
    const fed = heap((writer) => {
      spread(writer);
      writer.write('heap-fed', 'heap', { layers: [{ material: 'straw', mass_kg: 5 }] }, { happened: day(95) });
    });
    expect(recordedLeft_m3(fed.heap)).toBeUndefined();
  });

  it('where no volume is written down is reckoned from the part that is there', () => {
    const whole = heap();
    const half = heap((writer) => {
      writer.write('spread', 'kale', { of: part(0.5), workedIn: true }, { happened: day(91) });
    });
    expect(isPartlyGone(whole.heap)).toBe(false);
    expect(leftSaying(whole.heap, whole.holding, asked)).toBeNull();
    const input = heapYieldInput(half.heap, half.holding, asked.now);
    expect(input).toMatchObject({ built_m3: 0.5, water_L: 20 });
    const counts = [whole, half].map((one) => heapLeft(one.heap, one.holding, asked)?.count ?? 0);
    expect((counts[1] ?? 0) / (counts[0] ?? 0)).toBeCloseTo(0.5, 6);
  });

  it('does not teach other heaps a yield that it was not', () => {
    const { heap: found, holding } = heap((writer) => {
      writer.write('spread', 'kale', { of: part(0.5), volume_m3: 0.2, workedIn: true }, { happened: day(91) });
      writer.write('finished', 'heap', { volume_m3: 0.2 }, { happened: day(95) });
      const layers = [{ material: 'straw', mass_kg: 60 }];
      writer.write('heap-built', 'next', { name: 'Next', layers, mix: { volume_m3: 1 } }, { happened: day(100) });
    });
    const next = holding.heaps.get('next');
    if (next === undefined) throw new RangeError('no heap');
    expect(heapYieldInput(next, holding, asked.now)?.pastHeaps).toEqual([]);
    expect(heapYieldInput(found, holding, asked.now)?.ready_m3).toBeUndefined();
  });
});
