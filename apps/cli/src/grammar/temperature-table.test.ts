import { describe, expect, it } from 'vitest';
import { extremesOf, readTemperatureTable, type TableAsked, type TemperatureTable } from './temperature-table.ts';

const asked: TableAsked = { path: 'log.csv', zone: 'Europe/London', now: '2026-07-15T12:00:00.000Z' };

function table(text: string, more: Partial<TableAsked> = {}): TemperatureTable {
  const read = readTemperatureTable(text, { ...asked, ...more });
  if (!read.ok) throw new RangeError(JSON.stringify(read.problems));
  return read.value;
}

function problems(text: string, more: Partial<TableAsked> = {}): readonly string[] {
  const read = readTemperatureTable(text, { ...asked, ...more });
  return read.ok ? [] : read.problems.map(({ code, path }) => `${code} ${path}`);
}

const told = ({ readings }: TemperatureTable): readonly unknown[] =>
  readings.map(({ stamp, temp, point }) => [stamp.happened.slice(0, 16), Number(temp.si.toFixed(3)), point]);

describe('a table of temperatures', () => {
  // 131 °F is 55 °C: the pair that the US and the Canadian rules print.
  it('is read by its header, in its own units', () => {
    const found = table('Date,Core (°F),Edge (°C),Turned,Weather\n2026-03-01,131,40,,fog\n2026-03-02,140,-,x,sun\n');
    expect(told(found)).toEqual([
      ['2026-03-01T12:00', 55, 'core'],
      ['2026-03-01T12:00', 40, 'edge'],
      ['2026-03-02T12:00', 60, 'core'],
    ]);
    expect(found.turned.map(({ day }) => day)).toEqual(['2026-03-02']);
    expect(found.aside).toEqual(['Weather']);
  });

  it.each<{ readonly text: string; readonly degC: number; readonly more?: Partial<TableAsked> }>([
    { text: '\uFEFFdate;core °C\r\n2026-03-01;64,5\r\n', degC: 64.5 },
    { text: 'date\tcore °C\n2026-03-01\t64.5', degC: 64.5 },
    { text: 'date,core °C\n2026-03-01,"64,5"', degC: 64.5 },
    { text: 'date,core\n2026-03-01,148.1F', degC: 64.5 },
    { text: 'a garden,somewhere\nprobe 7,\n\nDate,Temp_C\n2026-03-01,64.5', degC: 64.5 },
    { text: 'date,temperature\n2026-03-01,64.5', degC: 64.5, more: { unit: 'degC' } },
    { text: 'date,temperature\n2026-03-01,148.1', degC: 64.5, more: { unit: 'degF' } },
    { text: 'date,core F\n2026-03-01,64.5C', degC: 64.5 },
  ])('$text has 64.5 °C', ({ text, degC, more = {} }) => {
    const [reading] = table(text, more).readings;
    expect(reading?.temp.si).toBeCloseTo(degC, 1);
  });

  it.each([
    ['2026-03-01 18:00', '2026-03-01T18:00:00.000Z'],
    ['2026-07-01 18:00', '2026-07-01T17:00:00.000Z'],
    ['2026-03-01T18:00:30.5+02:00', '2026-03-01T16:00:30.000Z'],
    ['2026/3/1 6:00 pm', '2026-03-01T18:00:00.000Z'],
    ['1.3.2026', '2026-03-01T12:00:00.000Z'],
    ['13/3/26 06:05', '2026-03-13T06:05:00.000Z'],
    ['3/13/2026 12:30 a.m.', '2026-03-13T00:30:00.000Z'],
    ['03/3/2026', '2026-03-03T12:00:00.000Z'],
    ['1 Mar 2026', '2026-03-01T12:00:00.000Z'],
    ['1-March-26', '2026-03-01T12:00:00.000Z'],
    ['"Mar 1, 2026"', '2026-03-01T12:00:00.000Z'],
  ])('%s is %s', (date, happened) => {
    const [reading] = table(`when,core °C\n${date},60`).readings;
    expect(reading?.stamp.happened).toBe(happened);
  });

  it('takes day and time from two columns, and an offset from the header', () => {
    const [two] = table('Date,Time,Core °C\n2026-07-01,18:00,60').readings;
    expect(two?.stamp).toEqual({ happened: '2026-07-01T17:00:00.000Z', precision: 'minute', day: '2026-07-01' });
    const [offset] = table('"Date Time, GMT-05:00",Temp °C\n2026-03-01 22:00,60').readings;
    // Ten at night five hours west is three in the morning in London: the next day there.
    expect(offset?.stamp).toMatchObject({ happened: '2026-03-02T03:00:00.000Z', day: '2026-03-02' });
  });

  it('asks which is the month where no row shows it, and takes it from a row that does', () => {
    expect(problems('date,core C\n1/3/2026,60\n2/3/2026,61')).toEqual(['csv-which-dates log.csv:2:1']);
    expect(table('date,core C\n1/3/2026,60\n2/3/2026,61', { order: 'dmy' }).readings[0]?.stamp.day).toBe('2026-03-01');
    expect(table('date,core C\n1/3/2026,60\n1/13/2026,61', { order: 'mdy' }).readings[0]?.stamp.day).toBe('2026-01-03');
    const shown = table('date,core C\n1/3/2026,60\n13/3/2026,61');
    expect(shown.readings.map(({ stamp }) => stamp.day)).toEqual(['2026-03-01', '2026-03-13']);
    expect(problems('date,core C\n3/13/2026,60\n13/3/2026,61')).toEqual(['csv-which-dates log.csv:3:1']);
  });

  it('counts what stands there twice once, and sorts what stands out of order', () => {
    const found = table('date,core C\n2026-03-02,60\n2026-03-01,50\n2026-03-02,60\n2026-03-02,61\n');
    expect(told(found).map((one) => (one as readonly unknown[])[1])).toEqual([50, 60, 61]);
    expect(found.repeated).toBe(1);
  });

  it('keeps of each day and point its lowest and highest', () => {
    const rows = Array.from({ length: 144 }, (_, i) => {
      const hour = String(Math.floor(i / 6)).padStart(2, '0');
      return `2026-03-01 ${hour}:${String((i % 6) * 10).padStart(2, '0')},${50 + (i % 17)},30`;
    });
    const found = extremesOf(table(`date,core C,edge C\n${rows.join('\n')}`).readings);
    expect(found.map(({ temp, point }) => [temp.si, point])).toEqual([
      [50, 'core'],
      [30, 'edge'],
      [66, 'core'],
    ]);
  });

  it.each([
    ['', 'csv-empty log.csv'],
    ['\uFEFF \r\n', 'csv-empty log.csv'],
    ['2026-03-01,60\n2026-03-02,61', 'csv-no-header log.csv'],
    ['\u0000\u0001PNG', 'csv-no-header log.csv'],
    ['{"date": "2026-03-01"}', 'csv-no-header log.csv'],
    ['date,air °C\n2026-03-01,4', 'csv-no-header log.csv'],
    ['date,core °C\n', 'csv-no-readings log.csv:1'],
    ['date,core °C\n2026-03-01,-\n2026-03-02,', 'csv-no-readings log.csv:1'],
    ['date,core\n2026-03-01,60', 'csv-no-unit log.csv:1:2'],
    ['date,core °C\n2026-02-30,60', 'csv-date log.csv:2:1'],
    ['date,core °C\n2026-07-30,60', 'csv-ahead log.csv:2:1'],
    ['date,core °C\n0026-03-01,60', 'csv-date log.csv:2:1'],
    ['date,core °C\n2026-03-01 25:00,60', 'csv-date log.csv:2:1'],
    ['date,core °C\nyesterday,60', 'csv-date log.csv:2:1'],
    ['date,core °C\n,60', 'csv-date log.csv:2:1'],
    ['date,core °C\n31.4.2026,60', 'csv-date log.csv:2:1'],
    ['date,core °C\n2026-03-01,warm', 'csv-temperature log.csv:2:2'],
    ['date,core °C\n2026-03-01,60 bar', 'csv-temperature log.csv:2:2'],
    ['date,core °C\n2026-03-01,60 K', 'csv-no-heap log.csv:2:2'],
    ['date,core °C\n2026-03-01,1e3', 'csv-temperature log.csv:2:2'],
    ['date,core °C\n2026-03-01,=SUM(A1)', 'csv-temperature log.csv:2:2'],
    ['date,core °C\n2026-03-01,148', 'csv-no-heap log.csv:2:2'],
    ['date,core °C\n2026-03-01,64,5', 'csv-ragged log.csv:2'],
    ['date,core °C,turned\n2026-03-01,60,maybe', 'csv-turned log.csv:2:3'],
    ['date,core °C\n2026-03-01,"60', 'csv-quote-open log.csv:2'],
  ])('refuses %j, and says where', (text, problem) => {
    expect(problems(text)[0]).toBe(problem);
  });

  it('tells ten problems at the most, of a table wrong all over', () => {
    expect(problems(`date,core °C\n${'2026-03-01,warm\n'.repeat(500)}`)).toHaveLength(10);
  });

  it('reads what a logger writes in a year, three points every ten minutes', () => {
    const start = Date.UTC(2025, 0, 1);
    const rows = Array.from({ length: 52_560 }, (_, i) => {
      const at = new Date(start + i * 600_000).toISOString().slice(0, 16).replace('T', ' ');
      return `${at},${55 + (i % 9)},${50 + (i % 7)},${30 + (i % 5)}`;
    });
    const { readings } = table(`date,core °C,middle °C,edge °C\n${rows.join('\n')}`, { zone: 'UTC' });
    expect(readings).toHaveLength(3 * 52_560);
    expect(extremesOf(readings)).toHaveLength(2 * 3 * 365);
  });
});
