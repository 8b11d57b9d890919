import { z } from 'zod';

/** One thing wrong with what was asked: told as data, put into words at the edge. */
export interface Problem {
  /** Which kind of problem; the message `problem.CODE` puts it into words. */
  readonly code: string;
  /** Where in the input, such as `ingredients[2].amount`; empty for the whole. */
  readonly path: string;
  /** What stood there. */
  readonly found: string;
  /** What would do. */
  readonly wanted: string;
}

/** A calculation's answer, or what kept it from answering. */
export type Outcome<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly problems: readonly Problem[] };

export function good<Value>(value: Value): Outcome<Value> {
  return { ok: true, value };
}

export function bad(...problems: readonly Problem[]): Outcome<never> {
  return { ok: false, problems };
}

export const problemSchema: z.ZodType<Problem> = z.strictObject({
  code: z.string(),
  path: z.string(),
  found: z.string(),
  wanted: z.string(),
});
