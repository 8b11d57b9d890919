import { fold, type Holding } from '@loamwright/daybook';
import { testWriter, type Writer } from '@loamwright/daybook/testing';
import { createDraws, type PailCoverInput, pailCover } from '@loamwright/science';
import { createSpeaker, type Saying } from '@loamwright/words';
import { describe, expect, it } from 'vitest';
import { type PailReport, pailQuestion, pailReport } from './index.ts';
import type { PailSaid } from './pail-question.ts';

const needs = { draws: createDraws() };
const metric = createSpeaker({ locale: 'en', system: 'metric' });
const empty = fold([]);
const NOW = '2026-03-01T12:00:00.000Z';
const onDay = (day: string) => ({ happened: `2026-${day}T10:00:00.000Z` });
const scraps = { material: 'kitchen-scraps', amount: { measure: 'pail', count: 1 } } as const;

function reportOn(said: PailSaid, holding: Holding = empty, more: Partial<PailCoverInput> = {}): PailReport {
  const question = pailQuestion(said, holding, NOW);
  const input = { ...question.input, ...more };
  const found = pailCover.run(input, needs);
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return pailReport(found.value, { ...question, input }, holding);
}

const told = (sayings: readonly Saying[]): string => sayings.map((one) => metric.tell(one)).join(' ');

function bin(): Writer {
  const writer = testWriter();
  writer.write('bay-set-up', 'left', { name: 'Left bay', wall: 'pallets', width_m: 1, depth_m: 1, height_m: 1 });
  writer.write('bay-set-up', 'right', { name: 'Right bay', wall: 'pallets' });
  const layers = [
    { material: 'kitchen-scraps', mass_kg: { p10: 3, p50: 4, p90: 5 } },
    { material: 'straw', mass_kg: 2, raw: false },
  ];
  writer.write('heap-built', 'slow', { name: 'Slow', bay: 'left', layers }, onDay('01-01'));
  for (const day of ['01-20', '02-27', '02-28']) writer.write('heap-fed', 'slow', { layers }, onDay(day));
  return writer;
}

describe('the question', () => {
  it('has the layers of the heap with their ages, what is alike and of one time as one', () => {
    const { input, unknown } = pailQuestion({ pail: [scraps], heap: 'slow' }, fold(bin().entries), NOW);
    expect(unknown).toEqual([]);
    expect(input.layers?.map(({ material, age_days }) => `${material} ${age_days}`)).toEqual([
      'kitchen-scraps 56',
      'straw 56',
      'kitchen-scraps 35',
      'straw 35',
      'kitchen-scraps 2',
      'straw 2',
      'kitchen-scraps 1',
      'straw 1',
    ]);
    expect(input.bay).toEqual({ width_m: 1, depth_m: 1, height_m: 1 });
    expect(input.bays).toBe(2);
  });

  it('adds up what went in within one week, long ago', () => {
    const writer = bin();
    const layers = [{ material: 'straw', mass_kg: 3, raw: false }];
    writer.write('heap-fed', 'slow', { layers }, onDay('01-02'));
    writer.write('heap-fed', 'slow', { layers }, onDay('01-03'));
    const { input } = pailQuestion({ pail: [scraps], heap: 'slow' }, fold(writer.entries), NOW);
    expect(input.layers?.find(({ material }) => material === 'straw')).toMatchObject({
      age_days: 56,
      amount: { mass_kg: 8 },
    });
  });

  it('takes the dry stuff in store, the most of it in front, unless told', () => {
    const writer = bin();
    writer.write('stock-in', 'straw', { mass_kg: 5 });
    writer.write('stock-in', 'autumn-leaves', { mass_kg: 20 });
    writer.write('stock-in', 'coffee-grounds', { mass_kg: 20 });
    const holding = fold(writer.entries);
    expect(pailQuestion({ pail: [scraps] }, holding, NOW).input.dry).toEqual([
      { material: 'autumn-leaves', amount: { mass_kg: 20 } },
      { material: 'straw', amount: { mass_kg: 5 } },
    ]);
    const dry = [{ material: 'sawdust', amount: { mass_kg: 1 } }];
    expect(pailQuestion({ pail: [scraps], dry }, holding, NOW).input.dry).toEqual(dry);
    expect(pailQuestion({ pail: [scraps] }, empty, NOW).input.dry).toBeUndefined();
  });

  it('knows what was seen within a week, and a height only until the next pail', () => {
    const writer = bin();
    writer.write('reading', 'slow', { squeeze: 'streams', height_m: 0.6 }, onDay('02-26'));
    writer.write('reading', 'slow', { smell: 'ammonia' }, onDay('02-10'));
    const holding = fold(writer.entries);
    const { input } = pailQuestion({ pail: [scraps], heap: 'slow' }, holding, NOW);
    expect(input).toMatchObject({ squeeze: 'streams' });
    expect(input.smell).toBeUndefined();
    expect(input.height_m).toBeUndefined();
    writer.write('reading', 'slow', { height_m: 0.5 }, { happened: '2026-03-01T09:00:00.000Z' });
    expect(pailQuestion({ pail: [scraps], heap: 'slow' }, fold(writer.entries), NOW).input.height_m).toBe(0.5);
  });

  it('leaves out what nobody knows and names it', () => {
    const writer = bin();
    writer.write('material-described', 'our-dust', { name: 'Dust' });
    writer.write('heap-fed', 'slow', { layers: [{ material: 'our-dust', mass_kg: 2 }] }, onDay('02-20'));
    const holding = fold(writer.entries);
    expect(pailQuestion({ pail: [scraps], heap: 'slow' }, holding, NOW).unknown).toEqual(['our-dust']);
    expect(told(reportOn({ pail: [scraps], heap: 'slow' }, holding).bin)).toContain('Nothing can be reckoned of Dust');
  });
});

