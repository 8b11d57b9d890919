import {
  type RecordLine,
  type RecordPack,
  type RecordReader,
  type RecordVerdict,
  recordChanges,
  recordRules,
} from '@loamwright/advisor';
import { tellInstant } from '../../dates.ts';
import type { Session } from '../../session.ts';
import { page } from '../../text.ts';
import { findingsOf } from '../daybook/check.ts';
import { shortId } from '../daybook/find.ts';
import { cautionText } from '../heap.ts';

/** Marks of control, of line ends and of writing direction: no name may bend the page, or a terminal, with them. */
const bending = /[\p{Cc}\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069]+/gu;

/** What a reader of Markdown would take for markup. */
const markup = /[\\`*_<>[\]|]/gu;

/** Text of a person on one line, and as it was typed. */
function oneLine(text: string): string {
  return text.replace(bending, ' ');
}

function unmarked(text: string): string {
  return oneLine(text).replace(markup, '\\$&');
}

/** The session as the reader of a record. */
export function readerOf(pack: RecordPack, session: Session): RecordReader {
  return { speaker: session.speaker, checks: checkLines(pack, session), now: session.now().toISOString() };
}

/** The pack as plain text that is Markdown as well. */
export function recordText(pack: RecordPack, session: Session): string {
  const { speaker, terminal, now, zone } = session;
  const { say, tell } = speaker;
  const { columns } = terminal;
  const name = unmarked(tell(pack.name));
  const day = tellInstant(now().toISOString(), zone, 'minute', speaker.locale);
  return [
    `# ${say('record.title', { name })}`,
    page(columns, ...pack.statement.map((said): [string] => [tell(said)]), [say('record.made', { day })]),
    `## ${say('record.part.check')}`,
    checkText(pack, session),
    `## ${say('record.part.lines')}`,
    pack.lines.length === 0
      ? page(columns, [say('record.no-lines')])
      : pack.lines.map((line) => lineText(line, session)).join('\n'),
    `## ${say('record.part.verdicts')}`,
    ...(pack.verdicts.length === 0 ? [page(columns, [say('record.verdicts.none')])] : []),
    ...pack.verdicts.map((verdict) => verdictText(verdict, session)),
    cautionText(pack.cautions, speaker, columns),
  ].join('\n\n');
}

function checkLines({ checked, sound, lines, inDoubt }: RecordPack, session: Session): readonly string[] {
  const { say } = session.speaker;
  if (sound) return [say('cli.check.sound', { count: checked.counted })];
  const doubtful = lines.filter(({ entry }) => inDoubt.includes(entry)).map(({ entry }) => shortId(entry));
  return [
    say('cli.check.unsound', { count: checked.counted }),
    ...findingsOf(checked, session),
    say('record.in-doubt', { count: new Set(doubtful).size, ids: [...new Set(doubtful)].join(', ') }),
  ].map(oneLine);
}

function checkText(pack: RecordPack, session: Session): string {
  const [first = '', ...more] = checkLines(pack, session);
  return page(session.terminal.columns, [first], ...more.map((text): [string, string] => [`- ${text}`, '  ']));
}

function whenOf({ happened, zone, precision }: RecordLine, { speaker }: Session): string {
  return tellInstant(happened, zone, precision, speaker.locale);
}

/** What was said, how it was typed, and what is remarkable about it. */
function saidOf({ said, typed, remarks }: RecordLine, { speaker }: Session): readonly string[] {
  const amounts = [...new Set(typed.map((one) => speaker.tell(one)))].join('; ');
  return [speaker.tell(said), ...(amounts === '' ? [] : [amounts]), ...remarks.map((one) => speaker.tell(one))];
}

function writtenOf({ by, written, zone, device, n, entry }: RecordLine, { speaker }: Session): string {
  const day = tellInstant(written, zone, 'minute', speaker.locale);
  return speaker.say('record.written', { by, day, device, n, id: shortId(entry) });
}

function lineText(line: RecordLine, session: Session): string {
  const [said = '', ...more] = saidOf(line, session);
  return page(
    session.terminal.columns,
    [`- ${whenOf(line, session)}: ${unmarked(said)}`, '  '],
    ...[...more, ...recordChanges(line, session.speaker), writtenOf(line, session)].map((text): [string, string] => [
      `  ${unmarked(text)}`,
      '  ',
    ]),
  );
}

function verdictText(verdict: RecordVerdict, session: Session): string {
  const { speaker, terminal, zone } = session;
  const name = speaker.tell(verdict.name);
  const day = tellInstant(verdict.at, zone, 'day', speaker.locale);
  return page(
    terminal.columns,
    [unmarked(speaker.say('record.verdict', { name, day }))],
    ...recordRules(verdict, speaker).map((text): [string, string] => [`- ${text}`, '  ']),
  );
}
