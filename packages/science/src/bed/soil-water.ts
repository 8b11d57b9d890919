import { convert } from '@loamwright/units';
import { z } from 'zod';
import { type Calculation, cited, good, type Needs, type Outcome } from '../catalogue/index.ts';
import {
  between,
  drawsOf,
  type Estimate,
  estimateSchema,
  fromPublished,
  percent,
  percentQuantity,
  positive,
  type Quantity,
  summarise,
} from '../estimate/index.ts';
import { carbonParameters, type SoilTextureId, soilTextureIds } from './years/carbon-parameters.ts';
import { waterHeld } from './years/water-held.ts';

/** One layer of soil, from the top down: how thick, and its texture or the water that it was measured to give. */
export interface SoilLayer {
  readonly thickness_m: number;
  readonly texture?: SoilTextureId | undefined;
  readonly organicMatter_pctDry?: Quantity | undefined;
  /** Water between field capacity and wilting. */
  readonly available_pctVolume?: Quantity | undefined;
  readonly stones_pctVolume?: number | undefined;
}

export interface SoilWaterInput {
  readonly layers: readonly SoilLayer[];
}

export const waterClasses = ['very-low', 'low', 'moderate', 'high', 'very-high'] as const;
export type WaterClass = (typeof waterClasses)[number];

/** `shallow`: the layers end above the depth by which soils are classed; something must stop roots there. */
export const soilWaterNotes = ['shallow', 'near-a-bound'] as const;

export interface LayerWater {
  readonly top_m: number;
  readonly bottom_m: number;
  /** A millimetre is a litre on each square metre. */
  readonly available_mm: Estimate;
  readonly available_mmPerM: Estimate;
  /** Organic matter that was taken, where nobody told it of a layer that goes by its texture. */
  readonly organicTaken_pctDry?: Estimate | undefined;
}

export interface SoilWater {
  readonly depth_m: number;
  readonly available_mm: Estimate;
  /** Of what lies within the depth by which soils are classed. */
  readonly class: WaterClass;
  readonly layers: readonly LayerWater[];
  readonly notes: readonly (typeof soilWaterNotes)[number][];
}

const MM_PER_M = 1000;
const WHOLE_PCT = 100;
const {
  profile,
  whole_share,
  untested_pctDry,
  beneathUntested_pctDry,
  usualDepth_m,
  waterOfClass_times,
  textures,
  pedotransfer,
} = carbonParameters;
const deepest_m = convert(profile.deepest_in, 'in', 'm');
const upTo_mm = profile.classesUpTo_in.map((inches) => convert(inches, 'in', 'm') * MM_PER_M);

/** Organic matter that is taken where nobody told it: less beneath the topsoil, which the layer at the top is, however deep. */
function organicOf({ thickness_m }: SoilLayer, top_m: number): Quantity {
  const isTop = top_m === 0 || top_m + thickness_m / 2 < usualDepth_m.value;
  return fromPublished(isTop ? untested_pctDry : beneathUntested_pctDry, percent);
}

/** Water that a layer gives to plants, as a share of its volume, draw by draw; and the organic matter that was taken for it. */
function sharesOf(
  layer: SoilLayer,
  { i, top_m }: { readonly i: number; readonly top_m: number },
  { draws }: Needs,
): { readonly shares: Float64Array; readonly organicTaken?: Float64Array } {
  const { texture, available_pctVolume, organicMatter_pctDry, stones_pctVolume = 0 } = layer;
  const earth_share = 1 - stones_pctVolume / WHOLE_PCT;
  if (available_pctVolume !== undefined)
    return {
      shares: drawsOf(draws, `soil/${i}/available_pctVolume`, available_pctVolume, percent).map(
        (pct) => (pct / WHOLE_PCT) * earth_share,
      ),
    };
  const row = textures.rows.find(({ id }) => id === texture);
  if (row === undefined) throw new RangeError('a layer has a texture or its water');
  const organic = drawsOf(
    draws,
    `soil/${i}/organicMatter_pctDry`,
    organicMatter_pctDry ?? organicOf(layer, top_m),
    percent,
  );
  // Soils of a class differ as a whole: one draw for all layers.
  const differ = drawsOf(draws, 'soil/waterOfClass_times', fromPublished(waterOfClass_times, positive), positive);
  const shares = organic.map((pct, draw) => {
    const held = waterHeld(row, pct);
    return (held.field_share - held.wilting_share) * (differ[draw] ?? Number.NaN) * earth_share;
  });
  return { shares, ...(organicMatter_pctDry === undefined && { organicTaken: organic }) };
}

