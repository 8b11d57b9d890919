import { convert } from '@loamwright/units';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { check } from '../catalogue/index.ts';
import { createDraws } from '../estimate/index.ts';
import { actIds, checkIds, reasonIds } from './act.ts';
import { heapCalculations, type ReadingInput, type ReadingMeaning, readingMeaning, temperatureBands } from './index.ts';

const needs = { draws: createDraws() };
const fahrenheit = (value: number): number => convert(value, 'degF', 'degC');

function meaning(input: ReadingInput): ReadingMeaning {
  const outcome = readingMeaning.run(input, needs);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

function liesTo(input: ReadingInput): Readonly<Record<string, string>> {
  return Object.fromEntries(meaning(input).bands.map(({ id, lies }) => [id, lies]));
}

describe('the bands', () => {
  // Kansas State University, Composting: the science; 55 °F, 70-100 °F and 113-160 °F, with the °C it prints beside them.
  it.each([
    ['cool-microbes', 13, 13],
    ['mesophilic', 21, 38],
    ['thermophilic', 45, 71],
  ] as const)('%s are those of Kansas State', (id, low, high) => {
    const band = temperatureBands.find((row) => row.id === id);
    // The source rounds its °C to whole degrees.
    expect(Math.round(band?.low_degC ?? Number.NaN)).toBe(low);
    expect(Math.round(band?.high_degC ?? Number.NaN)).toBe(high);
  });

  // LSU AgCenter 3838-D, Saskatchewan 2008 and Cooperband 2002 after NRAES-54; °C as they stand in those tables.
  it.each([
    ['reasonable-lsu', 43, 60],
    ['reasonable-saskatchewan', 43, 66],
    ['reasonable-cooperband', 43, 66],
    ['preferred', 54, 60],
  ] as const)('%s is that of the handbook tables', (id, low, high) => {
    const band = temperatureBands.find((row) => row.id === id);
    expect(Math.round(band?.low_degC ?? Number.NaN)).toBe(low);
    expect(Math.round(band?.high_degC ?? Number.NaN)).toBe(high);
  });

  it('are marked common practice where growers’ aims have no source', () => {
    const growers = temperatureBands.filter(({ group }) => group === 'growers');
    expect(growers.map(({ source, mark }) => [source, mark])).toEqual(Array(3).fill(['common-practice', 'memory']));
  });

  it('tell a reading in °F from one a degree outside', () => {
    expect(liesTo({ temp_degC: fahrenheit(145) })['growers-sought']).toBe('in');
    expect(liesTo({ temp_degC: fahrenheit(144) })['growers-sought']).toBe('below');
    expect(liesTo({ temp_degC: fahrenheit(160) })['growers-sought']).toBe('in');
    expect(liesTo({ temp_degC: fahrenheit(161) })['growers-sought']).toBe('above');
    expect(liesTo({ temp_degC: fahrenheit(181) })['growers-nitrogen-leaving']).toBe('in');
  });

  it('show growers and handbooks disagreeing at 135 °F and at 150 °F', () => {
    expect(meaning({ temp_degC: fahrenheit(135) }).views).toMatchObject({
      growersSought: 'below',
      handbookPreferred: 'in',
    });
    expect(meaning({ temp_degC: fahrenheit(150) }).views).toMatchObject({
      growersSought: 'in',
      handbookPreferred: 'above',
    });
  });
});

describe('a sanitising day', () => {
  // 7 CFR 205.203(c)(2): 131 °F; check case 14 of the sanitation tables: 130.9 °F does not count.
  it('is one at 131 °F or more, and not at 130.9 °F', () => {
    expect(meaning({ temp_degC: fahrenheit(131) }).sanitisingDay.counts).toBe(true);
    expect(meaning({ temp_degC: fahrenheit(130.9) }).sanitisingDay.counts).toBe(false);
  });

  it('is as likely as not at the limit, whatever the probe’s error', () => {
    const { met, of } = meaning({ temp_degC: 55 }).sanitisingDay.chance;
    // The draws of a symmetric error are even to within a few in 256.
    expect(Math.abs(met / of - 0.5)).toBeLessThan(0.02);
  });
});

describe('three fast heaps in Hawaii (WH6FQE 2019, days 10 and 11)', () => {
  const day10 = [143, 160, 150].map((value) =>
    meaning({ temp_degC: fahrenheit(value), age_days: 10, squeeze: 'holds' }),
  );

  it('turns the one at 160 °F and leaves the others', () => {
    expect(day10.map(({ act }) => act.act)).toEqual(['leave', 'turn', 'leave']);
    expect(day10[1]?.act.because).toBe('turning-limit');
  });

  it('takes 135 °F next morning as a sanitising day and as no reason to turn', () => {
    const day11 = meaning({
      temp_degC: fahrenheit(135),
      age_days: 11,
      sinceTurn_days: 2,
      earlier: [{ before_days: 1, temp_degC: fahrenheit(143) }],
    });
    expect(day11.sanitisingDay.counts).toBe(true);
    expect(day11.trend.direction).toBe('falling');
    // 8 °F is 4.4 °C: short of the 5 °C at which the fall becomes a trigger.
    expect(day11.trend.belowPeak_K).toBeCloseTo(40 / 9, 6);
    expect(day11.act.act).toBe('leave');
    expect(day11.notes).toContain('hottest-part');
  });
});

describe('the same grower’s other readings', () => {
  // WH6FQE 2019: day, °F, what was seen, what was done. The grower turned at each of these.
  it.each([
    ['day 5', { temp_degC: fahrenheit(160), age_days: 5 }, 'turn'],
    ['day 7', { temp_degC: fahrenheit(167.5), age_days: 7 }, 'turn'],
    ['day 19, very dry', { temp_degC: fahrenheit(153), age_days: 19, squeeze: 'dusty' }, 'water'],
    ['day 21', { temp_degC: fahrenheit(160), age_days: 21, squeeze: 'holds' }, 'turn'],
  ] as const)('%s', (_, input, act) => {
    expect(meaning(input).act.act).toBe(act);
  });
});

describe('a winter heap of scraps, card, coffee and leaves (S. Foust: 60, 78, 94 °F over weeks)', () => {
  it('is left alone while it rises, and is called small', () => {
    const told = meaning({
      temp_degC: fahrenheit(94),
      age_days: 20,
      volume_m3: 0.38,
      earlier: [
        { before_days: 7, temp_degC: fahrenheit(78) },
        { before_days: 14, temp_degC: fahrenheit(60) },
      ],
    });
    expect(told.act.act).toBe('leave');
    expect(told.act.because).toBe('still-rising');
    expect(told.notes).toEqual(['hottest-part', 'small-heap', 'never-seen-hot']);
  });

  const older: ReadingInput = {
    temp_degC: fahrenheit(85),
    age_days: 60,
    sinceFeed_days: 3,
    freshFood: false,
    earlier: [{ before_days: 1, temp_degC: fahrenheit(100) }],
  };

  it('that went from 100 to 85 °F is no longer fed, and turned once', () => {
    expect(meaning(older).act.act).toBe('rest-and-turn-once');
    expect(meaning(older).notes).toContain('never-seen-hot');
  });

  it('that stays under 40 °C after that turn, damp enough, is left to cure', () => {
    const after = meaning({ ...older, temp_degC: 30, sinceTurn_days: 8, squeeze: 'holds', earlier: [] });
    expect(after.act.act).toBe('leave-to-cure');
  });

  it('is given the days that measured heaps took to heat again after a turn (day 4: 140 °F)', () => {
    expect(meaning({ ...older, temp_degC: 27, sinceTurn_days: 1, earlier: [] }).act.act).toBe('wait');
  });
});

describe('a heap that will not heat', () => {
  it('is asked three things, cheapest first, when nothing else is known', () => {
    const told = meaning({ temp_degC: 27, age_days: 30 });
    expect(told.act.act).toBe('ask');
    expect(told.act.checks).toEqual(['size', 'squeeze', 'what-went-in']);
  });

  it('is told the likeliest cause when the size is known', () => {
    expect(meaning({ temp_degC: 27, age_days: 30, volume_m3: 0.3 }).act.because).toBe('too-small');
  });

  it('is not judged by its edge', () => {
    expect(meaning({ temp_degC: 35, point: 'edge', age_days: 30 }).act.act).toBe('probe-core');
  });

  it('keeps to fire for a day after a fire-hot reading, whatever is read since and wherever', () => {
    const since = (before_days: number, point: 'core' | 'edge') =>
      meaning({ temp_degC: 60, age_days: 9, earlier: [{ before_days, temp_degC: 85, point }] });
    for (const point of ['core', 'edge'] as const) {
      expect(since(0.1, point).act).toMatchObject({ act: 'check-fire', because: 'was-fire-hot', when: 'now' });
      expect(since(0.1, point).cautions[0]).toBe('fire');
    }
    expect(since(1.5, 'edge').act.act).not.toBe('check-fire');
  });

  it('does not press for water where waiting costs only time', () => {
    expect(meaning({ temp_degC: 6, age_days: 110, squeeze: 'crumbles' }).act).toMatchObject({
      act: 'water',
      when: 'in-a-few-days',
    });
  });

  it('is left alone while it is fed by the pail: such a bin need not be hot', () => {
    const told = meaning({ temp_degC: 31, point: 'middle', age_days: 120, sinceFeed_days: 2, squeeze: 'holds' });
    expect([told.act.act, told.act.because]).toEqual(['leave', 'still-fed']);
  });

  it('is a store when it is frozen', () => {
    expect(meaning({ temp_degC: -2, age_days: 90 }).act.act).toBe('leave-frozen');
  });
});

describe('fire', () => {
  const anything: fc.Arbitrary<ReadingInput> = fc.record(
    {
      temp_degC: fc.double({ min: -40, max: 150, noNaN: true }),
      point: fc.constantFrom('core', 'middle', 'edge', 'top', 'bottom'),
      depth_m: fc.double({ min: 0, max: 2, noNaN: true }),
      age_days: fc.double({ min: 0, max: 400, noNaN: true }),
      sinceTurn_days: fc.double({ min: 0, max: 60, noNaN: true }),
      sinceFeed_days: fc.double({ min: 0, max: 60, noNaN: true }),
      squeeze: fc.constantFrom('streams', 'drops', 'holds', 'crumbles', 'dusty'),
      smell: fc.constantFrom('none', 'earthy', 'ammonia', 'sour', 'rotten', 'musty', 'smoke'),
      freshFood: fc.boolean(),
      volume_m3: fc.double({ min: 0.01, max: 20, noNaN: true }),
      holdsManure: fc.boolean(),
      earlier: fc.array(
        fc.record({
          before_days: fc.double({ min: 0.01, max: 100, noNaN: true }),
          temp_degC: fc.double({ min: -20, max: 100, noNaN: true }),
        }),
        { maxLength: 12 },
      ),
    },
    { requiredKeys: ['temp_degC'] },
  );

  it('comes first, and nobody is sent to turn a heap that may burn', () => {
    fc.assert(
      fc.property(anything, (input) => {
        const told = meaning(input);
        if (told.temp_degC.p50 < 80 && input.smell !== 'smoke') return;
        expect(told.act.act).toBe('check-fire');
        expect(told.act.when).toBe('now');
        expect(told.act.checks.slice(0, 2)).toEqual(['second-place', 'second-thermometer']);
        expect(told.cautions[0]).toBe('fire');
      }),
      { seed: 71, numRuns: 400 },
    );
  });

  it('is already named where the probe’s error reaches 80 °C', () => {
    expect(meaning({ temp_degC: 79 }).cautions[0]).toBe('fire');
    expect(meaning({ temp_degC: 75 }).cautions).not.toContain('fire');
  });

  it('is a heap’s answer like any other: every answer fits its schema', () => {
    fc.assert(
      fc.property(anything, (input) => {
        expect(check(readingMeaning.input, input).ok).toBe(true);
        expect(check(readingMeaning.output, meaning(input)).ok).toBe(true);
      }),
      { seed: 55, numRuns: 300 },
    );
  });
});

describe('the acts', () => {
  it('are all reached, with all reasons and checks, by inputs a grower could give', () => {
    const base: ReadingInput = { temp_degC: 30, age_days: 40 };
    const reached = [
      { ...base, temp_degC: 85 },
      { ...base, smell: 'smoke' },
      { ...base, temp_degC: 73 },
      { ...base, temp_degC: 73, squeeze: 'dusty' },
      { ...base, earlier: [{ before_days: 0.5, temp_degC: 85, point: 'edge' }] },
      { ...base, temp_degC: 73, smell: 'ammonia' },
      { ...base, temp_degC: 60, smell: 'ammonia' },
      { ...base, smell: 'rotten' },
      { ...base, point: 'edge' },
      { ...base, temp_degC: -3 },
      { ...base, squeeze: 'dusty' },
      { ...base, squeeze: 'streams' },
      { ...base, temp_degC: 52, earlier: [{ before_days: 3, temp_degC: 66 }] },
      { ...base, temp_degC: 58, earlier: [{ before_days: 3, temp_degC: 66 }] },
      { ...base, temp_degC: 60, earlier: [{ before_days: 4, temp_degC: 61 }] },
      { ...base, temp_degC: 60 },
      { ...base, earlier: [{ before_days: 1, temp_degC: 20 }] },
      { ...base, age_days: 2 },
      { ...base, sinceTurn_days: 1 },
      { ...base, sinceTurn_days: 9, squeeze: 'holds' },
      { ...base, freshFood: true },
      { ...base, temp_degC: 46, earlier: [{ before_days: 2, temp_degC: 46 }] },
      { ...base, temp_degC: 30, sinceFeed_days: 2, earlier: [{ before_days: 2, temp_degC: 38 }] },
      { ...base, temp_degC: 30, earlier: [{ before_days: 2, temp_degC: 38 }] },
      { ...base, sinceFeed_days: 2 },
      { ...base, volume_m3: 0.2 },
      { ...base, carbonToNitrogen: 70 },
      base,
    ].map((input) => meaning(input as ReadingInput).act);
    expect(new Set(reached.map(({ act }) => act))).toEqual(new Set(actIds));
    expect(new Set(reached.map(({ because }) => because))).toEqual(new Set(reasonIds));
    expect(new Set(reached.flatMap(({ checks }) => checks))).toEqual(new Set(checkIds));
  });
});

it('runs its own examples', () => {
  for (const calculation of heapCalculations) expect(calculation.reckon(calculation.example, needs).ok).toBe(true);
});
