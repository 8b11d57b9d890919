import { z } from 'zod';
import { type Calculation, good, type Needs, type Outcome, oneOfEach } from '../../catalogue/index.ts';
import { type CautionId, cautionIds, inOrder } from '../../caution/index.ts';
import {
  type Chance,
  chance,
  chanceSchema,
  type Estimate,
  estimateSchema,
  shareOf,
  summarise,
} from '../../estimate/index.ts';
import { allMaterials, type OwnSizes } from '../../material/index.ts';
import { ownSizesSchema } from '../../mix/ingredient.ts';
import { budgetParameters, type ClassId, classIds } from '../budget-parameters.ts';
import { allCrops } from '../crops.ts';
import { releaseParameters } from '../release.ts';
import { bedBounds } from '../slips.ts';
import { takenBy, type YearlyCrop, yearlyCropsSchema } from './harvests.ts';
import { planSchema, weighPlan, type Yearly } from './yearly-plan.ts';

export interface BuildUpInput {
  readonly area_m2: number;
  readonly plan: readonly Yearly[];
  readonly crops: readonly YearlyCrop[];
  readonly years?: number | undefined;
  readonly phosphorusClass?: ClassId | undefined;
  readonly potassiumClass?: ClassId | undefined;
  readonly ownSizes?: OwnSizes | undefined;
}

/** Whether more comes on than harvests take, in at least so many draws as count as sure; `same` where neither comes on nor goes. */
export const buildUpWays = ['builds', 'falls', 'same', 'open'] as const;
export type BuildUpWay = (typeof buildUpWays)[number];

/** What to do about it, by the soil test: `stop` and `less` bring less on; `fine`; `more`; `test` before anything. */
export const buildUpActs = ['stop', 'less', 'fine', 'more', 'test'] as const;
export type BuildUpAct = (typeof buildUpActs)[number];

/** Phosphorus as P₂O₅ or potassium as K₂O. */
export interface BuiltUp {
  readonly broughtEachYear_kg: Estimate;
  readonly takenEachYear_kg: Estimate;
  /** Brought less taken in all the years; below 0 the soil gives it. */
  readonly overYears_kg: Estimate;
  /** The same in years of harvests; absent where nothing is harvested. */
  readonly overYears_harvests?: Estimate | undefined;
  readonly builds: Chance;
  readonly way: BuildUpWay;
  readonly act: BuildUpAct;
}

export interface BuildUp {
  readonly years: number;
  readonly phosphate: BuiltUp;
  readonly potash: BuiltUp;
  readonly cautions: readonly CautionId[];
}

const USUAL_YEARS = 10;
const LONGEST_YEARS = 50;

function run(input: BuildUpInput, { draws }: Needs): Outcome<BuildUp> {
  const plan = weighPlan(input.plan, { draws, area_m2: input.area_m2, ownSizes: input.ownSizes });
  if (!plan.ok) return plan;
  const taken = takenBy(input.crops, draws);
  if (!taken.ok) return taken;
  const years = input.years ?? USUAL_YEARS;
  const brought = (element: 'phosphorus_kg' | 'potassium_kg', ratio: number): Float64Array =>
    Float64Array.from(
      { length: draws.count },
      (_, i) => ratio * plan.value.reduce((sum, { portions }) => sum + (portions[i]?.[element] ?? Number.NaN), 0),
    );
  const { phosphatePerPhosphorus_ratio, potashPerPotassium_ratio } = releaseParameters.oxides;
  return good({
    years,
    phosphate: builtUp(
      brought('phosphorus_kg', phosphatePerPhosphorus_ratio),
      taken.value.phosphate_kg,
      years,
      input.phosphorusClass,
    ),
    potash: builtUp(
      brought('potassium_kg', potashPerPotassium_ratio),
      taken.value.potash_kg,
      years,
      input.potassiumClass,
    ),
    cautions: inOrder([...plan.value.flatMap(({ cautions }) => cautions), 'local-rules']),
  });
}

