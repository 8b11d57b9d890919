import { heapRunCsv, heapRunReport, type TempAtDay } from '@loamwright/advisor';
import { bad, check, createDraws, good, type HeapRunAnswer, heapRun, type Outcome } from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import type { Answer } from '../../answer.ts';
import type { Session } from '../../session.ts';
import { openWithSizes } from '../../sizes.ts';
import { page } from '../../text.ts';
import { cautionText } from '../heap.ts';
import { type HeapRunOptions, type RunAsked, readAsked } from './asked.ts';
import { drawCourse, drawShells } from './picture.ts';
import { roomWords } from './room.ts';

/** `loamwright heap run`: what a heap would do, from what is in it or as the daybook knows it. */
export async function runHeapCommand(
  typed: readonly string[],
  options: HeapRunOptions,
  before: Session,
): Promise<Outcome<Answer>> {
  const opened = await openWithSizes(options, before);
  if (!opened.ok) return opened;
  const { holding, session } = opened.value;
  if (options.csv === true && session.json)
    return bad({ code: 'two-forms', path: '--csv', found: '--json', wanted: '' });
  const asked = await readAsked(typed, options, holding, session);
  if (!asked.ok) return asked;
  const { input, atOption } = asked.value;
  const checked = check(heapRun.input, input);
  if (!checked.ok) return bad(...checked.problems.map(atOption));
  const found = heapRun.run(checked.value, { draws: createDraws() });
  if (!found.ok) return bad(...found.problems.map(atOption));
  if (options.csv === true) {
    session.terminal.out(heapRunCsv(found.value));
    return good({ value: undefined, text: '', quiet: true });
  }
  return good({ value: { input, ...found.value }, text: runText(asked.value, found.value, session) });
}

function runText({ input, kept, notes }: RunAsked, found: HeapRunAnswer, { speaker, terminal }: Session): string {
  const { columns } = terminal;
  const report = heapRunReport(found);
  const lines = (sayings: readonly Saying[], mark = ''): string =>
    page(
      columns,
      ...sayings.map((said): [string, string] => [`${mark}${speaker.tell(said)}`, ' '.repeat(mark.length)]),
    );
  const answer = [report.heats, ...(report.turn === undefined ? [] : [report.turn]), report.lost];
  const readings = kept?.readings ?? [];
  const acts = input.acts ?? [];
  const blocks = [
    page(columns, [answer.map((said) => speaker.tell(said)).join(' ')]),
    lines(report.reasons),
    `${speaker.say('cli.heapRun.course')}\n${drawCourse({ found, acts, readings }, speaker, columns)}`,
    drawShells(found, speaker, columns),
    lines([...roomWords(input, found), ...withinWords(found, readings), ...notes, ...report.notes], '- '),
    cautionText(report.cautions, speaker, columns, 'short'),
  ];
  return blocks.filter((block) => block !== '').join('\n\n');
}

/** How many of the readings lie in the band that is told. */
function withinWords({ day, core_degC }: HeapRunAnswer, readings: readonly TempAtDay[]): readonly Saying[] {
  const seen = readings.filter(({ at_day }) => at_day <= (day.at(-1) ?? 0));
  if (seen.length === 0) return [];
  const within = seen.filter(({ at_day, temp_degC }) => {
    const t = day.findIndex((time) => time >= at_day);
    return temp_degC >= (core_degC.p10[t] ?? 0) && temp_degC <= (core_degC.p90[t] ?? 0);
  });
  return [{ key: 'cli.heapRun.within', places: { all: seen.length, within: within.length } }];
}
