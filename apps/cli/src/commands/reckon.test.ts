import { catalogue } from '@loamwright/science';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { flat, type Garden, garden } from '../testing/garden.ts';

let home: Garden;
beforeAll(() => {
  home = garden();
});
afterAll(() => home.remove());

describe('reckon', () => {
  it('lists every calculation', async () => {
    const { out, code } = await home.run(['reckon', '--list']);
    expect(code).toBe(0);
    for (const { id } of catalogue) expect(out).toContain(id);
    expect(await home.run(['reckon'])).toMatchObject({ code: 0, out });
  });

  it.each(catalogue.map(({ id }) => id))(
    '%s does the work on its own example, and says what it rests on',
    async (id) => {
      const example = (await home.run(['reckon', id, '--example'])).out;
      const { ok, value } = await home.json(['reckon', id], { input: example });
      expect(ok).toBe(true);
      expect(value).toBeTypeOf('object');
      expect((await home.run(['reckon', id], { input: example })).code).toBe(0);
      const { input, output } = JSON.parse((await home.run(['reckon', id, '--schema'])).out);
      expect(input.$schema).toContain('json-schema.org');
      expect(output.type).toBe('object');
      expect(flat((await home.run(['reckon', id, '--sources'])).out)).toMatch(
        /- .+\((?:read in the source|from memory|worked out)/u,
      );
    },
  );

  it('names the nearest for one it does not know', async () => {
    const { code, err } = await home.run(['reckon', 'mix-balanse']);
    expect(code).toBe(2);
    expect(flat(err)).toContain('There is no calculation “mix-balanse”');
    expect(err).toContain('mix-balance');
  });

  it.each<readonly [string, string, string]>([
    ['nothing', '', 'input-empty'],
    ['blanks', ' \n ', 'input-empty'],
    ['no JSON', 'straw', 'not-json-text'],
    ['NaN', '{"temp_degC": NaN}', 'not-json-text'],
    ['half of it', '{"temp_degC": 6', 'not-json-text'],
    ['a list', '[]', 'wrong-type'],
    ['null', 'null', 'wrong-type'],
    ['an empty object', '{}', 'missing'],
    ['text for a number', '{"temp_degC": "64"}', 'wrong-type'],
    ['a number beyond numbers', '{"temp_degC": 1e999}', 'wrong-type'],
    ['a key that reaches into objects', '{"temp_degC": 64, "__proto__": {"polluted": 1}}', 'unknown-field'],
    ['a constructor', '{"temp_degC": 64, "constructor": 1}', 'unknown-field'],
    ['emoji', '{"temp_degC": 64, "🐐": 1}', 'unknown-field'],
    ['a negative depth', '{"temp_degC": 64, "depth_m": -1}', 'out-of-bounds'],
    ['an estimate out of order', '{"temp_degC": {"p10": 3, "p50": 2, "p90": 1}}', 'out-of-bounds'],
    ['deep nesting', `${'['.repeat(20_000)}${']'.repeat(20_000)}`, 'wrong-type'],
  ])('refuses %s with what, where and what would do', async (_, input, code) => {
    const answer = await home.json(['reckon', 'reading-meaning'], { input });
    expect(answer.ok).toBe(false);
    expect(answer.problems?.map((problem) => problem.code)).toContain(code);
    const told = await home.run(['reckon', 'reading-meaning'], { input });
    expect(told.code).toBe(2);
    expect(told.err).not.toMatch(/\bat .*\.(?:ts|mjs):\d+/u);
    expect(told.err.length).toBeGreaterThan(10);
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
  });

  it('refuses more than 16 MB', async () => {
    const answer = await home.json(['reckon', 'reading-meaning'], { input: ' '.repeat(16 * 1024 * 1024 + 1) });
    expect(answer.problems?.[0]?.code).toBe('too-many-bytes');
  });

  it('never throws, whatever JSON it gets', async () => {
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...catalogue.map(({ id }) => id)), fc.json(), async (id, input) => {
        const { code } = await home.run(['reckon', id], { input });
        expect([0, 2]).toContain(code);
      }),
      { numRuns: 60 },
    );
  });
});