function builtUp(brought: Float64Array, taken: Float64Array, years: number, told: ClassId | undefined): BuiltUp {
  const net = brought.map((kg, i) => years * (kg - (taken[i] ?? Number.NaN)));
  const builds = chance(net, (kg) => kg > 0);
  const way = net.every((kg) => kg === 0) ? 'same' : wayOf(shareOf(builds));
  return {
    broughtEachYear_kg: summarise(brought),
    takenEachYear_kg: summarise(taken),
    overYears_kg: summarise(net),
    ...(taken.every((kg) => kg > 0) && {
      overYears_harvests: summarise(net.map((kg, i) => kg / (taken[i] ?? Number.NaN))),
    }),
    builds,
    way,
    act: actOf(way, told),
  };
}

function wayOf(builds_share: number): BuildUpWay {
  const sure = budgetParameters.surely_share.value;
  if (builds_share >= sure) return 'builds';
  return builds_share <= 1 - sure ? 'falls' : 'open';
}

/**
 * Below the optimum a build-up is wanted, and a fall is not; above it the other way round. Where nobody tested nothing is known to suit
 * the soil, and an optimum that falls for years is one no longer.
 */
function actOf(way: BuildUpWay, told: ClassId | undefined): BuildUpAct {
  switch (told) {
    case undefined:
      return 'test';
    case 'high':
    case 'excessive':
      return way === 'falls' || way === 'same' ? 'fine' : 'stop';
    case 'optimum':
      if (way === 'builds') return 'less';
      return way === 'falls' ? 'test' : 'fine';
    case 'medium':
    case 'low':
      return way === 'falls' || way === 'same' ? 'more' : 'fine';
  }
}

const builtUpSchema: z.ZodType<BuiltUp> = z.strictObject({
  broughtEachYear_kg: estimateSchema('Brought on each year.'),
  takenEachYear_kg: estimateSchema('Taken off by harvests each year.'),
  overYears_kg: estimateSchema('Brought less taken in all the years.'),
  overYears_harvests: estimateSchema('The same in years of harvests.').optional(),
  builds: chanceSchema,
  way: z.enum(buildUpWays),
  act: z.enum(buildUpActs),
});

/** Phosphorus and potassium of a bed some years on. */
export const buildUp: Calculation<BuildUpInput, BuildUp> = {
  id: 'build-up',
  title: 'Phosphorus and potassium of a bed years on',
  summary:
    'What goes on a bed every year and what is harvested go in; out comes the phosphorus (P₂O₅) and potassium (K₂O) brought less what harvests take, in kilograms and in years of harvests, and what to do by the class of a soil test. No figure of a soil test is foretold: how far a kilogram moves one is not published for beds.',
  input: z.strictObject({
    area_m2: z.number().min(bedBounds.area_m2.least).max(bedBounds.area_m2.most),
    plan: planSchema,
    crops: yearlyCropsSchema,
    years: z.int().min(1).max(LONGEST_YEARS).optional().meta({ description: 'Years ahead; 10 if not said.' }),
    phosphorusClass: z.enum(classIds).optional(),
    potassiumClass: z.enum(classIds).optional(),
    ownSizes: ownSizesSchema.optional(),
  }),
  output: z.strictObject({
    years: z.int(),
    phosphate: builtUpSchema,
    potash: builtUpSchema,
    cautions: z.array(z.enum(cautionIds as readonly [CautionId, ...CautionId[]])),
  }),
  sources: [
    ...oneOfEach(allCrops.flatMap(({ removal }) => removal ?? [])),
    budgetParameters.gardenYield_kgPerM2,
    budgetParameters.surely_share,
  ],
  cautions: cautionIds.filter(
    (id) => id === 'local-rules' || allMaterials.some(({ cautions }) => cautions.includes(id)),
  ),
  example: {
    area_m2: 10,
    plan: [{ material: 'finished-compost', amount: { measure: 'barrow', count: 2 } }],
    crops: [{ crop: 'kale', area_m2: 10 }],
    years: 10,
    phosphorusClass: 'high',
  },
  run,
};
