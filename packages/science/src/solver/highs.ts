import type { Milp, MilpResult, MilpRow, MilpSolver, MilpVariable } from './milp.ts';

/** The part of the HiGHS module that is used: it reads a programme in CPLEX LP form. */
export interface HighsModule {
  solve(
    problem: string,
    options?: {
      readonly output_flag?: boolean;
      readonly random_seed?: number;
      readonly mip_rel_gap?: number;
      readonly mip_abs_gap?: number;
      readonly mip_heuristic_run_feasibility_jump?: boolean;
    },
  ): HighsSolution;
}

/**
 * Same programme, same answer: one seed, and no gap but the programme's own. Our programmes are soft, so that a feasible point is
 * never hard to find: the heuristic that jumps for one takes half of a small programme's time.
 */
const options = { output_flag: false, random_seed: 1, mip_rel_gap: 0, mip_heuristic_run_feasibility_jump: false };

function optionsFor({ gap }: Milp): Parameters<HighsModule['solve']>[1] {
  return gap === undefined ? options : { ...options, mip_abs_gap: gap };
}

interface HighsSolution {
  readonly Status: string;
  readonly ObjectiveValue: number;
  /** `Primal` is absent where there is no solution. */
  readonly Columns: Readonly<Record<string, { readonly Index: number; readonly Primal?: number }>>;
}

/** A solver out of a loaded HiGHS module; no time limit. */
export function highsSolver(highs: HighsModule): MilpSolver {
  return (problem) => {
    try {
      return readSolution(problem, highs.solve(writeLp(problem), optionsFor(problem)));
    } catch (cause) {
      return { status: 'failed', reason: String(cause) };
    }
  };
}

function readSolution(problem: Milp, solution: HighsSolution): MilpResult {
  if (solution.Status === 'Infeasible') return { status: 'infeasible' };
  if (solution.Status !== 'Optimal') return { status: 'failed', reason: solution.Status };
  const values = problem.variables.map(({ name, integer }): [string, number] => {
    const primal = solution.Columns[name]?.Primal ?? 0;
    return [name, integer ? Math.round(primal) : primal];
  });
  return { status: 'optimal', cost: solution.ObjectiveValue, values: Object.fromEntries(values) };
}

/** A programme in the CPLEX LP file format, which HiGHS and GLPK both read. */
export function writeLp(problem: Milp): string {
  const costs = Object.fromEntries(problem.variables.map(({ name, cost }) => [name, cost]));
  const integers = problem.variables.filter(({ integer }) => integer).map(({ name }) => name);
  return [
    'Minimize',
    ` cost: ${terms(costs)}`,
    'Subject To',
    ...problem.rows.flatMap(writeRow),
    'Bounds',
    ...problem.variables.map(writeBounds),
    ...(integers.length > 0 ? ['General', ...integers.map((name) => ` ${name}`)] : []),
    'End',
    '',
  ].join('\n');
}

function writeRow(row: MilpRow): readonly string[] {
  const left = terms(row.coefficients);
  if (row.lower === row.upper) return [` ${row.name}: ${left} = ${number(row.lower)}`];
  return [
    ...(row.lower === Number.NEGATIVE_INFINITY ? [] : [` ${row.name}_lo: ${left} >= ${number(row.lower)}`]),
    ...(row.upper === Number.POSITIVE_INFINITY ? [] : [` ${row.name}_hi: ${left} <= ${number(row.upper)}`]),
  ];
}

function writeBounds({ name, lower, upper }: MilpVariable): string {
  const low = lower === Number.NEGATIVE_INFINITY ? '-inf' : number(lower);
  const high = upper === Number.POSITIVE_INFINITY ? '+inf' : number(upper);
  return ` ${low} <= ${name} <= ${high}`;
}

/** One term a line: the format caps a line's length. */
function terms(coefficients: Readonly<Record<string, number>>): string {
  const written = Object.entries(coefficients)
    .filter(([, coefficient]) => coefficient !== 0)
    .map(([name, coefficient]) => `${coefficient < 0 ? '-' : '+'} ${number(Math.abs(coefficient))} ${name}`);
  if (written.length > 0) return written.join('\n  ');
  const [anyName = 'nothing'] = Object.keys(coefficients);
  return `0 ${anyName}`;
}

/** Fixed notation to 12 significant digits: LP readers disagree about exponents and very long numbers. */
function number(value: number): string {
  return fixedNotation.format(Number(value.toPrecision(12)));
}

const fixedNotation = new Intl.NumberFormat('en', { useGrouping: false, maximumFractionDigits: 20 });
