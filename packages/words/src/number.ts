import { convert, type ShownAs, type Unit, type UnitSystem, unitFor, unitTable } from '@loamwright/units';

/** A number, or the three points of an uncertain one. */
export type Shown = number | { readonly p10: number; readonly p50: number; readonly p90: number };

const DIGITS = 2;
const DIGITS_FROM_HUNDRED = 3;

/** Two significant digits, three from a hundred up: no grower's figure is better than that. */
export function sensible(value: number, locale: string): string {
  const digits = Math.abs(value) >= 100 ? DIGITS_FROM_HUNDRED : DIGITS;
  return new Intl.NumberFormat(locale, { maximumSignificantDigits: digits }).format(value);
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
  const [low, high] = [value.p10, value.p90].map((end) => sensible(convert(end, siUnit, unit), locale));
  const symbol = unitTable[unit].symbol;
  return low === high ? `${low} ${symbol}` : `${low}–${high} ${symbol}`;
}
