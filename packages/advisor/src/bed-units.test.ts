import { fold } from '@loamwright/daybook';
import {
  type BedBudgetInput,
  bedBudget,
  type CharBlendInput,
  charBlend,
  createDraws,
  type LimeRateInput,
  limeRate,
} from '@loamwright/science';
import { createSpeaker, type Saying } from '@loamwright/words';
import { describe, expect, it } from 'vitest';
import { bedBudgetReport, charReport, limeReport } from './index.ts';

const metric = createSpeaker({ locale: 'en', system: 'metric' });
const us = createSpeaker({ locale: 'en', system: 'us' });
const told = (sayings: readonly Saying[], { tell }: typeof us): string => sayings.map(tell).join(' ');

describe('charcoal on a bed', () => {
  const asked: CharBlendInput = { charcoal_L: 120, bed: { area_m2: 10 }, density_kgPerM3Dry: 250 };
  const found = charBlend.run(asked, { draws: createDraws() });
  if (!found.ok) throw new RangeError('it can be reckoned');
  const said = charReport(asked, found.value);

  it('is held beside the trials in the reader’s own units', () => {
    expect(told(said, metric)).toContain('Trials did best at 30–70 t/ha');
    expect(told(said, metric)).toContain('That is 30 t/ha (');
    // 30 and 70 t/ha: 1 short ton an acre is 2.2417 t/ha (NIST SP 811).
    expect(told(said, us)).toContain('Trials did best at 13–31 tons/acre');
    expect(told(said, us)).not.toMatch(/t\/ha|m²|kg/u);
  });
});

describe('ash on a bed', () => {
  const asked: LimeRateInput = { area_m2: 10, stuff: 'wood-ash', pH: 5.5 };
  const found = limeRate.run(asked, { draws: createDraws() });
  if (!found.ok) throw new RangeError('it can be reckoned');

  it('is raked into a depth in the reader’s own units', () => {
    expect(told(limeReport(asked, found.value), metric)).toContain('and the top 2 cm, raked in only');
    expect(told(limeReport(asked, found.value), us)).toContain('and the top 0.79 in, raked in only');
  });
});

describe('a layer on a bed', () => {
  const adviceOf = (input: BedBudgetInput) => {
    const budget = bedBudget.run(input, { draws: createDraws() });
    if (!budget.ok) throw new RangeError('it can be reckoned');
    return bedBudgetReport({ input, budget: budget.value, releases: [], holding: fold([], {}) }).advice;
  };
  const crops = [{ crop: 'kale', area_m2: 2 }];

  it('that is too thick is held beside the usual in the reader’s own units', () => {
    const advice = adviceOf({ crops, put: [{ material: 'finished-compost', amount: { mass_kg: 250 } }] });
    expect(told(advice, metric)).toContain('usually get at once: 0.6 cm to 2.5 cm a year, or up to 7.6 cm once');
    // 6 and 25 mm over the inch of 25.4 mm (NIST SP 811, B.8); the new bed's 3 inches are told as such.
    expect(told(advice, us)).toContain('usually get at once: 0.24 in to 0.98 in a year, or up to 3 in once');
  });

  it('that is to lie thin, too', () => {
    const advice = adviceOf({ crops, put: [{ material: 'horse-manure-shavings', amount: { mass_kg: 40 } }] });
    expect(told(advice, metric)).toContain('lay it thin, 0.6 cm to 1 cm.');
    expect(told(advice, us)).toContain('lay it thin, 0.24 in to 0.39 in.');
  });
});
