import { convert } from './convert.ts';
import { type UnitSystem, unitFor } from './system.ts';
import { allUnits, type Dimension, type Unit, unitTable } from './table.ts';

/** What a person typed, kept beside what it means inside. */
export interface TypedQuantity {
  readonly value: number;
  readonly unit: Unit;
  /** The value in the dimension's SI unit (°C for temperatures). */
  readonly si: number;
}

const siUnit: Readonly<Record<Dimension, Unit>> = {
  mass: 'kg',
  volume: 'm3',
  length: 'm',
  area: 'm2',
  density: 'kgPerM3',
  rate: 'kgPerM2',
  cover: 'LPerM2',
  temperature: 'degC',
  temperatureDifference: 'degCDifference',
  speed: 'mPerS',
};

/** The unit in which the program keeps a dimension. */
export function siUnitOf(dimension: Dimension): Unit {
  return siUnit[dimension];
}

function unitTyped(word: string, dimension: Dimension): Unit | undefined {
  const lower = word.toLowerCase();
  return allUnits.find((unit) => {
    const row = unitTable[unit];
    return row.dimension === dimension && row.typed.includes(lower);
  });
}

const numberThenUnit = /^\s*([+\-−]?(?:\d+(?:[.,]\d+)?|[.,]\d+))\s*(.*?)\s*$/u;

/**
 * Reads "148 °F", "64C", "4,5 ft" or a bare number, which is then in `bareUnit`.
 * A decimal comma counts as a decimal point, and the minus sign as a hyphen. Anything else gives `undefined`: the caller says what
 * was found and what would do.
 */
export function readQuantity(text: string, dimension: Dimension, bareUnit: Unit): TypedQuantity | undefined {
  const match = numberThenUnit.exec(text);
  if (match === null) return undefined;
  const [, digits = '', word = ''] = match;
  const value = Number(digits.replace(',', '.').replace('−', '-'));
  const unit = word === '' ? bareUnit : unitTyped(word, dimension);
  if (unit === undefined || !Number.isFinite(value)) return undefined;
  return { value, unit, si: convert(value, unit, siUnit[dimension]) };
}

/** Lengths with an x between them, in metres; a unit that is typed counts for those before and after it that have none. */
export function readSides(text: string, bareUnit: Unit): readonly number[] | undefined {
  const parts = text.trim().split(betweenSides);
  const unit = parts.map(lengthTyped).findLast((one) => one !== undefined) ?? bareUnit;
  const sides = parts.map((part) => readQuantity(part, 'length', unit)?.si ?? Number.NaN);
  return parts.length > 1 && sides.every((side) => side > 0) ? sides : undefined;
}

const betweenSides = /\s*[x×*]\s*/iu;

function lengthTyped(side: string): Unit | undefined {
  return unitTyped(side.replace(/^[\d.,\s]+/u, '').trim(), 'length');
}

/** An area as it was typed. */
export interface TypedArea {
  readonly m2: number;
  /** As typed, with its unit where that was left to the reader's own. */
  readonly words: string;
}

/** An area, `12m2` or `100 ft2`, or the two sides of one, `4x8ft`; a bare number is in the reader's own unit. */
export function readArea(text: string, system: UnitSystem): TypedArea | undefined {
  const words = text.trim();
  const isBare = words.split(betweenSides).every((part) => /^[\d.,]+$/u.test(part));
  const said = (unit: Unit): string => (isBare ? `${words} ${unitTable[unit].symbol}` : words);
  const [one, other, ...more] = readSides(words, unitFor('length', system)) ?? [];
  if (one !== undefined && other !== undefined && more.length === 0)
    return { m2: one * other, words: said(unitFor('length', system)) };
  const unit = unitFor('area', system);
  const read = readQuantity(words, 'area', unit);
  return read === undefined ? undefined : { m2: read.si, words: said(unit) };
}
