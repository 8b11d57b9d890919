import { type DaybookLine, daybookLines, stockReport } from '@loamwright/advisor';
import type { About } from '@loamwright/daybook';
import { bad, good, type Outcome } from '@loamwright/science';
import type { Answer } from '../../answer.ts';
import { type Book, readBook } from '../../book.ts';
import { tellInstant } from '../../dates.ts';
import type { Session } from '../../session.ts';
import { subjectNamed } from '../../subject.ts';
import { page } from '../../text.ts';
import { entryOf, shortId } from './find.ts';
import type { DaybookOptions } from './options.ts';

/** A screenful. */
const USUAL_NEWEST = 20;

/** The daybook's lines, the newest first. */
export async function list(options: DaybookOptions, session: Session): Promise<Outcome<Answer>> {
  const book = await readBook(session);
  if (!book.ok) return book;
  const { entries, holding } = book.value;
  const about = aboutOf(book.value, options.about);
  if (!about.ok) return about;
  const newest = newestOf(options);
  if (!newest.ok) return newest;
  const lines = daybookLines(entries, holding, { about: about.value, newest: newest.value });
  const { speaker, terminal } = session;
  const shown = lines.map((line) => lineText(line, session));
  const more = entries.length - lines.length;
  const blocks = [
    shown.length === 0 ? speaker.say('cli.daybook.empty') : shown.join('\n'),
    about.value === undefined && more > 0 ? page(terminal.columns, [speaker.say('cli.daybook.more', { more })]) : '',
    options.about === undefined ? stockText(book.value, session) : '',
  ];
  return good({ value: lines, text: blocks.filter((block) => block !== '').join('\n\n') });
}

function aboutOf({ holding }: Book, typed: string | undefined): Outcome<About | undefined> {
  if (typed === undefined) return good(undefined);
  const heap = subjectNamed(holding, 'heap', typed);
  if (heap.ok) return good({ type: 'heap', id: heap.value });
  const bay = subjectNamed(holding, 'bay', typed);
  return bay.ok ? good({ type: 'bay', id: bay.value }) : heap;
}

function newestOf({ newest, all }: DaybookOptions): Outcome<number | undefined> {
  if (all === true) return good(undefined);
  if (newest === undefined) return good(USUAL_NEWEST);
  if (/^[1-9]\d{0,6}$/u.test(newest)) return good(Number(newest));
  return bad({ code: 'not-valid', path: '--newest', found: newest.slice(0, 40), wanted: 'a whole number from 1' });
}

/** When, the end of its id, what happened; under it what is remarkable about it. */
function lineText(
  { entry, happened, zone, precision, said, remarks }: DaybookLine,
  { speaker, terminal }: Session,
): string {
  const when = tellInstant(happened, zone, precision, speaker.locale);
  const head = `${when}  ${shortId(entry)}  `;
  return page(
    terminal.columns,
    [`- ${head}${speaker.tell(said)}`, '    '],
    ...remarks.map((remark): [string, string] => [`    ${speaker.tell(remark)}`, '    ']),
  );
}

function stockText({ holding }: Book, { speaker, terminal, now }: Session): string {
  const { lines } = stockReport(holding, now().toISOString());
  if (lines.length === 0) return '';
  return page(
    terminal.columns,
    [speaker.say('cli.daybook.stock')],
    ...lines.map(({ said, keeping }): [string, string] => [
      `- ${speaker.tell(said)}${keeping === null ? '' : `. ${speaker.tell(keeping)}`}`,
      '  ',
    ]),
  );
}

/** One entry as it is kept, whole. */
export async function show(typed: string, session: Session): Promise<Outcome<Answer>> {
  const book = await readBook(session);
  if (!book.ok) return book;
  const entry = entryOf(book.value.entries, typed);
  return entry.ok ? good({ value: entry.value, text: JSON.stringify(entry.value, null, 2) }) : entry;
}
