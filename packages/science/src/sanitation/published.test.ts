import { describe, expect, it } from 'vitest';
import { check } from '../catalogue/index.ts';
import { createDraws } from '../estimate/index.ts';
import { coldSkin } from './cold-skin.ts';
import { heatKill } from './heat-kill.ts';
import { heatTimeCalculation } from './heat-time.ts';
import type { SanitationLog } from './log.ts';
import { metalsCheck } from './metals-check.ts';
import { type RuleId, sanitationParameters } from './parameters.ts';
import { sanitationCheck } from './sanitation-check.ts';
import { dayOf, logOf, S1 } from './testing.ts';
import type { RuleVerdict } from './verdict.ts';

const needs = { draws: createDraws() };

function answer<Input, Output>(
  calculation: {
    input: import('zod').z.ZodType<Input>;
    run: (input: Input, given: typeof needs) => import('../catalogue/index.ts').Outcome<Output>;
  },
  input: Input,
): Output {
  const checked = check(calculation.input, input);
  const outcome = checked.ok ? calculation.run(checked.value, needs) : checked;
  if (!outcome.ok) throw new RangeError(JSON.stringify(outcome.problems));
  return outcome.value;
}

function under(rule: RuleId, log: SanitationLog): RuleVerdict {
  const [only] = answer(sanitationCheck, { log, rules: [rule] }).rules;
  if (only === undefined) throw new RangeError(rule);
  return only;
}

const demandOf = ({ demands }: RuleVerdict, id: string) => demands.find(({ demand }) => demand === id);

