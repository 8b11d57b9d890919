import { z } from 'zod';
import { bad, type Calculation, good, type Outcome } from '../catalogue/index.ts';
import { type CautionId, cautionIds, inOrder } from '../caution/index.ts';
import { ratings } from '../curing/maturity-parameters.ts';
import {
  between,
  type Chance,
  chance,
  chanceSchema,
  type Draws,
  drawsOf,
  type Estimate,
  estimateSchema,
  fraction,
  fromPublished,
  positive,
  positiveQuantity,
  type Quantity,
  shareOf,
  summarise,
} from '../estimate/index.ts';
import type { OwnSizes } from '../material/index.ts';
import { type OnHand, onHandSchema, type PartAmount, partAmount, partAmountSchema } from './amounts.ts';
import {
  type CompostKnown,
  compostCautions,
  compostConductivity_dSPerM,
  compostSchema,
  type MaturitySign,
  maturitySigns,
  type Ripeness,
  ripenessFor,
  ripenessIds,
} from './compost.ts';
import { type BlendPH, blendConductivity_dSPerM, blendPH, drained, type Shared, sharesOf } from './medium.ts';
import {
  blendParameters,
  type Parts,
  partIds,
  type RecipeId,
  recipeIds,
  rowOf,
  type UseId,
  useIds,
  type VesselId,
  vesselIds,
} from './parameters.ts';
import { partDraws } from './part.ts';
import { blendSources } from './sources.ts';

/** So many pots or trays, by what one holds or by their kind. */
export type Wanted =
  | { readonly count: number; readonly each_L: Quantity }
  | { readonly count: number; readonly vessel: VesselId };

export interface PottingMixInput {
  readonly use: UseId;
  readonly wanted: readonly Wanted[];
  readonly compost?: CompostKnown | undefined;
  /** A published recipe; else parts of one's own; else the usual recipe for the use. */
  readonly recipe?: RecipeId | undefined;
  readonly parts?: readonly Parts[] | undefined;
  readonly onHand?: readonly OnHand[] | undefined;
  readonly measure?: string | undefined;
  readonly ownSizes?: OwnSizes | undefined;
  /** Whether what grows in it is eaten raw. */
  readonly eatenRaw?: boolean | undefined;
}

/** What to do or to mind; the message `blend.advice.ID`. */
export const pottingAdviceIds = [
  'young-wait',
  'young-bigger-plants',
  'unknown-test',
  'salty-dilute',
  'salty-leach',
  'use-leaf-mould',
  'much-compost',
  'little-air',
  'charge-charcoal',
  'feed-later',
  'raw-salads',
] as const;
export type PottingAdviceId = (typeof pottingAdviceIds)[number];

export interface PottingMix {
  readonly use: UseId;
  /** Absent with parts of one's own. */
  readonly recipe?: RecipeId | undefined;
  /** Mix that the pots and trays take, m³. */
  readonly volume_m3: Estimate;
  /** Of the summed loose volumes, what is left once mixed and watered; 1 for one stuff alone. */
  readonly mixed_share: Estimate;
  readonly parts: readonly PartAmount[];
  readonly salts: {
    /** As of a saturated extract. */
    readonly conductivity_dSPerM: Estimate;
    readonly most_dSPerM: number;
    readonly under: Chance;
    readonly measured: boolean;
    /** The most compost with which salts stay under the limit nine times in ten, the other parts keeping their proportions. */
    readonly mostCompost_pctVolume: number;
    /** Water that would wash the salts out of the compost asked for, litres. */
    readonly leach_L: Estimate;
  };
  readonly maturity: { readonly ripeness: Ripeness; readonly signs: readonly MaturitySign[] };
  readonly compost: {
    readonly share_pctVolume: number;
    /** From the one to the other handbooks stop. */
    readonly low_pctVolume: number;
    readonly high_pctVolume: number;
    readonly stands: 'none' | 'within' | 'upper' | 'over';
  };
  readonly pH?: BlendPH | undefined;
  readonly wet: {
    readonly mass_kg: Estimate;
    readonly density_kgPerM3: Estimate;
    readonly waterHeld_pctVolume: Estimate;
    readonly air_pctVolume: Estimate;
    readonly leastAir_pctVolume: number;
    readonly airEnough: Chance;
  };
  readonly advice: readonly PottingAdviceId[];
  readonly cautions: readonly CautionId[];
}

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

