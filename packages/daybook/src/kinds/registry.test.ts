import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { arbitraryDaybook } from '../testing/arbitrary.ts';
import { isKindId, kinds, tell } from './registry.ts';

const sides = Object.entries(kinds);

describe('the registry of kinds', () => {
  it.each(sides)('%s is listed under its own id, kebab-case, version 1 or later', (id, kind) => {
    expect(kind.id).toBe(id);
    expect(id).toMatch(/^[a-z]+(-[a-z]+)*$/u);
    expect(kind.kv).toBeGreaterThanOrEqual(1);
  });

  it.each(sides)('%s has a body that is an object without unknown fields', (_id, kind) => {
    const schema = z.toJSONSchema(kind.body) as { readonly type?: string; readonly additionalProperties?: boolean };
    expect(schema).toMatchObject({ type: 'object', additionalProperties: false });
  });

  it('holds the first set of the foundations, but for brews and worm beds, which come with their models', () => {
    const firstSet =
      'material-described material-measured stock-in stock-out bay-set-up heap-built heap-fed reading turned watered covered ' +
      'moved combined split screened finished spread bed-set-up sown soil-tested harvested note photo local-clause';
    expect(firstSet.split(' ').filter((id) => !isKindId(id))).toEqual([]);
  });

  it('knows no kind by the name of something every object has', () => {
    for (const name of ['constructor', 'toString', 'hasOwnProperty', '__proto__']) expect(isKindId(name)).toBe(false);
  });

  it('names units and basis in every field that is an amount', () => {
    const withoutUnit = new Set(['carbonToNitrogen', 'pH']);
    for (const [id, kind] of sides)
      for (const name of quantitiesIn(z.toJSONSchema(kind.body)))
        expect(
          withoutUnit.has(name) ||
            /_(kg|m3|m2|m|L|degC|K|ratio|pct[A-Za-z]*|kgPerM3AsIs|mgPerKg(Dry)?|dSPerM|mgCO2CPerGOMPerDay|mmolPerKgOMPerHour|mgPerGVSPerHour)$/u.test(
              name,
            ),
          `${id} ${name}`,
        ).toBe(true);
  });

  it('tells every known entry of a daybook with the body it was written with', () => {
    fc.assert(
      fc.property(arbitraryDaybook(), (entries) => {
        for (const entry of entries) {
          const told = tell(entry);
          if (told.ok) expect(told.value).toMatchObject({ kind: entry.kind, body: entry.body, entry });
          else expect(['unknown-kind', 'newer-version']).toContain(told.problems[0]?.code);
        }
      }),
      { seed: 1 },
    );
  });
});

/** Names of the fields whose schema carries a scale: the quantities. */
function quantitiesIn(schema: unknown, name = ''): readonly string[] {
  if (typeof schema !== 'object' || schema === null) return [];
  if (Array.isArray(schema)) return schema.flatMap((inner) => quantitiesIn(inner, name));
  if ('scale' in schema) return [name];
  return Object.entries(schema).flatMap(([key, inner]) =>
    key === 'properties' && typeof inner === 'object' && inner !== null
      ? Object.entries(inner).flatMap(([field, of]) => quantitiesIn(of, field))
      : quantitiesIn(inner, name),
  );
}
