import { describe, expect, it } from 'vitest';
import { createSpeaker, outline } from './index.ts';

const speaker = createSpeaker({ locale: 'en', system: 'metric' });

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
