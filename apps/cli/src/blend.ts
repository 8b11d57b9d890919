import {
  bad,
  type CautionId,
  type CompostKnown,
  good,
  madeOfIds,
  methodIds,
  type OnHand,
  type Outcome,
  type PartId,
  type Parts,
  type Problem,
  partIds,
  type Quantity,
  smellIds,
} from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import { cautionText } from './commands/heap.ts';
import { readAmount } from './grammar/amount.ts';
import type { Names } from './grammar/names.ts';
import { readNumber, wordsOf } from './grammar/number.ts';
import type { Session } from './session.ts';
import { page } from './text.ts';

/** What may be said of the compost, on the command line. */
export interface CompostOptions {
  readonly age?: string | undefined;
  readonly rise?: string | undefined;
  readonly seedlings?: string | undefined;
  readonly smell?: string | undefined;
  readonly salts?: string | undefined;
  readonly saltsBy?: string | undefined;
  readonly madeOf?: string | undefined;
  readonly provenHot?: boolean | undefined;
}

/** What a mix is made of and what there is, on the command line. */
export interface StuffOptions {
  readonly part?: readonly string[] | undefined;
  readonly have?: readonly string[] | undefined;
  readonly measure?: string | undefined;
  readonly size?: readonly string[] | undefined;
}

const LONGEST = 60;

/** Where the problems of several readings stand together. */
export function allOf(...outcomes: readonly Outcome<unknown>[]): readonly Problem[] {
  return outcomes.flatMap((outcome) => (outcome.ok ? [] : outcome.problems));
}

/** One of a list of ids, typed with blanks or hyphens. Problem: `not-one-of`. */
export function readOneOf<Id extends string>(typed: string, ids: readonly Id[], path: string): Outcome<Id> {
  const plain = typed
    .trim()
    .toLowerCase()
    .replace(/[\s_]+/gu, '-');
  const found = ids.find((id) => id === plain);
  return found === undefined
    ? bad({ code: 'not-one-of', path, found: typed.slice(0, LONGEST), wanted: ids.join(', ') })
    : good(found);
}

function optional<Value>(
  typed: string | undefined,
  read: (text: string) => Outcome<Value>,
): Outcome<Value | undefined> {
  return typed === undefined ? good(undefined) : read(typed);
}

/** A number or a span (`3-5`), perhaps with a unit in words after it that is left alone. Problem: `number-unreadable`. */
export function readFigure(typed: string, path: string): Outcome<Quantity> {
  const read = readNumber(wordsOf(typed.slice(0, LONGEST).replace(/[%]/gu, '')));
  return read === undefined || read.rest.some((word) => !isUnit(word))
    ? bad({ code: 'number-unreadable', path, found: typed.slice(0, LONGEST), wanted: '' })
    : good(read.value);
}

/** Words after a number, but no second number and none of its signs: `1e9` and `5x` are slips. */
function isUnit(word: string): boolean {
  return !/\d|^[ex]$/iu.test(word);
}

function readPlain(typed: string, path: string): Outcome<number> {
  const read = readFigure(typed, path);
  if (!read.ok) return read;
  return typeof read.value === 'number'
    ? good(read.value)
    : bad({ code: 'number-unreadable', path, found: typed.slice(0, LONGEST), wanted: '' });
}

