import { z } from 'zod';
import { bad, good, type Outcome } from '../catalogue/index.ts';
import type { CautionId } from '../caution/index.ts';
import { type Draws, isEstimate, likely, positiveQuantity } from '../estimate/index.ts';
import {
  type Amount,
  amountSchema,
  carbon_pctDry,
  carbonDraws_pctDry,
  type DoubtfulInput,
  doubtfulInputs,
  type KnownMaterial,
  knownMaterial,
  type Material,
  materialAt,
  nitrogenDraws_pctDry,
  type OwnQuantities,
  type OwnSizes,
  ownQuantitiesSchema,
  type Permit,
  type PropertyId,
  propertyDraws,
  sizeAmount,
  withOwn,
} from '../material/index.ts';
import { carbonFromRatio_pctDry, impliedCarbonFits } from './balance.ts';
import type { Portion } from './portion.ts';

/** A material as the grower has it: published, corrected, or their own. */
export interface Stuffed {
  /** A published material's id, or a name of the grower's own when `like` is given. */
  readonly material: string;
  /** The published material that one of the grower's own is most like. */
  readonly like?: string | undefined;
  /** Values that take the place of the published ones. */
  readonly described?: OwnQuantities | undefined;
  /** Measurements, which narrow what was believed. */
  readonly measured?: OwnQuantities | undefined;
  /** Ids of doubtful inputs that are in it (`seeding-weeds`). */
  readonly doubtful?: readonly string[] | undefined;
  /** True for coarse chips that are screened out and used again: they count for water and air, not for C:N. */
  readonly screenedOut?: boolean | undefined;
}

/** A material and how much of it goes in. */
export interface Ingredient extends Stuffed {
  readonly amount: Amount;
  /** Whose amount it is, when one material stands on two lines; its draws go by this name. */
  readonly line?: string | undefined;
}

export const stuffedShape: Readonly<{
  material: z.ZodType<string>;
  like: z.ZodOptional<z.ZodType<string>>;
  described: z.ZodOptional<z.ZodType<OwnQuantities>>;
  measured: z.ZodOptional<z.ZodType<OwnQuantities>>;
  doubtful: z.ZodOptional<z.ZodType<readonly string[]>>;
  screenedOut: z.ZodOptional<z.ZodType<boolean>>;
}> = {
  material: z.string().min(1).meta({ description: 'A material’s id, or the grower’s own name for it with `like`.' }),
  like: z.string().min(1).optional().meta({ description: 'The known material that an own one is most like.' }),
  described: ownQuantitiesSchema.optional(),
  measured: ownQuantitiesSchema.optional(),
  doubtful: z.array(z.string()).optional().meta({ description: 'Doubtful inputs that are in it.' }),
  screenedOut: z.boolean().optional().meta({ description: 'Coarse chips that come out again: not in the C:N.' }),
};

export const ingredientSchema: z.ZodType<Ingredient> = z.strictObject({
  ...stuffedShape,
  amount: amountSchema,
  line: z.string().min(1).optional().meta({ description: 'Tells two lines of one material apart.' }),
});

/** The grower's own sizes of measures, litres each. */
export const ownSizesSchema: z.ZodType<OwnSizes> = z.record(z.string(), positiveQuantity('Litres it holds.'));

/** Whether an ingredient may go on a heap, and why. */
export interface Permitted {
  readonly material: string;
  readonly permit: Permit;
  /** Id of the reason; its words are the message `permit.reason.REASON`. */
  readonly reason: string;
}

export const permittedShape: Readonly<{
  material: z.ZodType<string>;
  permit: z.ZodType<Permit>;
  reason: z.ZodType<string>;
}> = { material: z.string(), permit: z.enum(['allowed', 'only-hot', 'never']), reason: z.string() };

/** An ingredient with everything that is known of it. */
export interface Resolved {
  readonly given: Stuffed;
  readonly published: Material;
  readonly known: KnownMaterial;
  readonly permitted: Permitted;
  readonly cautions: readonly CautionId[];
  /** True where nitrogen and C:N as they were given can't belong together; the C:N was believed. */
  readonly unmatchedPair: boolean;
}

