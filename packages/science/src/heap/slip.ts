import { convert } from '@loamwright/units';

/** Slips of the finger or the eye that turn one number into another, the likeliest first. */
export const slips = [
  'unit-swapped',
  'digits-swapped',
  'one-place-along',
  'point-missing',
  'digit-missed',
  'wrong-digit',
] as const;
export type Slip = (typeof slips)[number];

/** The unit a thermometer reads in. */
export type TemperatureUnit = 'degC' | 'degF';

/** A number that may have been meant, and the slip that would explain what was typed. */
export interface Candidate {
  readonly slip: Slip;
  readonly value: number;
  readonly unit: TemperatureUnit;
  readonly temp_degC: number;
}

/**
 * What may have been meant by a number, for each kind of slip; the number itself is not among them.
 * Only slips of whole numbers are looked for digit by digit: 148 has digits to swap, 64.4 is a conversion.
 */
export function slipsOf(value: number, unit: TemperatureUnit): readonly Candidate[] {
  const other: TemperatureUnit = unit === 'degC' ? 'degF' : 'degC';
  const found: Candidate[] = [candidate('unit-swapped', value, other)];
  if (Number.isInteger(value) && value >= 10 && value <= 9999) {
    const text = String(value);
    for (const meant of swapped(text)) found.push(candidate('digits-swapped', meant, unit));
    if (text.length === 3) found.push(candidate('one-place-along', Number(`1${text.slice(0, 2)}`), unit));
    if (text.length === 2)
      for (const last of '0123456789') found.push(candidate('digit-missed', Number(text + last), unit));
    if (text.length > 2) found.push(candidate('point-missing', value / 10, unit));
    for (const meant of oneWrong(text)) found.push(candidate('wrong-digit', meant, unit));
  }
  return found.filter((each) => each.value !== value || each.unit !== unit);
}

function candidate(slip: Slip, value: number, unit: TemperatureUnit): Candidate {
  return { slip, value, unit, temp_degC: convert(value, unit, 'degC') };
}

/** 315 → 135, 351: two digits beside one another changed places; nobody means a number that begins with 0. */
function swapped(text: string): readonly number[] {
  return [...text]
    .slice(1)
    .map((digit, i) => text.slice(0, i) + digit + (text[i] ?? '') + text.slice(i + 2))
    .filter((meant) => !meant.startsWith('0'))
    .map(Number);
}

/** 243 → 143: one digit is another. */
function oneWrong(text: string): readonly number[] {
  return [...text].flatMap((_, i) =>
    [...(i === 0 ? '123456789' : '0123456789')].map((digit) => Number(text.slice(0, i) + digit + text.slice(i + 1))),
  );
}
