import { describe, expect, it } from 'vitest';
import { minutesIn2026 } from '../testing/ids.ts';
import { testWriter, type WriterOptions } from '../testing/writer.ts';
import { fold } from './fold.ts';

const HOUR = 60;
const DAY = 24 * HOUR;

function warningsOf(options: WriterOptions, now?: string): readonly string[] {
  const writer = testWriter();
  writer.write('note', null, { text: 'steaming' }, options);
  return fold(writer.entries, { now }).warnings.map(({ code }) => code);
}

const at = (happened: number, written: number): WriterOptions => ({
  happened: minutesIn2026(happened),
  written: minutesIn2026(written),
});

describe('clocks', () => {
  it('an entry written down before it happened is pointed out, beyond an hour and what its precision allows', () => {
    expect(warningsOf(at(61, 0))).toEqual([]);
    expect(warningsOf(at(62, 0))).toEqual(['happened-after-written']);
    expect(warningsOf({ ...at(DAY + HOUR, 0), precision: 'day' })).toEqual([]);
    expect(warningsOf({ ...at(DAY + HOUR + 1, 0), precision: 'day' })).toEqual(['happened-after-written']);
    expect(warningsOf({ ...at(7 * DAY + HOUR, 0), precision: 'week' })).toEqual([]);
  });

  it('an entry written half a year after it happened is pointed out, by calendar months', () => {
    expect(warningsOf({ happened: '2026-01-31T10:00:00.000Z', written: '2026-06-30T10:00:00.000Z' })).toEqual([]);
    expect(warningsOf({ happened: '2026-01-31T10:00:00.000Z', written: '2026-07-01T10:00:00.000Z' })).toEqual([
      'written-long-after',
    ]);
    expect(warningsOf({ happened: '2025-03-01T10:00:00.000Z', written: '2026-03-01T10:00:00.000Z' })).toEqual([
      'written-long-after',
    ]);
  });

  it('an entry from the future of the reader is pointed out, if the time is given', () => {
    expect(warningsOf(at(120, 120), minutesIn2026(60))).toEqual([]);
    expect(warningsOf(at(122, 122), minutesIn2026(60))).toEqual(['in-the-future']);
    expect(warningsOf(at(0, 122), minutesIn2026(60))).toEqual(['in-the-future']);
    expect(warningsOf(at(122, 122))).toEqual([]);
  });

  it('a clock that went back is pointed out where it did, by the device’s own numbers', () => {
    const writer = testWriter();
    writer.write('note', null, { text: 'a' }, at(100, 100));
    const back = writer.write('note', null, { text: 'b' }, at(50, 50));
    writer.write('note', null, { text: 'c' }, at(60, 60));
    const expected = [{ code: 'clock-went-back', entry: back.id, against: minutesIn2026(100) }];
    expect(fold(writer.entries).warnings).toEqual(expected);
    expect(fold([...writer.entries].reverse()).warnings).toEqual(expected);
  });

  it('is not asked across a gap, nor between devices', () => {
    const writer = testWriter();
    writer.write('note', null, { text: 'a' }, at(100, 100));
    const missing = writer.write('note', null, { text: 'b' }, at(90, 90));
    writer.write('note', null, { text: 'c' }, at(50, 50));
    const tablet = testWriter('tablet');
    tablet.write('note', null, { text: 'd' }, at(40, 40));
    tablet.write('note', null, { text: 'e' }, at(45, 45));
    expect(fold([...writer.entries, ...tablet.entries].filter((entry) => entry !== missing)).warnings).toEqual([]);
  });

  it('measures against the earliest entry of a number that was given out twice', () => {
    const writer = testWriter();
    writer.write('note', null, { text: 'a' }, at(100, 100));
    const restored = testWriter();
    restored.write('note', null, { text: 'a' }, at(40, 40));
    restored.write('note', null, { text: 'b' }, at(50, 50));
    for (const entries of [
      [...writer.entries, ...restored.entries],
      [...restored.entries, ...writer.entries],
    ])
      expect(fold(entries).warnings).toEqual([]);
  });

  it('refuses nothing, however wrong', () => {
    const writer = testWriter();
    writer.write(
      'note',
      null,
      { text: 'a' },
      { happened: '9999-12-31T23:59:59.999Z', written: '0000-01-01T00:00:00.000Z' },
    );
    expect(fold(writer.entries).notes.length).toBe(1);
  });
});