function classOf(water_mm: number): WaterClass {
  const at = upTo_mm.findIndex((most) => water_mm < most);
  return waterClasses[at < 0 ? waterClasses.length - 1 : at] ?? 'very-high';
}

function run({ layers }: SoilWaterInput, needs: Needs): Outcome<SoilWater> {
  const { count } = needs.draws;
  const whole = new Float64Array(count);
  const classed = new Float64Array(count);
  let top_m = 0;
  const told = layers.map((layer, i): LayerWater => {
    const bottom_m = top_m + layer.thickness_m;
    const counted_m = Math.max(0, Math.min(bottom_m, deepest_m) - top_m);
    const { shares, organicTaken } = sharesOf(layer, { i, top_m }, needs);
    const mm = shares.map((share) => share * layer.thickness_m * MM_PER_M);
    mm.forEach((one, draw) => {
      whole[draw] = (whole[draw] ?? 0) + one;
      classed[draw] = (classed[draw] ?? 0) + (shares[draw] ?? 0) * counted_m * MM_PER_M;
    });
    const water: LayerWater = {
      top_m,
      bottom_m,
      available_mm: summarise(mm),
      available_mmPerM: summarise(shares.map((share) => share * MM_PER_M)),
      ...(organicTaken !== undefined && { organicTaken_pctDry: summarise(organicTaken) }),
    };
    top_m = bottom_m;
    return water;
  });
  const held = summarise(classed);
  return good({
    depth_m: top_m,
    available_mm: summarise(whole),
    class: classOf(held.p50),
    layers: told,
    notes: [
      ...(top_m < deepest_m * whole_share.value ? (['shallow'] as const) : []),
      ...(classOf(held.p10) === classOf(held.p90) ? [] : (['near-a-bound'] as const)),
    ],
  });
}

/** How much water a soil holds for plants, layer by layer. */
export const soilWater: Calculation<SoilWaterInput, SoilWater> = {
  id: 'soil-water',
  title: 'Water that a soil holds for plants',
  summary:
    'From the layers of a soil, each with its thickness and its texture or its measured water: how much water plants can take out of it, in millimetres (litres on each square metre), layer by layer and in all, and its class by US soil surveys.',
  input: z.strictObject({
    layers: z
      .array(
        z
          .strictObject({
            thickness_m: z.number().min(0.01).max(10),
            texture: z.enum(soilTextureIds).optional(),
            organicMatter_pctDry: between(
              percentQuantity('Organic matter; counts with a texture. Less is taken beneath the topsoil than in it.'),
              0,
              25,
            ).optional(),
            available_pctVolume: between(percentQuantity('Water it gives to plants, measured.'), 0, 60).optional(),
            stones_pctVolume: z.number().min(0).max(95).optional().meta({ description: 'Stones, which hold none.' }),
          })
          .refine(
            ({ texture, available_pctVolume }) => (texture === undefined) !== (available_pctVolume === undefined),
            {
              path: ['texture'],
              params: { wanted: 'a texture or its water, one of them' },
            },
          ),
      )
      .min(1)
      .max(12),
  }),
  output: z.strictObject({
    depth_m: z.number(),
    available_mm: estimateSchema('Water for plants in all layers, litres on each square metre.'),
    class: z.enum(waterClasses),
    layers: z.array(
      z.strictObject({
        top_m: z.number(),
        bottom_m: z.number(),
        available_mm: estimateSchema('Water for plants in the layer.'),
        available_mmPerM: estimateSchema('The same in a metre of such soil.'),
        organicTaken_pctDry: estimateSchema('Organic matter that was taken, where nobody told it.').optional(),
      }),
    ),
    notes: z.array(z.enum(soilWaterNotes)),
  }),
  sources: [
    profile,
    whole_share,
    textures,
    pedotransfer,
    untested_pctDry,
    beneathUntested_pctDry,
    usualDepth_m,
    waterOfClass_times,
  ].map(cited),
  cautions: [],
  example: {
    layers: [
      { thickness_m: 0.3, texture: 'loam', organicMatter_pctDry: 4 },
      { thickness_m: 0.7, texture: 'clay-loam', organicMatter_pctDry: 1 },
    ],
  },
  run,
};
