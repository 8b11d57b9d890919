import { createSpeaker } from '@loamwright/words';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { outline } from './outline.ts';
import { wrap } from './terminal.ts';
import { page } from './text.ts';

const speaker = createSpeaker({ locale: 'en', system: 'metric' });

describe('wrapped text', () => {
  it('breaks at blanks, and sets later lines in', () => {
    expect(wrap('- nine buckets of straw', 12, '  ')).toBe('- nine\n  buckets of\n  straw');
    expect(page(80, ['one'], ['two'])).toBe('one\ntwo');
  });

  it('keeps every word in its order, in lines no longer than the columns unless one word is', () => {
    const words = fc.array(fc.stringMatching(/^[a-z]{1,30}$/u), { minLength: 1, maxLength: 30 });
    fc.assert(
      fc.property(words, fc.integer({ min: 10, max: 100 }), (list, columns) => {
        const wrapped = wrap(list.join(' '), columns);
        expect(wrapped.split(/\s/u)).toEqual(list);
        for (const line of wrapped.split('\n')) {
          expect(line.length <= columns || !line.includes(' ')).toBe(true);
        }
      }),
    );
  });
});

describe('an outline', () => {
  it('tells an estimate with its range, a chance in words, a list with dashes', () => {
    const value = {
      water_L: { p10: 8.14, p50: 11.2, p90: 14 },
      enough: { met: 250, of: 256 },
      bands: [
        { id: 'a', low: null },
        { id: 'b', inside: { deep: true } },
      ],
      none: [],
    };
    expect(outline(value, speaker)).toBe(
      [
        'water_L: 11 (8.1–14)',
        'enough: more than 19 in 20 (250 of 256 draws)',
        'bands:',
        '  - id: a',
        '    low: null',
        '  - id: b',
        '    inside:',
        '      deep: true',
        'none: –',
      ].join('\n'),
    );
  });
});
