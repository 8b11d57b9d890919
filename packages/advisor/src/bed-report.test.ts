import { fold } from '@loamwright/daybook';
import { minutesIn2026, testWriter } from '@loamwright/daybook/testing';
import { createDraws, isEstimate, likely, yieldEstimate } from '@loamwright/science';
import { createSpeaker } from '@loamwright/words';
import { describe, expect, it } from 'vitest';
import {
  type BedMoment,
  bedReckoned,
  bedRecords,
  bedReport,
  bedsOverview,
  heapSpread,
  heapYieldInput,
  spreadsOf,
} from './index.ts';

const speaker = createSpeaker({ locale: 'en', system: 'metric' });
const MINUTES_PER_DAY = 1440;
const day = (number: number): string => minutesIn2026(number * MINUTES_PER_DAY);
const moment: BedMoment = { now: day(120), zone: 'UTC', speaker, needs: { draws: createDraws() } };

function garden() {
  const writer = testWriter();
  writer.write('bed-set-up', 'kale', { name: 'Kale', area_m2: 12 }, { happened: day(1) });
  writer.write('bed-set-up', 'leeks', { name: 'Leeks', area_m2: 4 }, { happened: day(1) });
  writer.write(
    'heap-built',
    'heap',
    {
      name: 'Heap',
      layers: [
        { material: 'straw', mass_kg: 20 },
        { material: 'goat-bedding', mass_kg: 60 },
      ],
    },
    { happened: day(2) },
  );
  return writer;
}

function bedIn(holding: ReturnType<typeof fold>, id: string) {
  const bed = holding.beds.get(id);
  if (bed === undefined) throw new RangeError(`no bed ${id}`);
  return bed;
}

function heapIn(holding: ReturnType<typeof fold>) {
  const heap = holding.heaps.get('heap');
  if (heap === undefined) throw new RangeError('no heap');
  return heap;
}

describe('the beds in a line each', () => {
  it('says what is short, and of a bare bed nothing more than that it is bare', () => {
    const writer = garden();
    expect(speaker.tell(bedsOverview(fold(writer.entries, {}), moment).headline)).toContain('nothing sown for 2026');
    writer.write('sown', 'kale', { crop: 'kale' }, { happened: day(90) });
    const { headline, beds } = bedsOverview(fold(writer.entries, {}), moment);
    expect(speaker.tell(headline)).toContain('one is short of nitrogen');
    expect(beds.map(({ stands }) => (stands === null ? null : speaker.tell(stands)))).toEqual([
      expect.stringContaining('Short of about'),
      null,
    ]);
  });

  it('of none says so', () => {
    expect(speaker.tell(bedsOverview(fold([], {}), moment).headline)).toContain('No bed');
  });
});

describe('two crops on one bed', () => {
  const reportOf = (write: (writer: ReturnType<typeof testWriter>) => void) => {
    const writer = garden();
    write(writer);
    const holding = fold(writer.entries, {});
    const needed = bedReckoned(bedIn(holding, 'kale'), holding, moment)?.budget.elements.nitrogen.need_kg.p50 ?? 0;
    return { needed, report: bedReport(bedIn(holding, 'kale'), holding, moment) };
  };
  const one = reportOf((writer) => writer.write('sown', 'kale', { crop: 'kale' }, { happened: day(90) }));

  it('that stand together want no more of the same than one of them on all of it', () => {
    const two = reportOf((writer) => {
      for (const at of [90, 91]) writer.write('sown', 'kale', { crop: 'kale' }, { happened: day(at) });
    });
    // The two parts are drawn each by itself, which moves the middle by a few percent.
    expect(two.needed / one.needed).toBeCloseTo(1, 1);
    expect(two.report.ground.map((said) => speaker.tell(said)).join(' ')).toContain('6 m² for kale');
    expect(one.report.ground).toEqual([]);
  });

  it('that follow one another want each for the whole bed', () => {
    const after = reportOf((writer) => {
      writer.write('sown', 'kale', { crop: 'kale' }, { happened: day(90) });
      writer.write('harvested', 'kale', { crop: 'kale', last: true }, { happened: day(110) });
      writer.write('sown', 'kale', { crop: 'kale' }, { happened: day(110) });
    });
    expect(after.needed / one.needed).toBeCloseTo(2, 1);
    expect(after.report.ground).toEqual([]);
  });
});

describe('a bed’s page', () => {
  it('tells what was done, newest first, and what the tables do not know', () => {
    const writer = garden();
    writer.write('sown', 'kale', { crop: 'something-odd' }, { happened: day(90) });
    writer.write('soil-tested', 'kale', { pH: 6.2 }, { happened: day(95) });
    const report = bedReport(bedIn(fold(writer.entries, {}), 'kale'), fold(writer.entries, {}), moment);
    expect(report.budget).toBeUndefined();
    expect(speaker.tell(report.answer)).toContain('not in the tables');
    expect(report.done.map(({ instant }) => instant)).toEqual([day(95), day(90)]);
  });
});

describe('a soil test as the lab prints it', () => {
  const asked = { season: 2026, zone: 'UTC', speaker };
  const read = (body: object) => {
    const writer = garden();
    writer.write('soil-tested', 'kale', body as never, { happened: day(20) });
    const holding = fold(writer.entries, {});
    return bedRecords(bedIn(holding, 'kale'), holding, asked).soilTest;
  };

  // Bray-1 above 80 ppm is where Minnesota recommends no phosphorus at all (University of Minnesota, as told in the bank of questions).
  it('is classed by the tables of its own method', () => {
    const figure = { element: 'phosphorus', value: 100, unit: 'ppm', method: 'bray-1' };
    expect(read({ figures: [figure] }).phosphorusClass).toBe('excessive');
  });

  it('is not classed without its method or unit', () => {
    expect(read({ figures: [{ element: 'phosphorus', value: 100, unit: 'ppm' }] })).toEqual({});
    expect(read({ figures: [{ element: 'phosphorus', value: 100, method: 'bray-1' }] })).toEqual({});
  });

  it('of the first version counts where its words name the method', () => {
    expect(read({ phosphorus_mgPerKg: 100, method: 'Bray 1' }).phosphorusClass).toBe('excessive');
    expect(read({ phosphorus_mgPerKg: 100, method: 'posted to a lab' })).toEqual({});
  });
});