describe('one log, several verdicts', () => {
  // 7 CFR 205.203(c)(2)(iii); 21 CFR 112.54(b)(2); 40 CFR 503 App. B; BioAbfV 2012 Annex 2 no. 2.2.2.1.
  it('7 CFR 205.203, 21 CFR 112.54, 40 CFR 503, BioAbfV: S1, 16 days at heat, five turnings, none above 170 °F', () => {
    const log = logOf(S1);
    expect(under('us-organic-turned', log)).toMatchObject({ verdict: 'met' });
    expect(demandOf(under('us-organic-turned', log), 'days')).toMatchObject({ have: 16, want: 15 });
    expect(demandOf(under('us-organic-turned', log), 'turns')).toMatchObject({ have: 5, want: 5 });
    const produce = under('us-produce-turned', log);
    expect(produce.verdict).toBe('not-yet');
    expect(produce.demands.filter(({ verdict }) => verdict !== 'met')).toMatchObject([{ why: 'cure-first' }]);
    const cured = { ...log, curing: { from_day: dayOf(21), warmest_degC: 45, asWarmAsAir: true } };
    expect(under('us-produce-turned', cured).verdict).toBe('met');
    expect(under('us-sludge-turned', log).verdict).toBe('met');
    expect(demandOf(under('germany-2012', log), 'days')?.verdict).toBe('met');
    expect(answer(sanitationCheck, { log }).countsAs).toBe('treated');
  });

  // The same, and Regulation (EU) 2019/1009 CMC 3 (recalled).
  it('the same and EU 2019/1009: S2, 14 days miss three rules by one, and meet the days of two others', () => {
    const log = logOf(`90 128 ${S1.split(' ').slice(2, 16).join(' ')} 128T 120 110 100`);
    for (const rule of ['us-organic-turned', 'us-produce-turned', 'us-sludge-turned'] as const) {
      expect(demandOf(under(rule, log), 'days'), rule).toMatchObject({ verdict: 'not-yet', have: 14, want: 15 });
      expect(under(rule, log).verdict, rule).toBe('not-yet');
    }
    expect(demandOf(under('germany-2012', log), 'days')?.verdict).toBe('met');
    expect(demandOf(under('eu-fertiliser', log), 'days')?.verdict).toBe('met');
    // Guidance 5021: open, once it is shown that all of it came into the heat.
    expect(under('us-organic-5021', log)).toMatchObject({ verdict: 'cannot-be-shown' });
    expect(under('us-organic-5021', { ...log, allMaterial: true }).verdict).toBe('met');
  });

  it('7 CFR 205.203, 21 CFR 112.54, 40 CFR 503: S3, a turning at 118 °F does not count', () => {
    const log = { ...logOf(S1), turned: [5, 8, 11, 14, 20].map(dayOf) };
    for (const rule of ['us-organic-turned', 'us-produce-turned', 'us-sludge-turned'] as const) {
      expect(demandOf(under(rule, log), 'turns'), rule).toMatchObject({ verdict: 'not-yet', have: 4, want: 5 });
    }
    expect(under('us-organic-5021', { ...log, allMaterial: true }).verdict).toBe('met');
  });

  // 21 CFR 112.54(b)(2) lets the days lie apart; 40 CFR 503 says "maintained", 40 CFR 257 "attains".
  it('21 CFR 112.54, 40 CFR 503 and 257: S4, days apart are judged by how each rule words it', () => {
    const log = logOf('140T 141 142T 143 144T 145 146T 147 148 125 125 125 140T 141 142 143 144 145 146', {
      curing: { from_day: dayOf(20), warmest_degC: 40, asWarmAsAir: true },
    });
    expect(under('us-produce-turned', log).verdict).toBe('met');
    expect(under('us-organic-turned', log).verdict).toBe('met');
    expect(demandOf(under('us-organic-turned', log), 'days')).toMatchObject({ why: 'apart-unsaid', have: 16 });
    expect(under('us-sludge-turned', log).verdict).toBe('cannot-be-shown');
    expect(demandOf(under('us-sludge-turned', log), 'days')).toMatchObject({ why: 'broken', have: 9 });
    expect(under('us-sludge-older-turned', log).verdict).toBe('met');
  });

  // 7 CFR 205.203(c)(2)(ii): 131 to 170 °F for 3 days; only this rule has a ceiling.
  it('7 CFR 205.203(c)(2)(ii): in a vessel, three days, a tenth of a degree short, and one day too hot', () => {
    const vessel = { method: 'in-vessel' } as const;
    expect(under('us-organic-static', logOf('133 135 131', vessel)).verdict).toBe('met');
    expect(under('us-organic-static', logOf('133 130.9 131', vessel)).verdict).toBe('not-yet');
    const hot = logOf('150 172 150', vessel);
    expect(under('us-organic-static', hot)).toMatchObject({ verdict: 'not-yet' });
    expect(under('us-organic-static', hot).demands[0]).toMatchObject({ have: 2, want: 3 });
    expect(demandOf(under('us-produce-static', hot), 'days')?.verdict).toBe('met');
    expect(under('us-sludge-static', hot).verdict).toBe('met');
  });

  // 40 CFR 503 App. B, A.4 against B.1.
  it('40 CFR 503 App. B: five days of 41 to 58 °C meet the lesser sludge rule and not the greater', () => {
    const readings = [41, 45, 52, 58, 47].map((temp_degC, i) => ({
      day: dayOf(i + 1),
      temp_degC,
      ...(temp_degC === 58 && { held_h: 6 }),
    }));
    const log: SanitationLog = { method: 'turned', animalMatter: true, readings, turned: [] };
    expect(under('us-sludge-lesser', log).verdict).toBe('met');
    expect(under('us-sludge-turned', log).verdict).toBe('not-yet');
    const unheld = { ...log, readings: readings.map(({ day, temp_degC }) => ({ day, temp_degC })) };
    expect(under('us-sludge-lesser', unheld).verdict).toBe('cannot-be-shown');
  });

  // 7 CFR 205.203(c)(2)(i): C:N of 25 to 40 at the start; no other rule asks.
  it('7 CFR 205.203(c)(2)(i): C:N 22 at the start misses one rule for good, and no other', () => {
    const log = logOf(S1, { carbonToNitrogen: 22 });
    expect(under('us-organic-turned', log)).toMatchObject({ verdict: 'not-yet', canStill: false });
    expect(under('us-organic-5021', { ...log, allMaterial: true }).verdict).toBe('met');
    expect(under('us-sludge-turned', log).verdict).toBe('met');
    const cured = { ...log, curing: { from_day: dayOf(21), warmest_degC: 45, asWarmAsAir: true } };
    expect(under('us-produce-turned', cured).verdict).toBe('met');
  });

  it('a plain heap, neither turned nor aired, is no turned heap and no aerated one', () => {
    const log = logOf(S1, { method: 'unturned' });
    for (const rule of ['us-organic-turned', 'us-organic-static', 'us-produce-turned', 'us-produce-static'] as const)
      expect(under(rule, log).verdict, rule).toBe('not-meant');
    expect(answer(sanitationCheck, { log }).countsAs).toBe('raw-manure');
  });

  it('nothing logged can show nothing, and counts as raw; what is still fed is not finished', () => {
    const none: SanitationLog = { method: 'turned', animalMatter: true, readings: [], turned: [] };
    const found = answer(sanitationCheck, { log: none });
    expect(found.countsAs).toBe('raw-manure');
    expect(found.rules.filter(({ verdict }) => verdict === 'met')).toEqual([]);
    expect(under('us-sludge-turned', logOf(S1, { stillFed: true })).verdict).toBe('not-yet');
  });

  it('days before the last raw addition do not count', () => {
    const fed = under('us-sludge-turned', logOf(S1, { lastRaw_day: dayOf(6) }));
    expect(demandOf(fed, 'days')).toMatchObject({ verdict: 'not-yet', have: 12 });
    expect(demandOf(fed, 'turns')).toMatchObject({ have: 4 });
  });

  it('a day without a reading leaves it open where it may have been at heat', () => {
    const log = logOf(S1);
    const gap = { ...log, readings: log.readings.filter(({ day }) => day !== dayOf(9) && day !== dayOf(10)) };
    expect(demandOf(under('us-sludge-turned', gap), 'days')).toMatchObject({
      verdict: 'cannot-be-shown',
      why: 'days-unrecorded',
    });
  });

  it('edges that were read decide whether all of it was at heat', () => {
    const log = logOf(S1);
    const edge = (temp_degC: number): SanitationLog => ({
      ...log,
      readings: [...log.readings, ...log.readings.map(({ day }) => ({ day, temp_degC, point: 'edge' as const }))],
    });
    expect(demandOf(under('us-organic-5021', edge(56)), 'all-material')?.verdict).toBe('met');
    expect(demandOf(under('us-organic-5021', edge(40)), 'all-material')?.verdict).toBe('not-yet');
  });

  it('edges that were read and cold go before what is said of all the material', () => {
    const log = logOf(S1, { allMaterial: true });
    const cold = { ...log, readings: [...log.readings, { day: dayOf(5), temp_degC: 27, point: 'edge' as const }] };
    expect(demandOf(under('us-organic-5021', cold), 'all-material')?.verdict).toBe('not-yet');
  });

  it('a rule for registered plants, or one only recalled, makes no garden compost treated', () => {
    const plants = logOf('140T 100 100 140T 100 100 140T 100 100 100 100 100 100 100 100 100 100 100 100 100 100 100');
    expect(under('france-turned', plants).verdict).toBe('met');
    expect(answer(sanitationCheck, { log: plants }).countsAs).toBe('raw-manure');
    const recalled = logOf('142T 142 142T 142 142T 142 142 142', { carbonToNitrogen: 22 });
    expect(under('uk-catering-turned', recalled).verdict).toBe('met');
    expect(answer(sanitationCheck, { log: recalled }).countsAs).toBe('raw-manure');
  });

  it('tells the day on which the days could be full', () => {
    const log = logOf(S1.split(' ').slice(0, 10).join(' '));
    expect(under('us-organic-turned', log)).toMatchObject({ verdict: 'not-yet', earliest_day: dayOf(17) });
  });

  // National Organic Standards Board 2002: four months in indoor bins; guidance 5021 only asks for a finished product.
  it('NOSB 2002: worm beds indoors want four months', () => {
    const worms = {
      kind: 'indoor',
      from_day: '2026-01-01',
      to_day: '2026-04-01',
      moisture_pctWet: 80,
      fedEvery_days: 2,
    } as const;
    expect(answer(sanitationCheck, { worms }).worms).toMatchObject({ verdict: 'not-yet', have_days: 90 });
    expect(answer(sanitationCheck, { worms: { ...worms, to_day: '2026-06-01' } }).worms?.verdict).toBe('met');
  });
});

