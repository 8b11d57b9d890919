import { convert, type ShownAs, type Unit, type UnitSystem, unitFor, unitTable } from '@loamwright/units';

/** A number, or the three points of an uncertain one. */
export type Shown = number | { readonly p10: number; readonly p50: number; readonly p90: number };

const DIGITS = 2;

/** Two significant digits: a fork and a bucket do no better. */
export function sensible(value: number, locale: string): string {
  return new Intl.NumberFormat(locale, { maximumSignificantDigits: DIGITS }).format(value);
}

/** An end of a range, as coarse as what lies between: a temperature to whole degrees. */
function coarse(value: number, as: ShownAs, locale: string): string {
  if (as !== 'temperature') return sensible(value, locale);
  return new Intl.NumberFormat(locale, { maximumFractionDigits: 0 }).format(value);
}

/** A reading as it was typed: not rounded to two digits, a tenth of a degree at the most. */
function exact(value: number, locale: string): string {
  return new Intl.NumberFormat(locale, { maximumFractionDigits: 1 }).format(value);
}

/** The likely value in the reader's unit: "148 °F", "11 L". */
export function showLikely(value: Shown, siUnit: Unit, as: ShownAs, system: UnitSystem, locale: string): string {
  const unit = unitFor(as, system);
  const middle = typeof value === 'number' ? value : value.p50;
  const told = convert(middle, siUnit, unit);
  const text = as === 'temperature' ? exact(told, locale) : sensible(told, locale);
  return `${text} ${unitTable[unit].symbol}`;
}

/** From p10 to p90, in the reader's unit: "8.2 to 14 L"; one figure where both ends read alike. */
export function showRange(value: Shown, siUnit: Unit, as: ShownAs, system: UnitSystem, locale: string): string {
  if (typeof value === 'number') return showLikely(value, siUnit, as, system, locale);
  const unit = unitFor(as, system);
  const [low, high] = [value.p10, value.p90].map((end) => coarse(convert(end, siUnit, unit), as, locale));
  const symbol = unitTable[unit].symbol;
  return low === high ? `${low} ${symbol}` : `${low}–${high} ${symbol}`;
}
