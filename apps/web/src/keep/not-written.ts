import { isInstant } from '@loamwright/daybook';
import type { Problem } from '@loamwright/science';
import { isMessageKey, placeSaying, type Saying } from '@loamwright/words';
import { NotWritten } from './book.ts';
import { localMinute } from './time.ts';

/** A coded problem in the words of the catalogue. */
export function sayProblem(problem: Problem | undefined): Saying {
  const { code, path, found, wanted } = problem ?? { code: '', path: '', found: '', wanted: '' };
  const key = `problem.${code}`;
  return isMessageKey(key)
    ? { key, places: { path: placeSaying(path), found: asRead(found), wanted } }
    : { key: 'app.problem.other', places: { code, path, found, wanted } };
}

/** An instant as the clock in the garden shows it; anything else as it stands. */
function asRead(found: string): string {
  return isInstant(found) ? localMinute(found).replace('T', ' ') : found;
}

/** Why something was not kept, as a sentence. */
export function sayNotWritten(error: unknown): Saying {
  if (!(error instanceof NotWritten)) return { key: 'app.notWritten.failed', places: { why: String(error) } };
  switch (error.reason) {
    case 'refused':
    case 'full':
    case 'busy':
    case 'closed':
      return { key: `app.notWritten.${error.reason}` };
    case 'not-valid':
      return { key: 'app.notWritten.not-valid', places: { why: sayProblem(error.problems[0]) } };
    case 'failed':
      return { key: 'app.notWritten.failed', places: { why: String(error.cause) } };
  }
}
