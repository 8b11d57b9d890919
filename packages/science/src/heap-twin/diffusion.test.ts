import { describe, expect, it } from 'vitest';
import { createDraws } from '../estimate/index.ts';
import { buildHeap } from './build.ts';
import { findRates } from './change.ts';
import { type OxygenInHeapInput, oxygenInHeap } from './oxygen-in-heap.ts';
import { DAY_S, traitsOf, twinParameters, typicalFigures } from './parameters.ts';
import { cutShells, type Outline } from './shape.ts';
import { createSlate, inside, readOff, writeDown } from './slate.ts';
import { noWeather } from './surroundings.ts';
import { inTheOpen, stillAir, stuffLike } from './testing/heaps.ts';
import { constantWeather } from './weather.ts';

const needs = { draws: createDraws() } as Parameters<typeof oxygenInHeap.run>[1];

function depth(input: OxygenInHeapInput) {
  const outcome = oxygenInHeap.run(input, needs);
  if (!outcome.ok) throw new Error('no answer');
  return outcome.value;
}

const usual: OxygenInHeapInput = {
  airSpace_pctVolume: 40,
  temp_degC: 50,
  uptake_gPerKgHour: 2,
  volatile_kgPerM3: 120,
};

describe('oxygen by diffusion alone', () => {
  // Cornell Composting, oxygen diffusion in water and in air (read): 1.97e-5 and 4.82e-5 cm²/s in water, 10,800 and
  // 5,700 times as much in the air of compost.
  it.each([
    [20, 10_800 * 1.97e-9],
    [60, 5700 * 4.82e-9],
  ])('spreads in the air of compost at %d °C as printed', (temp_degC, printed_m2PerS) => {
    const { diffusivity_m2PerS } = depth({ ...usual, temp_degC });
    // Three digits are printed; the square of the absolute temperature passes through both within 0.2 %.
    expect(Math.abs(diffusivity_m2PerS / 0.4 ** 2 / printed_m2PerS - 1)).toBeLessThan(0.003);
  });

  // Cornell Composting, inadequate porosity (read): the square of the air space, after Papendick and Campbell.
  it('falls to 0.36 when half of air becomes three tenths', () => {
    const half = depth({ ...usual, airSpace_pctVolume: 50 }).diffusivity_m2PerS;
    expect(depth({ ...usual, airSpace_pctVolume: 30 }).diffusivity_m2PerS / half).toBeCloseTo(0.36, 9);
  });

  it('reaches 0.177 m from a flat surface, and fills a ball of 0.306 m, at 2 g an hour', () => {
    const found = depth(usual);
    // √(2 D C/q), printed to the millimetre, and √3 times as much. The check case prints 0.306 for the ball, which is √3
    // times 0.1767: cut off there, not rounded.
    expect(found.reaches_m).toBeCloseTo(0.177, 3);
    expect(found.largestBall_m / found.reaches_m).toBeCloseTo(Math.sqrt(3), 9);
    expect(Math.abs(found.largestBall_m - 0.306)).toBeLessThan(0.001);
  });
});

