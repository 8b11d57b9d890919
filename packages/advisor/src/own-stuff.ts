import type { Holding, MaterialFigures, Told } from '@loamwright/daybook';
import {
  isEstimate,
  type KnownMaterial,
  knownMaterial,
  type Material,
  materialById,
  type OwnQuantities,
  type PropertyId,
  type Quantity,
  type Stuffed,
  withOwn,
} from '@loamwright/science';

/** The daybook's name of each property that it can hold; ash is what is left of dry matter beside volatile solids. */
const figureOf: Readonly<Partial<Record<PropertyId, keyof MaterialFigures>>> = {
  nitrogen_pctDry: 'nitrogen_pctDry',
  carbonToNitrogen_ratio: 'carbonToNitrogen',
  moisture_pctWet: 'moisture_pctWet',
  densityLoose_kgPerM3AsIs: 'density_kgPerM3AsIs',
  densityPacked_kgPerM3AsIs: 'densityPacked_kgPerM3AsIs',
  volatileSolids_pctDry: 'ash_pctDry',
  phosphorus_pctDry: 'phosphorus_pctDry',
  potassium_pctDry: 'potassium_pctDry',
};

/** The daybook's figures under the names of the science. */
export function quantitiesOf(figures: MaterialFigures): OwnQuantities {
  const found = Object.entries(figureOf).flatMap(([property, name]): readonly (readonly [string, Quantity])[] => {
    const figure = figures[name];
    if (figure === undefined) return [];
    return [[property, name === 'ash_pctDry' ? restOfHundred(figure) : figure]];
  });
  return Object.fromEntries(found);
}

/** Properties under the daybook's names; what it has no name for is left out. */
export function figuresOf(quantities: OwnQuantities): MaterialFigures {
  return Object.fromEntries(
    Object.entries(quantities).flatMap(([property, quantity]): readonly (readonly [string, Quantity])[] => {
      const name = figureOf[property as PropertyId];
      if (name === undefined) return [];
      return [[name, name === 'ash_pctDry' ? restOfHundred(quantity) : quantity]];
    }),
  );
}

function restOfHundred(quantity: Quantity): Quantity {
  if (!isEstimate(quantity)) return 100 - quantity;
  const { p10, p50, p90 } = quantity;
  return { p10: 100 - p90, p50: 100 - p50, p90: 100 - p10 };
}

/** What the holding has written down of a material, as it counts now. */
export interface OwnFigures {
  readonly described: OwnQuantities;
  /** The last measurement of each property. */
  readonly measured: OwnQuantities;
}

/**
 * What counts of what was said and measured. Of each property the last measurement, for stuff dries and gets wet; and
 * none that is older than the words that describe it anew.
 */
export function ownFigures(material: string, holding: Holding): OwnFigures {
  const own = holding.materials.get(material);
  const described = quantitiesOf(own?.described?.body ?? {});
  const measured: Partial<Record<PropertyId, Quantity>> = {};
  for (const told of own?.measured ?? []) {
    for (const [property, quantity] of Object.entries(quantitiesOf(told.body))) {
      const id = property as PropertyId;
      if (described[id] !== undefined && before(told, own?.described ?? null)) continue;
      measured[id] = quantity;
    }
  }
  return { described, measured };
}

function before({ entry }: Told<'material-measured'>, described: Told<'material-described'> | null): boolean {
  if (described === null) return false;
  const { happened, written } = described.entry;
  return entry.happened < happened || (entry.happened === happened && entry.written < written);
}

/** The material of the tables that a material is, or is like. */
export function publishedFor(material: string, holding: Holding): Material | undefined {
  return materialById(material) ?? materialById(holding.materials.get(material)?.described?.body.like ?? material);
}

/** A material as the science takes it: of the tables or the holding's own, with what was said and measured of it. */
export function stuffed(material: string, doubtful: readonly string[], holding: Holding): Stuffed {
  const { described, measured } = ownFigures(material, holding);
  const like = materialById(material) === undefined ? holding.materials.get(material)?.described?.body.like : undefined;
  return {
    material,
    ...(like !== undefined && { like }),
    ...(Object.keys(described).length > 0 && { described }),
    ...(Object.keys(measured).length > 0 && { measured }),
    ...(doubtful.length > 0 && { doubtful }),
  };
}

/** A material with everything that is believed of it; undefined for one that is neither known nor like a known one. */
export function believedOf(material: string, holding: Holding): KnownMaterial | undefined {
  const published = publishedFor(material, holding);
  const known = published === undefined ? undefined : knownMaterial(published.id);
  return known === undefined ? undefined : withOwn(known, { id: material, ...ownFigures(material, holding) });
}
