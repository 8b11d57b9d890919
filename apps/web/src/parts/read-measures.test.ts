import { createSpeaker } from '@loamwright/words';
import { describe, expect, it } from 'vitest';
import { readMeasures } from './read-measures.ts';

const us = createSpeaker({ locale: 'en', system: 'us' });
const measures = ['barrow', 'bucket-5gal'] as const;

describe('a count of a measure', () => {
  it.each([
    ['8 barrows', 'barrow', 8],
    ['1 Barrow', 'barrow', 1],
    ['2½ buckets', 'bucket-5gal', 2.5],
    ['1/2 barrow', 'barrow', 0.5],
  ])('%s', (typed, measure, count) => {
    expect(readMeasures(typed, measures, us)).toEqual({ measure, count });
  });

  it.each(['8', 'barrows', '8 bales', '-3 barrows', 'heaps', ''])('“%s” is none', (typed) => {
    expect(readMeasures(typed, measures, us)).toBeUndefined();
  });
});
