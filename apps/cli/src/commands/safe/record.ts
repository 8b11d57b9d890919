import { existsSync } from 'node:fs';
import { type RecordPack, recordCsv, recordData, recordPack } from '@loamwright/advisor';
import { fold, type Holding } from '@loamwright/daybook';
import { bad, createDraws, good, type Outcome } from '@loamwright/science';
import type { Answer } from '../../answer.ts';
import { readOneOf } from '../../blend.ts';
import { withKeeping } from '../../book.ts';
import type { Session } from '../../session.ts';
import { subjectNamed } from '../../subject.ts';
import { page } from '../../text.ts';
import { writeWhole } from '../../whole-file.ts';
import { readerOf, recordText } from './record-forms.ts';

export interface SafeRecordOptions {
  readonly as?: string | undefined;
  readonly out?: string | undefined;
}

const forms = ['text', 'csv', 'json'] as const;
type Form = (typeof forms)[number];

const written: Readonly<Record<Form, (pack: RecordPack, session: Session) => string>> = {
  text: (pack, session) => `${recordText(pack, session)}\n`,
  csv: (pack, session) => recordCsv(pack, readerOf(pack, session)),
  json: (pack, session) => `${JSON.stringify(recordData(pack, readerOf(pack, session)), null, 2)}\n`,
};

/** `loamwright safe record`: the grower's own record of one heap or bed, printed or as a file. */
export async function safeRecord(name: string, options: SafeRecordOptions, session: Session): Promise<Outcome<Answer>> {
  const form = readOneOf(options.as ?? 'text', forms, '--as');
  if (!form.ok) return form;
  const made = await packOf(name, session);
  if (!made.ok) return made;
  const pack = made.value;
  const text = written[form.value](pack, session);
  if (options.out === undefined) {
    if (session.json) return good({ value: recordData(pack, readerOf(pack, session)), text: '' });
    session.terminal.out(text);
    return good({ value: undefined, text: '', quiet: true });
  }
  const file = await writeWhole(options.out, [text], session);
  if (!file.ok) return file;
  const { speaker, terminal } = session;
  const value = { file: options.out, count: pack.lines.length, name: speaker.tell(pack.name) };
  return good({ value, text: page(terminal.columns, [speaker.say('cli.safe.record.done', value)]) });
}

/** Problems: those of a keeping, `no-such-heap` and its like. */
async function packOf(name: string, session: Session): Promise<Outcome<RecordPack>> {
  const now = session.now().toISOString();
  if (!existsSync(session.folder.daybook)) {
    return bad({ code: 'daybook-empty', path: session.folder.daybook, found: '', wanted: '' });
  }
  return withKeeping(session, async (keeping) => {
    const { entries } = await keeping.read();
    const checked = await keeping.check();
    const holding = fold(entries, { now });
    const of = subjectOf(name, holding);
    if (!of.ok) return of;
    const { system } = session.speaker;
    return good(recordPack(of.value, holding, { entries, checked, now, draws: createDraws(), system }));
  });
}

function subjectOf(name: string, holding: Holding): Outcome<{ readonly type: 'heap' | 'bed'; readonly id: string }> {
  const heap = subjectNamed(holding, 'heap', name);
  if (heap.ok) return good({ type: 'heap', id: heap.value });
  const bed = subjectNamed(holding, 'bed', name);
  if (bed.ok) return good({ type: 'bed', id: bed.value });
  return bad(...heap.problems);
}
