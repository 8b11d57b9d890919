import { z } from 'zod';
import { bad, type Calculation, good } from '../catalogue/index.ts';
import type { CautionId } from '../caution/index.ts';
import { type Estimate, estimateSchema, fromPublished, positive } from '../estimate/index.ts';
import { FRESH_OXYGEN_kgPerKg } from './constants.ts';
import { humidity_kgPerKg, saturation_Pa } from './moist-air.ts';
import { twinParameters } from './parameters.ts';

export interface HeatBalanceInput {
  /** Volatile matter that has rotted. */
  readonly rotted_kg: number;
  /** Of what it was: carbohydrate, as most of what rots in a heap is, or the heap's fast pool, or lignin. */
  readonly stuff?: 'fast' | 'hemicellulose' | 'cellulose' | 'lignin' | undefined;
  /** Air as it goes in, and as it leaves, saturated. */
  readonly in_degC: number;
  readonly inHumidity_share?: number | undefined;
  readonly out_degC: number;
}

export interface HeatBalance {
  readonly heat_MJ: Estimate;
  readonly oxygen_kg: number;
  readonly waterFormed_kg: number;
  readonly carbonDioxide_kg: number;
  /** What a kilogram of dry air carries off. */
  readonly carried_kJPerKg: number;
  readonly latent_share: number;
  /** Air that would carry off all of it, and how many times what the rotting needs to breathe that is. */
  readonly air_kg: Estimate;
  readonly timesBreathed: Estimate;
  /** Water that this air would take with it, formed water counted off. */
  readonly waterTaken_kg: Estimate;
  readonly cautions: readonly CautionId[];
}

const output: z.ZodType<HeatBalance> = z.strictObject({
  heat_MJ: estimateSchema('Heat set free, MJ.'),
  oxygen_kg: z.number(),
  waterFormed_kg: z.number(),
  carbonDioxide_kg: z.number(),
  carried_kJPerKg: z.number(),
  latent_share: z.number(),
  air_kg: estimateSchema('Dry air that would carry all of it off, kg.'),
  timesBreathed: estimateSchema('That air over what the rotting breathes.'),
  waterTaken_kg: estimateSchema('Water lost with that air, less what was formed, kg.'),
  cautions: z.array(z.enum(['fire', 'local-rules'])),
});

const PRESSURE_Pa = twinParameters.airPressure_Pa.value;
const AIR_kJPerKgK = twinParameters.airHeat_JPerKgK.value / 1000;
const VAPOUR_kJPerKg = twinParameters.vapourAtZero_JPerKg.value / 1000;
const VAPOUR_kJPerKgK = twinParameters.vapourHeat_JPerKgK.value / 1000;
const CO2_PER_CARBON = 44.01 / 12.011;
const USUAL_HUMIDITY = 0.6;
const perOxygen_MJPerKg = fromPublished(twinParameters.heat_MJPerKgOxygen, positive);

function times(estimate: Estimate, by: number, plus = 0): Estimate {
  return { p10: estimate.p10 * by + plus, p50: estimate.p50 * by + plus, p90: estimate.p90 * by + plus };
}

/** What rotting sets free and what carries it off. */
export const heatBalance: Calculation<HeatBalanceInput, HeatBalance> = {
  id: 'heat-balance',
  title: 'What rotting sets free, and what carries it off',
  summary:
    'Heat, water and carbon dioxide of so much rotted stuff, the oxygen it took, and how much air leaving warm and saturated would carry the heat off. Cooling takes many times the air that breathing takes, and dries the heap.',
  input: z.strictObject({
    rotted_kg: z.number().min(0.001).max(1e6).meta({ description: 'Volatile matter rotted, kg.' }),
    stuff: z
      .enum(['fast', 'hemicellulose', 'cellulose', 'lignin'])
      .optional()
      .meta({ description: 'Cellulose when left out.' }),
    in_degC: z.number().min(-40).max(60),
    inHumidity_share: z
      .number()
      .min(0)
      .max(1)
      .optional()
      .meta({ description: 'Relative humidity; 0.6 when left out.' }),
    out_degC: z.number().min(-20).max(90),
  }),
  output,
  sources: [
    { source: 'haug-1993', place: 'oxidation of empirical formulas', mark: 'memory' },
    { source: 'scott-djurisic-2008', place: 'heat per oxygen', mark: 'derived' },
    { source: 'buck-1981', place: 'saturation pressure', mark: 'memory' },
  ],
  cautions: ['fire', 'local-rules'],
  example: { rotted_kg: 1, in_degC: 15, out_degC: 60 },
  run: ({ rotted_kg, stuff = 'cellulose', in_degC, inHumidity_share = USUAL_HUMIDITY, out_degC }) => {
    const inHumidity = humidity_kgPerKg(inHumidity_share * saturation_Pa(in_degC), PRESSURE_Pa);
    const outHumidity = humidity_kgPerKg(saturation_Pa(out_degC), PRESSURE_Pa);
    const enthalpy = (temp_degC: number, humidity: number): number =>
      AIR_kJPerKgK * temp_degC + humidity * (VAPOUR_kJPerKg + VAPOUR_kJPerKgK * temp_degC);
    const carried_kJPerKg = enthalpy(out_degC, outHumidity) - enthalpy(in_degC, inHumidity);
    if (carried_kJPerKg <= 0) {
      return bad({ code: 'too-small', path: 'out_degC', found: String(out_degC), wanted: `> ${in_degC}` });
    }
    const pool = twinParameters.pools[stuff];
    const oxygen_kg = pool.oxygen_kgPerKg * rotted_kg;
    const heat_MJ = times(perOxygen_MJPerKg, oxygen_kg);
    const air_kg = times(heat_MJ, 1000 / carried_kJPerKg);
    const waterFormed_kg = pool.water_kgPerKg * rotted_kg;
    return good({
      heat_MJ,
      oxygen_kg,
      waterFormed_kg,
      carbonDioxide_kg: pool.carbon_kgPerKg * CO2_PER_CARBON * rotted_kg,
      carried_kJPerKg,
      latent_share: ((outHumidity - inHumidity) * VAPOUR_kJPerKg) / carried_kJPerKg,
      air_kg,
      timesBreathed: times(air_kg, FRESH_OXYGEN_kgPerKg / oxygen_kg),
      waterTaken_kg: times(air_kg, outHumidity - inHumidity, -waterFormed_kg),
      cautions: ['fire', 'local-rules'],
    });
  },
};
