import { type Draws, drawsOf, fraction, fromPublished, positive } from '../estimate/index.ts';
import { mixParameters } from '../mix/parameters.ts';
import type { Portion } from '../mix/portion.ts';
import { pailParameters } from './parameters.ts';

/** What is left in the end and how fast it gets there, in one draw. */
export interface Decay {
  readonly volumeEnd_share: number;
  readonly carbonEnd_share: number;
  readonly nitrogenEnd_share: number;
  readonly rate_perDay: number;
}

/** What is left of a layer. */
export interface Left {
  readonly volume_share: number;
  readonly carbon_share: number;
  readonly nitrogen_share: number;
}

/** The decay of a fed bin, draw by draw; sources in `reference/pail.json`, decay. */
export function decayDraws(draws: Draws): readonly Decay[] {
  const { decay } = pailParameters;
  const share = (id: 'volumeEnd_share' | 'carbonEnd_share' | 'nitrogenEnd_share'): Float64Array =>
    drawsOf(draws, `fed-bin/${id}`, fromPublished(decay[id], fraction), fraction);
  const volumeEnd = share('volumeEnd_share');
  const carbonEnd = share('carbonEnd_share');
  const nitrogenEnd = share('nitrogenEnd_share');
  const rate = drawsOf(draws, 'fed-bin/rate_perDay', fromPublished(decay.rate_perDay, positive), positive);
  return Array.from(rate, (rate_perDay, i) => ({
    volumeEnd_share: volumeEnd[i] ?? Number.NaN,
    carbonEnd_share: carbonEnd[i] ?? Number.NaN,
    nitrogenEnd_share: nitrogenEnd[i] ?? Number.NaN,
    rate_perDay,
  }));
}

/** Share left of something of which `end_share` stays and the rest goes at a steady rate: e + (1 − e) exp(−k t). */
export function shareLeft(end_share: number, rate_perDay: number, age_days: number): number {
  return end_share + (1 - end_share) * Math.exp(-rate_perDay * age_days);
}

/**
 * What is left of a layer after so many days above freezing. No more carbon goes than the stuff can lose in one
 * composting (its degradable share), and nitrogen goes in step with the carbon: wood loses neither as scraps do. Nor
 * does woody stuff sink faster than its carbon goes.
 */
export function leftOf(portion: Portion, age_days: number, decay: Decay): Left {
  const { volumeEnd_share, carbonEnd_share, nitrogenEnd_share, rate_perDay } = decay;
  const stays_share = portion.carbon_kg > 0 ? 1 - portion.degradableCarbon_kg / portion.carbon_kg : 1;
  const carbonStays_share = Math.max(carbonEnd_share, stays_share);
  const step = (1 - carbonStays_share) / (1 - carbonEnd_share);
  const isWoody = 1 - stays_share < mixParameters.woodyBelow_share.value;
  const volumeStays_share = isWoody ? 1 - (1 - volumeEnd_share) * step : volumeEnd_share;
  const nitrogenStays_share = 1 - (1 - nitrogenEnd_share) * step;
  return {
    volume_share: shareLeft(volumeStays_share, rate_perDay, age_days),
    carbon_share: shareLeft(carbonStays_share, rate_perDay, age_days),
    nitrogen_share: shareLeft(nitrogenStays_share, rate_perDay, age_days),
  };
}

/**
 * A portion of which part has gone: volatile solids go as their carbon does, ash, phosphorus and potassium stay, and
 * what is left is taken to be as moist as it went in.
 */
export function rotted(portion: Portion, left: Left): Portion {
  const volatileSolids_kg = portion.volatileSolids_kg * left.carbon_share;
  const carbon_kg = portion.carbon_kg * left.carbon_share;
  const dry_kg = portion.dry_kg - portion.volatileSolids_kg + volatileSolids_kg;
  const nitrogen_kg = portion.nitrogen_kg * left.nitrogen_share;
  return {
    ...portion,
    wet_kg: portion.dry_kg > 0 ? (portion.wet_kg * dry_kg) / portion.dry_kg : portion.wet_kg,
    dry_kg,
    volatileSolids_kg,
    carbon_kg,
    degradableCarbon_kg: Math.max(0, portion.degradableCarbon_kg - (portion.carbon_kg - carbon_kg)),
    nitrogen_kg,
    availableNitrogen_kg: Math.max(0, portion.availableNitrogen_kg - (portion.nitrogen_kg - nitrogen_kg)),
    volume_m3: portion.volume_m3 * left.volume_share,
  };
}