/** Shares of oxygen in a body that eats at one rate wherever there is any, from the middle outwards. */
function eaten(directions: 1 | 3, half_m: number, shellCount: number) {
  const ball = directions === 3;
  const outline: Outline = {
    volume_m3: ball ? (4 / 3) * Math.PI * half_m ** 3 : 2 * half_m,
    height_m: 2 * half_m,
    plan_m2: 1,
    top_m2: ball ? 4 * Math.PI * half_m ** 2 : 2,
    side_m2: 0,
    ground_m2: 0,
    directions,
    slowest_perM2: (Math.PI / (ball ? half_m : 2 * half_m)) ** 2,
  };
  const shells = cutShells(outline, shellCount);
  const temp_degC = 50;
  const stuff = stuffLike({ volume_m3: outline.volume_m3, temp_degC, activity_share: 1 });
  const state = buildHeap({ ...stuff, ammoniacalN_kg: 0 }, shells);
  const weather = noWeather();
  constantWeather(stillAir(temp_degC))(0, weather);
  const slate = createSlate(shellCount);
  writeDown(slate, state, shells);
  const core = (quantity: Float64Array): number => quantity[slate.start.from] ?? Number.NaN;
  const reckon = (faster: number): void => {
    const figures = typicalFigures();
    const traits = traitsOf({
      ...figures,
      permeability_m2: 0,
      // Half the rate at a hundred-thousandth of the volume: as good as one rate down to the last trace.
      oxygenHalf_pctVolume: 1e-3,
      fastRate_perDay: faster * figures.fastRate_perDay,
      hemicelluloseRate_perDay: faster * figures.hemicelluloseRate_perDay,
      celluloseRate_perDay: faster * figures.celluloseRate_perDay,
      ligninRate_perDay: faster * figures.ligninRate_perDay,
    });
    findRates(slate.start, { shells, standing: inTheOpen, traits }, weather, 0);
  };
  const wanted_kgPerM3S = (2e-3 * 120) / 3600;
  reckon(1);
  const first = core(inside.HUNGER_kgPerS) / (outline.volume_m3 * (shells.volume_share[0] ?? Number.NaN));
  reckon(wanted_kgPerM3S / first);
  const air_share = core(inside.AIR_SPACE_share);
  const temp_K = temp_degC + 273.15;
  const diffusivity = air_share ** 2 * twinParameters.oxygenDiffusivity.at20_m2PerS * (temp_K / 293.15) ** 2;
  // Oxygen in the humid gas at the surface: vapour takes an eighth of the room at 50 °C.
  const surface_kgPerM3 = 0.2314 * core(inside.DRY_AIR_kgPerM3);
  readOff(slate, state);
  return {
    oxygen: [...state.oxygen_kgPerKg].map((share) => share / 0.2314),
    middle: [...shells.middle],
    squared_m2: (diffusivity * surface_kgPerM3) / wanted_kgPerM3S,
  };
}

describe('oxygen in the model, with nothing flowing', () => {
  it('ends in a slab where the closed form ends it', () => {
    const half_m = 0.4;
    const { oxygen, middle, squared_m2 } = eaten(1, half_m, 80);
    const reach_m = Math.sqrt(2 * squared_m2);
    const TRACE = 1e-3;
    const found_m = half_m * (1 - (middle[oxygen.findIndex((share) => share > TRACE)] ?? Number.NaN));
    const exact_m = (1 - Math.sqrt(TRACE)) * reach_m;
    // A shell is 5 mm thick; the still air at the surface keeps 1 % back.
    expect(Math.abs(found_m - exact_m)).toBeLessThan(0.007);
    // Between: (1 - x/reach)² of what is at the surface.
    oxygen.forEach((share, i) => {
      const x_m = half_m * (1 - (middle[i] ?? Number.NaN));
      const exact = x_m > reach_m ? 0 : (1 - x_m / reach_m) ** 2;
      expect(Math.abs(share - exact)).toBeLessThan(0.03);
    });
  });

  it('just fills a ball of the closed form’s radius, and not one larger', () => {
    const { squared_m2 } = eaten(3, 0.3, 40);
    const largest_m = Math.sqrt(6 * squared_m2);
    // A twentieth less or more than the largest: for the still air at the surface and the thickness of a shell.
    expect(eaten(3, 0.95 * largest_m, 60).oxygen[0]).toBeGreaterThan(0.01);
    expect(eaten(3, 1.05 * largest_m, 60).oxygen[0]).toBeLessThan(0.01);
  });
});

describe('what heaps have been seen to breathe', () => {
  // Cornell Composting, rapidly degrading substrate (read): from below 1 to above 10 g of oxygen per kg of volatile
  // matter and hour (Haug, quoted there). 20 % fast, the rest as in a manured mix of straw.
  it('lies around what the model’s first day asks at its best', () => {
    const { pools } = twinParameters;
    const figures = typicalFigures();
    const shares = { fast: 0.2, hemicellulose: 0.22, cellulose: 0.3, lignin: 0.18 } as const;
    const rate_perDay = {
      fast: figures.fastRate_perDay,
      hemicellulose: figures.hemicelluloseRate_perDay,
      cellulose: figures.celluloseRate_perDay,
      lignin: figures.ligninRate_perDay,
    };
    const asked_kgPerKgDay = (['fast', 'hemicellulose', 'cellulose', 'lignin'] as const).reduce(
      (sum, pool) => sum + shares[pool] * rate_perDay[pool] * pools[pool].oxygen_kgPerKg,
      0,
    );
    const asked_gPerKgHour = (1000 * asked_kgPerKgDay * 3600) / DAY_S;
    expect(asked_gPerKgHour).toBeGreaterThan(1);
    expect(asked_gPerKgHour).toBeLessThan(10);
    // 3.6 with 0.25 a day, worked out by hand; the typical rate is 0.27 now.
    expect(asked_gPerKgHour).toBeCloseTo(3.8, 0);
  });
});
