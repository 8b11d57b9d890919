import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { maxDepth, maxEntry_bytes } from '../limits.ts';
import { arbitraryTroubledDaybook } from '../testing/arbitrary.ts';
import { minutesIn2026, testId } from '../testing/ids.ts';
import { testWriter } from '../testing/writer.ts';
import { canonical } from './canonical.ts';
import type { Entry } from './entry.ts';
import { readEntry } from './read.ts';
import { sumOf } from './sum.ts';

const seed = 9562;

function codesOf(input: unknown): readonly string[] {
  const outcome = readEntry(input);
  return outcome.ok ? [] : outcome.problems.map(({ code, path }) => `${code} ${path}`);
}

/** An entry with some fields replaced and its sum made to fit again. */
function resealed(entry: Entry, changes: Readonly<Record<string, unknown>>): unknown {
  const { sum: _sum, ...rest } = { ...entry, ...changes };
  return { ...rest, sum: sumOf(rest as Entry) };
}

const good = testWriter().write(
  'reading',
  'quarry',
  { temp_degC: 64.4 },
  { entered: { '/temp_degC': { amount: 148, unit: 'degF' } } },
);

describe('reading an entry from outside', () => {
  it('gives back what was handed in', () => {
    expect(readEntry(JSON.parse(JSON.stringify(good)))).toEqual({ ok: true, value: good });
  });

  // RFC 9562 appendix A.6: example of a UUIDv7 value.
  it('takes the UUIDv7 of RFC 9562, in lower case', () => {
    const id = '017f22e2-79b0-7cc3-98c4-dc0c0c07398f';
    expect(codesOf(resealed(good, { id }))).toEqual([]);
    expect(codesOf(resealed(good, { id: id.toUpperCase() }))).toEqual(['out-of-bounds id']);
  });

  it.each([
    // RFC 9562 appendix A.3: a UUIDv4.
    ['a version 4 UUID', '919108f7-52d1-4320-9bac-f847db4148a8'],
    ['another variant', '017f22e2-79b0-7cc3-18c4-dc0c0c07398f'],
    ['no UUID', 'entry-1'],
  ])('refuses %s as id', (_what, id) => {
    expect(codesOf(resealed(good, { id }))).toEqual(['out-of-bounds id']);
  });

  it.each([
    ['v', 0, 'not-one-of v'],
    ['n', 0, 'too-small n'],
    ['n', 1.5, 'wrong-type n'],
    ['n', 2, 'out-of-bounds prev'],
    ['prev', 'f'.repeat(64), 'out-of-bounds prev'],
    ['prev', 'f', 'out-of-bounds prev'],
    ['happened', '2026-02-29T10:00:00.000Z', 'out-of-bounds happened'],
    ['happened', '2026-02-28T10:00:00Z', 'out-of-bounds happened'],
    ['happened', '2026-02-28T10:00:00.000+01:00', 'out-of-bounds happened'],
    ['written', '2026-02-28T24:00:00.000Z', 'out-of-bounds written'],
    ['zone', 'Europe/Lon don', 'out-of-bounds zone'],
    ['precision', 'second', 'not-one-of precision'],
    ['kind', 'Reading', 'out-of-bounds kind'],
    ['kv', 0, 'too-small kv'],
    ['about', [{ type: 'heap', id: '../up' }], 'out-of-bounds about[0].id'],
    ['about', Array.from({ length: 65 }, () => ({ type: 'heap', id: 'a' })), 'too-big about'],
    ['body', [], 'out-of-bounds body'],
    ['amends', good.id, 'out-of-bounds id'],
    ['entered', { temp_degC: { amount: 1 } }, 'not-valid entered.temp_degC'],
    ['entered', { '/temp_degC': {} }, 'out-of-bounds entered./temp_degC'],
    ['weather', 'frost', 'unknown-field weather'],
  ])('refuses %s = %j', (field, value, problem) => {
    expect(codesOf(resealed(good, { [field]: value }))).toContain(problem);
  });

  it('refuses to amend and withdraw at once', () => {
    expect(codesOf(resealed(good, { amends: testId(5), withdraws: testId(6) }))).toEqual(['out-of-bounds withdraws']);
  });

  it('finds a change in any field', () => {
    for (const [field, value] of [
      ['by', 'ben'],
      ['happened', minutesIn2026(5)],
      ['body', { temp_degC: 70 }],
      ['about', []],
    ] as const)
      expect(codesOf({ ...good, [field]: value })).toEqual(['sum-mismatch sum']);
  });

  it('keeps unknown kinds and newer versions of a body as they are', () => {
    const body = { oxygen_mgPerL: 6.5, list: [1, { deep: [null, 'naïve 🐐'] }] };
    for (const changes of [
      { kind: 'brew-checked', body },
      { kv: 9, body },
    ]) {
      const entry = resealed(good, changes);
      const outcome = readEntry(JSON.parse(JSON.stringify(entry)));
      expect(outcome.ok && canonical(outcome.value)).toBe(canonical(entry));
    }
  });

  it('keeps a newer header with fields it does not know', () => {
    const entry = resealed(good, { v: 2, weather: { rain_mm: 4 } });
    const outcome = readEntry(JSON.parse(JSON.stringify(entry)));
    expect(outcome.ok && canonical(outcome.value)).toBe(canonical(entry));
    expect(codesOf(resealed(good, { v: 2, device: undefined }))).toEqual(['missing device']);
  });
});