const MOST_VESSELS = 10_000;
const LARGEST_VESSEL_L = 10_000;
const count = z.number().positive().max(MOST_VESSELS);

const inputSchema: z.ZodType<PottingMixInput> = z.strictObject({
  use: z.enum(useIds),
  wanted: z
    .array(
      z.union([
        z.strictObject({
          count,
          each_L: between(positiveQuantity('What one pot holds, litres.'), 0.01, LARGEST_VESSEL_L),
        }),
        z.strictObject({ count, vessel: z.enum(vesselIds) }),
      ]),
    )
    .min(1)
    .max(20),
  compost: compostSchema.optional(),
  recipe: z.enum(recipeIds).optional(),
  parts: z
    .array(z.strictObject({ part: z.enum(partIds), parts: z.number().min(0.01).max(1000) }))
    .min(1)
    .max(partIds.length * 2)
    .optional(),
  onHand: onHandSchema.optional(),
  measure: z.string().min(1).optional(),
  ownSizes: z.record(z.string(), between(positiveQuantity('Litres.'), 0.001, 1e6)).optional(),
  eatenRaw: z.boolean().optional(),
});

const cautionSchema = z.array(z.enum(cautionIds as readonly [CautionId, ...CautionId[]]));

const outputSchema: z.ZodType<PottingMix> = z.strictObject({
  use: z.enum(useIds),
  recipe: z.enum(recipeIds).optional(),
  volume_m3: estimateSchema('Mix that the pots take, m³.'),
  mixed_share: estimateSchema('Of the summed loose volumes, what is left once mixed.'),
  parts: z.array(partAmountSchema),
  salts: z.strictObject({
    conductivity_dSPerM: estimateSchema('As of a saturated extract, dS/m.'),
    most_dSPerM: z.number(),
    under: chanceSchema,
    measured: z.boolean(),
    mostCompost_pctVolume: z.number(),
    leach_L: estimateSchema('Water to wash the compost with, litres.'),
  }),
  maturity: z.strictObject({
    ripeness: z.enum(ripenessIds),
    signs: z.array(
      z.strictObject({
        sign: z.enum(['self-heating', 'seedlings', 'smell', 'age']),
        says: z.enum(ratings),
      }),
    ),
  }),
  compost: z.strictObject({
    share_pctVolume: z.number(),
    low_pctVolume: z.number(),
    high_pctVolume: z.number(),
    stands: z.enum(['none', 'within', 'upper', 'over']),
  }),
  pH: z
    .strictObject({
      low: z.number(),
      high: z.number(),
      wanted: z.strictObject({ id: z.enum(['with-soil', 'without-soil']), low: z.number(), high: z.number() }),
      leans: z.enum(['acid', 'right', 'alkaline']),
    })
    .optional(),
  wet: z.strictObject({
    mass_kg: estimateSchema('All of it, watered and drained, kg.'),
    density_kgPerM3: estimateSchema('Watered and drained, kg/m³.'),
    waterHeld_pctVolume: estimateSchema('Water held once drained, % of volume.'),
    air_pctVolume: estimateSchema('Air once drained, % of volume.'),
    leastAir_pctVolume: z.number(),
    airEnough: chanceSchema,
  }),
  advice: z.array(z.enum(pottingAdviceIds)),
  cautions: cautionSchema,
});

export const pottingMix: Calculation<PottingMixInput, PottingMix> = {
  id: 'potting-mix',
  title: 'Potting and seed mixes',
  summary:
    'How much of each stuff fills so many pots or trays, by a published recipe or by parts of one’s own, in buckets, with what mixing takes off; whether the salts stay under what seedlings or grown plants bear, whether the compost is ripe enough, and how much air and water the pot keeps. A first estimate: sow a trial tray.',
  input: inputSchema,
  output: outputSchema,
  sources: blendSources.potting,
  cautions: inOrder(['legionella', 'dust-spores', 'manure-pathogens', 'herbicide-carryover', 'charcoal-dust']),
  example: {
    use: 'potting-on',
    wanted: [{ count: 20, each_L: 3 }],
    compost: { age_months: 14, smell: 'earthy', madeOf: 'manure-or-salty' },
  },
  run,
};
