import { closeSync, fstatSync, openSync, readFileSync } from 'node:fs';
import { bad, type Outcome } from '@loamwright/science';
import type { Session } from './session.ts';
import { textOf } from './terminal.ts';

/** The text of a file, or of standard input for `-`. Problems: `file-unreadable`, `too-many-bytes`, `not-text`. */
export async function readText(path: string, session: Session, mostBytes: number): Promise<Outcome<string>> {
  if (path === '-') return session.terminal.input(mostBytes);
  let file: number | undefined;
  try {
    file = openSync(path, 'r');
    if (fstatSync(file).size > mostBytes)
      return bad({ code: 'too-many-bytes', path, found: '', wanted: String(mostBytes) });
    return textOf(readFileSync(file), path);
  } catch (error) {
    return bad({
      code: 'file-unreadable',
      path,
      found: error instanceof Error ? error.message : String(error),
      wanted: '',
    });
  } finally {
    if (file !== undefined) closeSync(file);
  }
}