describe('a heap shared among beds', () => {
  const holding = fold(garden().entries, {});
  const asked = {
    heap: heapIn(holding),
    beds: [bedIn(holding, 'kale'), bedIn(holding, 'leeks')],
    measure: 'barrow',
    measures: 4,
    carried: 4,
    workedIn: false,
  };

  it('by area gives whole measures that add up, and entries that take the whole heap', () => {
    const found = heapSpread({ ...asked, by: 'area' }, holding, moment);
    if (!found.ok) throw new RangeError('shared');
    expect(found.value.shares.map(({ bed, count }) => [bed, count])).toEqual([
      ['kale', 3],
      ['leeks', 1],
    ]);
    const writer = garden();
    for (const { bed, body } of spreadsOf({ ...asked, by: 'area' }, found.value.shares))
      writer.write('spread', bed, body, { happened: day(100) });
    const after = fold(writer.entries, {});
    expect(heapIn(after).left).toBeCloseTo(0, 12);
    const shares = ['kale', 'leeks'].map((bed) => bedIn(after, bed).spreadings.flatMap(({ layers }) => layers));
    const mass = shares.map((layers) => layers.reduce((sum, { mass_kg }) => sum + mass_kg, 0));
    expect((mass[0] ?? 0) / (mass[1] ?? 1)).toBeCloseTo(3, 9);
  });

  it('by need where no bed wants anything is refused', () => {
    const found = heapSpread({ ...asked, by: 'need' }, holding, moment);
    expect(found.ok ? [] : found.problems.map(({ code }) => code)).toEqual(['nothing-wanted']);
  });

  it('says which bed would get more than it wants', () => {
    const writer = garden();
    writer.write('sown', 'leeks', { crop: 'leeks' }, { happened: day(90) });
    writer.write(
      'soil-tested',
      'leeks',
      { figures: [{ element: 'phosphorus', value: 100, unit: 'ppm', method: 'bray-1' }] },
      { happened: day(20) },
    );
    const tested = fold(writer.entries, {});
    const found = heapSpread(
      { ...asked, heap: heapIn(tested), beds: [bedIn(tested, 'kale'), bedIn(tested, 'leeks')], by: 'area' },
      tested,
      moment,
    );
    expect(found.ok && found.value.shares.map(({ tooMuch }) => tooMuch !== null)).toEqual([false, true]);
    expect(found.ok && found.value.shares.every(({ volume_m3 }) => !isEstimate(volume_m3))).toBe(true);
  });
});

describe('compost of a heap on a bed', () => {
  it('holds what went into that heap, not what the tables’ compost holds', () => {
    const writer = garden();
    writer.write('finished', 'heap', {}, { happened: day(60) });
    const part = { type: 'heap', id: 'heap', share: 1 } as const;
    writer.write('spread', 'kale', { of: part, volume_m3: 0.1, workedIn: true }, { happened: day(70) });
    const holding = fold(writer.entries, {});
    const { put } = bedRecords(bedIn(holding, 'kale'), holding, { season: 2026, zone: 'UTC', speaker });
    const described = put[0]?.described;
    const input = heapYieldInput(heapIn(fold(garden().entries, {})), fold(garden().entries, {}), day(60));
    const found = input === undefined ? undefined : yieldEstimate.run(input, moment.needs);
    if (found?.ok !== true || described?.phosphorus_pctDry === undefined) throw new RangeError('reckoned');
    // Fewer draws than the page has move the middle by a few percent.
    expect(likely(described.phosphorus_pctDry) / found.value.phosphorus_pctDry.p50).toBeCloseTo(1, 1);
    expect(likely(described.nitrogen_pctDry ?? 0) / found.value.nitrogen_pctDry.p50).toBeCloseTo(1, 1);
  });

  it('unripe keeps the tables’ figures', () => {
    const writer = garden();
    const part = { type: 'heap', id: 'heap', share: 1 } as const;
    writer.write('spread', 'kale', { of: part, volume_m3: 0.1, workedIn: true }, { happened: day(70) });
    const holding = fold(writer.entries, {});
    const { put } = bedRecords(bedIn(holding, 'kale'), holding, { season: 2026, zone: 'UTC', speaker });
    expect(put[0]?.material).toBe('unfinished-compost');
    expect(put[0]?.described).toBeUndefined();
  });
});

describe('what was planted once', () => {
  it('wants something every year until its last harvest; what is sown each year does not', () => {
    const writer = garden();
    writer.write('sown', 'kale', { crop: 'strawberries' }, { happened: day(90) });
    writer.write('sown', 'kale', { crop: 'kale' }, { happened: day(90) });
    const cropsOf = (entries: typeof writer.entries): readonly string[] => {
      const holding = fold(entries, {});
      const asked = { season: 2027, zone: 'UTC', speaker };
      return bedRecords(bedIn(holding, 'kale'), holding, asked).crops.map(({ crop }) => crop);
    };
    expect(cropsOf(writer.entries)).toEqual(['strawberry']);
    writer.write('harvested', 'kale', { crop: 'strawberries', last: true }, { happened: day(200) });
    expect(cropsOf(writer.entries)).toEqual([]);
  });
});
