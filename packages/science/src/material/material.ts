import table from '@loamwright/reference/materials.json' with { type: 'json' };
import { z } from 'zod';
import { bad, good, type Mark, type Outcome } from '../catalogue/index.ts';
import { type CautionId, cautionIds } from '../caution/index.ts';
import { nearest } from './nearest.ts';

/**
 * What part a material plays: `nitrogen-rich` stuff has a C:N below about 30, `carbon-rich` above;
 * `bulking` is coarse and keeps its shape; `mineral` brings ash; a `starter` is compost or soil.
 */
export type MaterialClass = 'nitrogen-rich' | 'carbon-rich' | 'bulking' | 'mineral' | 'starter' | 'water';

/** How a material lies in the hand. */
export type Particle = 'fine' | 'leafy' | 'stringy' | 'coarse' | 'sheet' | 'pellet' | 'lumpy' | 'pasty' | 'liquid';

/** Whether an input may go on a heap: at all, only on one that is hot and logged, or never. */
export type Permit = 'allowed' | 'only-hot' | 'never';

/** The properties a material may have; the unit and the basis stand in the name. */
export const propertyIds = [
  'carbonToNitrogen_ratio',
  'nitrogen_pctDry',
  'moisture_pctWet',
  'densityLoose_kgPerM3AsIs',
  'densityPacked_kgPerM3AsIs',
  'volatileSolids_pctDry',
  'lignin_pctDry',
  'biodegradable_shareOfVolatile',
  'phosphorus_pctDry',
  'potassium_pctDry',
  'storageLife_days',
] as const;
export type PropertyId = (typeof propertyIds)[number];

/** A published figure: low, typical and high, or a typical value alone. */
export interface PublishedValue {
  readonly low?: number | undefined;
  readonly typical: number;
  readonly high?: number | undefined;
  /** True for what has no spread at all, such as the moisture of water. */
  readonly exact?: boolean | undefined;
  /** Where the typical value comes from: an id of `reference/sources.json`. */
  readonly source: string;
  /** Where the range comes from, when from elsewhere. */
  readonly rangeSource?: string | undefined;
  readonly place?: string | undefined;
  readonly mark: Mark;
  /** For each number, the row of `reference/feedstock-rows.csv` it stands in. */
  readonly rows?:
    | { readonly low?: string | undefined; readonly typical?: string | undefined; readonly high?: string | undefined }
    | undefined;
  readonly note?: string | undefined;
}

/** A material that goes into heaps, with its published values. */
export interface Material {
  /** Kebab-case; its names are the messages `material.ID.*`. */
  readonly id: string;
  readonly class: MaterialClass;
  readonly particle: Particle;
  /** Whether chopping pays, and the id of the reason (message `chop.reason.ID`). */
  readonly chop: { readonly pays: boolean; readonly reason: string };
  /** False where the carbon is inert or is not counted in the C:N: soil, ash, charcoal, water. */
  readonly carbonCounts: boolean;
  /** The `material_key` of the rows of `reference/feedstock-rows.csv` that describe it. */
  readonly feedstockKeys: readonly string[];
  readonly permit: Permit;
  /** Id of the reason (message `permit.reason.ID`). */
  readonly permitReason: string;
  readonly permitSource: string;
  readonly permitMark: Mark;
  readonly cautions: readonly CautionId[];
  /**
   * Whether published nitrogen times published C:N gives a carbon that plant stuff can have (25 to 60 % of
   * dry matter); `none` where one of the two is not published. An unmatched pair is never multiplied.
   */
  readonly pair: 'matched' | 'unmatched' | 'none';
  readonly note?: string | undefined;
  readonly values: Readonly<Partial<Record<PropertyId, PublishedValue>>>;
}

/** A doubtful input and whether it may go on a heap. */
export interface DoubtfulInput {
  readonly id: string;
  readonly permit: Permit;
  readonly permitReason: string;
  readonly source: string;
  readonly place: string;
  readonly mark: Mark;
  readonly cautions: readonly CautionId[];
  readonly note?: string | undefined;
}

/** A general word ("browns"), and the materials that growers usually mean by it. */
export interface GeneralName {
  /** Kebab-case; what it is typed as is the message `general.ID.words`. */
  readonly id: string;
  readonly materials: readonly string[];
  readonly source: string;
  readonly mark: Mark;
}

const markSchema: z.ZodType<Mark> = z.enum(['seen', 'memory', 'derived']);
const permitSchema: z.ZodType<Permit> = z.enum(['allowed', 'only-hot', 'never']);
const cautionsSchema: z.ZodType<readonly CautionId[]> = z.array(z.enum(cautionIds));

