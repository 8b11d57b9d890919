import type { Amount } from '@loamwright/science';
import { createSpeaker } from '@loamwright/words';
import { describe, expect, it } from 'vitest';
import { sayAmount, someOf } from './amount.ts';

const us = createSpeaker({ locale: 'en', system: 'us' });
const metric = createSpeaker({ locale: 'en', system: 'metric' });

describe('an amount as a grower says it', () => {
  const said: readonly (readonly [Amount, string])[] = [
    [{ measure: 'bucket-5gal', count: 9 }, '9 buckets'],
    [{ measure: 'bucket-5gal', count: 1 }, '1 bucket'],
    [{ measure: 'barrow', count: 0.5 }, 'half a barrow'],
    [{ measure: 'barrow', count: { p10: 1, p50: 2, p90: 3 } }, '2 barrows'],
    [{ measure: 'barrow', count: 2, packed: true }, '2 barrows, pressed down,'],
    [{ measure: 'barrow', count: 2, fill: 'heaped' }, '2 barrows, heaped,'],
    [{ measure: 'barrow', count: 2, fill: 'level' }, '2 barrows'],
    [{ vague: 'a-lot' }, 'a lot'],
  ];
  for (const [amount, words] of said) {
    it(`is “${words}”`, () => {
      expect(sayAmount(us, amount)).toBe(words);
    });
  }

  it('is weighed in the reader’s own units', () => {
    expect(sayAmount(metric, { mass_kg: 10 })).toBe('10 kg');
    expect(sayAmount(us, { mass_kg: 10 })).toBe('22 lb');
  });

  it('names a measure and a material of the grower’s own by their ids', () => {
    expect(sayAmount(us, { measure: 'milk-crate', count: 3 })).toBe('3 milk-crate');
    expect(us.tell(someOf(us, 'pond-slime', '3 pails'))).toBe('3 pails of pond-slime');
  });
});
