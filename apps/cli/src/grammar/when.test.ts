import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readWhen } from './when.ts';

/** A Wednesday afternoon in London, summer time. */
const now = new Date('2026-07-15T14:30:00.000Z');
const zone = 'Europe/London';

function when(text: string, at = now, where = zone): string {
  const read = readWhen(text, at, where);
  return read.ok ? `${read.value.happened} ${read.value.precision}` : (read.problems[0]?.code ?? '');
}

describe('when it happened', () => {
  it.each([
    ['now', '2026-07-15T14:30:00.000Z minute'],
    ['18:00', '2026-07-14T17:00:00.000Z minute'],
    ['15:00', '2026-07-15T14:00:00.000Z minute'],
    ['6pm', '2026-07-14T17:00:00.000Z minute'],
    ['12am', '2026-07-14T23:00:00.000Z minute'],
    ['today', '2026-07-15T11:00:00.000Z day'],
    ['today 7:30', '2026-07-15T06:30:00.000Z minute'],
    ['yesterday', '2026-07-14T11:00:00.000Z day'],
    ['yesterday 18:00', '2026-07-14T17:00:00.000Z minute'],
    ['Yesterday at 6 pm', '2026-07-14T17:00:00.000Z minute'],
    ['wednesday', '2026-07-15T11:00:00.000Z day'],
    ['last wednesday', '2026-07-08T11:00:00.000Z day'],
    ['monday 7:30', '2026-07-13T06:30:00.000Z minute'],
    ['thu', '2026-07-09T11:00:00.000Z day'],
    ['3 days ago', '2026-07-12T11:00:00.000Z day'],
    ['3 days ago 18:00', '2026-07-12T17:00:00.000Z minute'],
    ['two hours ago', '2026-07-15T12:30:00.000Z hour'],
    ['20 minutes ago', '2026-07-15T14:10:00.000Z minute'],
    ['a week ago', '2026-07-08T14:30:00.000Z week'],
    ['3 months ago', '2026-04-15T14:30:00.000Z week'],
    ['3 months', '2026-04-15T14:30:00.000Z week'],
    ['a month ago', '2026-06-15T14:30:00.000Z week'],
    ['half a year ago', '2026-01-15T15:30:00.000Z week'],
    ['a couple of weeks ago', '2026-07-01T14:30:00.000Z week'],
    ['a fortnight ago', '2026-07-01T14:30:00.000Z week'],
    ['two years ago', '2024-07-15T14:30:00.000Z week'],
    ['twelve weeks', '2026-04-22T14:30:00.000Z week'],
    ['half an hour ago', '2026-07-15T14:00:00.000Z hour'],
    ['last week', '2026-07-08T14:30:00.000Z week'],
    ['last month', '2026-06-15T14:30:00.000Z week'],
    ['2026-03-01', '2026-03-01T12:00:00.000Z day'],
    ['2026-03-01 18:00', '2026-03-01T18:00:00.000Z minute'],
    ['2026-03-01T18:00', '2026-03-01T18:00:00.000Z minute'],
    ['2026-03-01T18:00:00+02:00', '2026-03-01T16:00:00.000Z minute'],
    ['2026-03-01T18:00:00Z', '2026-03-01T18:00:00.000Z minute'],
  ])('%s', (text, expected) => {
    expect(when(text)).toBe(expected);
  });

  it('of a morning is not put into the afternoon that has not been', () => {
    expect(when('today', new Date('2026-07-15T06:00:00.000Z'))).toBe('2026-07-15T06:00:00.000Z day');
  });

  it('is told in the garden’s own zone', () => {
    expect(when('18:00', now, 'America/Denver')).toBe('2026-07-15T00:00:00.000Z minute');
    expect(when('yesterday', now, 'Pacific/Auckland')).toBe('2026-07-15T00:00:00.000Z day');
  });

  // In London the clocks went from 01:00 to 02:00 on 29 March 2026 (IANA time zone database).
  it('at a time that the clocks jumped over is moved on by the jump', () => {
    expect(when('2026-03-29 01:30')).toBe('2026-03-29T01:30:00.000Z minute');
  });

  it.each([
    'soon',
    'half a day ago',
    'half a month',
    '3 months ago 18:00',
    'months ago',
    'constructor weeks ago',
    '25:00',
    '12:60',
    '2026-02-30',
    '2026-13-01',
    '13pm',
    '7',
    'tomorrow',
    '99999 days ago',
    'm',
    '__proto__',
  ])('can’t be read from %j', (text) => {
    expect(when(text)).toBe('when-unreadable');
  });

  it('never throws', () => {
    fc.assert(fc.property(fc.string(), (text) => when(text) !== ''));
  });
});
