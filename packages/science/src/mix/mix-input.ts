import { z } from 'zod';
import { bad, good, type Outcome, type Problem } from '../catalogue/index.ts';
import {
  type Draws,
  drawsOf,
  fraction,
  fractionQuantity,
  likely,
  positive,
  positiveQuantity,
  type Quantity,
} from '../estimate/index.ts';
import type { OwnSizes } from '../material/index.ts';
import { type Goal, goalSchema, type JudgedQuantity } from './bands.ts';
import { type Ingredient, ingredientSchema, ownSizesSchema, type Resolved, resolve, weigh } from './ingredient.ts';
import { mixParameters } from './parameters.ts';
import { type Portion, poured, together } from './portion.ts';

/** A place a heap can stand, inside its walls. */
export interface Bay {
  readonly width_m: number;
  readonly depth_m: number;
  readonly height_m: number;
}

/** A crack is no bay; beyond it heights overflow. */
const LEAST_SIDE_M = 0.01;

export const baySchema: z.ZodType<Bay> = z
  .strictObject({
    width_m: z.number().min(LEAST_SIDE_M).max(100),
    depth_m: z.number().min(LEAST_SIDE_M).max(100),
    height_m: z.number().min(LEAST_SIDE_M).max(10),
  })
  .meta({ description: 'The bay inside its walls, m.' });

/** Bands to aim for instead of the program's own. */
export type Goals = { readonly [Q in JudgedQuantity]?: Goal | undefined };

export const goalsSchema: z.ZodType<Goals> = z.strictObject({
  carbonToNitrogen_ratio: goalSchema.optional(),
  moisture_pctWet: goalSchema.optional(),
  freeAirSpace_pctVolume: goalSchema.optional(),
  density_kgPerM3AsIs: goalSchema.optional(),
});

/** What lies in a mix. */
export interface MixInput {
  readonly ingredients: readonly Ingredient[];
  /** Water poured on, litres. */
  readonly water_L?: Quantity | undefined;
  readonly ownSizes?: OwnSizes | undefined;
  /** Volume of the built mix over the summed volumes, if a bucket of the mix was tried. */
  readonly packing_share?: Quantity | undefined;
}

const MOST_INGREDIENTS = 40;
/** Nothing packs into a tenth of the volume it was measured in. */
const LEAST_PACKING_SHARE = 0.1;

/** The fields of a mix, for the schemas of the calculations that start from one. */
export const mixShape: Readonly<{
  ingredients: z.ZodType<readonly Ingredient[]>;
  water_L: z.ZodOptional<z.ZodType<Quantity>>;
  ownSizes: z.ZodOptional<z.ZodType<OwnSizes>>;
  packing_share: z.ZodOptional<z.ZodType<Quantity>>;
}> = {
  ingredients: z.array(ingredientSchema).min(1).max(MOST_INGREDIENTS),
  water_L: positiveQuantity('Water poured on, litres.').optional(),
  ownSizes: ownSizesSchema.optional(),
  packing_share: fractionQuantity('Volume of the built mix over the summed volumes, from a bucket trial.').optional(),
};

/** One ingredient, weighed draw by draw. */
export interface WeighedIngredient extends Resolved {
  readonly portions: readonly Portion[];
}

/** A mix, weighed draw by draw. */
export interface WeighedMix {
  readonly ingredients: readonly WeighedIngredient[];
  /** Everything together, water included. */
  readonly total: readonly Portion[];
  readonly water_L: Float64Array;
  readonly packing_share: Float64Array;
}

/** Looks up, sizes and weighs a mix; `field` is where it stands in the input. All problems come back at once. */
export function weighMix(input: MixInput, draws: Draws, field = 'ingredients'): Outcome<WeighedMix> {
  const weighed = input.ingredients.map((ingredient, i) => weighOne(ingredient, `${field}[${i}]`, input, draws));
  const problems: readonly Problem[] = weighed.flatMap((one) => (one.ok ? [] : one.problems));
  if (problems.length > 0) return bad(...problems);
  const ingredients = weighed.flatMap((one) => (one.ok ? [one.value] : []));
  const water_L = drawsOf(draws, 'water/poured_L', input.water_L ?? 0, positive);
  const total = Array.from(water_L, (litres, i) =>
    together([...ingredients.flatMap(({ portions }) => portions[i] ?? []), poured(litres)]),
  );
  if (!total.every(({ dry_kg, volume_m3 }) => dry_kg > 0 && volume_m3 > 0)) {
    return bad({ code: 'nothing-in-it', path: field, found: '0', wanted: 'some solid stuff' });
  }
  const packing = input.packing_share ?? mixParameters.packing_share.estimate;
  const packing_share = drawsOf(draws, 'mix/packing_share', packing, fraction);
  if (packing_share.some((share) => share < LEAST_PACKING_SHARE)) {
    const found = String(likely(packing));
    return bad({ code: 'out-of-bounds', path: 'packing_share', found, wanted: `${LEAST_PACKING_SHARE} to 1` });
  }
  return good({ ingredients, total, water_L, packing_share });
}

function weighOne(ingredient: Ingredient, path: string, input: MixInput, draws: Draws): Outcome<WeighedIngredient> {
  const resolved = resolve(ingredient, path);
  if (!resolved.ok) return resolved;
  const name = ingredient.line ?? ingredient.material;
  const portions = weigh(resolved.value, ingredient.amount, name, { draws, ownSizes: input.ownSizes, path });
  if (!portions.ok) return portions;
  return good({ ...resolved.value, portions: portions.value });
}
