import type { Attachment, Entry, Head } from '@loamwright/daybook';
import type { Problem } from '@loamwright/science';
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { readAttachment, readEntryOf } from '../exchange/give.ts';
import { maxProblems } from '../exchange/limits.ts';
import { digestOf } from '../exchange/offer.ts';
import { type BundleEnd, type BundleHeader, bundleFormat, bundleVersion, maxLine } from './format.ts';
import type { TextLine } from './lines.ts';

/** What is wrong in a file, and in which line; line 0 is the file as a whole. */
export interface BundleProblem extends Problem {
  readonly line: number;
}

/** One thing found in a file. Entries and attachments have been checked and are sound. */
export type BundleItem =
  | { readonly type: 'header'; readonly line: number; readonly header: BundleHeader }
  | { readonly type: 'entry'; readonly line: number; readonly entry: Entry }
  | { readonly type: 'attachment'; readonly line: number; readonly attachment: Attachment }
  | { readonly type: 'problem'; readonly problem: BundleProblem };

/** Takes the lines of a file one after the other. */
export interface BundleReader {
  take(line: TextLine): readonly BundleItem[];
  /** Whether the rest needn't be read. */
  isOver(): boolean;
  /** After the last line. */
  finish(): readonly BundleItem[];
}

/** Lines without a header and with nothing sound in them after which a file is no longer believed to be ours. */
const patience_lines = 50;

/** What a line turned out to be. */
type Found =
  | { readonly type: 'header'; readonly header: BundleHeader }
  | { readonly type: 'entry'; readonly entry: Entry }
  | { readonly type: 'attachment'; readonly attachment: Attachment }
  | { readonly type: 'end'; readonly end: BundleEnd }
  | { readonly type: 'fault'; readonly problems: readonly Problem[]; readonly isLast: boolean };

export function createReader(expected: string | null): BundleReader {
  const hash = sha256.create();
  const heads: (Head & Pick<Entry, 'holding'>)[] = [];
  let header: BundleHeader | null = null;
  let end: BundleEnd | null = null;
  let lines = 0;
  let attachments = 0;
  let sound = 0;
  let told = 0;
  let over = false;
  /** Problems of a file that has not yet shown that it is ours. */
  let withheld: BundleItem[] = [];

  const tell = (line: number, problems: readonly Problem[]): readonly BundleItem[] => {
    const items = problems.flatMap((problem): readonly BundleItem[] => {
      told += 1;
      const at = line === 0 ? '' : `line ${line}`;
      const path = [at, problem.path].filter((part) => part !== '').join(', ');
      return told > maxProblems ? [] : [{ type: 'problem', problem: { ...problem, path, line } }];
    });
    if (header !== null || sound > 0) return items;
    withheld.push(...items);
    return [];
  };

  /** With the first sound line it is clear that the file is ours, only without its first line. */
  const believe = (item: BundleItem): readonly BundleItem[] => {
    sound += 1;
    if (header !== null || sound > 1) return [item];
    const before = withheld;
    withheld = [];
    // A first line that was at fault has been told of already.
    const missing = lines === 1 ? tell(1, [headerDamaged('')]) : [];
    return [...missing, ...before, item];
  };

  const take = (line: TextLine): readonly BundleItem[] => {
    if (line.text === '') return [];
    if (end !== null) {
      over = true;
      return tell(line.number, [{ code: 'bundle-after-end', path: '', found: shown(line.text), wanted: '' }]);
    }
    const found = read(line, lines === 0, header?.holding ?? expected ?? heads[0]?.holding ?? null);
    if (found.type === 'end') {
      end = found.end;
      return [];
    }
    lines += 1;
    hash.update(utf8ToBytes(`${line.text ?? ''}\n`));
    switch (found.type) {
      case 'header':
        header = found.header;
        return [{ type: 'header', line: line.number, header }];
      case 'entry':
        heads.push(headOf(found.entry));
        return believe({ type: 'entry', line: line.number, entry: found.entry });
      case 'attachment':
        attachments += 1;
        return believe({ type: 'attachment', line: line.number, attachment: found.attachment });
      case 'fault':
        return faulty(
          line,
          found.isLast || lines > 1 ? found.problems : [headerDamaged(shown(line.text))],
          found.isLast,
        );
    }
  };

  const faulty = (line: TextLine, problems: readonly Problem[], isLast: boolean): readonly BundleItem[] => {
    if (isLast) {
      over = true;
      return problems.map((problem) => ({
        type: 'problem',
        problem: { ...problem, path: `line ${line.number}`, line: line.number },
      }));
    }
    const items = tell(line.number, problems);
    if (header !== null || sound > 0 || lines < patience_lines) return items;
    over = true;
    return [notOurs()];
  };

  const finish = (): readonly BundleItem[] => {
    if (lines === 0 && end === null) return [whole('bundle-empty', 'nothing', bundleFormat)];
    if (header === null && sound === 0) return [notOurs()];
    const items = told === 0 ? closing() : end === null ? [cutShort()] : [];
    const more = told - maxProblems;
    return more > 0 ? [...items, whole('bundle-more-problems', String(more), '')] : items;
  };

  /** What only shows once all has been read; where lines are at fault already, it would say nothing new. */
  const closing = (): readonly BundleItem[] => {
    if (end === null) return [cutShort()];
    if (header !== null && (header.entries !== heads.length || header.attachments !== attachments))
      return [
        whole('bundle-count-wrong', `${heads.length} + ${attachments}`, `${header.entries} + ${header.attachments}`),
      ];
    const sum = bytesToHex(hash.digest());
    if (end.lines !== lines || end.sha256 !== sum) return [whole('bundle-sum-wrong', sum, end.sha256)];
    if (header === null) return [];
    const digest = digestOf(header.holding, heads);
    return digest === header.sum ? [] : [whole('bundle-set-wrong', digest, header.sum)];
  };

  const cutShort = (): BundleItem => whole('bundle-cut-short', `${lines} lines`, 'a last line that closes the file');
  const notOurs = (): BundleItem => whole('bundle-not-ours', '', bundleFormat);

  return { take, isOver: () => over, finish };
}

