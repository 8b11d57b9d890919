import table from '@loamwright/reference/not-heating.json' with { type: 'json' };
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createDraws } from '../estimate/index.ts';
import {
  type ColdObservationId,
  checksWorthMaking,
  coldCauseIds,
  coldObservationIds,
  coldOdds,
  type Found,
  likelihood,
} from './cold-odds.ts';
import { type NotHeating, notHeating } from './not-heating.ts';
import type { NotHeatingInput } from './not-heating-input.ts';

const needs = { draws: createDraws() };

function why(input: NotHeatingInput): NotHeating {
  const outcome = notHeating.run(input, needs);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

/** 3 × 3 × 3 ft, the smallest bin in print (Oregon Metro). */
const smallest = { width_m: 0.914, depth_m: 0.914, height_m: 0.914 };

describe('O03 of the question bank: a bin that will not heat, and nothing is told', () => {
  it('asks for three things only, the quickest first: size, a squeeze, what went in and when', () => {
    expect(why({}).checks).toEqual(['size', 'squeeze', 'what-went-in']);
    expect(why({})).toMatchObject({ decision: 'look', act: 'look' });
  });

  it('late August in Florida changes nothing of that', () => {
    expect(why({ air_degC: 30 }).checks).toEqual(['size', 'squeeze', 'what-went-in']);
  });

  it('then says which cause is likeliest, why, and one act', () => {
    const dry = why({ air_degC: 30, size: smallest, squeeze: 'dusty', carbonToNitrogen_ratio: 30, age_days: 20 });
    expect(dry).toMatchObject({ decision: 'act', act: 'water', checks: [] });
    expect(dry.causes[0]).toMatchObject({ cause: 'too-dry', reasons: ['squeeze'] });
    expect(dry.causes[0]?.share).toBeGreaterThan(0.7);
  });

  it('its own figures, 3 × 3 × 3 ft, a few drops and C:N 25 to 40, speak for none of the three', () => {
    const { causes } = why({ size: smallest, squeeze: 'drops', carbonToNitrogen_ratio: 30, age_days: 20 });
    const told = causes.map(({ cause }) => cause);
    for (const cause of ['too-dry', 'too-small', 'little-nitrogen'] as const) expect(told).not.toContain(cause);
  });
});

describe('published thresholds, one at a time', () => {
  const sound: NotHeatingInput = {
    size: { volume_m3: 1.5 },
    squeeze: 'holds',
    carbonToNitrogen_ratio: 30,
    age_days: 20,
    air_degC: 18,
  };
  it.each([
    ['a quarter of a cubic metre (9 ft³)', { size: { volume_m3: 0.2 } }, 'too-small', 'enlarge'],
    ['dusty, below 40 %', { squeeze: 'dusty' }, 'too-dry', 'water'],
    ['streams, above 65 %', { squeeze: 'streams', smell: 'sour' }, 'too-wet', 'turn-with-dry'],
    ['C:N above 60', { carbonToNitrogen_ratio: 70 }, 'little-nitrogen', 'add-nitrogen'],
    ['on its second day, where seven are usual (NRCS)', { age_days: 1 }, 'young', 'wait'],
    [
      'two months old, once hot, no food left',
      { age_days: 60, hottest_degC: 60, freshFood: false },
      'spent',
      'leave-to-cure',
    ],
    [
      'packed, sour and never turned',
      { squeeze: 'drops', smell: 'sour', sinceTurn_days: 30 },
      'too-little-air',
      'turn',
    ],
  ] as const)('%s', (_what, seen, cause, act) => {
    const found = why({ ...sound, ...seen });
    expect(found.causes[0]?.cause).toBe(cause);
    expect(found.act).toBe(act);
  });

  it('frost is named where nothing else is wrong', () => {
    const { causes } = why({ ...sound, air_degC: -10, hottest_degC: 60, freshFood: true });
    expect(causes[0]).toMatchObject({ cause: 'cold-weather' });
  });

  it('grass alone is wet or airless, leaves alone are dry or poor (O01 and O09)', () => {
    const of = (material: string) =>
      why({ ingredients: [{ material, amount: { measure: 'barrow', count: 12 } }], age_days: 15 }).causes[0]?.cause;
    expect(['too-wet', 'too-little-air']).toContain(of('grass-clippings'));
    expect(['too-dry', 'little-nitrogen']).toContain(of('autumn-leaves'));
  });

  it('what may burn is never called cold, and what is warm is left', () => {
    expect(why({ temp_degC: 82, squeeze: 'dusty' })).toMatchObject({ decision: 'check-fire', cautions: ['fire'] });
    expect(why({ smell: 'smoke' }).act).toBe('check-fire');
    expect(why({ temp_degC: 45 })).toMatchObject({ decision: 'it-heats', act: 'leave', causes: [] });
    expect(why({ temp_degC: 25 }).decision).toBe('look');
  });
});

describe('a slow heap whose scraps are gone and whose leaves are whole', () => {
  // A grower’s account of two winter heaps, 60, 78 and 94 °F over weeks and 100 to 85 °F in a day, soil at 48 °F; that soft stuff gone
  // and leaves whole means spent food: common practice, no source.
  const winter: NotHeatingInput = {
    size: { volume_m3: 0.38 },
    temp_degC: 34.4,
    hottest_degC: 34.4,
    age_days: 42,
    air_degC: 9,
  };
  const gone = { freshFood: false, brownsWhole: true } as const;

  it('is spent, small as it is: no more food, one turn, a second heap', () => {
    const found = why({ ...winter, ...gone });
    expect(found).toMatchObject({ decision: 'act', act: 'leave-to-cure' });
    expect(found.causes[0]).toMatchObject({ cause: 'spent' });
    expect(found.causes[0]?.reasons[0]).toBe('food');
    // The smallest heap in print is 3 × 3 × 3 ft (Oregon Metro), this one 3 × 3 × 1.5.
    expect(found.ofSmallest_share).toBeCloseTo(0.5, 2);
    expect(found.notes).toEqual(['smaller-than-least', 'browns-need-months', 'proves-nothing']);
    expect(found.cautions).toContain('seeding-weeds');
  });

  it('is too small while scraps are left in it, and worth a look where nobody looked', () => {
    expect(why({ ...winter, freshFood: true })).toMatchObject({ act: 'enlarge', notes: [] });
    expect(why(winter).decision).toBe('look');
    expect(why(winter).causes[0]?.cause).toBe('too-small');
    expect(why(winter).checks).toContain('fresh-food');
  });

  it('one that rose and fell is spent the surer', () => {
    const share = (input: NotHeatingInput): number =>
      why({ ...gone, age_days: 70, ...input }).causes.find(({ cause }) => cause === 'spent')?.share ?? 0;
    const fell = share({ temp_degC: 29.4, hottest_degC: 37.8 });
    expect(fell).toBeGreaterThan(0.6);
    expect(fell).toBeGreaterThan(share({ temp_degC: 36, hottest_degC: 37.8 }));
    expect(fell).toBeGreaterThan(share({ temp_degC: 15, hottest_degC: 15 }));
  });

  it('proves nothing below 55 °C (40 CFR 503), and says nothing of proof where it was hot', () => {
    expect(why({ ...winter, ...gone, hottest_degC: 54 }).notes).toContain('proves-nothing');
    expect(why({ ...winter, ...gone, hottest_degC: 56 }).notes).not.toContain('proves-nothing');
  });

  it('only leaves or all crumbs, where nobody looked closely, is one or the other', () => {
    const [likeliest] = why({ ...winter, freshFood: false }).causes;
    for (const cause of coldCauseIds)
      expect(likelihood('food', 'gone', cause)).toBeCloseTo(
        likelihood('food', 'browns-only', cause) + likelihood('food', 'crumbs', cause),
        12,
      );
    expect(likeliest?.cause).toBe('spent');
  });
});

describe('amounts', () => {
  it('O09: about 90 L of water for a cubic metre of dry leaves, within its range', () => {
    for (const squeeze of ['dusty', 'crumbles'] as const) {
      const { amount } = why({ squeeze, size: { volume_m3: 1 } });
      expect(amount?.water_L?.p10).toBeLessThan(90);
      expect(amount?.water_L?.p90).toBeGreaterThan(60);
    }
  });

  it('go with the size of the heap, and are told for a cubic metre where it is not known', () => {
    const one = why({ squeeze: 'dusty' }).amount;
    const four = why({ squeeze: 'dusty', size: { volume_m3: 4 } }).amount;
    expect([one?.per, four?.per]).toEqual(['cubic-metre', 'heap']);
    expect(four?.water_L?.p50).toBeCloseTo(4 * (one?.water_L?.p50 ?? Number.NaN), 6);
  });

  it('nitrogen to 40:1 is C / 40 - C / (C:N) (Japanese soil-making note)', () => {
    const { amount } = why({ size: { volume_m3: 1 }, squeeze: 'holds', carbonToNitrogen_ratio: 120, age_days: 20 });
    const carbon_kg = (table.amounts.dry_kgPerM3.typical * table.amounts.carbon_pctDry.value) / 100;
    // The median of the draws lies within 1 % of the middle they are drawn around.
    expect((amount?.nitrogen_kg?.p50 ?? Number.NaN) / (carbon_kg / 40 - carbon_kg / 120)).toBeCloseTo(1, 1);
  });
});

describe('the tables', () => {
  it('every row is a distribution over its outcomes, and the priors are one', () => {
    for (const { outcomes, usual, where } of Object.values(table.observations)) {
      for (const row of [usual, ...Object.values(where)]) {
        expect(row).toHaveLength(outcomes.length);
        expect(row.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
      }
    }
    expect(Object.values(table.causes).reduce((sum, { prior }) => sum + prior, 0)).toBeCloseTo(1, 9);
  });
});

const outcomesFound: fc.Arbitrary<Found> = fc.record(
  Object.fromEntries(
    coldObservationIds.map((id) => [
      id,
      fc.option(fc.constantFrom(...table.observations[id].outcomes), { nil: undefined }),
    ]),
  ),
) as fc.Arbitrary<Found>;

describe('laws of the odds', () => {
  it('add up to one, and are the same in whichever order things were seen', () => {
    fc.assert(
      fc.property(outcomesFound, (found) => {
        const odds = coldOdds(found);
        expect(Object.values(odds).reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
        expect(coldOdds(Object.fromEntries(Object.entries(found).reverse()))).toEqual(odds);
      }),
      { seed: 71, numRuns: 200 },
    );
  });

  it('averaged over what may be seen, are what they were before (law of total probability)', () => {
    fc.assert(
      fc.property(outcomesFound, fc.constantFrom(...coldObservationIds), (found, looked: ColdObservationId) => {
        const before = coldOdds({ ...found, [looked]: undefined });
        for (const cause of coldCauseIds) {
          const average = table.observations[looked].outcomes.reduce((sum, outcome) => {
            const chance = coldCauseIds.reduce((one, of) => one + before[of] * likelihood(looked, outcome, of), 0);
            return sum + chance * coldOdds({ ...found, [looked]: outcome })[cause];
          }, 0);
          expect(average).toBeCloseTo(before[cause], 9);
        }
      }),
      { seed: 72, numRuns: 60 },
    );
  });

  it('at most three checks, none made twice, none worth more than to know the cause', () => {
    fc.assert(
      fc.property(outcomesFound, (found) => {
        const checks = checksWorthMaking(found);
        expect(checks.length).toBeLessThanOrEqual(3);
        for (const { check, gain_share } of checks) {
          expect(gain_share).toBeLessThanOrEqual(1 - Math.max(...Object.values(coldOdds(found))) + 1e-9);
          expect(check === 'squeeze' && found.squeeze !== undefined).toBe(false);
        }
      }),
      { seed: 73, numRuns: 200 },
    );
  });

  it('works out amounts by what went in, where that was said, and not by the room it stands in', () => {
    const straw = [{ material: 'straw', amount: { mass_kg: 16 } }];
    const { act, amount } = why({
      ingredients: straw,
      size: { width_m: 1, depth_m: 1, height_m: 1 },
      squeeze: 'holds',
    });
    expect(act).toBe('add-nitrogen');
    // By hand: 16 kg of straw of C:N 80, at 10 % water and 45 % carbon, holds 6.5 kg of carbon and 81 g of nitrogen; to 40
    // it lacks as much again. The tables' spread of C:N, water and carbon allows half of that and twice.
    expect(amount?.nitrogen_kg?.p50).toBeGreaterThan(0.04);
    expect(amount?.nitrogen_kg?.p50).toBeLessThan(0.16);
  });

  it('never has a heap turned that stings, nor nitrogen put on it', () => {
    const stings = why({ smell: 'ammonia', squeeze: 'holds', carbonToNitrogen_ratio: 8, size: { volume_m3: 1 } });
    expect(stings.act).toBe('mix-in-brown');
    expect(stings.cautions).toContain('ammonia');
  });
});
