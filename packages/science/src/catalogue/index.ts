export { type Calculation, type ListedCalculation, listed, type Needs } from './calculation.ts';
export { check } from './check.ts';
export type { Citation, Mark } from './citation.ts';
export { bad, good, type Outcome, type Problem, problemSchema } from './outcome.ts';
