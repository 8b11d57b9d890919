import fc from 'fast-check';
import loadHighs from 'highs';
import { describe, expect, it } from 'vitest';
import { createDraws } from '../estimate/index.ts';
import { highsSolver, type MilpSolver } from '../solver/index.ts';
import { mixSolve } from './mix-solve.ts';
import type { MixSolution, MixSolveInput } from './solution.ts';
import type { StockLine } from './stock.ts';

const solver: MilpSolver = highsSolver(await loadHighs());
const needs = { draws: createDraws(), solver };

function solve(input: MixSolveInput): MixSolution {
  const outcome = mixSolve.run(input, needs);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

const buckets = (material: string, count: number, more: Partial<StockLine> = {}): StockLine => ({
  material,
  amount: { measure: 'bucket-20l', count },
  ...more,
});

/** Measures used, by material. */
function used({ use }: MixSolution): Readonly<Record<string, number>> {
  return Object.fromEntries(use.map(({ material, count }) => [material, count]));
}

describe('a stock that can make a good heap', () => {
  const solution = solve(mixSolve.example);

  it('fills the bay within every preferred band, and needs nothing', () => {
    expect(solution.standing).toBe('good');
    expect(solution.lacks).toEqual([]);
    expect(solution.mends).toEqual([]);
    expect(solution.balance?.carbonToNitrogen_ratio?.lean).toBe('in');
    expect(solution.balance?.moisture_pctWet.lean).toBe('in');
    expect(solution.balance?.volume_m3.p50).toBeGreaterThan(0.9);
    expect(mixSolve.output.safeParse(solution).success).toBe(true);
  });

  it('tells half a barrow as half of one, and uses three half-full buckets as they come', () => {
    const stock: readonly StockLine[] = [
      { material: 'goat-bedding', amount: { measure: 'barrow', count: 1, fill: 'half' }, atLeast: 0.5 },
      { material: 'coffee-grounds', amount: { measure: 'bucket-20l', count: 3, fill: 'half' }, atLeast: 1.5 },
      buckets('straw', 9),
    ];
    expect(used(solve({ stock }))).toMatchObject({ 'goat-bedding': 0.5, 'coffee-grounds': 1.5 });
  });

  it('a stock smaller than a measure is not lost to whole measures', () => {
    const stock: readonly StockLine[] = [
      { material: 'coffee-grounds', amount: { measure: 'bucket-20l', count: 0.5 }, atLeast: 0.5 },
      { material: 'goat-bedding', amount: { measure: 'bucket-20l', count: 0.3 }, atLeast: 0.3 },
      buckets('straw', 9),
    ];
    const found = used(solve({ stock, step: 'whole', wanted_m3: 0.1 }));
    expect(found).toMatchObject({ 'coffee-grounds': 0.5, 'goat-bedding': 0.3 });
    expect(Number.isInteger(found['straw'])).toBe(true);
  });

  it('all of half a barrow is as much as there is, however full that was', () => {
    const half: StockLine = { material: 'goat-bedding', amount: { measure: 'barrow', count: 1, fill: 'half' } };
    const { use, balance } = solve({ stock: [{ ...half, useAll: true }, buckets('straw', 9)], wanted_m3: 0.2 });
    expect(use[0]).toMatchObject({ count: 0.5, left: 0, enough: { met: 256, of: 256 } });
    // The doubt of a half-full barrow, 0.4 to 0.6 of one, stays in the balance.
    const { p10 = 0, p90 = 0 } = balance?.ingredients[0]?.volume_m3 ?? {};
    expect(p90 / p10).toBeGreaterThan(1.3);
  });

  it('judges it over the draws: a chance, not a promise', () => {
    const { met = 0, of = 0 } = solution.balance?.carbonToNitrogen_ratio?.chances.in ?? {};
    expect(of).toBe(256);
    expect(met).toBeGreaterThan(128);
    expect(met).toBeLessThan(256);
  });

  it('says of every material how much is left and what held it back', () => {
    for (const { left, because } of solution.use) expect(because === undefined).toBe(left === 0);
    expect(solution.use.find(({ material }) => material === 'apple-pomace')?.because).toBe('too-wet');
  });

  it('every material carries its permit and reason', () => {
    const bedding = solution.use.find(({ material }) => material === 'goat-bedding');
    expect(bedding).toMatchObject({ permit: 'allowed', reason: 'manure-is-raw-until-proved' });
    expect(solution.balance?.cautions).toContain('manure-pathogens');
  });

  it('is the same each time', () => {
    expect(solve(mixSolve.example)).toEqual(solution);
  });
});

describe('poor stocks are normal cases', () => {
  it('nothing but grass: the nearest is told, with what is wrong and what mends it', () => {
    const solution = solve({ stock: [buckets('grass-clippings', 10)] });
    expect(solution.standing).toBe('poor');
    expect(used(solution)).toEqual({ 'grass-clippings': 10 });
    expect(solution.water_L).toBe(0);
    expect(solution.lacks.map(({ code }) => code)).toEqual(['carbon', 'too-much-water', 'volume-to-heat']);
    const leaves = solution.mends.find(({ fetch }) => fetch[0]?.material === 'autumn-leaves');
    expect(leaves).toMatchObject({ standing: 'small', fetch: [{ measure: 'bucket-20l', onHand: false }] });
    // O01 of the question bank: about one to two volumes of leaves to one of grass.
    expect(leaves?.fetch[0]?.count).toBeGreaterThanOrEqual(10);
    expect(leaves?.fetch[0]?.count).toBeLessThanOrEqual(20);
  });

  it('only one bucket of greens: a small heap that is right, and what is left over', () => {
    const solution = solve({ stock: [buckets('grass-clippings', 1), buckets('autumn-leaves', 20)] });
    expect(solution.standing).toBe('small');
    expect(used(solution)['grass-clippings']).toBe(1);
    const leaves = solution.use.find(({ material }) => material === 'autumn-leaves');
    expect(leaves?.count).toBeGreaterThanOrEqual(2);
    expect(leaves).toMatchObject({ because: 'too-much-carbon', left: 20 - (leaves?.count ?? 0) });
    expect(solution.balance?.carbonToNitrogen_ratio?.verdict).toBe('in');
    expect(solution.mends.some(({ fetch }) => fetch[0]?.material === 'grass-clippings' && fetch[0].onHand)).toBe(true);
  });

  it('too much grass for the leaves: grass is left over, more leaves or straw would mend it', () => {
    const solution = solve({ stock: [buckets('grass-clippings', 20), buckets('autumn-leaves', 4)] });
    const grass = solution.use.find(({ material }) => material === 'grass-clippings');
    expect(grass?.left).toBeGreaterThan(0);
    expect(grass?.because).toBe('too-wet');
    const mended = solution.mends.flatMap(({ fetch }) => fetch.map(({ material }) => material));
    expect(mended).toContain('autumn-leaves');
    expect(mended).toContain('straw');
    expect(solution.mends[0]?.standing).toBe('good');
  });

  it('nothing on hand: what to fetch for a good heap', () => {
    const solution = solve({ stock: [] });
    expect(solution).toMatchObject({ standing: 'nothing', use: [], water_L: 0 });
    expect(solution.balance).toBeUndefined();
    expect(solution.mends.length).toBeGreaterThan(1);
    for (const { fetch, standing } of solution.mends) {
      expect(fetch).toHaveLength(2);
      expect(standing).toBe('good');
    }
  });

  it('everything woody: too much carbon, and greens or manure mend it', () => {
    const solution = solve({
      stock: [buckets('wood-chips', 20), buckets('sawdust', 5), buckets('corrugated-cardboard', 10)],
    });
    expect(solution.standing).toBe('poor');
    expect(solution.lacks.map(({ code }) => code)).toContain('nitrogen');
    expect(solution.water_L).toBeGreaterThan(0);
    expect(['coffee-grounds', 'horse-manure-straw', 'grass-clippings']).toContain(
      solution.mends[0]?.fetch[0]?.material,
    );
  });

  it('everything wet: what can be used is used, and dry stuff mends it', () => {
    const solution = solve({ stock: [buckets('grass-clippings', 15), buckets('apple-pomace', 10)] });
    expect(solution.standing).toBe('poor');
    expect(solution.lacks.map(({ code }) => code)).toContain('too-much-water');
    expect(['straw', 'autumn-leaves', 'wood-shavings', 'corrugated-cardboard']).toContain(
      solution.mends[0]?.fetch[0]?.material,
    );
  });

  it('one pail of scraps with barrows of straw: half a barrow, where a whole one is too much', () => {
    const solution = solve({
      stock: [
        { material: 'kitchen-scraps', amount: { measure: 'bucket-20l', count: 1 } },
        { material: 'straw', amount: { measure: 'barrow', count: 5 } },
      ],
      wanted_m3: 0.2,
    });
    expect(used(solution)).toMatchObject({ 'kitchen-scraps': 1 });
    expect(used(solution)['straw']).toBeLessThanOrEqual(1);
  });

  it('amounts nobody measured do as well, and their doubt is told', () => {
    const solution = solve({
      stock: [
        { material: 'straw', amount: { vague: 'some' } },
        { material: 'goat-bedding', amount: { measure: 'barrow', count: 'several' } },
      ],
      wanted_m3: 0.3,
    });
    const bedding = solution.use.find(({ material }) => material === 'goat-bedding');
    expect(bedding?.enough.of).toBe(256);
    expect(bedding?.enough.met).toBeLessThan(256);
  });
});

describe('the grower’s limits are kept', () => {
  const stock = mixSolve.example.stock;
  const withFirst = (more: Partial<StockLine>): MixSolution =>
    solve({ ...mixSolve.example, stock: stock.map((line, i) => (i === 0 ? { ...line, ...more } : line)) });

  it('at most, at least, keep back, use it all', () => {
    expect(used(withFirst({ atMost: 2 }))['straw']).toBeLessThanOrEqual(2);
    expect(used(withFirst({ atLeast: 8 }))['straw']).toBe(8);
    const kept = withFirst({ keepBack: 5 });
    expect(used(kept)['straw']).toBeLessThanOrEqual(3);
    const odd = solve({
      stock: [buckets('grass-clippings', 3.3, { useAll: true }), buckets('autumn-leaves', 30)],
      wanted_m3: 0.3,
    });
    expect(used(odd)['grass-clippings']).toBeCloseTo(3.3, 9);
    expect(odd.use[0]?.left).toBe(0);
  });

  it('whole measures stay whole, halves are halves', () => {
    const whole = solve({ ...mixSolve.example, step: 'whole' });
    for (const { count } of whole.use) expect(Number.isInteger(count)).toBe(true);
    const halves = solve({ ...mixSolve.example, step: 'half' });
    for (const { count } of halves.use) expect(Number.isInteger(2 * count)).toBe(true);
    expect(halves.use.some(({ count }) => !Number.isInteger(count))).toBe(true);
  });

  it('no more water than there is', () => {
    const dry = { stock: [buckets('hay-legume', 40), buckets('straw', 20)], wanted_m3: 0.5 };
    expect(solve(dry).water_L).toBeGreaterThan(5);
    expect(solve({ ...dry, mostWater_L: 5 }).water_L).toBeLessThanOrEqual(5);
    expect(solve({ ...dry, mostWater_L: 5 }).lacks.map(({ code }) => code)).toContain('water');
  });

  it('another goal is another mix', () => {
    const dry = solve({
      ...mixSolve.example,
      goals: { moisture_pctWet: { preferred: { low: 40, high: 45 }, reasonable: { low: 35, high: 50 } } },
    });
    expect(dry.balance?.moisture_pctWet.value.p50).toBeLessThan(50);
  });

  it('a limit beyond the stock is told with its place', () => {
    const outcome = mixSolve.run({ stock: [buckets('straw', 3, { atLeast: 4 })] }, needs);
    expect(outcome).toMatchObject({ ok: false, problems: [{ code: 'too-big', path: 'stock[0].atLeast', found: '4' }] });
  });

  it('unknown candidates and a missing solver are told', () => {
    expect(mixSolve.run({ stock: [], candidates: ['strow'] }, needs)).toMatchObject({
      ok: false,
      problems: [{ code: 'unknown-material', path: 'candidates[0]' }],
    });
    expect(mixSolve.run({ stock: [] }, { draws: needs.draws })).toMatchObject({
      ok: false,
      problems: [{ code: 'no-solver' }],
    });
  });

  it('without mends on request', () => {
    expect(solve({ stock: [buckets('grass-clippings', 10)], mend: false }).mends).toEqual([]);
  });
});

describe('whatever is on hand', () => {
  const materials = [
    'straw',
    'grass-clippings',
    'coffee-grounds',
    'wood-chips',
    'apple-pomace',
    'wood-ash',
    'hen-manure',
    'urine',
  ];

  it('there is an answer that keeps within the stock', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.tuple(fc.constantFrom(...materials), fc.integer({ min: 0, max: 15 })), {
          maxLength: 4,
          selector: ([material]) => material,
        }),
        (lines) => {
          const solution = solve({ stock: lines.map(([material, count]) => buckets(material, count)), mend: false });
          for (const [i, { count, left }] of solution.use.entries()) {
            const onHand = lines[i]?.[1] ?? Number.NaN;
            expect(count).toBeLessThanOrEqual(onHand);
            expect(count + left).toBeCloseTo(onHand, 9);
          }
          expect(mixSolve.output.safeParse(solution).success).toBe(true);
        },
      ),
      { numRuns: 40 },
    );
  });
});
