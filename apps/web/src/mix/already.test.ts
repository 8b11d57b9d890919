import { vocabularyOf } from '@loamwright/advisor';
import { fold } from '@loamwright/daybook';
import { meant } from '@loamwright/science';
import { createSpeaker } from '@loamwright/words';
import { describe, expect, it } from 'vitest';
import { alreadyThere } from './already.ts';

const vocabulary = vocabularyOf(createSpeaker({ locale: 'en', system: 'metric' }), fold([]));
const there = (typed: string, ...without: string[]): readonly string[] =>
  alreadyThere(meant(typed, vocabulary), without);

describe('what lies at the bins already', () => {
  it('is known by any of its names', () => {
    expect(there('straw', 'straw', 'hay-grass')).toEqual(['straw']);
    expect(there('cereal straw', 'straw')).toEqual(['straw']);
    expect(there('straw', 'hay-grass')).toEqual([]);
  });

  it('is picked out where a name may mean several', () => {
    const browns = meant('browns', vocabulary);
    if (browns.is !== 'which') throw new Error('browns are several');
    const [one = ''] = browns.ids;
    expect(there('browns', one)).toEqual([one]);
  });

  it('is nothing while nothing is typed, or where nothing goes by the name', () => {
    expect(alreadyThere(null, ['straw'])).toEqual([]);
    expect(there('xqzzt', 'straw')).toEqual([]);
  });
});
