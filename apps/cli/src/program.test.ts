import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Garden, garden } from './testing/garden.ts';

let home: Garden;
beforeAll(async () => {
  home = garden();
  await home.run(['log', 'bay', 'Left bay', '1.2x1.2x1.2m']);
  await home.run([
    'build',
    'straw=2bales',
    'leaves=6bags',
    'coffee-grounds=4buckets',
    '--name',
    'Heap',
    '--bay',
    'Left bay',
  ]);
});
afterAll(() => home.remove());

const names = ['mix', 'build', 'feed', 'log', 'heap', 'daybook', 'bring', 'take', 'exchange', 'reckon', 'start'];
const words = fc.oneof(
  fc.constantFrom(
    'Heap',
    'stock',
    'bay',
    'note',
    '148F',
    'turned',
    'watered',
    'covered',
    'moved',
    'straw=9buckets',
    'grass=a-lot',
  ),
  fc.constantFrom(
    '--json',
    '--demo',
    '--check',
    '--all',
    '--exact',
    '--half',
    '--as-typed',
    '--card-only',
    '--list',
    '--',
    '-',
  ),
  fc.constantFrom(
    '--bay=1x1x1m',
    '--when=yesterday',
    '--units=us',
    '--newest=3',
    '--amend=0000',
    '--withdraw=ffff',
    '--show=x',
  ),
  fc.constantFrom(
    '__proto__',
    '__proto__=9buckets',
    'constructor',
    'toString=1kg',
    'NaN',
    '-1',
    '1e999',
    '\u0000',
    '🐐',
    '=',
    '+',
    '\ud800',
  ),
  fc.string({ maxLength: 20 }),
);

describe('any command line', () => {
  it('ends with 0, 1 or 2 and never throws', async () => {
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...names), fc.array(words, { maxLength: 5 }), async (name, rest) => {
        // What would write files elsewhere than into the data folder is left out.
        const args = rest.filter((word) => !/^--(?:out|data|body)/u.test(word));
        const { code, out, err } = await home.run([name, ...args]);
        expect([0, 1, 2]).toContain(code);
        expect(out + err).not.toMatch(/\n\s+at .+:\d+:\d+/u);
        if (code !== 0) expect(out + err).not.toBe('');
      }),
      { numRuns: 150 },
    );
  });

  it('leaves the daybook sound', async () => {
    expect((await home.run(['daybook', '--check'])).code).toBe(0);
  });

  it('answers in JSON when asked, whatever comes of it', async () => {
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...names), fc.array(words, { maxLength: 4 }), async (name, rest) => {
        const args = rest.filter(
          (word) => !/^--(?:out|data|body)/u.test(word) && word !== '--' && word !== '--help' && word !== '-h',
        );
        // The daybook file itself is what `take` answers.
        fc.pre(name !== 'take');
        const { out } = await home.run([name, '--json', ...args]);
        expect(JSON.parse(out)).toHaveProperty('ok');
      }),
      { numRuns: 100 },
    );
  });
});
