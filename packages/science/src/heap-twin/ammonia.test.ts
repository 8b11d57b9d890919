import { describe, expect, it } from 'vitest';
import { createDraws } from '../estimate/index.ts';
import { ammoniumAt, placeOf, waterOverGasAt } from './air-table.ts';
import { ammonium_pKa, unionised_share, waterOverGas_ratio } from './ammonia.ts';
import { type AmmoniaSplitInput, ammoniaSplit } from './ammonia-split.ts';
import { twinParameters } from './parameters.ts';

const needs = { draws: createDraws() } as Parameters<typeof ammoniaSplit.run>[1];

function split(input: AmmoniaSplitInput) {
  const outcome = ammoniaSplit.run(input, needs);
  if (!outcome.ok) throw new Error('no answer');
  return outcome.value;
}

describe('ammonia in water', () => {
  // Emerson, Russo, Lund and Thurston 1975, the table as reprinted (simplydiscus.com, read): pH 7.0, 6 to 32 °C.
  // Printed to four places, so ±0.00005, and 0.00001 for the table's own rounding of pKa.
  it.each([
    [6, 0.0013],
    [8, 0.0016],
    [10, 0.0018],
    [12, 0.0022],
    [14, 0.0025],
    [16, 0.0029],
    [18, 0.0034],
    [20, 0.0039],
    [22, 0.0046],
    [24, 0.0052],
    [26, 0.006],
    [28, 0.0069],
    [30, 0.008],
  ])('at pH 7 and %d °C is the share of the table', (temp_degC, printed) => {
    expect(Math.abs(unionised_share(7, temp_degC) - printed)).toBeLessThan(0.6e-4);
  });

  it('at 32 °C is 2 % below the last row of that table, which leaves its own equation there', () => {
    expect(unionised_share(7, 32) / 0.0093).toBeCloseTo(0.98, 2);
  });

  // The same table at pH 8; and Trussell 1972 (read), an equation of its own: within 2.5 % of Emerson's.
  it.each([
    [8, 24, 0.0502, 0.005],
    [8, 20, 0.0383, 0.025],
    [8.5, 20, 0.1118, 0.025],
    [8, 25, 0.0528, 0.025],
    [8.5, 25, 0.1497, 0.025],
  ])('at pH %d and %d °C is the share of other tables', (pH, temp_degC, printed, within) => {
    expect(Math.abs(unionised_share(pH, temp_degC) / printed - 1)).toBeLessThan(within);
  });
});

/**
 * °C; pKa (Emerson et al. 1975); % un-ionised at pH 6.0 to 9.5 by halves; Henry's constant, mol/(m³ Pa), and ammonia in
 * water over gas (Sander 2023): the equations read, the values worked out apart from this project's code.
 */
const table = [
  [5, 9.9047, 0.012, 0.039, 0.124, 0.392, 1.23, 3.789, 11.074, 28.253, 1.6246, 3757.2],
  [10, 9.7314, 0.019, 0.059, 0.185, 0.583, 1.822, 5.544, 15.654, 36.984, 1.2444, 2929.5],
  [15, 9.5641, 0.027, 0.086, 0.272, 0.855, 2.656, 7.942, 21.434, 46.315, 0.962, 2304.7],
  [20, 9.4025, 0.04, 0.125, 0.394, 1.236, 3.807, 11.123, 28.355, 55.586, 0.7502, 1828.6],
  [25, 9.2464, 0.057, 0.179, 0.564, 1.762, 5.366, 15.205, 36.186, 64.198, 0.59, 1462.6],
  [30, 9.0954, 0.08, 0.253, 0.796, 2.476, 7.432, 20.248, 44.533, 71.742, 0.4677, 1178.8],
  [35, 8.9492, 0.112, 0.354, 1.111, 3.432, 10.104, 26.223, 52.919, 78.043, 0.3735, 957.0],
  [40, 8.8078, 0.155, 0.49, 1.533, 4.692, 13.47, 32.988, 60.887, 83.116, 0.3005, 782.3],
  [45, 8.6708, 0.213, 0.67, 2.09, 6.322, 17.588, 40.293, 68.093, 87.094, 0.2434, 643.8],
  [50, 8.538, 0.289, 0.908, 2.816, 8.393, 22.464, 47.813, 74.341, 90.159, 0.1984, 533.1],
  [55, 8.4093, 0.388, 1.217, 3.751, 10.971, 28.041, 55.202, 79.578, 92.494, 0.1628, 444.1],
  [60, 8.2844, 0.517, 1.616, 4.938, 14.109, 34.187, 62.16, 83.857, 94.262, 0.1343, 372.0],
  [65, 8.1633, 0.682, 2.125, 6.425, 17.839, 40.71, 68.467, 87.287, 95.597, 0.1115, 313.4],
  [70, 8.0457, 0.892, 2.768, 8.259, 22.159, 47.375, 74.004, 90.002, 96.606, 0.093, 265.4],
] as const;

