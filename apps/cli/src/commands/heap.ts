import {
  type ActWords,
  type HeapLine,
  type HeapReport,
  heapReport,
  heapsOverview,
  leftSaying,
  placeBroken,
  waitNotes,
} from '@loamwright/advisor';
import { type CautionId, createDraws, good, type Needs, type Outcome } from '@loamwright/science';
import type { Saying, Speaker } from '@loamwright/words';
import type { Answer } from '../answer.ts';
import { readBook } from '../book.ts';
import { tellDay } from '../dates.ts';
import { drawSeries } from '../drawing.ts';
import type { Session } from '../session.ts';
import { subjectNamed } from '../subject.ts';
import { page } from '../text.ts';

/** `loamwright heap`: every heap in a line, or one heap's page. */
export async function heap(typed: string | undefined, session: Session): Promise<Outcome<Answer>> {
  const book = await readBook(session);
  if (!book.ok) return book;
  const { holding } = book.value;
  const now = session.now().toISOString();
  const needs: Needs = { draws: createDraws() };
  if (typed === undefined) {
    const overview = heapsOverview(holding, now, needs);
    const lines = overview.heaps.map((line) => overviewLine(line, session));
    return good({ value: overview, text: lines.length > 0 ? lines.join('\n\n') : session.speaker.tell(overview.none) });
  }
  const id = subjectNamed(holding, 'heap', typed);
  if (!id.ok) return id;
  const report = heapReport(holding, id.value, now, needs);
  if (!report.ok) return report;
  const named = holding.heaps.get(id.value);
  if (named === undefined) throw new RangeError('a heap was named');
  const left = leftSaying(named, holding, {
    measure: 'barrow',
    ownSizes: session.settings.measures_L,
    now,
    needs,
  });
  const { system } = session.speaker;
  const place = named.phase === 'gone' ? null : placeBroken(named, holding, { now, ...needs, system });
  const waits = waitNotes(holding, named, now, needs);
  const told = { ...report.value, safety: [...report.value.safety, ...waits] };
  return good({ value: { ...told, left, place }, text: heapPage(told, { left, place }, session) });
}

function overviewLine({ name, bay, headline, act }: HeapLine, { speaker, terminal }: Session): string {
  const place = bay === null ? name : speaker.say('cli.heap.inBay', { heap: name, bay });
  return page(
    terminal.columns,
    [place],
    [`  ${speaker.tell(headline)}`, '  '],
    [`  ${speaker.tell(act.when)}: ${speaker.tell(act.what)}`, '  '],
  );
}

/** One heap's page in text. */
function heapPage(
  report: HeapReport,
  { left, place: broken }: { readonly left: Saying | null; readonly place: Saying | null },
  session: Session,
): string {
  const { speaker, terminal, zone } = session;
  const { columns } = terminal;
  const dayOf = (instant: string): string => tellDay(instant, zone, speaker.locale);
  const since = speaker.say('cli.heap.since', { day: dayOf(report.begun) });
  const place =
    report.bay === null ? report.name : speaker.say('cli.heap.inBay', { heap: report.name, bay: report.bay });
  const picture = drawSeries(report, speaker, columns, dayOf);
  const acts = report.acts.map(({ instant, said }) => `${dayOf(instant)} ${speaker.tell(said)}`);
  const made =
    report.made.length === 0
      ? speaker.tell(report.madeNote)
      : `${speaker.list(report.made.map(({ said }) => speaker.tell(said)))}. ${speaker.tell(report.madeNote)}`;
  const blocks = [
    page(
      columns,
      [`${place}, ${since}`],
      [speaker.tell(report.headline)],
      ...(left === null ? [] : [[speaker.tell(left)] as [string]]),
    ),
    broken === null ? '' : page(columns, [speaker.tell(broken)]),
    actText(report.act, speaker, columns),
    picture,
    acts.length === 0 ? '' : page(columns, [`^  ${acts.join('; ')}`, '   ']),
    ...(report.reading === null
      ? []
      : [
          page(
            columns,
            ...[...report.reading.views, report.reading.sanitising, ...report.reading.notes].map((said): [string] => [
              speaker.tell(said),
            ]),
          ),
        ]),
    page(columns, [`${speaker.say('cli.heap.made')} ${made}`]),
    page(columns, ...report.safety.map((said): [string] => [speaker.tell(said)])),
    cautionText(report.cautions, speaker, columns),
  ];
  return blocks.filter((block) => block !== '').join('\n\n');
}

/** The one act, why, what waiting costs, and what would tell more. */
export function actText(act: ActWords, speaker: Speaker, columns: number): string {
  return page(
    columns,
    [`${speaker.tell(act.when)}: ${speaker.tell(act.what)}`],
    [`${speaker.tell(act.because)} ${speaker.tell(act.waiting)}`],
    ...act.checks.map((check): [string, string] => [`- ${speaker.tell(check)}`, '  ']),
  );
}

/**
 * Every caution that is demanded: what can hurt is never behind a link. In short where an answer has much else to
 * say: the danger and what to do, its rest in the full one.
 */
export function cautionText(
  cautions: readonly CautionId[],
  speaker: Speaker,
  columns: number,
  length: 'full' | 'short' = 'full',
): string {
  const told = (id: CautionId): string => {
    const full = speaker.say(`caution.${id}`);
    return length === 'full' ? full : speaker.sayIf(`cli.caution.${id}`, full);
  };
  return page(columns, ...cautions.map((id): [string, string] => [`! ${told(id)}`, '  ']));
}
