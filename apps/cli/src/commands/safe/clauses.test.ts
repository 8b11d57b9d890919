import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { flat, type Garden, garden } from '../../testing/garden.ts';

let home: Garden;
beforeEach(() => {
  home = garden();
});
afterEach(() => home.remove());

const bay = [
  '--size',
  '4x4x4ft',
  '--line',
  '6ft',
  '--house',
  '25ft',
  '--lot',
  '8000ft2',
  '--stuff',
  'kitchen-scraps,rabbit-droppings',
  '--yard',
  'rear',
];

// The four town codes are named with their addresses in packages/science/src/clauses/published.test.ts.
const codes = {
  codes: [
    {
      of: 'LaGrange',
      whose: 'town',
      clauses: [
        'from-line 5ft',
        'from-house 15 ft',
        'height 4ft',
        'lot-share 1%',
        'footprint 75ft2',
        'bars animal-droppings',
      ],
    },
    {
      of: 'A city',
      clauses: ['volume 150ft3 per 10000ft2', 'height 5ft', 'from-line 3ft', 'from-house 20ft', 'scraps-buried'],
    },
    { of: 'Rochester Hills', clauses: ['from-line 5ft', 'sides 4x8ft', 'height 4ft', 'allows horse-manure'] },
    { of: 'Elk Grove', clauses: ['rear-yard', 'height 5ft', 'footprint 100ft2', 'bars pet-waste'] },
  ],
};

function filed(text: string): string {
  const path = join(home.folder, 'codes.json');
  writeFileSync(path, text);
  return path;
}

describe('safe clauses', () => {
  it('tells failed clauses first, then each clause of each code', async () => {
    const { code, out } = await home.run(['safe', 'clauses', '--file', filed(JSON.stringify(codes)), ...bay]);
    expect(code).toBe(0);
    const text = flat(out);
    expect(text.startsWith('Not as it stands: LaGrange bars rabbit droppings. No log makes up for a clause.')).toBe(
      true,
    );
    for (const said of [
      'LaGrange: fails.',
      'A city: not stated in full.',
      'the town, the landlord or the market decides',
    ])
      expect(text).toContain(said);
    expect(text).toContain('not stated: scraps buried in the middle (you did not say)');
    expect(text).toContain('not stated: what may not go in: rabbit droppings (its word can be read either way)');
    expect(text).toContain('not stated: what else is in it: kitchen scraps and rabbit droppings (it does not say)');
  });

  it('a heap of the daybook: its size, its stuff and its log; a clause outranks the log', async () => {
    await home.run(['build', 'rabbit droppings=4buckets', 'straw=8barrows', '--name', 'Long heap', '--bay', '4x4x4ft']);
    const asked = ['safe', 'clauses', 'long heap', '--clause'];
    const fails = flat((await home.run([...asked, 'bars animal-droppings', '--of', 'Our town'])).out);
    expect(fails).toMatch(/^Not as it stands: Our town bars rabbit droppings/u);
    const passes = flat((await home.run([...asked, 'allows animal-droppings,garden-stuff', 'height 4ft'])).out);
    expect(passes).toMatch(/^Every clause passes, but the heap’s log meets no rule/u);
    const { value } = await home.json([...asked, 'height 4ft', '--size', '1x1x2m']);
    expect(value).toMatchObject({ standing: 'clause-fails', input: { logMeets: false } });
  });

  it('clauses written down are used where none are typed, the newest of each name', async () => {
    const kept = ['safe', 'clauses', '--keep', '--of', 'Town code', '--clause'];
    await home.run([...kept, 'height 4ft', 'from-line 5ft']);
    const asked = ['safe', 'clauses', '--size', '4x4x5ft', '--line', '6ft'];
    expect(flat((await home.run(asked)).out)).toContain('Town code');
    const clausesOf = async (): Promise<readonly unknown[]> => {
      const { value } = await home.json(asked);
      return (value as { input: { codes: readonly { clauses: readonly unknown[] }[] } }).input.codes.flatMap(
        ({ clauses }) => clauses,
      );
    };
    expect(await clausesOf()).toHaveLength(2);
    await home.run([...kept, 'height 6ft']);
    expect(await clausesOf()).toHaveLength(1);
  });

  it('a bare figure is kept with its unit, so that it means the same in the other system', async () => {
    await home.run(['safe', 'clauses', '--keep', '--of', 'Town', '--clause', 'height 1.2', '--units', 'metric']);
    const { value } = await home.json(['safe', 'clauses', '--units', 'us']);
    expect(value).toMatchObject({ input: { codes: [{ clauses: [{ kind: 'height', most_m: 1.2 }] }] } });
  });

  it.each([
    [['--keep', '--clause', 'height 4ft'], '--of is missing'],
    [['--keep', '--of', 'Town'], 'clause'],
    [['--keep', '--of', 'Town', '--clause', 'be nice'], 'be nice'],
    [[], 'clause'],
  ])('%j is refused in words', async (more, said) => {
    const { code, err } = await home.run(['safe', 'clauses', ...more]);
    expect(code).not.toBe(0);
    expect(flat(err)).toContain(said);
  });

  it('clauses typed and filed, of a landlord too', async () => {
    const { value } = await home.json([
      'safe',
      'clauses',
      '--file',
      filed(JSON.stringify(codes)),
      '--clause',
      'covered',
      'enclosed',
      '--of',
      'The lease',
      '--whose',
      'landlord',
      '--cover',
      'no',
    ]);
    expect(value).toMatchObject({
      standing: 'clause-fails',
      codes: [
        {
          of: 'The lease',
          whose: 'landlord',
          findings: [
            { kind: 'covered', verdict: 'fail' },
            { kind: 'enclosed', why: 'grower-silent' },
          ],
        },
        { of: 'LaGrange', verdict: 'not-stated' },
        { of: 'A city' },
        { of: 'Rochester Hills' },
        { of: 'Elk Grove' },
      ],
    });
  });

  it.each([
    [['safe', 'clauses'], 'No clause was given'],
    [['safe', 'clauses', '--clause', 'height tall'], 'height 4ft'],
    [['safe', 'clauses', '--clause', 'height -4ft'], 'height 4ft'],
    [['safe', 'clauses', '--clause', 'wide 4ft'], 'can’t be read'],
    [['safe', 'clauses', '--clause', 'bars dragons'], 'animal-droppings'],
    [['safe', 'clauses', '--clause', 'lot-share 140%'], 'lot-share 1%'],
    [['safe', 'clauses', '--clause', 'covered', '--cover', 'perhaps'], 'yes, no'],
    [['safe', 'clauses', '--clause', 'covered', '--size', '4ft'], '4x4x4ft'],
    [['safe', 'clauses', '--clause', 'covered', '--stuff', 'moonstone'], 'kitchen-scraps'],
    [['safe', 'clauses', 'no such heap', '--clause', 'covered'], 'no heap'],
    [['safe', 'clauses', '--file', '/nowhere/codes.json'], 'can’t be read'],
  ])('%j is refused in words', async (args, said) => {
    const { code, err } = await home.run(args);
    expect(code).not.toBe(0);
    expect(flat(err)).toContain(said);
  });

  it.each([['{'], ['{"codes":[]}'], ['{"codes":[{"of":"x","clauses":["height 4ft"],"more":1}]}'], ['[]']])(
    'a file of %s is refused',
    async (text) => {
      const { code, err } = await home.run(['safe', 'clauses', '--file', filed(text)]);
      expect(code).toBe(2);
      expect(err).toContain('codes.json');
    },
  );
});