describe('heat-time: 40 CFR 503.32(a)(3)(ii)', () => {
  // Days or hours as the equation gives them; five digits, as printed in the reference table.
  it.each([
    [50, 40, 13.17, 'A'],
    [55, 40, 2.6278, 'A'],
    [60, 40, 0.52431, 'A'],
    [60, 5, 0.19933, 'D'],
  ] as const)('%d °C at %d %% solids: %d days, case %s', (temp_degC, solids_pctWet, days, paragraph) => {
    const found = answer(heatTimeCalculation, { temp_degC, solids_pctWet });
    expect(found.paragraph).toBe(paragraph);
    expect((found.hold_d ?? 0) / days).toBeCloseTo(1, 3);
  });

  it.each([
    [70, 40, 30.06, 'A'],
    [72, 40, 20, 'A'],
    [70, 5, 30, 'D'],
    [75, 5, 6, 'C'],
  ] as const)('%d °C at %d %% solids: %d minutes, case %s', (temp_degC, solids_pctWet, minutes, paragraph) => {
    const found = answer(heatTimeCalculation, { temp_degC, solids_pctWet });
    expect(found.paragraph).toBe(paragraph);
    expect(((found.hold_d ?? 0) * 1440) / minutes).toBeCloseTo(1, 3);
  });

  it('gives no time below 50 °C, and meets its least time at 71.26 °C', () => {
    expect(answer(heatTimeCalculation, { temp_degC: 49.9, solids_pctWet: 40 })).toEqual({
      paragraph: 'none',
      leastHolds: false,
    });
    expect(answer(heatTimeCalculation, { temp_degC: 71.25, solids_pctWet: 40 }).leastHolds).toBe(false);
    expect(answer(heatTimeCalculation, { temp_degC: 71.27, solids_pctWet: 40 }).leastHolds).toBe(true);
  });
});

