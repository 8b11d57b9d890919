import { bring, bundleLines, bundleOf, letGoOfRemoved, readBundle } from '@loamwright/sync';
import type { Saying } from '@loamwright/words';
import type { Book } from './book.ts';
import { NotBrought } from './failure.ts';
import { saveText } from './save-text.ts';

/** The whole daybook as the text of a file; null while nothing stands in it. */
async function fileText(book: Book): Promise<string | null> {
  return book.look(async (keeping) => {
    const holding = await keeping.holding();
    if (holding === null) return null;
    const lines: string[] = [];
    for await (const line of bundleLines(await bundleOf(keeping, holding))) lines.push(line);
    return lines.join('');
  });
}

const nothingYet: Saying = { key: 'app.kept.nothing' };

function fileName(ending: string): string {
  return `loamwright-daybook-${new Date().toISOString().slice(0, 10)}.${ending}`;
}

/** Saves a copy where the browser saves files. */
export async function saveCopy(book: Book): Promise<Saying> {
  const text = await fileText(book);
  if (text === null) return nothingYet;
  const name = fileName('jsonl');
  saveText(text, name, 'application/x-ndjson');
  return { key: 'app.kept.taken', places: { name } };
}

/** Whether this device can hand a file to another app. */
export function canShare(): boolean {
  // The text of a file says what it is: by this name more phones let it pass.
  return navigator.canShare?.({ files: [new File([''], fileName('txt'), { type: 'text/plain' })] }) ?? false;
}

/** Hands a copy to another app of the phone: mail, a message, a drive. */
export async function shareCopy(book: Book): Promise<Saying | null> {
  const text = await fileText(book);
  if (text === null) return nothingYet;
  const name = fileName('txt');
  try {
    await navigator.share({ files: [new File([text], name, { type: 'text/plain' })] });
  } catch (error) {
    // Whoever closes the list of apps has changed their mind, and nothing went wrong.
    if (error instanceof DOMException && error.name === 'AbortError') return null;
    throw error;
  }
  return { key: 'app.kept.taken', places: { name } };
}

/** What came in from a file. */
interface BroughtIn {
  readonly kept: number;
  readonly there: number;
  /** Lines that were damaged and left out. */
  readonly left: number;
}

/** Adds what is in a file. Of a damaged one the sound lines are taken; of another holding's none. */
async function bringIn(book: Book, text: string): Promise<BroughtIn> {
  return book.change(async (keeping) => {
    const read = await readBundle(text, await keeping.holding());
    const foreign = read.problems.some(({ code }) => code.endsWith('other-holding'));
    if (foreign || (read.entries.length === 0 && read.problems.length > 0)) throw new NotBrought(read.problems);
    const { kept, there } = await bring(keeping, read);
    await letGoOfRemoved(keeping);
    return { kept, there, left: read.problems.length };
  });
}

export async function bringText(book: Book, text: string): Promise<Saying> {
  const { kept, there, left } = await bringIn(book, text);
  return left === 0
    ? { key: 'app.kept.brought', places: { kept, there } }
    : { key: 'app.kept.left', places: { kept, left } };
}
