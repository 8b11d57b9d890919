import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Entry } from '../entry/entry.ts';
import { arbitraryTroubledDaybook, sealByDevice } from '../testing/arbitrary.ts';
import { minutesIn2026, testId } from '../testing/ids.ts';
import { testWriter } from '../testing/writer.ts';
import { type Force, settle } from './force.ts';

const seed = 77;

const texts = (entries: readonly Entry[]): readonly unknown[] => entries.map(({ body }) => body['text']);
const out = (force: Force): readonly string[] =>
  force.outOfForce.map(({ entry, why, by }) => `${entry.body['text'] ?? 'withdrawal'} ${why} ${by}`);

describe('amendments', () => {
  it('put the new content in the place of the old', () => {
    const writer = testWriter();
    const first = writer.write('note', null, { text: 'first' });
    const second = writer.write('note', null, { text: 'second' }, { amends: first.id });
    const force = settle(writer.entries);
    expect(texts(force.inForce)).toEqual(['second']);
    expect(out(force)).toEqual([`first amended ${second.id}`]);
  });

  it('of amendments hold too, and the latest written wins, whichever it amends', () => {
    const writer = testWriter();
    const first = writer.write('note', null, { text: 'first' });
    const second = writer.write('note', null, { text: 'second' }, { amends: first.id });
    writer.write('note', null, { text: 'third' }, { amends: second.id, written: minutesIn2026(50) });
    writer.write('note', null, { text: 'early' }, { amends: first.id, written: minutesIn2026(40) });
    expect(texts(settle(writer.entries).inForce)).toEqual(['third']);
    writer.write('note', null, { text: 'late' }, { amends: first.id, written: minutesIn2026(60) });
    expect(texts(settle(writer.entries).inForce)).toEqual(['late']);
  });

  it('written at the same moment are told apart by device, then n', () => {
    const phone = testWriter('phone');
    const tablet = testWriter('tablet');
    const written = minutesIn2026(90);
    const first = phone.write('note', null, { text: 'first' });
    phone.write('note', null, { text: 'phone 2' }, { amends: first.id, written });
    tablet.write('note', null, { text: 'tablet 1' }, { amends: first.id, written });
    expect(texts(settle([...phone.entries, ...tablet.entries]).inForce)).toEqual(['tablet 1']);
    tablet.write('note', null, { text: 'tablet 2' }, { amends: first.id, written });
    expect(texts(settle([...phone.entries, ...tablet.entries]).inForce)).toEqual(['tablet 2']);
  });

  it('of an entry that has not arrived wait, and take effect when it comes', () => {
    const writer = testWriter();
    const first = writer.write('note', null, { text: 'first' });
    const second = writer.write('note', null, { text: 'second' }, { amends: first.id });
    const third = writer.write('note', null, { text: 'third' }, { amends: second.id });
    const before = settle([second, third]);
    expect(before.inForce).toEqual([]);
    expect(before.waiting).toEqual([
      { entry: second, for: first.id },
      { entry: third, for: first.id },
    ]);
    expect(settle([third]).waiting).toEqual([{ entry: third, for: second.id }]);
    const after = settle([second, third, first]);
    expect(texts(after.inForce)).toEqual(['third']);
    expect(after.waiting).toEqual([]);
  });

  it('of each other in a ring have no effect and are shown', () => {
    const writer = testWriter();
    writer.write('note', null, { text: 'egg' }, { id: testId(1), amends: testId(2) });
    writer.write('note', null, { text: 'hen' }, { id: testId(2), amends: testId(1) });
    writer.write('note', null, { text: 'chick' }, { id: testId(3), amends: testId(1) });
    const force = settle(writer.entries);
    expect(force.inForce).toEqual([]);
    expect(force.powerless.map(({ why }) => why)).toEqual([
      'amends-each-other',
      'amends-each-other',
      'amends-each-other',
    ]);
  });

  it('in a ring of which one is withdrawn leave the others as they are, whatever the order', () => {
    const writer = testWriter();
    writer.write('note', null, { text: 'egg' }, { id: testId(1), amends: testId(2) });
    writer.write('note', null, { text: 'hen' }, { id: testId(2), amends: testId(1) });
    const gone = writer.withdraw(testId(1));
    for (const entries of [writer.entries, [...writer.entries].reverse()]) {
      const force = settle(entries);
      expect(out(force)).toEqual([`egg withdrawn ${gone.id}`]);
      expect(force.powerless.map(({ entry }) => entry.id)).toEqual([testId(2)]);
    }
  });

  it('of a withdrawal have no effect and are shown', () => {
    const writer = testWriter();
    const first = writer.write('note', null, { text: 'first' });
    const gone = writer.withdraw(first.id);
    const amendment = writer.write('note', null, { text: 'second' }, { amends: gone.id });
    expect(settle(writer.entries).powerless).toEqual([{ entry: amendment, why: 'amends-withdrawal' }]);
  });
});

