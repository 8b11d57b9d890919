import { describe, expect, it } from 'vitest';
import { draftOf, readDraft } from '../draft.ts';
import { maxEntry_bytes } from '../limits.ts';
import { minutesIn2026, testId } from '../testing/ids.ts';
import { testWriter } from '../testing/writer.ts';
import type { Draft } from './entry.ts';
import { readEntry } from './read.ts';
import { continues, seal } from './seal.ts';

const header = {
  id: testId(1),
  holding: 'quarry-lane',
  device: 'phone',
  by: 'ada',
  happened: minutesIn2026(0),
  zone: 'Europe/London',
  precision: 'minute',
  written: minutesIn2026(1),
  about: [{ type: 'heap', id: 'quarry' }],
} as const;

function draft(changes: Partial<Draft> = {}): Draft {
  const outcome = draftOf('reading', { ...header, ...changes }, { temp_degC: 64.4 });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

function codesOf(input: unknown): readonly string[] {
  const outcome = readDraft(input);
  return outcome.ok ? [] : outcome.problems.map(({ code, path }) => `${code} ${path}`);
}

const whole = { ...header, kind: 'reading', kv: 1, body: { temp_degC: 64.4 } };

describe('a draft', () => {
  it('of a known kind is taken, as a copy that shares nothing with the input', () => {
    const input = structuredClone(whole);
    const outcome = readDraft(input);
    input.body.temp_degC = 0;
    expect(outcome).toEqual({ ok: true, value: whole });
  });

  it('has fields whose value is undefined left out', () => {
    const outcome = readDraft({ ...whole, amends: undefined });
    expect(outcome.ok && Object.keys(outcome.value)).not.toContain('amends');
  });

  it.each([
    [{ kind: 'brew-started' }, 'unknown-kind kind'],
    [{ kv: 3 }, 'newer-version kv'],
    [{ body: {} }, 'out-of-bounds body'],
    [{ body: { temp_degC: 64.4, colour: 'brown' } }, 'unknown-field body.colour'],
    [{ body: { temp_degC: 'hot' } }, 'wrong-type body.temp_degC'],
    [{ about: [] }, 'about-wrong about'],
    [
      {
        about: [
          { type: 'heap', id: 'a' },
          { type: 'heap', id: 'b' },
        ],
      },
      'about-wrong about',
    ],
    [{ zone: 'Europe/Quarry_Lane' }, 'unknown-zone zone'],
    [{ entered: { '/temp_degF': { amount: 148 } } }, 'no-such-place entered'],
    [{ withdraws: testId(9) }, 'withdraws-wrong withdraws'],
    [{ kind: 'withdrawal', body: {} }, 'withdraws-wrong withdraws'],
    [{ n: 1 }, 'unknown-field n'],
    [{ kind: 'note', body: { text: 'x'.repeat(maxEntry_bytes) } }, 'too-large '],
  ])('with %j is refused', (changes, problem) => {
    expect(codesOf({ ...whole, ...changes })).toContain(problem);
  });

  it('may name amounts as they were given, through lists and escaped keys (RFC 6901)', () => {
    const layers = [{ material: 'straw', mass_kg: 9 }];
    const body = { name: 'Quarry', layers };
    const entered = {
      '/layers/0/mass_kg': { amount: 9, unit: 'bucket' },
      '/layers/0/material': { words: 'straw, a lot' },
    };
    expect(codesOf({ ...whole, kind: 'heap-built', body, entered })).toEqual([]);
    expect(codesOf({ ...whole, kind: 'heap-built', body, entered: { '/layers/1/mass_kg': { amount: 9 } } })).toEqual([
      'no-such-place entered',
    ]);
  });

  it('at the limit still seals to an entry within it', () => {
    const body = (length: number) => ({ ...whole, kind: 'note', body: { text: '€'.repeat(length) } });
    // The kind's own limit on text is lower, so the entry is filled up by what the person entered.
    const entered = (count: number): Record<string, unknown> =>
      Object.fromEntries(Array.from({ length: count }, (_, i) => [`/text${''.padEnd(i, ' ')}`, { words: '€' }]));
    expect(codesOf({ ...body(20_000), entered: entered(1) })).toEqual([]);
    const outcome = readDraft(body(20_000));
    if (!outcome.ok) throw new Error('within the limit');
    for (const entry of seal(null, [outcome.value])) expect(readEntry(entry).ok).toBe(true);
  });
});

describe('sealing', () => {
  it('numbers from 1, links by prev, and what it gives is a valid entry', () => {
    const entries = seal(null, [draft({ id: testId(1) }), draft({ id: testId(2) }), draft({ id: testId(3) })]);
    expect(entries.map(({ n }) => n)).toEqual([1, 2, 3]);
    expect(entries.map(({ prev }) => prev)).toEqual([null, entries[0]?.sum, entries[1]?.sum]);
    for (const entry of entries)
      expect(readEntry(JSON.parse(JSON.stringify(entry)))).toEqual({ ok: true, value: entry });
  });

  it('goes on from a tip', () => {
    const tip = { n: 41, sum: 'a'.repeat(64) };
    expect(seal(tip, [draft()])).toMatchObject([{ n: 42, prev: tip.sum }]);
    expect(seal(tip, [])).toEqual([]);
  });

  it('does not mix devices', () => {
    expect(() => seal(null, [draft(), draft({ id: testId(2), device: 'tablet' })])).toThrow(RangeError);
  });
});

describe('continuing a chain', () => {
  const tip = { n: 4, sum: 'b'.repeat(64) };
  const entries = seal(tip, [draft({ id: testId(1) }), draft({ id: testId(2) })]);
  const broken = (changes: object, at = 1): unknown => {
    const outcome = continues(
      'phone',
      tip,
      entries.map((entry, i) => (i === at ? { ...entry, ...changes } : entry)),
    );
    return outcome.ok ? 'continues' : outcome.problems[0];
  };

  it('holds for what seal gives, and for nothing', () => {
    expect(continues('phone', tip, entries).ok).toBe(true);
    expect(continues('phone', null, []).ok).toBe(true);
  });

  it.each([
    ['device', { device: 'tablet' }],
    ['n', { n: 7 }],
    ['prev', { prev: tip.sum }],
    ['id', { id: testId(1) }],
    ['sum', { by: 'ben' }],
  ])('breaks on another %s', (field, changes) => {
    expect(broken(changes)).toMatchObject({ code: 'broken-chain', path: `[1].${field}` });
  });

  it('breaks on another tip or another device', () => {
    expect(continues('phone', { ...tip, n: 5 }, entries).ok).toBe(false);
    expect(continues('phone', null, entries).ok).toBe(false);
    expect(continues('tablet', tip, entries).ok).toBe(false);
  });
});

it('a writer in tests refuses what is not valid', () => {
  expect(() => testWriter().write('reading', 'quarry', {})).toThrow(/not a valid draft/u);
});
