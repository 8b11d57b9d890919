export { type Calculation, type ListedCalculation, listed, type Needs } from './calculation.ts';
export { check } from './check.ts';
export {
  type Citation,
  type Cites,
  cited,
  type Mark,
  oneOfEach,
  type Source,
  sourceLine,
  sourceOf,
} from './citation.ts';
export { type Field, fieldsOf } from './fields.ts';
export { bad, good, type Outcome, type Problem, problemSchema } from './outcome.ts';
