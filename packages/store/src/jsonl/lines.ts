import { type AttachmentNote, KeepingError, type Position } from '@loamwright/daybook';
import { entryOf, readRecord, type StoredRecord } from '../shared/record.ts';

/** Version of the file that this version of the program writes. */
const fileVersion: number = 1;

const format = 'loamwright-keeping';

/** The first line of every file. */
export const headerLine: string = `${JSON.stringify({ format, v: fileVersion })}\n`;

/** Longest first line looked at before a file is judged not to be ours. */
export const headerReach_bytes: number = 4096;

/** One line of the file. */
export interface Line {
  /** Where it begins in the file, in bytes. */
  readonly position: Position;
  readonly content: LineContent;
}

/** What stands in a line: an entry or several kept together, or a word about an attachment. */
export type LineContent =
  | { readonly type: 'records'; readonly records: readonly PlacedRecord[] }
  | { readonly type: 'attached'; readonly note: AttachmentNote }
  | { readonly type: 'detached'; readonly hash: string }
  | { readonly type: 'header' }
  | { readonly type: 'unreadable'; readonly why: string };

/** The record of one entry. */
export interface PlacedRecord {
  /** Where it begins in the file, in bytes: its place in the order of arrival. */
  readonly position: Position;
  readonly length_bytes: number;
  readonly record: StoredRecord;
}

/** Part of a file, split into lines. */
export interface Split {
  readonly lines: readonly Line[];
  /** Where the sound lines end; what stands behind is a torn tail. */
  readonly soundEnd: number;
}

const decoder = new TextDecoder();

/**
 * Splits bytes of a file that begin at `start`. Each append is one line and each is durable before
 * the next begins, so only the last can be torn by a crash: it has no line feed, or holds NUL bytes
 * where the disk had grown the file but not yet written it. JSON never holds a NUL byte.
 */
export function splitLines(bytes: Uint8Array, start: number): Split {
  const lines: Line[] = [];
  let at = 0;
  for (;;) {
    const end = bytes.indexOf(code.lineFeed, at);
    if (end === -1) break;
    const line = bytes.subarray(at, end);
    if (end + 1 === bytes.length && line.includes(0)) break;
    lines.push({ position: start + at, content: readLine(line, start + at) });
    at = end + 1;
  }
  return { lines, soundEnd: start + at };
}

function readLine(line: Uint8Array, position: Position): LineContent {
  if (line[0] === code.openList) return listLine(line, position);
  const value = parse(line);
  if (value instanceof SyntaxError) return { type: 'unreadable', why: value.message };
  if (typeof value !== 'object' || value === null) return { type: 'unreadable', why: 'not a JSON object' };
  if ('attached' in value) return attachedLine(value.attached);
  if ('detached' in value) return detachedLine(value.detached);
  if ('format' in value) return { type: 'header' };
  return { type: 'records', records: [{ position, length_bytes: line.length, record: entryOf(value) }] };
}

/** Entries kept together. Each is read by itself, so that one that is damaged leaves the others. */
function listLine(line: Uint8Array, position: Position): LineContent {
  const spans = elementsOf(line);
  if (spans === undefined) return { type: 'unreadable', why: 'a list without its end' };
  const records = spans.map(([from, to]): PlacedRecord => {
    const record = recordIn(line.subarray(from, to));
    return { position: position + from, length_bytes: to - from, record };
  });
  return { type: 'records', records };
}

/** Reads the bytes of one record. */
export function recordIn(bytes: Uint8Array): StoredRecord {
  return readRecord(decoder.decode(bytes));
}

/** The bytes that JSON's form is made of: all below 128, so never part of another letter in UTF-8. */
const code = {
  lineFeed: 0x0a,
  quote: 0x22,
  comma: 0x2c,
  openList: 0x5b,
  escape: 0x5c,
  closeList: 0x5d,
  open: 0x7b,
  close: 0x7d,
};

/** Where the elements of a JSON list begin and end; undefined where it doesn't end as it began. */
function elementsOf(line: Uint8Array): readonly (readonly [from: number, to: number])[] | undefined {
  const end = line.length - 1;
  if (line[end] !== code.closeList) return undefined;
  const spans: (readonly [number, number])[] = [];
  let start = 1;
  let depth = 0;
  let inText = false;
  for (let at = 1; at < end; at++) {
    const byte = line[at];
    if (inText) {
      if (byte === code.escape) at++;
      else if (byte === code.quote) inText = false;
    } else if (byte === code.quote) inText = true;
    else if (byte === code.open || byte === code.openList) depth++;
    else if (byte === code.close || byte === code.closeList) depth--;
    else if (byte === code.comma && depth === 0) {
      spans.push([start, at]);
      start = at + 1;
    }
  }
  spans.push([start, end]);
  return inText || depth !== 0 ? undefined : spans;
}

function parse(bytes: Uint8Array): unknown {
  try {
    return JSON.parse(decoder.decode(bytes));
  } catch (error) {
    if (error instanceof SyntaxError) return error;
    throw error;
  }
}

function attachedLine(note: unknown): LineContent {
  if (typeof note === 'object' && note !== null && 'hash' in note && 'mediaType' in note && 'size_bytes' in note) {
    const { hash, mediaType, size_bytes } = note;
    if (isHash(hash) && typeof mediaType === 'string' && typeof size_bytes === 'number')
      return { type: 'attached', note: { hash, mediaType, size_bytes } };
  }
  return { type: 'unreadable', why: 'no note of an attachment' };
}

function detachedLine(hash: unknown): LineContent {
  return isHash(hash) ? { type: 'detached', hash } : { type: 'unreadable', why: 'no hash of an attachment' };
}

/** A hash becomes a file name: nothing else may. */
function isHash(value: unknown): value is string {
  return typeof value === 'string' && /^[0-9a-f]{64}$/u.test(value);
}

/**
 * Whether the beginning of a file is that of a daybook of this version. A file torn while its first
 * line was written counts as one: it has nothing in it.
 * @throws KeepingError `damaged` for another program's file, or a newer version's
 */
export function guardHeader(beginning: Uint8Array, path: string): void {
  const end = beginning.indexOf(code.lineFeed);
  if (end === -1) {
    const text = decoder.decode(beginning).replace(/\0+$/u, '');
    if (headerLine.startsWith(text)) return;
    throw foreign(path);
  }
  const header = parse(beginning.subarray(0, end));
  if (typeof header !== 'object' || header === null || !('format' in header) || header.format !== format)
    throw foreign(path);
  if ('v' in header && header.v === fileVersion) return;
  throw new KeepingError(
    'damaged',
    `the daybook ${path} was written by a newer version of the program (file version ${'v' in header ? String(header.v) : 'unknown'}, this program knows ${fileVersion}): it was left as it is; update the program`,
  );
}

function foreign(path: string): KeepingError {
  return new KeepingError('damaged', `${path} is no daybook, or its first line is damaged: it was left as it is`);
}
