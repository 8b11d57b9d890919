import type { Outcome } from '@loamwright/science';
import type { Answer } from '../../answer.ts';
import type { Jotting } from '../../book.ts';
import { readBook } from '../../book.ts';
import { readPast } from '../../grammar/when.ts';
import { namesOf } from '../../holding.ts';
import { recorded } from '../../recorded.ts';
import type { Session } from '../../session.ts';
import { subjectNamed } from '../../subject.ts';
import { believed } from './doubt.ts';
import type { LogOptions } from './options.ts';
import { type LogAsked, readLog } from './read.ts';
import { logTable } from './table.ts';

/** `loamwright log`: a reading or an act on a heap; what came into the store; a bay; a note. */
export async function log(
  subject: string,
  typed: readonly string[],
  options: LogOptions,
  session: Session,
): Promise<Outcome<Answer>> {
  const when = readPast(options.when ?? 'now', session.now(), session.zone);
  if (!when.ok) return when;
  const book = await readBook(session);
  if (!book.ok) return book;
  const { holding } = book.value;
  const ground = { typed, options, when: when.value, holding, names: namesOf(session, holding), session };
  if (subject === 'stock' || subject === 'bay' || subject === 'note') return logged({ ...ground, of: subject });
  const heap = subjectNamed(holding, 'heap', subject);
  if (heap.ok && options.csv !== undefined) return logTable(heap.value, typed, options, { holding, session });
  return heap.ok ? logged({ ...ground, of: { heap: heap.value } }) : heap;
}

/**
 * Reads, asks about what is hard to believe, and writes down.
 *
 * @param mark what each jotting is given before it is written, as the entry that it corrects.
 */
export async function logged(
  asked: LogAsked,
  mark: (jotting: Jotting) => Outcome<Jotting> = (jotting) => ({ ok: true, value: jotting }),
): Promise<Outcome<Answer>> {
  const read = readLog(asked);
  if (!read.ok) return read;
  const { jottings, temperature } = read.value;
  const again = await believed(temperature, asked);
  if (!again.ok) return again;
  if ('answer' in again.value) return { ok: true, value: again.value.answer };
  if (again.value.typed !== undefined) return logged({ ...asked, typed: [again.value.typed] }, mark);
  const { doubted } = again.value;
  const marked = jottings.map((one) => mark(doubted ? asDoubted(one) : one));
  const problems = marked.flatMap((one) => (one.ok ? [] : one.problems));
  if (problems.length > 0) return { ok: false, problems };
  return recorded(
    asked.session,
    marked.flatMap((one) => (one.ok ? [one.value] : [])),
    typeof asked.of === 'string' ? {} : { heap: asked.of.heap },
  );
}

/** A reading that was asked about and stands. */
function asDoubted(jotting: Jotting): Jotting {
  return jotting.kind === 'reading' ? { ...jotting, body: { ...jotting.body, doubted: true } } : jotting;
}
