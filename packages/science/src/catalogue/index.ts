export {
  type Calculation,
  type Citation,
  type ListedCalculation,
  listed,
  type Mark,
  type Needs,
} from './calculation.ts';
export { check } from './check.ts';
export { bad, good, type Outcome, type Problem, problemSchema } from './outcome.ts';
