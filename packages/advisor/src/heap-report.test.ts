import { type Entry, fold } from '@loamwright/daybook';
import { arbitraryDaybook, testWriter, type Writer } from '@loamwright/daybook/testing';
import { createDraws } from '@loamwright/science';
import { convert } from '@loamwright/units';
import { createSpeaker, type Saying } from '@loamwright/words';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type HeapReport, heapReport, heapsOverview } from './index.ts';

const needs = { draws: createDraws() };
const us = createSpeaker({ locale: 'en', system: 'us' });
const metric = createSpeaker({ locale: 'en', system: 'metric' });
const fahrenheit = (value: number): number => convert(value, 'degF', 'degC');
const at = (day: number, hour = 12): string =>
  `2026-05-${String(day).padStart(2, '0')}T${String(hour).padStart(2, '0')}:00:00.000Z`;

function builtHeap(writer: Writer, id = 'heap', day = 1): void {
  writer.write(
    'heap-built',
    id,
    {
      name: id === 'heap' ? 'May heap' : id,
      layers: [
        { material: 'straw', mass_kg: 60, raw: false },
        { material: 'goat-bedding', mass_kg: 180 },
      ],
      mix: { volume_m3: 1.1, carbonToNitrogen: 29 },
    },
    { happened: at(day) },
  );
}

function read(writer: Writer, day: number, temp_degC: number, id = 'heap', point?: 'core' | 'edge'): void {
  writer.write('reading', id, { temp_degC, point }, { happened: at(day, point === 'edge' ? 13 : 12) });
}

