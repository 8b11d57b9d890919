import { fold } from '@loamwright/daybook';
import { testWriter } from '@loamwright/daybook/testing';
import {
  type Alternative,
  buildCard,
  createDraws,
  highsSolver,
  type MixBalanceInput,
  type MixSolution,
  type MixSolveInput,
  mixBalance,
  mixSolve,
} from '@loamwright/science';
import { createSpeaker, type Saying } from '@loamwright/words';
import loadHighs from 'highs';
import { describe, expect, it } from 'vitest';
import { type BalanceReport, balanceReport, buildCardReport, mixReport, tradeOffWords } from './index.ts';

const needs = { draws: createDraws(), solver: highsSolver(await loadHighs()) };
const us = createSpeaker({ locale: 'en', system: 'us' });
const empty = fold([]);

function solved(input: MixSolveInput): MixSolution {
  const outcome = mixSolve.run(input, needs);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

const barrows = (material: string, count: number) => ({ material, amount: { measure: 'barrow', count } }) as const;
const grass = solved({ stock: [barrows('grass-clippings', 6)] });

describe('a mix in words', () => {
  const solution = solved(mixSolve.example);
  const report = mixReport(solution, empty);

  it('is one sentence in which every amount can be touched', () => {
    const parts = us.tellParts(report.answer);
    const amounts = parts.filter(({ place }) => place?.endsWith('.amount'));
    expect(amounts.map(({ place }) => place)).toEqual(report.use.map((_, i) => `stuff[${i}].amount`));
    for (const [i, { count }] of report.use.entries()) expect(amounts[i]?.text).toContain(String(count));
    expect(us.tell(report.answer)).toMatch(/^Lay \d.*: .*\.$/u);
  });

  it('leaves out nothing that the solver used, left or lacks', () => {
    expect(report.use.map(({ material, count }) => [material, count])).toEqual(
      solution.use.filter(({ count }) => count > 0).map(({ material, count }) => [material, count]),
    );
    expect([...report.use, ...report.unused]).toHaveLength(solution.use.length);
    expect(report.lacks).toHaveLength(solution.lacks.length);
    expect(report.mends).toHaveLength(solution.mends.length);
  });

  it('says what is said about heating with its chances, and promises nothing', () => {
    const heat = report.heat.map((saying) => us.tell(saying)).join(' ');
    expect(heat).toContain('of 256 draws');
    expect(heat).toContain('It is no promise.');
    expect(us.tell(report.answer)).not.toMatch(/\bhot\b|Monday|Thursday|will be/u);
  });

  it('says why each material may go on', () => {
    for (const { permit } of report.use)
      expect(us.tell(permit.said)).toMatch(/: (allowed|only in a hot, logged heap) \(/u);
  });

  it('names a material of the grower’s own as they do', () => {
    const writer = testWriter();
    writer.write('material-described', 'our-litter', { name: 'Litter of the goats', like: 'goat-bedding' });
    const own = solved({
      stock: [{ ...barrows('our-litter', 4), like: 'goat-bedding' }, barrows('straw', 9)],
    });
    expect(us.tell(mixReport(own, fold(writer.entries)).answer)).toContain('of Litter of the goats');
  });
});

const october = solved({
  stock: [
    ['grass-clippings', 20],
    ['coffee-grounds', 4],
    ['goat-bedding', 8],
    ['rabbit-droppings', 3],
    ['apple-pomace', 10],
    ['hedge-chippings', 15],
    ['straw', 30],
    ['autumn-leaves', 25],
    ['corrugated-cardboard', 10],
    ['kitchen-scraps', 4],
  ].map(([material, count]) => ({
    material: String(material),
    amount: { measure: 'bucket-20l', count: Number(count) },
  })),
  bay: { width_m: 1, depth_m: 1, height_m: 1 },
});

describe('other answers in words', () => {
  const report = mixReport(october, empty);

  it('each is one sentence of gain and cost, and an answer of its own', () => {
    expect(report.others.length).toBeGreaterThan(0);
    expect(report.others.map(({ aim }) => aim)).toEqual(october.alternatives.map(({ aim }) => aim));
    for (const { tradeOff, answer } of report.others) {
      expect(us.tell(tradeOff)).toMatch(/^(?:Hotter|Keeps more nitrogen): [^.]*(?:\.\d[^.]*)*\.$/u);
      expect(us.tell(answer)).toMatch(/^Lay \d/u);
    }
  });

  it('tells the heaviest costs, no gain alone where there is one, and no cost that is too small to tell', () => {
    const [some] = october.alternatives;
    if (some === undefined) throw new Error('no other answer');
    const none: Alternative = {
      ...some,
      aim: 'hottest',
      fetch: [],
      tradeOff: {
        heat_times: 1.25,
        nitrogenAtRiskMore_pctNitrogen: 1,
        nitrogenKept_times: 1,
        mass_times: 1.05,
        airLess_pctVolume: 2,
        standsLess: false,
      },
    };
    const told = (change: Partial<Alternative>, tradeOff: Partial<Alternative['tradeOff']> = {}): string =>
      us.tell(tradeOffWords({ ...none, ...change, tradeOff: { ...none.tradeOff, ...tradeOff } }, empty));
    expect(told({})).toBe('Hotter: about 1.3 times the heat for its size, and these figures show no cost.');
    expect(told({}, { nitrogenAtRiskMore_pctNitrogen: 12 })).toBe(
      'Hotter: about 1.3 times the heat for its size, but 12 in a hundred more of its nitrogen may go.',
    );
    const three = told({}, { standsLess: true, mass_times: 1.4, airLess_pctVolume: 9 });
    expect(three).toContain('its figures are reasonable, not where handbooks prefer them and there is 1.4 times');
    expect(three).not.toContain('air');
    expect(told({ aim: 'keeps-nitrogen' }, { nitrogenAtRiskMore_pctNitrogen: -9, heat_times: 0.7 })).toBe(
      'Keeps more nitrogen: about 9 in a hundred less of it at risk, but it gives 0.7 times the heat for its size.',
    );
    const fetch = [
      {
        material: 'straw',
        measure: 'barrow',
        count: 3,
        onHand: false,
        permit: 'allowed',
        reason: 'plain-plant-stuff',
      } as const,
    ];
    expect(told({ fetch })).toContain('but it wants 3 barrows of straw fetched.');
  });

  it('what is to be fetched stands in the answer as well, and is no stock', () => {
    const fetched = {
      material: 'straw',
      measure: 'barrow',
      count: 3,
      onHand: false,
      permit: 'allowed',
      reason: 'plain-plant-stuff',
    } as const;
    const { use, answer } = mixReport({ ...october, fetch: [fetched] }, empty);
    expect(use.at(-1)).toMatchObject({ material: 'straw', stock: null, left: null });
    expect(us.tell(answer)).toContain('and 3 barrows of straw,');
  });
});

describe('what a mix is, beside the bands', () => {
  const balanceOf = (input: MixBalanceInput): BalanceReport => {
    const outcome = mixBalance.run(input, needs);
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
    return balanceReport(outcome.value, empty);
  };
  const told = (sayings: readonly Saying[]): string => sayings.map((saying) => us.tell(saying)).join(' ');
  const kg = (material: string, mass_kg: number) => ({ material, amount: { mass_kg } });

  it('every warning, starter and class of salt has its words', () => {
    const odd = balanceOf({
      ingredients: [
        kg('kitchen-scraps', 150),
        kg('grass-clippings', 60),
        kg('wood-ash', 5),
        kg('ground-limestone', 5),
        kg('finished-compost', 5),
        kg('soil', 5),
        kg('fermented-scraps', 5),
        kg('seaweed', 5),
      ],
      water_L: 30,
    });
    expect(told(odd.warnings)).toMatch(
      /Ash drives ammonia off .*Lime drives ammonia off .*may start sour.*mat within/u,
    );
    expect(told(odd.starters)).toMatch(/trials disagree.*slight evidence.*no gain found.*Of bought activators/u);
    expect(told(odd.more)).toMatch(/Sour at first: .*Alkaline.*wood ash/u);
    for (const [stuff, words] of [
      ['wood-ash', 'more than composts commonly do'],
      ['autumn-leaves', 'as composts commonly do'],
      ['wood-chips', 'composts commonly do'],
    ] as const) {
      expect(told(balanceOf({ ingredients: [kg(stuff, 50)] }).more)).toContain(words);
    }
  });

  it('says what is not published, and what a second figure rests on', () => {
    const more = told(balanceOf(mixBalance.example).more);
    expect(more).toContain('is not published for garden mixes');
    expect(more).toContain('Chandler 1980');
    expect(more).not.toMatch(/NaN|undefined/u);
  });

  it('names what was passed over by the season asked with', () => {
    const passed = { ...october, outOfSeason: ['grass-clippings'] };
    const { passedOver } = mixReport(passed, empty, { month: 1, hemisphere: 'north' });
    expect(passedOver === null ? '' : us.tell(passedOver)).toContain('(north of the equator): grass clippings.');
    expect(mixReport(october, empty, { month: 1, hemisphere: 'north' }).passedOver).toBeNull();
  });
});

describe('amounts are told as the grower means them', () => {
  const answer = (stock: MixSolveInput['stock']): string =>
    us.tell(mixReport(solved({ stock, wanted_m3: 0.2 }), empty).answer);
  const straw = { material: 'straw', amount: { measure: 'bucket-20l', count: 9 } } as const;

  it('half a barrow is half a barrow', () => {
    const told = answer([
      { material: 'goat-bedding', amount: { measure: 'barrow', count: 1, fill: 'half' }, atLeast: 0.5 },
      straw,
    ]);
    expect(told).toContain('half a barrow of goat bedding');
    expect(told).not.toContain('1 barrow');
  });

  it('three half-full buckets are one and a half, and a bucket three quarters full is no whole one', () => {
    const told = answer([
      { material: 'coffee-grounds', amount: { measure: 'bucket-20l', count: 3, fill: 'half' }, useAll: true },
      {
        material: 'grass-clippings',
        amount: { measure: 'bucket-20l', count: 1, fill: 'three-quarters' },
        useAll: true,
      },
      straw,
    ]);
    expect(told).toContain('1.5 buckets of coffee grounds');
    expect(told).toContain('0.75 buckets of grass clippings');
  });

  it('heaped and pressed-down measures are told where that is not how they usually come', () => {
    const told = answer([
      { material: 'coffee-grounds', amount: { measure: 'bucket-20l', count: 2, fill: 'heaped' }, useAll: true },
      { material: 'autumn-leaves', amount: { measure: 'bin-bag', count: 1, packed: true }, useAll: true },
      { material: 'straw', amount: { measure: 'straw-bale', count: 1, packed: true } },
    ]);
    expect(told).toContain('2 buckets (heaped) of coffee grounds');
    expect(told).toContain('1 bin bag (pressed down) of');
    expect(told).not.toMatch(/bales? \(/u);
  });

  it('what would mend a mix is counted in the same way', () => {
    const solution = solved({
      stock: [
        { material: 'grass-clippings', amount: { measure: 'bucket-20l', count: 3, fill: 'heaped' } },
        { material: 'autumn-leaves', amount: { measure: 'bucket-20l', count: 2, fill: 'heaped' } },
      ],
    });
    const mends = mixReport(solution, empty).mends.map((saying) => us.tell(saying));
    expect(solution.mends.some(({ fetch }) => fetch.some(({ onHand }) => onHand))).toBe(true);
    expect(mends.join(' ')).toMatch(/buckets \(heaped\) of/u);
  });

  it('nobody doubts that half a barrow, all of it laid, is there', () => {
    const report = mixReport(
      solved({
        stock: [
          { material: 'goat-bedding', amount: { measure: 'barrow', count: 1, fill: 'half' }, useAll: true },
          straw,
        ],
        wanted_m3: 0.2,
      }),
      empty,
    );
    expect(report.use.find(({ material }) => material === 'goat-bedding')?.doubt).toBeNull();
  });
});

describe('a mix that can’t be good', () => {
  const report = mixReport(grass, empty);

  it('of nothing but grass is told as poor, with what is short and what would mend it', () => {
    expect(report.standing).toBe('poor');
    expect(us.tell(report.answer)).toContain('not a mix that handbooks would call reasonable');
    expect(report.lacks.length).toBeGreaterThan(0);
    expect(report.mends.map((saying) => us.tell(saying)).join(' ')).toMatch(/With \d+ barrows of \w+/u);
    expect(report.heat.map((saying) => us.tell(saying)).join(' ')).toContain('do not count on it getting hot');
  });

  it('of nothing says so', () => {
    expect(us.tell(mixReport(solved({ stock: [] }), empty).answer)).toBe('There is nothing here to build a heap of.');
  });
});

describe('a build card in words', () => {
  const outcome = buildCard.run(buildCard.example, needs);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  const card = outcome.value;
  const report = buildCardReport(card, empty);

  it('has a line for every layer, to scale, and for its water', () => {
    expect(report.layers.map(({ bottom_m, height_m }) => [bottom_m, height_m])).toEqual(
      card.layers.map(({ bottom_m, height_m }) => [bottom_m, height_m]),
    );
    expect(us.tell(report.layers[0]?.said ?? report.height)).toMatch(/^Base: .*hedge chippings\.$/u);
    const watered = report.layers.filter(({ water }) => water !== null).length;
    expect(watered).toBe(card.layers.filter(({ water_L }) => water_L > 0).length);
  });

  it('tells half-full and heaped measures as they are', () => {
    const laid = buildCard.run(
      {
        mix: [
          { material: 'goat-bedding', measure: 'barrow', count: 1, fill: 'half' },
          { material: 'straw', measure: 'bucket-20l', count: 4, fill: 'heaped' },
        ],
        bay: { width_m: 0.5, depth_m: 0.5, height_m: 1 },
      },
      needs,
    );
    if (!laid.ok) throw new Error(JSON.stringify(laid.problems));
    const lines = buildCardReport(laid.value, empty).layers.map(({ said }) => us.tell(said));
    expect(lines.join(' ')).toContain('0.25 barrows of goat bedding');
    expect(lines.join(' ')).not.toMatch(/1 barrow|half a barrow/u);
    expect(lines.join(' ')).toMatch(/\d buckets? \(heaped\) of straw/u);
  });

  it('tells chopping, notes, permits and the starter', () => {
    expect(report.chop).toHaveLength(card.chop.length);
    expect(report.notes).toHaveLength(card.notes.length);
    expect(report.permits).toHaveLength(buildCard.example.mix.length);
    expect(report.layers.some(({ starter }) => starter !== null)).toBe(true);
  });
});
