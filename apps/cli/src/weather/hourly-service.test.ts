import { createServer, type Server } from 'node:http';
import { afterEach, describe, expect, it } from 'vitest';
import { hourlyService } from './hourly-service.ts';

// A stand-in on this machine; no test asks a real service. The form is that of the open forecast and history services.

const wanted = { north_deg: 46.5, east_deg: 7.25, from: '2026-03-01', to: '2026-03-02' };
const hours = Array.from({ length: 48 }, (_, i) => i);
const full = {
  hourly: {
    time: hours.map((h) => `2026-03-0${1 + Math.floor(h / 24)}T${String(h % 24).padStart(2, '0')}:00`),
    temperature_2m: hours.map((h) => 5 + h / 10) as (number | null)[],
    relative_humidity_2m: hours.map(() => 80),
    wind_speed_10m: hours.map(() => 2.5),
    precipitation: hours.map((h) => (h === 3 ? 1.5 : 0)),
    shortwave_radiation: hours.map(() => 120),
    soil_temperature_54cm: hours.map(() => null),
  },
};

let server: Server | undefined;
afterEach(() => server?.close());

async function serve(
  answer: { readonly status?: number; readonly body: string },
  seen: string[] = [],
): Promise<string> {
  server = createServer((request, response) => {
    seen.push(request.url ?? '');
    response.writeHead(answer.status ?? 200, { 'content-type': 'application/json' }).end(answer.body);
  });
  await new Promise<void>((resolve) => server?.listen(0, '127.0.0.1', resolve));
  const at = server.address();
  return `http://127.0.0.1:${typeof at === 'object' ? at?.port : ''}/v1/forecast`;
}

describe('a service of hourly weather', () => {
  it('is asked for a place and days, and its lists become readings', async () => {
    const seen: string[] = [];
    const found = await hourlyService(await serve({ body: JSON.stringify(full) }, seen)).hourly(wanted);
    if (!found.ok) throw new Error(JSON.stringify(found));
    expect(seen[0]).toContain('latitude=46.5&longitude=7.25&start_date=2026-03-01&end_date=2026-03-02');
    expect(found.value.values).toHaveLength(48);
    expect(found.value.values[3]).toEqual({
      temp_degC: 5.3,
      humidity_share: 0.8,
      wind_mPerS: 2.5,
      rain_mmPerDay: 36,
      sun_WPerM2: 120,
    });
  });

  it('may lack an hour or two, which a straight line bridges, but not more', async () => {
    const lacking = (from: number, to: number): string =>
      JSON.stringify({
        hourly: {
          ...full.hourly,
          temperature_2m: full.hourly.temperature_2m.map((t, h) => (h >= from && h < to ? null : t)),
        },
      });
    const few = await hourlyService(await serve({ body: lacking(10, 12) })).hourly(wanted);
    expect(few.ok && few.value.values[10]?.temp_degC).toBeCloseTo(6, 10);
    server?.close();
    const many = await hourlyService(await serve({ body: lacking(10, 20) })).hourly(wanted);
    expect(many).toMatchObject({ ok: false, problems: [{ code: 'weather-hours-missing', found: '10 h' }] });
  });

  it.each([
    ['a refusal', { status: 503, body: '' }, 'weather-unreachable'],
    ['no JSON', { body: '<html>' }, 'weather-unreadable'],
    ['another form', { body: '{"daily":{}}' }, 'weather-unreadable'],
    [
      'too few hours',
      { body: JSON.stringify({ hourly: { time: ['x'], temperature_2m: [1] } }) },
      'weather-hours-missing',
    ],
  ])('that answers with %s is told as a problem', async (_what, answer, code) => {
    expect(await hourlyService(await serve(answer)).hourly(wanted)).toMatchObject({ ok: false, problems: [{ code }] });
  });

  it.each(['file:///etc/passwd', 'nowhere', 'http://127.0.0.1:9/'])('is not found at %s', async (base) => {
    expect(await hourlyService(base).hourly(wanted)).toMatchObject({
      ok: false,
      problems: [{ code: 'weather-unreachable' }],
    });
  });
});
