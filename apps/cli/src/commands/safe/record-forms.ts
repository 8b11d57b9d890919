import type { RecordLine, RecordPack, RecordVerdict, SanitationReport } from '@loamwright/advisor';
import { csv } from '../../csv.ts';
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

function changesOf({ corrects, became }: RecordLine, { speaker: { say, tell } }: Session): readonly string[] {
  return [
    ...(corrects === null ? [] : [say('record.first-written', { by: corrects.by, was: tell(corrects.said) })]),
    ...(became === null ? [] : [say('record.changed-to', { by: became.by, is: tell(became.said) })]),
  ];
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
    ...[...more, ...changesOf(line, session), writtenOf(line, session)].map((text): [string, string] => [
      `  ${unmarked(text)}`,
      '  ',
    ]),
  );
}

function reportLines({ answer, counts, rules, notes }: SanitationReport, { speaker }: Session): readonly string[] {
  return [answer, counts, ...rules, ...notes].map((said) => speaker.tell(said));
}

function verdictText(verdict: RecordVerdict, session: Session): string {
  const { speaker, terminal, zone } = session;
  const name = speaker.tell(verdict.name);
  const day = tellInstant(verdict.at, zone, 'day', speaker.locale);
  const told = verdict.report === null ? [speaker.say('record.verdict.none')] : reportLines(verdict.report, session);
  return page(
    terminal.columns,
    [unmarked(speaker.say('record.verdict', { name, day }))],
    ...told.map((text): [string, string] => [`- ${text}`, '  ']),
  );
}

const header = [
  'part',
  'happened',
  'zone',
  'precision',
  'written',
  'by',
  'device',
  'number',
  'kind',
  'what',
  'as typed',
  'standing',
  'remarks',
  'changes',
  'entry',
  'corrected by',
  'sum',
];

/** The pack as one table: a line for what it is, for each finding of the check, each entry and each thing the rules say. */
export function recordCsv(pack: RecordPack, session: Session): string {
  const { speaker } = session;
  const tell = speaker.tell;
  const plain = (part: string, what: string): readonly string[] =>
    header.map((column) => (column === 'part' ? part : column === 'what' ? what : ''));
  return csv(header, [
    plain('record', speaker.say('record.title', { name: tell(pack.name) })),
    ...pack.statement.map((said) => plain('record', tell(said))),
    ...checkLines(pack, session).map((text) => plain('check', text)),
    ...pack.lines.map((line) => [
      'entry',
      line.happened,
      line.zone,
      line.precision,
      line.written,
      line.by,
      line.device,
      String(line.n),
      line.kind,
      tell(line.said),
      line.typed.map(tell).join('; '),
      line.status,
      line.remarks.map(tell).join(' '),
      changesOf(line, session).join(' '),
      line.entry,
      line.outBy ?? '',
      line.sum,
    ]),
    ...pack.verdicts.flatMap(({ name, at, report }) =>
      (report === null ? [speaker.say('record.verdict.none')] : reportLines(report, session)).map((text) =>
        header.map((column) => ({ part: 'rules', happened: at, what: text, remarks: tell(name) })[column] ?? ''),
      ),
    ),
  ]);
}

/** The pack as data, its sentences told. */
export function recordData(pack: RecordPack, session: Session): object {
  const tell = session.speaker.tell;
  const other = (one: RecordLine['became']): object | null => (one === null ? null : { ...one, said: tell(one.said) });
  return {
    of: pack.of,
    name: tell(pack.name),
    statement: pack.statement.map(tell),
    written: session.now().toISOString(),
    check: { sound: pack.sound, inDoubt: pack.inDoubt, ...pack.checked },
    entries: pack.lines.map((line) => ({
      ...line,
      said: tell(line.said),
      typed: line.typed.map(tell),
      remarks: line.remarks.map(tell),
      corrects: other(line.corrects),
      became: other(line.became),
    })),
    verdicts: pack.verdicts.map(({ heap, name, at, report }) => ({
      heap,
      name: tell(name),
      at,
      says: report === null ? null : reportLines(report, session),
    })),
    cautions: pack.cautions,
  };
}
