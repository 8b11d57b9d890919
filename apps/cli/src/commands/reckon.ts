import { bad, catalogue, createDraws, good, type ListedCalculation, nearest, type Outcome } from '@loamwright/science';
import { outline } from '@loamwright/words';
import type { Answer } from '../answer.ts';
import { citationLine, cited } from '../citation.ts';
import { parseJson } from '../json.ts';
import type { Session } from '../session.ts';
import { loadSolver } from '../solver.ts';
import { wrap } from '../terminal.ts';

export interface ReckonOptions {
  readonly list?: boolean | undefined;
  readonly schema?: boolean | undefined;
  readonly sources?: boolean | undefined;
  readonly example?: boolean | undefined;
}

/** An input is typed or made by a program; a year of readings is well below this. */
const MOST_INPUT_BYTES = 16 * 1024 * 1024;

/** `loamwright reckon`: one calculation of the catalogue, or what is in it. */
export async function reckon(
  id: string | undefined,
  options: ReckonOptions,
  session: Session,
): Promise<Outcome<Answer>> {
  if (options.list === true || id === undefined) return good(listing(session));
  const calculation = catalogue.find((one) => one.id === id);
  if (calculation === undefined) {
    const ids = catalogue.map((one) => one.id);
    return bad({ code: 'unknown-calculation', path: '', found: id.slice(0, 60), wanted: nearest(id, ids).join(', ') });
  }
  if (options.schema === true) return good(schemas(calculation));
  if (options.sources === true) return good(sourcesOf(calculation, session));
  if (options.example === true) return good(asJson(calculation.example));
  return run(calculation, session);
}

function listing({ speaker, terminal }: Session): Answer {
  const value = catalogue.map(({ id, title, summary }) => ({ id, title, summary }));
  const width = Math.max(...value.map(({ id }) => id.length)) + 2;
  const lines = value.map(({ id, title }) => wrap(id.padEnd(width) + title, terminal.columns, ' '.repeat(width)));
  return { value, text: [...lines, '', speaker.say('cli.reckon.hint')].join('\n') };
}

function schemas(calculation: ListedCalculation): Answer {
  return asJson({ input: calculation.inputSchema(), output: calculation.outputSchema() });
}

function asJson(value: unknown): Answer {
  return { value, text: JSON.stringify(value, null, 2) };
}

function sourcesOf(calculation: ListedCalculation, { speaker, terminal }: Session): Answer {
  const value = calculation.sources.map(cited);
  const lines = value.map((one) => citationLine(one, speaker, terminal.columns));
  return { value, text: [wrap(calculation.summary, terminal.columns), '', ...lines].join('\n') };
}

async function run(calculation: ListedCalculation, session: Session): Promise<Outcome<Answer>> {
  const text = await session.terminal.input(MOST_INPUT_BYTES);
  if (!text.ok) return text;
  if (text.value.trim() === '') return bad({ code: 'input-empty', path: calculation.id, found: '', wanted: '' });
  const input = parseJson(text.value, '-');
  if (!input.ok) return input;
  const outcome = calculation.reckon(input.value, { draws: createDraws(), solver: await loadSolver() });
  if (!outcome.ok) return outcome;
  return good({ value: outcome.value, text: outline(outcome.value, session.speaker) });
}
