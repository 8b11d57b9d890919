import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonical } from '../entry/canonical.ts';
import type { Entry } from '../entry/entry.ts';
import { readEntry } from '../entry/read.ts';
import { kinds } from '../kinds/registry.ts';
import { merge } from '../merge.ts';
import { arbitraryDaybook, arbitraryTroubledDaybook } from '../testing/arbitrary.ts';
import { minutesIn2026 } from '../testing/ids.ts';
import { stateText } from '../testing/state.ts';
import { testWriter } from '../testing/writer.ts';
import { fold } from './fold.ts';
import type { Holding } from './holding.ts';

const seed = 50_000;

describe('the laws of the fold', () => {
  it('any order and repetition of a set gives the same state', () => {
    fc.assert(
      fc.property(
        arbitraryTroubledDaybook().chain((entries) =>
          fc.tuple(
            fc.constant(entries),
            fc.shuffledSubarray([...entries, ...entries], { minLength: entries.length * 2 }),
          ),
        ),
        ([entries, shuffled]) => {
          expect(stateText(fold(shuffled))).toBe(stateText(fold(entries)));
        },
      ),
      { seed, numRuns: 400 },
    );
  });

  it('any split of a set over several holders gives the same state once they merge', () => {
    fc.assert(
      fc.property(arbitraryTroubledDaybook(), fc.infiniteStream(fc.integer({ min: 1, max: 7 })), (entries, lots) => {
        // Each entry goes to one, two or three of the holders, as the bits of its lot say.
        const holders: Entry[][] = [[], [], []];
        for (const entry of entries) {
          const lot = lots.next().value ?? 1;
          for (const [i, holder] of holders.entries()) if ((lot & (1 << i)) !== 0) holder.push(entry);
        }
        const [a = [], b = [], c = []] = holders;
        expect(stateText(fold(merge(merge(b, c).entries, a).entries))).toBe(stateText(fold(entries)));
      }),
      { seed, numRuns: 300 },
    );
  });

  it('a trip through JSON changes nothing, unknown kinds and newer versions included', () => {
    fc.assert(
      fc.property(arbitraryTroubledDaybook(), (entries) => {
        const back = entries.map((entry) => {
          const outcome = readEntry(JSON.parse(JSON.stringify(entry)));
          if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
          return outcome.value;
        });
        expect(back.map(canonical)).toEqual(entries.map(canonical));
        expect(fold(back).unread.map(({ entry }) => canonical(entry))).toEqual(
          fold(entries).unread.map(({ entry }) => canonical(entry)),
        );
      }),
      { seed },
    );
  });

  it('nothing is dropped: every entry in force is in the state, unread or loose', () => {
    fc.assert(
      fc.property(arbitraryTroubledDaybook(), (entries) => {
        const holding = fold(entries);
        const unread = new Set(holding.unread.map(({ entry }) => entry.id));
        const loose = new Set(holding.loose.map(({ entry }) => entry.id));
        const shown = shownIn(holding);
        for (const { id, kind } of holding.inForce) {
          const places = [unread.has(id), loose.has(id), shown.has(id)].filter(Boolean).length;
          // A setting up that a later one replaced has no other place than the list of entries in force.
          const replaceable = ['bay-set-up', 'bed-set-up', 'material-described', 'local-clause', 'attachment-removed'];
          expect(places, kind).toBe(replaceable.includes(kind) && places === 0 ? 0 : 1);
        }
      }),
      { seed, numRuns: 300 },
    );
  });

  it('the entries handed in are not altered', () => {
    fc.assert(
      fc.property(arbitraryTroubledDaybook(), (entries) => {
        const before = JSON.stringify(entries);
        fold(entries);
        expect(JSON.stringify(entries)).toBe(before);
      }),
      { seed },
    );
  });
});

/** Ids of the entries that the state itself shows. */
function shownIn(holding: Holding): ReadonlySet<string> {
  const ids = new Set<string>();
  const add = (told: { readonly entry: Entry } | null): void => {
    if (told !== null) ids.add(told.entry.id);
  };
  for (const { described, measured } of holding.materials.values()) [described, ...measured].forEach(add);
  for (const { moves } of holding.stock.values()) for (const { entry } of moves) ids.add(entry);
  for (const { setUp } of holding.bays.values()) add(setUp);
  for (const heap of holding.heaps.values())
    [...heap.readings, ...heap.ripeness, ...heap.acts, ...heap.series].forEach(add);
  for (const { setUp, spreadings, sown, harvested, tests } of holding.beds.values())
    [setUp, ...spreadings.map(({ told }) => told), ...sown, ...harvested, ...tests].forEach(add);
  for (const clause of holding.clauses.values()) add(clause);
  [...holding.beanTests, ...holding.notes, ...holding.photos].forEach(add);
  return ids;
}

