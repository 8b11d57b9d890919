import { z } from 'zod';
import { bad, good, type Outcome, type Problem } from '../catalogue/index.ts';
import { type Draws, drawsOf, type Estimate, estimateSchema, positive, summarise } from '../estimate/index.ts';
import { moistureFromSqueeze, scaleOf } from '../material/index.ts';
import { type Judged, type JudgedQuantity, judge, judgedSchema } from '../mix/bands.ts';
import { heightInBay_m } from '../mix/geometry.ts';
import { type Resolved, resolve, weigh } from '../mix/ingredient.ts';
import { freeAirSpace_pctVolume } from '../mix/porosity.ts';
import { built, type Portion, portionMoisture_pctWet, portionRatio, together } from '../mix/portion.ts';
import { type Decay, decayDraws, type Left, leftOf, rotted } from './decay.ts';
import type { FedLayer, PailCoverInput } from './pail-input.ts';

/** A layer of the bin, as it went in and what is left of it. */
export interface BinLayer {
  readonly material: string;
  readonly age_days: number;
  readonly wet_kg: Estimate;
  readonly volume_m3: Estimate;
  /** Shares of its volume and of its carbon that are left. */
  readonly left: { readonly volume_share: Estimate; readonly carbon_share: Estimate };
}

/** The figures of what went in, judged as a mix is. */
export interface AsFed {
  /** Absent where nothing brings nitrogen. */
  readonly carbonToNitrogen_ratio?: Judged | undefined;
  readonly moisture_pctWet: Judged;
  readonly freeAirSpace_pctVolume: Judged;
}

/** What lies in the bin after the feeding. */
export interface StuffNow {
  readonly wet_kg: Estimate;
  /** C:N of what is left; absent where nothing brings nitrogen. */
  readonly carbonToNitrogen_ratio?: Estimate | undefined;
  readonly moisture_pctWet: Estimate;
  /** Where the moisture comes from: what went in, or the squeeze. */
  readonly moistureFrom: 'as-fed' | 'squeeze';
  readonly freeAirSpace_pctVolume: Estimate;
}

/** The bin as it stands after the feeding, as far as it can be told. */
export interface BinNow {
  readonly volume_m3: Estimate;
  /** Only when a bay was given. */
  readonly height_m?: Estimate | undefined;
  /** Absent where something lies in it and nothing is known of what. */
  readonly stuff?: StuffNow | undefined;
}

/** A layer weighed draw by draw. */
export interface WeighedLayer extends Resolved {
  readonly layer: FedLayer;
  readonly portions: readonly Portion[];
  readonly left: readonly Left[];
}

export const binLayerSchema: z.ZodType<BinLayer> = z.strictObject({
  material: z.string(),
  age_days: z.number().min(0),
  wet_kg: estimateSchema('Wet mass as it went in, kg.'),
  volume_m3: estimateSchema('Volume as it went in, m³.'),
  left: z.strictObject({
    volume_share: estimateSchema('Share of its volume that is left.'),
    carbon_share: estimateSchema('Share of its carbon that is left.'),
  }),
});

export const asFedSchema: z.ZodType<AsFed> = z.strictObject({
  carbonToNitrogen_ratio: judgedSchema('C:N of what went in.').optional(),
  moisture_pctWet: judgedSchema('Moisture of what went in, % of wet mass.'),
  freeAirSpace_pctVolume: judgedSchema('Free air space as it was laid, % of the volume.'),
});

const stuffNowSchema: z.ZodType<StuffNow> = z.strictObject({
  wet_kg: estimateSchema('Wet mass, kg.'),
  carbonToNitrogen_ratio: estimateSchema('C:N of what is left.').optional(),
  moisture_pctWet: estimateSchema('Moisture, % of wet mass.'),
  moistureFrom: z.enum(['as-fed', 'squeeze']),
  freeAirSpace_pctVolume: estimateSchema('Free air space, % of the volume.'),
});

export const binNowSchema: z.ZodType<BinNow> = z.strictObject({
  volume_m3: estimateSchema('Volume now, m³.'),
  height_m: estimateSchema('Height in the bay, m.').optional(),
  stuff: stuffNowSchema.optional(),
});

