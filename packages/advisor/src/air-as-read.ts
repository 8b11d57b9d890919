import type { TempAtDay } from './heap-as-built.ts';

/**
 * The air at the beginning of each day, up to the last that is asked, °C: on straight lines between the readings, and before the first and
 * after the last as they were. None where nobody read it.
 */
export function airAsRead(air: readonly TempAtDay[], days: number): readonly number[] {
  const sorted = [...air].sort((a, b) => a.at_day - b.at_day);
  const [first] = sorted;
  if (first === undefined) return [];
  return Array.from({ length: 1 + Math.ceil(days) }, (_, day) => airOn(sorted, day) ?? first.temp_degC);
}

function airOn(sorted: readonly TempAtDay[], day: number): number | undefined {
  const before = sorted.findLast(({ at_day }) => at_day <= day);
  const after = sorted.find(({ at_day }) => at_day > day);
  if (before === undefined || after === undefined) return (before ?? after)?.temp_degC;
  const share = (day - before.at_day) / (after.at_day - before.at_day);
  return before.temp_degC + share * (after.temp_degC - before.temp_degC);
}
