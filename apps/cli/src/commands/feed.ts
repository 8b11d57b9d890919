import { bad, type Outcome } from '@loamwright/science';
import type { Answer } from '../answer.ts';
import { readBook } from '../book.ts';
import { readIngredients } from '../grammar/ingredient.ts';
import { readPast } from '../grammar/when.ts';
import { namesOf } from '../holding.ts';
import { layersOf } from '../put.ts';
import { recorded } from '../recorded.ts';
import type { Session } from '../session.ts';
import { subjectNamed } from '../subject.ts';

export interface FeedOptions {
  readonly when?: string | undefined;
  readonly note?: string | undefined;
  readonly fromStock?: boolean | undefined;
}

/** `loamwright feed`: a pail tipped into a standing heap, with what covered it. */
export async function feed(
  name: string,
  typed: readonly string[],
  options: FeedOptions,
  session: Session,
): Promise<Outcome<Answer>> {
  const when = readPast(options.when ?? 'now', session.now(), session.zone);
  if (!when.ok) return when;
  const book = await readBook(session);
  if (!book.ok) return book;
  const { holding } = book.value;
  const heap = subjectNamed(holding, 'heap', name);
  if (!heap.ok) return heap;
  if (typed.length === 0) return bad({ code: 'nothing-named', path: 'feed', found: '', wanted: '' });
  const ingredients = readIngredients(typed, namesOf(session, holding));
  if (!ingredients.ok) return ingredients;
  const put = layersOf(ingredients.value, holding, session, options.fromStock === true);
  if (!put.ok) return put;
  const { layers, entered } = put.value;
  const body = { layers, ...(options.note !== undefined && { note: options.note }) };
  return recorded(
    session,
    [{ kind: 'heap-fed', body, entered, about: [{ type: 'heap', id: heap.value }], when: when.value }],
    { heap: heap.value },
  );
}