/** Weighs what lies in the bin, and what is left of each layer. All problems come back at once. */
export function weighLayers(input: PailCoverInput, draws: Draws): Outcome<readonly WeighedLayer[]> {
  const decays = decayDraws(draws);
  const weighed = (input.layers ?? []).map((layer, i) => weighLayer(layer, `layers[${i}]`, input, decays, draws));
  const problems: readonly Problem[] = weighed.flatMap((one) => (one.ok ? [] : one.problems));
  return problems.length > 0 ? bad(...problems) : good(weighed.flatMap((one) => (one.ok ? [one.value] : [])));
}

function weighLayer(
  layer: FedLayer,
  path: string,
  input: PailCoverInput,
  decays: readonly Decay[],
  draws: Draws,
): Outcome<WeighedLayer> {
  const resolved = resolve(layer, path);
  if (!resolved.ok) return resolved;
  // Two pails of one material are two amounts: each goes by its own name.
  const name = layer.line ?? `${layer.material} ${layer.age_days}`;
  const portions = weigh(resolved.value, layer.amount, name, { draws, ownSizes: input.ownSizes, path });
  if (!portions.ok) return portions;
  const age_days = thawedAge_days(layer.age_days, input.frozenFor_days);
  const left = portions.value.map((portion, i): Left => {
    const decay = decays[i];
    if (decay === undefined) throw new RangeError('every draw has its decay');
    return leftOf(portion, age_days, decay);
  });
  return good({ ...resolved.value, layer, portions: portions.value, left });
}

/** Frost stops rotting: its days count for no age. */
export function thawedAge_days(age_days: number, frozenFor_days = 0): number {
  return Math.max(0, age_days - frozenFor_days);
}

/** What is known of a bin after a feeding, draw by draw. */
export interface BinDraws {
  /** Everything as it went in, the new layer with it. */
  readonly asFed: readonly Portion[];
  /** What is left of what lay there before, the volume as it lies in the bin. */
  readonly older: readonly Portion[];
  /** What this feeding adds, the volume as it lies in the bin. */
  readonly fresh: readonly Portion[];
}

/**
 * The bin after a feeding. New stuff lies at once as it packs (`packing_share`); older stuff has sunk by what it
 * lost, or stands as high as was measured.
 */
export function binDraws(
  layers: readonly WeighedLayer[],
  fresh: readonly Portion[],
  packing_share: Float64Array,
  input: PailCoverInput,
  draws: Draws,
): BinDraws {
  const { bay, height_m } = input;
  const measured_m3 =
    bay === undefined || height_m === undefined
      ? undefined
      : drawsOf(draws, 'bin/height_m', height_m, positive).map((height) => height * bay.width_m * bay.depth_m);
  const older = fresh.map((_, i) => {
    const packing = packing_share[i] ?? Number.NaN;
    const all = together(layers.map(({ portions, left }) => sunk(portions[i], left[i], packing)));
    return { ...all, volume_m3: measured_m3?.[i] ?? all.volume_m3 };
  });
  return {
    asFed: fresh.map((portion, i) => together([portion, ...layers.flatMap(({ portions }) => portions[i] ?? [])])),
    older,
    fresh: fresh.map((portion, i) => ({ ...portion, volume_m3: portion.volume_m3 * (packing_share[i] ?? Number.NaN) })),
  };
}

/** Heaping takes its part of the volume first, rotting only what goes beyond it. */
function sunk(portion: Portion | undefined, left: Left | undefined, packing_share: number): Portion {
  if (portion === undefined || left === undefined) throw new RangeError('a layer has a portion in every draw');
  return rotted(portion, { ...left, volume_share: Math.min(packing_share, left.volume_share) });
}

/** Volume after the feeding, m³. */
export function volumeAfter_m3({ older, fresh }: BinDraws): Float64Array {
  return Float64Array.from(fresh, ({ volume_m3 }, i) => volume_m3 + (older[i]?.volume_m3 ?? Number.NaN));
}

/** What went in, judged. */
export function asFedOf(portions: readonly Portion[], packing_share: Float64Array): AsFed {
  const judged = (quantity: JudgedQuantity, of: (portion: Portion, i: number) => number): Judged =>
    judge(quantity, Float64Array.from(portions, of));
  const hasNitrogen = portions.every(({ nitrogen_kg }) => nitrogen_kg > 0);
  return {
    ...(hasNitrogen
      ? { carbonToNitrogen_ratio: judged('carbonToNitrogen_ratio', (portion) => portionRatio(portion) ?? 0) }
      : {}),
    moisture_pctWet: judged('moisture_pctWet', (portion) => portionMoisture_pctWet(portion) ?? 0),
    freeAirSpace_pctVolume: judged(
      'freeAirSpace_pctVolume',
      (portion, i) => built(portion, packing_share[i] ?? Number.NaN)?.freeAirSpace_pctVolume ?? 0,
    ),
  };
}