const publishedValueSchema: z.ZodType<PublishedValue> = z
  .strictObject({
    low: z.number().optional(),
    typical: z.number(),
    high: z.number().optional(),
    exact: z.boolean().optional(),
    source: z.string(),
    rangeSource: z.string().optional(),
    place: z.string().optional(),
    mark: markSchema,
    rows: z
      .strictObject({ low: z.string().optional(), typical: z.string().optional(), high: z.string().optional() })
      .optional(),
    note: z.string().optional(),
  })
  .refine(({ low, high }) => (low === undefined) === (high === undefined), 'low and high come together');

/** How a row of the table gives a value: as a figure of its own, or as that of the nearest material. */
type ValueRow = PublishedValue | { readonly like: string; readonly note?: string | undefined };

type MaterialRow = Omit<Material, 'values'> & { readonly values: Readonly<Partial<Record<PropertyId, ValueRow>>> };

const valueRowSchema: z.ZodType<ValueRow> = z.union([
  z.strictObject({ like: z.string(), note: z.string().optional() }),
  publishedValueSchema,
]);

const materialRowSchema: z.ZodType<MaterialRow> = z.strictObject({
  id: z.string().regex(/^[a-z]+(-[a-z]+)*$/),
  class: z.enum(['nitrogen-rich', 'carbon-rich', 'bulking', 'mineral', 'starter', 'water']),
  particle: z.enum(['fine', 'leafy', 'stringy', 'coarse', 'sheet', 'pellet', 'lumpy', 'pasty', 'liquid']),
  chop: z.strictObject({ pays: z.boolean(), reason: z.string() }),
  carbonCounts: z.boolean(),
  feedstockKeys: z.array(z.string()),
  permit: permitSchema,
  permitReason: z.string(),
  permitSource: z.string(),
  permitMark: markSchema,
  cautions: cautionsSchema,
  pair: z.enum(['matched', 'unmatched', 'none']),
  note: z.string().optional(),
  values: z.partialRecord(z.enum(propertyIds), valueRowSchema),
});

const doubtfulInputSchema: z.ZodType<DoubtfulInput> = z.strictObject({
  id: z.string(),
  permit: permitSchema,
  permitReason: z.string(),
  source: z.string(),
  place: z.string(),
  mark: markSchema,
  cautions: cautionsSchema,
  note: z.string().optional(),
});

const generalNameSchema: z.ZodType<GeneralName> = z.strictObject({
  id: z.string(),
  materials: z.array(z.string()),
  source: z.string(),
  mark: markSchema,
});

const rows: readonly MaterialRow[] = z.array(materialRowSchema).parse(table.materials);
const rowById: ReadonlyMap<string, MaterialRow> = new Map(rows.map((row) => [row.id, row]));

/**
 * The value a row gives; one taken from the nearest material is `derived` and says so. It must be a figure
 * of that material's own, so that no value is taken over twice.
 */
function publishedValueOf(row: ValueRow, property: PropertyId, id: string): PublishedValue {
  if (!('like' in row)) return row;
  const own = rowById.get(row.like)?.values[property];
  if (own === undefined || 'like' in own) {
    throw new RangeError(
      `reference/materials.json: ${id}/${property} is like ${row.like}, which has no figure of its own`,
    );
  }
  const { low, typical, high, exact, source, place } = own;
  const taken = `no figure of its own: taken from ${row.like}, the nearest material`;
  return { low, typical, high, exact, source, place, mark: 'derived', note: joined(taken, row.note) };
}

function joined(...notes: readonly (string | undefined)[]): string {
  return notes.filter((note) => note !== undefined).join('; ');
}

function materialOf(row: MaterialRow): Material {
  const values: Partial<Record<PropertyId, PublishedValue>> = {};
  for (const property of propertyIds) {
    const given = row.values[property];
    if (given !== undefined) values[property] = publishedValueOf(given, property, row.id);
  }
  return { ...row, values };
}

/** Every material the program knows, in the table's order. */
export const allMaterials: readonly Material[] = rows.map(materialOf);

/** Doubtful inputs that growers ask about, with what may be done with each. */
export const doubtfulInputs: readonly DoubtfulInput[] = z.array(doubtfulInputSchema).parse(table.neverInputs);

/** Words too general to be one material, each with those it may mean. */
export const generalNames: readonly GeneralName[] = z.array(generalNameSchema).parse(table.generalNames);

const byId: ReadonlyMap<string, Material> = new Map(allMaterials.map((material) => [material.id, material]));

export function materialById(id: string): Material | undefined {
  return byId.get(id);
}

/** The material of an id that came from outside, or the problem `unknown-material` with the nearest ids. */
export function materialAt(id: string, path: string): Outcome<Material> {
  const material = byId.get(id);
  if (material !== undefined) return good(material);
  return bad({ code: 'unknown-material', path, found: id, wanted: nearest(id, [...byId.keys()]).join(', ') });
}
