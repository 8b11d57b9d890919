import examples from '@loamwright/reference/mix-examples.json' with { type: 'json' };
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createDraws } from '../estimate/index.ts';
import { dryMass_kg, moistureOfMix_pctWet, waterToReach_kg } from './balance.ts';
import type { Ingredient } from './ingredient.ts';
import { nitrogenToReach } from './nitrogen-to-reach.ts';
import { fromPercentages, mixInputs } from './testing/arbitrary.ts';
import { type WaterToAdd, type WaterToAddInput, waterToAdd } from './water-to-add.ts';

const needs = { draws: createDraws() };

function water(input: WaterToAddInput): WaterToAdd {
  const outcome = waterToAdd.run(input, needs);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

/** Growers' questions want amounts within 30 %: nobody measured anything. */
function expectWithinThirtyPercent(found: number | undefined, wanted: number): void {
  expect(found).toBeGreaterThan(0.7 * wanted);
  expect(found).toBeLessThan(1.3 * wanted);
}

const leaves = (more: Partial<Ingredient>): Ingredient => ({
  material: 'autumn-leaves',
  amount: { volume_m3: 1 },
  ...more,
});

describe('how much water', () => {
  it('O12: 0.508 kg water per kg manure to 60 %, 0.301 to 55 %', () => {
    const { manure_kg, manure, sawdust } = examples.O12.inputs;
    const ingredients = [
      fromPercentages('poultry-litter', manure_kg, { ...manure, carbon_pctDry: manure.nitrogen_pctDry * manure.ratio }),
      fromPercentages('sawdust', examples.O12.expected.sawdustFor30_kg, {
        moisture_pctWet: sawdust.moisture_pctWet,
        carbon_pctDry: 50,
        nitrogen_pctDry: sawdust.nitrogen_pctDry,
      }),
    ];
    for (const [goal_pctWet, wanted] of [
      [60, examples.O12.expected.waterTo60_kg],
      [55, examples.O12.expected.waterTo55_kg],
    ] as const) {
      const found = water({ ingredients, goal_pctWet });
      expect(found.decision).toBe('add-water');
      expect(Math.abs(found.water_L.p50 - wanted)).toBeLessThanOrEqual(examples.O12.tolerance.waterTo60_kg);
    }
  });

  it('O05 of the question bank: a tonne of leaves at 20 % takes about 780 L to 55 %', () => {
    const described = { moisture_pctWet: 20 };
    const { water_L } = water({ ingredients: [leaves({ amount: { mass_kg: 1000 }, described })] });
    expectWithinThirtyPercent(water_L.p50, 780);
    // 800 kg dry at 55 % weigh 1778 kg.
    expect(water_L.p50).toBeCloseTo(777.8, 1);
  });

  it('O09 of the question bank: about 90 L a cubic metre for dry leaves, fluffy or settled', () => {
    for (const [density, moisture_pctWet] of [
      [100, 15],
      [237, 38],
    ] as const) {
      const described = { moisture_pctWet, densityLoose_kgPerM3AsIs: density };
      expectWithinThirtyPercent(water({ ingredients: [leaves({ described })] }).water_L.p50, 90);
    }
  });

  it('in the bucket it is carried in, the grower’s own if told', () => {
    const ingredients = [leaves({ described: { moisture_pctWet: 20 } })];
    const { water_L, count } = water({ ingredients, measure: 'can', ownSizes: { can: 9 } });
    expect(count.p50).toBeCloseTo(water_L.p50 / 9, 9);
    expect(waterToAdd.run({ ingredients, measure: 'cann', ownSizes: { can: 9 } }, needs)).toMatchObject({
      ok: false,
      problems: [{ code: 'unknown-measure', path: 'measure', found: 'cann' }],
    });
  });

  it('more than it takes up is poured in turns', () => {
    const ingredients = [leaves({ material: 'oak-leaves', described: { moisture_pctWet: 5 } })];
    expect(water({ ingredients, goal_pctWet: 75 }).inTurns).toBe(true);
    const straw: Ingredient = { material: 'straw', amount: { measure: 'barrow', count: 5 } };
    expect(water({ ingredients: [straw], goal_pctWet: 60 }).inTurns).toBe(false);
  });

  it('right is right', () => {
    const found = water({ ingredients: [leaves({ described: { moisture_pctWet: 56 } })] });
    expect(found).toMatchObject({ decision: 'right', inTurns: false, driers: [] });
  });
});

describe('too wet already', () => {
  it('O2: 6.8 kg leaves of 35 % bring 10 kg grass of 77 % to 60 % (Cornell moisture text)', () => {
    const { grass_kg, grass, goal_pctWet } = examples.O2.inputs;
    const found = water({
      ingredients: [fromPercentages('grass-clippings', grass_kg, grass)],
      goal_pctWet,
      driers: ['autumn-leaves'],
    });
    expect(found.decision).toBe('too-wet');
    expect(found.water_L.p90).toBe(0);
    const [drier] = found.driers;
    // The program's own autumn leaves are 38 % (a range of 15 to 60): 10 × 17 / 22 = 7.7 kg.
    expect(drier?.wet_kg.p50).toBeCloseTo(7.7, 0);
    expect(drier?.does.met).toBeLessThan(256);
  });

  it('O13 of the question bank: 80 kg of thawed scraps take about 40 kg of leaves at 20 %', () => {
    const scraps: Ingredient = {
      material: 'kitchen-scraps',
      amount: { mass_kg: 80 },
      described: { moisture_pctWet: 80 },
    };
    const found = water({ ingredients: [scraps], goal_pctWet: 60, driers: ['straw'] });
    // Straw is drier (12 %): 80 × 20 / 48 = 33 kg; the leaves of the question 80 × 20 / 40 = 40 kg.
    expectWithinThirtyPercent(found.driers[0]?.wet_kg.p50, 33.3);
  });

  it('least volume first, and never a drier that is too wet itself', () => {
    const grass: Ingredient = { material: 'grass-clippings', amount: { measure: 'bucket-20l', count: 10 } };
    const { driers } = water({ ingredients: [grass], driers: ['straw', 'apple-pomace', 'wood-shavings'] });
    expect(driers.map(({ material }) => material)).toEqual(['wood-shavings', 'straw']);
  });
});

describe('laws of water', () => {
  it('ranges in order, no water below zero, the schema holds', () => {
    fc.assert(
      fc.property(mixInputs, fc.integer({ min: 30, max: 75 }), (input, goal_pctWet) => {
        const found = water({ ...input, goal_pctWet });
        expect(0 <= found.water_L.p10 && found.water_L.p10 <= found.water_L.p50).toBe(true);
        expect(waterToAdd.output.safeParse(found).success).toBe(true);
      }),
      { numRuns: 40 },
    );
  });
});

describe('the water formula', () => {
  it('pouring what is lacking reaches the goal, whatever the stuff', () => {
    const moisture = fc.double({ min: 0, max: 95, noNaN: true });
    fc.assert(
      fc.property(moisture, fc.double({ min: 0.1, max: 1000, noNaN: true }), moisture, (now, wet_kg, goal_pctWet) => {
        const dry_kg = dryMass_kg({ wet_kg, moisture_pctWet: now });
        const water_kg = waterToReach_kg({ wet_kg, dry_kg, goal_pctWet });
        const mix = [
          { wet_kg, moisture_pctWet: now },
          { wet_kg: water_kg, moisture_pctWet: 100 },
        ];
        expect(moistureOfMix_pctWet(mix)).toBeCloseTo(goal_pctWet, 6);
      }),
    );
  });
});

describe('nitrogen to reach', () => {
  const chips: Ingredient = {
    material: 'wood-chips',
    amount: { measure: 'cubic-yard', count: 1 },
    described: {
      moisture_pctWet: 40,
      densityLoose_kgPerM3AsIs: 281,
      carbonToNitrogen_ratio: 560,
      volatileSolids_pctDry: 90,
    },
  };
  const needed = (goal_ratio: number) => {
    const outcome = nitrogenToReach.run({ ingredients: [chips], goal_ratio }, needs);
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
    return outcome.value;
  };

  it('O04 of the question bank: a cubic yard of green chips', () => {
    expectWithinThirtyPercent(needed(60).nitrogen_kg.p50, 0.95);
    expectWithinThirtyPercent(needed(30).nitrogen_kg.p50, 2);
    expectWithinThirtyPercent(needed(60).bought.find(({ id }) => id === 'urea')?.mass_kg.p50, 2.1);
    expectWithinThirtyPercent(needed(30).bought.find(({ id }) => id === 'urea')?.mass_kg.p50, 4.4);
    expect(needed(60).cautions).toContain('ammonia');
  });

  it('O7: 8 kg a tonne of rice straw, as 40 kg calcium cyanamide (Japanese soil-making note)', () => {
    const { straw_kg, carbon_pctAsIs, nitrogen_pctAsIs, goal_ratio } = examples.O7.inputs;
    const straw = fromPercentages('straw', straw_kg, {
      moisture_pctWet: 0,
      carbon_pctDry: carbon_pctAsIs,
      nitrogen_pctDry: nitrogen_pctAsIs,
    });
    const outcome = nitrogenToReach.run({ ingredients: [straw], goal_ratio }, needs);
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
    expect(Math.abs(outcome.value.nitrogen_kg.p50 - examples.O7.expected.nitrogen_kg)).toBeLessThanOrEqual(0.05);
    const cyanamide = outcome.value.bought.find(({ id }) => id === 'calcium-cyanamide')?.mass_kg.p50 ?? 0;
    expect(Math.abs(cyanamide - examples.O7.expected.cyanamide_kg)).toBeLessThanOrEqual(0.25);
  });

  it('none where there is enough', () => {
    const grass: Ingredient = { material: 'grass-clippings', amount: { measure: 'bucket-20l', count: 2 } };
    const outcome = nitrogenToReach.run({ ingredients: [grass], goal_ratio: 60 }, needs);
    expect(outcome).toMatchObject({ ok: true, value: { nitrogen_kg: { p10: 0, p50: 0, p90: 0 }, lacks: { met: 0 } } });
  });
});
