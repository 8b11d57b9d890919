import type { PailCover } from '@loamwright/science';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { flat, type Garden, garden } from '../testing/garden.ts';

let home: Garden;
beforeEach(() => {
  home = garden();
});
afterEach(() => home.remove());

const lines = async (): Promise<string> => flat((await home.run(['daybook', '--all'])).out);

/** A slow bin at Quarry Lane, fed twice, with leaves in store. */
async function slowBin(): Promise<void> {
  await home.run(['log', 'bay', 'Left bay', '1x1x1m', '--units', 'metric']);
  await home.run(['log', 'stock', 'leaves=3bags']);
  await home.run([
    'build',
    'leaves=1bag',
    'scraps=2pails',
    '--name',
    'Slow',
    '--bay',
    'Left bay',
    '--when',
    '5 weeks ago',
  ]);
  await home.run(['feed', 'Slow', 'scraps=1pail', 'straw=1bucket', '--when', '8 days ago']);
}

describe('pail', () => {
  it('answers with nothing known: no daybook, no bin, nothing said of what is on hand', async () => {
    const { code, out, err } = await home.run(['pail', 'scraps=1pail']);
    expect([code, err]).toEqual([0, '']);
    const text = flat(out);
    expect(text).toMatch(/^Cover this pail with 1 bucket of straw; no water\./u);
    expect(text).toContain('Any one of these would do instead: 1 bucket of autumn leaves');
    expect(text).toContain('Food scraps draw rats and flies');
    expect(await lines()).toContain('The daybook is empty');
  });

  it('counts in the buckets of the country', async () => {
    const { value } = await home.json(['pail', 'scraps=1pail', '--units', 'us']);
    expect((value as PailCover).lay[0]?.measure).toBe('bucket-5gal');
  });

  it('takes dry stuff with commas or blanks between, and a comma in a figure for what it is', async () => {
    const { value } = await home.json([
      'pail',
      'scraps=6pails',
      '--dry',
      'leaves=0,5 buckets,straw=1bale',
      'sawdust=1L',
    ]);
    const { input } = value as { input: { dry: readonly { material: string }[] } };
    expect(input.dry.map(({ material }) => material)).toEqual(['autumn-leaves', 'straw', 'sawdust']);
  });

  it('reads the bin from the daybook, with the ages of its layers, its bay and the store', async () => {
    await slowBin();
    const { out } = await home.run([
      'pail',
      'scraps=1pail',
      '--bin',
      'slow',
      '--per-week',
      '3',
      '--weeks',
      '20',
      '--full',
    ]);
    const text = flat(out);
    expect(text).toMatch(/^Cover this pail with [\w. ]+ of autumn leaves; no water\./u);
    expect(text).toMatch(/The bin then stands about 0\.\d+ m high/u);
    expect(text).toContain('kitchen scraps, 35 days ago');
    // A day without its hour stands for its noon, which is seven whole days before the garden's morning.
    expect(text).toContain('straw, 7 days ago');
    expect(text).toMatch(/At 3 such pails a week it is full in \d+ days/u);
    expect(text).toMatch(/For 60 such pails keep/u);
    expect(await lines()).not.toContain('today');
  });

  it('writes nothing down until told, then the pail, its cover and the water, and the next pail lies on them', async () => {
    await slowBin();
    const before = await lines();
    await home.run(['pail', 'scraps=1pail', '--bin', 'Slow']);
    expect(await lines()).toBe(before);
    const { code, out } = await home.run(['pail', 'scraps=1pail', '--bin', 'Slow', '--log', '--note', 'in the rain']);
    expect(code).toBe(0);
    expect(flat(out)).toMatch(/Written down: Slow fed with 1 pail of kitchen scraps and [\w. ]+ of autumn leaves/u);
    const { value } = await home.json(['pail', 'scraps=1pail', '--bin', 'Slow']);
    const ages = (value as PailCover).layers.map(({ age_days }) => age_days);
    expect(ages.filter((age) => age === 0)).toHaveLength(2);
    await home.run(['pail', 'straw=2barrows', '--bin', 'Slow', '--log']);
    expect(await lines()).toMatch(/L of water poured on Slow/u);
  });

  it('takes the cover from the store', async () => {
    await slowBin();
    const stock = async (): Promise<number> => Number(/([\d.]+) kg of autumn leaves/u.exec(await lines())?.[1]);
    const before = await stock();
    await home.run(['pail', 'scraps=1pail', '--bin', 'Slow', '--log']);
    expect(await stock()).toBeLessThan(before);
  });

  it.each([
    [['pail'], 'nothing-named'],
    [['pail', 'scraps=1pail', '--bin', 'Nowhere'], 'no-such-heap'],
    [['pail', 'scraps=1pail', '--log'], 'missing'],
    [['pail', 'dog mess=1pail'], 'not-for-heaps'],
    [['pail', 'scraps=1pail', '--dry', 'moon-dust=1bag'], 'unknown-material'],
    [['pail', 'scraps=1pail', '--squeeze', 'wet'], 'squeeze-unknown'],
    [['pail', 'scraps=1pail', '--height', 'tall'], 'measurement-unreadable'],
    [['pail', 'scraps=1pail', '--height', '60cm'], 'missing'],
    [['pail', 'scraps=1pail', '--per-week', '0'], 'not-valid'],
    [['pail', 'scraps=0kg'], 'amount-unreadable'],
    [['pail', 'scraps=1pail', '--frozen', '--thawing'], 'command-line'],
  ])('%j is refused: %s', async (args, code) => {
    const { ok, problems } = await home.json(args);
    expect(ok).toBe(false);
    expect(problems?.map((one) => one.code)).toContain(code);
  });
});
