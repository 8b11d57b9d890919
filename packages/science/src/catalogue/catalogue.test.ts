import sources from '@loamwright/reference/sources.json' with { type: 'json' };
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { cautions } from '../caution/index.ts';
import { between, createDraws, percentQuantity, positiveQuantity } from '../estimate/index.ts';
import { bad, type Calculation, check, good, listed, oneOfEach } from './index.ts';

const schema = z.strictObject({
  name: z.enum(['straw', 'hay']),
  count: z.int().min(1).max(9),
  moisture_pctWet: percentQuantity('moisture'),
  mass_kg: positiveQuantity('mass').optional(),
});

const sound = { name: 'straw', count: 2, moisture_pctWet: 12 };

function problemsOf(data: unknown) {
  const outcome = check(schema, data);
  return outcome.ok ? [] : outcome.problems;
}

describe('checking an input', () => {
  it('lets a sound one through', () => {
    expect(check(schema, sound)).toEqual(good(sound));
  });

  it.each([
    ['a missing field', { ...sound, count: undefined }, 'missing', 'count'],
    ['a wrong type', { ...sound, count: 'two' }, 'wrong-type', 'count'],
    ['too much', { ...sound, count: 10 }, 'too-big', 'count'],
    ['too little', { ...sound, count: 0 }, 'too-small', 'count'],
    ['an unknown choice', { ...sound, name: 'stone' }, 'not-one-of', 'name'],
    ['a field there is no place for', { ...sound, colour: 'green' }, 'unknown-field', 'colour'],
    ['a share past its bound', { ...sound, moisture_pctWet: 120 }, 'out-of-bounds', 'moisture_pctWet'],
    [
      'an estimate out of order',
      { ...sound, moisture_pctWet: { p10: 3, p50: 2, p90: 1 } },
      'out-of-bounds',
      'moisture_pctWet',
    ],
    ['half an estimate', { ...sound, moisture_pctWet: { p10: 3, p50: 4 } }, 'missing', 'moisture_pctWet.p90'],
    ['a word for a quantity', { ...sound, moisture_pctWet: 'damp' }, 'wrong-type', 'moisture_pctWet'],
    ['nothing at all', null, 'wrong-type', ''],
  ])('names %s, its place and what would do', (_what, data, code, path) => {
    const problems = problemsOf(data);
    expect(problems[0]).toMatchObject({ code, path });
    if (code !== 'unknown-field') expect(problems[0]?.wanted).not.toBe('');
  });

  it('of two bounds that a figure passes tells the narrower one alone', () => {
    const schema = z.strictObject({ pct: between(percentQuantity('A share.'), 0.1, 20) });
    const found = (pct: number) => check(schema, { pct });
    expect(found(150)).toEqual(bad({ code: 'out-of-bounds', path: 'pct', found: '150', wanted: '0.1 to 20' }));
    expect(found(30)).toMatchObject({ problems: [{ wanted: '0.1 to 20' }] });
  });

  it('tells each of two hundred thousand strange fields', () => {
    const strange = Object.fromEntries(Array.from({ length: 200_000 }, (_, i) => [`strange${i}`, i]));
    expect(problemsOf({ ...sound, ...strange })).toHaveLength(200_000);
  });

  it('never throws, whatever it is given', () => {
    fc.assert(
      fc.property(fc.anything({ withBigInt: true, withNullPrototype: true }), (data) => {
        const problems = problemsOf(data);
        expect(problems.every(({ code }) => code !== '')).toBe(true);
      }),
      { seed: 5, numRuns: 500 },
    );
  });
});

describe('a listed calculation', () => {
  const doubling: Calculation<{ mass_kg: number }, { mass_kg: number }> = {
    id: 'doubling',
    title: 'Doubling',
    summary: 'Twice the mass.',
    input: z.strictObject({ mass_kg: z.number().min(0) }),
    output: z.strictObject({ mass_kg: z.number() }),
    sources: [],
    cautions: [],
    example: { mass_kg: 1 },
    run: ({ mass_kg }) => good({ mass_kg: 2 * mass_kg }),
  };
  const needs = { draws: createDraws() };

  it('checks before it runs', () => {
    expect(listed(doubling).reckon({ mass_kg: 2 }, needs)).toEqual(good({ mass_kg: 4 }));
    expect(listed(doubling).reckon({ mass_kg: -2 }, needs)).toMatchObject({ ok: false });
  });

  it('cites each place once, all of one source together, and leaves the figures out', () => {
    const rows = [
      { source: 'handbook', place: 'table 1', mark: 'seen', value: 3 },
      { source: 'rule', place: 'section 2', mark: 'memory', low: 1, high: 2 },
      { source: 'handbook', place: 'table 2', mark: 'seen', value: 4 },
      { source: 'handbook', place: 'table 1', mark: 'seen', value: 5 },
      { source: 'handbook', place: 'table 1', mark: 'derived', value: 6 },
    ];
    expect(listed({ ...doubling, sources: rows }).sources).toEqual([
      { source: 'handbook', place: 'table 1', mark: 'seen' },
      { source: 'handbook', place: 'table 2', mark: 'seen' },
      { source: 'handbook', place: 'table 1', mark: 'derived' },
      { source: 'rule', place: 'section 2', mark: 'memory' },
    ]);
    expect(oneOfEach(rows)).toEqual([rows[0], rows[1], rows[4]]);
  });

  it('describes itself as JSON Schema', () => {
    expect(listed(doubling).inputSchema()).toMatchObject({ type: 'object', required: ['mass_kg'] });
  });
});

describe('the table of cautions', () => {
  it.each(Object.entries(cautions))('%s cites sources that the source list knows', (_id, { sources: cited }) => {
    expect(cited.length).toBeGreaterThan(0);
    for (const { source } of cited) expect(Object.keys(sources)).toContain(source);
  });
});
