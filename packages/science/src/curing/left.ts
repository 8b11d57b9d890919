import { bad, good, type Outcome, type Problem } from '../catalogue/index.ts';
import {
  type Draws,
  drawsOf,
  fromPublished,
  likely,
  percent,
  positive,
  type Quantity,
  summarise,
} from '../estimate/index.ts';
import { fateDraws, likelyFate, nitrogenAtRisk_kg } from '../mix/fate.ts';
import { weighMix } from '../mix/mix-input.ts';
import { materialRules } from '../mix/parameters.ts';
import { type Portion, portionMoisture_pctWet } from '../mix/portion.ts';
import { ripeDry_kg } from '../mix/salts.ts';
import type { Left } from './believed.ts';
import { readyCompost, readyVolume_m3 } from './ready-volume.ts';
import type { YieldInput } from './yield-io.ts';
import { yieldParameters } from './yield-parameters.ts';

/** What of a heap is left when it is ready, draw by draw. Problems: those of weighing its stuff; `out-of-bounds` of an ash that cannot be. */
export function heapLeft(input: YieldInput, draws: Draws): Outcome<Left> {
  const compost = readyCompost(input, draws);
  if (!compost.ok) return compost;
  return input.ingredients === undefined
    ? fromVolume(input, compost.value, draws)
    : fromMix(input, compost.value, draws);
}

/** Nothing is known but the volume: published shrinking, and composts of a laboratory. */
function fromVolume(input: YieldInput, compost: readonly Portion[], draws: Draws): Outcome<Left> {
  const built_m3 = drawsOf(draws, 'heap/built_m3', input.built_m3 ?? Number.NaN, positive);
  const lost = drawsOf(
    draws,
    'heap/volumeLost_pctVolume',
    fromPublished(yieldParameters.volumeLost_pctVolume, percent),
    percent,
  );
  const volume_m3 = built_m3.map((one, i) => one * (1 - (lost[i] ?? Number.NaN) / 100));
  const each = (of: (portion: Portion) => number): Float64Array =>
    Float64Array.from(compost, (portion, i) => of(portion) * (volume_m3[i] ?? Number.NaN));
  return good({
    basis: 'volume',
    notes: ['not-listed'],
    built_m3,
    volume_m3,
    moisture_pctWet: Float64Array.from(compost, (portion) => portionMoisture_pctWet(portion) ?? Number.NaN),
    wet_kg: each(({ wet_kg }) => wet_kg),
    dry_kg: each(({ dry_kg }) => dry_kg),
    nitrogen_kg: each(({ nitrogen_kg }) => nitrogen_kg),
    phosphorus_kg: each(({ phosphorus_kg }) => phosphorus_kg),
    potassium_kg: each(({ potassium_kg }) => potassium_kg),
  });
}

/** The mix is known: ash, phosphorus and what does not rot stay; carbon, nitrogen and some potassium go. */
function fromMix(input: YieldInput, compost: readonly Portion[], draws: Draws): Outcome<Left> {
  const { ingredients = [], water_L, ownSizes, readyAsh_pctDry, shelter = 'unknown' } = input;
  const mix = weighMix({ ingredients, water_L, ownSizes }, draws);
  if (!mix.ok) return mix;
  const before = mix.value.total;
  const ash = readyAsh_pctDry === undefined ? undefined : drawsOf(draws, 'ready/ash_pctDry', readyAsh_pctDry, percent);
  const problem = readyAsh_pctDry === undefined ? undefined : ashProblem(before, readyAsh_pctDry);
  if (problem !== undefined) return bad(problem);
  const dry_kg = Float64Array.from(before, (portion, i) => dryLeft_kg(portion, ash?.[i]));
  const shares = Float64Array.from(compost, ({ wet_kg, dry_kg: dry }) => dry / wet_kg);
  const wet_kg = dry_kg.map((one, i) => one / (shares[i] ?? Number.NaN));
  const { volatileSolidsPerCarbon_ratio: perCarbon } = materialRules.carbonFromVolatileSolids;
  const carbon_kg = Float64Array.from(before, (portion, i) =>
    Math.max(0, portion.carbon_kg - (portion.dry_kg - (dry_kg[i] ?? Number.NaN)) / perCarbon),
  );
  const { nitrogenLeast_pct, potassiumLost_pct } = yieldParameters;
  const least = drawsOf(draws, 'heap/nitrogenLeast_pct', fromPublished(nitrogenLeast_pct, percent), percent);
  const washed = drawsOf(draws, 'heap/potassiumLost_pct', fromPublished(potassiumLost_pct[shelter], percent), percent);
  const fates = fateDraws(draws);
  const built_m3 =
    input.built_m3 === undefined
      ? Float64Array.from(before, ({ volume_m3 }, i) => volume_m3 * (mix.value.packing_share[i] ?? Number.NaN))
      : drawsOf(draws, 'heap/built_m3', input.built_m3, positive);
  return good({
    basis: ash === undefined ? 'rotting' : 'ash',
    notes: ash !== undefined && isGritty(before, dry_kg) ? ['grit'] : [],
    built_m3,
    volume_m3: readyVolume_m3({ dry_kg, built_m3, compost }),
    moisture_pctWet: shares.map((share) => 100 * (1 - share)),
    wet_kg,
    dry_kg,
    nitrogen_kg: Float64Array.from(before, (portion, i) => {
      const leaving_kg = ((least[i] ?? Number.NaN) / 100) * portion.nitrogen_kg;
      return portion.nitrogen_kg - Math.max(leaving_kg, nitrogenAtRisk_kg(portion, fates[i] ?? likelyFate));
    }),
    phosphorus_kg: Float64Array.from(before, ({ phosphorus_kg }) => phosphorus_kg),
    potassium_kg: Float64Array.from(
      before,
      ({ potassium_kg }, i) => potassium_kg * (1 - (washed[i] ?? Number.NaN) / 100),
    ),
    carbon_kg,
    before,
  });
}

const ash_kg = ({ dry_kg, volatileSolids_kg }: Portion): number => dry_kg - volatileSolids_kg;

/**
 * Ash stays: dry mass out = dry mass in × ash in / ash out, both percent of dry mass, and never more than went in. Without the ash
 * of the compost, everything has rotted that does in one composting.
 */
export function dryLeft_kg(before: Portion, readyAsh_pctDry: number | undefined): number {
  if (readyAsh_pctDry === undefined) return ripeDry_kg(before);
  return Math.min(before.dry_kg, (100 * ash_kg(before)) / readyAsh_pctDry);
}

function ashProblem(before: readonly Portion[], readyAsh_pctDry: Quantity): Problem | undefined {
  const at_pct = summarise(before.map((portion) => (100 * ash_kg(portion)) / portion.dry_kg)).p50;
  if (likely(readyAsh_pctDry) > at_pct) return undefined;
  const wanted = `more than ${at_pct.toFixed(0)}`;
  return { code: 'out-of-bounds', path: 'readyAsh_pctDry', found: String(likely(readyAsh_pctDry)), wanted };
}

function isGritty(before: readonly Portion[], dry_kg: Float64Array): boolean {
  return summarise(dry_kg).p50 < yieldParameters.grit_share.value * summarise(before.map(ripeDry_kg)).p50;
}
