import { maxLine } from './format.ts';

/** One line of a file, without its end. */
export interface TextLine {
  /** 1 for the first. */
  readonly number: number;
  /** Null for a line that is longer than any of ours: it was passed over, not gathered up. */
  readonly text: string | null;
}

const byteOrderMark = '\uFEFF';

/**
 * Splits text that comes in pieces, cut anywhere, into lines. A byte order mark at the beginning
 * and a carriage return before a line feed are no part of a line: mail and editors add them.
 * Never holds more than one line.
 */
export async function* linesOf(pieces: AsyncIterable<string> | Iterable<string>): AsyncGenerator<TextLine> {
  let number = 1;
  let open: string[] = [];
  let length = 0;
  const take = (): TextLine => {
    const text = length > maxLine ? null : trimmed(open.join(''), number);
    const line = { number, text };
    number += 1;
    open = [];
    length = 0;
    return line;
  };
  const add = (text: string): void => {
    length += text.length;
    if (length > maxLine) open = [];
    else open.push(text);
  };
  for await (const piece of pieces) {
    let start = 0;
    for (let end = piece.indexOf('\n'); end !== -1; end = piece.indexOf('\n', start)) {
      add(piece.slice(start, end));
      yield take();
      start = end + 1;
    }
    if (start < piece.length) add(piece.slice(start));
  }
  if (length > 0) yield take();
}

function trimmed(text: string, number: number): string {
  const begun = number === 1 && text.startsWith(byteOrderMark) ? text.slice(1) : text;
  return begun.endsWith('\r') ? begun.slice(0, -1) : begun;
}
