import { type Unit, unitTable } from './table.ts';

/**
 * A value in one unit, told in another of the same dimension.
 *
 * @throws RangeError when the two units measure different things: that is a mistake of the program,
 *   never of the grower.
 */
export function convert(value: number, from: Unit, to: Unit): number {
  if (from === to) return value;
  const source = unitTable[from];
  const target = unitTable[to];
  if (source.dimension !== target.dimension) {
    throw new RangeError(`${from} is a ${source.dimension}, ${to} a ${target.dimension}`);
  }
  const sourceZero = source.zero_degC ?? 0;
  const targetZero = target.zero_degC ?? 0;
  return (value * source.factor + sourceZero - targetZero) / target.factor;
}
