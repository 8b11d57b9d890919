import psychrolib from 'psychrolib';
import { describe, expect, it } from 'vitest';
import { placeOf, saturationAt_Pa } from './air-table.ts';
import {
  dryAir_kgPerM3,
  evaporation_JPerKg,
  humidAir_kgPerM3,
  humidity_kgPerKg,
  saturation_Pa,
  vapour_kgPerM3,
} from './moist-air.ts';
import { twinParameters } from './parameters.ts';

const PRESSURE_Pa = twinParameters.airPressure_Pa.value;
psychrolib.SetUnitSystem(psychrolib.SI);

/**
 * °C; saturation pressure, kPa, and heat of evaporation, kJ/kg, of the steam table (Ohio University, saturated water,
 * temperature table, read); humidity ratio, kg/kg, dry and saturated air, kg/m³, worked out elsewhere from Buck 1981 and
 * the ideal gas at 101.325 kPa.
 */
const steamTable = [
  [5, 0.87, 2489.1, 0.0054, 1.2691, 1.2649],
  [10, 1.23, 2477.2, 0.00763, 1.2466, 1.2409],
  [15, 1.71, 2465.3, 0.01065, 1.225, 1.2172],
  [20, 2.34, 2453.5, 0.01469, 1.2041, 1.1936],
  [25, 3.17, 2441.7, 0.02008, 1.1839, 1.1699],
  [30, 4.25, 2429.8, 0.0272, 1.1644, 1.146],
  [35, 5.63, 2417.9, 0.03657, 1.1455, 1.1215],
  [40, 7.39, 2406, 0.04888, 1.1272, 1.0962],
  [45, 9.6, 2394, 0.06504, 1.1095, 1.0698],
  [50, 12.35, 2382, 0.08633, 1.0923, 1.042],
  [55, 15.76, 2369.8, 0.11456, 1.0757, 1.0124],
  [60, 19.95, 2357.6, 0.15244, 1.0595, 0.9807],
  [65, 25.04, 2345.4, 0.20417, 1.0439, 0.9464],
  [70, 31.2, 2333, 0.27674, 1.0287, 0.9089],
  [75, 38.6, 2320.6, 0.38267, 1.0139, 0.8679],
  [80, 47.41, 2308, 0.54694, 0.9995, 0.8228],
] as const;

describe('vapour', () => {
  it.each(steamTable)('at %d °C is as the steam table has it', (temp_degC, pressure_kPa, latent_kJPerKg) => {
    // Two digits after the point are 0.6 % of the first row; 0.1 % covers the rest.
    expect(Math.abs(saturation_Pa(temp_degC) / 1000 - pressure_kPa)).toBeLessThan(0.005 + 0.001 * pressure_kPa);
    // The straight line 2501 - 2.40 T is told as good to 1 kJ/kg; the table is printed to 0.1.
    expect(Math.abs(evaporation_JPerKg(temp_degC) / 1000 - latent_kJPerKg)).toBeLessThanOrEqual(1.05);
  });

  it.each(steamTable)(
    'in saturated air of %d °C weighs what was worked out elsewhere',
    (temp_degC, _kPa, _kJ, humidity, dry_kgPerM3, wet_kgPerM3) => {
      const vapour_Pa = saturation_Pa(temp_degC);
      // A unit of the fifth digit printed, and 1 in 10,000: there 0.621945 was taken for the ratio of the masses.
      const found = humidity_kgPerKg(vapour_Pa, PRESSURE_Pa);
      expect(Math.abs(found - humidity)).toBeLessThan(1e-5 + 1e-4 * humidity);
      // A unit of the fourth digit.
      expect(Math.abs(dryAir_kgPerM3(temp_degC, 0, PRESSURE_Pa) - dry_kgPerM3)).toBeLessThan(1e-4);
      expect(Math.abs(humidAir_kgPerM3(temp_degC, vapour_Pa, PRESSURE_Pa) - wet_kgPerM3)).toBeLessThan(1.1e-4);
    },
  );

  it('is the sum of its parts: dry air and vapour in a cubic metre weigh what humid air weighs', () => {
    for (const temp_degC of [-20, 0, 20, 60, 80]) {
      const vapour_Pa = saturation_Pa(temp_degC);
      const parts = dryAir_kgPerM3(temp_degC, vapour_Pa, PRESSURE_Pa) + vapour_kgPerM3(temp_degC, vapour_Pa);
      // Gas constants of 287.05 and 461.5 J/(kg K) and a ratio of 0.622 agree to 2 in 100,000.
      expect(parts / humidAir_kgPerM3(temp_degC, vapour_Pa, PRESSURE_Pa)).toBeCloseTo(1, 4);
    }
  });

  // Heap gas of 60 °C against air of 10: 0.262 kg/m³ saturated, 0.187 dry; leaving vapour out understates the lift by 30 %.
  it('makes a heap lift its air by 40 % more than dry air would', () => {
    const outside = humidAir_kgPerM3(10, saturation_Pa(10), PRESSURE_Pa);
    const lift = outside - humidAir_kgPerM3(60, saturation_Pa(60), PRESSURE_Pa);
    const dryLift = dryAir_kgPerM3(10, 0, PRESSURE_Pa) - dryAir_kgPerM3(60, 0, PRESSURE_Pa);
    expect(lift).toBeCloseTo(0.26, 2);
    expect(dryLift).toBeCloseTo(0.187, 3);
    expect(lift / dryLift).toBeGreaterThan(1.35);
  });

  it('stands in the table that the model reads to 4 in 100,000 above 10 °C and to 1 in 10,000 below', () => {
    for (let temp_degC = -50; temp_degC < 130; temp_degC += 0.37) {
      const off = Math.abs(saturationAt_Pa(placeOf(temp_degC)) / saturation_Pa(temp_degC) - 1);
      // A straight line over a quarter of a kelvin is off by an eighth of its square times the curve’s bend.
      expect(off).toBeLessThan(temp_degC > 10 ? 4e-5 : 1e-4);
    }
  });
});

