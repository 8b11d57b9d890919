import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Entry } from './entry/entry.ts';
import { heldOf } from './held.ts';
import { arbitraryTroubledDaybook } from './testing/arbitrary.ts';
import { testWriter } from './testing/writer.ts';

const seed = 64;

function chainOf(length: number): readonly Entry[] {
  const writer = testWriter();
  for (let i = 0; i < length; i++) writer.write('note', null, { text: `day ${i}` });
  return writer.entries;
}

const versions = (entries: readonly Entry[]): readonly string[] =>
  [...new Set(entries.map(({ id, sum }) => `${id} ${sum}`))].sort();

describe('describing what is held', () => {
  it('tells an unbroken chain in one run', () => {
    const chain = chainOf(500);
    expect(heldOf(chain)).toEqual([{ device: 'phone', runs: [{ from: 1, to: 500, sum: chain[499]?.sum }], sides: [] }]);
  });

  it('tells a gap as two runs', () => {
    const chain = chainOf(6);
    const without = chain.filter(({ n }) => n !== 3 && n !== 4);
    expect(heldOf(without)).toEqual([
      {
        device: 'phone',
        runs: [
          { from: 1, to: 2, sum: chain[1]?.sum },
          { from: 5, to: 6, sum: chain[5]?.sum },
        ],
        sides: [],
      },
    ]);
  });

  it('splits a run where the link is broken: a changed entry does not hide behind a true later one', () => {
    const chain = chainOf(5);
    const changed = chain.map((entry) => (entry.n === 3 ? { ...entry, sum: 'f'.repeat(64) } : entry));
    expect(heldOf(changed)[0]?.runs.map(({ from, to }) => [from, to])).toEqual([
      [1, 3],
      [4, 5],
    ]);
  });

  it('follows the linked version and lists the other as a side', () => {
    const chain = chainOf(3);
    const other = chain.filter(({ n }) => n === 2).map((entry) => ({ ...entry, sum: '0'.repeat(64) }));
    expect(heldOf([...chain, ...other])).toEqual([
      {
        device: 'phone',
        runs: [{ from: 1, to: 3, sum: chain[2]?.sum }],
        sides: [{ n: 2, id: chain[1]?.id, sum: '0'.repeat(64) }],
      },
    ]);
  });

  it('X3 is the same for the same set, whatever the order, and tells any two sets apart', () => {
    const two = arbitraryTroubledDaybook().chain((entries) => {
      const most = fc.shuffledSubarray([...entries], { minLength: Math.max(0, entries.length - 2) });
      return fc.tuple(most, most);
    });
    let alike = 0;
    let apart = 0;
    fc.assert(
      fc.property(two, ([a, b]) => {
        const same = JSON.stringify(versions(a)) === JSON.stringify(versions(b));
        if (same) alike++;
        else apart++;
        expect(JSON.stringify(heldOf(a)) === JSON.stringify(heldOf(b))).toBe(same);
        expect(heldOf([...a, ...a])).toEqual(heldOf(a));
      }),
      { seed, numRuns: 500 },
    );
    // The property says something only if both cases came up.
    expect(Math.min(alike, apart)).toBeGreaterThan(30);
  });
});
