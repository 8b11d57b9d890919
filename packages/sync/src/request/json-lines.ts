import { linesOf } from '../bundle/lines.ts';

/**
 * Reads JSON values, one to a line, from text that comes in pieces. A line that is none, or is longer than any
 * message, is given as null: whoever reads it says what is wrong with it.
 */
export async function* jsonLines(pieces: AsyncIterable<string> | Iterable<string>): AsyncGenerator<unknown> {
  for await (const { text } of linesOf(pieces)) {
    if (text !== '') yield text === null ? null : parsed(text);
  }
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}
