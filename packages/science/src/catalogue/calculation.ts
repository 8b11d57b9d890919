import { z } from 'zod';
import type { CautionId } from '../caution/caution.ts';
import type { Draws } from '../estimate/index.ts';
import type { MilpSolver } from '../solver/milp.ts';
import { check } from './check.ts';
import { type Citation, type Cites, citations } from './citation.ts';
import type { Outcome } from './outcome.ts';

/** What a calculation needs from outside, handed in. */
export interface Needs {
  readonly draws: Draws;
  /** The solver of linear and mixed-integer programmes, loaded once; only some calculations ask for it. */
  readonly solver?: MilpSolver | undefined;
}

/** One piece of science: the command line, the reference pages and the property tests all derive from it. */
export interface Calculation<Input, Output> {
  /** Kebab-case; its name at the command line. */
  readonly id: string;
  readonly title: string;
  /** What it answers, in two or three sentences, for the reference pages. */
  readonly summary: string;
  readonly input: z.ZodType<Input>;
  readonly output: z.ZodType<Output>;
  /** Rows of tables, or citations; the catalogue cites each once. */
  readonly sources: readonly Cites[];
  readonly cautions: readonly CautionId[];
  /** An input that does the work, for `reckon ID --example` and the reference pages. */
  readonly example: Input;
  /** Pure and synchronous; an input that satisfies the schema never makes it throw. */
  readonly run: (input: Input, needs: Needs) => Outcome<Output>;
}

/** A calculation whose types are known only to its own schemas, as a list of many must hold it. */
export interface ListedCalculation {
  readonly id: string;
  readonly title: string;
  readonly summary: string;
  readonly sources: readonly Citation[];
  readonly cautions: readonly CautionId[];
  readonly example: unknown;
  /** JSON Schema (draft 2020-12) of the input. */
  inputSchema(): unknown;
  /** JSON Schema of the answer. */
  outputSchema(): unknown;
  /** Checks the input, then runs. */
  reckon(input: unknown, needs: Needs): Outcome<unknown>;
}

/** Wraps a calculation for the catalogue: outside data is checked before it runs. */
export function listed<Input, Output>(calculation: Calculation<Input, Output>): ListedCalculation {
  const { id, title, summary, sources, cautions, example, input, output, run } = calculation;
  return {
    id,
    title,
    summary,
    sources: citations(sources),
    cautions,
    example,
    inputSchema: () => z.toJSONSchema(input),
    outputSchema: () => z.toJSONSchema(output),
    reckon: (data, needs) => {
      const checked = check(input, data);
      return checked.ok ? run(checked.value, needs) : checked;
    },
  };
}