describe('the generator of daybooks', () => {
  it('reaches every kind and every trouble the laws are about', () => {
    const seen = new Map<string, number>();
    const see = (what: string): void => void seen.set(what, (seen.get(what) ?? 0) + 1);
    for (const entries of fc.sample(arbitraryTroubledDaybook(), { numRuns: 1000, seed })) {
      const holding = fold(entries, { now: minutesIn2026(60 * 24 * 30) });
      for (const { kind } of holding.inForce) see(kind);
      for (const { why } of holding.outOfForce) see(why);
      for (const { why } of holding.loose) see(why);
      for (const { code } of holding.warnings) see(code);
      for (const { problems } of holding.unread) for (const { code } of problems) see(code);
      if (holding.waiting.length > 0) see('waiting');
      if (holding.conflicts.length > 0) see('conflict');
      for (const heap of holding.heaps.values()) see(heap.phase);
    }
    const wanted = [
      ...Object.keys(kinds).filter((kind) => kind !== 'withdrawal'),
      ...['amended', 'withdrawn', 'waiting', 'conflict', 'unknown-kind', 'newer-version'],
      ...['amends-each-other', 'withdraw-each-other', 'amends-withdrawal', 'amends-conflict'],
      ...['no-such-heap', 'no-such-bed', 'already-built', 'same-heap'],
      ...['standing', 'finished', 'gone'],
      ...['clock-went-back', 'happened-after-written', 'written-long-after', 'in-the-future'],
      ...['before-begun', 'after-gone', 'no-such-bay', 'no-such-source', 'stock-below-zero'],
    ];
    expect(wanted.filter((what) => (seen.get(what) ?? 0) < 3)).toEqual([]);
  });
});

describe('what the fold makes of single entries', () => {
  it('nothing at all is an empty holding', () => {
    expect(fold([])).toMatchObject({ id: null, inForce: [], warnings: [], loose: [] });
  });

  it('entries are told in the order happened, written, device, n', () => {
    const phone = testWriter('phone');
    const tablet = testWriter('tablet');
    const at = (happened: number, written: number) => ({
      happened: minutesIn2026(happened),
      written: minutesIn2026(written),
    });
    phone.write('note', null, { text: '6' }, at(20, 20));
    tablet.write('note', null, { text: '3' }, at(10, 60));
    tablet.write('note', null, { text: '4' }, at(10, 60));
    phone.write('note', null, { text: '2' }, at(10, 60));
    phone.write('note', null, { text: '1' }, at(10, 50));
    tablet.write('note', null, { text: '5' }, at(10, 70));
    const { notes } = fold([...tablet.entries, ...phone.entries]);
    expect(notes.map(({ body }) => body.text)).toEqual(['1', '2', '3', '4', '5', '6']);
  });

  it('an unknown kind, a newer version and a body that doesn’t fit are unread, each with its reason', () => {
    const writer = testWriter();
    const { v: _v, n: _n, prev: _p, sum: _s, ...note } = writer.write('note', null, { text: 'a' });
    writer.seal({ ...note, id: note.id.replace(/.$/u, 'a'), kind: 'brew-started', body: { barrel_L: 120 } });
    writer.seal({ ...note, id: note.id.replace(/.$/u, 'b'), kv: 2, body: { text: 'a', mood: 'glad' } });
    writer.seal({ ...note, id: note.id.replace(/.$/u, 'c'), body: { texte: 'a' } });
    writer.seal({ ...note, id: note.id.replace(/.$/u, 'd'), kind: 'reading', body: { temp_degC: 60 } });
    const holding = fold(writer.entries);
    expect(holding.unread.map(({ problems }) => problems[0]?.code)).toEqual([
      'unknown-kind',
      'newer-version',
      'missing',
      'about-wrong',
    ]);
    expect(holding.notes.length).toBe(1);
  });

  it('a conflict keeps both versions out of the state: a reading in doubt makes no heap safe', () => {
    const writer = testWriter();
    writer.write('heap-built', 'quarry', { name: 'Quarry', layers: [] });
    const reading = writer.write('reading', 'quarry', { temp_degC: 40 });
    const { v: _v, n: _n, prev: _p, sum: _s, ...rest } = reading;
    const forged = testWriter('forger').seal({ ...rest, body: { temp_degC: 66 } });
    const holding = fold([...writer.entries, forged]);
    expect(holding.heaps.get('quarry')?.readings).toEqual([]);
    expect(holding.conflicts).toEqual([
      { id: reading.id, versions: [reading, forged].sort((a, b) => (a.sum < b.sum ? -1 : 1)), withdrawnBy: null },
    ]);
  });

  it('entries of another holding are loose, whichever arrived first', () => {
    const ours = testWriter('phone', 'quarry-lane');
    const theirs = testWriter('tablet', 'hill-farm');
    ours.write('note', null, { text: 'ours' }, { happened: minutesIn2026(1) });
    const other = theirs.write('note', null, { text: 'theirs' }, { happened: minutesIn2026(2) });
    for (const entries of [
      [...ours.entries, other],
      [other, ...ours.entries],
    ])
      expect(fold(entries)).toMatchObject({ id: 'quarry-lane', loose: [{ entry: other, why: 'other-holding' }] });
  });

  it('an honest daybook of one device has no clock warnings', () => {
    const writer = testWriter();
    for (let i = 0; i < 5; i++) writer.write('note', null, { text: 'fine' });
    expect(fold(writer.entries, { now: minutesIn2026(60) }).warnings).toEqual([]);
  });

  it('the fold is the same with and without `now`, but for what lies in its future', () => {
    fc.assert(
      fc.property(arbitraryDaybook(), (entries) => {
        const now = minutesIn2026(600);
        const seen = fold(entries, { now });
        const warnings = seen.warnings.filter(({ code }) => code !== 'in-the-future');
        expect(stateText({ ...seen, warnings })).toBe(stateText(fold(entries)));
      }),
      { seed },
    );
  });
});
