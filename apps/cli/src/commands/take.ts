import { closeSync, existsSync, fsyncSync, openSync, renameSync, rmSync, writeSync } from 'node:fs';
import { bad, good, type Outcome } from '@loamwright/science';
import { type Bundle, bundleLines, bundleOf } from '@loamwright/sync';
import type { Answer } from '../answer.ts';
import { withKeeping } from '../book.ts';
import type { Session } from '../session.ts';
import { page } from '../text.ts';

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
    const written = await writeFile(options.out, bundle);
    if (!written.ok) return written;
    const { speaker, terminal } = session;
    const value = { file: options.out, entries: bundle.entries.length, attachments: bundle.attachments.length };
    return good({ value, text: page(terminal.columns, [speaker.say('cli.take.done', value)]) });
  });
}

/** Whole or not at all: a file that is cut short is worse than none. */
async function writeFile(path: string, bundle: Bundle): Promise<Outcome<string>> {
  const draft = `${path}.new`;
  try {
    const file = openSync(draft, 'w', 0o600);
    try {
      for await (const line of bundleLines(bundle)) writeSync(file, line);
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
    renameSync(draft, path);
    return good(path);
  } catch (error) {
    rmSync(draft, { force: true });
    return bad({
      code: 'file-unwritable',
      path,
      found: error instanceof Error ? error.message : String(error),
      wanted: '',
    });
  }
}
