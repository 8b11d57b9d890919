import { readCsv } from '@loamwright/advisor';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { flat, type Garden, garden } from '../../testing/garden.ts';

let home: Garden;
beforeAll(() => {
  home = garden();
});
afterAll(() => home.remove());

const MIX = ['straw=24buckets', 'goat bedding=18buckets', 'coffee-grounds=6buckets', 'grass=8buckets'];
const QUICK = ['--members', '16', '--days', '14'];
const run = (...more: string[]): string[] => ['heap', 'run', ...MIX, '--bay', '1.2x1.2m', '--walls', 'pallet', ...more];

interface Value {
  readonly input: { readonly weather: unknown; readonly shape: unknown; readonly acts: unknown };
  readonly heats: { readonly met: number; readonly of: number };
  readonly peak_degC: { readonly p50: number };
  readonly day: readonly number[];
  readonly core_degC: { readonly p50: readonly number[] };
  readonly volume_m3: { readonly p50: readonly number[] };
}
const answerOf = async (args: readonly string[], around?: Parameters<Garden['json']>[1]): Promise<Value> =>
  (await home.json(args, around)).value as Value;

describe('heap run', () => {
  it('tells a sentence with its ranges, why, the core’s course and the shells, within 80 columns', async () => {
    const { code, out } = await home.run(run('--air', '14C', '--turn', '6', ...QUICK, '--units', 'metric'));
    expect(code).toBe(0);
    const text = flat(out);
    expect(text).toMatch(
      /^It (?:should heat|may heat or stay cold): the chance that the core comes to 55 °C is .+ of 16 draws\)/u,
    );
    expect(text).toMatch(/In 14 days it loses \d+ % of its dry matter \(\d+–\d+\)/u);
    expect(text).toMatch(/Of the heat it makes|so little heat/u);
    expect(out).toMatch(/^ *\d+ °C .*●/mu);
    expect(out).toMatch(/^day +core +surface$/mu);
    expect(out).toMatch(/\^ turned/u);
    expect(text).toContain('! Fire');
    expect(text).toContain('! Manure can carry germs: gloves');
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
    expect(text).not.toMatch(/\b(?:0|100) %? ?(?:chance|certain)/u);
  });

  it('the same input gives the same answer', async () => {
    const args = run('--air', '14C', '--members', '8', '--days', '5', '--json');
    expect((await home.run(args)).out).toBe((await home.run(args)).out);
  });

  it('what it prints as a table reads back as what it answers', async () => {
    const args = run('--air', '-3C', '--members', '8', '--days', '3');
    const value = await answerOf(args);
    const read = readCsv((await home.run([...args, '--csv'])).out, ',', 'out');
    const [header, ...rows] = read.ok ? read.value.map(({ cells }) => cells) : [];
    expect(header?.slice(0, 4)).toEqual(['day', 'core_degC_p10', 'core_degC_p50', 'core_degC_p90']);
    expect(rows.map(([day]) => Number(day))).toEqual(value.day);
    expect(rows.map(([, , likely]) => Number(likely))).toEqual(value.core_degC.p50);
    expect(Math.min(...value.core_degC.p50)).toBeLessThan(0);
  });

  it('warmer air never makes it likelier to stay cold, by more than one heap of the sixteen', async () => {
    const met: number[] = [];
    for (const air of [0, 6, 12, 18, 24]) {
      met.push((await answerOf(run('--air', `${air}C`, ...QUICK))).heats.met);
    }
    for (const [i, now] of met.entries()) expect(now).toBeGreaterThanOrEqual((met[i - 1] ?? 0) - 1);
    expect(met.at(-1)).toBeGreaterThan(met[0] ?? 0);
  });

  it('straw walls never make its core colder in cold air, beyond a tenth of a degree of its likely peak', async () => {
    const bare = await answerOf(run('--air', '5C', ...QUICK));
    const wrapped = await answerOf(run('--air', '5C', '--walls', 'straw-bales', '--cover', 'straw', ...QUICK));
    expect(wrapped.peak_degC.p50).toBeGreaterThan(bare.peak_degC.p50 - 0.1);
  });

  it('the same air said as still or as a table of days is the same', async () => {
    const days = Array.from({ length: 16 }, (_, i) => `2026-03-${String(i + 1).padStart(2, '0')},12,75,0`);
    const input = ['date,air °C,humidity %,rain mm', ...days].join('\n');
    const still = await answerOf(run('--air', '12C', '--members', '8', '--days', '10'));
    const table = await answerOf(run('--weather', '-', '--members', '8', '--days', '10'), { input });
    expect(table.heats).toEqual(still.heats);
    for (const [t, temp] of table.core_degC.p50.entries()) {
      // Both are told to a tenth.
      expect(Math.abs(temp - (still.core_degC.p50[t] ?? Number.NaN))).toBeLessThanOrEqual(0.1);
    }
  });

  it('a climate begins on the day on which it is built, and midwinter south is midsummer north', async () => {
    const asked = async (...more: string[]) =>
      (await answerOf(run('--climate', '19C/1C', '--members', '8', '--days', '2', ...more))).input.weather;
    expect(await asked('--built', '2026-07-20')).toMatchObject({
      climate: { warmest_degC: 19, coldest_degC: 1, start_day: 200.5 },
    });
    expect(await asked('--built', '2026-07-20', '--south')).toMatchObject({ climate: { south: true } });
  });

  it('says what it took where nobody said the weather', async () => {
    const { out } = await home.run(run('--members', '8', '--days', '2', '--units', 'metric'));
    expect(flat(out)).toContain('still air of 10 °C was taken');
  });

  it('tells a drum that is too small for so much', async () => {
    const args = [
      'heap',
      'run',
      'straw=3bales',
      'grass=4barrows',
      '--drum',
      '0.6x0.9m',
      '--members',
      '8',
      '--days',
      '2',
    ];
    expect(flat((await home.run([...args, '--units', 'metric'])).out)).toContain('there is room for 250 L');
  });

  it('tells how high it stands in every bay that it lies in, and that a bay is too small for it', async () => {
    const args = run('--turn', '4:bay=2x1.2m', '--turn', '8:bay=0.6x0.6m', '--members', '8', '--days', '10');
    const { out } = await home.run([...args, '--units', 'us']);
    const text = flat(out);
    expect(text).toMatch(/At its fullest it stands about [\d.]+ ft high in the bay/u);
    expect(text).toMatch(/Turned into its next bay on day 4 it stands about [\d.]+ ft high there/u);
    expect(text).toMatch(/Where it is turned into on day 8 it stands about [\d.]+ ft high .+ About 6 ft is commonly/u);
    expect(text).toContain('^ turned');
    const drum = await home.run(run('--turn', '2:drum=0.6x0.9m', '--members', '8', '--days', '3', '--units', 'metric'));
    expect(flat(drum.out)).toMatch(/turned into on day 2 it comes to .+ there is room for 250 L/u);
  });

  it.each([
    [['heap', 'run'], 'It is not said what'],
    [['heap', 'run', 'nothing of that name'], 'There is no heap called'],
    [['heap', 'run', 'straw=2bales', 'leaves'], '“leaves” has no ='],
    [['heap', 'run', 'strow=2bales'], 'strow'],
    [['heap', 'run', 'straw=1e9bales'], '1e9bales'],
    [['heap', 'run', 'meat=1bucket'], 'must never go on a heap'],
    [run('--bay', '1m'), '--bay'],
    [run('--dome', '1m'), '--dome'],
    [run('--bay', '0.01x1m'), '--bay is 0.01'],
    [run('--walls', 'gold'), '--walls is gold'],
    [run('--air', 'mild'), '--air is “mild”'],
    [run('--air', '900C'), '--air is 900'],
    [run('--climate', '3C/17C'), '“3C/17C” (--climate)'],
    [run('--south'), '--climate is missing'],
    [run('--built', 'some day'), '“some day” (--built)'],
    [run('--weather', '-'), 'There is nothing in -'],
    [run('--rain', '2L'), '--rain is “2L”'],
    [run('--wind', '300m/s'), '--wind is 300'],
    [run('--humidity', '130%'), '--humidity is “130%”'],
    [run('--turn', 'soon'), '“soon” (--turn)'],
    [run('--turn', '90', '--days', '40'), '--turn is 90; it wants 0 to 40'],
    [run('--turn', '3:hard'), 'rough, thorough, bay=…'],
    [run('--turn', '3:bay=1m'), '“1m” (--turn)'],
    [run('--turn', '3:dome='), '--turn is dome='],
    [run('--turn', '3:bay=1x1m:bay=2x2m'), '--turn is bay=2x2m'],
    [run('--turn', '3:bay=0.01x1m'), '--turn is 0.01'],
    [run('--turn', '3:bay=No such bay'), 'no bay called “No such bay”'],
    [run('--turn', '3:walls=gold'), '--turn is gold'],
    [run('--water-on', '3'), '“3” (--water-on)'],
    [run('--water-on', '3:20L:under'), 'top, through'],
    [run('--water-on', '3:9999999L'), '--water-on is 9999999'],
    [run('--cover-on', '3'), '--cover-on'],
    [run('--add', 'grass=2barrows'), '(--add)'],
    [run('--add', '3: gras=2barrows'), 'gras'],
    [run('--days', '9999'), '--days is 9999'],
    [run('--days', 'ten'), '“ten” (at --days)'],
    [run('--members', '4'), '--members is 4'],
    [run('--shells', '2'), '--shells is 2'],
    [run('--start', '200C', '--units', 'metric'), '--start is 200C; it wants -40–75 °C'],
    [run('--start', '500', '--units', 'us'), '--start is 500; it wants -40–167 °F'],
    [run('--start', 'warm'), '--start'],
    [run('--water', '-5L'), '--water'],
    [run('--csv', '--json'), ''],
    [run('--dome', '1x1m'), 'cannot be used with'],
    [run('--air', '8C', '--climate', '17C/3C'), 'cannot be used with'],
  ])('%j is refused in words', async (args, said) => {
    const { code, out, err } = await home.run(args, { input: '' });
    expect(code).toBe(2);
    expect(flat(out + err)).toContain(said);
  });

  it('so many acts that no run takes them', async () => {
    const turns = Array.from({ length: 121 }, (_, i) => ['--turn', String(i / 10)]).flat();
    const { code, err } = await home.run(run(...turns));
    expect(code).toBe(2);
    expect(err).toContain('120');
  });
});

