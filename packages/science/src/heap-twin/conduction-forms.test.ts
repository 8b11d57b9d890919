import { describe, expect, it } from 'vitest';
import { advance } from './advance.ts';
import { buildHeap } from './build.ts';
import { findRates } from './change.ts';
import { emptyLedger, LINE } from './ledger.ts';
import { DAY_S, traitsOf, twinParameters, typicalFigures } from './parameters.ts';
import { cutShells, type HeapShape, type Outline, outlineOf } from './shape.ts';
import { createSlate, inside, writeDown } from './slate.ts';
import { shellTemperature_degC } from './state.ts';
import { noWeather } from './surroundings.ts';
import { inTheOpen, stillAir, stuffLike } from './testing/heaps.ts';
import { bessel, cylinderLeft, cylinderRoot, cylinderWeight, slabLeft } from './testing/products.ts';
import { root } from './testing/series.ts';
import { constantWeather } from './weather.ts';

const AIR_degC = 10;
const FILM_WPerM2K = twinParameters.surface_WPerM2K.value;
const sealed = { insulation_m2KPerW: 0, vapour_sPerM: 1e9 };

/** Stuff that only conducts: pores all but full of water, no draught. */
const DRY_kgPerM3 = 400;
const WATER_kgPerM3 = 960 * (1 - DRY_kgPerM3 / twinParameters.organicDensity_kgPerM3.value);
const CONDUCTIVITY_WPerMK = twinParameters.conductivity.dry_WPerMK + 0.96 * twinParameters.conductivity.wet_WPerMK;
const HEAT_JPerM3K =
  WATER_kgPerM3 * twinParameters.waterHeat_JPerKgK.value + DRY_kgPerM3 * twinParameters.organicHeat_JPerKgK.typical;
const DIFFUSIVITY_m2PerS = CONDUCTIVITY_WPerMK / HEAT_JPerM3K;

function soaked(volume_m3: number, temp_degC: number, pools: readonly [number, number, number, number, number]) {
  const stuff = stuffLike({
    volume_m3,
    density_kgPerM3AsIs: DRY_kgPerM3 + WATER_kgPerM3,
    moisture_pctWet: (100 * WATER_kgPerM3) / (DRY_kgPerM3 + WATER_kgPerM3),
    volatile_pctDry: 100,
    pools_shareOfVolatile: pools,
    temp_degC,
    activity_share: pools[4] === 1 ? 0 : 1,
  });
  return { ...stuff, ammoniacalN_kg: 0 };
}

/** An outline with all of its surface in the air. */
function hung(shape: HeapShape): Outline {
  const outline = outlineOf(shape);
  return { ...outline, top_m2: outline.top_m2 + outline.side_m2 + outline.ground_m2, side_m2: 0, ground_m2: 0 };
}

/** The core of a heap that only conducts, cooling from 60 °C in air of 10, after each of some days. */
function coreCooling(outline: Outline, days: readonly number[], shellCount: number): readonly number[] {
  const shells = cutShells(outline, shellCount);
  const state = buildHeap(soaked(outline.volume_m3, 60, [0, 0, 0, 0, 1]), shells);
  const traits = traitsOf({ ...typicalFigures(), permeability_m2: 0, holds_kgPerKg: 10, settling_share: 0 });
  const work = createSlate(shellCount);
  const pace = { step_s: 1800, within_K: 1 };
  const weatherAt = constantWeather(stillAir(AIR_degC));
  let from_s = 0;
  return days.map((day) => {
    const heap = { shells, standing: { ...inTheOpen, top: sealed }, traits };
    advance(heap, state, emptyLedger(), weatherAt, { from_s, to_s: day * DAY_S }, pace, work);
    from_s = day * DAY_S;
    return shellTemperature_degC(state, 0);
  });
}

interface Form {
  readonly name: string;
  readonly shape: HeapShape;
  /** Exact share left at the middle after a time, and rate at which all of it goes in the end, 1/s. */
  readonly left: (time_s: number) => number;
  readonly slowest_perS: number;
}

const slab = (half_m: number) => ({
  left: (time_s: number): number =>
    slabLeft((FILM_WPerM2K * half_m) / CONDUCTIVITY_WPerMK, (DIFFUSIVITY_m2PerS * time_s) / half_m ** 2),
  slowest_perS: DIFFUSIVITY_m2PerS * (root('slab', (FILM_WPerM2K * half_m) / CONDUCTIVITY_WPerMK, 0) / half_m) ** 2,
});
const round = (radius_m: number) => ({
  left: (time_s: number): number =>
    cylinderLeft((FILM_WPerM2K * radius_m) / CONDUCTIVITY_WPerMK, (DIFFUSIVITY_m2PerS * time_s) / radius_m ** 2),
  slowest_perS: DIFFUSIVITY_m2PerS * (cylinderRoot((FILM_WPerM2K * radius_m) / CONDUCTIVITY_WPerMK, 0) / radius_m) ** 2,
});

