import { type Entry, fold, type KindId, kinds, sumOf } from '@loamwright/daybook';
import { arbitraryTroubledDaybook, minutesIn2026, testId, testWriter } from '@loamwright/daybook/testing';
import { createSpeaker } from '@loamwright/words';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type DaybookLine, daybookLines } from './index.ts';

const us = createSpeaker({ locale: 'en', system: 'us' });

function lines(entries: readonly Entry[], now?: string): readonly DaybookLine[] {
  return daybookLines(entries, fold(entries, { now }));
}

function told(entries: readonly Entry[]): readonly string[] {
  return lines(entries).map(({ said, remarks }) => [said, ...remarks].map((saying) => us.tell(saying)).join(' '));
}

const layers = [{ material: 'straw', mass_kg: 20 }];

describe('the daybook as sentences', () => {
  it('shows every version of every entry once, the newest first, whatever state the daybook is in', () => {
    fc.assert(
      fc.property(arbitraryTroubledDaybook(), (entries) => {
        const all = lines(entries);
        const named = (id: string, sum: string): string => `${id} ${sum}`;
        expect(all.map(({ entry, sum }) => named(entry, sum)).sort()).toEqual(
          [...new Set(entries.map(({ id, sum }) => named(id, sum)))].sort(),
        );
        const times = all.map(({ happened }) => happened);
        expect(times).toEqual([...times].sort().reverse());
        for (const { said } of all) expect(us.tell(said)).not.toMatch(/undefined|NaN|\{/u);
      }),
      { seed: 27, numRuns: 60 },
    );
  });

  it('tells a unit by its symbol, also where a device kept its id', () => {
    const writer = testWriter();
    writer.write('heap-built', 'heap', { name: 'Heap', layers });
    for (const unit of ['degC', '°C'])
      writer.write('reading', 'heap', { temp_degC: 61 }, { entered: { '/temp_degC': { amount: 61, unit } } });
    const typed = lines(writer.entries).flatMap((line) => line.typed.map((one) => us.tell(one)));
    expect(typed).toEqual(['as given: 61 °C', 'as given: 61 °C']);
  });

  it('has a sentence for every kind', () => {
    const known: Readonly<Record<KindId, true>> = Object.fromEntries(
      Object.keys(kinds).map((kind) => [kind, true]),
    ) as Readonly<Record<KindId, true>>;
    const writer = testWriter();
    const hash = 'a'.repeat(64);
    const stock = { mass_kg: 12 };
    writer.write('material-described', 'our-litter', { name: 'Our litter' });
    writer.write('material-measured', 'our-litter', { moisture_pctWet: 55 });
    writer.write('stock-in', 'our-litter', stock);
    writer.write('stock-out', 'our-litter', { ...stock, why: 'spoiled' });
    writer.write('bay-set-up', 'bay', { name: 'Bay', wall: 'boards' });
    writer.write('heap-built', 'heap', { name: 'Heap', bay: 'bay', layers });
    writer.write('heap-fed', 'heap', { layers });
    writer.write('reading', 'heap', { temp_degC: 60, squeeze: 'holds' });
    writer.write('turned', 'heap', { bay: 'bay' });
    writer.write('watered', 'heap', { volume_L: 10, liquid: 'urine' });
    writer.write('covered', 'heap', { cover: 'sheet' });
    writer.write('moved', 'heap', { bay: 'bay' });
    writer.write('heap-built', 'other', { name: 'Other', layers });
    writer.write('combined', 'both', { from: [{ heap: 'heap' }, { heap: 'other' }], name: 'Both' });
    writer.write('split', 'both', { into: [{ heap: 'half', share: 0.5 }] });
    writer.write('screened', 'both', { oversize: { material: 'wood-chips', mass_kg: 4, share: 0.1 } });
    writer.write('finished', 'both', { mass_kg: 9 });
    writer.write('bed-set-up', 'kale', { name: 'Kale', area_m2: 10 });
    writer.write('spread', 'kale', { of: { type: 'heap', id: 'both', share: 1 }, workedIn: true });
    writer.write('sown', 'kale', { crop: 'kale' });
    writer.write('harvested', 'kale', { crop: 'kale', mass_kg: 3 });
    writer.write('soil-tested', 'kale', { pH: 6.4 });
    const seen = { pots: 4, controls: 4, hurt: 'none', controlsNormal: true, weeks: 3 } as const;
    writer.write('ripeness-tested', 'half', { seen: { smell: 'earthy', measured: { selfHeating_K: 8 } } });
    writer.write('bean-tested', null, { seen });
    writer.write('note', null, { text: 'Rain.' });
    writer.write('photo', null, { attachment: hash, mediaType: 'image/jpeg' });
    const series = { attachment: hash, mediaType: 'application/json', quantity: 'temp_degC', probe: 'long' };
    writer.write('series', 'half', { ...series, from: minutesIn2026(1), to: minutesIn2026(2), count: 40 });
    writer.write('attachment-removed', null, { attachment: hash });
    writer.write('local-clause', 'town', { title: 'Town code', text: 'Five feet.', source: 'Section 1' });
    writer.withdraw(writer.entries.at(-1)?.id ?? '');
    const sentences = told(writer.entries);
    expect(new Set(writer.entries.map(({ kind }) => kind))).toEqual(new Set(Object.keys(known)));
    for (const sentence of sentences) expect(sentence).not.toMatch(/undefined|NaN|can’t be read|\{/u);
    expect(sentences).toContain('Our litter measured: water about 55 %.');
    expect(sentences).toContain('Heap and Other brought together into Both.');
    expect(sentences).toContain('Heap read 140 °F in the core; a squeezed handful shines and holds.');
    expect(sentences).toContain('half tried for ripeness: smells earthy, like a wood and warms by 14 °F in a flask.');
    expect(sentences).toContain('Taken back: Rule of the place, Town code: Five feet.');
  });

  it('tells amounts as they were typed, added up over the layers', () => {
    const writer = testWriter();
    const straw = { material: 'straw', mass_kg: 20 };
    writer.write(
      'heap-built',
      'heap',
      { name: 'Heap', layers: [straw, { material: 'coffee-grounds', mass_kg: 9 }, straw] },
      {
        entered: {
          '/layers/0/mass_kg': { amount: 1, unit: 'straw-bale' },
          '/layers/2/mass_kg': { amount: 1.5, unit: 'straw-bale' },
        },
      },
    );
    expect(told(writer.entries)).toEqual(['Heap built, of 2.5 bales of straw and 20 lb of coffee grounds.']);
  });

  it('shows a correction, what it corrects, and what was taken back', () => {
    const writer = testWriter();
    writer.write('heap-built', 'heap', { name: 'Heap', layers });
    const slip = writer.write('reading', 'heap', { temp_degC: 157.2 });
    writer.write('reading', 'heap', { temp_degC: 57.2 }, { amends: slip.id, happened: slip.happened });
    const wrong = writer.write('turned', 'heap', {});
    writer.write('withdrawal', null, { why: 'Another heap.' }, { withdraws: wrong.id });
    expect(told(writer.entries)).toEqual([
      'Taken back: Heap turned. Another heap.',
      'Heap turned. Taken back.',
      'Heap read 135 °F in the core. Corrects an earlier entry.',
      'Heap read 315 °F in the core. Corrected since.',
      'Heap built, of 44 lb of straw.',
    ]);
  });

  it('shows both versions of an entry in conflict', () => {
    const writer = testWriter();
    const entry = writer.write('note', null, { text: 'One.' });
    const other = { ...entry, body: { text: 'Two.' } };
    const forged: Entry = { ...other, sum: sumOf(other) };
    const both = lines([entry, forged]);
    expect(both.map(({ status }) => status)).toEqual(['conflict', 'conflict']);
    expect(new Set(both.map(({ said }) => us.tell(said)))).toEqual(new Set(['One.', 'Two.']));
  });

  it('keeps what it can’t read in sight', () => {
    const writer = testWriter();
    const header = { holding: 'quarry-lane', by: 'ada', zone: 'Europe/London', precision: 'minute' } as const;
    const happened = minutesIn2026(5);
    writer.seal({
      ...header,
      id: testId(900),
      happened,
      written: happened,
      kind: 'moon-seen',
      kv: 3,
      about: [],
      body: {},
    });
    const [line] = lines(writer.entries);
    expect(line?.status).toBe('unread');
    expect(us.tell(line?.said ?? { key: 'advisor.book.photo' })).toContain('moon-seen, version 3');
  });

  it('says what is loose and what is wrong with a clock', () => {
    const writer = testWriter();
    writer.write('turned', 'nowhere', {});
    writer.write('note', null, { text: 'Later.' }, { happened: '2027-01-01T00:00:00.000Z', written: minutesIn2026(3) });
    expect(told(writer.entries)).toEqual([
      'Later. It is dated after it was written.',
      'nowhere turned. There is no heap for it yet.',
    ]);
  });

  it('gives only what is asked for', () => {
    const writer = testWriter();
    writer.write('heap-built', 'heap', { name: 'Heap', layers });
    writer.write('note', null, { text: 'Rain.' });
    writer.write('turned', 'heap', {});
    const holding = fold(writer.entries);
    expect(daybookLines(writer.entries, holding, { about: { type: 'heap', id: 'heap' } })).toHaveLength(2);
    expect(daybookLines(writer.entries, holding, { newest: 1 }).map(({ kind }) => kind)).toEqual(['turned']);
  });
});