/** Moisture felt in the bin, draw by draw; `undefined` where nobody squeezed a handful. */
function feltMoisture_pctWet({ squeeze }: PailCoverInput, draws: Draws): Float64Array | undefined {
  if (squeeze === undefined) return undefined;
  return drawsOf(draws, 'bin/moisture_pctWet', moistureFromSqueeze(squeeze), scaleOf.moisture_pctWet);
}

/** Portions of the bin as moist as a handful of it felt, or as they are. */
export function asFelt(portions: readonly Portion[], input: PailCoverInput, draws: Draws): readonly Portion[] {
  const felt = feltMoisture_pctWet(input, draws);
  if (felt === undefined) return portions;
  return portions.map((portion, i) => ({
    ...portion,
    wet_kg: portion.dry_kg / (1 - (felt[i] ?? Number.NaN) / 100),
  }));
}

/** Whether what lies in the bin is known: its layers were given, none of them where it is empty. */
export function isBinKnown({ layers, height_m }: PailCoverInput): boolean {
  return layers !== undefined && (layers.length > 0 || height_m === undefined);
}

/** Whether it is known how full the bin is. */
export function isFillingKnown({ layers, height_m }: PailCoverInput): boolean {
  return layers !== undefined || height_m !== undefined;
}

/** The bin as it stands: what is left, as moist as it went in or, below the new layer, as the squeeze says. */
export function binNowOf(bin: BinDraws, input: PailCoverInput, draws: Draws): BinNow | undefined {
  if (!isFillingKnown(input)) return undefined;
  const { bay } = input;
  const volume_m3 = volumeAfter_m3(bin);
  return {
    volume_m3: summarise(volume_m3),
    ...(bay === undefined ? {} : { height_m: summarise(volume_m3.map((one) => heightInBay_m(one, bay))) }),
    ...(isBinKnown(input) ? { stuff: stuffNow(bin, input, draws) } : {}),
  };
}

function stuffNow({ older, fresh }: BinDraws, input: PailCoverInput, draws: Draws): StuffNow {
  const below = asFelt(older, input, draws);
  const now = fresh.map((portion, i) => together([...below.slice(i, i + 1), portion]));
  const hasNitrogen = now.every(({ nitrogen_kg }) => nitrogen_kg > 0);
  return {
    wet_kg: summarise(now.map(({ wet_kg }) => wet_kg)),
    ...(hasNitrogen ? { carbonToNitrogen_ratio: summarise(now.map((portion) => portionRatio(portion) ?? 0)) } : {}),
    moisture_pctWet: summarise(now.map((portion) => portionMoisture_pctWet(portion) ?? 0)),
    moistureFrom: input.squeeze === undefined ? 'as-fed' : 'squeeze',
    freeAirSpace_pctVolume: summarise(now.map(airOf)),
  };
}

function airOf(portion: Portion): number {
  const { volume_m3, wet_kg, dry_kg, volatileSolids_kg } = portion;
  if (volume_m3 <= 0 || dry_kg <= 0) return 0;
  return freeAirSpace_pctVolume({
    density_kgPerM3AsIs: wet_kg / volume_m3,
    moisture_pctWet: portionMoisture_pctWet(portion) ?? 0,
    volatileSolids_pctDry: (100 * volatileSolids_kg) / dry_kg,
  });
}

/** The layers for the answer. */
export function layersOf(layers: readonly WeighedLayer[]): readonly BinLayer[] {
  return layers.map(({ layer, portions, left }) => ({
    material: layer.material,
    age_days: layer.age_days,
    wet_kg: summarise(portions.map(({ wet_kg }) => wet_kg)),
    volume_m3: summarise(portions.map(({ volume_m3 }) => volume_m3)),
    left: {
      volume_share: summarise(left.map(({ volume_share }) => volume_share)),
      carbon_share: summarise(left.map(({ carbon_share }) => carbon_share)),
    },
  }));
}