function product(name: string, shape: HeapShape, factors: readonly ReturnType<typeof slab>[]): Form {
  return {
    name,
    shape,
    left: (time_s) => factors.reduce((share, { left }) => share * left(time_s), 1),
    slowest_perS: factors.reduce((sum, { slowest_perS }) => sum + slowest_perS, 0),
  };
}

const box = (width_m: number, depth_m: number, height_m: number): Form =>
  product(`box of ${width_m} × ${depth_m} × ${height_m} m`, { form: 'box', width_m, depth_m, height_m }, [
    slab(width_m / 2),
    slab(depth_m / 2),
    slab(height_m / 2),
  ]);
const drum = (diameter_m: number, length_m: number): Form =>
  product(`drum of ${diameter_m} × ${length_m} m`, { form: 'drum', diameter_m, length_m }, [
    round(diameter_m / 2),
    slab(length_m / 2),
  ]);

describe('the closed forms', () => {
  // Abramowitz and Stegun 1964, tables 9.1 and 9.5; the first roots and weights of the cylinder by Biot number from
  // heat-transfer texts (Carslaw and Jaeger 1959), recalled.
  it('have Bessel’s functions and the first roots and weights as printed', () => {
    expect(bessel(0, 1)).toBeCloseTo(0.765_197_7, 7);
    expect(bessel(1, 1)).toBeCloseTo(0.440_050_6, 7);
    expect(bessel(0, 10)).toBeCloseTo(-0.245_935_8, 7);
    for (const [biot, zeta, first] of [
      [0.1, 0.4417, 1.0246],
      [1, 1.2558, 1.2071],
      [10, 2.1795, 1.5677],
      [100, 2.3809, 1.6015],
    ] as const) {
      expect(cylinderRoot(biot, 0)).toBeCloseTo(zeta, 4);
      expect(cylinderWeight(cylinderRoot(biot, 0))).toBeCloseTo(first, 3);
    }
  });
});

// Boxes and drums are cut into shells that are alike in form, which a true box or drum is not while it cools. The
// shells’ rate is right where the surface is held cold; under a film of 10 W/(m² K) corners count otherwise. The figures
// are measured, and told in docs/models/heap-twin-measured.md.
describe('the shells of a box or drum, beside the exact products', () => {
  it.each([
    { ...box(1, 1, 1), rate_pct: 4.0, core_K: -1.6 },
    { ...box(1.2, 1.2, 0.8), rate_pct: 4.7, core_K: -1.5 },
    { ...box(2, 1, 1), rate_pct: 4.6, core_K: 1.4 },
    { ...box(0.6, 0.6, 0.9), rate_pct: 5.6, core_K: -1.8 },
    { ...drum(0.9, 1.2), rate_pct: 2.8, core_K: -0.8 },
    { ...drum(0.9, 3), rate_pct: 1.6, core_K: -1.5 },
  ])(
    'a $name cools $rate_pct % too fast in the end, its core $core_K K off at most, from 60 °C in air of 10',
    (form) => {
      const outline = hung(form.shape);
      const whole_day = 1 / (form.slowest_perS * DAY_S);
      const days = [0.25, 0.5, 1, 1.5, 2, 3, 4, 5].map((times) => times * whole_day);
      const core = coreCooling(outline, days, 40);
      const excess = core.map((temp_degC) => temp_degC - AIR_degC);
      const late_perDay = Math.log((excess.at(-2) ?? 0) / (excess.at(-1) ?? 1)) / whole_day;
      const rate_share = late_perDay / (form.slowest_perS * DAY_S) - 1;
      const off_K = excess.map((over_K, i) => over_K - 50 * form.left((days[i] ?? Number.NaN) * DAY_S));
      const worst_K = off_K.reduce((worst, off) => (Math.abs(off) > Math.abs(worst) ? off : worst), 0);
      // As measured, to the digit told.
      expect(Math.abs(100 * rate_share - form.rate_pct)).toBeLessThan(0.1);
      expect(Math.abs(worst_K - form.core_K)).toBeLessThan(0.1);
    },
  );
});

