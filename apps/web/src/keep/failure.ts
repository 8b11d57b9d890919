import type { Problem } from '@loamwright/science';
import { isMessageKey, type Saying } from '@loamwright/words';
import { NotWritten, Refused } from './book.ts';
import { sayNotWritten, sayProblem } from './not-written.ts';
import { ServerRefused } from './server.ts';

/** A file that could not be brought in, and what is wrong with it. */
export class NotBrought extends Refused {
  override readonly name: string = 'NotBrought';
  readonly problems: readonly Problem[];
  constructor(problems: readonly Problem[]) {
    super(problems[0]?.code ?? 'not brought');
    this.problems = problems;
  }
}

/** What kept a copy, a file or an exchange from going through, as a sentence. */
export function sayFailure(error: unknown): Saying {
  if (error instanceof NotWritten) return sayNotWritten(error);
  if (error instanceof NotBrought) return sayProblem(error.problems[0]);
  if (error instanceof ServerRefused) {
    const key = `app.server.refused.${error.problem.code}`;
    return isMessageKey(key) ? { key } : sayProblem(error.problem);
  }
  return { key: 'app.notWritten.failed', places: { why: error instanceof Error ? error.message : String(error) } };
}
