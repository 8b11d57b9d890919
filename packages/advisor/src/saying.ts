import type { Quantity } from '@loamwright/science';
import { type Figure, isMessageKey, type MessageKey, type Place, type Saying } from '@loamwright/words';

/** A sentence of a report. */
export function say(key: MessageKey, places?: Readonly<Record<string, Place>>): Saying {
  return places === undefined ? { key } : { key, places };
}

/**
 * A message whose key is put together from an id of the program's own lists.
 * @throws RangeError when there is no such message: a mistake of the program.
 */
export function sayOf(group: string, id: string, places?: Readonly<Record<string, Place>>): Saying {
  const key = `${group}.${id}`;
  if (!isMessageKey(key)) throw new RangeError(`no message ${key}`);
  return say(key, places);
}

/** A temperature in a sentence. */
export function temperature(temp_degC: Quantity): Figure {
  return { figure: temp_degC, unit: 'degC', as: 'temperature' };
}

/** A difference of temperatures. */
export function difference(change_K: number): Figure {
  return { figure: change_K, unit: 'degCDifference', as: 'temperatureDifference' };
}

/** A mass in a sentence. */
export function mass(mass_kg: Quantity): Figure {
  return { figure: mass_kg, unit: 'kg', as: 'mass' };
}

/** A small mass, such as that of an element. */
export function smallMass(mass_kg: Quantity): Figure {
  return { figure: mass_kg, unit: 'kg', as: 'smallMass' };
}

/** A bulk density. */
export function density(density_kgPerM3AsIs: Quantity): Figure {
  return { figure: density_kgPerM3AsIs, unit: 'kgPerM3', as: 'bulkDensity' };
}

/** A weight on each square metre or square foot. */
export function areaLoad(load_kgPerM2: Quantity): Figure {
  return { figure: load_kgPerM2, unit: 'kgPerM2', as: 'areaLoad' };
}

/** A weight of what is spread on a bed, for its area. */
export function dressing(rate_kgPerM2: Quantity): Figure {
  return { figure: rate_kgPerM2, unit: 'kgPerM2', as: 'dressing' };
}

/** The same as trials on fields have it. */
export function fieldRate(rate_kgPerM2: Quantity): Figure {
  return { figure: rate_kgPerM2, unit: 'kgPerM2', as: 'fieldRate' };
}

/** Water that stands in or on a bed, for its area; a millimetre is a litre on each square metre. */
export function liquidCover(depth_mm: Quantity): Figure {
  return { figure: depth_mm, unit: 'LPerM2', as: 'liquidCover' };
}

/** A volume of loose stuff that is spread on a bed, for its area. */
export function bulkCover(cover_LPerM2: Quantity): Figure {
  return { figure: cover_LPerM2, unit: 'LPerM2', as: 'bulkCover' };
}

/** A height of a heap. */
export function height(height_m: Quantity): Figure {
  return { figure: height_m, unit: 'm', as: 'length' };
}

/** A volume of liquid. */
export function liquid(volume_L: Quantity): Figure {
  return { figure: volume_L, unit: 'L', as: 'liquid' };
}

/** A volume of loose stuff, such as a heap. */
export function bulk(volume_m3: Quantity): Figure {
  return { figure: volume_m3, unit: 'm3', as: 'bulkVolume' };
}

/** An area of a bed. */
export function area(area_m2: Quantity): Figure {
  return { figure: area_m2, unit: 'm2', as: 'area' };
}

/** A depth in the heap or of a layer. */
export function depth(depth_m: Quantity): Figure {
  return { figure: depth_m, unit: 'm', as: 'depth' };
}
