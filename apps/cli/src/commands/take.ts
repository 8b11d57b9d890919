import { existsSync } from 'node:fs';
import { bad, good, type Outcome } from '@loamwright/science';
import { bundleLines, bundleOf } from '@loamwright/sync';
import type { Answer } from '../answer.ts';
import { withKeeping } from '../book.ts';
import type { Session } from '../session.ts';
import { page } from '../text.ts';
import { writeWhole } from '../whole-file.ts';

export interface TakeOptions {
  readonly out?: string | undefined;
}

/** `loamwright take`: the whole daybook as a file. Problems: `daybook-empty`, `file-unwritable`. */
export async function take(options: TakeOptions, session: Session): Promise<Outcome<Answer>> {
  const empty: Outcome<never> = bad({ code: 'daybook-empty', path: session.folder.daybook, found: '', wanted: '' });
  if (!existsSync(session.folder.daybook)) return empty;
  return withKeeping<Answer>(session, async (keeping) => {
    const holding = await keeping.holding();
    if (holding === null) return empty;
    const bundle = await bundleOf(keeping, holding);
    if (options.out === undefined) {
      for await (const line of bundleLines(bundle)) session.terminal.out(line);
      return good({ value: undefined, text: '', quiet: true });
    }
    const written = await writeWhole(options.out, bundleLines(bundle), session);
    if (!written.ok) return written;
    const { speaker, terminal } = session;
    const value = { file: options.out, entries: bundle.entries.length, attachments: bundle.attachments.length };
    return good({ value, text: page(terminal.columns, [speaker.say('cli.take.done', value)]) });
  });
}
