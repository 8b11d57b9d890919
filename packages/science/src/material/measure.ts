import table from '@loamwright/reference/measures.json' with { type: 'json' };
import { z } from 'zod';
import { bad, good, type Mark, type Outcome } from '../catalogue/index.ts';
import { type Draws, drawsOf, fromPublished, positive, positiveQuantity, type Quantity } from '../estimate/index.ts';
import { nearest } from './nearest.ts';
import { type KnownMaterial, propertyDraws } from './properties.ts';

/** How full a container is. */
export const fillIds = ['heaped', 'level', 'three-quarters', 'half', 'quarter'] as const;
export type FillId = (typeof fillIds)[number];

/** An amount nobody measured. */
export const vagueIds = ['a-bit', 'some', 'a-lot'] as const;
export type VagueId = (typeof vagueIds)[number];

/** A count nobody counted. */
export const vagueCountIds = ['a-couple', 'a-few', 'several'] as const;
export type VagueCountId = (typeof vagueCountIds)[number];

/** A bucket, barrow, bag, bale or handful. */
export interface Measure {
  /** Kebab-case; its names are the messages `measure.ID.*`. */
  readonly id: string;
  /** A container is filled level unless said otherwise; the others are what they are. */
  readonly kind: 'container' | 'unit' | 'by-hand' | 'bale' | 'load';
  /** How much it holds, in litres, as `measure/volume_L`. */
  readonly volume_L: Quantity;
  /** How stuff lies in it unless the grower says otherwise. */
  readonly packing: 'loose' | 'packed';
  readonly source: string;
  readonly mark: Mark;
  readonly note?: string | undefined;
}

/** A grower's own sizes: litres by the id of a measure, published or their own. */
export type OwnSizes = Readonly<Record<string, Quantity>>;

/** An amount of a material: so many of a measure, a mass, a volume, or "a lot". */
export type Amount =
  | {
      readonly measure: string;
      readonly count: Quantity | VagueCountId;
      readonly fill?: FillId | undefined;
      readonly packed?: boolean | undefined;
    }
  | { readonly mass_kg: Quantity; readonly packed?: boolean | undefined }
  | { readonly volume_m3: Quantity; readonly packed?: boolean | undefined }
  | { readonly vague: VagueId; readonly packed?: boolean | undefined };

const packedSchema = z.boolean().optional().meta({ description: 'Pressed down rather than lying loose.' });

/** Checks an amount that comes from outside. */
export const amountSchema: z.ZodType<Amount> = z.union([
  z.strictObject({
    measure: z.string().min(1),
    count: z.union([positiveQuantity('How many of the measure.'), z.enum(vagueCountIds)]),
    fill: z.enum(fillIds).optional(),
    packed: packedSchema,
  }),
  z.strictObject({ mass_kg: positiveQuantity('Wet mass, kg.'), packed: packedSchema }),
  z.strictObject({ volume_m3: positiveQuantity('Volume as it lies, m³.'), packed: packedSchema }),
  z.strictObject({ vague: z.enum(vagueIds), packed: packedSchema }),
]);

interface RangeRow {
  readonly low?: number | undefined;
  readonly typical: number;
  readonly high?: number | undefined;
  readonly exact?: boolean | undefined;
}

function asQuantity({ low, typical, high, exact }: RangeRow): Quantity {
  if (exact === true || low === undefined || high === undefined) return typical;
  return fromPublished({ low, typical, high }, positive);
}

const rangeSchema: z.ZodType<RangeRow> = z
  .strictObject({
    low: z.number().positive().optional(),
    typical: z.number().positive(),
    high: z.number().positive().optional(),
    exact: z.boolean().optional(),
  })
  .refine(({ low, high, exact }) => (exact === true) === (low === undefined && high === undefined), 'a range or exact');

const measureRowSchema = z.strictObject({
  id: z.string().regex(/^[a-z]+(-[a-z0-9]+)*$/),
  kind: z.enum(['container', 'unit', 'by-hand', 'bale', 'load']),
  volume_L: rangeSchema,
  packing: z.enum(['loose', 'packed']),
  source: z.string(),
  mark: z.enum(['seen', 'memory', 'derived']),
  note: z.string().optional(),
});

/** Every measure the program knows, in the table's order. */
export const allMeasures: readonly Measure[] = z
  .array(measureRowSchema)
  .parse(table.measures)
  .map((row) => ({ ...row, volume_L: asQuantity(row.volume_L) }));

const byId: ReadonlyMap<string, Measure> = new Map(allMeasures.map((measure) => [measure.id, measure]));

function rangesById<Id extends string>(
  ids: readonly Id[],
  rows: readonly { readonly id: string; readonly range: RangeRow }[],
): Readonly<Record<Id, Quantity>> {
  return Object.fromEntries(
    ids.map((id) => {
      const row = rows.find((candidate) => candidate.id === id);
      if (row === undefined) throw new RangeError(`reference/measures.json has no ${id}`);
      return [id, asQuantity(rangeSchema.parse(row.range))];
    }),
  ) as Readonly<Record<Id, Quantity>>;
}

/** What each fill does to a container's volume. */
export const fillTimes: Readonly<Record<FillId, Quantity>> = rangesById(
  fillIds,
  table.fills.map(({ id, times }) => ({ id, range: times })),
);

