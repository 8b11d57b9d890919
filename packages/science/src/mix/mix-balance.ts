import { z } from 'zod';
import { type Calculation, good, type Outcome } from '../catalogue/index.ts';
import { type CautionId, inOrder } from '../caution/index.ts';
import { readyCompost, readyVolume_m3 } from '../curing/ready-volume.ts';
import { type Draws, type Estimate, estimateSchema, summarise } from '../estimate/index.ts';
import { bandTable, type Judged, judge, judgedSchema } from './bands.ts';
import { fateDraws, heat_MJ, likelyFate, nitrogenAtRisk_kg } from './fate.ts';
import { demanded } from './fire.ts';
import { heightInBay_m } from './geometry.ts';
import { type Permitted, permittedShape } from './ingredient.ts';
import {
  type Bay,
  baySchema,
  type Goals,
  goalsSchema,
  type MixInput,
  mixShape,
  type WeighedMix,
  weighMix,
} from './mix-input.ts';
import { mixParameters } from './parameters.ts';
import { settlingRoom_pctVolume } from './porosity.ts';
import { built, type Portion, portionMoisture_pctWet, portionRatio } from './portion.ts';
import { ripeDry_kg, type Salts, saltsOf, saltsSchema } from './salts.ts';
import { mixCautionIds, mixSources } from './sources.ts';
import { type StarterNote, starterNoteSchema, startersIn } from './starters.ts';
import { type PHTendency, pHTendencyOf } from './tendency.ts';
import { type Warning, warningSchema, warningsOf } from './warnings.ts';

export interface MixBalanceInput extends MixInput {
  readonly bay?: Bay | undefined;
  readonly goals?: Goals | undefined;
}

/** One ingredient of the answer. */
export interface BalancedIngredient extends Permitted {
  readonly wet_kg: Estimate;
  readonly volume_m3: Estimate;
}

/** What a mix is, with its ranges. */
export interface MixBalance {
  readonly ingredients: readonly BalancedIngredient[];
  readonly water_L: Estimate;
  readonly wet_kg: Estimate;
  readonly dry_kg: Estimate;
  readonly volume_m3: Estimate;
  /** Height in the bay, m; only when a bay was given. */
  readonly height_m?: Estimate | undefined;
  /** Absent where nothing in the mix brings nitrogen. */
  readonly carbonToNitrogen_ratio?: Judged | undefined;
  /** The same with only the carbon that rots in one composting: a second figure, never the only one. */
  readonly degradableCarbonToNitrogen_ratio?: Estimate | undefined;
  readonly moisture_pctWet: Judged;
  readonly density_kgPerM3AsIs: Judged;
  readonly freeAirSpace_pctVolume: Judged;
  readonly carbon_kg: Estimate;
  readonly nitrogen_kg: Estimate;
  readonly nitrogen_pctDry: Estimate;
  readonly phosphorus_kg: Estimate;
  readonly phosphorus_pctDry: Estimate;
  readonly phosphorusAsP2O5_kg: Estimate;
  readonly potassium_kg: Estimate;
  readonly potassium_pctDry: Estimate;
  readonly potassiumAsK2O_kg: Estimate;
  /** Heat it would give if everything in it that rots in one composting did, MJ for each m³. */
  readonly heat_MJPerM3: Estimate;
  /** Nitrogen that may leave it, mostly as ammonia; how much of it goes hangs on turning, rain, cover and pH. */
  readonly nitrogenAtRisk_kg: Estimate;
  /** The same as a share; absent where nothing brings nitrogen. */
  readonly nitrogenAtRisk_pctNitrogen?: Estimate | undefined;
  /** Volume it may lose by settling before its air space falls below the reasonable band. */
  readonly settlingRoom_pctVolume: Estimate;
  /** Volume once it is ready, as `yield-estimate` reckons it where nothing was measured. */
  readonly ready_m3: Estimate;
  /** Which ingredients pull its pH down or up at first; the pH itself is not reckoned. */
  readonly pH: PHTendency;
  readonly salts: Salts;
  /** What is in it that is said to start a heap, with what trials bear out. */
  readonly starters: readonly StarterNote[];
  readonly warnings: readonly Warning[];
  readonly cautions: readonly CautionId[];
}

