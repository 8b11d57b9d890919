import { z } from 'zod';
import { blendParameters } from '../blend/parameters.ts';
import { bad, type Calculation, good, type Needs, type Outcome } from '../catalogue/index.ts';
import {
  between,
  drawsOf,
  type Estimate,
  estimateSchema,
  fromPublished,
  isEstimate,
  positive,
  positiveQuantity,
  type Quantity,
  summarise,
} from '../estimate/index.ts';
import { countInMeasure, type OwnSizes } from '../material/index.ts';
import { ownSizesSchema, resolve, type Stuffed, stuffedShape, weigh } from '../mix/ingredient.ts';
import type { Portion } from '../mix/portion.ts';
import { releaseParameters } from './release.ts';
import { bedBounds } from './slips.ts';

export interface SpreadDepthInput extends Stuffed {
  readonly area_m2: Quantity;
  readonly depth_m: Quantity;
  readonly measure?: string | undefined;
  readonly ownSizes?: OwnSizes | undefined;
}

/** What a layer over a bed comes to. */
export interface SpreadDepth {
  readonly volume_m3: Estimate;
  readonly measure: string;
  readonly count: Estimate;
  readonly mass_kg: Estimate;
  readonly nitrogen_kg: Estimate;
  readonly phosphate_kg: Estimate;
  readonly phosphate_kgPerHa: Estimate;
  readonly potash_kg: Estimate;
  /** Harvests of vegetables that take off as much phosphorus: fewest to most. */
  readonly phosphorus_years: Estimate;
}

const M2_PER_HA = 10_000;
const { oxides } = releaseParameters;
const removal = blendParameters.bed.phosphorusRemoval_kgPerM2PerYear;

function run(input: SpreadDepthInput, { draws }: Needs): Outcome<SpreadDepth> {
  const { area_m2, depth_m, measure = 'barrow', ownSizes, ...stuff } = input;
  const area = drawsOf(draws, 'bed/area_m2', area_m2, positive);
  const depth = drawsOf(draws, 'bed/depth_m', depth_m, positive);
  const volume = area.map((m2, i) => m2 * (depth[i] ?? Number.NaN));
  const resolved = resolve(stuff, '');
  if (!resolved.ok) return resolved;
  // The stuff of one cubic metre, so that the bed's own spread is counted once.
  const one = weigh(resolved.value, { volume_m3: 1 }, 'spread', { draws, ownSizes, path: '' });
  if (!one.ok) return one;
  const counts = countInMeasure(volume, measure, { draws, ownSizes, path: 'measure' });
  if (!counts.ok) return counts;
  if (!counts.value.every(Number.isFinite))
    return bad({ code: 'too-small', path: 'measure', found: measure, wanted: '> 0' });
  const portions = one.value;
  const each = (of: (portion: Portion) => number): Float64Array =>
    Float64Array.from(portions, (portion, i) => of(portion) * (volume[i] ?? Number.NaN));
  const phosphate = each(({ phosphorus_kg }) => phosphorus_kg * oxides.phosphatePerPhosphorus_ratio);
  const perHa = phosphate.map((kg, i) => (kg / (area[i] ?? Number.NaN)) * M2_PER_HA);
  const off = drawsOf(draws, 'bed/phosphorusRemoval', fromPublished(removal, positive), positive);
  const years = each(({ phosphorus_kg }) => phosphorus_kg).map(
    (kg, i) => kg / (area[i] ?? Number.NaN) / (off[i] ?? Number.NaN),
  );
  return good({
    volume_m3: summarise(volume),
    measure,
    count: summarise(counts.value),
    mass_kg: summarise(each(({ wet_kg }) => wet_kg)),
    nitrogen_kg: summarise(each(({ nitrogen_kg }) => nitrogen_kg)),
    phosphate_kg: summarise(phosphate),
    phosphate_kgPerHa: summarise(perHa),
    potash_kg: summarise(each(({ potassium_kg }) => potassium_kg * oxides.potashPerPotassium_ratio)),
    phosphorus_years: summarise(years),
  });
}

const MOST_DEEP_M = 1;
const withinArea = (schema: z.ZodType<Quantity>): z.ZodType<Quantity> =>
  schema.refine((quantity) => (isEstimate(quantity) ? quantity.p10 : quantity) > 0, {
    params: { wanted: 'more than 0' },
  });

/** A layer over a bed: so much volume, so many measures, and the phosphorus that comes with it. */
export const spreadDepth: Calculation<SpreadDepthInput, SpreadDepth> = {
  id: 'spread-depth',
  title: 'A layer over a bed',
  summary:
    'Takes an area and a depth and tells how much stuff that is, by volume, in measures and by mass, and what it brings: nitrogen, phosphorus and potassium, and how many harvests of vegetables would take the phosphorus off again.',
  input: z.strictObject({
    ...stuffedShape,
    area_m2: withinArea(between(positiveQuantity('Area, m².'), bedBounds.area_m2.least, bedBounds.area_m2.most)),
    depth_m: withinArea(between(positiveQuantity('Depth of the layer, m.'), 0.0005, MOST_DEEP_M)),
    measure: z.string().min(1).optional(),
    ownSizes: ownSizesSchema.optional(),
  }),
  output: z.strictObject({
    volume_m3: estimateSchema('Volume as it lies.'),
    measure: z.string(),
    count: estimateSchema('In the measure.'),
    mass_kg: estimateSchema('Mass as it lies.'),
    nitrogen_kg: estimateSchema('All its nitrogen.'),
    phosphate_kg: estimateSchema('All its phosphorus, P₂O₅.'),
    phosphate_kgPerHa: estimateSchema('The same on a hectare.'),
    potash_kg: estimateSchema('All its potassium, K₂O.'),
    phosphorus_years: estimateSchema('Harvests of vegetables that take it off.'),
  }),
  sources: [
    { source: 'cornell-market-label', place: 'cubic yards = square feet × inches × 0.0031', mark: 'seen' },
    removal,
    oxides,
  ],
  cautions: ['local-rules'],
  example: { material: 'finished-compost', area_m2: 12, depth_m: 0.025 },
  run,
};