describe('heat-kill: Jiang, Morgan, Doyle 2003', () => {
  it('three days at 55 °C: 122 by the formula, and at least 7 is all that is told', () => {
    const found = answer(heatKill, { held: [{ temp_degC: 55, hours: 72 }] });
    expect(found.formula_logs).toBeCloseTo((72 * 60) / 35.4, 6);
    expect(found).toMatchObject({ credited_logs: 7, beyondMeasured: true });
  });

  // Singh, Jiang, Luo 2010: 2.7 logs in cells warmed slowly, 3.6 in others; the formula lies below both.
  it('four hours at 50 °C: 1.78 by the formula, half of it credited', () => {
    const found = answer(heatKill, { held: [{ temp_degC: 50, hours: 4 }] });
    expect(found.formula_logs).toBeCloseTo(1.78, 2);
    expect(found.credited_logs).toBeCloseTo(0.89, 2);
  });

  it('credits nothing below 50 °C, and nothing when dry', () => {
    expect(answer(heatKill, { held: [{ temp_degC: 49.9, hours: 500 }] }).formula_logs).toBe(0);
    expect(answer(heatKill, { held: [{ temp_degC: 65, hours: 5 }], moisture_pctWet: 25 })).toMatchObject({
      credited_logs: 0,
      tooDry: true,
    });
  });
});

describe('cold-skin: geometry, and chance as in Haug 1993 (recalled)', () => {
  // Half a cylinder, f = 1 - ((R - d) / R)^2; half a ball, to the third power.
  it.each([
    ['long-heap', 0.5, 0.15, 0.51],
    ['dome', 0.5, 0.15, 0.66],
    ['long-heap', 0.75, 0.15, 0.36],
    ['dome', 0.75, 0.15, 0.49],
    ['long-heap', 1, 0.15, 0.28],
    ['dome', 1, 0.15, 0.39],
    ['long-heap', 1, 0.1, 0.19],
    ['dome', 1, 0.1, 0.27],
  ] as const)('%s of radius %d m, skin %d m: %d cold', (shape, radius_m, skin_m, share) => {
    expect(answer(coldSkin, { shape, radius_m, skin_m, turns: 5 }).cold_share.p50).toBeCloseTo(share, 2);
  });

  it('chance as in Haug 1993: five turnings of a long heap of 1 m leave 4.6 in 10,000: 3.34 steps', () => {
    const found = answer(coldSkin, { shape: 'long-heap', radius_m: 1, skin_m: 0.15, turns: 5 });
    expect(found.cold_share.p50).toBeCloseTo(0.2775, 4);
    expect(found.unheated_share.p50).toBeCloseTo(4.6e-4, 5);
    expect(found.unheated_logs.p50).toBeCloseTo(3.34, 2);
  });

  it('chance as in Haug 1993: half cold, three steps wanted, nine turnings', () => {
    // 1 - 0.5^(1/2) of the radius is skin where half of a long heap is cold.
    const skin_m = 1 - Math.sqrt(0.5);
    const found = answer(coldSkin, { shape: 'long-heap', radius_m: 1, skin_m, turns: 5, want_logs: 3 });
    expect(found.cold_share.p50).toBeCloseTo(0.5, 9);
    expect(found.turnsWanted?.p50).toBe(9);
  });
});

describe('metals-check: 40 CFR 503.13; CCME 2005; Ontario; EU PFC 3 (recalled)', () => {
  it('one analysis holds one list and misses three', () => {
    const { lists } = answer(metalsCheck, metalsCheck.example);
    const of = (list: string) => lists.find((one) => one.list === list);
    const over = (list: string) => of(list)?.over.map(({ metal }) => metal);
    expect(of('us-garden')?.verdict).toBe('met');
    expect(over('canada-a')).toEqual(['lead', 'zinc']);
    expect(over('ontario-aa')).toEqual(['copper', 'lead', 'zinc']);
    expect(over('eu-soil-improver')).toEqual(['copper', 'lead', 'zinc']);
  });
});

describe('where a rule is to be found', () => {
  it('tells every temperature on both scales, and they agree (NIST SP 811, B.8)', () => {
    for (const { place } of sanitationParameters.rules) {
      const [celsius = [], fahrenheit = []] = (['°C', '°F'] as const).map((unit) =>
        [...place.matchAll(new RegExp(`(?:(\\d+) to )?(\\d+) ${unit}`, 'gu'))].flatMap(([, low, high]) =>
          [low, high].filter((one) => one !== undefined).map(Number),
        ),
      );
      // A law’s own whole degrees: 170 °F is 76.7 °C.
      expect(celsius.map((one) => one * 1.8 + 32).map((one, i) => Math.abs(one - (fahrenheit[i] ?? 999)) < 1)).toEqual(
        fahrenheit.map(() => true),
      );
    }
  });
});