export const mixBalanceSchema: z.ZodType<MixBalance> = z.strictObject({
  ingredients: z.array(
    z.strictObject({
      ...permittedShape,
      wet_kg: estimateSchema('Wet mass, kg.'),
      volume_m3: estimateSchema('Volume as it lay, m³.'),
    }),
  ),
  water_L: estimateSchema('Water poured on, litres.'),
  wet_kg: estimateSchema('Wet mass of the mix, kg.'),
  dry_kg: estimateSchema('Dry mass of the mix, kg.'),
  volume_m3: estimateSchema('Volume once built, m³.'),
  height_m: estimateSchema('Height in the bay, m.').optional(),
  carbonToNitrogen_ratio: judgedSchema('C:N.').optional(),
  degradableCarbonToNitrogen_ratio: estimateSchema('C:N of the carbon that rots in one composting.').optional(),
  moisture_pctWet: judgedSchema('Moisture, % of wet mass.'),
  density_kgPerM3AsIs: judgedSchema('Bulk density once built, kg/m³.'),
  freeAirSpace_pctVolume: judgedSchema('Free air space, % of the volume.'),
  carbon_kg: estimateSchema('Carbon that counts, kg.'),
  nitrogen_kg: estimateSchema('Nitrogen, kg.'),
  nitrogen_pctDry: estimateSchema('Nitrogen, % of dry mass.'),
  phosphorus_kg: estimateSchema('Phosphorus as the element, kg.'),
  phosphorus_pctDry: estimateSchema('Phosphorus as the element, % of dry mass.'),
  phosphorusAsP2O5_kg: estimateSchema('Phosphorus told as P2O5, kg.'),
  potassium_kg: estimateSchema('Potassium as the element, kg.'),
  potassium_pctDry: estimateSchema('Potassium as the element, % of dry mass.'),
  potassiumAsK2O_kg: estimateSchema('Potassium told as K2O, kg.'),
  heat_MJPerM3: estimateSchema('Heat if everything rots that does in one composting, MJ/m³.'),
  nitrogenAtRisk_kg: estimateSchema('Nitrogen that may leave it, kg.'),
  nitrogenAtRisk_pctNitrogen: estimateSchema('Nitrogen that may leave it, % of its nitrogen.').optional(),
  settlingRoom_pctVolume: estimateSchema('Volume it may lose before its air space is too little, %.'),
  ready_m3: estimateSchema('Volume once it is ready, m³.'),
  pH: z.strictObject({ acid: z.array(z.string()), alkaline: z.array(z.string()) }),
  salts: saltsSchema,
  starters: z.array(starterNoteSchema),
  warnings: z.array(warningSchema),
  cautions: z.array(z.enum(mixCautionIds)),
});

/** Ready compost as published. */
function publishedCompost(draws: Draws): readonly Portion[] {
  const compost = readyCompost({}, draws);
  if (!compost.ok) throw new RangeError('published compost can be weighed');
  return compost.value;
}

