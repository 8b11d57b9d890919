import { vocabularyOf } from '@loamwright/advisor';
import { fold } from '@loamwright/daybook';
import { createSpeaker, type Speaker, tellProblem } from '@loamwright/words';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readAmount } from './amount.ts';
import { namesFor } from './names.ts';

const inUs = createSpeaker({ locale: 'en', system: 'us' });
const inMetric = createSpeaker({ locale: 'en', system: 'metric' });
const published = (speaker: Speaker) => ({ vocabulary: vocabularyOf(speaker, fold([])), measures: [] });
const us = namesFor(inUs, published(inUs));
const metric = namesFor(inMetric, published(inMetric));

function amount(text: string, names = metric): unknown {
  const read = readAmount(text, 'straw', names);
  return read.ok ? read.value.amount : read.problems[0]?.code;
}

describe('an amount', () => {
  it.each<readonly [string, object]>([
    ['9 buckets', { measure: 'bucket-20l', count: 9 }],
    ['9buckets', { measure: 'bucket-20l', count: 9 }],
    ['a bucket', { measure: 'bucket-20l', count: 1 }],
    ['bucket', { measure: 'bucket-20l', count: 1 }],
    ['nine buckets', { measure: 'bucket-20l', count: 9 }],
    ['2.5 barrows', { measure: 'barrow', count: 2.5 }],
    ['2,5 barrows', { measure: 'barrow', count: 2.5 }],
    ['2½ barrows', { measure: 'barrow', count: 2.5 }],
    ['½ barrow', { measure: 'barrow', count: 0.5 }],
    ['2 1/2 barrows', { measure: 'barrow', count: 2.5 }],
    ['two and a half barrows', { measure: 'barrow', count: 2.5 }],
    ['half a barrow', { measure: 'barrow', count: 1, fill: 'half' }],
    ['half-a-barrow', { measure: 'barrow', count: 1, fill: 'half' }],
    ['half barrow', { measure: 'barrow', count: 1, fill: 'half' }],
    ['3 half barrows', { measure: 'barrow', count: 3, fill: 'half' }],
    ['a barrow half full', { measure: 'barrow', count: 1, fill: 'half' }],
    ['2 buckets three quarters full', { measure: 'bucket-20l', count: 2, fill: 'three-quarters' }],
    ['three quarters of a bag', { measure: 'bin-bag', count: 1, fill: 'three-quarters' }],
    ['a quarter of a bag', { measure: 'bin-bag', count: 1, fill: 'quarter' }],
    ['4 heaped shovelfuls', { measure: 'shovelful', count: 4, fill: 'heaped' }],
    ['a few handfuls', { measure: 'handful', count: 'a-few' }],
    ['a couple of bales', { measure: 'straw-bale', count: 'a-couple' }],
    ['several armfuls', { measure: 'armful', count: 'several' }],
    ['3-4 bales', { measure: 'straw-bale', count: { p10: 3, p50: 3.5, p90: 4 } }],
    ['3 to 4 bales', { measure: 'straw-bale', count: { p10: 3, p50: 3.5, p90: 4 } }],
    ['2 bags packed', { measure: 'bin-bag', count: 2, packed: true }],
    ['2 packed bags', { measure: 'bin-bag', count: 2, packed: true }],
    ['2 bags loose', { measure: 'bin-bag', count: 2, packed: false }],
    ['20kg', { mass_kg: 20 }],
    ['20 kg', { mass_kg: 20 }],
    ['half a kg', { mass_kg: 0.5 }],
    ['40 L', { volume_m3: 0.04 }],
    ['11l', { volume_m3: 0.011 }],
    ['1.5 m3', { volume_m3: 1.5 }],
    ['20-30 kg packed', { mass_kg: { p10: 20, p50: 25, p90: 30 }, packed: true }],
    ['a lot', { vague: 'a-lot' }],
    ['a-lot', { vague: 'a-lot' }],
    ['lots', { vague: 'a-lot' }],
    ['some', { vague: 'some' }],
    ['A BIT', { vague: 'a-bit' }],
    ['2 yards', { measure: 'cubic-yard', count: 2 }],
    ['5 dustbins', { measure: 'dustbin', count: 5 }],
  ])('%s', (text, expected) => {
    expect(amount(text)).toEqual(expected);
  });

  it('converts US units exactly (NIST SP 811: 1 lb = 0.453 592 37 kg, 1 gal = 3.785 411 784 L)', () => {
    expect(amount('100 lb')).toEqual({ mass_kg: 45.359237 });
    // The last digit of a double may differ.
    expect(amount('3 gal')).toEqual({ volume_m3: expect.closeTo(3 * 0.003785411784, 15) });
  });

  it('counts an unsaid bucket in the person’s own kind', () => {
    expect(amount('4 buckets', us)).toEqual({ measure: 'bucket-5gal', count: 4 });
    expect(amount('4 bucket-20l', us)).toEqual({ measure: 'bucket-20l', count: 4 });
  });

  it('keeps how it was given', () => {
    const read = (text: string) => readAmount(text, 'straw', metric);
    expect(read('9 buckets')).toMatchObject({ value: { entered: { amount: 9, unit: 'bucket-20l' } } });
    expect(read('100 lb')).toMatchObject({ value: { entered: { amount: 100, unit: 'lb' } } });
    expect(read('half a barrow')).toMatchObject({ value: { entered: { words: 'half a barrow' } } });
    expect(read('a-lot')).toMatchObject({ value: { entered: { words: 'a lot' } } });
  });

  it('knows a grower’s own measure before any other', () => {
    const own = namesFor(inUs, {
      ...published(inUs),
      measures: [{ id: 'blue-tub', name: 'blue tub' }],
    });
    expect(amount('2 blue tubs', own)).toEqual({ measure: 'blue-tub', count: 2 });
  });

  it.each([
    '',
    ' ',
    '9',
    'kg',
    '-3 buckets',
    '0 buckets',
    '4-3 buckets',
    'a few kg',
    'NaN',
    '1e9 buckets',
    '9'.repeat(30),
  ])('that can’t be read is asked for again: %j', (text) => {
    expect(readAmount(text, 'straw', metric)).toMatchObject({ ok: false, problems: [{ path: 'straw' }] });
  });

  it('in an unknown measure names the nearest', () => {
    const read = readAmount('3 bukets', 'straw', metric);
    expect(read).toMatchObject({ ok: false, problems: [{ code: 'unknown-measure', found: 'bukets' }] });
    expect(read.ok ? '' : read.problems[0]?.wanted).toContain('bucket');
  });

  it('in a measure nobody gave a size to says what would do instead', () => {
    const read = readAmount('a few pots', 'compost', metric);
    const [problem] = read.ok ? [] : read.problems;
    expect(problem).toMatchObject({ code: 'unknown-measure', path: 'compost', found: 'pots' });
    expect(problem && tellProblem(inMetric, problem)).toMatch(/“pots” .* a weight or a volume: 20kg, 40L/u);
  });

  it('written as a power of ten is told whole', () => {
    const read = readAmount('1e9buckets', 'straw', metric);
    expect(read).toMatchObject({ ok: false, problems: [{ code: 'amount-unreadable', found: '1e9buckets' }] });
  });

  it('never throws, and never makes up an amount that is not above 0', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.string({ unit: 'grapheme' }),
          fc.constantFrom('__proto__', '3 __proto__', 'constructor'),
        ),
        (text) => {
          const read = readAmount(text, 'straw', metric);
          if (!read.ok) return;
          const json = JSON.stringify(read.value.amount);
          expect(json).not.toMatch(/null|-\d|:0[,}]/u);
        },
      ),
    );
  });
});

describe('a material’s name', () => {
  it.each([
    ['straw', 'straw'],
    ['coffee-grounds', 'coffee-grounds'],
    ['Coffee Grounds', 'coffee-grounds'],
    ['goat bedding', 'goat-bedding'],
    ['grass', 'grass-clippings'],
    ['leaves', 'autumn-leaves'],
    ['spoiled hay', 'spoiled-hay'],
    ['Café grounds', 'coffee-grounds'],
  ])('%s is %s', (typed, id) => {
    expect(metric.material(typed)).toEqual({ is: 'material', id });
  });

  it.each(['strwa', '__proto__', 'constructor', ''])('that is not known gives the nearest: %j', (typed) => {
    const found = metric.material(typed);
    expect(found.is === 'unknown' && found.near.length).toBeGreaterThan(0);
  });
});
