import { type DoubtWords, doubtWords } from '@loamwright/advisor';
import { good, type Outcome, plausibilityOf, type TypedReading } from '@loamwright/science';
import { unitTable } from '@loamwright/units';
import type { Answer } from '../../answer.ts';
import type { Session } from '../../session.ts';
import { page } from '../../text.ts';
import { cautionText } from '../heap.ts';
import type { LogAsked } from './read.ts';

/** What came of asking: it stands, or something else was meant, or nothing is to be written and why. */
export type Believed = { readonly typed: string | undefined; readonly doubted: boolean } | { readonly answer: Answer };

/**
 * An odd reading is asked about and never refused. A person is asked on the spot; a program gets the question, with exit
 * code 2, and how to record it as it stands.
 */
export async function believed(
  typed: TypedReading | undefined,
  { session, options }: LogAsked,
): Promise<Outcome<Believed>> {
  if (typed === undefined) return good({ typed: undefined, doubted: false });
  const doubt = plausibilityOf(typed);
  const words = doubtWords(doubt, typed);
  if (words === undefined) return good({ typed: undefined, doubted: false });
  const stands: Believed = { typed: undefined, doubted: true };
  if (options.asTyped === true) return good(stands);
  const { speaker, terminal, json } = session;
  if (json || !terminal.answers) {
    const text = `${question(words, session)}\n\n${page(terminal.columns, [speaker.say('cli.log.notRecorded')])}`;
    return good({
      answer: { value: { recorded: false, typed, ...doubt }, text, code: 2, problems: [oddProblem(words, session)] },
    });
  }
  terminal.out(`${question(words, session)}\n${page(terminal.columns, [speaker.say('cli.log.choose')])}\n`);
  const answer = (await terminal.ask('> ')).trim();
  if (answer.toLowerCase() === 'k') return good(stands);
  const chosen = /^[1-9]$/u.test(answer)
    ? words.suggestions.filter(isReading)[Number(answer) - 1]?.suggested
    : undefined;
  if (chosen !== undefined) return good({ typed: `${chosen.value}${unitTable[chosen.unit].symbol}`, doubted: false });
  if (answer !== '') return good({ typed: answer, doubted: false });
  return good({ answer: { value: { recorded: false }, text: speaker.say('cli.log.left'), code: 2 } });
}

function oddProblem(
  { odd, suggestions }: DoubtWords,
  { speaker }: Session,
): { code: string; path: string; found: string; wanted: string } {
  const meant = suggestions.flatMap(({ suggested }) =>
    suggested === undefined ? [] : [`${suggested.value}${unitTable[suggested.unit].symbol}`],
  );
  return {
    code: 'reading-odd',
    path: 'temp_degC',
    found: odd.map((said) => speaker.tell(said)).join(' '),
    wanted: [...meant, '--as-typed'].join(' | '),
  };
}

type Suggested = DoubtWords['suggestions'][number];

function isReading(one: Suggested): boolean {
  return one.suggested !== undefined;
}

/** What is odd, and what may have been meant; what can be chosen is numbered. */
function question({ odd, suggestions, cautions }: DoubtWords, { speaker, terminal }: Session): string {
  let number = 0;
  const choices = suggestions.map((one): [string, string] => {
    if (!isReading(one)) return [`- ${speaker.tell(one.said)}`, '  '];
    number += 1;
    return [`- ${number}: ${speaker.tell(one.said)}`, '  '];
  });
  const blocks = [
    page(terminal.columns, ...odd.map((said): [string] => [speaker.tell(said)])),
    page(terminal.columns, ...choices),
    cautionText(cautions, speaker, terminal.columns),
  ];
  return blocks.filter((block) => block !== '').join('\n');
}
