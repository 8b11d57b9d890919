import { describe, expect, it } from 'vitest';
import { CannotFollow } from './advance.ts';
import { traitsOf, typicalFigures, USUAL_STEP_s } from './parameters.ts';
import { type HeapRun, runHeap, USUAL_PACE } from './run.ts';
import { shellTemperature_degC } from './state.ts';
import { daily, inTheOpen, runLike, stillAir, stuffLike, temperatures_degC } from './testing/heaps.ts';
import { constantWeather, readWeather, type WeatherReading } from './weather.ts';

const HOUR_S = 3600;
/** No step is shortened of itself. */
const ANY_K = 1e9;

/** The greatest difference of any shell between two runs at their end, K. */
function apart_K(one: HeapRun, other: HeapRun): number {
  const temps = temperatures_degC(daily(one).end);
  const others = temperatures_degC(daily(other).end);
  return Math.max(...temps.map((temp, i) => Math.abs(temp - (others[i] ?? Number.NaN))));
}

function stepped(step_s: number, change: Partial<HeapRun> = {}): HeapRun {
  return runLike({ days: 5, pace: { step_s, within_K: ANY_K }, ...change });
}

describe('the steps in time', () => {
  it('are of second order: half the step, a quarter of what is off', () => {
    const fine = stepped(HOUR_S / 256);
    const off = [2, 1, 0.5, 0.25].map((hours) => apart_K(stepped(hours * HOUR_S), fine));
    for (let i = 1; i < off.length; i++) {
      // Measured 1.94, 1.92 and 1.98.
      expect(Math.log2((off[i - 1] ?? 0) / (off[i] ?? 1))).toBeGreaterThan(1.9);
    }
  });

  it('are short enough by themselves: half as long, they change no shell by half a kelvin on any day', () => {
    for (const change of [{}, { stuff: stuffLike({ moisture_pctWet: 72, density_kgPerM3AsIs: 650 }) }]) {
      const usual: number[][] = [];
      const half: number[][] = [];
      const seen = (into: number[][]) => (moment: Parameters<Parameters<typeof runHeap>[2]>[0]) =>
        into.push([...temperatures_degC(moment)]);
      runHeap(runLike(change), 86_400, seen(usual));
      runHeap(
        runLike({ ...change, pace: { step_s: USUAL_STEP_s / 2, within_K: USUAL_PACE.within_K / 4 } }),
        86_400,
        seen(half),
      );
      const apart = usual.flatMap((temps, day) =>
        temps.map((temp, i) => Math.abs(temp - (half[day]?.[i] ?? Number.NaN))),
      );
      // The probe of a grower is good to a kelvin at best.
      expect(Math.max(...apart)).toBeLessThan(0.5);
    }
  });
});

describe('stiff heaps', () => {
  const quick = traitsOf({
    ...typicalFigures(),
    fastRate_perDay: 3,
    growth_perDay: 12,
    hottest_degC: 98,
    best_degC: 80,
  });
  it.each([
    ['wet', { stuff: stuffLike({ moisture_pctWet: 82, density_kgPerM3AsIs: 950 }) }],
    ['very fast and nearly boiling', { traits: quick, stuff: stuffLike({ activity_share: 1, temp_degC: 40 }) }],
    ['tiny', { stuff: stuffLike({ volume_m3: 0.001 }), shellCount: 8 }],
    ['of 200 shells', { shellCount: 200, days: 8 }],
    ['bone dry', { stuff: stuffLike({ moisture_pctWet: 4, density_kgPerM3AsIs: 120 }) }],
    ['frozen', { stuff: stuffLike({ temp_degC: -10 }), weatherAt: constantWeather(stillAir(-12)) }],
    ['thawing', { stuff: stuffLike({ temp_degC: -4 }), weatherAt: constantWeather(stillAir(15)) }],
    ['in a gale', { traits: traitsOf({ ...typicalFigures(), permeability_m2: 1e-6 }) }],
  ] as const)('that are %s neither swing nor leave what is possible', (_name, change) => {
    const core: number[] = [];
    runHeap(runLike({ days: 20, ...change }), 3 * HOUR_S, (moment) => {
      for (const temp_degC of temperatures_degC(moment)) {
        expect(temp_degC).toBeGreaterThan(-15);
        expect(temp_degC).toBeLessThan(100);
      }
      core.push(shellTemperature_degC(moment.state, 0));
    });
    // A swing would turn about at every step; weather that stands still turns a core about a few times in all.
    const turns = core.filter((temp, i) => {
      const before = temp - (core[i - 1] ?? temp);
      const after = (core[i + 1] ?? temp) - temp;
      return before * after < 0 && Math.min(Math.abs(before), Math.abs(after)) > 0.2;
    });
    expect(turns.length).toBeLessThan(6);
  });
});

