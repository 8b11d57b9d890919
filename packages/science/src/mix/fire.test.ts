import { describe, expect, it } from 'vitest';
import { createDraws } from '../estimate/index.ts';
import { mayBurn } from './fire.ts';
import { mixBalance } from './mix-balance.ts';

const balance = (count: number, water_L: number) => {
  const ingredients = [{ material: 'straw', amount: { measure: 'barrow', count } }];
  const outcome = mixBalance.run({ ingredients, water_L }, { draws: createDraws() });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
};

describe('the caution of fire', () => {
  it('is demanded by height (NC DEQ: 5 to 6 ft) or by dryness of what is large enough to heat (Buggeln 2008)', () => {
    expect(mayBurn({ volume_m3: 0.01, moisture_pctWet: 15 })).toBe(false);
    expect(mayBurn({ volume_m3: 1, moisture_pctWet: 55 })).toBe(false);
    expect(mayBurn({ volume_m3: 1, moisture_pctWet: 30 })).toBe(true);
    expect(mayBurn({ volume_m3: 2, height_m: 1.8, moisture_pctWet: 55 })).toBe(true);
    expect(mayBurn({ volume_m3: 4, moisture_pctWet: 55 })).toBe(true);
  });

  it('stands beside a dry stack of straw, not beside an armful, nor beside a damp heap', () => {
    expect(balance(20, 0).cautions).toContain('fire');
    expect(balance(1, 0).cautions).not.toContain('fire');
    expect(balance(12, 120).cautions).not.toContain('fire');
    expect(balance(1, 0).cautions).toContain('dust-spores');
  });
});
