import { describe, expect, it } from 'vitest';
import { check } from '../catalogue/index.ts';
import { createDraws } from '../estimate/index.ts';
import { harvestInterval } from './harvest-interval.ts';
import type { HarvestInterval, HarvestIntervalInput, RuleInterval } from './harvest-interval-io.ts';
import type { HarvestRuleId } from './parameters.ts';

function answer(input: HarvestIntervalInput): HarvestInterval {
  const checked = check(harvestInterval.input, input);
  if (!checked.ok) throw new RangeError(JSON.stringify(checked.problems));
  const outcome = harvestInterval.run(checked.value, { draws: createDraws() });
  if (!outcome.ok) throw new RangeError(JSON.stringify(outcome.problems));
  return outcome.value;
}

function under(rule: HarvestRuleId, input: HarvestIntervalInput): RuleInterval {
  const [only] = answer({ ...input, rules: [rule] }).rules;
  if (only === undefined) throw new RangeError(rule);
  return only;
}

const raw = { put: 'raw-manure', lay: 'worked-in' } as const;

describe('harvest-interval', () => {
  // 7 CFR 205.203(c)(1)(ii), (iii): 120 days where the edible part meets the soil, 90 where it does not.
  it('7 CFR 205.203(c)(1): 120 days for lettuce and 90 for sweet corn from 1 March 2026', () => {
    const worked = { ...raw, workedIn_day: '2026-03-01', harvest_day: '2026-06-20' };
    expect(under('us-organic', { ...worked, contact: 'touches' })).toMatchObject({
      verdict: 'not-yet',
      waited_days: 111,
      earliest_day: '2026-06-29',
    });
    expect(under('us-organic', { ...worked, contact: 'clear' })).toMatchObject({
      verdict: 'met',
      waited_days: 111,
      earliest_day: '2026-05-30',
    });
  });

  // The same paragraphs; the dates of a grower's question of 2011: worked in on 30 January.
  it('counts to harvest, not to planting, from working in', () => {
    const worked = { ...raw, spread_day: '2011-01-23', workedIn_day: '2011-01-30' };
    const radish = under('us-organic', {
      ...worked,
      planting_day: '2011-03-01',
      harvest_day: '2011-04-01',
      contact: 'touches',
    });
    expect(radish).toMatchObject({ verdict: 'not-yet', waited_days: 61, earliest_day: '2011-05-30' });
    expect(under('us-organic', { ...worked, contact: 'clear' }).earliest_day).toBe('2011-04-30');
    expect(answer({ ...worked, contact: 'clear' })).toMatchObject({ lay_days: 7, workedInLate: true });
  });

  it('takes compost whose log proves nothing for raw manure', () => {
    const worked = {
      lay: 'worked-in',
      workedIn_day: '2026-03-01',
      harvest_day: '2026-06-20',
      contact: 'touches',
    } as const;
    const unproven = answer({ ...worked, put: 'unproven-compost' });
    expect(unproven.rules).toEqual(answer({ ...worked, put: 'raw-manure' }).rules);
    expect(unproven.because).toBe('log-short');
    expect(under('us-organic', { ...worked, put: 'proven-compost' })).toMatchObject({ verdict: 'met', wait_days: 0 });
  });

  // 7 CFR 205.203(c)(1)(ii), (iii) speak of manure that is incorporated.
  it('can show nothing for manure left on top, or worked in on a day unknown', () => {
    expect(
      under('us-organic', { put: 'raw-manure', lay: 'on-top', spread_day: '2026-01-01', contact: 'touches' }),
    ).toMatchObject({
      verdict: 'cannot-be-shown',
      why: 'not-worked-in',
    });
    expect(under('us-organic', { ...raw, harvest_day: '2026-06-29', contact: 'touches' })).toMatchObject({
      verdict: 'cannot-be-shown',
      why: 'day-unknown',
      latest_day: '2026-03-01',
    });
  });

  // 21 CFR 112.56(a)(1): reserved where it may touch, none where it never does.
  it('names no figure where the produce rule names none', () => {
    const worked = { ...raw, workedIn_day: '2026-03-01', harvest_day: '2026-06-20' };
    expect(under('us-produce-safety', { ...worked, contact: 'touches' }).verdict).toBe('no-figure');
    expect(under('us-produce-safety', { ...worked, contact: 'clear' })).toMatchObject({ verdict: 'met', wait_days: 0 });
  });

  // 21 CFR 112.51 and 112.56(a)(2).
  it('21 CFR 112.51 and 112.56: takes a tea for treated only with clean water and nothing fed', () => {
    const tea = { of: 'proven-compost', fed: false, water: 'clean' } as const;
    const poured = { put: 'compost-tea', lay: 'on-leaves', spread_day: '2026-05-01', contact: 'touches' } as const;
    expect(answer({ ...poured, tea }).treatment).toBe('treated');
    expect(under('us-produce-safety', { ...poured, tea })).toMatchObject({ verdict: 'met', wait_days: 0 });
    expect(answer({ ...poured, tea: { ...tea, water: 'untreated-surface' } }).treatment).toBe('untreated');
    expect(answer({ ...poured, tea: { ...tea, fed: true } }).treatment).toBe('untreated');
    expect(answer(poured).because).toBe('tea-of-unproven');
  });

  // National Organic Standards Board 2004, recommendations 7 and 8.
  it.each(['leachate', 'manure-tea'] as const)('bars %s from leaves, and counts it as raw on the soil', (put) => {
    expect(under('us-organic', { put, lay: 'on-leaves', contact: 'touches' }).verdict).toBe('barred');
    expect(
      under('us-organic', { put, lay: 'worked-in', workedIn_day: '2026-03-01', contact: 'touches' }),
    ).toMatchObject({
      verdict: 'open',
      earliest_day: '2026-06-29',
    });
  });

  // 21 CFR 112.53.
  it('bars what comes from people and pets under every rule', () => {
    const { rules } = answer({
      put: 'human-or-pet-waste',
      lay: 'worked-in',
      workedIn_day: '2020-01-01',
      contact: 'clear',
    });
    expect(new Set(rules.map(({ verdict }) => verdict))).toEqual(new Set(['barred']));
  });

  // Guidance of the United Kingdom, from memory: six months to sowing, twelve to harvest, of what is eaten raw.
  it('asks half a year before sowing as well, where guidance does', () => {
    const spread = { ...raw, spread_day: '2025-01-01', workedIn_day: '2025-01-02', contact: 'touches' } as const;
    expect(under('uk-guidance', { ...spread, planting_day: '2025-05-01', harvest_day: '2026-02-01' }).why).toBe(
      'planted-too-soon',
    );
    expect(under('uk-guidance', { ...spread, planting_day: '2025-08-01', harvest_day: '2026-02-01' }).verdict).toBe(
      'met',
    );
    expect(under('uk-guidance', { ...spread, eatenRaw: false, harvest_day: '2025-06-01' })).toMatchObject({
      wait_days: 0,
    });
  });

  it.each([
    [{ ...raw, contact: 'touches', spread_day: '2026-03-02', workedIn_day: '2026-03-01' }, 'workedIn_day'],
    [{ ...raw, contact: 'touches', planting_day: '2026-03-02', harvest_day: '2026-03-01' }, 'harvest_day'],
    [{ put: 'raw-manure', lay: 'on-top', contact: 'touches', workedIn_day: '2026-03-01' }, 'workedIn_day'],
    [{ ...raw, contact: 'touches', harvest_day: '2026-02-30' }, 'harvest_day'],
  ] as const)('refuses days that cannot be: %o', (input, path) => {
    const checked = check(harvestInterval.input, input);
    expect(checked.ok ? [] : checked.problems.map((problem) => problem.path)).toContain(path);
  });
});