// PsychroLib (ASHRAE Handbook Fundamentals 2017, chapter 1: Hyland and Wexler's saturation), a library of its own.
describe('beside PsychroLib', () => {
  const from = (low: number, high: number): readonly number[] =>
    Array.from({ length: Math.round(high - low) + 1 }, (_, i) => low + i);

  it('saturation differs by less than 0.025 % from 1 to 85 °C, and by 0.11 % at 100', () => {
    for (const temp_degC of from(1, 100)) {
      const off = Math.abs(saturation_Pa(temp_degC) / psychrolib.GetSatVapPres(temp_degC) - 1);
      // Buck gives his equation 0.05 % over the weather’s temperatures; heaps end at 80 °C.
      expect(off).toBeLessThan(temp_degC <= 85 ? 2.5e-4 : 1.2e-3);
    }
  });

  it('what one says is saturated at a temperature is for the other at one less than 0.03 K away, both ways', () => {
    for (const temp_degC of from(2, 95)) {
      expect(Math.abs(psychrolib.GetTDewPointFromVapPres(100, saturation_Pa(temp_degC)) - temp_degC)).toBeLessThan(
        0.03,
      );
      expect(Math.abs(dewPoint_degC(psychrolib.GetSatVapPres(temp_degC)) - temp_degC)).toBeLessThan(0.03);
    }
  });

  it('below 0 °C stays above it by what ice holds less than undercooled water', () => {
    // Ice over undercooled water: 0.953 at -5, 0.907 at -10, 0.823 at -20 °C (Smithsonian tables, recalled).
    for (const [temp_degC, ice_share] of [
      [-5, 0.953],
      [-10, 0.907],
      [-20, 0.823],
    ] as const) {
      expect(psychrolib.GetSatVapPres(temp_degC) / saturation_Pa(temp_degC)).toBeCloseTo(ice_share, 2);
    }
  });

  it('humidity, density and heat of saturated air differ by less than 0.3 % from 1 to 80 °C', () => {
    const { airHeat_JPerKgK, vapourAtZero_JPerKg, vapourHeat_JPerKgK } = twinParameters;
    for (const temp_degC of from(1, 80)) {
      const vapour_Pa = psychrolib.GetSatVapPres(temp_degC);
      const theirs = psychrolib.GetHumRatioFromVapPres(vapour_Pa, PRESSURE_Pa);
      expect(humidity_kgPerKg(vapour_Pa, PRESSURE_Pa) / theirs).toBeCloseTo(1, 3);
      const density = psychrolib.GetMoistAirDensity(temp_degC, theirs, PRESSURE_Pa);
      expect(humidAir_kgPerM3(temp_degC, vapour_Pa, PRESSURE_Pa) / density).toBeCloseTo(1, 3);
      // Vapour is heated with 1786 J/(kg K) here, so that evaporation is right at every temperature, and 1860 there.
      const heat_JPerKg =
        airHeat_JPerKgK.value * temp_degC + theirs * (vapourAtZero_JPerKg.value + vapourHeat_JPerKgK.value * temp_degC);
      expect(Math.abs(heat_JPerKg / psychrolib.GetMoistAirEnthalpy(temp_degC, theirs) - 1)).toBeLessThan(0.003);
    }
  });
});

/** Where Buck's saturation is so much, by halving. */
function dewPoint_degC(vapour_Pa: number): number {
  let low = -40;
  let high = 110;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (saturation_Pa(middle) < vapour_Pa) low = middle;
    else high = middle;
  }
  return low;
}
