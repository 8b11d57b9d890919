import { closeSync, fsyncSync, openSync, renameSync, rmSync, writeSync } from 'node:fs';
import { resolve } from 'node:path';
import { bad, good, type Outcome } from '@loamwright/science';
import type { Session } from './session.ts';

/**
 * Writes a file whole or not at all: one that is cut short is worse than none. It is written beside its place and then
 * renamed. Problem: `file-unwritable`.
 */
export async function writeWhole(
  path: string,
  pieces: Iterable<string> | AsyncIterable<string>,
  { newId, folder }: Session,
): Promise<Outcome<string>> {
  if (resolve(path) === resolve(folder.daybook)) return unwritable(path, 'it is the daybook itself');
  const draft = `${path}.${newId()}.new`;
  try {
    const file = openSync(draft, 'wx', 0o600);
    try {
      for await (const piece of pieces) writeSync(file, piece);
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
    renameSync(draft, path);
    return good(path);
  } catch (error) {
    rmSync(draft, { force: true });
    return unwritable(path, error instanceof Error ? error.message : String(error));
  }
}

function unwritable(path: string, found: string): Outcome<never> {
  return bad({ code: 'file-unwritable', path, found, wanted: '' });
}