describe('the answer', () => {
  it('is one sentence in which every amount can be touched', () => {
    const report = reportOn({ pail: [scraps] });
    expect(metric.tell(report.answer)).toBe('Cover this pail with 1 bucket of straw; no water.');
    const touched = metric.tellParts(report.answer).filter(({ place }) => place?.endsWith('.amount'));
    expect(touched).toMatchObject([{ place: 'what.stuff[0].amount', text: '1 bucket' }]);
    expect(told(report.more)).toContain('Any one of these would do instead');
    expect(told(report.more)).toMatch(/half a bucket to 2 buckets may be right/u);
  });

  const leaves = (count: number) => [{ material: 'autumn-leaves', amount: { measure: 'bucket-20l', count } }];

  it.each<readonly [string, PailSaid, Partial<PailCoverInput>, RegExp]>([
    [
      'dry stuff',
      { pail: [{ material: 'straw', amount: { measure: 'barrow', count: 1 } }] },
      {},
      /^Tip it in as it is, it needs no dry stuff; pour 4 L over it\.$/u,
    ],
    ['nothing on hand', { pail: [scraps] }, { dry: [] }, /^Fetch 1 bucket of straw for this pail/u],
    [
      'too little on hand',
      { pail: [scraps, { ...scraps, amount: { measure: 'pail', count: 5 } }], dry: leaves(1) },
      {},
      /^Cover this pail with 1 bucket of autumn leaves;/u,
    ],
    [
      'a full bin',
      { pail: [scraps] },
      { layers: [], bay: { width_m: 1, depth_m: 1, height_m: 1 }, height_m: 1 },
      /^Begin the next bin with this pail and cover it with 1 bucket of straw;/u,
    ],
    [
      'wanted soon',
      { pail: [scraps] },
      { wanted_inDays: 30 },
      /^Let this be the last pail here, under 1 bucket of straw;/u,
    ],
    [
      'a smell of which nothing is known',
      { pail: [scraps], smell: 'sour' },
      {},
      /^Mend the bin before you feed it: fork dry stuff through it until/u,
    ],
    ['frost', { pail: [scraps], state: 'frozen' }, {}, /^Put it on the frozen heap under 1 bucket of straw/u],
    ['a thaw', { pail: [scraps], state: 'thawing' }, {}, /^Mix 1 bucket of straw through it in one go, then cap it/u],
    [
      'much of it, by what it stands in',
      {
        pail: [{ material: 'kitchen-scraps', amount: { mass_kg: 80 } }],
        dry: [{ material: 'autumn-leaves', amount: { measure: 'leaf-bag-30gal', count: 9 } }],
      },
      {},
      /^Cover this pail with \d(\.5)? leaf bags of autumn leaves/u,
    ],
  ])('%s', (_what, said, more, sentence) => {
    expect(metric.tell(reportOn(said, empty, more).answer)).toMatch(sentence);
  });

  it('says what is short, and never without a number', () => {
    const much = { material: 'kitchen-scraps', amount: { measure: 'pail', count: 6 } };
    expect(told(reportOn({ pail: [much], dry: leaves(1) }).more)).toMatch(
      /4 buckets of autumn leaves more is missing/u,
    );
  });

  it('tells the bin, its layers, the room, and what may no longer be said', () => {
    const said = { pail: [scraps], heap: 'slow', ahead: { pails_perWeek: 3, weeks: 20 } };
    const report = reportOn(said, fold(bin().entries));
    expect(told(report.bin)).toMatch(/stands about 0\.\d+ m high and holds \d+ L/u);
    expect(told(report.layers)).toMatch(/kitchen scraps, 56 days ago: about \d+ % of its volume is left/u);
    expect(told(report.room)).toMatch(/room for \d+ more such pails/u);
    expect(told(report.practice)).toContain('the second takes what is new');
    expect(told(report.more)).toMatch(/For 60 such pails keep \d+(\.5)? barrows of straw dry/u);
    expect(told(report.lost)).toContain('kitchen scraps went in raw');
    expect(report.cautions).toContain('rats-flies');
  });

  it('stinging: mended first, by amounts, capped, without lime', () => {
    const writer = testWriter();
    const layers = [{ material: 'grass-clippings', mass_kg: 50 }];
    writer.write('heap-built', 'grass', { name: 'Grass', layers }, onDay('02-28'));
    const said = { pail: [scraps], heap: 'grass', smell: 'ammonia' as const };
    const report = reportOn(said, fold(writer.entries));
    expect(metric.tell(report.answer)).toMatch(
      /^Mend the bin before you feed it: fork \d+(\.5)? barrows of straw through all of it/u,
    );
    expect(told(report.more)).toContain('Cap it with 10 cm to 15 cm');
    expect(told(report.more)).toContain('Then cover this pail with');
    expect(told(report.notes)).toContain('No lime and no ash');
  });

  it('mended: the range is of what is forked in, and the bin is told without it', () => {
    const writer = testWriter();
    const layers = [{ material: 'kitchen-scraps', mass_kg: 60 }];
    writer.write('heap-built', 'wet', { name: 'Wet', layers }, onDay('02-28'));
    const said = { pail: [scraps], heap: 'wet', smell: 'rotten' as const };
    const report = reportOn(said, fold(writer.entries));
    expect(told(report.more)).toMatch(/to [\d.]+ barrows to fork through it may be right\. Then cover this pail with/u);
    expect(told(report.more)).not.toContain('The pail and its dampness are guesses');
    expect(told(report.bin)).toContain('Without what is forked in, the bin then holds');
  });

  it('with dry stuff enough unmixed in the bin, no amount is named for forking', () => {
    const writer = testWriter();
    const layers = [
      { material: 'kitchen-scraps', mass_kg: 10 },
      { material: 'straw', mass_kg: 20, raw: false },
    ];
    writer.write('heap-built', 'layered', { name: 'Layered', layers }, onDay('02-28'));
    const said = { pail: [scraps], heap: 'layered', smell: 'sour' as const };
    const report = reportOn(said, fold(writer.entries));
    expect(metric.tell(report.answer)).toMatch(/^Fork the bin over before you feed it/u);
    expect(report.dry).toEqual([]);
    expect(told(report.more)).not.toContain('may be right');
    expect(told(report.bin)).toMatch(/^The bin then holds/u);
  });
});
