import { type BedFillInput, bedFill, createDraws, type PottingMixInput, pottingMix } from '@loamwright/science';
import { createSpeaker } from '@loamwright/words';
import { describe, expect, it } from 'vitest';
import { type BedFillReport, bedFillReport, type PottingReport, pottingReport } from './index.ts';

const needs = { draws: createDraws() };
const metric = createSpeaker({ locale: 'en', system: 'metric' });
const us = createSpeaker({ locale: 'en', system: 'us' });

function potted(input: Partial<PottingMixInput>): PottingReport {
  const outcome = pottingMix.run({ use: 'potting-on', wanted: [{ count: 20, each_L: 3 }], ...input }, needs);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return pottingReport(outcome.value);
}

function filled(input: Partial<BedFillInput>): BedFillReport {
  const outcome = bedFill.run({ bed: { length_m: 2.4, width_m: 1.2, depth_m: 0.4 }, ...input }, needs);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return bedFillReport(outcome.value);
}

const said = ({ judged, advice }: PottingReport | BedFillReport): string =>
  [...judged, ...advice].map((saying) => metric.tell(saying)).join(' ');

describe('a potting mix in words', () => {
  it('is one sentence whose volumes can be touched', () => {
    const { answer } = potted({});
    expect(metric.tell(answer)).toMatch(
      /^Stir together [\d.]+ buckets? \(\d+ L\) of compost, .* leaf mould,? and .* garden soil: that fills 60 L of pots and trays\.$/u,
    );
    const places = metric.tellParts(answer).flatMap(({ place, figure }) => (figure === undefined ? [] : [place]));
    expect(places).toEqual(['stuff[0].volume', 'stuff[1].volume', 'stuff[2].volume', 'volume']);
  });

  it('tells a little by its volume, in the reader’s units', () => {
    const { answer } = potted({ use: 'sowing', wanted: [{ count: 2, vessel: 'seed-tray' }] });
    expect(metric.tell(answer)).toMatch(
      /^Stir together [\d.]+ L of garden soil|of garden soil, [\d.]+ L of leaf mould/u,
    );
    expect(us.tell(answer)).toMatch(/[\d.]+ gal of leaf mould/u);
    expect(metric.tell(answer)).not.toContain('0.25 buckets');
  });

  it('tells salts with their limit and chance, and that nobody measured them', () => {
    expect(said(potted({}))).toMatch(/bear 3\.5; under it: .* of 256 draws\)/u);
    expect(said(potted({}))).toContain('Nobody measured the salts');
    const measured = potted({ compost: { conductivity: { value_dSPerM: 1, method: 'one-to-two' } } });
    expect(said(measured)).not.toContain('Nobody measured');
  });

  it('tells a salty, young compost what to do, with amounts', () => {
    const report = potted({
      compost: { conductivity: { value_dSPerM: 12, method: 'saturated-extract' }, smell: 'ammonia' },
    });
    const text = said(report);
    expect(text).toContain('still young');
    expect(text).toMatch(/let \d+ L of rain or tap water run through it/u);
    expect(text).toContain('Leaf mould can take the compost’s place');
    expect(text).toMatch(/By its salts (?:not even 5 %|up to \d+ %) of this compost/u);
  });

  it('does not begin with a recipe where the compost is too young or too salty for one', () => {
    const salty = { conductivity: { value_dSPerM: 25, method: 'one-to-two' } } as const;
    for (const compost of [salty, { smell: 'ammonia' } as const]) {
      expect(metric.tell(potted({ compost }).answer)).toMatch(/^Not with this compost yet: /u);
    }
    expect(metric.tell(potted({}).answer)).not.toContain('Not with');
  });

  it('says what is short and what is enough', () => {
    const { parts } = potted({
      onHand: [
        { part: 'compost', amount: { measure: 'barrow', count: 2 } },
        { part: 'loam', amount: { measure: 'bucket-20l', count: 0.5 } },
      ],
    });
    const stock = parts.map((part) => part.stock && metric.tell(part.stock));
    expect(stock[0]).toMatch(/^Of compost there is enough/u);
    expect(stock[1]).toBeNull();
    expect(stock[2]).toMatch(/^Of garden soil about .* is short\./u);
  });

  it('warns of salads in compost that nobody has proven', () => {
    const report = potted({ use: 'sowing', recipe: 'compost-seedling-mix', eatenRaw: true });
    expect(said(report)).toContain('eaten raw');
    expect(report.cautions).toContain('manure-pathogens');
  });

  it('without compost says nothing of compost', () => {
    const text = said(potted({ use: 'sowing' }));
    expect(text).not.toMatch(/Nobody measured|this compost is safe|ripe/u);
    expect(text).toContain('little food');
  });
});

describe('a bed in words', () => {
  it('is one sentence for the mix, one for the foot', () => {
    const { answer, base } = filled({ base: { stuff: 'logs', depth_m: 0.1 } });
    expect(metric.tell(answer)).toMatch(
      /^Bring [\d.]+ barrows \(\d+ L\) of compost and .* once it has settled .* 1,200 L\.$/u,
    );
    expect(base && metric.tell(base)).toMatch(/^First lay .* of logs and branches at the foot\.$/u);
    expect(filled({}).base).toBeNull();
  });

  it('tells its weight in the reader’s units, beside what a deck bears', () => {
    const load = (report: BedFillReport, speaker: typeof us): string =>
      speaker.tell(report.judged[1] ?? { key: 'blend.ripe.unknown' });
    const report = filled({ standsOn: 'deck' });
    expect(load(report, metric)).toMatch(/weighs about \d+ kg\/m².* 290 kg\/m²/u);
    expect(load(report, us)).toMatch(/weighs about \d+ lb\/ft².* 60 lb\/ft²/u);
    expect(report.cautions).toContain('roof-load');
  });

  it('tells how much to keep by for next spring, with its range', () => {
    expect(said(filled({}))).toMatch(/sinks by about [\d.]+ cm more \([\d.]+–[\d.]+ cm\): keep .* by for next spring/u);
  });

  it('keeps nothing by where hardly anything sinks, and never no litres of it', () => {
    const none = said(filled({ compost_pctVolume: 0 }));
    expect(none).toContain('nothing need be kept by');
    expect(none).not.toMatch(/keep 0\.25|\(0 L\)|0 cm more/u);
    const little = said(filled({ bed: { length_m: 0.5, width_m: 0.5, depth_m: 0.3 } }));
    expect(little).toMatch(/sinks by about [\d.]+ cm more .*: keep [\d.]+ L by for next spring/u);
  });

  it('says that more than half of compost is too much', () => {
    expect(said(filled({ compost_pctVolume: 100 }))).toContain('Less compost is better');
    expect(said(filled({ compost_pctVolume: 30 }))).not.toContain('Less compost is better');
  });

  it('says nothing of phosphorus or ripeness without compost', () => {
    expect(said(filled({ compost_pctVolume: 0 }))).not.toMatch(/phosphorus|ripe/u);
  });
});
