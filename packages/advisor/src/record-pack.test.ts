import { type CheckReport, checkChain, type Entry, fold } from '@loamwright/daybook';
import { arbitraryTroubledDaybook } from '@loamwright/daybook/testing';
import { createDraws } from '@loamwright/science';
import { createSpeaker } from '@loamwright/words';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type RecordPack, recordPack, recordRules } from './index.ts';
import { hotHeap, noonOf, sixteenHotDays } from './testing/hot-heap.ts';

const us = createSpeaker({ locale: 'en', system: 'us' });
const now = noonOf(40);

function checkedOf(entries: readonly Entry[]): CheckReport {
  return { ...checkChain(entries), unreadable: [], attachmentsChanged: [], attachmentsMissing: [] };
}

function packOf(entries: readonly Entry[], of: { type: 'heap' | 'bed'; id: string }): RecordPack {
  const needs = { entries, checked: checkedOf(entries), now, draws: createDraws(), system: 'us' as const };
  return recordPack(of, fold(entries, { now }), needs);
}

const heap = { type: 'heap', id: 'heap' } as const;
const textOf = (pack: RecordPack): string =>
  [...pack.statement, ...pack.lines.map(({ said }) => said)].map((said) => us.tell(said)).join('\n');

describe('the record pack of a heap', () => {
  it('has everything about it and nothing else, the oldest first, and says it is no certificate', () => {
    const writer = hotHeap(sixteenHotDays);
    writer.write('heap-built', 'other', { name: 'Other heap', layers: [] }, { happened: noonOf(3) });
    writer.write('reading', 'other', { temp_degC: 30 }, { happened: noonOf(4) });
    const pack = packOf(writer.entries, heap);
    expect(pack.lines).toHaveLength(26);
    const times = pack.lines.map(({ happened }) => happened);
    expect(times).toEqual([...times].sort());
    expect(textOf(pack)).not.toContain('Other heap');
    expect(textOf(pack)).toContain('It is no certificate');
    expect(pack.verdicts).toHaveLength(1);
    expect(us.tell(pack.verdicts[0]?.report?.answer ?? { key: 'record.verdict.none' })).toMatch(/^This log meets/u);
    expect(pack).toMatchObject({ sound: true, inDoubt: [] });
    for (const { n, by, device } of pack.lines) expect([n > 0, by, device]).toEqual([true, 'ada', 'phone']);
  });

  it('a broken clause of the place comes before the best of logs', () => {
    const writer = hotHeap(sixteenHotDays);
    writer.write('local-clause', 'one', { title: 'Town', text: 'bars farm-manure', source: 'town' });
    const first = (entries: readonly Entry[]) =>
      packOf(entries, heap).verdicts.map((verdict) => recordRules(verdict, us)[0]);
    expect(first(writer.entries)).toEqual([
      'Not as it stands: Town bars manure of farm animals. Its log meets a rule, but no log makes up for a clause.',
    ]);
    const other = hotHeap(sixteenHotDays);
    other.write('local-clause', 'one', { title: 'Town', text: 'bars pet-waste', source: 'town' });
    expect(first(other.entries)[0]).toMatch(/^This log meets/u);
  });

  it('goes by what the grower says of the heap beside the daybook', () => {
    const writer = hotHeap(sixteenHotDays);
    writer.write('local-clause', 'one', { title: 'Town', text: 'height 2ft', source: 'town' });
    const pack = recordPack(heap, fold(writer.entries, { now }), {
      entries: writer.entries,
      checked: checkedOf(writer.entries),
      now,
      draws: createDraws(),
      system: 'us',
      told: () => ({ height_m: 0.8534 }),
    });
    expect(pack.verdicts.map((verdict) => recordRules(verdict, us)[0])).toEqual([
      expect.stringMatching(/^Not as it stands: Town allows a height of 2 ft and it is 2\.8 ft\./u),
    ]);
  });

  it('shows a correction with what was first written, and what was taken back', () => {
    const writer = hotHeap('150 150');
    const wrong = writer.write('reading', 'heap', { temp_degC: 20 }, { happened: noonOf(3) });
    const right = writer.write('reading', 'heap', { temp_degC: 65 }, { happened: noonOf(3), amends: wrong.id });
    const slip = writer.write('turned', 'heap', {}, { happened: noonOf(4) });
    writer.withdraw(slip.id);
    const pack = packOf(writer.entries, heap);
    const line = (id: string) => pack.lines.find(({ entry }) => entry === id);
    expect(line(wrong.id)).toMatchObject({ status: 'amended', became: { entry: right.id, by: 'ada' } });
    expect(line(right.id)).toMatchObject({ status: 'in-force', corrects: { entry: wrong.id, by: 'ada' } });
    expect(us.tell(line(right.id)?.corrects?.said ?? { key: 'record.no-lines' })).toContain('68 °F');
    expect(us.tell(line(wrong.id)?.became?.said ?? { key: 'record.no-lines' })).toContain('149 °F');
    expect(line(slip.id)).toMatchObject({ status: 'withdrawn', became: null });
    expect(pack.lines.some(({ kind }) => kind === 'withdrawal')).toBe(true);
  });

  it('tells where the chain is broken, and which of its own entries are in doubt', () => {
    const writer = hotHeap('150 150 150');
    const changed = writer.entries.map((entry) => (entry.n === 3 ? { ...entry, body: { temp_degC: 70 } } : entry));
    const pack = packOf(changed, heap);
    expect(pack.sound).toBe(false);
    expect(pack.inDoubt).toEqual([writer.entries[2]?.id]);
    const missing = packOf(
      writer.entries.filter(({ n }) => n !== 3),
      heap,
    );
    expect(missing.sound).toBe(false);
    expect(missing.checked.gaps).toEqual([{ device: 'phone', from: 3, to: 3 }]);
  });

  it('of heaps that were combined it has what is known of each', () => {
    const writer = hotHeap('150T 150');
    writer.write(
      'heap-built',
      'second',
      { name: 'Second heap', layers: [{ material: 'straw', mass_kg: 5 }] },
      { happened: noonOf(1) },
    );
    writer.write(
      'combined',
      'both',
      { from: [{ heap: 'heap' }, { heap: 'second' }], name: 'Both' },
      { happened: noonOf(5) },
    );
    const pack = packOf(writer.entries, { type: 'heap', id: 'both' });
    expect(pack.lines).toHaveLength(writer.entries.length);
    expect(packOf(writer.entries, heap).lines.some(({ kind }) => kind === 'combined')).toBe(true);
  });

  it('whatever state a daybook is in: each entry once, and every line can be told', () => {
    fc.assert(
      fc.property(arbitraryTroubledDaybook(), (entries) => {
        const holding = fold(entries, { now });
        for (const id of holding.heaps.keys()) {
          const pack = packOf(entries, { type: 'heap', id });
          const seen = pack.lines.map(({ entry, sum }) => `${entry} ${sum}`);
          expect(new Set(seen).size).toBe(seen.length);
          expect(textOf(pack)).not.toMatch(/undefined|NaN/u);
          // Every entry that is about the heap is there.
          for (const entry of entries)
            if (entry.about.some((about) => about.type === 'heap' && about.id === id))
              expect(seen).toContain(`${entry.id} ${entry.sum}`);
        }
      }),
      { seed: 31, numRuns: 25 },
    );
  });
});

describe('the record pack of a bed', () => {
  it('judges each heap as its log stood on the day it was spread', () => {
    const writer = hotHeap(sixteenHotDays);
    writer.write('bed-set-up', 'kale', { name: 'Kale bed', area_m2: 10 }, { happened: noonOf(1) });
    const spread = (day: number) =>
      writer.write(
        'spread',
        'kale',
        { of: { type: 'heap', id: 'heap', share: 0.2 }, workedIn: true },
        { happened: noonOf(day) },
      );
    spread(8);
    spread(22);
    const pack = packOf(writer.entries, { type: 'bed', id: 'kale' });
    expect(us.tell(pack.name)).toContain('Kale bed');
    expect(pack.lines.map(({ kind }) => kind)).toEqual(['bed-set-up', 'spread', 'spread']);
    const answers = pack.verdicts.map(({ report }) => us.tell(report?.answer ?? { key: 'record.verdict.none' }));
    expect(answers[0]).not.toContain('This log meets: US organic');
    expect(answers[1]).toContain('US organic rule (turned heap)');
  });
});
