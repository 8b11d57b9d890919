import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { daysBetween, epoch_ms, isInstant, isZone, localDate } from './time.ts';

const seed = 1582;
/** From 0000-01-01 to 9999-12-31: what a year of four digits can tell. */
const moment = fc.integer({ min: -62_167_219_200_000, max: Date.UTC(9999, 11, 31, 23, 59, 59, 999) });

describe('instants', () => {
  it('agree with the engine on any moment, and their text order is their order', () => {
    fc.assert(
      fc.property(moment, moment, (a, b) => {
        const [textA, textB] = [new Date(a).toISOString(), new Date(b).toISOString()];
        expect(isInstant(textA)).toBe(true);
        expect(epoch_ms(textA)).toBe(a);
        expect(Math.sign(a - b)).toBe(textA < textB ? -1 : textA > textB ? 1 : 0);
      }),
      { seed, numRuns: 2000 },
    );
  });

  it('agree with the engine on every day of four centuries', () => {
    for (let day_ms = Date.UTC(1800, 0, 1); day_ms < Date.UTC(2201, 0, 1); day_ms += 86_400_000) {
      const text = new Date(day_ms).toISOString();
      expect(isInstant(text) && epoch_ms(text)).toBe(day_ms);
    }
  });

  it.each([
    '2026-02-29T00:00:00.000Z',
    '1900-02-29T00:00:00.000Z',
    '2026-04-31T00:00:00.000Z',
    '2026-00-10T00:00:00.000Z',
    '2026-13-10T00:00:00.000Z',
    '2026-01-00T00:00:00.000Z',
    '2026-01-01T24:00:00.000Z',
    '2026-01-01T00:60:00.000Z',
    '2026-01-01T00:00:60.000Z',
    '2026-01-01T00:00:00Z',
    '2026-01-01T00:00:00.000+00:00',
    '2026-01-01',
    ' 2026-01-01T00:00:00.000Z',
    '+012026-01-01T00:00:00.000Z',
  ])('refuse %s', (text) => {
    expect(isInstant(text)).toBe(false);
    expect(() => epoch_ms(text)).toThrow(RangeError);
  });

  it('take the leap days of 2000 and 2024', () => {
    expect(isInstant('2000-02-29T00:00:00.000Z') && isInstant('2024-02-29T00:00:00.000Z')).toBe(true);
  });
});

describe('zones and days', () => {
  it.each([
    ['Europe/London', true],
    ['America/Argentina/Buenos_Aires', true],
    ['Etc/GMT+5', true],
    ['UTC', true],
    ['Europe/Quarry_Lane', false],
    ['', false],
  ])('%s is known: %s', (zone, known) => {
    expect(isZone(zone)).toBe(known);
  });

  it('tell the date in the garden, over summer time and the date line', () => {
    expect(localDate('2026-03-28T23:30:00.000Z', 'Europe/London')).toBe('2026-03-28');
    expect(localDate('2026-03-29T23:30:00.000Z', 'Europe/London')).toBe('2026-03-30');
    expect(localDate('2026-01-01T05:00:00.000Z', 'America/Chicago')).toBe('2025-12-31');
    expect(localDate('2026-01-01T11:00:00.000Z', 'Pacific/Kiritimati')).toBe('2026-01-02');
    expect(localDate('2026-01-01T11:00:00.000Z', 'Europe/Quarry_Lane')).toBeUndefined();
  });

  // Worked example: manure worked in on 30 January 2011; the waits of 7 CFR 205.203(c)(1) counted on a calendar.
  it('count 90 and 120 days from 30 January 2011 to 30 April and 30 May', () => {
    expect(daysBetween('2011-01-30', '2011-04-30')).toBe(90);
    expect(daysBetween('2011-01-30', '2011-05-30')).toBe(120);
    expect(daysBetween('2011-01-30', '2011-04-01')).toBe(61);
    expect(daysBetween('2026-03-30', '2026-03-28')).toBe(-2);
  });
});
