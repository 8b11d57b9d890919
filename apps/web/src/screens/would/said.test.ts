import '@loamwright/words/later';
import { createDraws, type HeapRunAnswer, heapRun } from '@loamwright/science';
import { createSpeaker } from '@loamwright/words';
import { describe, expect, it } from 'vitest';
import { changeSaid, differenceSaid, doneSaid, hereSaid, momentOf, temperature } from './said.ts';

const metric = createSpeaker({ locale: 'en', system: 'metric' });
const us = createSpeaker({ locale: 'en', system: 'us' });

/** The example of the calculation, shorter and of fewer heaps. */
function followed(): HeapRunAnswer {
  const outcome = heapRun.run({ ...heapRun.example, members: 8, days: 12 }, { draws: createDraws(64) });
  if (!outcome.ok) throw new RangeError('the example can be followed');
  return outcome.value;
}

const answer = followed();
const heats = (met: number, of = 64): HeapRunAnswer => ({ ...answer, heats: { ...answer.heats, met, of } });

describe('a temperature of a model', () => {
  it('is told in the reader’s degrees, whole', () => {
    const told = (speaker: typeof metric): string => {
      const { figure, unit, as } = temperature(speaker, { p10: 49.6, p50: 61.26, p90: 68.4 });
      return `${speaker.likely(figure, unit, as)}, ${speaker.range(figure, unit, as)}`;
    };
    expect(told(metric)).toBe('61 °C, 50–68 °C');
    expect(told(us)).toBe('142 °F, 121–155 °F');
  });
});

describe('where a heap stands', () => {
  it('is told with its air, said or read', () => {
    const here = { air_degC: 12, walls: 'pallet', cover: 'open' } as const;
    expect(us.tell(hereSaid(us, here))).toBe(
      'That is with air of 54 °F, pallets around it and nothing on it, of stuff as warm as the air.',
    );
    expect(us.tell(hereSaid(us, { ...here, air_degC: 'as-read' }))).toBe(
      'That is with the air as read beside it, pallets around it and nothing on it, of stuff as warm as the air.',
    );
    expect(us.tell(hereSaid(us, { ...here, start_degC: 30 }))).toMatch(/, of stuff that comes at 86 °F\.$/u);
  });

  it('is told with what is done to it on the way, by kind', () => {
    const turn = { at_day: 6, act: 'turn' } as const;
    expect(doneSaid(metric, [turn, { at_day: 9, act: 'stand', cover: 'straw' }, { ...turn, at_day: 12 }])).toBe(
      'Then it goes as it was written down: turned 2 times and cover or place changed once.',
    );
  });
});

describe('what one thing otherwise comes to', () => {
  const hot = (of: HeapRunAnswer, days: number): HeapRunAnswer => ({
    ...of,
    hotDays_day: { p10: 0, p50: days, p90: 12.2 },
  });

  it('is told as a difference in heaps and in hot days', () => {
    expect(differenceSaid(metric, hot(heats(41), 5), hot(heats(50), 9.1))).toBe(
      'So 50 of 64 heaps get hot, 9 more than as it stands; it stays hot for about 4 days longer, 9 days in all (0–12).',
    );
    expect(differenceSaid(metric, hot(heats(41), 5), hot(heats(40), 4))).toBe(
      'So 40 of 64 heaps get hot, 1 fewer than as it stands; it stays hot for about 1 day less, 4 days in all (0–12).',
    );
    expect(differenceSaid(metric, hot(heats(0), 0.1), hot(heats(0), 0.3))).toBe(
      'So 0 of 64 heaps get hot, just as many; it stays hot for no day, as before (0–12).',
    );
  });

  it('has water in the reader’s own measure', () => {
    const change = { input: { ...heapRun.example }, water_L: 50 };
    expect(changeSaid(metric, { ...change, id: 'wetter' })).toBe('50 L more water');
    expect(changeSaid(us, { ...change, id: 'drier' })).toBe('13 gal less water');
  });
});

describe('a heap on a day', () => {
  it('is the moment nearest to it, from the core outwards', () => {
    const moment = momentOf(answer, 5);
    expect(answer.day[moment.at]).toBeCloseTo(5, 9);
    const shells = answer.shells_degC[moment.at];
    expect([moment.core_degC, moment.outside_degC]).toEqual([shells?.[0], shells?.at(-1)]);
    expect(moment.range_degC.low).toBeLessThanOrEqual(moment.range_degC.high);
  });
});
