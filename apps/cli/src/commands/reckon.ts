import sources from '@loamwright/reference/sources.json' with { type: 'json' };
import {
  bad,
  type Citation,
  catalogue,
  createDraws,
  good,
  type ListedCalculation,
  nearest,
  type Outcome,
} from '@loamwright/science';
import type { Answer } from '../answer.ts';
import { parseJson } from '../json.ts';
import { outline } from '../outline.ts';
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

/** A source as `reference/sources.json` has it. */
interface Source {
  readonly author: string | null;
  readonly year: number | null;
  readonly title: string;
  readonly address?: string | undefined;
}

function sourcesOf(calculation: ListedCalculation, { speaker, terminal }: Session): Answer {
  const value = calculation.sources.map((citation) => ({ ...citation, ...sourceOf(citation) }));
  const lines = value.map(({ author, year, title, place, mark }) => {
    const head = [author, year, title].filter((part) => part !== null && part !== '').join(', ');
    return wrap(`- ${head}: ${place} (${speaker.sayIf(`mark.${mark}`, mark)})`, terminal.columns, '  ');
  });
  return { value, text: [wrap(calculation.summary, terminal.columns), '', ...lines].join('\n') };
}

function sourceOf({ source }: Citation): Source {
  const table: Readonly<Record<string, Source>> = sources;
  return table[source] ?? { author: null, year: null, title: source };
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
