import fc from 'fast-check';
import loadHighs from 'highs';
import { describe, expect, it } from 'vitest';
import { createDraws } from '../estimate/index.ts';
import { highsSolver } from '../solver/index.ts';
import { judge, judgedQuantities } from './bands.ts';
import type { Ingredient } from './ingredient.ts';
import { type MixBalance, mixBalance } from './mix-balance.ts';
import { mixSolve } from './mix-solve.ts';
import type { Mend, MixSolution } from './solution.ts';
import type { Standing } from './standing.ts';
import type { StockLine } from './stock.ts';

const needs = { draws: createDraws(), solver: highsSolver(await loadHighs()) };

const stuffs = [
  'straw',
  'autumn-leaves',
  'coffee-grounds',
  'grass-clippings',
  'goat-bedding',
  'kitchen-scraps',
  'apple-pomace',
  'hedge-chippings',
  'rabbit-droppings',
  'urine',
];
const lines: fc.Arbitrary<StockLine> = fc
  .tuple(fc.constantFrom(...stuffs), fc.integer({ min: 1, max: 12 }), fc.constantFrom('bucket-20l', 'barrow'))
  .map(([material, count, measure]) => ({ material, amount: { measure, count } }));
const stocks = fc.uniqueArray(lines, { minLength: 1, maxLength: 4, selector: ({ material }) => material });

const solved = (stock: readonly StockLine[], more: object = {}): MixSolution => {
  const outcome = mixSolve.run({ stock, alternatives: false, ...more }, needs);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
};

/** What a mend comes to when its amounts are judged as they are told. */
function applied(stock: readonly StockLine[], { counts, fetch, water_L }: Mend): MixBalance {
  const onHand = stock.flatMap(({ material, amount }, i): readonly Ingredient[] =>
    (counts[i] ?? 0) > 0 ? [{ material, amount: { ...amount, count: counts[i] ?? 0 } as Ingredient['amount'] }] : [],
  );
  const fetched = fetch
    .filter((one) => !one.onHand)
    .map(({ material, measure, count }): Ingredient => ({ material, amount: { measure, count } }));
  const outcome = mixBalance.run({ ingredients: [...onHand, ...fetched], water_L }, needs);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

function expectAgreed(standing: Standing, balance: MixBalance): void {
  const figures = judgedQuantities.map((quantity) => balance[quantity]);
  expect(figures.every((judged) => judged?.verdict === 'in')).toBe(standing !== 'poor');
  if (standing === 'good') expect(figures.map((judged) => judged?.lean)).toEqual(['in', 'in', 'in', 'in']);
}

describe('one rule for the word on a mix and on each of its figures', () => {
  it('a mix is never told as reasonable beside a figure that is too high or too low, nor as poor without one', () => {
    fc.assert(
      fc.property(stocks, (stock) => {
        const { standing, balance } = solved(stock, { mend: false });
        if (balance === undefined) expect(standing).toBe('nothing');
        else expectAgreed(standing, balance);
      }),
      { seed: 301, numRuns: 60 },
    );
  });

  it('a mend is judged by its amounts as it is told', () => {
    fc.assert(
      fc.property(stocks, (stock) => {
        for (const mend of solved(stock).mends) expectAgreed(mend.standing, applied(stock, mend));
      }),
      { seed: 302, numRuns: 25 },
    );
  });

  it('mends are counted as a person would fetch them: halves of a few, whole ones of some, fives of many', () => {
    fc.assert(
      fc.property(stocks, (stock) => {
        for (const { count } of solved(stock, { step: 'half' }).mends.flatMap(({ fetch }) => fetch)) {
          const finest = count < 5 ? 0.25 : count < 20 ? 1 : 5;
          expect(count % finest).toBeCloseTo(0, 9);
        }
      }),
      { seed: 303, numRuns: 25 },
    );
  });

  it('bulky stuff is fetched in barrows, grounds in buckets, whatever else the grower counts in', () => {
    const { mends } = solved([{ material: 'straw', amount: { measure: 'straw-bale', count: 6 } }]);
    const fetched = mends.flatMap(({ fetch }) => fetch.filter(({ onHand }) => !onHand));
    expect(fetched.length).toBeGreaterThan(0);
    for (const { material, measure } of fetched) {
      expect(measure).toBe(material === 'coffee-grounds' ? 'bucket-20l' : 'barrow');
    }
  });

  it('nobody is sent for sixty buckets of what there are three of', () => {
    const { mends } = solved([{ material: 'coffee-grounds', amount: { measure: 'bucket-20l', count: 3 } }]);
    for (const { count, onHand } of mends.flatMap(({ fetch }) => fetch))
      if (onHand) expect(count).toBeLessThanOrEqual(9);
  });

  it('edges are soft by half an edge for both words', () => {
    const at = (value: number) => judge('moisture_pctWet', Float64Array.of(value));
    expect([at(67.4).verdict, at(67.6).verdict]).toEqual(['in', 'too-high']);
    expect([at(62.4).lean, at(62.6).lean]).toEqual(['in', 'too-high']);
  });

  it('where nobody said a size, only what would heat is lacking', () => {
    const said = solved([{ material: 'straw', amount: { measure: 'barrow', count: 2 } }], { wanted_m3: 2 });
    expect(said.lacks.map(({ code }) => code)).toContain('volume');
    expect(solved([]).lacks).toEqual([]);
    const unsaid = solved([{ material: 'straw', amount: { measure: 'barrow', count: 2 } }]);
    expect(unsaid.sizeSaid).toBe(false);
    expect(unsaid.lacks.map(({ code }) => code)).toContain('volume-to-heat');
    expect(unsaid.lacks.map(({ code }) => code)).not.toContain('volume');
  });
});