describe('withdrawals', () => {
  it('take an entry out of force and keep it', () => {
    const writer = testWriter();
    const first = writer.write('note', null, { text: 'first' });
    const gone = writer.withdraw(first.id);
    const force = settle(writer.entries);
    expect(force.inForce).toEqual([]);
    expect(force.outOfForce).toEqual([{ entry: first, why: 'withdrawn', by: gone.id }]);
  });

  it('of an entry take its amendments along, also one written later', () => {
    const writer = testWriter();
    const first = writer.write('note', null, { text: 'first' });
    writer.withdraw(first.id);
    writer.write('note', null, { text: 'second' }, { amends: first.id });
    expect(settle(writer.entries).inForce).toEqual([]);
  });

  it('of an amendment bring back what it amended', () => {
    const writer = testWriter();
    const first = writer.write('note', null, { text: 'first' });
    const second = writer.write('note', null, { text: 'second' }, { amends: first.id });
    const third = writer.write('note', null, { text: 'third' }, { amends: second.id });
    const noThird = writer.withdraw(third.id);
    expect(texts(settle(writer.entries).inForce)).toEqual(['second']);
    writer.withdraw(second.id);
    expect(texts(settle(writer.entries).inForce)).toEqual(['first']);
    expect(out(settle(writer.entries))).toContain(`third withdrawn ${noThird.id}`);
  });

  it('of a withdrawal undo it, and of that again redo it', () => {
    const writer = testWriter();
    const first = writer.write('note', null, { text: 'first' });
    let last = first;
    for (const inForce of [0, 1, 0, 1, 0]) {
      last = writer.withdraw(last.id);
      expect(settle(writer.entries).inForce.length).toBe(inForce);
    }
  });

  it('of an entry that has not arrived wait, and take effect when it comes', () => {
    const writer = testWriter();
    const first = writer.write('note', null, { text: 'first' });
    const gone = writer.withdraw(first.id);
    expect(settle([gone])).toMatchObject({ inForce: [], waiting: [{ entry: gone, for: first.id }] });
    expect(settle([gone, first])).toMatchObject({ inForce: [], waiting: [] });
  });

  it('of each other in a ring have no effect, unless one from outside breaks the ring', () => {
    const writer = testWriter();
    const note = writer.write('note', null, { text: 'first' }, { id: testId(9) });
    writer.withdraw(testId(2), { id: testId(1) });
    writer.withdraw(testId(1), { id: testId(2) });
    expect(settle(writer.entries).powerless.map(({ why }) => why)).toEqual([
      'withdraw-each-other',
      'withdraw-each-other',
    ]);
    writer.withdraw(testId(1), { id: testId(3) });
    const force = settle(writer.entries);
    expect(force.powerless).toEqual([]);
    expect(force.inForce).toEqual([note]);
    expect(force.outOfForce.map(({ entry }) => entry.id)).toEqual([testId(1)]);
  });

  it('settle a conflict: both versions stay, and it is told that a person has dealt with it', () => {
    const [one, other] = sealByDevice(
      ['ada', 'ben'].map((by, i) => {
        const {
          v: _v,
          n: _n,
          prev: _prev,
          sum: _sum,
          ...draft
        } = testWriter().write('note', null, { text: by }, { id: testId(4) });
        return { ...draft, by, device: `device-${i}` };
      }),
    );
    if (one === undefined || other === undefined) throw new Error('two versions');
    const writer = testWriter();
    const amendment = writer.write('note', null, { text: 'third' }, { amends: testId(4) });
    const versions = [one, other].sort((a, b) => (a.sum < b.sum ? -1 : 1));
    const before = settle([other, one, amendment]);
    expect(before.inForce).toEqual([]);
    expect(before.conflicts).toEqual([{ id: testId(4), versions, withdrawnBy: null }]);
    expect(before.powerless).toEqual([{ entry: amendment, why: 'amends-conflict' }]);
    const gone = writer.withdraw(testId(4));
    expect(settle([one, other, gone]).conflicts).toEqual([{ id: testId(4), versions, withdrawnBy: gone.id }]);
  });
});

