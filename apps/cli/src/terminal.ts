import { createInterface } from 'node:readline/promises';
import { bad, good, type Outcome } from '@loamwright/science';

/** Where a command reads and prints. */
export interface Terminal {
  /** Prints text to standard output. */
  out(text: string): void;
  /** Prints text to standard error. */
  err(text: string): void;
  /** Columns to wrap text at. */
  readonly columns: number;
  /** Whether a person is there to answer a question. */
  readonly answers: boolean;
  /** Asks, and gives what was typed. */
  ask(question: string): Promise<string>;
  /** All of standard input as text. Problems: `too-many-bytes`, `not-text`. */
  input(mostBytes: number): Promise<Outcome<string>>;
}

const USUAL_COLUMNS = 80;
const WIDEST = 100;

/** The terminal, pipe or file that the process was started with. */
export function processTerminal(environment: Readonly<Record<string, string | undefined>>): Terminal {
  const { stdin, stdout, stderr } = process;
  // Who reads our output may stop reading (`| head`): then there is nobody left to tell.
  for (const stream of [stdout, stderr]) {
    stream.on('error', (error: NodeJS.ErrnoException) => {
      if (error.code === 'EPIPE') process.exit();
      throw error;
    });
  }
  const columns = stdout.columns ?? Number(environment['COLUMNS'] ?? Number.NaN);
  return {
    out: (text) => void stdout.write(text),
    err: (text) => void stderr.write(text),
    columns: Number.isInteger(columns) && columns >= 20 ? Math.min(columns, WIDEST) : USUAL_COLUMNS,
    answers: stdin.isTTY === true && stdout.isTTY === true,
    ask: async (question) => {
      const lines = createInterface({ input: stdin, output: stdout });
      try {
        return await lines.question(question);
      } finally {
        lines.close();
      }
    },
    input: (mostBytes) => readAll(stdin, mostBytes),
  };
}

async function readAll(stream: NodeJS.ReadStream, mostBytes: number): Promise<Outcome<string>> {
  const chunks: Uint8Array[] = [];
  let size = 0;
  for await (const chunk of stream) {
    const bytes = Buffer.from(chunk as Uint8Array);
    size += bytes.length;
    if (size > mostBytes) return bad({ code: 'too-many-bytes', path: '-', found: '', wanted: String(mostBytes) });
    chunks.push(bytes);
  }
  return textOf(Buffer.concat(chunks), '-');
}

/**
 * Bytes as text in UTF-8, else in what spreadsheets save beside it: UTF-16 with its mark, or Windows-1252 (Latin-1). A mark at the
 * beginning is left out. Problem: `not-text`, also for what holds control characters.
 */
export function textOf(bytes: Uint8Array, path: string): Outcome<string> {
  const text = decodings(bytes)
    .map((encoding) => decoded(bytes, encoding))
    .find((one) => one !== undefined);
  return text === undefined ? bad({ code: 'not-text', path, found: '', wanted: '' }) : good(text);
}

function decodings([first, second]: Uint8Array): readonly string[] {
  if (first === 0xff && second === 0xfe) return ['utf-16le'];
  if (first === 0xfe && second === 0xff) return ['utf-16be'];
  return ['utf-8', 'windows-1252'];
}

/** All but tab and line ends: a picture is full of them, and a text has none. */
const control = /[^\P{Cc}\t\r\n\f\u0085]/u;

function decoded(bytes: Uint8Array, encoding: string): string | undefined {
  try {
    const text = new TextDecoder(encoding, { fatal: true }).decode(bytes);
    return encoding !== 'utf-8' && control.test(text) ? undefined : text;
  } catch {
    return undefined;
  }
}

/** Text broken at blanks so that no line is longer than the columns, later lines set in by `indent`. */
export function wrap(text: string, columns: number, indent = ''): string {
  return text
    .split('\n')
    .map((line) => wrapLine(line, columns, indent))
    .join('\n');
}

function wrapLine(line: string, columns: number, indent: string): string {
  const blanks = /^ */u.exec(line)?.[0] ?? '';
  const lines: string[] = [];
  let now = blanks;
  for (const word of line.slice(blanks.length).split(' ')) {
    const gap = now.trim() === '' ? '' : ' ';
    if (gap !== '' && now.length + 1 + word.length > columns) {
      lines.push(now);
      now = indent + word;
    } else now += gap + word;
  }
  return [...lines, now].join('\n');
}
