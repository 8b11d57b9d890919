import { type Entry, isKindId } from '@loamwright/daybook';
import { bad, good, type Outcome } from '@loamwright/science';
import type { Answer } from '../../answer.ts';
import { type Book, type Jotting, readBook } from '../../book.ts';
import { readText } from '../../file.ts';
import { readIngredients } from '../../grammar/ingredient.ts';
import { readPast, type WhenRead } from '../../grammar/when.ts';
import { namesOf } from '../../holding.ts';
import { parseJson } from '../../json.ts';
import { layersOf } from '../../put.ts';
import { recorded } from '../../recorded.ts';
import type { Session } from '../../session.ts';
import { logged } from '../log/log.ts';
import type { LogAsked } from '../log/read.ts';
import { entryOf } from './find.ts';
import type { DaybookOptions } from './options.ts';

/** Takes an entry back. It is kept, and no longer counts. */
export async function withdraw(typed: string, options: DaybookOptions, session: Session): Promise<Outcome<Answer>> {
  const book = await readBook(session);
  if (!book.ok) return book;
  const entry = entryOf(book.value.entries, typed);
  if (!entry.ok) return entry;
  const when: WhenRead = { happened: session.now().toISOString(), precision: 'minute' };
  const body = options.why === undefined ? {} : { why: options.why };
  const jotting: Jotting = { kind: 'withdrawal', body, about: entry.value.about, when, withdraws: entry.value.id };
  return recorded(session, [jotting]);
}

/**
 * Writes what an entry should have said. The words are those that `log` and `feed` take after the heap; or the whole body
 * comes as JSON (`--body FILE`, `--body -`); or only the time is corrected (`--when`).
 *
 * Problems: `no-such-entry`, `amend-unreadable-kind`, `amend-other-kind`, `amend-nothing`, and those of logging.
 */
export async function amend(
  typed: string,
  words: readonly string[],
  options: DaybookOptions,
  session: Session,
): Promise<Outcome<Answer>> {
  const book = await readBook(session);
  if (!book.ok) return book;
  const found = entryOf(book.value.entries, typed);
  if (!found.ok) return found;
  const entry = found.value;
  const when = whenOf(options, entry, session);
  if (!when.ok) return when;
  const asCorrection = (jotting: Jotting): Outcome<Jotting> => {
    if (jotting.kind !== entry.kind) {
      return bad({ code: 'amend-other-kind', path: '', found: jotting.kind, wanted: entry.kind });
    }
    return good({ ...jotting, about: entry.about, amends: entry.id });
  };
  if (options.body !== undefined || (words.length === 0 && !saysMore(options))) {
    const jotting = await wholeBody(entry, options, when.value, session);
    if (!jotting.ok) return jotting;
    return recorded(session, [jotting.value], { heap: heapOf(entry) });
  }
  if (entry.kind === 'heap-fed') return amendFed(entry, words, book.value, { when: when.value, session });
  const of = subjectOf(entry);
  if (of === undefined) return bad({ code: 'amend-by-body', path: '', found: entry.kind, wanted: '' });
  const { holding } = book.value;
  // A bay's words begin with its name.
  const all = of === 'bay' ? [entry.about.find(({ type }) => type === 'bay')?.id ?? '', ...words] : words;
  const asked: LogAsked = {
    of,
    typed: all,
    options,
    when: when.value,
    holding,
    names: namesOf(session, holding),
    session,
  };
  return logged(asked, asCorrection);
}

/** When it happened: as it was, unless something else is said. */
function whenOf(options: DaybookOptions, entry: Entry, session: Session): Outcome<WhenRead> {
  if (options.when === undefined) return good({ happened: entry.happened, precision: entry.precision });
  return readPast(options.when, session.now(), session.zone);
}

/** The options of `log` that say what an entry should have said. */
const said = [
  'where',
  'depth',
  'probe',
  'air',
  'squeeze',
  'smell',
  'height',
  'note',
  'into',
  'liquid',
  'thickness',
  'wall',
  'roofed',
  'from',
  'out',
] as const satisfies readonly (keyof DaybookOptions)[];

function saysMore(options: DaybookOptions): boolean {
  return said.some((name) => options[name] !== undefined);
}

function heapOf(entry: Entry): string | undefined {
  return entry.about.find(({ type }) => type === 'heap')?.id;
}

function subjectOf(entry: Entry): LogAsked['of'] | undefined {
  switch (entry.kind) {
    case 'stock-in':
    case 'stock-out':
      return 'stock';
    case 'bay-set-up':
      return 'bay';
    case 'note':
      return 'note';
    case 'reading':
    case 'turned':
    case 'watered':
    case 'covered':
    case 'moved':
    case 'finished': {
      const heap = heapOf(entry);
      return heap === undefined ? undefined : { heap };
    }
    default:
      return undefined;
  }
}

const MOST_BODY_BYTES = 1024 * 1024;

async function wholeBody(
  entry: Entry,
  options: DaybookOptions,
  when: WhenRead,
  session: Session,
): Promise<Outcome<Jotting>> {
  if (!isKindId(entry.kind)) return bad({ code: 'amend-unreadable-kind', path: '', found: entry.kind, wanted: '' });
  const keptAmounts = entry.entered === undefined ? {} : { entered: entry.entered };
  const jotting = { kind: entry.kind, about: entry.about, when, amends: entry.id };
  if (options.body === undefined) {
    if (options.when === undefined) return bad({ code: 'amend-nothing', path: '', found: entry.id, wanted: '' });
    // Only the time is corrected: the body has been read before, and is checked again when it is drafted.
    return good({ ...jotting, ...keptAmounts, body: entry.body } as unknown as Jotting);
  }
  const text = await readText(options.body, session, MOST_BODY_BYTES);
  if (!text.ok) return text;
  const body = parseJson(text.value, options.body);
  return body.ok ? good({ ...jotting, body: body.value } as unknown as Jotting) : body;
}

function amendFed(
  entry: Entry,
  words: readonly string[],
  { holding }: Book,
  { when, session }: { when: WhenRead; session: Session },
): Promise<Outcome<Answer>> | Outcome<Answer> {
  const ingredients = readIngredients(words, namesOf(session, holding));
  if (!ingredients.ok) return ingredients;
  const put = layersOf(ingredients.value, holding, session, false);
  if (!put.ok) return put;
  const { layers, entered } = put.value;
  const jotting: Jotting = { kind: 'heap-fed', body: { layers }, entered, about: entry.about, when, amends: entry.id };
  return recorded(session, [jotting], { heap: heapOf(entry) });
}