describe('hostile input', () => {
  const nested = (levels: number): unknown => JSON.parse(`${'[{"a":'.repeat(levels / 2)}1${'}]'.repeat(levels / 2)}`);

  it('refuses prototype keys, at any depth, and leaves prototypes alone', () => {
    for (const key of ['__proto__', 'constructor', 'prototype']) {
      const text = JSON.stringify(good).replace(
        '"temp_degC":64.4',
        `"temp_degC":64.4,"x":[{"${key}":{"polluted":true}}]`,
      );
      expect(readEntry(JSON.parse(text))).toMatchObject({
        ok: false,
        problems: [{ code: 'forbidden-key', path: 'body.x[0]', found: key }],
      });
    }
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
  });

  it('refuses a body beyond the limit, and takes one just within', () => {
    const entry = { ...good, kind: 'kind-to-come', body: { text: '' } };
    const room = maxEntry_bytes - canonical({ ...entry, sum: undefined }).length;
    expect(codesOf(resealed(entry, { body: { text: 'x'.repeat(room) } }))).toEqual([]);
    expect(codesOf(resealed(entry, { body: { text: 'x'.repeat(room + 1) } }))).toEqual(['too-large ']);
    // Three bytes each in UTF-8: within the limit by characters, beyond it by bytes.
    expect(codesOf(resealed(entry, { body: { text: '€'.repeat(room / 2) } }))).toEqual(['too-large ']);
  });

  it('refuses wide lists, wide objects and shared structures without walking them to the end', () => {
    const wide = Array.from({ length: maxEntry_bytes + 1 }, () => 0);
    expect(codesOf({ ...good, body: { wide } })).toEqual(['too-large ']);
    const keys = Object.fromEntries(wide.map((_zero, i) => [`k${i}`, 0]));
    expect(codesOf({ ...good, body: keys })).toEqual(['too-large ']);
    let shared: unknown = 'x';
    for (let i = 0; i < 30; i++) shared = [shared, shared];
    expect(codesOf({ ...good, body: { shared } })).toEqual(['too-large ']);
  });

  it('refuses deep nesting, and takes the deepest allowed', () => {
    // The body itself is the second level of an entry.
    expect(codesOf(resealed(good, { kind: 'kind-to-come', body: { deep: nested(maxDepth - 2) } }))).toEqual([]);
    expect(codesOf({ ...good, body: { deep: nested(maxDepth) } })[0]).toMatch(/^too-deep body\.deep/u);
    expect(codesOf({ ...good, body: { deep: nested(100_000) } })[0]).toMatch(/^too-deep body\.deep/u);
    const ring: Record<string, unknown> = {};
    ring['ring'] = ring;
    expect(codesOf({ ...good, body: ring })[0]).toMatch(/^too-deep body\.ring/u);
  });

  it.each([
    ['a lone surrogate', '\ud800'],
    ['a lone surrogate inside text', 'a\udc00b'],
    ['not a number', Number.NaN],
    ['infinity', Number.POSITIVE_INFINITY],
    ['a function', () => 1],
    ['a symbol', Symbol('x')],
    ['a big integer', 1n],
    ['a date', new Date(0)],
    ['a map', new Map()],
    ['a list of holes', Array(2)],
  ])('refuses %s in a body', (_what, value) => {
    expect(codesOf({ ...good, body: { value } })[0]).toMatch(/^not-json body\.value/u);
  });

  it('refuses a lone surrogate in a key', () => {
    expect(codesOf({ ...good, body: { 'a\ud800': 1 } })[0]).toMatch(/^forbidden-key/u);
  });

  it('never throws, whatever it is handed', () => {
    fc.assert(
      fc.property(
        fc.anything({
          withBigInt: true,
          withDate: true,
          withMap: true,
          withNullPrototype: true,
          withSparseArray: true,
        }),
        (input) => {
          expect(readEntry(input).ok).toBe(false);
        },
      ),
      { seed, numRuns: 500 },
    );
  });

  it('never throws on an entry with anything in one of its fields, and never takes a change for good', () => {
    fc.assert(
      fc.property(fc.constantFrom(...Object.keys(good)), fc.anything(), (field, value) => {
        const outcome = readEntry({ ...good, [field]: value });
        if (outcome.ok) expect(canonical(outcome.value)).toBe(canonical(good));
      }),
      { seed, numRuns: 1000 },
    );
  });
});

it('any entry survives writing to JSON and reading back', () => {
  fc.assert(
    fc.property(arbitraryTroubledDaybook(), (entries) => {
      for (const entry of entries) {
        const outcome = readEntry(JSON.parse(JSON.stringify(entry)));
        expect(outcome.ok && canonical(outcome.value)).toBe(canonical(entry));
      }
    }),
    { seed },
  );
});
