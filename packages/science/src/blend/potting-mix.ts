import { bad, type Calculation, good, type Outcome } from '../catalogue/index.ts';
import { inOrder } from '../caution/index.ts';
import {
  chance,
  type Draws,
  drawsOf,
  fraction,
  fromPublished,
  positive,
  shareOf,
  summarise,
} from '../estimate/index.ts';
import { type PartAmount, partAmount } from './amounts.ts';
import { compostCautions, compostConductivity_dSPerM, maturitySigns, type Ripeness, ripenessFor } from './compost.ts';
import { blendConductivity_dSPerM, blendPH, drained, type Shared, sharesOf } from './medium.ts';
import { blendParameters, type Parts, type RecipeId, rowOf } from './parameters.ts';
import { partDraws } from './part.ts';
import {
  type PottingAdviceId,
  type PottingMix,
  type PottingMixInput,
  pottingAdviceIds,
  pottingMixInputSchema,
  pottingMixSchema,
  type Wanted,
} from './potting-mix-io.ts';
import { blendSources } from './sources.ts';

const LITRES_PER_M3 = 1000;
const STEP_PCT = 5;
/** The draws below which a chance is worth an act. */
const LIKELY_ENOUGH = 0.5;

function wanted_m3(wanted: readonly Wanted[], draws: Draws): Float64Array {
  const all = wanted.map((one, i) => {
    const each =
      'vessel' in one
        ? drawsOf(
            draws,
            `${one.vessel}/volume_L`,
            fromPublished(rowOf(blendParameters.vessels, one.vessel).volume_L, positive),
            positive,
          )
        : drawsOf(draws, `wanted-${i}/volume_L`, one.each_L, positive);
    return each.map((litres) => (litres * one.count) / LITRES_PER_M3);
  });
  return Float64Array.from({ length: draws.count }, (_none, i) => all.reduce((sum, one) => sum + (one[i] ?? 0), 0));
}

/** The parts asked for. Problem: `two-recipes`. */
function partsAsked({ use, recipe, parts }: PottingMixInput): Outcome<{ parts: readonly Parts[]; recipe?: RecipeId }> {
  if (parts !== undefined) {
    if (recipe === undefined) return good({ parts });
    return bad({ code: 'two-recipes', path: 'parts', found: recipe, wanted: '' });
  }
  const id = recipe ?? rowOf(blendParameters.uses, use).recipe;
  return good({ parts: rowOf(blendParameters.recipes, id).parts, recipe: id });
}

/** Most compost, in steps of 5 %, that keeps salts under the limit; the other parts keep their proportions. */
function mostCompost(shared: readonly Shared[], compost: Shared['drawn'], most_dSPerM: number): number {
  const others = shared.filter(({ part }) => part !== 'compost');
  const rest = others.reduce((sum, { share }) => sum + share, 0);
  const under = (pct: number): boolean => {
    if (rest === 0 && pct < 100) return false;
    const mix = [
      { part: 'compost' as const, share: pct / 100, drawn: compost },
      ...others.map((one) => ({ ...one, share: (one.share / rest) * (1 - pct / 100) })),
    ];
    const held = chance(blendConductivity_dSPerM(mix), (value) => value <= most_dSPerM);
    return shareOf(held) >= blendParameters.surelyUnder_share.value;
  };
  let pct = 0;
  while (pct + STEP_PCT <= 100 && under(pct + STEP_PCT)) pct += STEP_PCT;
  return rest === 0 && under(100) ? 100 : pct;
}