/** A ball that only conducts and makes the same heat everywhere, long after it was built. */
function warmBall(volume_m3: number, heat_WPerM3: number, film_WPerM2K: number, conductivity_WPerMK: number) {
  // What is printed is for another conductivity: with heat and film scaled alike the temperatures are the same.
  const scale = CONDUCTIVITY_WPerMK / conductivity_WPerMK;
  const wanted_WPerM3 = heat_WPerM3 * scale;
  const film = film_WPerM2K * scale;
  const radius_m = Math.cbrt((3 * volume_m3) / (4 * Math.PI));
  const outline: Outline = {
    volume_m3,
    height_m: 2 * radius_m,
    plan_m2: 1,
    top_m2: 4 * Math.PI * radius_m ** 2,
    side_m2: 0,
    ground_m2: 0,
    directions: 3,
    slowest_perM2: (Math.PI / radius_m) ** 2,
  };
  const shellCount = 40;
  const shells = cutShells(outline, shellCount);
  const state = buildHeap(soaked(volume_m3, 30, [0, 0, 0, 1, 0]), shells);
  const wind_mPerS = Math.max(0, film - FILM_WPerM2K) / twinParameters.windOnSurface_JPerM3K.value;
  const insulation_m2KPerW = Math.max(0, 1 / film - 1 / FILM_WPerM2K);
  const standing = { ...inTheOpen, top: { insulation_m2KPerW, vapour_sPerM: 1e9 }, wind_share: 1 };
  const weatherAt = constantWeather({ ...stillAir(AIR_degC), wind_mPerS });
  // So much heat from so little stuff that neither oxygen, water nor the stuff itself changes; a curve so wide that it
  // is flat; and microbes that keep their number.
  const wide = traitsOf({
    ...typicalFigures(),
    permeability_m2: 0,
    holds_kgPerKg: 10,
    settling_share: 0,
    coldest_degC: -4000,
    best_degC: 30,
    hottest_degC: 4000,
    oxygenHalf_pctVolume: 1e-4,
  });
  const usual = { ...wide, slowCurve: wide.curve };
  const weather = noWeather();
  weatherAt(0, weather);
  const asked = createSlate(shellCount);
  writeDown(asked, state, shells);
  findRates(asked.start, { shells, standing, traits: usual }, weather, 0);
  const lively = inside.LIVELINESS_share[asked.start.from] ?? Number.NaN;
  const hunger_kgPerS = inside.HUNGER_kgPerS[asked.start.from] ?? Number.NaN;
  const asked_kgPerM3S = hunger_kgPerS / (volume_m3 * (shells.volume_share[0] ?? Number.NaN));
  const traits = {
    ...usual,
    lignin_perS: usual.lignin_perS * 1e-6,
    heat_JPerKgOxygen: wanted_WPerM3 / (1e-6 * asked_kgPerM3S),
    growth_perS: 20 / DAY_S / lively,
  };
  const ledger = emptyLedger();
  const pace = { step_s: 1800, within_K: 5 };
  const work = createSlate(shellCount);
  const heap = { shells, standing, traits };
  const to_s = 60 * DAY_S;
  advance(heap, state, ledger, weatherAt, { from_s: 0, to_s }, pace, work);
  const before = ledger[LINE.heatMade_J] ?? Number.NaN;
  advance(heap, state, ledger, weatherAt, { from_s: to_s, to_s: to_s + DAY_S }, pace, work);
  const made_WPerM3 = ((ledger[LINE.heatMade_J] ?? Number.NaN) - before) / DAY_S / volume_m3 / scale;
  const temps = Array.from({ length: shellCount }, (_, i) => shellTemperature_degC(state, i));
  const mean_degC = temps.reduce((sum, temp, i) => sum + temp * (shells.volume_share[i] ?? 0), 0);
  // The middle of the outermost shell lies an eightieth of the radius in; the surface follows from the film.
  const surface_degC = AIR_degC + (made_WPerM3 * radius_m) / 3 / film_WPerM2K;
  return {
    made_WPerM3,
    core_degC: temps[0] ?? Number.NaN,
    last_degC: temps.at(-1) ?? Number.NaN,
    mean_degC,
    surface_degC,
  };
}

describe('a ball that makes heat and only conducts', () => {
  // Steady state with uniform generation (Carslaw and Jaeger 1959, section 9.2): T_c - T_s = q R²/6k,
  // T_s - T_a = q R/3h, mean over surface q R²/15k; worked out elsewhere for k 0.35 W/(m K), air 10 °C.
  it.each([
    [1, 200, 10, 14.1, 50.8, 28.8],
    [0.3, 200, 0.8, 44.6, 61.0, 51.2],
    [5, 100, 10, 13.5, 67.1, 35.0],
  ])(
    'of %d m³ at %d W/m³ under %d W/(m² K) settles where the closed form has it',
    (volume, heat, film, surface, centre, mean) => {
      const found = warmBall(volume, heat, film, 0.35);
      // The microbes keep 99.9 % of their number, and the heat follows.
      expect(found.made_WPerM3 / heat).toBeCloseTo(1, 2);
      // ±0.5 K with at least 40 shells, as given with the check cases.
      expect(Math.abs(found.core_degC - centre)).toBeLessThan(0.5);
      expect(Math.abs(found.mean_degC - mean)).toBeLessThan(0.5);
      expect(Math.abs(found.surface_degC - surface)).toBeLessThan(0.5);
      expect(found.last_degC).toBeGreaterThan(found.surface_degC);
    },
  );
});
