import { z } from 'zod';
import { type Calculation, good } from '../catalogue/index.ts';
import type { CautionId } from '../caution/index.ts';
import { FRESH_OXYGEN_share, TWENTY_CELSIUS_K, ZERO_CELSIUS_K } from './constants.ts';
import { HOUR_S, twinParameters } from './parameters.ts';

export interface OxygenInHeapInput {
  readonly airSpace_pctVolume: number;
  readonly temp_degC: number;
  /** Oxygen taken up by a kilogram of volatile matter in an hour. */
  readonly uptake_gPerKgHour: number;
  readonly volatile_kgPerM3: number;
  /** Oxygen at the surface. */
  readonly surface_pctVolume?: number | undefined;
}

export interface OxygenInHeap {
  /** Diffusivity in the pores. */
  readonly diffusivity_m2PerS: number;
  /** Depth to which oxygen reaches by diffusion alone, from a flat surface. */
  readonly reaches_m: number;
  /** Radius of the largest ball that oxygen reaches to the middle of by diffusion alone. */
  readonly largestBall_m: number;
  readonly cautions: readonly CautionId[];
}

const output: z.ZodType<OxygenInHeap> = z.strictObject({
  diffusivity_m2PerS: z.number(),
  reaches_m: z.number(),
  largestBall_m: z.number(),
  cautions: z.array(z.enum(['local-rules'])),
});

const { at20_m2PerS, exponent } = twinParameters.oxygenDiffusivity;
const FRESH_pct = 100 * FRESH_OXYGEN_share;
/** Oxygen in a cubic metre of the pure gas at one atmosphere: 31.998 g/mol over R T/p. */
const OXYGEN_kgKPerM3 = (0.031_998 * 101_325) / 8.314_462_6;

/** How deep oxygen comes without a draught. */
export const oxygenInHeap: Calculation<OxygenInHeapInput, OxygenInHeap> = {
  id: 'oxygen-in-heap',
  title: 'How deep oxygen comes without a draught',
  summary:
    'By diffusion alone, against an uptake that does not slacken: the depth it reaches from a flat surface, and the largest ball it fills. A draught carries it much further; this is what is left when a heap is closed or soaked.',
  input: z.strictObject({
    airSpace_pctVolume: z.number().min(1).max(95),
    temp_degC: z.number().min(0).max(80),
    uptake_gPerKgHour: z
      .number()
      .min(0.001)
      .max(50)
      .meta({ description: 'g of oxygen per kg of volatile matter and hour.' }),
    volatile_kgPerM3: z.number().min(1).max(1000),
    surface_pctVolume: z
      .number()
      .min(0.1)
      .max(21)
      .optional()
      .meta({ description: 'Oxygen at the surface; 20.9 when left out.' }),
  }),
  output,
  sources: [
    { source: 'cornell-oxygen-diffusion', place: 'oxygen in the air of compost', mark: 'seen' },
    { source: 'cornell-inadequate-porosity', place: 'pores squared (Papendick and Campbell)', mark: 'seen' },
  ],
  cautions: ['local-rules'],
  example: { airSpace_pctVolume: 40, temp_degC: 50, uptake_gPerKgHour: 2, volatile_kgPerM3: 120 },
  run: ({ airSpace_pctVolume, temp_degC, uptake_gPerKgHour, volatile_kgPerM3, surface_pctVolume = FRESH_pct }) => {
    const temp_K = temp_degC + ZERO_CELSIUS_K;
    const diffusivity_m2PerS = (airSpace_pctVolume / 100) ** 2 * at20_m2PerS * (temp_K / TWENTY_CELSIUS_K) ** exponent;
    const surface_kgPerM3 = ((surface_pctVolume / 100) * OXYGEN_kgKPerM3) / temp_K;
    const uptake_kgPerM3S = (uptake_gPerKgHour * volatile_kgPerM3) / 1000 / HOUR_S;
    const squared_m2 = (diffusivity_m2PerS * surface_kgPerM3) / uptake_kgPerM3S;
    return good({
      diffusivity_m2PerS,
      reaches_m: Math.sqrt(2 * squared_m2),
      largestBall_m: Math.sqrt(6 * squared_m2),
      cautions: ['local-rules'],
    });
  },
};
