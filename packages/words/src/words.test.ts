import { describe, expect, it } from 'vitest';
import { en } from './en/index.ts';
import { createSpeaker, isMessageKey, type MessageKey, placeSaying, tellProblem } from './index.ts';

const metric = createSpeaker({ locale: 'en', system: 'metric' });
const us = createSpeaker({ locale: 'en', system: 'us' });

describe('every message', () => {
  it.each(Object.keys(en) as MessageKey[])('%s can be read by the formatter', (key) => {
    const names = [...en[key].matchAll(/\{\s*(\w+)/gu)].map(([, name = '']) => [name, 1] as const);
    expect(() => metric.say(key, Object.fromEntries(names))).not.toThrow();
  });
});

describe('a figure', () => {
  const water = { figure: { p10: 8.14, p50: 11.23, p90: 13.9 }, unit: 'L', as: 'liquid' } as const;

  it('is told in the reader’s unit, to two digits', () => {
    expect(metric.likely(water.figure, 'L', 'liquid')).toBe('11 L');
    expect(us.likely(water.figure, 'L', 'liquid')).toBe('3 gal');
    expect(metric.range(water.figure, 'L', 'liquid')).toBe('8.1–14 L');
  });

  it('keeps a temperature as it was read', () => {
    expect(us.likely(64.5, 'degC', 'temperature')).toBe('148.1 °F');
  });

  it('stands in a sentence as a piece of its own', () => {
    const parts = metric.tellParts({
      key: 'problem.not-valid',
      places: { path: 'water', found: water, wanted: 'less' },
    });
    expect(parts.map(({ text }) => text).join('')).toBe('water is 11 L: less.');
    expect(parts.find(({ place }) => place === 'found')?.figure).toBe(water);
  });

  it('keeps its place inside a list of sentences', () => {
    const item = (found: string) =>
      ({ key: 'problem.not-valid', places: { path: found, found: water, wanted: 'x' } }) as const;
    const parts = metric.tellParts({
      key: 'problem.not-valid',
      places: { path: [item('a'), item('b'), item('c')], found: 'y', wanted: 'z' },
    });
    expect(parts.filter(({ figure }) => figure !== undefined).map(({ place }) => place)).toEqual([
      'path[0].found',
      'path[1].found',
      'path[2].found',
    ]);
  });
});

describe('a sentence inside a sentence', () => {
  it('can be touched as a whole where it has no quantity of its own', () => {
    const amount = { key: 'measure.bucket-20l.some', places: { count: 9 } } as const;
    const parts = metric.tellParts({ key: 'material.straw.some', places: { amount } });
    expect(parts).toEqual([{ text: '9 buckets', place: 'amount' }, { text: ' of straw' }]);
  });
});

it('chooses among the forms of a message by a plain word', () => {
  const told = (log: string) => us.tell({ key: 'clauses.answer.clauses-pass', places: { clauses: [], log } });
  expect(told('meets')).toBe('Every clause that you gave passes. Its log meets a rule as well.');
  expect(told('none')).toBe('Every clause that you gave passes.');
});

describe('a chance', () => {
  it.each([0, 1, 100, 250, 256])('of %d in 256 is never told as 0 or 100 %%', (met) => {
    expect(metric.chance(met, 256)).not.toMatch(/\b(0|100) ?%|\balways\b|\bnever\b(?! )|certainly$/u);
    expect(metric.chance(met, 256)).toContain('256 draws');
  });
});

describe('where something stands', () => {
  it.each([
    ['dryDown.dry_g', { key: 'place.dry_g' }],
    ['body.carbonToNitrogen', { key: 'place.carbonToNitrogen' }],
    ['body', { key: 'place.body' }],
    ['layers[0].mass_kg', 'mass'],
    ['soil.organicMatter_pctDry', 'organic matter'],
    ['body.temp_degC', 'body.temp_degC'],
    ['--dry', '--dry'],
    ['straw', 'straw'],
    ['my heap.txt', 'my heap.txt'],
    ['/tmp/a.b', '/tmp/a.b'],
  ])('%s is told as %o', (path, told) => {
    expect(placeSaying(path)).toEqual(told);
  });

  it('leaves the name of a file as it is', () => {
    for (const code of ['csv-empty', 'file-unreadable', 'not-text'])
      expect(tellProblem(us, { code, path: 'heap.csv', found: '', wanted: '' })).toContain('heap.csv');
  });

  it('keeps the names for who wrote the input under them', () => {
    const problem = { code: 'too-big', path: 'dryDown.dry_g', found: '60', wanted: '< 50' };
    expect(tellProblem(metric, problem)).toBe('the weight after drying is 60, which is too much; it wants < 50.');
    expect(tellProblem(metric, problem, { names: true })).toContain('dryDown.dry_g is 60');
  });
});

it('knows which keys have messages', () => {
  expect(isMessageKey('caution.fire')).toBe(true);
  expect(isMessageKey('toString')).toBe(false);
});