function report(entries: readonly Entry[], now: string, id = 'heap'): HeapReport {
  const outcome = heapReport(fold(entries, { now }), id, now, needs);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

const tellAll = (sayings: readonly Saying[]): string => sayings.map((saying) => us.tell(saying)).join(' ');

describe('a heap’s report', () => {
  it('says that there is no such heap', () => {
    expect(heapReport(fold([]), 'heap', at(1), needs)).toMatchObject({
      ok: false,
      problems: [{ code: 'no-such-heap' }],
    });
  });

  it('asks for a reading first', () => {
    const writer = testWriter();
    builtHeap(writer);
    const told = report(writer.entries, at(4));
    expect(us.tell(told.headline)).toBe('Nobody has put a probe into it yet; it has stood for 3 days.');
    expect(told.act.urgency).toBe('today');
    expect(told.reading).toBeNull();
  });

  // Question O07: three fast heaps in Hawaii at 143, 160 and 150 °F (WH6FQE 2019): the one at 160 °F is turned.
  it.each([
    [143, 'Leave it alone.'],
    [160, 'Turn it, the outside to the middle.'],
    [150, 'Leave it alone.'],
  ])('at %d °F on day 10 says: %s', (temp_degF, act) => {
    const writer = testWriter();
    builtHeap(writer);
    read(writer, 10, fahrenheit(temp_degF));
    const told = report(writer.entries, at(10, 13));
    expect(us.tell(told.act.what)).toBe(act);
    expect(us.tell(told.headline)).toContain(`At ${temp_degF} °F in the core`);
  });

  it('tells one thing in both systems', () => {
    const writer = testWriter();
    builtHeap(writer);
    read(writer, 10, 71.5);
    const told = report(writer.entries, at(10, 13));
    expect(metric.tell(told.headline)).toContain('71.5 °C');
    expect(us.tell(told.headline)).toContain('160.7 °F');
    expect(us.tell(told.act.because)).toBe('The published limit for turning is 160 °F.');
  });

  it('says that growers and handbooks differ and why, with no chance told as certain', () => {
    const writer = testWriter();
    builtHeap(writer);
    read(writer, 5, fahrenheit(150));
    const { reading } = report(writer.entries, at(5, 13));
    const views = tellAll(reading?.views ?? []);
    expect(views).toContain('Growers seek 145 °F to 160 °F');
    expect(views).toContain('common practice, no source');
    expect(views).toContain('Handbooks prefer 130 °F to 140 °F');
    expect(views).toContain('They differ because');
    expect(us.tell(reading?.sanitising ?? { key: 'reading.note.hottest-part' })).toContain('all but certainly');
  });

  it('reads the middle of a round, not the edge read last', () => {
    const writer = testWriter();
    builtHeap(writer);
    read(writer, 6, 62, 'heap', 'core');
    read(writer, 6, 38, 'heap', 'edge');
    const told = report(writer.entries, at(6, 14));
    expect(told.meaning?.temp_degC.p50).toBe(62);
    expect(told.series.map(({ where }) => where)).toEqual(['core', 'edge']);
  });

  it('puts fire first, even for a heap that was called ready', () => {
    const writer = testWriter();
    builtHeap(writer);
    read(writer, 20, 84);
    writer.write('finished', 'heap', {}, { happened: at(20, 13) });
    const told = report(writer.entries, at(20, 14));
    expect(told.act.urgency).toBe('now');
    expect(told.cautions[0]).toBe('fire');
    expect(us.tell(told.act.what)).toMatch(/second place.*second thermometer.*Do not dig/u);
  });

  it('wants a fresh reading where the last is old', () => {
    const writer = testWriter();
    builtHeap(writer);
    read(writer, 4, 72);
    const told = report(writer.entries, at(16));
    expect(us.tell(told.headline)).toContain('that was 12 days ago');
    expect(us.tell(told.act.because)).toBe('The last reading is 12 days old, and a heap changes in less.');
  });

  it('leaves out what is dated after now', () => {
    const writer = testWriter();
    builtHeap(writer);
    read(writer, 4, 60);
    read(writer, 9, 20);
    expect(report(writer.entries, at(5)).meaning?.temp_degC.p50).toBe(60);
  });

  it('knows the acts: a turn, a feed, a squeeze', () => {
    const writer = testWriter();
    builtHeap(writer);
    read(writer, 4, 66);
    writer.write('turned', 'heap', {}, { happened: at(5) });
    writer.write('watered', 'heap', { volume_L: 19 }, { happened: at(5, 13) });
    read(writer, 6, 31);
    const told = report(writer.entries, at(6, 13));
    expect(us.tell(told.act.because)).toBe('It was turned lately, and heaps take one to four days to heat again.');
    expect(told.acts.map(({ said }) => us.tell(said))).toEqual(['built', 'turned', 'watered, 5 gal']);
  });

  it('draws worded lines in rising order', () => {
    const writer = testWriter();
    builtHeap(writer);
    const { lines } = report(writer.entries, at(2));
    expect(lines.map(({ temp_degC }) => Math.round(temp_degC))).toEqual([40, 55, 63, 71, 80]);
    expect(us.tell(lines[3]?.said ?? { key: 'reading.line.fire' })).toBe('from here: turn');
  });

  it('tells what it is made of, and how old each layer is', () => {
    const writer = testWriter();
    builtHeap(writer);
    const told = report(writer.entries, at(11));
    expect(told.made.map(({ said }) => us.tell(said))).toEqual(['75 % goat bedding', '25 % straw']);
    expect(told.layers.map(({ age_days }) => age_days)).toEqual([10, 10]);
    expect(told.cautions).toContain('manure-pathogens');
  });
});

describe('the safety note', () => {
  it('counts an unlogged heap with manure as raw', () => {
    const writer = testWriter();
    builtHeap(writer);
    const safety = tellAll(report(writer.entries, at(20)).safety);
    expect(safety).toContain('counts as raw');
    expect(safety).toContain('120 days before harvest where the crop touches soil, 90 where it does not');
  });

  it('counts days, one for each day whatever the readings on it, and gives no verdict', () => {
    const writer = testWriter();
    builtHeap(writer);
    for (const day of [3, 4, 5]) {
      read(writer, day, 60, 'heap', 'core');
      read(writer, day, 56, 'heap', 'edge');
    }
    read(writer, 6, fahrenheit(130.9));
    read(writer, 7, fahrenheit(131));
    const safety = tellAll(report(writer.entries, at(8)).safety);
    expect(safety).toContain('4 days since then have a reading of 131 °F or more');
    expect(safety).toContain('the verdict wants the whole record');
  });

  it('starts the clock again with the last raw pail, and never calls a fed bin finished', () => {
    const writer = testWriter();
    builtHeap(writer);
    read(writer, 5, 60);
    writer.write('heap-fed', 'heap', { layers: [{ material: 'kitchen-scraps', mass_kg: 2.3 }] }, { happened: at(9) });
    const safety = tellAll(report(writer.entries, at(10)).safety);
    expect(safety).toContain('a bin that is being fed is not finished');
    expect(safety).toContain('since raw stuff last went in, 1 day ago');
    expect(safety).toContain('No reading since then shows 131 °F');
  });

  it('says of a part where its past is told', () => {
    const writer = testWriter();
    builtHeap(writer);
    writer.write('split', 'heap', { into: [{ heap: 'half', share: 0.5, name: 'Half' }] }, { happened: at(9) });
    expect(tellAll(report(writer.entries, at(10), 'half').safety)).toContain('Part of it lay in May heap before.');
  });

  it('says nothing raw of plants alone', () => {
    const writer = testWriter();
    const layers = [{ material: 'autumn-leaves', mass_kg: 80, raw: false }];
    writer.write('heap-built', 'heap', { name: 'Leaves', layers }, { happened: at(1) });
    expect(tellAll(report(writer.entries, at(3)).safety)).toBe('Nothing raw is written down as having gone in.');
  });
});

it('tells every heap of any daybook in both systems', () => {
  fc.assert(
    fc.property(arbitraryDaybook(), (entries) => {
      const now = '2026-03-01T12:00:00.000Z';
      const holding = fold(entries, { now });
      for (const id of holding.heaps.keys()) {
        const told = report(entries, now, id);
        const { headline, act, safety, layers, made, acts } = told;
        const sayings = [headline, act.what, act.because, act.waiting, ...safety];
        for (const saying of [...sayings, ...[...layers, ...made, ...acts].map(({ said }) => said)]) {
          expect(`${us.tell(saying)} ${metric.tell(saying)}`).not.toMatch(/undefined|NaN|\{/u);
        }
        const shares = made.reduce((sum, { share }) => sum + share, 0);
        if (made.length > 0) expect(shares).toBeCloseTo(1, 9);
      }
    }),
    { seed: 3, numRuns: 60 },
  );
});

describe('the overview', () => {
  it('puts the heap that asks for something soonest first and leaves out those that are gone', () => {
    const writer = testWriter();
    builtHeap(writer, 'quiet', 1);
    builtHeap(writer, 'burning', 2);
    builtHeap(writer, 'limit', 3);
    builtHeap(writer, 'gone', 4);
    read(writer, 10, 60, 'quiet');
    read(writer, 10, 85, 'burning');
    read(writer, 10, 72, 'limit');
    writer.write('bed-set-up', 'kale', { name: 'Kale', area_m2: 10 }, { happened: at(1) });
    const of = { type: 'heap', id: 'gone', share: 1 } as const;
    writer.write('spread', 'kale', { of, workedIn: true }, { happened: at(9) });
    const now = at(10, 13);
    const holding = fold(writer.entries, { now });
    expect(heapsOverview(holding, now, needs).heaps.map(({ id }) => id)).toEqual(['burning', 'limit', 'quiet']);
    expect(us.tell(report(writer.entries, now, 'gone').headline)).toBe('Nothing of it is left: it went to Kale.');
  });
});
