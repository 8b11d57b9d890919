import { convert } from './convert.ts';
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
  temperature: 'degC',
  temperatureDifference: 'degCDifference',
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