describe('a heap that the wind and the sun have dried', () => {
  const weatherAt = constantWeather({ ...stillAir(35), humidity_share: 0.1, wind_mPerS: 10, sun_WPerM2: 800 });
  const dry = runLike({
    stuff: stuffLike({ moisture_pctWet: 20, density_kgPerM3AsIs: 80 }),
    standing: { ...inTheOpen, wind_share: 1, sun_share: 1 },
    weatherAt,
    days: 26,
  });

  it('takes no shorter steps once it is dry: its last water is taken ahead', () => {
    let asked = 0;
    let before = 0;
    const each_day: number[] = [];
    runHeap(
      {
        ...dry,
        weatherAt: (time_s, into) => {
          asked++;
          weatherAt(time_s, into);
        },
      },
      86_400,
      () => {
        each_day.push(asked - before);
        before = asked;
      },
    );
    expect(Math.max(...each_day)).toBeGreaterThan(8);
    expect(each_day.slice(-5)).toEqual([8, 8, 8, 8, 8]);
  });

  it('is as dry and warm by steps of a sixteenth', () => {
    const fine = daily({ ...dry, pace: { step_s: USUAL_STEP_s / 16, within_K: USUAL_PACE.within_K / 16 } });
    const usual = daily(dry);
    usual.core_degC.forEach((temp, day) => {
      expect(Math.abs(temp - (fine.core_degC[day] ?? Number.NaN))).toBeLessThan(0.5);
    });
    usual.end.state.water_kg.forEach((water_kg, i) => {
      expect(water_kg / (fine.end.state.water_kg[i] ?? Number.NaN)).toBeCloseTo(1, 2);
    });
  });
});

describe('a heap that no step can follow', () => {
  it('is told, and does not go on for ever', () => {
    const weatherAt = constantWeather(stillAir(12));
    const stops = runLike({
      days: 2,
      weatherAt: (time_s, into, while_s) => {
        weatherAt(time_s, into, while_s);
        if (time_s > 40_000) into.temp_degC = Number.NaN;
      },
    });
    expect(() => daily(stops)).toThrow(CannotFollow);
  });

  it('is rare: a bucket of stuff in a wide bay lies in a heap of its own, and takes no more than 40 steps a day', () => {
    let asked = 0;
    const still = constantWeather(stillAir(15));
    runHeap(
      runLike({
        shape: { form: 'box', width_m: 1.2, depth_m: 1.2, height_m: 1 },
        stuff: stuffLike({ volume_m3: 0.01, density_kgPerM3AsIs: 350 }),
        weatherAt: (time_s, into, while_s) => {
          asked++;
          still(time_s, into, while_s);
        },
      }),
      86_400,
      () => undefined,
    );
    expect(asked).toBeLessThan(30 * 40);
  });
});

describe('a heap in weather that is read by the hour', () => {
  // Made up: a day and a night, a wind that comes and goes, sun through clouds, a shower every other day.
  const readings = Array.from({ length: 20 * 24 + 1 }, (_, hour): WeatherReading => {
    const ofDay = Math.cos((2 * Math.PI * (hour - 15)) / 24);
    return {
      ...stillAir(10 + 5 * ofDay + 3 * Math.sin(hour / 37)),
      wind_mPerS: 1.5 + 1.2 * Math.sin(hour / 5) + 0.3 * Math.sin(2.7 * hour),
      rain_mmPerDay: hour % 48 === 31 ? 96 : 0,
      sun_WPerM2: Math.max(0, -500 * Math.cos((2 * Math.PI * hour) / 24)) * (0.7 + 0.3 * Math.sin(1.9 * hour)),
      ground_degC: 10,
    };
  });
  const [first, ...others] = readings;
  if (first === undefined) throw new Error('no weather');
  const out = runLike({
    standing: { ...inTheOpen, wind_share: 1, rain_share: 1, sun_share: 1 },
    weatherAt: readWeather([first, ...others]),
    days: 20,
  });

  it('takes a step an hour and no more, and comes out as by steps of a tenth', () => {
    let steps = 0;
    const counted: HeapRun = {
      ...out,
      weatherAt: (time_s, into, while_s) => {
        steps++;
        out.weatherAt(time_s, into, while_s);
      },
    };
    const usual: (readonly number[])[] = [];
    const fine: (readonly number[])[] = [];
    runHeap(counted, 86_400, (moment) => usual.push(temperatures_degC(moment)));
    runHeap({ ...out, pace: { step_s: HOUR_S / 10, within_K: ANY_K } }, 86_400, (moment) =>
      fine.push(temperatures_degC(moment)),
    );
    expect(steps).toBeLessThan(20 * 24 * 1.1);
    const apart = usual.map((temps, day) => temps.map((temp, i) => Math.abs(temp - (fine[day]?.[i] ?? Number.NaN))));
    // Measured 0.9 K; what gusts and showers do between two hours is not known better.
    expect(Math.max(...apart.flat())).toBeLessThan(1.5);
  });
});
