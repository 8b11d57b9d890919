import { describe, expect, it } from 'vitest';
import { createDraws } from '../../estimate/index.ts';
import { type HoldingBalance, type HoldingBalanceInput, holdingBalance } from './holding-balance.ts';

function answer(input: HoldingBalanceInput): HoldingBalance {
  const outcome = holdingBalance.run(input, { draws: createDraws() });
  if (!outcome.ok) throw new RangeError(JSON.stringify(outcome.problems));
  return outcome.value;
}

const row = (found: HoldingBalance, id: string) => {
  const one = found.rows.find((each) => each.id === id);
  if (one === undefined) throw new RangeError(id);
  return one;
};

const scraps = {
  heaped: [
    { material: 'kitchen-scraps', amount: { mass_kg: 300 } },
    { material: 'grass-clippings', amount: { mass_kg: 60 } },
    { material: 'hedge-chippings', amount: { mass_kg: 40 } },
  ],
  straight: [],
  crops: [],
};

describe('from scrap to crop', () => {
  // Andersen et al. 2011, home composting of food and garden waste: 63 to 77 % of the carbon lost; the shares of waste are ours.
  it('loses as much carbon in the heap as home composting did, and no phosphorus', () => {
    const found = answer(scraps);
    const carbon = row(found, 'carbon');
    const share = carbon.lostInHeap_kg.p50 / carbon.heaped_kg.p50;
    expect(share).toBeGreaterThan(0.63);
    expect(share).toBeLessThan(0.77);
    expect(row(found, 'phosphorus').lostInHeap_kg.p90).toBeCloseTo(0, 9);
  });

  it('where nothing was counted as spread, all compost went on, and nothing is left over', () => {
    expect(row(answer(scraps), 'nitrogen').left_kg).toEqual({ p10: 0, p50: 0, p90: 0 });
  });

  it('compost that was not spread is a finding of its own, and so is more than there can be', () => {
    const little = answer({ ...scraps, spread: { mass_kg: 10 } });
    const much = answer({ ...scraps, spread: { mass_kg: 400 } });
    expect(row(little, 'dry').left_kg.p10).toBeGreaterThan(0);
    expect(row(much, 'dry').left_kg.p90).toBeLessThan(0);
  });

  it('names the greatest leak and what stops it', () => {
    expect(answer(scraps).leaks[0]?.leak).toBeDefined();
    const manure = answer({
      heaped: [],
      straight: [{ material: 'hen-manure', amount: { mass_kg: 50 }, placed: 'mulched' }],
      crops: [{ crop: 'kale', area_m2: 200 }],
    });
    expect(manure.act).toBe('work-in');
    expect(manure.workedIn_kg.p50).toBeGreaterThan(0);
    expect(answer({ heaped: [], straight: [], crops: [] }).act).toBe('none');
  });
});
