import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Entry } from './entry/entry.ts';
import { merge } from './merge.ts';
import { arbitraryTroubledDaybook } from './testing/arbitrary.ts';

const seed = 2026;

/** Three daybooks that share some entries: subsets of one troubled daybook, in any order. */
const three = arbitraryTroubledDaybook().chain((entries) => {
  const some = fc.shuffledSubarray([...entries]);
  return fc.tuple(some, some, some);
});

const versions = (entries: readonly Entry[]): readonly string[] => entries.map(({ id, sum }) => `${id} ${sum}`);

describe('merging daybooks', () => {
  it('commutes', () => {
    fc.assert(
      fc.property(three, ([a, b]) => {
        expect(merge(a, b)).toEqual(merge(b, a));
      }),
      { seed },
    );
  });

  it('associates', () => {
    fc.assert(
      fc.property(three, ([a, b, c]) => {
        expect(merge(merge(a, b).entries, c)).toEqual(merge(a, merge(b, c).entries));
        expect(merge(a, b, c)).toEqual(merge(merge(a, b).entries, c));
      }),
      { seed },
    );
  });

  it('is idempotent, and nothing is its neutral element', () => {
    fc.assert(
      fc.property(three, ([a]) => {
        const once = merge(a);
        expect(merge(a, a)).toEqual(once);
        expect(merge(once.entries)).toEqual(once);
        expect(merge(a, [])).toEqual(once);
      }),
      { seed },
    );
  });

  it('loses nothing, makes nothing up and counts nothing twice', () => {
    fc.assert(
      fc.property(three, ([a, b]) => {
        const merged = versions(merge(a, b).entries);
        expect(new Set(merged)).toEqual(new Set(versions([...a, ...b])));
        expect(merged.length).toBe(new Set(merged).size);
      }),
      { seed },
    );
  });

  it('tells every id that stands for two sums, and no other', () => {
    fc.assert(
      fc.property(three, ([a, b]) => {
        const { conflicts } = merge(a, b);
        const both = [...a, ...b];
        const doubtful = both.filter(({ id, sum }) => both.some((other) => other.id === id && other.sum !== sum));
        expect(new Set(conflicts.map(({ id }) => id))).toEqual(new Set(doubtful.map(({ id }) => id)));
      }),
      { seed },
    );
  });
});
