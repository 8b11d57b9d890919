import { rmSync } from 'node:fs';
import { bad, good, type Outcome } from '@loamwright/science';
import type { Answer } from '../../answer.ts';
import type { Session } from '../../session.ts';
import { checkBook } from './check.ts';
import { amend, withdraw } from './correct.ts';
import { list, show } from './list.ts';
import type { DaybookOptions } from './options.ts';

/** `loamwright daybook`: its lines; or one entry shown, corrected or taken back; or the whole of it checked. */
export async function daybook(
  words: readonly string[],
  options: DaybookOptions,
  session: Session,
): Promise<Outcome<Answer>> {
  if (options.forget === true) return forget(session);
  if (options.check === true) return checkBook(session);
  if (options.show !== undefined) return show(options.show, session);
  if (options.amend !== undefined) return amend(options.amend, words, options, session);
  if (options.withdraw !== undefined) return withdraw(options.withdraw, options, session);
  return list(options, session);
}

/** The files that SQLite keeps beside a daybook while it is open. */
const besides = ['', '-wal', '-shm'];

/** Deletes the demo garden. The person's own daybook is in another file and can't be deleted with this. */
function forget(session: Session): Outcome<Answer> {
  if (!session.demo) return bad({ code: 'forget-only-demo', path: '--forget', found: '', wanted: '--demo' });
  const { daybook: file, lastMix } = session.folder;
  try {
    for (const end of besides) rmSync(file + end, { force: true });
    rmSync(lastMix, { force: true });
  } catch (error) {
    return bad({
      code: 'folder-unusable',
      path: file,
      found: error instanceof Error ? error.message : String(error),
      wanted: '',
    });
  }
  return good({ value: { forgotten: file }, text: session.speaker.say('cli.demo.forgotten') });
}
