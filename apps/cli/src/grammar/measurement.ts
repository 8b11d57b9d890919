import type { Entered } from '@loamwright/daybook';
import { bad, good, type Outcome } from '@loamwright/science';
import {
  type Dimension,
  readQuantity,
  readSides,
  type ShownAs,
  type TypedQuantity,
  type Unit,
  type UnitSystem,
  unitFor,
  unitTable,
} from '@loamwright/units';

/** A measurement, and whether its unit was said or taken from the settings. */
export interface Measured extends TypedQuantity {
  readonly unitTyped: boolean;
}

const dimensionOf: Readonly<Record<'temperature' | 'length' | 'depth' | 'liquid', Dimension>> = {
  temperature: 'temperature',
  length: 'length',
  depth: 'length',
  liquid: 'volume',
};

/**
 * A length, a temperature or a volume of water: `148F`, `148` (in the person's own unit), `40cm`, `20 L`.
 * Problem: `measurement-unreadable`.
 */
export function readMeasurement(
  text: string,
  as: keyof typeof dimensionOf & ShownAs,
  path: string,
  system: UnitSystem,
): Outcome<Measured> {
  const bare = unitFor(as, system);
  const read = readQuantity(text.slice(0, 40), dimensionOf[as], bare);
  if (read !== undefined && (as === 'temperature' || read.value >= 0)) {
    return good({ ...read, unitTyped: /\p{L}|["′″°']/u.test(text) });
  }
  return bad({ code: 'measurement-unreadable', path, found: text.slice(0, 40), wanted: examples[as](bare) });
}

const examples: Readonly<Record<keyof typeof dimensionOf, (bare: Unit) => string>> = {
  temperature: () => '148F, 64.5C',
  length: () => '1.2m, 4ft',
  depth: () => '40cm, 16in',
  liquid: () => '20 L, 5 gal',
};

/** A measurement as the entry keeps it, in the unit it was typed in. */
export function enteredOf({ value, unit }: Measured): Entered {
  return { amount: value, unit: unitTable[unit].symbol };
}

/** Whether a text begins as a temperature would: `148F`, `-3`, `64,5 °C`. */
export function looksLikeTemperature(text: string): boolean {
  return readQuantity(text, 'temperature', 'degC') !== undefined;
}

/** Inner width, depth and height of a bay. */
export interface BaySize {
  readonly width_m: number;
  readonly depth_m: number;
  readonly height_m: number;
}

/** `1.2x1.2x1m`, `4x4x4 ft`, `1.2m x 120cm x 1m`: width, depth, height; the last unit counts for those that have none. */
export function readBaySize(text: string, system: UnitSystem): BaySize | undefined {
  const [width_m, depth_m, height_m, ...more] = readSides(text.slice(0, 60), unitFor('length', system)) ?? [];
  if (width_m === undefined || depth_m === undefined || height_m === undefined || more.length > 0) return undefined;
  return { width_m, depth_m, height_m };
}
