import type { BedFill, PottingMix } from '@loamwright/science';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { flat, type Garden, garden } from '../testing/garden.ts';

let home: Garden;
beforeAll(() => {
  home = garden();
});
afterAll(() => home.remove());

const mixOf = async (args: readonly string[]): Promise<PottingMix> =>
  (await home.json(['potting', ...args])).value as PottingMix;
const bedOf = async (args: readonly string[]): Promise<BedFill> =>
  (await home.json(['fill-bed', ...args])).value as BedFill;

describe('potting', () => {
  it('says the answer as a sentence, then what to do, what it is like and what to mind', async () => {
    const { code, out } = await home.run([
      'potting',
      'potting-on',
      '20x3L',
      '--age',
      '14',
      '--made-of',
      'manure or salty',
    ]);
    expect(code).toBe(0);
    const text = flat(out);
    expect(text).toMatch(/^Stir together [\d.]+ buckets? \(\d+ L\) of compost/u);
    expect(text).toContain('as organic gardeners pot on');
    expect(text).toContain('of 256 draws');
    expect(text).toContain('! Compost can hold Legionella');
    expect(text).toContain('! Manure can carry germs');
  });

  it.each<readonly [readonly string[], number]>([
    [['20x3L'], 60],
    [['20 x 3 L', '2x500mL'], 61],
    [['2 seed trays'], 9],
    [['2trays'], 9],
    [['10 small pots'], 3.5],
  ])('reads %j', async (pots, litres) => {
    // The middle of 256 draws lies between two of them: a hundredth of a litre off.
    expect((await mixOf(['sowing', ...pots])).volume_m3.p50 * 1000).toBeCloseTo(litres, 2);
  });

  it('reads gallons where the person counts in them', async () => {
    const us = garden();
    const { value } = await us.json(['potting', 'hungry', '4x5', '--units', 'us']);
    us.remove();
    const { volume_m3, parts } = value as PottingMix;
    expect(volume_m3.p50).toBeCloseTo(20 * 0.003785411784, 9);
    expect(parts[0]?.measure).toBe('bucket-5gal');
  });

  it('takes what was measured, parts of one’s own, and what there is', async () => {
    const mix = await mixOf(
      ['potting-on', '10x3L', '--salts', '1.3', '--seedlings', '85%', '--smell', 'earthy'].concat([
        '--part',
        'compost=1',
        'leaf mould=2',
        'sharp sand=1',
        '--have',
        'leaf-mould=1bucket',
        'sand=40L',
      ]),
    );
    expect(mix.recipe).toBeUndefined();
    expect(mix.parts.map(({ part, share_pctVolume }) => [part, share_pctVolume])).toEqual([
      ['compost', 25],
      ['leaf-mould', 50],
      ['sand', 25],
    ]);
    expect(mix.salts.measured).toBe(true);
    expect(mix.maturity.ripeness).toBe('ready');
    expect(mix.parts.map(({ stock }) => stock !== undefined)).toEqual([false, true, true]);
  });

  it.each<readonly [readonly string[], string, RegExp]>([
    [['frying', '2trays'], 'not-one-of', /sowing, potting-on, hungry/u],
    [['sowing', 'some'], 'pots-unreadable', /20x3L/u],
    [['sowing', '2trays', '--age', 'old'], 'number-unreadable', /such as 14/u],
    [['sowing', '2trays', '--part', 'gold=1'], 'not-one-of', /leaf-mould/u],
    [['sowing', '2trays', '--salts', '90'], 'out-of-bounds', /60/u],
    [['sowing', '2trays', '--recipe', 'leaf-mould-alone', '--part', 'sand=1'], 'two-recipes', /give one/u],
    [['sowing', '2trays', '--measure', 'thimble'], 'unknown-measure', /thimble/u],
  ])('%j is asked about', async (args, code, says) => {
    const { ok, problems } = await home.json(['potting', ...args]);
    expect(ok).toBe(false);
    expect(problems?.map((problem) => problem.code)).toContain(code);
    const { code: exit, err } = await home.run(['potting', ...args]);
    expect(exit).toBe(2);
    expect(flat(err)).toMatch(says);
  });
});

describe('fill-bed', () => {
  it('says the foot, the mix, the weight and next spring’s top-up', async () => {
    const { code, out } = await home.run([
      'fill-bed',
      '2.4x1.2x0.4m',
      '--foot',
      'hedge-chippings=10cm',
      '--stands-on',
      'deck',
    ]);
    expect(code).toBe(0);
    const text = flat(out);
    expect(text).toMatch(/^First lay .* of hedge chippings at the foot\. Bring [\d.]+ barrows/u);
    expect(text).toMatch(/weighs about \d+ kg\/m²/u);
    expect(text).toContain('for next spring');
    expect(text).toContain('! Weight: wet soil');
  });

  it('a box, its area, and four feet by eight are read', async () => {
    const box = await bedOf(['2.4x1.2x0.4m']);
    const area = await bedOf(['2.88m2', '--depth', '40cm']);
    expect(area.volume_m3.p50).toBeCloseTo(box.volume_m3.p50, 12);
    // 4 by 8 feet, 12 inches deep: 32 cubic feet.
    expect((await bedOf(['4x8x1ft'])).volume_m3.p50 / 0.028316846592).toBeCloseTo(32, 9);
    expect((await bedOf(['8x4ft', '--depth', '1ft'])).volume_m3.p50 / 0.028316846592).toBeCloseTo(32, 9);
    expect((await bedOf(['4x8x1ft', '--beds', '3'])).volume_m3.p50 / 0.028316846592).toBeCloseTo(96, 9);
  });

  it.each<readonly [readonly string[], string]>([
    [['2.4x1.2'], 'bed-how-deep'],
    [['8x4ft'], 'bed-how-deep'],
    [['3m2'], 'bed-how-deep'],
    [['8x4x2x1ft'], 'bed-unreadable'],
    [['8xft'], 'bed-unreadable'],
    [['8x4ft', '--depth', 'deep'], 'measurement-unreadable'],
    [['2.4x1.2x0.4m', '--depth', '30cm'], 'bed-unreadable'],
    [['3m2', '--depth', 'deep'], 'measurement-unreadable'],
    [['2.4x1.2x0.4m', '--foot', 'bricks=10cm'], 'not-one-of'],
    [['2.4x1.2x0.4m', '--foot', 'logs=39cm'], 'base-too-deep'],
    [['2.4x1.2x0.4m', '--compost', '200'], 'too-big'],
    [['2.4x1.2x90m'], 'out-of-bounds'],
  ])('%j is asked about', async (args, code) => {
    const { ok, problems } = await home.json(['fill-bed', ...args]);
    expect(ok).toBe(false);
    expect(problems?.map((problem) => problem.code)).toContain(code);
    expect((await home.run(['fill-bed', ...args])).code).toBe(2);
  });
});