describe('heap run of a heap of the daybook', () => {
  const at = (day: number, hour = 12) => ({ at: `2026-04-${String(day).padStart(2, '0')}T${hour}:00:00.000Z` });
  beforeAll(async () => {
    await home.run(['log', 'bay', 'Left bay', '1.2x1.2x1.1m', '--wall', 'pallets', '--units', 'metric'], at(1));
    await home.run(['build', ...MIX, '--name', 'April heap', '--bay', 'Left bay', '--water', '40L'], at(1));
    await home.run(['log', 'April heap', '52C', '--air', '9C'], at(3));
    await home.run(['log', 'April heap', 'turned'], at(5));
    await home.run(['log', 'April heap', 'watered', '20L'], at(7));
    await home.run(['log', 'April heap', 'covered', 'straw'], at(9));
    await home.run(['feed', 'April heap', 'grass=2barrows'], at(11));
  });

  it('is what it was built of, where, and what was done to it on which day', async () => {
    const { input } = await answerOf(['heap', 'run', 'april heap', '--members', '8', '--days', '14'], at(13));
    expect(input).toMatchObject({
      water_L: 40,
      shape: { form: 'box', width_m: 1.2, depth_m: 1.2, height_m: 1.1 },
      walls: 'pallet',
      weather: { readings: { every_h: 24 } },
      acts: [
        { at_day: 4, act: 'turn' },
        { at_day: 6, act: 'water', water_L: 20 },
        { at_day: 8, act: 'stand', cover: 'straw' },
        { at_day: 10, act: 'add', mix: { ingredients: [{ material: 'grass-clippings' }] } },
      ],
    });
  });

  it('lies as high as when its mix is typed, within a twentieth: masses are kept, and volumes reckoned from them anew', async () => {
    const more = ['--members', '32', '--days', '1', '--air', '9C'];
    const kept = await answerOf(['heap', 'run', 'April heap', ...more], at(13));
    const typed = await answerOf(run('--water', '40L', ...more));
    const ratio = (kept.volume_m3.p50[0] ?? Number.NaN) / (typed.volume_m3.p50[0] ?? Number.NaN);
    expect(Math.abs(ratio - 1)).toBeLessThan(0.05);
  });

  it('turned into another bay it lies in that one from then on', async () => {
    await home.run(['log', 'bay', 'Right bay', '2x1.5x1m', '--wall', 'boards', '--units', 'metric'], at(1));
    await home.run(['build', ...MIX, '--name', 'Turned heap', '--bay', 'Left bay'], at(1));
    await home.run(['log', 'Turned heap', 'turned', '--into', 'Right bay'], at(5));
    const { input } = await answerOf(['heap', 'run', 'Turned heap', '--members', '8', '--days', '8'], at(9));
    expect(input).toMatchObject({
      shape: { width_m: 1.2 },
      acts: [
        { at_day: 4, act: 'turn', into: { form: 'box', width_m: 2, depth_m: 1.5 } },
        { at_day: 4, act: 'stand', walls: 'timber' },
      ],
    });
  });

  it('what is typed outranks it, and readings are held against the band', async () => {
    const args = ['heap', 'run', 'April heap', '--members', '8', '--days', '14', '--air', '9C', '--bay', '2x2m'];
    const { out } = await home.run([...args, '--units', 'metric'], at(13));
    expect(flat(out)).toMatch(/Of 1 reading of its core, [01] (?:lies|lie) in the band/u);
    expect(out).toContain('x read in the core');
    expect(await answerOf(args, at(13))).toMatchObject({ input: { shape: { width_m: 2 }, weather: { still: {} } } });
  });

  it('a heap named like the command is still to be had', async () => {
    await home.run(['build', 'straw=2bales', 'grass=3barrows', '--name', 'run', '--bay', '1x1x1m'], at(2));
    expect((await home.run(['heap', 'Run'], at(13))).out).toContain('run, ');
  });

  it('one that was split off is told as such', async () => {
    const { err, code } = await home.run(['heap', 'run', '--demo', 'December heap, second half']);
    expect(code).toBe(2);
    expect(flat(err)).toContain('came from another heap');
  });
});

