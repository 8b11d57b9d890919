import materialTable from '@loamwright/reference/materials.json' with { type: 'json' };
import spreadTable from '@loamwright/reference/spreads.json' with { type: 'json' };
import {
  type Draws,
  drawsOf,
  fraction,
  fromPublished,
  isEstimate,
  percent,
  positive,
  type Quantity,
  type Scale,
  withSpread,
} from '../estimate/index.ts';
import {
  allMaterials,
  type Material,
  type MaterialClass,
  type PropertyId,
  type PublishedValue,
  propertyIds,
} from './material.ts';

/** The scale on which each property lives. */
export const scaleOf: Readonly<Record<PropertyId, Scale>> = {
  carbonToNitrogen_ratio: positive,
  nitrogen_pctDry: percent,
  moisture_pctWet: percent,
  densityLoose_kgPerM3AsIs: positive,
  densityPacked_kgPerM3AsIs: positive,
  volatileSolids_pctDry: percent,
  lignin_pctDry: percent,
  biodegradable_shareOfVolatile: fraction,
  phosphorus_pctDry: percent,
  potassium_pctDry: percent,
  storageLife_days: positive,
};

/** A material as the models see it: what kind of stuff, and each property as a quantity. */
export interface KnownMaterial {
  /** The subject of its draws: `ID/moisture_pctWet` and so on. */
  readonly id: string;
  readonly class: MaterialClass;
  readonly carbonCounts: boolean;
  readonly quantities: Readonly<Partial<Record<PropertyId, Quantity>>>;
}

interface SpreadCase {
  /** A material's class, `light` or `dense` for a density, or `any`. */
  readonly when: string;
  readonly halfWidth_onLine: number;
}
const spreads: Readonly<Record<PropertyId, readonly SpreadCase[]>> = spreadTable.spreads;

/**
 * How wide a lone typical value spreads: the distance on its scale's line from the middle to the 5th or
 * 95th percentile (`reference/spreads.json`, worked out from the printed ranges of the feedstock rows).
 */
export function spreadFor(property: PropertyId, typical: number, materialClass: MaterialClass): number {
  const weight = typical < spreadTable.lightBelow_kgPerM3AsIs ? 'light' : 'dense';
  const cases = spreads[property];
  const fitting =
    cases.find(({ when }) => when === materialClass) ??
    cases.find(({ when }) => when === weight) ??
    cases.find(({ when }) => when === 'any');
  if (fitting === undefined) throw new RangeError(`no spread for ${property} of ${materialClass} stuff`);
  return fitting.halfWidth_onLine;
}

function quantityFrom(property: PropertyId, value: PublishedValue, materialClass: MaterialClass): Quantity {
  const { low, typical, high, exact } = value;
  if (exact === true) return typical;
  const scale = scaleOf[property];
  return low !== undefined && high !== undefined
    ? fromPublished({ low, typical, high }, scale)
    : withSpread(typical, spreadFor(property, typical, materialClass), scale);
}

function know(material: Material): KnownMaterial {
  const quantities: Partial<Record<PropertyId, Quantity>> = {};
  for (const property of propertyIds) {
    const value = material.values[property];
    if (value !== undefined) quantities[property] = quantityFrom(property, value, material.class);
  }
  return { id: material.id, class: material.class, carbonCounts: material.carbonCounts, quantities };
}

const known: ReadonlyMap<string, KnownMaterial> = new Map(
  allMaterials.map((material) => [material.id, know(material)]),
);

/** A published material with its properties as quantities. */
export function knownMaterial(id: string): KnownMaterial | undefined {
  return known.get(id);
}

/** The draws of a property under its name; `undefined` where nothing is known of it. */
export function propertyDraws(draws: Draws, material: KnownMaterial, property: PropertyId): Float64Array | undefined {
  const quantity = material.quantities[property];
  return quantity === undefined ? undefined : drawsOf(draws, `${material.id}/${property}`, quantity, scaleOf[property]);
}

const { volatileSolidsPerCarbon_ratio } = materialTable.rules.carbonFromVolatileSolids;

/**
 * Carbon that counts in the C:N, % of dry matter: volatile solids / 1.8 (Adams et al. 1951, as taught by
 * Cornell; `reference/materials.json`, rules). 0 for stuff whose carbon is inert or not counted, `undefined`
 * where volatile solids are not known.
 */
export function carbonDraws_pctDry(draws: Draws, material: KnownMaterial): Float64Array | undefined {
  if (!material.carbonCounts) return new Float64Array(draws.count);
  return propertyDraws(draws, material, 'volatileSolids_pctDry')?.map(
    (volatileSolids) => volatileSolids / volatileSolidsPerCarbon_ratio,
  );
}

/**
 * Nitrogen that counts in the C:N, % of dry matter: carbon / (C:N), never the published nitrogen, because
 * tables average the two apart. 0 for stuff that is not counted, `undefined` where the C:N or the
 * volatile solids are not known.
 */
export function nitrogenDraws_pctDry(draws: Draws, material: KnownMaterial): Float64Array | undefined {
  const carbon = carbonDraws_pctDry(draws, material);
  if (!material.carbonCounts) return carbon;
  const ratio = propertyDraws(draws, material, 'carbonToNitrogen_ratio');
  return carbon === undefined || ratio === undefined
    ? undefined
    : carbon.map((value, i) => value / (ratio[i] ?? Number.NaN));
}

/** Carbon that counts as a quantity; see {@link carbonDraws_pctDry}. */
export function carbon_pctDry(material: KnownMaterial): Quantity | undefined {
  if (!material.carbonCounts) return 0;
  const volatileSolids = material.quantities.volatileSolids_pctDry;
  if (volatileSolids === undefined) return undefined;
  const carbon = (value: number): number => value / volatileSolidsPerCarbon_ratio;
  if (!isEstimate(volatileSolids)) return carbon(volatileSolids);
  const { p10, p50, p90 } = volatileSolids;
  return { p10: carbon(p10), p50: carbon(p50), p90: carbon(p90) };
}
