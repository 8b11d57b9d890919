import {
  plausibilityOf,
  type ReadingActId,
  type ReadingCheckId,
  type ReadingNoteId,
  type ReadingReasonId,
  temperatureBands,
} from '@loamwright/science';
import { createSpeaker, isMessageKey } from '@loamwright/words';
import { describe, expect, it } from 'vitest';
import { doubtWords } from './index.ts';

const us = createSpeaker({ locale: 'en', system: 'us' });

/** The compiler sees to it that these lists are whole. */
const acts: Readonly<Record<ReadingActId, true>> = {
  'check-fire': true,
  turn: true,
  'turn-and-water': true,
  'turn-with-brown': true,
  'mix-in-brown': true,
  water: true,
  'probe-core': true,
  'turn-soon': true,
  'turn-once': true,
  'rest-and-turn-once': true,
  'leave-frozen': true,
  'leave-to-cure': true,
  enlarge: true,
  'add-nitrogen': true,
  ask: true,
  wait: true,
  leave: true,
};
const reasons: Readonly<Record<ReadingReasonId, true>> = {
  'may-be-fire': true,
  smoke: true,
  'was-fire-hot': true,
  'turning-limit': true,
  'turning-limit-dry': true,
  'turning-limit-ammonia': true,
  ammonia: true,
  airless: true,
  'too-wet': true,
  'too-dry': true,
  'not-the-core': true,
  'fell-far': true,
  fell: true,
  'hot-days-done': true,
  'cool-with-food': true,
  'easy-food-spent': true,
  'stays-cool-after-turn': true,
  'turned-lately': true,
  'cooling-band': true,
  'still-fed': true,
  frozen: true,
  'too-small': true,
  'slow-carbon': true,
  'cause-unknown': true,
  young: true,
  'still-rising': true,
  'in-the-bands': true,
};
const checks: Readonly<Record<ReadingCheckId, true>> = {
  'second-thermometer': true,
  'second-place': true,
  core: true,
  squeeze: true,
  smell: true,
  size: true,
  'what-went-in': true,
  'fresh-food': true,
  tomorrow: true,
};
const notes: Readonly<Record<ReadingNoteId, true>> = {
  'hottest-part': true,
  'not-the-core': true,
  'shallow-probe': true,
  'small-heap': true,
  'never-seen-hot': true,
};

describe('every id of a reading has its words', () => {
  it.each([
    ['reading.act', Object.keys(acts)],
    ['reading.because', Object.keys(reasons)],
    ['reading.waiting', Object.keys(reasons)],
    ['reading.check', Object.keys(checks)],
    ['reading.note', Object.keys(notes)],
    ['reading.band', temperatureBands.map(({ id }) => id)],
  ])('%s', (group, ids) => {
    expect(ids.filter((id) => !isMessageKey(`${group}.${id}`))).toEqual([]);
  });
});

describe('an odd reading', () => {
  it('is asked about in the unit it was typed in, and may stand', () => {
    const typed = { value: 300, unit: 'degF' } as const;
    const doubt = doubtWords(plausibilityOf(typed), typed);
    expect(doubt?.odd.map((saying) => us.tell(saying))).toEqual([
      '300 °F is hotter than a heap makes, unless it burns.',
    ]);
    expect(doubt?.suggestions.map(({ said }) => us.tell(said))).toEqual([
      'Did you mean 130 °F, with a 1 before it?',
      'Did you mean 100 °F, with one digit wrong?',
    ]);
    expect(doubt?.suggestions[0]?.suggested?.temp_degC).toBeCloseTo(54.44, 2);
    expect(us.tell(doubt?.keep ?? { key: 'reading.suggest.keep' })).toBe('If it is right, keep it as it is.');
    expect(doubt?.cautions).toEqual(['fire']);
  });

  it('on a metric phone, asks for °F', () => {
    const typed = { value: 148, unit: 'degC' } as const;
    const doubt = doubtWords(plausibilityOf(typed), typed);
    expect(us.tell(doubt?.suggestions[0]?.said ?? { key: 'reading.suggest.keep' })).toBe(
      'Did you mean 148 °F, the other unit?',
    );
  });

  it('that is not odd is not asked about', () => {
    const typed = { value: 148, unit: 'degF' } as const;
    expect(doubtWords(plausibilityOf(typed), typed)).toBeUndefined();
  });
});