describe('ammonium, ammonia and gas', () => {
  it.each(table)('at %d °C are as worked out elsewhere', (temp_degC, pKa, ...rest) => {
    expect(Math.abs(ammonium_pKa(temp_degC) - pKa)).toBeLessThan(1e-4);
    const shares = rest.slice(0, 8);
    shares.forEach((printed_pct, i) => {
      const found_pct = split({ pH: 6 + i / 2, temp_degC }).ammonia_pctAmmoniacalN;
      // Three places after the point, and 1 in 1000 for the pKa's own rounding.
      expect(Math.abs(found_pct - printed_pct)).toBeLessThan(5e-4 + 1e-3 * printed_pct);
    });
    const [hcp, overGas] = rest.slice(8) as [number, number];
    const { at25_molPerM3Pa, slope_K } = twinParameters.henry;
    const ours = at25_molPerM3Pa * Math.exp(slope_K * (1 / (temp_degC + 273.15) - 1 / 298.15));
    expect(Math.abs(ours - hcp)).toBeLessThan(1e-4);
    // One place after the point; the gas constant there may have had four digits.
    expect(Math.abs(waterOverGas_ratio(temp_degC) / overGas - 1)).toBeLessThan(5e-4);
  });

  // Hales and Drewes 1979 and Clegg and Brimblecombe 1989 at 25 °C: 1846 and 1486 against Sander's 1463.
  it('lie between the published constants at 25 °C, nearest to the lowest', () => {
    expect(waterOverGas_ratio(25)).toBeGreaterThan(1450);
    expect(waterOverGas_ratio(25)).toBeLessThan(1486);
  });

  it('give a heap of 250 kg of water with 3 g/L, pH 8.5 and 55 °C, the ammonia that was worked out by hand', () => {
    const found = split({ pH: 8.5, temp_degC: 55, ammoniacalN_gPerL: 3 });
    expect(found.ammonia_pctAmmoniacalN).toBeCloseTo(55.2, 1);
    expect(found.gasN_gPerM3).toBeCloseTo(3.73, 2);
    // 1 m³/h of gas carries off so much of the 750 g in a day.
    expect((100 * 24 * (found.gasN_gPerM3 ?? Number.NaN)) / 750).toBeCloseTo(11.9, 1);
  });

  it('stand in the tables that the model reads to 1 in 10,000 from 0 °C on', () => {
    for (let temp_degC = 0; temp_degC < 110; temp_degC += 0.37) {
      const place = placeOf(temp_degC);
      expect(Math.abs(ammoniumAt(place) / 10 ** ammonium_pKa(temp_degC) - 1)).toBeLessThan(1e-4);
      expect(Math.abs(waterOverGasAt(place) / waterOverGas_ratio(temp_degC) - 1)).toBeLessThan(1e-4);
    }
  });
});
