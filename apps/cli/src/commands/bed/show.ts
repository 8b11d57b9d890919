import { type BedMoment, bedReport, bedsOverview } from '@loamwright/advisor';
import { createDraws, good, type Outcome } from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import type { Answer } from '../../answer.ts';
import { readBook } from '../../book.ts';
import { tellDay } from '../../dates.ts';
import type { Session } from '../../session.ts';
import { subjectNamed } from '../../subject.ts';
import { page } from '../../text.ts';
import { cautionText } from '../heap.ts';

/** Now and here, as beds are told of. */
export function momentOf({ now, zone, speaker }: Session): BedMoment {
  return { now: now().toISOString(), zone, speaker, needs: { draws: createDraws() } };
}

/** `loamwright bed show`: every bed in a line, or one bed: what it wants, why, and what was done there. */
export async function bedShow(name: string | undefined, session: Session): Promise<Outcome<Answer>> {
  const book = await readBook(session);
  if (!book.ok) return book;
  const { holding } = book.value;
  const { speaker, terminal, zone } = session;
  const { columns } = terminal;
  if (name === undefined) {
    const overview = bedsOverview(holding, momentOf(session));
    const lines = overview.beds.map((bed) =>
      page(columns, [bed.name], ...[bed.stands, bed.what].flatMap((said) => (said === null ? [] : [indented(said)]))),
    );
    return good({ value: overview, text: [page(columns, [speaker.tell(overview.headline)]), ...lines].join('\n\n') });
  }
  const id = subjectNamed(holding, 'bed', name);
  if (!id.ok) return id;
  const bed = holding.beds.get(id.value);
  if (bed === undefined) throw new RangeError('a bed was named');
  const report = bedReport(bed, holding, momentOf(session));
  const { budget } = report;
  const listed = (sayings: readonly Saying[]): string =>
    page(columns, ...sayings.map((said): [string, string] => [`- ${speaker.tell(said)}`, '  ']));
  const done = report.done.map(({ instant, said }): [string, string] => [
    `${tellDay(instant, zone, speaker.locale)}: ${speaker.tell(said)}`,
    '  ',
  ]);
  const blocks = [
    page(columns, [report.name], [speaker.tell(report.what)]),
    page(columns, ...[report.answer, ...report.ground].map((said): [string] => [speaker.tell(said)])),
    page(columns, ...(budget?.advice ?? []).map((said): [string, string] => [`> ${speaker.tell(said)}`, '  '])),
    listed([...(budget?.supplied ?? []), ...report.notes]),
    listed(budget?.others ?? []),
    page(columns, ...done),
    cautionText(budget?.cautions ?? [], speaker, columns),
  ];
  return good({ value: report, text: blocks.filter((block) => block !== '').join('\n\n') });

  function indented(said: Saying): [string, string] {
    return [`  ${speaker.tell(said)}`, '  '];
  }
}
