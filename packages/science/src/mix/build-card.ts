import { z } from 'zod';
import { type Calculation, good, type Outcome } from '../catalogue/index.ts';
import { type CautionId, inOrder } from '../caution/index.ts';
import { type Draws, type Estimate, estimateSchema, likely, summarise } from '../estimate/index.ts';
import { fillIds, type OwnSizes } from '../material/index.ts';
import { arrange, type CardLayer, type CardPart, type Laid, type NoteCode, noteCodes, roles } from './arrange.ts';
import { type Judged, judge } from './bands.ts';
import type { Filled } from './filled.ts';
import { demanded } from './fire.ts';
import { heightInBay_m } from './geometry.ts';
import {
  type Ingredient,
  ownSizesSchema,
  type Permitted,
  permittedShape,
  type Stuffed,
  stuffedShape,
} from './ingredient.ts';
import { type Bay, baySchema, weighMix } from './mix-input.ts';
import { mixParameters } from './parameters.ts';
import { portionMoisture_pctWet } from './portion.ts';
import { mixCautionIds, mixSources } from './sources.ts';
import { roomForWater_L } from './water.ts';

/** A material of the chosen mix, in the grower's measures. */
export interface CardLine extends Stuffed, Filled {
  readonly measure: string;
  readonly count: number;
  /** Tells two lines of one material apart. */
  readonly line?: string | undefined;
}

/** A live starter that is no part of the mix: ripe compost, a ferment. */
export interface Starter {
  readonly material: string;
  readonly measure: string;
  readonly count: number;
}

export interface BuildCardInput {
  readonly mix: readonly CardLine[];
  readonly water_L?: number | undefined;
  readonly bay: Bay;
  readonly starter?: Starter | undefined;
  readonly ownSizes?: OwnSizes | undefined;
  readonly packing_share?: number | undefined;
}

/** Why chopping a material pays; its words are the message `chop.reason.REASON`. */
export interface ChopNote {
  readonly material: string;
  readonly reason: string;
}

export interface BuildCard {
  /** From the ground up. */
  readonly layers: readonly CardLayer[];
  /** How often dry and wet alternate. */
  readonly repeats: number;
  readonly height_m: Estimate;
  readonly water_L: number;
  readonly chop: readonly ChopNote[];
  readonly notes: readonly NoteCode[];
  readonly permits: readonly Permitted[];
  readonly cautions: readonly CautionId[];
}

const lineSchema: z.ZodType<CardLine> = z.strictObject({
  ...stuffedShape,
  measure: z.string().min(1),
  count: z.number().positive().max(1000),
  fill: z.enum(fillIds).optional(),
  packed: z.boolean().optional(),
  line: z.string().min(1).optional(),
});

const starterShape = { material: z.string(), measure: z.string(), count: z.number().positive() };

const partSchema: z.ZodType<CardPart> = z.strictObject({
  ...starterShape,
  line: z.int().min(0),
  fill: z.enum(fillIds).optional(),
  packed: z.boolean().optional(),
});

const outputSchema: z.ZodType<BuildCard> = z.strictObject({
  layers: z.array(
    z.strictObject({
      role: z.enum(roles),
      parts: z.array(partSchema),
      bottom_m: z.number().min(0),
      height_m: z.number().min(0),
      water_L: z.number().min(0),
      starter: z.strictObject(starterShape).optional(),
    }),
  ),
  repeats: z.int().min(0),
  height_m: estimateSchema('Height of the whole, m.'),
  water_L: z.number().min(0),
  chop: z.array(z.strictObject({ material: z.string(), reason: z.string() })),
  notes: z.array(z.enum(noteCodes)),
  permits: z.array(z.strictObject(permittedShape)),
  cautions: z.array(z.enum(mixCautionIds)),
});

const MOST_LINES = 24;

/** The ingredients as `mix-balance` takes them. */
function ingredientOf({ measure, count, fill, packed, ...stuffed }: CardLine): Ingredient {
  return { ...stuffed, amount: { measure, count, fill, packed } };
}

