import type { Holding } from '@loamwright/daybook';
import { bad, good, type Outcome, type Problem } from '@loamwright/science';
import { readQuantity } from '@loamwright/units';
import { readBook } from './book.ts';
import type { Names } from './grammar/names.ts';
import { namesOf } from './holding.ts';
import type { Session } from './session.ts';
import { writeSettings } from './settings.ts';

const LITRES_PER_M3 = 1000;

/** The daybook as a command begins with it, and the session with the grower's own sizes in it. */
interface Opened {
  readonly holding: Holding;
  readonly session: Session;
}

/** Opens the daybook and takes the sizes that were typed (`--size bucket=14L`). Problems: those of both. */
export async function openWithSizes(
  { size = [] }: { readonly size?: readonly string[] | undefined },
  before: Session,
): Promise<Outcome<Opened>> {
  const book = await readBook(before);
  if (!book.ok) return book;
  const { holding } = book.value;
  const session = withSizes(size, namesOf(before, holding), before);
  return session.ok ? good({ holding, session: session.value }) : session;
}

/**
 * Reads the grower's own sizes (`bucket=14L`, `"blue tub=60L"`) and remembers them. A name that no measure has becomes a
 * measure of the grower's own.
 *
 * Problem: `size-unreadable`.
 */
function withSizes(typed: readonly string[], names: Names, session: Session): Outcome<Session> {
  if (typed.length === 0) return good(session);
  const read = typed.map((text) => readSize(text, names));
  const problems: readonly Problem[] = read.flatMap((one) => (one.ok ? [] : one.problems));
  if (problems.length > 0) return bad(...problems);
  const own = Object.fromEntries(read.flatMap((one) => (one.ok ? [one.value] : [])));
  const settings = { ...session.settings, measures_L: { ...session.settings.measures_L, ...own } };
  const kept = writeSettings(session.folder.settings, settings);
  return kept.ok ? good({ ...session, settings: kept.value }) : kept;
}

function readSize(text: string, names: Names): Outcome<readonly [string, number]> {
  const at = text.indexOf('=');
  const name = text.slice(0, Math.max(at, 0)).trim();
  const size = readQuantity(text.slice(at + 1), 'volume', 'L');
  if (name === '' || size === undefined || size.si <= 0) {
    return bad({ code: 'size-unreadable', path: '--size', found: text.slice(0, 60), wanted: '' });
  }
  const known = names.measure(name);
  const id = 'id' in known ? known.id : newMeasure(name);
  return id === ''
    ? bad({ code: 'size-unreadable', path: '--size', found: text.slice(0, 60), wanted: '' })
    : good([id, size.si * LITRES_PER_M3]);
}

function newMeasure(name: string): string {
  return name
    .toLowerCase()
    .replace(/[^a-z0-9]+/gu, '-')
    .replace(/^-+|-+$/gu, '')
    .slice(0, 40);
}
