import type { Entered } from '@loamwright/daybook';
import {
  type Amount,
  bad,
  type FillId,
  good,
  isEstimate,
  type Outcome,
  type Quantity,
  type VagueCountId,
  type VagueId,
} from '@loamwright/science';
import { allUnits, convert, type Unit, unitTable } from '@loamwright/units';
import type { Names } from './names.ts';
import { readNumber, wordsOf } from './number.ts';

/** An amount, and how it was given. */
export interface AmountRead {
  readonly amount: Amount;
  readonly entered: Entered;
}

const vague: Readonly<Record<string, VagueId>> = {
  'a bit': 'a-bit',
  'a little': 'a-bit',
  some: 'some',
  'a fair amount': 'some',
  'a lot': 'a-lot',
  lots: 'a-lot',
  plenty: 'a-lot',
};

const vagueCounts: readonly (readonly [readonly string[], VagueCountId])[] = [
  [['a', 'couple', 'of'], 'a-couple'],
  [['a', 'couple'], 'a-couple'],
  [['a', 'few'], 'a-few'],
  [['several'], 'several'],
];

const fills: readonly (readonly [readonly string[], FillId, number])[] = [
  [['three', 'quarters', 'of'], 'three-quarters', 0.75],
  [['three', 'quarters', 'full'], 'three-quarters', 0.75],
  [['three', 'quarter'], 'three-quarters', 0.75],
  [['a', 'quarter', 'of'], 'quarter', 0.25],
  [['a', 'quarter', 'full'], 'quarter', 0.25],
  [['quarter', 'of'], 'quarter', 0.25],
  [['quarter', 'full'], 'quarter', 0.25],
  [['quarter'], 'quarter', 0.25],
  [['half', 'full'], 'half', 0.5],
  [['half', 'of'], 'half', 0.5],
  [['half'], 'half', 0.5],
  [['heaped'], 'heaped', 1],
  [['heaping'], 'heaped', 1],
  [['level'], 'level', 1],
  [['full'], 'level', 1],
];

const packing: Readonly<Record<string, boolean>> = {
  packed: true,
  pressed: true,
  tight: true,
  loose: false,
  loosely: false,
};

/**
 * Reads an amount: `9 buckets`, `half a barrow`, `two and a half bags packed`, `3-4 bales`, `a few handfuls`, `20kg`,
 * `11 L`, `a lot`. The whole grammar stands in docs/commands.md.
 *
 * Problems: `amount-unreadable`, `unknown-measure`.
 *
 * @param path what the amount is of, for problems.
 */
export function readAmount(text: string, path: string, names: Names): Outcome<AmountRead> {
  const all = wordsOf(text.slice(0, LONGEST));
  const packedWord = all.find((word) => Object.hasOwn(packing, word));
  const packed = packedWord === undefined ? undefined : packing[packedWord];
  const list = all.filter((word) => word !== packedWord);
  const unreadable = bad({ code: 'amount-unreadable', path, found: text.slice(0, LONGEST), wanted: '' });
  if (powerOfTen.test(text)) return unreadable;
  const phrase = list.join(' ');
  if (Object.hasOwn(vague, phrase)) {
    const how = vague[phrase] ?? 'some';
    return good({ amount: { vague: how, packed }, entered: { words: phrase } });
  }
  const counted = readCount(list);
  if (counted === undefined) return unreadable;
  const { count, fill, rest } = counted;
  const name = rest.join(' ');
  if (name === '') return unreadable;
  const unit = unitNamed(name);
  if (unit !== undefined) {
    if (typeof count === 'string' || counted.unsaid === true) return unreadable;
    const value = scaled(count, fill?.share ?? 1);
    return good({
      amount: { ...inSi(value, unit), packed },
      entered: enteredAs(value, unitTable[unit].symbol, phrase),
    });
  }
  const found = names.measure(name);
  if ('nearest' in found) return bad({ code: 'unknown-measure', path, found: name, wanted: found.nearest.join(', ') });
  return good({
    amount: { measure: found.id, count, fill: fill?.id, packed },
    entered: fill === undefined && typeof count !== 'string' ? enteredAs(count, found.id, phrase) : { words: phrase },
  });
}

const LONGEST = 120;
/** `1e9` is a number to a program; nobody counts buckets so. */
const powerOfTen = /^\s*\d[\d.,]*e[+-]?\d/iu;

interface Counted {
  readonly count: Quantity | VagueCountId;
  /** No count was said, so it is one. */
  readonly unsaid?: boolean | undefined;
  readonly fill: { readonly id: FillId; readonly share: number } | undefined;
  readonly rest: readonly string[];
}

/** How many, how full, and the words that are left for the measure. */
function readCount(list: readonly string[]): Counted | undefined {
  const few = vagueCounts.find(([words]) => begins(list, words));
  if (few !== undefined) return { count: few[1], ...readFill(withoutOf(list.slice(few[0].length))) };
  const early = fills.find(([words]) => begins(list, words));
  if (early !== undefined) return { count: 1, ...readFill(list) };
  if (list[0] === 'a' || list[0] === 'an') return { count: 1, ...readFill(list.slice(1)) };
  const number = readNumber(list);
  if (number !== undefined)
    return number.value === 0 ? undefined : { count: number.value, ...readFill(withoutOf(number.rest)) };
  return /^[-\d]/u.test(list[0] ?? '-') ? undefined : { count: 1, unsaid: true, ...readFill(list) };
}

/** How full, said before the measure ("half a bucket") or after it ("a bucket half full"). */
function readFill(list: readonly string[]): Omit<Counted, 'count'> {
  const found = fills.find(([words]) => begins(list, words));
  if (found === undefined) {
    const after = fills.find(([words]) => ends(list, words));
    if (after === undefined) return { fill: undefined, rest: list };
    return { fill: { id: after[1], share: after[2] }, rest: list.slice(0, -after[0].length) };
  }
  const rest = list.slice(found[0].length);
  const article = rest[0] === 'a' || rest[0] === 'an' || rest[0] === 'of' ? 1 : 0;
  return { fill: { id: found[1], share: found[2] }, rest: rest.slice(article) };
}

function withoutOf(list: readonly string[]): readonly string[] {
  return list[0] === 'of' ? list.slice(1) : list;
}

function begins(list: readonly string[], words: readonly string[]): boolean {
  return words.every((word, i) => list[i] === word);
}

function ends(list: readonly string[], words: readonly string[]): boolean {
  return list.length > words.length && begins(list.slice(-words.length), words);
}

function unitNamed(name: string): Unit | undefined {
  return allUnits.find((unit) => {
    const { dimension, typed } = unitTable[unit];
    return (dimension === 'mass' || dimension === 'volume') && typed.includes(name);
  });
}

function inSi(value: Quantity, unit: Unit): { readonly mass_kg: Quantity } | { readonly volume_m3: Quantity } {
  const mass = unitTable[unit].dimension === 'mass';
  const si = mapped(value, (number) => convert(number, unit, mass ? 'kg' : 'm3'));
  return mass ? { mass_kg: si } : { volume_m3: si };
}

function scaled(value: Quantity, times: number): Quantity {
  return mapped(value, (number) => number * times);
}

function mapped(value: Quantity, change: (number: number) => number): Quantity {
  if (!isEstimate(value)) return change(value);
  return { p10: change(value.p10), p50: change(value.p50), p90: change(value.p90) };
}

function enteredAs(value: Quantity, unit: string, phrase: string): Entered {
  return isEstimate(value) ? { words: phrase } : { amount: value, unit };
}
