import { describe, expect, it } from 'vitest';
import { HOUR_S, USUAL_STEP_s } from './parameters.ts';
import { runHeap } from './run.ts';
import { noWeather } from './surroundings.ts';
import { inTheOpen, lineOf, runLike, stillAir } from './testing/heaps.ts';
import { constantWeather, readWeather, type WeatherReading } from './weather.ts';

/** Two days of hours with one shower of 12 mm in one of them. */
function shower(hour: number): readonly [WeatherReading, ...WeatherReading[]] {
  const at = (h: number): WeatherReading => ({ ...stillAir(12), rain_mmPerDay: h === hour ? 12 * 24 : 0 });
  return [at(0), ...Array.from({ length: 48 }, (_, h) => at(h + 1))];
}

describe('weather read by the hour', () => {
  // A straight line to and from an hour of 12 mm is 12 mm of rain: on paper.
  it.each([6, 7, 13])('lets a shower of the hour %d fall once, whatever the step', (hour) => {
    for (const step_s of [USUAL_STEP_s, HOUR_S, USUAL_STEP_s / 8]) {
      const standing = { ...inTheOpen, rain_share: 1 };
      const weatherAt = readWeather(shower(hour));
      const run = runLike({ days: 2, standing, weatherAt, pace: { step_s, within_K: 1e9 } });
      const { ledger, shells } = runHeap(run, 2 * 24 * HOUR_S, () => undefined);
      expect(lineOf(ledger, 'waterRained_kg') / shells.outline.plan_m2).toBeCloseTo(12, 9);
    }
  });

  it('is the first reading before them and the last after', () => {
    const one = { ...stillAir(3), rain_mmPerDay: 2 };
    const other = { ...stillAir(9), rain_mmPerDay: 8 };
    const at = readWeather([one, other]);
    const weather = noWeather();
    at(-10 * HOUR_S, weather);
    expect(weather.temp_degC).toBe(3);
    expect(weather.rain_kgPerM2S * 86_400).toBeCloseTo(2, 9);
    at(30 * HOUR_S, weather);
    expect(weather.temp_degC).toBe(9);
    expect(weather.rain_kgPerM2S * 86_400).toBeCloseTo(8, 9);
    at(HOUR_S / 2, weather);
    expect(weather.temp_degC).toBe(6);
  });
});

describe('rain in frost', () => {
  // Heat of fusion 333.6 kJ/kg, ice 2.1 and water 4.19 kJ/(kg K), to the two digits that handbooks share; the model melts
  // its water over 1.5 K, which moves some kilojoules. Ten kelvins below freezing a kilogram lacks about 334 + 21 kJ.
  it('falls as snow, which lacks the heat that melts it', () => {
    const weatherAt = constantWeather({ ...stillAir(-10), rain_mmPerDay: 5 });
    const { ledger } = runHeap(
      runLike({ days: 2, weatherAt, standing: { ...inTheOpen, rain_share: 1 } }),
      2 * 24 * HOUR_S,
      () => undefined,
    );
    const heat_kJPerKg = lineOf(ledger, 'heatWithRain_J') / lineOf(ledger, 'waterRained_kg') / 1000;
    expect(heat_kJPerKg).toBeLessThan(-350);
    expect(heat_kJPerKg).toBeGreaterThan(-365);
  });
});
