import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { weatherSeries } from '../weather-series.ts';
import { readWeatherTable } from './weather-table.ts';

const read = (text: string, asked = {}) => readWeatherTable(text, { path: 'w.csv', zone: 'UTC', ...asked });

function seriesOf(text: string, asked: { readonly from_ms?: number; readonly days?: number } = {}) {
  const table = read(text);
  if (!table.ok) throw new Error(JSON.stringify(table.problems));
  const series = weatherSeries(table.value, { path: 'w.csv', days: 400, ...asked });
  if (!series.ok) throw new Error(JSON.stringify(series.problems));
  return series.value;
}

const valuesOf = (text: string) => seriesOf(text).weather.readings.values;

describe('a table of weather', () => {
  it('of days: humidity, wind, rain, sun and ground in their units', () => {
    // km/h and inches by NIST SP 811, B.8; 8.64 MJ a day are 100 W.
    const { weather, covers_day } = seriesOf(
      'Date;Air temp °C;RH %;Wind km/h;Rain in;Solar MJ/m²;Soil temp °C\n1.3.2026;8,5;80;36;0,1;8,64;6\n2.3.2026;9;70;18;;17,28;6,5\n',
    );
    expect(weather.readings.every_h).toBe(24);
    expect(covers_day).toBe(1);
    expect(weather.readings.values).toEqual([
      { temp_degC: 8.5, humidity_share: 0.8, wind_mPerS: 10, rain_mmPerDay: 2.54, sun_WPerM2: 100, ground_degC: 6 },
      { temp_degC: 9, humidity_share: 0.7, wind_mPerS: 5, rain_mmPerDay: 0, sun_WPerM2: 200, ground_degC: 6.5 },
    ]);
  });

  it('of hours: what fell in an hour, by the day', () => {
    const [first, second] = valuesOf(
      'time,temp F,precip mm,gust mph\n2026-03-01 00:00,50,0.5,30\n2026-03-01 01:00,59,0,30',
    );
    expect(first).toEqual({ temp_degC: 10, rain_mmPerDay: 12 });
    expect(second).toEqual({ temp_degC: 15, rain_mmPerDay: 0 });
  });

  it('of a day’s lowest and highest: the middle', () => {
    expect(valuesOf('date,tmin °C,tmax °C\n2026-03-01,2,10\n2026-03-02,4,13')).toEqual([
      { temp_degC: 6 },
      { temp_degC: 8.5 },
    ]);
  });

  it('humidity that is nowhere above 1 is a share', () => {
    expect(valuesOf('date,temp °C,humidity\n2026-03-01,2,0.8\n2026-03-02,4,0.9')[1]).toMatchObject({
      humidity_share: 0.9,
    });
  });

  it('a lacking day is bridged by a straight line, and so is a shuffled table read', () => {
    expect(valuesOf('date,temp °C\n2026-03-04,16\n2026-03-01,10\n2026-03-02,12\n2026-03-05,18')).toEqual(
      [10, 12, 14, 16, 18].map((temp_degC) => ({ temp_degC })),
    );
  });

  it('begins on the day on which the heap is built', () => {
    const text = 'date,temp °C\n2026-03-01,10\n2026-03-02,12\n2026-03-03,14';
    const from_ms = Date.parse('2026-03-02T12:00:00Z');
    expect(seriesOf(text, { from_ms }).weather.readings.values).toEqual([{ temp_degC: 12 }, { temp_degC: 14 }]);
    expect(seriesOf(text, { days: 1 }).weather.readings.values).toHaveLength(2);
  });

  it('what it says at its times is what is read at them', () => {
    const temp = fc.integer({ min: -300, max: 400 }).map((tenths) => tenths / 10);
    fc.assert(
      fc.property(fc.array(temp, { minLength: 2, maxLength: 40 }), (temps) => {
        const rows = temps.map((one, i) => `${new Date(Date.UTC(2026, 0, 1, i)).toISOString()},${one}`);
        expect(valuesOf(['time,temp °C', ...rows].join('\n')).map(({ temp_degC }) => temp_degC)).toEqual(temps);
      }),
    );
  });

  it.each([
    ['', 'csv-empty', 'w.csv'],
    ['a,b\n1,2', 'weather-no-header', 'w.csv'],
    ['date,dew point °C\n2026-03-01,3', 'weather-no-header', 'w.csv'],
    ['date,core °C,edge °C\n2026-03-01,63,40', 'weather-no-header', 'w.csv'],
    ['date,temp\n2026-03-01,3', 'weather-no-unit', 'w.csv:1:2'],
    ['date,temp °C,wind\n2026-03-01,3,4', 'weather-no-unit', 'w.csv:1:3'],
    ['date,temp °C,rain\n2026-03-01,3,4', 'weather-no-unit', 'w.csv:1:3'],
    ['date,temp °C,solar\n2026-03-01,3,4', 'weather-no-unit', 'w.csv:1:3'],
    ['date,temp °C\nfoo,3', 'csv-date', 'w.csv:2:1'],
    ['date,temp °C\n1/2/2026,3\n2/3/2026,3', 'csv-which-dates', 'w.csv:2:1'],
    ['date,temp °C\n2026-03-01,warm', 'weather-figure', 'w.csv:2:2'],
    ['date,temp °C\n2026-03-01,99', 'weather-beyond', 'w.csv:2:2'],
    ['date,temp °C,wind m/s\n2026-03-01,9,-3', 'weather-beyond', 'w.csv:2:3'],
    ['date,temp °C,humidity %\n2026-03-01,9,130', 'weather-beyond', 'w.csv:2:3'],
    ['date,temp °C\n2026-03-01,3\n2026-03-01,4', 'weather-twice', 'w.csv:3'],
    ['date,temp °C\n2026-03-01,\n2026-03-02,-', 'weather-no-rows', 'w.csv:1'],
    ['date,temp °C\n2026-03-01,3,5', 'csv-ragged', 'w.csv:2'],
    ['date,temp °C\n2026-03-01,"3', 'csv-quote-open', 'w.csv:2'],
  ])('%j is refused where it is wrong', (text, code, path) => {
    expect(read(text)).toMatchObject({ ok: false, problems: [{ code, path }] });
  });

  it('a gap that no line should bridge, and a heap built at another time', () => {
    const table = read('date,temp °C\n2026-03-01,3\n2026-03-02,4\n2026-03-09,4\n2026-03-10,4');
    if (!table.ok) throw new Error('the table is sound');
    expect(weatherSeries(table.value, { path: 'w.csv', days: 40 })).toMatchObject({
      problems: [{ code: 'weather-gap', path: 'w.csv:4', found: '7', wanted: '2' }],
    });
    const other = read('date,temp °C\n2026-03-01,3\n2026-03-02,4');
    if (!other.ok) throw new Error('the table is sound');
    const from_ms = Date.parse('2026-07-01T12:00:00Z');
    expect(weatherSeries(other.value, { path: 'w.csv', days: 40, from_ms })).toMatchObject({
      problems: [{ code: 'weather-not-then', found: '2026-07-01', wanted: '2026-03-01 – 2026-03-02' }],
    });
  });

  it('whatever comes is a table or a problem', () => {
    const piece = fc.constantFrom(
      'date',
      'temp °C',
      'wind',
      ',',
      ';',
      '\n',
      '"',
      '2026-03-01',
      '12',
      '-',
      '\0',
      '9'.repeat(400),
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 30 }), (pieces) => {
        const table = read(pieces.join(''));
        if (table.ok) expect(table.value.rows.length).toBeGreaterThan(0);
        else expect(table.problems.length).toBeGreaterThan(0);
      }),
    );
  });
});