function run(input: PottingMixInput, { draws }: { readonly draws: Draws }): Outcome<PottingMix> {
  const asked = partsAsked(input);
  if (!asked.ok) return asked;
  const known = input.compost ?? {};
  const use = rowOf(blendParameters.uses, input.use);
  const most_dSPerM = use.mostConductivity_dSPerM.value;
  const salts = compostConductivity_dSPerM(known);
  const shared: readonly Shared[] = sharesOf(asked.value.parts).map(({ part, share }) => ({
    part,
    share,
    drawn: partDraws(draws, part, part === 'compost' ? salts : undefined),
  }));
  const alone = shared.length === 1;
  const mixed_share = alone
    ? new Float64Array(draws.count).fill(1)
    : drawsOf(draws, 'blend/mixed_share', fromPublished(blendParameters.mixedVolume_share, fraction), fraction);
  const volume_m3 = wanted_m3(input.wanted, draws);
  const loose_m3 = volume_m3.map((volume, i) => volume / (mixed_share[i] ?? Number.NaN));
  const measure = input.measure ?? 'bucket-20l';
  const parts: PartAmount[] = [];
  for (const { part, share, drawn } of shared) {
    const amount = partAmount(
      {
        part,
        share,
        volume_m3: loose_m3.map((loose) => loose * share),
        density_kgPerM3AsIs: drawn.density_kgPerM3AsIs,
      },
      { draws, measure, ownSizes: input.ownSizes, onHand: input.onHand },
    );
    if (!amount.ok) return amount;
    parts.push(amount.value);
  }
  const conductivity = blendConductivity_dSPerM(shared);
  const under = chance(conductivity, (value) => value <= most_dSPerM);
  const compostShare = shared.find(({ part }) => part === 'compost')?.share ?? 0;
  const { low, high } = blendParameters.mostCompost_pctVolume;
  const pot = drained(shared, mixed_share);
  const airEnough = chance(pot.air_pctVolume, (pct) => pct >= blendParameters.leastAir_pctVolume.value);
  const signs = maturitySigns(known);
  const ripeness = ripenessFor(signs, use.needs);
  const stands = standingOf(100 * compostShare, low, high);
  const pH = blendPH(shared);
  const leach_L = loose_m3.map(
    (loose) => loose * compostShare * blendParameters.leaching_volumes.value * LITRES_PER_M3,
  );
  const hasCharcoal = shared.some(({ part }) => part === 'charcoal');
  return good({
    use: input.use,
    ...(asked.value.recipe !== undefined && { recipe: asked.value.recipe }),
    volume_m3: summarise(volume_m3),
    mixed_share: summarise(mixed_share),
    parts,
    salts: {
      conductivity_dSPerM: summarise(conductivity),
      most_dSPerM,
      under,
      measured: known.conductivity !== undefined,
      mostCompost_pctVolume: mostCompost(shared, partDraws(draws, 'compost', salts), most_dSPerM),
      leach_L: summarise(leach_L),
    },
    maturity: { ripeness, signs },
    compost: { share_pctVolume: 100 * compostShare, low_pctVolume: low, high_pctVolume: high, stands },
    ...(pH !== undefined && { pH }),
    wet: {
      mass_kg: summarise(volume_m3.map((volume, i) => volume * (pot.density_kgPerM3Wet[i] ?? Number.NaN))),
      density_kgPerM3: summarise(pot.density_kgPerM3Wet),
      waterHeld_pctVolume: summarise(pot.waterHeld_pctVolume),
      air_pctVolume: summarise(pot.air_pctVolume),
      leastAir_pctVolume: blendParameters.leastAir_pctVolume.value,
      airEnough,
    },
    advice: adviceOf({
      input,
      compostShare,
      ripeness,
      stands,
      salty: shareOf(under) < LIKELY_ENOUGH,
      airless: shareOf(airEnough) < LIKELY_ENOUGH,
      hasCharcoal,
    }),
    cautions: inOrder([
      ...(compostShare > 0 ? compostCautions(known) : (['legionella', 'dust-spores'] as const)),
      ...(hasCharcoal ? (['charcoal-dust'] as const) : []),
    ]),
  });
}

/** Shares that were put together of thirds must not fall on the wrong side of one third by a rounding. */
const HAIR_PCT = 1e-9;

function standingOf(share_pct: number, low: number, high: number): PottingMix['compost']['stands'] {
  if (share_pct === 0) return 'none';
  if (share_pct <= low + HAIR_PCT) return 'within';
  return share_pct <= high + HAIR_PCT ? 'upper' : 'over';
}

function adviceOf(of: {
  readonly input: PottingMixInput;
  readonly compostShare: number;
  readonly ripeness: Ripeness;
  readonly stands: PottingMix['compost']['stands'];
  readonly salty: boolean;
  readonly airless: boolean;
  readonly hasCharcoal: boolean;
}): readonly PottingAdviceId[] {
  const { input, compostShare, ripeness, stands, salty, airless, hasCharcoal } = of;
  const compost = compostShare > 0;
  const unproven = input.compost?.provenHot !== true;
  const when: Readonly<Record<PottingAdviceId, boolean>> = {
    'young-wait': compost && ripeness === 'young',
    'young-bigger-plants': compost && ripeness === 'for-bigger-plants',
    'unknown-test': compost && ripeness === 'unknown',
    'salty-dilute': compost && salty,
    'salty-leach': compost && salty,
    'use-leaf-mould': compost && (salty || ripeness === 'young' || ripeness === 'for-bigger-plants'),
    'much-compost': stands === 'over',
    'little-air': airless,
    'charge-charcoal': hasCharcoal,
    'feed-later': !compost,
    'raw-salads': compost && unproven && input.eatenRaw === true,
  };
  return pottingAdviceIds.filter((id) => when[id]);
}

export const pottingMix: Calculation<PottingMixInput, PottingMix> = {
  id: 'potting-mix',
  title: 'Potting and seed mixes',
  summary:
    'How much of each stuff fills so many pots or trays, by a published recipe or by parts of one’s own, in buckets, with what mixing takes off; whether the salts stay under what seedlings or grown plants bear, whether the compost is ripe enough, and how much air and water the pot keeps. A first estimate: sow a trial tray.',
  input: pottingMixInputSchema,
  output: pottingMixSchema,
  sources: blendSources.potting,
  cautions: inOrder(['legionella', 'dust-spores', 'manure-pathogens', 'herbicide-carryover', 'charcoal-dust']),
  example: {
    use: 'potting-on',
    wanted: [{ count: 20, each_L: 3 }],
    compost: { age_months: 14, smell: 'earthy', madeOf: 'manure-or-salty' },
  },
  run,
};
