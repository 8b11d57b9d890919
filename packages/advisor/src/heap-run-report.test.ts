import {
  createDraws,
  type HeapRunAnswer,
  type HeapRunInput,
  type HeapRunNote,
  heapRun,
  type PlaceFilled,
} from '@loamwright/science';
import { createSpeaker } from '@loamwright/words';
import { beforeAll, describe, expect, it } from 'vitest';
import { readCsv } from './csv-read.ts';
import { heapRunCsv } from './heap-run-csv.ts';
import { heapRunReport } from './heap-run-report.ts';
import { heapSizeReport } from './heap-size-report.ts';

const { tell } = createSpeaker({ locale: 'en', system: 'metric' });
const input: HeapRunInput = {
  ingredients: [
    { material: 'goat-bedding', amount: { measure: 'barrow', count: 4 } },
    { material: 'grass-clippings', amount: { measure: 'barrow', count: 3 } },
    { material: 'straw', amount: { measure: 'barrow', count: 3 } },
  ],
  weather: { still: { temp_degC: 14 } },
  days: 8,
  members: 8,
};

let found: HeapRunAnswer;
beforeAll(() => {
  const run = heapRun.run(input, { draws: createDraws() });
  if (!run.ok) throw new Error(JSON.stringify(run.problems));
  found = run.value;
});

const place = (from_day: number, high_m: number): PlaceFilled => ({
  from_day,
  form: 'box',
  volume_m3: { p10: 1, p50: 1, p90: 1 },
  height_m: { p10: 0.9 * high_m, p50: high_m, p90: 1.1 * high_m },
});
const every = { heats: { met: 8, of: 8 }, firstTurn_day: { p10: 2, p50: 3.4, p90: 6 } } as const;