/** That a mix is too wet or too dry must still be known with the fork in hand. */
function waterNotes({ verdict }: Judged): readonly NoteCode[] {
  if (verdict === 'too-high') return ['too-wet'];
  return verdict === 'too-low' ? ['too-dry'] : [];
}

function run(input: BuildCardInput, { draws }: { readonly draws: Draws }): Outcome<BuildCard> {
  const { bay, ownSizes, packing_share, water_L = 0 } = input;
  const mix = weighMix({ ingredients: input.mix.map(ingredientOf), ownSizes, packing_share, water_L }, draws, 'mix');
  if (!mix.ok) return mix;
  const { ingredients, total } = mix.value;
  const packing = packing_share ?? likely(mixParameters.packing_share.estimate);
  const middle = (values: ArrayLike<number>): number => summarise(values).p50;
  const laid = ingredients.map((ingredient, line): Laid => {
    const { published, known, portions } = ingredient;
    const given = input.mix[line];
    const volume_m3 = middle(portions.map((portion) => portion.volume_m3));
    return {
      line,
      material: ingredient.given.material,
      measure: given?.measure ?? '',
      count: given?.count ?? 0,
      fill: given?.fill,
      packed: given?.packed,
      published,
      moisture_pctWet: likely(known.quantities.moisture_pctWet ?? 0),
      height_m: heightInBay_m(volume_m3 * packing, bay),
      room_L: middle(roomForWater_L(ingredient, portions, draws)),
    };
  });
  const moisture = judge(
    'moisture_pctWet',
    Float64Array.from(total, (portion) => portionMoisture_pctWet(portion) ?? 0),
  );
  const { layers, repeats, notes } = arrange(laid, water_L, input.starter);
  const height_m = summarise(
    total.map(({ volume_m3 }, i) => heightInBay_m(volume_m3 * (mix.value.packing_share[i] ?? packing), bay)),
  );
  return good({
    layers,
    repeats,
    height_m,
    water_L,
    chop: ingredients
      .filter(({ published }) => published.chop.pays)
      .map(({ given, published }) => ({ material: given.material, reason: published.chop.reason })),
    notes: [...waterNotes(moisture), ...notes, ...(height_m.p50 > bay.height_m ? (['higher-than-bay'] as const) : [])],
    permits: ingredients.map(({ permitted }) => permitted),
    cautions: demanded(inOrder(ingredients.flatMap(({ cautions }) => cautions)), {
      volume_m3: middle(total.map(({ volume_m3 }) => volume_m3)) * packing,
      height_m: height_m.p50,
      moisture_pctWet: moisture.value.p50,
    }),
  });
}

export const buildCard: Calculation<BuildCardInput, BuildCard> = {
  id: 'build-card',
  title: 'How to lay a heap',
  summary:
    'A chosen mix as layers from the ground up: a coarse base, dry and wet in turn, a cover; for each the measures, the height and the water, where chopping pays and where a live starter goes. Layers only measure and spread: fork them together as you go. Every measure of the mix is used once.',
  input: z.strictObject({
    mix: z.array(lineSchema).min(1).max(MOST_LINES),
    water_L: z.number().min(0).max(1e5).optional(),
    bay: baySchema,
    starter: z
      .strictObject({ material: z.string().min(1), measure: z.string().min(1), count: z.number().positive().max(1000) })
      .optional(),
    ownSizes: ownSizesSchema.optional(),
    packing_share: z.number().min(0.3).max(1).optional(),
  }),
  output: outputSchema,
  sources: [...Object.values(mixParameters.layers), ...mixSources],
  cautions: mixCautionIds,
  example: {
    mix: [
      { material: 'straw', measure: 'barrow', count: 6 },
      { material: 'coffee-grounds', measure: 'bucket-20l', count: 3 },
      { material: 'goat-bedding', measure: 'barrow', count: 2 },
      { material: 'hedge-chippings', measure: 'barrow', count: 1.5 },
    ],
    water_L: 20,
    bay: { width_m: 1, depth_m: 1, height_m: 1 },
    starter: { material: 'finished-compost', measure: 'bucket-20l', count: 1 },
  },
  run,
};
