import { type Draws, drawsOf, fromPublished, positive } from '../estimate/index.ts';
import { mixParameters } from './parameters.ts';
import type { Portion } from './portion.ts';

/** What a heap's carbon and nitrogen come to depends on two figures that are known as ranges. */
export interface Fate {
  /** Heat that each kg of carbon gives as it rots, MJ. */
  readonly heatPerCarbon_MJPerKg: number;
  /** C:N at which the compost ends. */
  readonly final_ratio: number;
}

/** The likely figures, for what must be decided on likely values. */
export const likelyFate: Fate = {
  heatPerCarbon_MJPerKg: mixParameters.heatPerCarbon_MJPerKg.typical,
  final_ratio: mixParameters.finalRatio.typical,
};

/** Where the compost ends rich in carbon and can hold least nitrogen: the worse end of the published range. */
export const worseFate: Fate = { ...likelyFate, final_ratio: mixParameters.finalRatio.high };

/** The figures draw by draw. */
export function fateDraws(draws: Draws): readonly Fate[] {
  const heat = drawsOf(
    draws,
    'heap/heatPerCarbon_MJPerKg',
    fromPublished(mixParameters.heatPerCarbon_MJPerKg, positive),
    positive,
  );
  const ratio = drawsOf(draws, 'heap/final_ratio', fromPublished(mixParameters.finalRatio, positive), positive);
  return Array.from(heat, (heatPerCarbon_MJPerKg, i) => ({
    heatPerCarbon_MJPerKg,
    final_ratio: ratio[i] ?? Number.NaN,
  }));
}

/** Heat that a portion gives if everything in it that rots in one composting does, MJ. */
export function heat_MJ({ degradableCarbon_kg }: Portion, { heatPerCarbon_MJPerKg }: Fate): number {
  return degradableCarbon_kg * heatPerCarbon_MJPerKg;
}

/**
 * Two balances of a portion's nitrogen, each above 0 where nitrogen is left over, kg; both are linear.
 * `early`: what is set free beyond what the microbes that feed on the rotting carbon take up, which is all
 * of it from 30 of available carbon to one of available nitrogen on (Washington State University, Compost
 * fundamentals). `late`: what the carbon that stays can't hold at the C:N at which compost ends (Cornell,
 * C/N Ratio: about 10).
 */
export function spareNitrogen_kg(
  { carbon_kg, degradableCarbon_kg, nitrogen_kg, availableNitrogen_kg }: Portion,
  { final_ratio }: Fate,
): { readonly early: number; readonly late: number } {
  return {
    early: availableNitrogen_kg - degradableCarbon_kg / mixParameters.availableRatio.value,
    late: nitrogen_kg - (carbon_kg - degradableCarbon_kg) / final_ratio,
  };
}

/**
 * Nitrogen that may leave a heap, mostly as ammonia, kg: the larger of the two balances. No forecast: turning,
 * rain, cover and pH decide how much of it goes.
 */
export function nitrogenAtRisk_kg(portion: Portion, fate: Fate): number {
  const { early, late } = spareNitrogen_kg(portion, fate);
  return Math.min(portion.nitrogen_kg, Math.max(0, early, late));
}