describe('what a heap would do, in words', () => {
  it.each([
    [8, 'It should heat'],
    [7, 'It should heat'],
    [6, 'It may heat or stay cold'],
    [2, 'It may heat or stay cold'],
    [1, 'It is likely to stay cold'],
    [0, 'It is likely to stay cold'],
  ])('of eight heaps %d heat: %s', (met, begins) => {
    const text = tell(heapRunReport({ ...found, heats: { met, of: 8 } }).heats);
    expect(text.startsWith(begins)).toBe(true);
    expect(text).toContain('8 draws');
    expect(text).not.toMatch(/\b(?:always|never|certain)\b/u);
  });

  it('tells the first turn with its range where most heat, and none where it stays cold', () => {
    const turnOf = (of: Partial<HeapRunAnswer>): string | undefined => {
      const { turn } = heapRunReport({ ...found, ...every, ...of });
      return turn === undefined ? undefined : tell(turn);
    };
    expect(turnOf({})).toContain('around day 3 (2–6), when it comes to 71 °C or falls below 55 °C again');
    expect(turnOf({ heats: { met: 0, of: 8 } })).toBeUndefined();
    expect(turnOf({ firstTurn_day: undefined })).toContain('no turn');
  });

  it('every figure of the answer and of its reasons stands with its range', () => {
    const { heats, lost, reasons } = heapRunReport({
      ...found,
      ...every,
      heatThroughSurface_share: { p10: 0.2, p50: 0.3, p90: 0.4 },
      heatWithAir_share: { p10: 0.5, p50: 0.6, p90: 0.8 },
    });
    expect(tell(heats).match(/\d–\d/gu)).toHaveLength(3);
    expect(tell(lost).match(/\d–\d/gu)).toHaveLength(3);
    expect(reasons.map(tell)[0]).toBe(
      'Of the heat it makes, 30 % leaves through its surface and the ground (20–40) and 60 % with air and steam (50–80).',
    );
  });

  it('never loses less than nothing', () => {
    const { lost } = heapRunReport({ ...found, nitrogenLost_pctNitrogen: { p10: -0.6, p50: -0.1, p90: 2.4 } });
    expect(tell(lost)).toContain('and 0 % of its nitrogen (0–2).');
  });

  it('tells no share of a heat that is next to none', () => {
    const shares = (low: number, middle: number) => ({ p10: low, p50: middle, p90: 3 });
    const reasonOf = (low: number, middle: number) =>
      heapRunReport({ ...found, heatThroughSurface_share: shares(low, middle) }).reasons[0]?.key;
    expect(reasonOf(-2, 0.3)).toBe('twin.heat.open');
    expect(reasonOf(-30, -12)).toBe('twin.heat.none');
  });

  it('has words for every note', () => {
    const notes: Readonly<Record<HeapRunNote, true>> = {
      'may-stay-cold': true,
      'taken-cold': true,
      'airless-core': true,
      'dries-out': true,
      'runs-off': true,
      'past-the-curve': true,
      freezes: true,
      'loses-more-nitrogen': true,
      'stands-high': true,
    };
    const all = Object.keys(notes) as HeapRunNote[];
    const told = heapRunReport({ ...found, notes: all, places: [place(0, 2)] }).notes.map(tell);
    expect(new Set(told).size).toBe(all.length + 1);
  });

  it('says of each place where it stands too high how high, and how high is commonly the most, in the reader’s own units', () => {
    const { notes } = heapRunReport({
      ...found,
      notes: ['stands-high'],
      places: [place(0, 1.9), place(6, 3), place(9, 1), { ...place(12, 5), form: 'drum' }],
    });
    const [built, turned, count] = notes;
    if (built === undefined || turned === undefined) throw new Error('two notes');
    expect(count?.key).toBe('twin.count');
    expect(tell(built)).toMatch(/^Where it is built it stands about 1\.9 m high/u);
    expect(tell(turned)).toContain(
      'turned into on day 6 it stands about 3 m high at its fullest, 2.7–3.3 m. About 1.8 m',
    );
    // Five to six feet is about the most for any pile (WSU Extension); 3 m over the foot of 0.3048 m.
    const us = createSpeaker({ locale: 'en', system: 'us' }).tell(turned);
    expect(us).toContain('about 9.8 ft high');
    expect(us).toContain('About 6 ft is commonly');
  });

  it('its courses are a table that reads back', () => {
    const read = readCsv(heapRunCsv(found), ',', 'x.csv');
    if (!read.ok) throw new Error('the table is sound');
    expect(read.value).toHaveLength(found.day.length + 1);
    expect(read.value.slice(1).map(({ cells }) => Number(cells[3]))).toEqual(found.core_degC.p90);
    expect(read.value[1]?.cells.slice(13).map(Number)).toEqual(found.shells_degC[0]);
  });
});

describe('the smallest heap, in words', () => {
  const of = (volume_m3: number | undefined, met: number) => ({
    ...(volume_m3 !== undefined && { volume_m3, side_m: Math.cbrt(volume_m3) }),
    tried: [{ volume_m3: volume_m3 ?? 30, holds: { met, of: 32 } }],
    start_degC: 5,
    notes: [],
    cautions: [],
  });
  const asked = { above_degC: 55, days: 3, followed_days: 14 };

  it('has a range, open where no size is enough in three of four', () => {
    const told = (large: number | undefined) =>
      tell(heapSizeReport({ likely: of(1, 16), small: of(0.5, 8), large: of(large, 24) }, asked).answer);
    expect(told(2)).toContain('is about 1,000 L (500 L to 2,000 L), a cube of 1 m');
    expect(told(undefined)).toContain('(500 L or more)');
  });

  it('is none where the largest does not do', () => {
    const none = of(undefined, 3);
    const { answer, reasons } = heapSizeReport({ likely: none, small: none, large: none }, asked);
    expect(tell(answer)).toContain('about 1 in 10 (3 of 32 draws)');
    expect(reasons).toEqual([]);
  });

  it('says that its stuff was taken as cold as the air, in the reader’s own degrees', () => {
    const cold = { ...of(1, 16), notes: ['taken-cold' as const] };
    const { notes } = heapSizeReport({ likely: cold, small: cold, large: cold }, asked);
    const us = createSpeaker({ locale: 'en', system: 'us' });
    expect(notes.map(us.tell).join(' ')).toContain('as cold as the air, 41 °F.');
  });
});