describe('heap size', () => {
  it('tells the smallest with its range, and the chance of each size', async () => {
    const args = ['heap', 'size', 'horse bedding=6barrows', 'grass=2barrows', '--water', '30L', '--air', '15C'];
    const { code, out } = await home.run([...args, '--units', 'metric']);
    expect(code).toBe(0);
    expect(flat(out)).toMatch(
      /smallest heap of this mix that gets to 55 °C here, .+ is about [\d,.]+ L \(.+\), a cube of/u,
    );
    expect(out).toMatch(/^[\d,.]+ L: .+ draws\)$/mu);
  });

  it('says so where none does', async () => {
    const { out } = await home.run(['heap', 'size', 'straw=3bales', '--air', '0C']);
    expect(flat(out)).toContain('Its size is not what it lacks');
    expect(flat(out)).toContain('taken as cold as the air');
  });

  it('needs less of stuff that comes warm into cold air', async () => {
    const args = ['heap', 'size', 'horse bedding=6barrows', 'grass=2barrows', '--water', '30L', '--air', '2C'];
    const likely_m3 = async (...more: string[]): Promise<number> => {
      const { value } = await home.json([...args, ...more]);
      return (value as { likely: { volume_m3?: number } }).likely.volume_m3 ?? Number.POSITIVE_INFINITY;
    };
    expect(await likely_m3('--start', '30C')).toBeLessThan(await likely_m3());
  });

  it.each([
    [['heap', 'size'], 'It is not said what'],
    [['heap', 'size', 'straw=3bales', '--days', '20'], '--days is 20'],
    [['heap', 'size', 'straw=3bales', '--start', '80C'], '--start is 80C; it wants'],
    [['heap', 'size', 'straw=3bales', '--above', '100C'], '--above is 100'],
    [['heap', 'size', 'straw=3bales', '--above', '25C', '--air', '30C'], '--above is 25'],
  ])('%j is refused in words', async (args, said) => {
    const { code, err } = await home.run(args);
    expect(code).toBe(2);
    expect(flat(err)).toContain(said);
  });

  it('the size of a bin without a mix is asked as before', async () => {
    expect((await home.run(['size', '1.2x1.2x1.2m'])).code).toBe(0);
  });
});
