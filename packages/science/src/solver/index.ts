export { type HighsModule, highsSolver, writeLp } from './highs.ts';
export type { Milp, MilpResult, MilpRow, MilpSolver, MilpVariable } from './milp.ts';
