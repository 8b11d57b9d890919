import { createSpeaker } from '@loamwright/words';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawSeries } from './drawing.ts';

const metric = createSpeaker({ locale: 'en', system: 'metric' });
const us = createSpeaker({ locale: 'en', system: 'us' });
const dayOf = (instant: string): string => instant.slice(5, 10);

function reading(day: number, temp_degC: number, where: 'core' | 'edge' = 'core') {
  return { instant: `2026-07-${String(day).padStart(2, '0')}T12:00:00.000Z`, temp_degC, where, entry: 'x' };
}

const lines = [{ temp_degC: 55, said: { key: 'reading.line.sanitising' } }] as const;
const turned = {
  instant: '2026-07-03T12:00:00.000Z',
  entry: 'y',
  kind: 'turned',
  said: { key: 'advisor.mark.turned' },
} as const;

describe('a drawn series', () => {
  it('has temperature upwards, time to the right, a level with its words, and acts under it', () => {
    const drawn = drawSeries(
      { series: [reading(1, 40), reading(2, 50, 'edge'), reading(5, 60)], acts: [turned], lines },
      metric,
      40,
      dayOf,
    );
    const blanks = (count: number): string => ' '.repeat(count);
    expect(drawn.split('\n')).toEqual([
      `60 °C ${blanks(30)}●`,
      '58 °C',
      `56 °C ${'·'.repeat(31)} a`,
      '54 °C',
      '52 °C',
      `50 °C ${blanks(8)}○`,
      '48 °C',
      '46 °C',
      '44 °C',
      '42 °C',
      '40 °C ●',
      `${blanks(6)}${blanks(15)}^`,
      `${blanks(6)}07-01${blanks(21)}07-05`,
      'a  55 °C: from here the day counts as sanitising',
    ]);
  });

  it('is told in the reader’s units, at steps that read off easily', () => {
    const drawn = drawSeries({ series: [reading(1, 40), reading(5, 60)], acts: [], lines: [] }, us, 80, dayOf);
    expect(drawn.split('\n')[0]).toMatch(/^140 °F/u);
    expect(drawn).toContain('105 °F');
  });

  it('is nothing without a reading', () => {
    expect(drawSeries({ series: [], acts: [turned], lines }, metric, 80, dayOf)).toBe('');
  });

  it('is never wider than the columns, never taller than 20 lines, and holds every reading', () => {
    const readings = fc.array(
      fc.record({ day: fc.integer({ min: 1, max: 30 }), temp: fc.double({ min: -40, max: 1500, noNaN: true }) }),
      {
        minLength: 1,
        maxLength: 40,
      },
    );
    fc.assert(
      fc.property(readings, fc.integer({ min: 40, max: 120 }), (list, columns) => {
        const series = list.map(({ day, temp }) => reading(day, temp));
        const rows = drawSeries({ series, acts: [turned], lines: [] }, metric, columns, dayOf).split('\n');
        expect(Math.max(...rows.map((row) => row.length))).toBeLessThanOrEqual(columns);
        expect(rows.length).toBeLessThanOrEqual(20);
        const signs = rows.join('').split('●').length - 1;
        expect(signs).toBeGreaterThan(0);
        expect(signs).toBeLessThanOrEqual(series.length);
      }),
    );
  });
});