/** The mix's figures from its weighed draws. Every draw has a wet mass and a volume. */
export function balanceOf(
  mix: WeighedMix,
  draws: Draws,
  options: { readonly bay?: Bay | undefined; readonly goals?: Goals | undefined } = {},
): MixBalance {
  const { bay, goals } = options;
  const { total } = mix;
  const figure = (of: (portion: Portion) => number): Float64Array => Float64Array.from(total, of);
  const estimate = (of: (portion: Portion) => number): Estimate => summarise(figure(of));
  const ofDry = (kg: number, { dry_kg }: Portion): number => (dry_kg > 0 ? (100 * kg) / dry_kg : 0);
  const heap = total.map((portion, i) => built(portion, mix.packing_share[i] ?? Number.NaN));
  const ofHeap = (of: 'volume_m3' | 'density_kgPerM3AsIs' | 'freeAirSpace_pctVolume'): Float64Array =>
    Float64Array.from(heap, (one) => one?.[of] ?? 0);
  const volume_m3 = ofHeap('volume_m3');
  const middle = (values: Float64Array): number => summarise(values).p50;
  const hasNitrogen = total.every(({ nitrogen_kg }) => nitrogen_kg > 0);
  const ratio = figure((portion) => portionRatio(portion) ?? 0);
  const { phosphorusPerP2O5, potassiumPerK2O } = mixParameters;
  const moisture = figure((portion) => portionMoisture_pctWet(portion) ?? 0);
  const fates = fateDraws(draws);
  const atRisk_kg = Float64Array.from(total, (portion, i) => nitrogenAtRisk_kg(portion, fates[i] ?? likelyFate));
  const airSpace = ofHeap('freeAirSpace_pctVolume');
  const leastAir = (goals?.freeAirSpace_pctVolume ?? bandTable.goals.freeAirSpace_pctVolume).reasonable.low ?? 0;
  return {
    ingredients: mix.ingredients.map(({ permitted, portions }) => ({
      ...permitted,
      wet_kg: summarise(portions.map(({ wet_kg }) => wet_kg)),
      volume_m3: summarise(portions.map((portion) => portion.volume_m3)),
    })),
    water_L: summarise(mix.water_L),
    wet_kg: estimate(({ wet_kg }) => wet_kg),
    dry_kg: estimate(({ dry_kg }) => dry_kg),
    volume_m3: summarise(volume_m3),
    ...(bay === undefined ? {} : { height_m: summarise(volume_m3.map((one) => heightInBay_m(one, bay))) }),
    ...(hasNitrogen
      ? {
          carbonToNitrogen_ratio: judge('carbonToNitrogen_ratio', ratio, goals?.carbonToNitrogen_ratio),
          degradableCarbonToNitrogen_ratio: estimate(
            ({ degradableCarbon_kg, nitrogen_kg }) => degradableCarbon_kg / nitrogen_kg,
          ),
          nitrogenAtRisk_pctNitrogen: summarise(
            total.map(({ nitrogen_kg }, i) => (100 * (atRisk_kg[i] ?? Number.NaN)) / nitrogen_kg),
          ),
        }
      : {}),
    moisture_pctWet: judge('moisture_pctWet', moisture, goals?.moisture_pctWet),
    density_kgPerM3AsIs: judge('density_kgPerM3AsIs', ofHeap('density_kgPerM3AsIs'), goals?.density_kgPerM3AsIs),
    freeAirSpace_pctVolume: judge('freeAirSpace_pctVolume', airSpace, goals?.freeAirSpace_pctVolume),
    carbon_kg: estimate(({ carbon_kg }) => carbon_kg),
    nitrogen_kg: estimate(({ nitrogen_kg }) => nitrogen_kg),
    nitrogen_pctDry: estimate((portion) => ofDry(portion.nitrogen_kg, portion)),
    phosphorus_kg: estimate(({ phosphorus_kg }) => phosphorus_kg),
    phosphorus_pctDry: estimate((portion) => ofDry(portion.phosphorus_kg, portion)),
    phosphorusAsP2O5_kg: estimate(({ phosphorus_kg }) => phosphorus_kg / phosphorusPerP2O5.value),
    potassium_kg: estimate(({ potassium_kg }) => potassium_kg),
    potassium_pctDry: estimate((portion) => ofDry(portion.potassium_kg, portion)),
    potassiumAsK2O_kg: estimate(({ potassium_kg }) => potassium_kg / potassiumPerK2O.value),
    heat_MJPerM3: summarise(
      total.map((portion, i) => heat_MJ(portion, fates[i] ?? likelyFate) / (volume_m3[i] ?? Number.NaN)),
    ),
    nitrogenAtRisk_kg: summarise(atRisk_kg),
    settlingRoom_pctVolume: summarise(airSpace.map((air) => settlingRoom_pctVolume(air, leastAir))),
    ready_m3: summarise(
      readyVolume_m3({ dry_kg: figure(ripeDry_kg), built_m3: volume_m3, compost: publishedCompost(draws) }),
    ),
    pH: pHTendencyOf(mix),
    salts: saltsOf(mix, draws),
    starters: startersIn(mix),
    warnings: warningsOf(mix, draws, { volume_m3, moisture, bay }),
    cautions: demanded(inOrder(mix.ingredients.flatMap(({ cautions }) => cautions)), {
      volume_m3: middle(volume_m3),
      ...(bay !== undefined && { height_m: heightInBay_m(middle(volume_m3), bay) }),
      moisture_pctWet: middle(moisture),
    }),
  };
}

export const mixBalance: Calculation<MixBalanceInput, MixBalance> = {
  id: 'mix-balance',
  title: 'What a mix is',
  summary:
    'From amounts in buckets, barrows or kilograms: C:N, moisture, bulk density, free air space, volume, height in the bay and N-P-K, each with its range and the chance that it lies in every published band. Band edges are soft: the sources state one handbook three ways, so a value near an edge is told as such.',
  input: z.strictObject({ ...mixShape, bay: baySchema.optional(), goals: goalsSchema.optional() }),
  output: mixBalanceSchema,
  sources: mixSources,
  cautions: mixCautionIds,
  example: {
    ingredients: [
      { material: 'straw', amount: { measure: 'barrow', count: 4 } },
      { material: 'coffee-grounds', amount: { measure: 'bucket-20l', count: 3 } },
      { material: 'goat-bedding', amount: { measure: 'barrow', count: 2 } },
    ],
    water_L: 40,
    bay: { width_m: 1, depth_m: 1, height_m: 1 },
  },
  run: (input, { draws }): Outcome<MixBalance> => {
    const mix = weighMix(input, draws);
    return mix.ok ? good(balanceOf(mix.value, draws, input)) : mix;
  },
};
