import { fold } from '@loamwright/daybook';
import { minutesIn2026, testWriter } from '@loamwright/daybook/testing';
import type { Yearly } from '@loamwright/science';
import { createSpeaker } from '@loamwright/words';
import { describe, expect, it } from 'vitest';
import { type YearsRecords, yearsRecords } from './index.ts';

const speaker = createSpeaker({ locale: 'en', system: 'metric' });
const DAY_MINUTES = 1440;
const YEAR_DAYS = 365;
/** A day of 2026, or of a later year. */
const day = (number: number, later = 0): string => minutesIn2026((number + later * YEAR_DAYS) * DAY_MINUTES);

function bed() {
  const writer = testWriter();
  writer.write('bed-set-up', 'kale', { name: 'Kale', area_m2: 12 }, { happened: day(1) });
  return writer;
}

function put(writer: ReturnType<typeof testWriter>, mass_kg: number, happened: string, id = 'straw'): void {
  writer.write('spread', 'kale', { of: { type: 'material', id, mass_kg }, workedIn: true }, { happened });
}

function records(writer: ReturnType<typeof testWriter>, season: number, seasons: number): YearsRecords {
  const holding = fold(writer.entries, {});
  const kale = holding.beds.get('kale');
  if (kale === undefined) throw new RangeError('no bed');
  return yearsRecords(kale, holding, { season, seasons, zone: 'UTC', speaker });
}

const masses = ({ told }: YearsRecords): readonly unknown[] =>
  (told.plan ?? []).map(({ material, amount }: Yearly) => [material, 'mass_kg' in amount ? amount.mass_kg : null]);

describe('what goes on a bed each year, by its records', () => {
  it('is the mean of the last seasons from the first that is written down', () => {
    const writer = bed();
    put(writer, 30, day(90));
    put(writer, 10, day(90, 1));
    put(writer, 20, day(100, 1));
    expect(masses(records(writer, 2027, 1))).toEqual([['straw', 30]]);
    expect(masses(records(writer, 2027, 3))).toEqual([['straw', 30]]);
    put(writer, 60, day(90, 2));
    expect(masses(records(writer, 2028, 3))).toEqual([['straw', 40]]);
    expect(records(writer, 2028, 3).planOf).toEqual([2026, 2027, 2028]);
    expect(masses(records(writer, 2028, 2))).toEqual([['straw', 45]]);
  });

  it('does not count this season before anything went on in it', () => {
    const writer = bed();
    put(writer, 30, day(90));
    expect(masses(records(writer, 2027, 1))).toEqual([['straw', 30]]);
    expect(masses(records(writer, 2027, 3))).toEqual([['straw', 30]]);
  });

  it('is nothing where the last is years ago', () => {
    const writer = bed();
    put(writer, 30, day(90));
    const { told, planOf } = records(writer, 2031, 3);
    expect(told.plan).toBeUndefined();
    expect(planOf).toEqual([]);
  });

  it('tells what was spread without its amount, and keeps different stuff apart', () => {
    const writer = bed();
    put(writer, 5, day(80));
    put(writer, 7, day(81), 'grass-clippings');
    writer.write(
      'heap-built',
      'heap',
      { name: 'Heap', layers: [{ material: 'straw', mass_kg: 9 }] },
      { happened: day(2) },
    );
    const share = { type: 'heap' as const, id: 'heap', share: 1 };
    writer.write('spread', 'kale', { of: share, workedIn: true }, { happened: day(85) });
    const found = records(writer, 2026, 1);
    expect(masses(found)).toEqual([
      ['straw', 5],
      ['grass-clippings', 7],
    ]);
    expect(found.leftOut).toHaveLength(1);
  });
});

describe('what grows on it', () => {
  it('is this season’s, or the last one’s while nothing is sown; a cover crop takes nothing', () => {
    const writer = bed();
    writer.write('sown', 'kale', { crop: 'kale' }, { happened: day(90) });
    expect(records(writer, 2026, 1)).toMatchObject({ cropsOf: 2026, told: { crops: [{ crop: 'kale', area_m2: 12 }] } });
    expect(records(writer, 2027, 1)).toMatchObject({ cropsOf: 2026 });
    writer.write('sown', 'kale', { crop: 'hairy vetch' }, { happened: day(90, 1) });
    const { told, cropsOf } = records(writer, 2027, 1);
    expect(told.crops).toBeUndefined();
    expect(cropsOf).toBeUndefined();
  });
});
