import { fold } from '@loamwright/daybook';
import { minutesIn2026, testWriter } from '@loamwright/daybook/testing';
import {
  allCrops,
  allMaterials,
  availableNitrogen,
  type BedBudgetInput,
  bedBudget,
  createDraws,
} from '@loamwright/science';
import { createSpeaker } from '@loamwright/words';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bedBudgetReport, bedRecords, cropNamed, seasonOf } from './index.ts';

const metric = createSpeaker({ locale: 'en', system: 'metric' });
const us = createSpeaker({ locale: 'en', system: 'us' });
const draws = createDraws();
const MINUTES_PER_DAY = 1440;
const day = (number: number): string => minutesIn2026(number * MINUTES_PER_DAY);

const crops = fc.constantFrom(...allCrops.filter(({ yield_tPerHa }) => yield_tPerHa).map(({ id }) => id));
const stuffs = fc.constantFrom(...allMaterials.filter(({ permit }) => permit === 'allowed').map(({ id }) => id));
const covers = fc.constantFrom('hairy-vetch', 'cereal-rye', 'alfalfa', 'dry-beans');

const beds: fc.Arbitrary<BedBudgetInput> = fc.record({
  crops: fc.array(fc.record({ crop: crops, area_m2: fc.double({ min: 1, max: 50, noNaN: true }) }), {
    minLength: 1,
    maxLength: 3,
  }),
  put: fc.array(
    fc.record({
      material: stuffs,
      amount: fc.record({ mass_kg: fc.double({ min: 0.5, max: 20, noNaN: true }) }),
      placed: fc.constantFrom('dug-in' as const, 'mulched' as const),
      seasonsAgo: fc.integer({ min: 0, max: 3 }),
    }),
    { maxLength: 3 },
  ),
  before: fc.array(fc.record({ what: covers }), { maxLength: 2 }),
  soilTest: fc.record(
    {
      phosphorusClass: fc.constantFrom('low' as const, 'excessive' as const),
      pH: fc.double({ min: 4, max: 8, noNaN: true }),
      organicMatter_pctDry: fc.double({ min: 1, max: 12, noNaN: true }),
      conductivity_dSPerM: fc.double({ min: 0.1, max: 6, noNaN: true }),
    },
    { requiredKeys: [] },
  ),
  fertilisers: fc.constant([
    { nitrogen_pctAsIs: 12, price_perKg: 2 },
    { nitrogen_pctAsIs: 20, potash_pctAsIs: 10 },
  ]),
});

it('the budget of any bed is told in whole sentences, in both systems', () => {
  const holding = fold([], {});
  fc.assert(
    fc.property(beds, (input) => {
      const budget = bedBudget.run(input, { draws });
      if (!budget.ok) throw new Error(JSON.stringify(budget.problems));
      const releases = (input.put ?? []).flatMap(({ seasonsAgo, ...dressing }) => {
        const release = availableNitrogen.run(dressing, { draws });
        return release.ok && seasonsAgo === 0 ? [{ material: dressing.material, release: release.value }] : [];
      });
      const { answer, range, cautions, ...others } = bedBudgetReport({
        input,
        budget: budget.value,
        releases,
        holding,
      });
      for (const saying of [answer, range, ...Object.values(others).flat()]) {
        expect(`${metric.tell(saying)} ${us.tell(saying)}`).not.toMatch(/undefined|NaN|Infinity|\{/u);
      }
      expect(cautions).toContain('local-rules');
    }),
    { seed: 31, numRuns: 60 },
  );
});

describe('the season of a day', () => {
  it.each([
    ['2026-04-01T10:00:00.000Z', 2026],
    ['2026-08-31T10:00:00.000Z', 2026],
    ['2026-09-01T10:00:00.000Z', 2027],
    ['2026-12-31T23:30:00.000Z', 2027],
  ])('%s serves the harvest of %d', (instant, season) => {
    expect(seasonOf(instant, 'UTC')).toBe(season);
  });

  it('goes by the day in the garden', () => {
    expect(seasonOf('2026-08-31T23:30:00.000Z', 'Europe/Berlin')).toBe(2027);
  });
});

describe('a crop by name', () => {
  it('is found by its id, its name, another word or a plural', () => {
    for (const { id } of allCrops) expect(cropNamed(id, metric)).toEqual({ id });
    expect(cropNamed('Zucchini', metric)).toEqual({ id: 'squash-summer' });
    expect(cropNamed('leeks', metric)).toEqual({ id: 'leek' });
    expect(cropNamed('tomatoes', metric)).toEqual({ id: 'tomato-staked' });
    expect(cropNamed('potatos', metric)).toEqual({ id: 'potato' });
    expect(cropNamed('toString', metric)).toHaveProperty('nearest');
  });
});

describe('a bed of the daybook', () => {
  it('gives what was sown this season, what was spread in every season, and the newest test of each kind', () => {
    const writer = testWriter();
    writer.write('bed-set-up', 'kale', { name: 'Kale', area_m2: 10 }, { happened: day(1) });
    writer.write(
      'heap-built',
      'heap',
      { name: 'Heap', layers: [{ material: 'straw', mass_kg: 20 }] },
      { happened: day(2) },
    );
    const straw = { type: 'material', id: 'straw', mass_kg: 8, raw: false } as const;
    writer.write('spread', 'kale', { of: straw, workedIn: false }, { happened: day(60) });
    const part = { type: 'heap', id: 'heap', share: 0.25 } as const;
    writer.write('spread', 'kale', { of: part, workedIn: true }, { happened: day(70) });
    writer.write('finished', 'heap', { mass_kg: 9 }, { happened: day(80) });
    writer.write('spread', 'kale', { of: part, mass_kg: 5, workedIn: true }, { happened: day(300) });
    writer.write('sown', 'kale', { crop: 'curly-kale', area_m2: 4 }, { happened: day(90) });
    writer.write('sown', 'kale', { crop: 'leeks' }, { happened: day(310) });
    writer.write('sown', 'kale', { crop: 'something-odd' }, { happened: day(310) });
    writer.write('soil-tested', 'kale', { pH: 6.1, conductivity_dSPerM: 1, method: '1:5' }, { happened: day(20) });
    writer.write('soil-tested', 'kale', { pH: 6.4, organicMatter_pctDry: 4 }, { happened: day(200) });
    const holding = fold(writer.entries, {});
    const bed = holding.beds.get('kale');
    if (bed === undefined) throw new Error('no bed');
    const asked = { zone: 'UTC', speaker: metric };
    const next = bedRecords(bed, holding, { ...asked, season: 2027 });
    // What the tables lack takes ground all the same: half of the bed is left for the leeks.
    expect(next.crops).toEqual([{ crop: 'leek', area_m2: 5 }]);
    expect(next.put.map(({ material, seasonsAgo, placed }) => [material, seasonsAgo, placed])).toEqual([
      ['straw', 1, 'mulched'],
      ['finished-compost', 0, 'dug-in'],
    ]);
    expect(next.leftOut.map((one) => metric.tell(one))).toEqual(['Heap']);
    expect(next.unknown).toEqual(['something-odd']);
    expect(next.soilTest).toEqual({ pH: 6.4, organicMatter_pctDry: 4 });
    const now = bedRecords(bed, holding, { ...asked, season: 2026 });
    expect(now.crops).toEqual([{ crop: 'kale', area_m2: 4 }]);
    expect(now.put.map(({ material, seasonsAgo }) => [material, seasonsAgo])).toEqual([['straw', 0]]);
  });
});
