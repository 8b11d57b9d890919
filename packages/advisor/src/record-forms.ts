import type { Speaker } from '@loamwright/words';
import { csv } from './csv.ts';
import type { RecordLine, RecordPack, RecordVerdict } from './record-pack.ts';

/** Who a record is written out for, and what is told beside the pack. */
export interface RecordReader {
  readonly speaker: Speaker;
  /** What the daybook's own check found, a sentence each. */
  readonly checks: readonly string[];
  /** The instant at which it is written out. */
  readonly now: string;
}

/** What was corrected about a line, a sentence each. */
export function recordChanges({ corrects, became }: RecordLine, { say, tell }: Speaker): readonly string[] {
  return [
    ...(corrects === null ? [] : [say('record.first-written', { by: corrects.by, was: tell(corrects.said) })]),
    ...(became === null ? [] : [say('record.changed-to', { by: became.by, is: tell(became.said) })]),
  ];
}

/** What the rules say of one heap, a sentence each. */
export function recordRules({ place, report }: RecordVerdict, { say, tell }: Speaker): readonly string[] {
  const first = place === null ? [] : [tell(place)];
  if (report === null) return [...first, say('record.verdict.none')];
  return [...first, ...[report.answer, report.counts, ...report.rules, ...report.notes].map(tell)];
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
  'as given',
  'standing',
  'remarks',
  'changes',
  'entry',
  'corrected by',
  'sum',
];

/** The pack as one table: a line for what it is, for each finding of the check, each entry and each thing the rules say. */
export function recordCsv(pack: RecordPack, { speaker, checks }: RecordReader): string {
  const { say, tell } = speaker;
  const plain = (part: string, what: string): readonly string[] =>
    header.map((column) => (column === 'part' ? part : column === 'what' ? what : ''));
  return csv(header, [
    plain('record', say('record.title', { name: tell(pack.name) })),
    ...pack.statement.map((said) => plain('record', tell(said))),
    ...checks.map((text) => plain('check', text)),
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
      recordChanges(line, speaker).join(' '),
      line.entry,
      line.outBy ?? '',
      line.sum,
    ]),
    ...pack.verdicts.flatMap((verdict) =>
      recordRules(verdict, speaker).map((text) =>
        header.map(
          (column) => ({ part: 'rules', happened: verdict.at, what: text, remarks: tell(verdict.name) })[column] ?? '',
        ),
      ),
    ),
  ]);
}

/** The pack as data, its sentences told. */
export function recordData(pack: RecordPack, { speaker, now }: RecordReader): object {
  const { tell } = speaker;
  const other = (one: RecordLine['became']): object | null => (one === null ? null : { ...one, said: tell(one.said) });
  return {
    of: pack.of,
    name: tell(pack.name),
    statement: pack.statement.map(tell),
    written: now,
    check: { sound: pack.sound, inDoubt: pack.inDoubt, ...pack.checked },
    entries: pack.lines.map((line) => ({
      ...line,
      said: tell(line.said),
      typed: line.typed.map(tell),
      remarks: line.remarks.map(tell),
      corrects: other(line.corrects),
      became: other(line.became),
    })),
    verdicts: pack.verdicts.map((verdict) => ({
      heap: verdict.heap,
      name: tell(verdict.name),
      at: verdict.at,
      says: verdict.report === null && verdict.place === null ? null : recordRules(verdict, speaker),
    })),
    cautions: pack.cautions,
  };
}