/** What was said of the compost. */
export function readCompost(options: CompostOptions): Outcome<CompostKnown> {
  const age = optional(options.age, (text) => readFigure(text, '--age'));
  const rise = optional(options.rise, (text) => readPlain(text, '--rise'));
  const seedlings = optional(options.seedlings, (text) => readPlain(text, '--seedlings'));
  const smell = optional(options.smell, (text) => readOneOf(text, smellIds, '--smell'));
  const salts = optional(options.salts, (text) => readFigure(text, '--salts'));
  const method = readOneOf(options.saltsBy ?? 'one-to-two', methodIds, '--salts-by');
  const madeOf = optional(options.madeOf, (text) => readOneOf(text, madeOfIds, '--made-of'));
  if (!age.ok || !rise.ok || !seedlings.ok || !smell.ok || !salts.ok || !method.ok || !madeOf.ok) {
    return bad(...allOf(age, rise, seedlings, smell, salts, method, madeOf));
  }
  return good({
    ...(age.value !== undefined && { age_months: age.value }),
    ...(rise.value !== undefined && { selfHeating_K: rise.value }),
    ...(seedlings.value !== undefined && { emergence_pctOfControl: seedlings.value }),
    ...(smell.value !== undefined && { smell: smell.value }),
    ...(salts.value !== undefined && { conductivity: { value_dSPerM: salts.value, method: method.value } }),
    ...(madeOf.value !== undefined && { madeOf: madeOf.value }),
    ...(options.provenHot === true && { provenHot: true }),
  });
}

/** A part by its id or its name. Problem: `not-one-of`. */
function readPart(typed: string, path: string, { speaker }: Session): Outcome<PartId> {
  const plain = typed.trim().toLowerCase();
  const named = partIds.find((id) => speaker.say(`blend.part.${id}`) === plain);
  return named === undefined ? readOneOf(typed, partIds, path) : good(named);
}

function splitAt(text: string): readonly [name: string, rest: string] {
  const at = text.indexOf('=');
  return [text.slice(0, Math.max(at, 0)), text.slice(at + 1)];
}

/** `compost=1`, `"leaf mould=2"`: parts by volume. */
export function readParts(typed: readonly string[], session: Session): Outcome<readonly Parts[]> {
  const read = typed.map((text): Outcome<Parts> => {
    const [name, parts] = splitAt(text);
    const part = readPart(name, '--part', session);
    const count = readPlain(parts, '--part');
    return part.ok && count.ok ? good({ part: part.value, parts: count.value }) : bad(...allOf(part, count));
  });
  const problems = allOf(...read);
  return problems.length > 0 ? bad(...problems) : good(read.flatMap((one) => (one.ok ? [one.value] : [])));
}

/** `compost=2buckets`, `sand=40L`: what there is. */
export function readHave(typed: readonly string[], names: Names, session: Session): Outcome<readonly OnHand[]> {
  const read = typed.map((text): Outcome<OnHand> => {
    const [name, amount] = splitAt(text);
    const part = readPart(name, '--have', session);
    const given = readAmount(amount, name, names);
    return part.ok && given.ok ? good({ part: part.value, amount: given.value.amount }) : bad(...allOf(part, given));
  });
  const problems = allOf(...read);
  return problems.length > 0 ? bad(...problems) : good(read.flatMap((one) => (one.ok ? [one.value] : [])));
}

/** The measure that amounts are told in. Problem: `unknown-measure`. */
export function readMeasure(typed: string | undefined, usual: string, names: Names): Outcome<string> {
  if (typed === undefined) return good(usual);
  const found = names.measure(typed);
  return 'id' in found
    ? good(found.id)
    : bad({
        code: 'unknown-measure',
        path: '--measure',
        found: typed.slice(0, LONGEST),
        wanted: found.nearest.join(', '),
      });
}

/** A report as text: the answer, what is short, what to do, what it is like, what to mind. */
export function reportText(
  report: {
    readonly opening: readonly Saying[];
    readonly stock: readonly Saying[];
    readonly advice: readonly Saying[];
    readonly judged: readonly Saying[];
    readonly cautions: readonly CautionId[];
  },
  { speaker, terminal }: Session,
): string {
  const { columns } = terminal;
  const lines = (sayings: readonly Saying[], mark = ''): string =>
    page(
      columns,
      ...sayings.map((said): [string, string] => [`${mark}${speaker.tell(said)}`, ' '.repeat(mark.length)]),
    );
  const blocks = [
    lines(report.opening),
    lines(report.stock),
    lines(report.advice, '> '),
    lines(report.judged, '- '),
    cautionText(report.cautions, speaker, columns),
  ];
  return blocks.filter((block) => block !== '').join('\n\n');
}
