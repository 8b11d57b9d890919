import '@loamwright/words/later';
import { createDraws, type HeapRunAnswer, heapRun } from '@loamwright/science';
import { createSpeaker } from '@loamwright/words';
import { describe, expect, it } from 'vitest';
import { shapeIn, wouldInput } from './asked.ts';
import { answerSaid, changeSaid, differenceSaid, momentOf, percent, whySaid } from './said.ts';

const metric = createSpeaker({ locale: 'en', system: 'metric' });
const us = createSpeaker({ locale: 'en', system: 'us' });

/** The example of the calculation, shorter and of fewer heaps. */
function followed(): HeapRunAnswer {
  const input = wouldInput(heapRun.example, shapeIn({ width_m: 1.2, depth_m: 1.2, height_m: 1, wall: 'pallets' }), {
    air_degC: 12,
    walls: 'pallet',
    cover: 'open',
  });
  const outcome = heapRun.run({ ...input, members: 8, days: 12 }, { draws: createDraws(64) });
  if (!outcome.ok) throw new RangeError('the example can be followed');
  return outcome.value;
}

const answer = followed();
const tell = (speaker: typeof metric, of: HeapRunAnswer): string =>
  answerSaid(speaker, of)
    .map((said) => speaker.tell(said))
    .join(' ');
const heats = (met: number, of = 64): HeapRunAnswer => ({ ...answer, heats: { ...answer.heats, met, of } });

describe('what a heap would do, told', () => {
  it('counts the heaps and claims nothing for certain', () => {
    expect(tell(metric, heats(55))).toContain('It should get hot, in 55 of 64 heaps that it may turn out to be');
    expect(tell(metric, heats(41))).toContain('It may get hot or stay cold: it gets hot in 41 of 64 heaps');
    expect(tell(metric, heats(9))).toContain('It is likely to stay cold: it gets hot in 9 of 64 heaps');
    expect(tell(metric, heats(0))).toContain('hardly ever, in 0 of 64 heaps');
    expect(tell(metric, heats(64))).toContain('all but certainly, in 64 of 64 heaps');
  });

  it('is told in the reader’s degrees, whole', () => {
    const { p50 } = answer.peak_degC;
    expect(tell(metric, heats(41))).toContain(`${Math.round(p50)} °C in the core`);
    expect(tell(us, heats(41))).toContain(`${Math.round(p50 * 1.8 + 32)} °F in the core`);
  });

  it('asks for a turn only where most of the heaps that heat do', () => {
    const { firstTurn_day: _day, ...without } = heats(41);
    expect(tell(metric, without)).toContain('most ask for no turn in 12 days');
    const days = { p10: 5.2, p50: 7.4, p90: 11 };
    expect(tell(metric, { ...without, firstTurn_day: days })).toContain('it first asks for a turn about day 7');
  });

  it('has a sentence for every reason', () => {
    for (const said of whySaid(metric, answer)) expect(metric.tell(said)).not.toMatch(/[{}]|NaN|undefined/u);
  });

  it('never loses less than nothing', () => {
    expect(percent(-0.6)).toBe('0 %');
    expect(percent(37.6)).toBe('38 %');
  });
});

describe('what one thing otherwise comes to', () => {
  const hot = (of: HeapRunAnswer, days: number): HeapRunAnswer => ({
    ...of,
    hotDays_day: { ...of.hotDays_day, p50: days },
  });

  it('is told as a difference in heaps and in hot days', () => {
    expect(differenceSaid(metric, hot(heats(41), 5), hot(heats(50), 9.1))).toBe(
      'So 50 of 64 heaps get hot, 9 more than as it stands; it stays hot for about 4 days longer, 9 days in all.',
    );
    expect(differenceSaid(metric, hot(heats(41), 5), hot(heats(40), 4))).toBe(
      'So 40 of 64 heaps get hot, 1 fewer than as it stands; it stays hot for about 1 day less, 4 days in all.',
    );
    expect(differenceSaid(metric, hot(heats(0), 0.1), hot(heats(0), 0.3))).toBe(
      'So 0 of 64 heaps get hot, just as many; it stays hot for no day, as before.',
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