/** What a digest needs of an entry: a file may be larger than memory. */
function headOf({ id, device, n, prev, sum, holding }: Entry): Head & Pick<Entry, 'holding'> {
  return { id, device, n, prev, sum, holding };
}

function whole(code: string, found: string, wanted: string): BundleItem {
  return { type: 'problem', problem: { code, path: '', found, wanted, line: 0 } };
}

function headerDamaged(found: string): Problem {
  return { code: 'bundle-header-damaged', path: '', found, wanted: bundleFormat };
}

function fault(code: string, found: string, wanted: string): Found {
  return { type: 'fault', problems: [{ code, path: '', found, wanted }], isLast: false };
}

function last(code: string, found: string, wanted: string): Found {
  return { type: 'fault', problems: [{ code, path: '', found, wanted }], isLast: true };
}

function read(line: TextLine, isFirst: boolean, holding: string | null): Found {
  const { text } = line;
  if (text === null) return fault('bundle-line-too-long', `more than ${maxLine}`, `at most ${maxLine}`);
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return fault('bundle-line-unreadable', shown(text), 'JSON');
  }
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    return fault('bundle-line-unreadable', shown(text), 'an entry');
  if ('format' in value && isFirst) return readHeader(value, text, holding);
  if ('end' in value) return readEnd(value.end, text);
  if ('attachment' in value) {
    const attachment = readAttachment(value.attachment);
    return 'hash' in attachment
      ? { type: 'attachment', attachment }
      : { type: 'fault', problems: [attachment], isLast: false };
  }
  const entry = readEntryOf(value, holding);
  return entry.ok ? { type: 'entry', entry: entry.value } : { type: 'fault', problems: entry.problems, isLast: false };
}

const name = /^[a-z0-9](?:[a-z0-9-]{0,62}[a-z0-9])?$/u;

function readHeader(value: object & Record<'format', unknown>, text: string, holding: string | null): Found {
  const of = value as Readonly<Partial<Record<keyof BundleHeader, unknown>>>;
  if (of.format !== bundleFormat) return fault('bundle-line-unreadable', shown(text), bundleFormat);
  if (typeof of.v === 'number' && of.v > bundleVersion)
    return last('bundle-newer', String(of.v), String(bundleVersion));
  const { entries, attachments, sum } = of;
  if (
    of.v !== bundleVersion ||
    typeof of.holding !== 'string' ||
    !name.test(of.holding) ||
    !isCount(entries) ||
    !isCount(attachments) ||
    typeof sum !== 'string'
  )
    return { type: 'fault', problems: [headerDamaged(shown(text))], isLast: false };
  if (holding !== null && of.holding !== holding) return last('bundle-other-holding', of.holding, holding);
  return {
    type: 'header',
    header: { format: bundleFormat, v: bundleVersion, holding: of.holding, entries, attachments, sum },
  };
}

function readEnd(value: unknown, text: string): Found {
  if (typeof value === 'object' && value !== null && 'lines' in value && 'sha256' in value) {
    const { lines, sha256: sum } = value;
    if (isCount(lines) && typeof sum === 'string') return { type: 'end', end: { lines, sha256: sum } };
  }
  return fault('bundle-line-unreadable', shown(text), 'lines and sha256');
}

function isCount(value: unknown): value is number {
  return typeof value === 'number' && Number.isSafeInteger(value) && value >= 0;
}

/** The beginning of what stood there, fit to be shown: binary comes out as dots. */
function shown(text: string | null): string {
  const beginning = (text ?? '').slice(0, 40).replace(/[\p{C}\uFFFD]/gu, '·');
  return text !== null && text.length > 40 ? `${beginning}…` : beginning;
}
