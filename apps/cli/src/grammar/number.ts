import type { Quantity } from '@loamwright/science';

/** A number read from the front of a list of words, and the words after it. */
export interface NumberRead {
  readonly value: Quantity;
  readonly rest: readonly string[];
}

/** The numbers that are said in a word. */
export const toTwelve: Readonly<Record<string, number>> = {
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  eleven: 11,
  twelve: 12,
};

const words: Readonly<Record<string, number>> = {
  ...toTwelve,
  dozen: 12,
  fifteen: 15,
  twenty: 20,
  thirty: 30,
};

const signs: Readonly<Record<string, number>> = {
  '½': 1 / 2,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
};

/** Nine digits are a million tonnes in any measure: more is a slip of the finger. */
const digits = /^\d{1,9}(?:[.,]\d{1,9})?$/u;
const slashed = /^(\d{1,3})\/([1-9]\d{0,2})$/u;
const digitsThenSign = /^(\d{1,9})([½¼¾⅓⅔])$/u;
const span = /^(\d{1,9}(?:[.,]\d{1,9})?)-(\d{1,9}(?:[.,]\d{1,9})?)$/u;

/**
 * Text as the grammar sees it: lower case, one kind of hyphen, hyphens between letters as blanks ("half-a-barrow"),
 * and a blank between a number and what follows it ("9buckets").
 */
export function wordsOf(text: string): readonly string[] {
  const spaced = text
    .normalize('NFC')
    .toLowerCase()
    .replace(/[‐‑–—−]/gu, '-')
    .replace(/_/gu, ' ')
    .replace(/(?<=\p{L})-(?=\p{L})/gu, ' ')
    .replace(/(?<=\d)\s*-\s*(?=\d)/gu, '-')
    .replace(/(?<=[\d½¼¾⅓⅔])(?=\p{L})/gu, ' ');
  return spaced.split(/\s+/u).filter((word) => word !== '');
}

/**
 * The number that a list of words begins with: `9`, `2.5`, `2,5`, `1/2`, `2½`, `two`, `two and a half`, `3-4`,
 * `3 to 4`. The ends of a span are read as those that are passed once in ten times, with the middle likeliest.
 */
export function readNumber(list: readonly string[]): NumberRead | undefined {
  const [first = ''] = list;
  const spanned = span.exec(first);
  if (spanned !== null) return spanRead(decimal(spanned[1] ?? ''), decimal(spanned[2] ?? ''), list.slice(1));
  const low = readPlain(list);
  if (low === undefined) return undefined;
  if (low.rest[0] === 'to' || low.rest[0] === 'or') {
    const high = readPlain(low.rest.slice(1));
    if (high !== undefined) return spanRead(low.value, high.value, high.rest);
  }
  return low;
}

interface PlainRead {
  readonly value: number;
  readonly rest: readonly string[];
}

function spanRead(low: number, high: number, rest: readonly string[]): NumberRead | undefined {
  if (low > high || low <= 0) return undefined;
  return { value: low === high ? low : { p10: low, p50: (low + high) / 2, p90: high }, rest };
}

function readPlain(list: readonly string[]): PlainRead | undefined {
  const whole = readOne(list[0]);
  if (whole === undefined) return undefined;
  const rest = list.slice(1);
  const part = readPart(rest);
  return part === undefined ? { value: whole, rest } : { value: whole + part.value, rest: part.rest };
}

/** What may follow a whole number: `½`, `1/2`, `and a half`, `and a quarter`. */
function readPart(rest: readonly string[]): PlainRead | undefined {
  const [first = '', second, third = ''] = rest;
  const fraction = signs[first] ?? slash(first);
  if (fraction !== undefined && fraction < 1) return { value: fraction, rest: rest.slice(1) };
  if (first !== 'and' || (second !== 'a' && second !== 'one')) return undefined;
  if (third === 'half') return { value: 1 / 2, rest: rest.slice(3) };
  return third === 'quarter' ? { value: 1 / 4, rest: rest.slice(3) } : undefined;
}

function readOne(word = ''): number | undefined {
  if (digits.test(word)) return decimal(word);
  const mixed = digitsThenSign.exec(word);
  if (mixed !== null) return Number(mixed[1]) + (signs[mixed[2] ?? ''] ?? 0);
  return (Object.hasOwn(words, word) ? words[word] : undefined) ?? signs[word] ?? slash(word);
}

function slash(word: string): number | undefined {
  const match = slashed.exec(word);
  return match === null ? undefined : Number(match[1]) / Number(match[2]);
}

function decimal(text: string): number {
  return Number(text.replace(',', '.'));
}
