import { good } from '@loamwright/science';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, it } from 'vitest';
import { namedService, weatherAtPlace } from './at-place.ts';
import type { WeatherSource, WeatherWanted } from './source.ts';

const at = (text: string): Temporal.ZonedDateTime => Temporal.Instant.from(text).toZonedDateTimeISO('Europe/Zurich');

/** A source that keeps what it was asked, and whose temperature is the hour since it begins. */
function counting(): { readonly asked: WeatherWanted[]; readonly source: WeatherSource } {
  const asked: WeatherWanted[] = [];
  const hourly: WeatherSource['hourly'] = async (wanted) => {
    asked.push(wanted);
    const days = (Date.parse(wanted.to) - Date.parse(wanted.from)) / 86_400_000 + 1;
    return good({ every_h: 1, values: Array.from({ length: days * 24 }, (_, h) => ({ temp_degC: h / 24 })) });
  };
  return { asked, source: { hourly } };
}

const asked = { place: '46.5, 7.25', now: at('2026-03-10T09:30:00Z'), from: at('2026-03-01T06:20:00Z'), days: 5 };

describe('the weather of a place', () => {
  it('is asked for the days of a run and begins with its hour', async () => {
    const { source, asked: seen } = counting();
    const found = await weatherAtPlace(source, asked);
    expect(seen).toEqual([{ north_deg: 46.5, east_deg: 7.25, from: '2026-03-01', to: '2026-03-06' }]);
    expect(found.ok && found.value.weather.readings.values[0]).toEqual({ temp_degC: 0.25 });
    expect(found.ok && found.value.covers_day).toBe(5);
  });

  it('is not asked for beyond what is foretold, and says how far it reaches', async () => {
    const { source, asked: seen } = counting();
    const found = await weatherAtPlace(source, { ...asked, from: asked.now, days: 60 });
    expect(seen[0]?.to).toBe('2026-03-24');
    expect(found.ok && found.value.covers_day).toBeCloseTo(14.6, 1);
  });

  it.each(['', 'here', '46.5', '91,7', '46.5,181', '46.5,7.25,3'])('is not read off “%s”', async (place) => {
    const { source, asked: seen } = counting();
    const found = await weatherAtPlace(source, { ...asked, place });
    expect(found).toMatchObject({ ok: false, problems: [{ code: 'place-unreadable', wanted: '46.5,7.25' }] });
    expect(seen).toEqual([]);
  });

  it('that lies further ahead than is foretold is told as a problem', async () => {
    const found = await weatherAtPlace(counting().source, { ...asked, from: at('2026-05-01T00:00:00Z') });
    expect(found).toMatchObject({ ok: false, problems: [{ code: 'weather-not-then' }] });
  });

  it('is asked of no service that nobody named', () => {
    expect(namedService({})).toMatchObject({ ok: false, problems: [{ code: 'weather-no-service' }] });
  });
});
