import { bad, catalogue, createDraws, type MilpSolver, type Outcome, type Problem } from '@loamwright/science';

/** More problems than this are not told: an input of a million strange fields would be answered with a million lines. */
const MOST_PROBLEMS = 100;

/** An answer as the JSON text that is sent, so that it crosses the threads once and is written once. */
export type Worked =
  | { readonly ok: true; readonly json: string }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Runs one calculation on a body as it came: UTF-8 and JSON are read here, beside the calculation, so that a body
 * made to be slow to read holds up nobody else. Problems: `not-text`, `not-json-text`, and those of the calculation.
 */
export function work(id: string, body: Uint8Array, solver: MilpSolver): Worked {
  const calculation = catalogue.find((one) => one.id === id);
  if (calculation === undefined) throw new RangeError(`no calculation ${id}`);
  const input = parse(body);
  if (!input.ok) return { ok: false, problems: input.problems };
  const outcome = calculation.reckon(input.value, { draws: createDraws(), solver });
  if (!outcome.ok) return { ok: false, problems: outcome.problems.slice(0, MOST_PROBLEMS) };
  return { ok: true, json: JSON.stringify(outcome.value) };
}

function parse(body: Uint8Array): Outcome<unknown> {
  const path = 'body';
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(body);
    return { ok: true, value: JSON.parse(text) };
  } catch (error) {
    if (!(error instanceof SyntaxError)) return bad({ code: 'not-text', path, found: '', wanted: '' });
    return bad({ code: 'not-json-text', path, found: error.message.slice(0, 120), wanted: '' });
  }
}
