import { z } from 'zod';
import { type Calculation, good } from '../catalogue/index.ts';
import type { CautionId } from '../caution/index.ts';
import { ammonium_pKa, unionised_share, waterOverGas_ratio } from './ammonia.ts';

export interface AmmoniaSplitInput {
  readonly pH: number;
  readonly temp_degC: number;
  /** Ammoniacal nitrogen in the water of the stuff. */
  readonly ammoniacalN_gPerL?: number | undefined;
}

export interface AmmoniaSplit {
  readonly ammonium_pKa: number;
  /** Of the ammoniacal nitrogen in the water, what is ammonia and can leave. */
  readonly ammonia_pctAmmoniacalN: number;
  /** Ammonia in water over that in as much gas above it. */
  readonly waterOverGas_ratio: number;
  /** In gas above pure water that holds so much; stuff holds it back, so there it is a tenth to a half. */
  readonly gasN_gPerM3?: number | undefined;
  readonly cautions: readonly CautionId[];
}

const output: z.ZodType<AmmoniaSplit> = z.strictObject({
  ammonium_pKa: z.number(),
  ammonia_pctAmmoniacalN: z.number(),
  waterOverGas_ratio: z.number(),
  gasN_gPerM3: z.number().optional(),
  cautions: z.array(z.enum(['ammonia'])),
});

const GRAMS_PER_M3_OF_GRAMS_PER_L = 1000;

/** How much of the ammonium can leave as ammonia. */
export const ammoniaSplit: Calculation<AmmoniaSplitInput, AmmoniaSplit> = {
  id: 'ammonia-split',
  title: 'How much ammonium is ammonia',
  summary:
    'By pH and temperature: the share of the ammoniacal nitrogen in water that is ammonia, and what lies above it as gas. The equation is stated for 0 to 50 °C; above that it is carried on, and the gas is within 30 %.',
  input: z.strictObject({
    pH: z.number().min(3).max(12),
    temp_degC: z.number().min(0).max(90),
    ammoniacalN_gPerL: z
      .number()
      .min(0)
      .max(200)
      .optional()
      .meta({ description: 'Ammoniacal nitrogen, g/L of water.' }),
  }),
  output,
  sources: [
    { source: 'emerson-1975', place: 'pKa = 0.09018 + 2729.92 / T', mark: 'seen' },
    { source: 'sander-2023', place: 'NH3', mark: 'seen' },
  ],
  cautions: ['ammonia'],
  example: { pH: 8.5, temp_degC: 55, ammoniacalN_gPerL: 3 },
  run: ({ pH, temp_degC, ammoniacalN_gPerL }) => {
    const share = unionised_share(pH, temp_degC);
    const ratio = waterOverGas_ratio(temp_degC);
    return good({
      ammonium_pKa: ammonium_pKa(temp_degC),
      ammonia_pctAmmoniacalN: 100 * share,
      waterOverGas_ratio: ratio,
      ...(ammoniacalN_gPerL === undefined
        ? {}
        : { gasN_gPerM3: (share * ammoniacalN_gPerL * GRAMS_PER_M3_OF_GRAMS_PER_L) / ratio }),
      cautions: ['ammonia'],
    });
  },
};
