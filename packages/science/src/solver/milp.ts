/**
 * A mixed-integer linear programme, minimised:
 * min Σ cost·x  subject to  lower ≤ Σ coefficient·x ≤ upper for every row, and bounds on every x.
 */
export interface Milp {
  readonly variables: readonly MilpVariable[];
  readonly rows: readonly MilpRow[];
  /** How far above the least cost the answer may lie, in the cost's own unit; 0 if not said. */
  readonly gap?: number | undefined;
}

export interface MilpVariable {
  /** Letters, digits and underscores, starting with a letter; unique. */
  readonly name: string;
  readonly cost: number;
  readonly lower: number;
  /** `Infinity` where there is none. */
  readonly upper: number;
  readonly integer: boolean;
}

export interface MilpRow {
  readonly name: string;
  /** By variable name; a variable that is not named has none. */
  readonly coefficients: Readonly<Record<string, number>>;
  /** `-Infinity` where there is none. */
  readonly lower: number;
  /** `Infinity` where there is none. */
  readonly upper: number;
}

export type MilpResult =
  | { readonly status: 'optimal'; readonly cost: number; readonly values: Readonly<Record<string, number>> }
  | { readonly status: 'infeasible' }
  | { readonly status: 'failed'; readonly reason: string };

/** Solves one programme; the same programme always gives the same answer. */
export type MilpSolver = (problem: Milp) => MilpResult;