const doubtfulById: ReadonlyMap<string, DoubtfulInput> = new Map(doubtfulInputs.map((input) => [input.id, input]));

/**
 * Looks an ingredient up. Problems: `unknown-material`; `not-for-heaps` for what may never go on one;
 * `missing` where a figure that the balance needs is not known.
 */
export function resolve(given: Stuffed, path: string): Outcome<Resolved> {
  const never = [given.material, ...(given.doubtful ?? [])]
    .map((id) => doubtfulById.get(id))
    .find((input) => input?.permit === 'never');
  if (never !== undefined) {
    return bad({ code: 'not-for-heaps', path, found: never.id, wanted: never.permitReason });
  }
  const unknownDoubt = given.doubtful?.find((id) => !doubtfulById.has(id));
  if (unknownDoubt !== undefined) {
    const wanted = [...doubtfulById.keys()].join(' | ');
    return bad({ code: 'not-one-of', path: `${path}.doubtful`, found: unknownDoubt, wanted });
  }
  const base = given.like ?? given.material;
  const published = materialAt(base, given.like === undefined ? `${path}.material` : `${path}.like`);
  if (!published.ok) return published;
  const publishedQuantities = knownMaterial(base);
  if (publishedQuantities === undefined) throw new RangeError(`${base} is listed but not known`);
  const { described, measured } = given;
  const known = withNitrogen(withOwn(publishedQuantities, { id: given.material, described, measured }), given);
  return good({
    given,
    published: published.value,
    known,
    permitted: permittedOf(given, published.value),
    cautions: [...published.value.cautions, ...doubtsOf(given).flatMap((input) => input.cautions)],
    unmatchedPair: isUnmatched(given, published.value),
  });
}

/** A nitrogen the grower knows goes before the published C:N; a C:N the grower knows goes before both. */
function withNitrogen(known: KnownMaterial, given: Stuffed): KnownMaterial {
  const own = { ...given.measured, ...given.described };
  const carbon = carbon_pctDry(known);
  const nitrogen = own.nitrogen_pctDry;
  if (nitrogen === undefined || own.carbonToNitrogen_ratio !== undefined || carbon === undefined) return known;
  const ratioAt = (value: number): number => likely(carbon) / value;
  const carbonToNitrogen_ratio = isEstimate(nitrogen)
    ? { p10: ratioAt(nitrogen.p90), p50: ratioAt(nitrogen.p50), p90: ratioAt(nitrogen.p10) }
    : ratioAt(nitrogen);
  return { ...known, quantities: { ...known.quantities, carbonToNitrogen_ratio } };
}

/** A pair the grower gives is judged as given; else the published one, as its table row says. */
function isUnmatched(given: Stuffed, published: Material): boolean {
  const { nitrogen_pctDry, carbonToNitrogen_ratio } = { ...given.measured, ...given.described };
  if (nitrogen_pctDry === undefined || carbonToNitrogen_ratio === undefined) return published.pair === 'unmatched';
  return !impliedCarbonFits(carbonFromRatio_pctDry(likely(nitrogen_pctDry), likely(carbonToNitrogen_ratio)));
}

function doubtsOf(given: Stuffed): readonly DoubtfulInput[] {
  return (given.doubtful ?? []).flatMap((id) => doubtfulById.get(id) ?? []);
}

/** The strictest of what the material and the doubtful things in it allow. */
function permittedOf(given: Stuffed, published: Material): Permitted {
  const strict = doubtsOf(given).find((input) => input.permit === 'only-hot');
  if (strict !== undefined && published.permit === 'allowed') {
    return { material: given.material, permit: strict.permit, reason: strict.permitReason };
  }
  return { material: given.material, permit: published.permit, reason: published.permitReason };
}

/** What sizing and weighing an ingredient needs besides itself. */
export interface Weighing {
  readonly draws: Draws;
  readonly ownSizes?: OwnSizes | undefined;
  /** Where the ingredient stands in the input. */
  readonly path: string;
}

