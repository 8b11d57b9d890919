import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arbitraryDaybook, arbitraryTroubledDaybook } from '../testing/arbitrary.ts';
import { testId } from '../testing/ids.ts';
import { testWriter } from '../testing/writer.ts';
import type { Entry } from './entry.ts';
import { seal } from './seal.ts';
import { sumOf } from './sum.ts';
import { checkChain } from './verify.ts';

const seed = 180_4;
const clean = { changed: [], gaps: [], breaks: [], doubled: [], conflicts: [] };

function chainOf(length: number): readonly Entry[] {
  const writer = testWriter();
  for (let i = 0; i < length; i++) writer.write('note', null, { text: `day ${i}` });
  return writer.entries;
}

/** The same entry with another fact, and a sum made to fit it: what a careful forger would hand over. */
function forged(entry: Entry): Entry {
  const { sum: _sum, ...rest } = { ...entry, body: { text: 'it was 65 °C, honestly' } };
  return { ...rest, sum: sumOf(rest) };
}

const [one, two, three, four] = chainOf(4) as readonly [Entry, Entry, Entry, Entry];

describe('checking chains', () => {
  it('finds nothing in any honest daybook', () => {
    fc.assert(
      fc.property(arbitraryDaybook(), (entries) => {
        expect(checkChain(entries)).toEqual({ counted: entries.length, ...clean });
      }),
      { seed },
    );
  });

  it('sees an entry changed without its sum', () => {
    const changed = { ...two, by: 'ben' };
    expect(checkChain([one, changed, three])).toEqual({
      counted: 3,
      ...clean,
      changed: [{ id: two.id, device: 'phone', n: 2, sum: two.sum, recomputed: sumOf(changed) }],
    });
  });

  it('sees an entry changed together with its sum, for anyone who holds the next one', () => {
    const changed = forged(two);
    expect(checkChain([one, changed, three])).toEqual({
      counted: 3,
      ...clean,
      breaks: [{ device: 'phone', n: 3, id: three.id, prev: two.sum, found: [changed.sum] }],
    });
  });

  it('sees a missing entry as a gap, also before the first held', () => {
    expect(checkChain([four, two]).gaps).toEqual([
      { device: 'phone', from: 1, to: 1 },
      { device: 'phone', from: 3, to: 3 },
    ]);
    expect(checkChain([four]).gaps).toEqual([{ device: 'phone', from: 1, to: 3 }]);
  });

  it('sees one id with two sums as a conflict, and each of them held once', () => {
    const changed = forged(two);
    const report = checkChain([one, two, three, changed, two]);
    expect(report.counted).toBe(4);
    expect(report.conflicts).toEqual([{ id: two.id, sums: [two.sum, changed.sum].sort() }]);
    expect(report.breaks).toEqual([]);
  });

  it('sees one number given out twice, as after a restored backup', () => {
    const { sum: _sum, v: _v, n: _n, prev: _prev, ...draft } = two;
    const [twin] = seal(one, [{ ...draft, id: testId(77) }]);
    if (twin === undefined) throw new Error('sealed');
    expect(checkChain([one, two, three, twin])).toEqual({
      counted: 4,
      ...clean,
      doubled: [{ device: 'phone', n: 2, ids: [two.id, twin.id].sort() }],
    });
  });

  it('finds any single change of any entry that is not its device’s last, with its sum or without', () => {
    fc.assert(
      fc.property(arbitraryDaybook(), fc.nat(), fc.boolean(), (entries, pick, resum) => {
        const inner = entries.filter((entry) =>
          entries.some(({ device, n }) => device === entry.device && n > entry.n),
        );
        const target = inner[pick % Math.max(1, inner.length)];
        fc.pre(target !== undefined);
        const changed = resum ? forged(target) : { ...target, by: 'nobody' };
        const report = checkChain(entries.map((entry) => (entry === target ? changed : entry)));
        const found = resum ? report.breaks.map(({ n }) => n - 1) : report.changed.map(({ n }) => n);
        expect(found).toEqual([target.n]);
      }),
      { seed },
    );
  });

  it('finds any missing entry that is not its device’s last, as a gap of just its number', () => {
    fc.assert(
      fc.property(arbitraryDaybook(), fc.nat(), (entries, pick) => {
        const inner = entries.filter((entry) =>
          entries.some(({ device, n }) => device === entry.device && n > entry.n),
        );
        const target = inner[pick % Math.max(1, inner.length)];
        fc.pre(target !== undefined);
        expect(checkChain(entries.filter((entry) => entry !== target))).toEqual({
          counted: entries.length - 1,
          ...clean,
          gaps: [{ device: target.device, from: target.n, to: target.n }],
        });
      }),
      { seed },
    );
  });

  it('reports the same for the same set, in any order and with repetitions', () => {
    fc.assert(
      fc.property(
        arbitraryTroubledDaybook().chain((entries) =>
          fc.tuple(
            fc.constant(entries),
            fc.shuffledSubarray([...entries, ...entries], { minLength: entries.length * 2 }),
          ),
        ),
        ([entries, shuffled]) => {
          expect(checkChain(shuffled)).toEqual(checkChain(entries));
        },
      ),
      { seed },
    );
  });
});
