import { daybookLines, type HeapReport, heapReport } from '@loamwright/advisor';
import type { Entry, Holding } from '@loamwright/daybook';
import { type CautionId, createDraws, good, inOrder, materialById, type Outcome } from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import type { Answer } from './answer.ts';
import { type Book, type Jotting, readBook, writeDown } from './book.ts';
import { actText, cautionText } from './commands/heap.ts';
import type { Session } from './session.ts';
import { page } from './text.ts';

interface RecordedOptions {
  readonly heap?: string | undefined;
  readonly silent?: boolean | undefined;
  readonly told?: readonly Saying[] | undefined;
}

/**
 * Writes down what happened and says so; where it was about a heap, with what the heap is doing now and the one thing
 * to do.
 *
 * @param heap the heap it was about, if any; `silent` leaves out the cautions, for who tells them otherwise; `told` stands in place
 *   of a line for each entry, where they are many.
 */
export async function recorded(
  session: Session,
  jottings: readonly Jotting[],
  { heap, silent = false, told }: RecordedOptions = {},
): Promise<Outcome<Answer>> {
  const written = await writeDown(session, jottings);
  if (!written.ok) return written;
  const book = await readBook(session);
  if (!book.ok) return book;
  const report = heap === undefined ? undefined : reportOf(book.value.holding, heap, session);
  const value = { entries: written.value.map(({ id, kind }) => ({ id, kind })), ...(report && { heap: report }) };
  const blocks = [
    told === undefined ? linesText(written.value, book.value, session) : toldText(told, session),
    report === undefined ? '' : standingText(report, session),
    silent ? '' : cautionText(cautionsOf(jottings, report), session.speaker, session.terminal.columns),
  ];
  return good({ value, text: blocks.filter((block) => block !== '').join('\n\n') });
}

function reportOf(holding: Holding, heap: string, session: Session): HeapReport | undefined {
  const report = heapReport(holding, heap, session.now().toISOString(), { draws: createDraws() });
  return report.ok ? report.value : undefined;
}

function toldText(told: readonly Saying[], { speaker, terminal }: Session): string {
  return page(terminal.columns, ...told.map((one): readonly [string] => [speaker.tell(one)]));
}

/** What was written, as the daybook tells it, with whatever looks wrong about it. */
function linesText(written: readonly Entry[], { entries, holding }: Book, { speaker, terminal }: Session): string {
  const ids = written.map(({ id }) => id);
  const lines = daybookLines(entries, holding).filter(({ entry }) => ids.includes(entry));
  const inOrder = ids.flatMap((id) => lines.filter(({ entry }) => entry === id));
  return page(
    terminal.columns,
    ...inOrder.flatMap(({ said, remarks }): readonly (readonly [string])[] => [
      [speaker.say('cli.recorded', { what: speaker.tell(said) })],
      ...remarks.map((remark): readonly [string] => [speaker.tell(remark)]),
    ]),
  );
}

function standingText({ headline, act }: HeapReport, { speaker, terminal }: Session): string {
  return `${page(terminal.columns, [speaker.tell(headline)])}\n\n${actText(act, speaker, terminal.columns)}`;
}

/** What belongs to what was just done: to a reading, what it calls for; to stuff, what is in it. Fire always. */
function cautionsOf(jottings: readonly Jotting[], report: HeapReport | undefined): readonly CautionId[] {
  const wanted = new Set<CautionId>(report?.cautions.filter((id) => id === 'fire'));
  for (const { kind, body, about } of jottings) {
    if (kind === 'reading') for (const id of report?.reading?.cautions ?? []) wanted.add(id);
    const materials = [
      ...('layers' in body ? body.layers.map(({ material }) => material) : []),
      ...(kind === 'spread' && 'of' in body && body.of.type === 'material' ? [body.of.id] : []),
      ...(kind === 'stock-in' ? about.map(({ id }) => id) : []),
    ];
    for (const material of materials) for (const id of materialById(material)?.cautions ?? []) wanted.add(id);
  }
  return inOrder(wanted);
}