/** What "a lot" comes to, in litres. */
export const vagueVolume_L: Readonly<Record<VagueId, Quantity>> = rangesById(
  vagueIds,
  table.vague.map(({ id, volume_L }) => ({ id, range: volume_L })),
);

/** What "a few" comes to. */
export const vagueCount: Readonly<Record<VagueCountId, Quantity>> = rangesById(
  vagueCountIds,
  table.vagueCounts.map(({ id, count }) => ({ id, range: count })),
);

export function measureById(id: string): Measure | undefined {
  return byId.get(id);
}

/** An amount's volume as it lies and its wet mass, draw by draw. */
export interface Sized {
  readonly volume_m3: Float64Array;
  readonly mass_kg: Float64Array;
}

/** What sizing an amount needs to know besides the amount. */
export interface Sizing {
  readonly draws: Draws;
  readonly material: KnownMaterial;
  /** Whose amount it is: the subject of the draws of counts, masses and volumes (`our-straw/count`). */
  readonly name: string;
  readonly ownSizes?: OwnSizes | undefined;
  /** Where the amount stands in the input, for problems. */
  readonly path: string;
}

const LITRES_PER_M3 = 1000;

/**
 * An amount as volume and mass. Loose or packed decides the density; a grower's own sizes go before
 * published ones. Problems: `unknown-measure`, or `missing` where the material has no density.
 */
export function sizeAmount(amount: Amount, sizing: Sizing): Outcome<Sized> {
  const { draws, material, name, path } = sizing;
  const density = densityDraws(draws, material, isPacked(amount));
  if (density === undefined) {
    return bad({ code: 'missing', path, found: material.id, wanted: 'a material whose density is known, or a mass' });
  }
  if ('mass_kg' in amount) {
    const mass_kg = drawsOf(draws, `${name}/mass_kg`, amount.mass_kg, positive);
    return good({ mass_kg, volume_m3: mass_kg.map((mass, i) => mass / (density[i] ?? Number.NaN)) });
  }
  const volume = volumeDraws(amount, sizing);
  if (!volume.ok) return volume;
  const volume_m3 = volume.value;
  return good({ volume_m3, mass_kg: volume_m3.map((cubicMetres, i) => cubicMetres * (density[i] ?? Number.NaN)) });
}

/** How many of a measure a volume fills, draw by draw. */
export function countInMeasure(
  volume_m3: Float64Array,
  measure: string,
  { draws, ownSizes, path }: Pick<Sizing, 'draws' | 'ownSizes' | 'path'>,
): Outcome<Float64Array> {
  const each = measureDraws_L(draws, measure, ownSizes, path);
  if (!each.ok) return each;
  return good(volume_m3.map((cubicMetres, i) => (cubicMetres * LITRES_PER_M3) / (each.value[i] ?? Number.NaN)));
}

function isPacked(amount: Amount): boolean {
  if (amount.packed !== undefined) return amount.packed;
  return 'measure' in amount && byId.get(amount.measure)?.packing === 'packed';
}

function densityDraws(draws: Draws, material: KnownMaterial, packed: boolean): Float64Array | undefined {
  const loose = propertyDraws(draws, material, 'densityLoose_kgPerM3AsIs');
  const pressed = propertyDraws(draws, material, 'densityPacked_kgPerM3AsIs');
  return packed ? (pressed ?? loose) : (loose ?? pressed);
}

function volumeDraws(amount: Exclude<Amount, { mass_kg: Quantity }>, sizing: Sizing): Outcome<Float64Array> {
  const { draws, name, ownSizes, path } = sizing;
  if ('volume_m3' in amount) return good(drawsOf(draws, `${name}/volume_m3`, amount.volume_m3, positive));
  if ('vague' in amount) {
    const litres = drawsOf(draws, `${name}/volume_L`, vagueVolume_L[amount.vague], positive);
    return good(litres.map((value) => value / LITRES_PER_M3));
  }
  const each = measureDraws_L(draws, amount.measure, ownSizes, `${path}.measure`);
  if (!each.ok) return each;
  const count = typeof amount.count === 'string' ? vagueCount[amount.count] : amount.count;
  const counts = drawsOf(draws, `${name}/count`, count, positive);
  const fills = fillDraws(draws, amount.fill, byId.get(amount.measure)?.kind ?? 'container');
  return good(
    each.value.map((litres, i) => (litres * (counts[i] ?? Number.NaN) * (fills[i] ?? Number.NaN)) / LITRES_PER_M3),
  );
}

function fillDraws(draws: Draws, fill: FillId | undefined, kind: Measure['kind']): Float64Array {
  if (fill === undefined && kind !== 'container') return new Float64Array(draws.count).fill(1);
  const filled = fill ?? 'level';
  return drawsOf(draws, `${filled}/fill_times`, fillTimes[filled], positive);
}

function measureDraws_L(
  draws: Draws,
  measure: string,
  ownSizes: OwnSizes | undefined,
  path: string,
): Outcome<Float64Array> {
  const own = ownSizes !== undefined && Object.hasOwn(ownSizes, measure) ? ownSizes[measure] : undefined;
  const volume_L = own ?? byId.get(measure)?.volume_L;
  if (volume_L === undefined) {
    const known = [...byId.keys(), ...Object.keys(ownSizes ?? {})];
    return bad({ code: 'unknown-measure', path, found: measure, wanted: nearest(measure, known).join(', ') });
  }
  return good(drawsOf(draws, `${measure}/volume_L`, volume_L, positive));
}