/** An amount of a material as one portion per draw. */
export function weigh(
  resolved: Resolved,
  amount: Amount,
  name: string,
  { draws, ownSizes, path }: Weighing,
): Outcome<readonly Portion[]> {
  const { known, given } = resolved;
  const sized = sizeAmount(amount, { draws, material: known, name, ownSizes, path: `${path}.amount` });
  if (!sized.ok) return sized;
  const property = (id: PropertyId): Float64Array => propertyDraws(draws, known, id) ?? new Float64Array(draws.count);
  const moisture = propertyDraws(draws, known, 'moisture_pctWet');
  const carbon = carbonDraws_pctDry(draws, known);
  const nitrogen = nitrogenDraws_pctDry(draws, known);
  if (moisture === undefined || carbon === undefined || nitrogen === undefined) {
    const wanted = 'moisture_pctWet, volatileSolids_pctDry, carbonToNitrogen_ratio';
    return bad({ code: 'missing', path: `${path}.described`, found: known.id, wanted });
  }
  const volatileSolids = property('volatileSolids_pctDry');
  const degradable = property('biodegradable_shareOfVolatile');
  const phosphorus = property('phosphorus_pctDry');
  const potassium = property('potassium_pctDry');
  const counted = given.screenedOut === true ? 0 : 1;
  const liquid = resolved.published.particle === 'liquid';
  const portions = Array.from({ length: draws.count }, (_, i) => {
    const wet_kg = at(sized.value.mass_kg, i);
    const dry_kg = wet_kg * (1 - at(moisture, i) / 100);
    const ofDry = (share_pctDry: Float64Array): number => (dry_kg * at(share_pctDry, i)) / 100;
    const carbon_kg = counted * ofDry(carbon);
    const nitrogen_kg = counted * ofDry(nitrogen);
    return {
      wet_kg,
      dry_kg,
      volatileSolids_kg: ofDry(volatileSolids),
      carbon_kg,
      degradableCarbon_kg: carbon_kg * at(degradable, i),
      nitrogen_kg,
      availableNitrogen_kg: nitrogen_kg * at(degradable, i),
      phosphorus_kg: ofDry(phosphorus),
      potassium_kg: ofDry(potassium),
      volume_m3: liquid ? 0 : at(sized.value.volume_m3, i),
    };
  });
  if (!portions.every(isReal)) {
    return bad({ code: 'out-of-bounds', path, found: known.id, wanted: `amounts up to ${MOST_KG} kg` });
  }
  if (portions.some(({ nitrogen_kg, dry_kg }) => nitrogen_kg > dry_kg)) {
    return bad({ code: 'out-of-bounds', path: `${path}.described`, found: known.id, wanted: NO_MORE_NITROGEN });
  }
  return good(portions);
}

/** A very low C:N beside much carbon asks for more nitrogen than there is stuff. */
const NO_MORE_NITROGEN = 'a carbonToNitrogen_ratio that leaves less nitrogen than dry matter';

/** No heap is a million tonnes; beyond it figures overflow. */
const MOST_KG = 1e9;

function isReal(portion: Portion): boolean {
  return Object.values(portion).every((amount: number) => amount >= 0 && amount <= MOST_KG);
}

function at(values: Float64Array, i: number): number {
  return values[i] ?? Number.NaN;
}

/** The quantity's likely draws: one draw in the middle of everything, for what must be decided on likely values. */
export const likelyDraws: Draws = { count: 1, shares: () => Float64Array.of(0.5) };

/** The likely portion of an amount. */
export function weighLikely(
  resolved: Resolved,
  amount: Amount,
  name: string,
  weighing: Omit<Weighing, 'draws'>,
): Outcome<Portion> {
  const weighed = weigh(resolved, amount, name, { ...weighing, draws: likelyDraws });
  if (!weighed.ok) return weighed;
  const [portion] = weighed.value;
  if (portion === undefined) throw new RangeError('one draw gives one portion');
  return good(portion);
}