/** Every entry of a set is somewhere: in force, out of force, waiting, powerless, in conflict, or a withdrawal at work. */
function accountedFor(force: Force): readonly string[] {
  return [
    ...force.inForce,
    ...force.outOfForce.map(({ entry }) => entry),
    ...force.waiting.map(({ entry }) => entry),
    ...force.powerless.map(({ entry }) => entry),
    ...force.conflicts.flatMap(({ versions }) => versions),
  ].map(({ id, sum }) => `${id} ${sum}`);
}

describe('any daybook', () => {
  it('is settled the same in any order and with repetitions', () => {
    fc.assert(
      fc.property(
        arbitraryTroubledDaybook().chain((entries) =>
          fc.tuple(
            fc.constant(entries),
            fc.shuffledSubarray([...entries, ...entries], { minLength: entries.length * 2 }),
          ),
        ),
        ([entries, shuffled]) => {
          expect(JSON.stringify(settle(shuffled))).toBe(JSON.stringify(settle(entries)));
        },
      ),
      { seed, numRuns: 300 },
    );
  });

  it('has every entry in just one place', () => {
    fc.assert(
      fc.property(arbitraryTroubledDaybook(), (entries) => {
        const force = settle(entries);
        const places = accountedFor(force);
        expect(new Set(places).size).toBe(places.length);
        const atWork = entries.filter(
          ({ id, sum, withdraws }) => withdraws !== undefined && !places.includes(`${id} ${sum}`),
        );
        const all = new Set(entries.map(({ id, sum }) => `${id} ${sum}`));
        expect(new Set([...places, ...atWork.map(({ id, sum }) => `${id} ${sum}`)])).toEqual(all);
        for (const { withdraws } of atWork)
          expect([...force.outOfForce.map(({ entry }) => entry.id), ...force.conflicts.map(({ id }) => id)]).toContain(
            withdraws,
          );
      }),
      { seed, numRuns: 300 },
    );
  });

  it('with a withdrawal withdrawn has in force what it had without both', () => {
    fc.assert(
      fc.property(arbitraryTroubledDaybook(), fc.nat(), (entries, pick) => {
        const target = entries[pick % Math.max(1, entries.length)];
        fc.pre(target !== undefined);
        const writer = testWriter('laptop');
        const gone = writer.withdraw(target.id);
        const undone = writer.withdraw(gone.id);
        expect(settle([...entries, gone, undone]).inForce).toEqual(settle(entries).inForce);
      }),
      { seed },
    );
  });

  it('settles long threads of corrections and of withdrawals without running out of stack', () => {
    const writer = testWriter();
    let [amended, withdrawn] = [writer.write('note', null, { text: '0' }), writer.write('note', null, { text: 'x' })];
    for (let i = 0; i < 10_000; i++) {
      amended = writer.seal({ ...strip(amended), id: testId(i, 1_000_001), amends: amended.id });
      withdrawn = writer.seal({
        ...strip(withdrawn),
        id: testId(i, 1_000_002),
        kind: 'withdrawal',
        body: {},
        withdraws: withdrawn.id,
      });
    }
    expect(settle([...writer.entries].reverse()).inForce.length).toBe(2);
  });
});

function strip(entry: Entry): Omit<Entry, 'v' | 'n' | 'prev' | 'sum' | 'device'> {
  const {
    v: _v,
    n: _n,
    prev: _prev,
    sum: _sum,
    device: _device,
    amends: _amends,
    withdraws: _withdraws,
    ...rest
  } = entry;
  return rest;
}
