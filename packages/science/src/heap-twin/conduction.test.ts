import { describe, expect, it } from 'vitest';
import { advance } from './advance.ts';
import { buildHeap } from './build.ts';
import { emptyLedger } from './ledger.ts';
import { DAY_S, traitsOf, twinParameters, typicalFigures } from './parameters.ts';
import { cutShells, type Outline } from './shape.ts';
import { createSlate } from './slate.ts';
import { shellTemperature_degC } from './state.ts';
import { inTheOpen, stillAir, stuffLike } from './testing/heaps.ts';
import { type Body, left_share, root, weight } from './testing/series.ts';
import { constantWeather } from './weather.ts';

const HOT_degC = 60;
const AIR_degC = 10;
const FILM_WPerM2K = twinParameters.surface_WPerM2K.value;

/** A ball, or a slab of a square metre with both faces bare: nothing on the ground. */
function outline(body: Body, half_m: number): Outline {
  const ball = body === 'sphere';
  return {
    volume_m3: ball ? (4 / 3) * Math.PI * half_m ** 3 : 2 * half_m,
    height_m: 2 * half_m,
    plan_m2: 1,
    top_m2: ball ? 4 * Math.PI * half_m ** 2 : 2,
    side_m2: 0,
    ground_m2: 0,
    directions: ball ? 3 : 1,
    slowest_perM2: (Math.PI / (ball ? half_m : 2 * half_m)) ** 2,
  };
}

/**
 * Dead stuff with its pores all but full of water, through which no air passes and next to no vapour: what is left is
 * conduction. Its conductivity and heat follow from its water and solids as the model has them.
 */
function deadHeap(body: Body, half_m: number, insulation_m2KPerW: number) {
  const shape = outline(body, half_m);
  const dry_kgPerM3 = 400;
  const pores = 1 - dry_kgPerM3 / twinParameters.organicDensity_kgPerM3.value;
  const water_kgPerM3 = 960 * pores;
  const stuff = stuffLike({
    volume_m3: shape.volume_m3,
    density_kgPerM3AsIs: dry_kgPerM3 + water_kgPerM3,
    moisture_pctWet: (100 * water_kgPerM3) / (dry_kgPerM3 + water_kgPerM3),
    volatile_pctDry: 100,
    pools_shareOfVolatile: [0, 0, 0, 0, 1],
    temp_degC: HOT_degC,
    activity_share: 0,
  });
  return {
    shape,
    stuff: { ...stuff, organicN_kg: 0, ammoniacalN_kg: 0 },
    traits: traitsOf({ ...typicalFigures(), permeability_m2: 0, holds_kgPerKg: 10, settling_share: 0 }),
    standing: { ...inTheOpen, top: { insulation_m2KPerW, vapour_sPerM: 1e9 } },
    conductivity_WPerMK: twinParameters.conductivity.dry_WPerMK + twinParameters.conductivity.wet_WPerMK * 0.96,
    heat_JPerM3K:
      water_kgPerM3 * twinParameters.waterHeat_JPerKgK.value + dry_kgPerM3 * twinParameters.organicHeat_JPerKgK.typical,
  };
}

/** Temperatures after so many days: the model's shells and the closed form at their middles. */
function cooled(body: Body, half_m: number, days: number, shellCount: number, insulation_m2KPerW = 0) {
  const { shape, stuff, traits, standing, conductivity_WPerMK, heat_JPerM3K } = deadHeap(
    body,
    half_m,
    insulation_m2KPerW,
  );
  const shells = cutShells(shape, shellCount);
  const state = buildHeap(stuff, shells);
  const time = { from_s: 0, to_s: days * DAY_S };
  const weatherAt = constantWeather(stillAir(AIR_degC));
  const pace = { step_s: 600, within_K: 1 };
  advance({ shells, standing, traits }, state, emptyLedger(), weatherAt, time, pace, createSlate(shellCount));
  const film_WPerM2K = 1 / (1 / FILM_WPerM2K + insulation_m2KPerW);
  const biot = (film_WPerM2K * half_m) / conductivity_WPerMK;
  const fourier = (conductivity_WPerMK * days * DAY_S) / (heat_JPerM3K * half_m ** 2);
  return Array.from(shells.middle, (place, i) => ({
    model_degC: shellTemperature_degC(state, i),
    exact_degC: AIR_degC + (HOT_degC - AIR_degC) * left_share(body, biot, fourier, place),
  }));
}

describe('the closed forms the model is held against', () => {
  // Carslaw and Jaeger 1959 and heat-transfer texts: first root and weight by Biot number.
  it.each([
    ['slab', 0.1, 0.3111, 1.0161],
    ['slab', 1, 0.8603, 1.1191],
    ['slab', 10, 1.4289, 1.262],
    ['slab', 100, 1.5552, 1.2731],
    ['sphere', 0.1, 0.5423, 1.0298],
    ['sphere', 1, 1.5708, 1.2732],
    ['sphere', 10, 2.8363, 1.9249],
    ['sphere', 100, 3.1102, 1.999],
  ] as const)('have for a %s of Biot %d the first root and weight of the tables', (body, biot, zeta, first) => {
    // To the last digit printed.
    expect(root(body, biot, 0)).toBeCloseTo(zeta, 4);
    expect(weight(body, root(body, biot, 0))).toBeCloseTo(first, 3);
  });

  // Cooling of a sphere of 1 m³, k 0.35, ρc 1.5 MJ/m³K, h 10, from 60 to air of 10 °C (the same source).
  it.each([
    [0.05239, 58.61, 50.64],
    [0.15716, 34.38, 26.6],
    [0.3667, 13.92, 12.63],
  ])('cool a ball at Fourier number %d as printed', (fourier, centre_degC, halfway_degC) => {
    const at = (place: number): number => 10 + 50 * left_share('sphere', 17.7243, fourier, place);
    expect(at(0)).toBeCloseTo(centre_degC, 2);
    expect(at(0.5)).toBeCloseTo(halfway_degC, 2);
  });
});

describe('conduction in a heap that does nothing else', () => {
  // Half a kelvin with 40 shells is the tolerance given with the closed forms: cells a fortieth of the radius thick.
  it.each([
    ['sphere', 0.6204, 1, 0],
    ['sphere', 0.6204, 3, 0],
    ['sphere', 0.6204, 7, 0],
    ['sphere', 0.4153, 2, 0],
    ['sphere', 1.0608, 14, 0],
    ['sphere', 0.6204, 7, 1.9],
    ['slab', 0.5, 1, 0],
    ['slab', 0.5, 7, 0],
    ['slab', 0.5, 14, 0],
  ] as const)(
    'cools a %s of %d m as the closed form after %d days, with %d m² K/W on it',
    (body, half_m, days, cover) => {
      for (const { model_degC, exact_degC } of cooled(body, half_m, days, 40, cover)) {
        expect(Math.abs(model_degC - exact_degC)).toBeLessThan(0.5);
      }
    },
  );

  it('comes nearer with the square of the number of shells', () => {
    const off = (shells: number): number => {
      const halfway = cooled('sphere', 0.6204, 3, shells)[shells / 2];
      return Math.abs((halfway?.model_degC ?? Number.NaN) - (halfway?.exact_degC ?? Number.NaN));
    };
    const [coarse, middle, fine] = [off(10), off(20), off(40)];
    // Second order: each halving of the shells takes three quarters of what is off.
    expect(Math.log2(coarse / middle)).toBeGreaterThan(1.9);
    expect(Math.log2(middle / fine)).toBeGreaterThan(1.9);
  });
});
