import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { MixSolution } from '@loamwright/science';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { flat, type Garden, garden } from '../testing/garden.ts';

let home: Garden;
beforeEach(() => {
  home = garden();
});
afterEach(() => home.remove());

const quarryLane = [
  'straw=30buckets',
  'coffee-grounds=8buckets',
  'goat bedding=2 barrows',
  'leaves=6bags',
  'hedge-chippings=3barrows',
];

describe('mix', () => {
  it('says the answer as a sentence, then its ranges, chances and cautions', async () => {
    const { code, out } = await home.run(['mix', ...quarryLane, '--bay', '1.2x1.2x1.2m']);
    expect(code).toBe(0);
    const text = flat(out);
    expect(text).toMatch(/^Lay \d+(?:\.\d)? buckets? of straw/u);
    expect(text).toMatch(/Carbon to nitrogen is about \d+ \(\d+ to \d+\)/u);
    expect(text).toMatch(/of 256 draws/u);
    expect(text).toContain('! Manure can carry germs');
    expect(text).not.toMatch(/\b(?:0|100) %/u);
  });

  const much = [
    ...quarryLane.filter((stuff) => !stuff.startsWith('goat')),
    'goat bedding=8 barrows',
    'rabbit-droppings=4buckets',
    'grass=4barrows',
    'cardboard=10buckets',
  ];

  it('tells other answers, each with what it costs and how to build it; with --one, none', async () => {
    const { out } = await home.run(['mix', ...much, '--bay', '1.2x1.2x1.2m']);
    const text = flat(out);
    expect(text).toMatch(/Hotter: about 1\.\d times the heat for its size, (?:but|and these figures show no cost)/u);
    expect(text).toContain('To build it: loamwright build --aim hottest');
    const one = flat((await home.run(['mix', ...much, '--bay', '1.2x1.2x1.2m', '--one'])).out);
    expect(one).not.toContain('Hotter');
    expect(one.split('. ')[0]).toBe(text.split('. ')[0]);
  });

  it('tells how to write down what is to be looked at, of that stuff, and asks for nothing that gains nothing', async () => {
    const grounds = flat((await home.run(['mix', 'straw=2bales', 'coffee grounds=5buckets'])).out);
    expect(grounds).toContain('squeeze a handful of coffee grounds');
    expect(grounds).toContain('loamwright material "coffee grounds" --squeeze drops');
    expect(flat((await home.run(['mix', 'straw=2bales'])).out)).not.toContain('One minute before');
  });

  it('tells second figures with --full', async () => {
    const usual = flat((await home.run(['mix', ...quarryLane, '--one'])).out);
    const full = flat((await home.run(['mix', ...quarryLane, '--one', '--full'])).out);
    expect(usual).not.toContain('Counting only the carbon that rots');
    expect(full).toContain('Counting only the carbon that rots');
    expect(full).toContain('is not published for garden mixes');
  });

  it('says that grass mats, whatever air it has when freshly laid', async () => {
    const { out } = await home.run(['mix', 'grass=a-lot', 'straw=3bales']);
    expect(flat(out)).toMatch(
      /freshly laid\. Fresh grass clippings mat within days: keep them in layers under about 10 cm/u,
    );
  });

  it('proposes nothing that is out of season by the month of the clock, and says so', async () => {
    const { out } = await home.run(['mix', 'wood-chips=8barrows'], { at: '2026-01-15T12:00:00Z' });
    expect(flat(out)).toMatch(/Not proposed, since not in season now \(north of the equator\): .*grass clippings/u);
    expect(flat(out)).not.toMatch(/With .*grass clippings more/u);
    const june = flat((await home.run(['mix', 'wood-chips=8barrows'], { at: '2026-06-15T12:00:00Z' })).out);
    expect(june).not.toMatch(/Not proposed.*grass clippings/u);
  });

  it('gives the same as data', async () => {
    const { ok, value } = await home.json(['mix', ...quarryLane, '--bay', '1.2x1.2x1.2m']);
    expect(ok).toBe(true);
    const { wanted_m3, use } = value as MixSolution;
    expect(wanted_m3).toBeCloseTo(1.728, 10);
    expect(use.map(({ material }) => material)).toEqual([
      'straw',
      'coffee-grounds',
      'goat-bedding',
      'autumn-leaves',
      'hedge-chippings',
    ]);
  });

  it.each([
    [['grass=a lot'], /nearest there is|too little/u],
    [['coffee-grounds=1bucket'], /nearest there is|too little/u],
    [
      [
        'straw=9buckets',
        'coffee-grounds=4buckets',
        'goat bedding=half a barrow',
        'grass=a-lot',
        '--bay',
        '1.2x1.2x1.2m',
      ],
      /Left over/u,
    ],
  ])('has an answer for %j, with what is short and what would mend it', async (args, expected) => {
    const { code, out } = await home.run(['mix', ...args]);
    expect(code).toBe(0);
    expect(flat(out)).toMatch(expected);
    expect(flat(out)).toMatch(/It (?:lacks|is .* short|has .* too much)/u);
    expect(flat(out)).toMatch(/With .* more, it would be|With .* more, it would fill/u);
  });

  it('tells amounts in the person’s own units, and remembers those', async () => {
    const us = await home.run(['mix', 'straw=4 barrows', 'coffee-grounds=3 buckets', '--units', 'us']);
    expect(us.out).toMatch(/ft³|gal/u);
    const later = await home.run(['mix', 'straw=4 barrows', 'coffee-grounds=3 buckets']);
    expect(later.out).toBe(us.out);
    expect(JSON.parse(readFileSync(join(home.folder, 'settings.json'), 'utf8'))).toMatchObject({ units: 'us' });
    expect((await home.run(['mix', 'straw=1 bale', '--units', 'imperial'])).code).toBe(2);
  });

  it('counts with the grower’s own sizes, and remembers those', async () => {
    const usual = (await home.json(['mix', '--exact', 'straw=10 buckets'])).value as { volume_m3: { p50: number } };
    const own = (await home.json(['mix', '--exact', 'straw=10 buckets', '--size', 'bucket=10L'])).value as typeof usual;
    const later = (await home.json(['mix', '--exact', 'straw=10 buckets'])).value as typeof usual;
    expect(own.volume_m3.p50 / usual.volume_m3.p50).toBeCloseTo(0.5, 1);
    expect(later).toEqual(own);
    const tub = await home.run(['mix', '--exact', 'straw=2 blue tubs', '--size', 'blue tub=60L']);
    expect(tub.code).toBe(0);
  });

  it('judges exactly these amounts with --exact', async () => {
    const { code, out } = await home.run(['mix', '--exact', 'straw=100kg', 'hen-manure=100kg', '--water', '20 L']);
    expect(code).toBe(0);
    expect(flat(out)).toMatch(/Carbon to nitrogen is about \d+ \(\d+ to \d+\)/u);
    expect(flat(out)).toContain('Counting only the carbon that rots');
    expect(flat(out)).not.toMatch(/^Lay /u);
    expect(existsSync(join(home.folder, 'last-mix.json'))).toBe(false);
  });

  it('writes nothing into the daybook', async () => {
    await home.run(['mix', ...quarryLane]);
    expect(existsSync(join(home.folder, 'daybook.sqlite'))).toBe(false);
  });

  it.each<readonly [readonly string[], string]>([
    [[], 'nothing-named'],
    [['straw'], 'ingredient-unreadable'],
    [['=9buckets'], 'ingredient-unreadable'],
    [['strwa=9buckets'], 'unknown-material'],
    [['straw=9bukets'], 'unknown-measure'],
    [['straw=-9buckets'], 'amount-unreadable'],
    [['straw=NaN'], 'unknown-measure'],
    [['__proto__=9buckets'], 'unknown-material'],
    [['dog mess=1 bucket'], 'not-for-heaps'],
    [['meat=1kg'], 'not-for-heaps'],
    [['browns=2 bags'], 'which-material'],
    [['bindweed=1 bag'], 'doubtful-alone'],
    [['green-weeds+nonsense=1 bag'], 'not-one-of'],
    [['straw=9buckets', '--bay', '1.2x1.2'], 'bay-unreadable'],
    [['straw=9buckets', '--bay', '0x1x1m'], 'bay-unreadable'],
    [['straw=9buckets', '--bay', 'nowhere'], 'no-such-bay'],
    [['straw=9buckets', '--size', 'bucket=none'], 'size-unreadable'],
  ])('asks again for %j: %s', async (args, problem) => {
    const { ok, problems } = await home.json(['mix', ...args]);
    expect(ok).toBe(false);
    expect(problems?.map(({ code }) => code)).toContain(problem);
    const told = await home.run(['mix', ...args]);
    expect(told.code).toBe(2);
    expect(told.err).not.toContain(problem);
  });

  it('asks which of a few is meant by a general word, by their names', async () => {
    const { err } = await home.run(['mix', 'browns=2 bags']);
    expect(err.replace(/\s+/gu, ' ')).toContain('Say which: autumn leaves, straw, corrugated cardboard');
  });

  it('meets meat with its caution and what to do with it instead', async () => {
    const told = (await home.run(['mix', 'meat=1kg'])).err.replace(/\s+/gu, ' ');
    expect(told).toContain('must never go on a heap');
    expect(told).toContain('Instead: your food-waste collection');
    expect(told).toContain('draw rats and flies');
  });

  it('shows no control character that somebody typed', async () => {
    const { err } = await home.run(['mix', 'str\u001b[31maw=1']);
    expect(err).not.toContain('\u001b');
  });
});
