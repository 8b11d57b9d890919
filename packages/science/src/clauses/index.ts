import { type ListedCalculation, listed } from '../catalogue/index.ts';
import { clauseCheck } from './clause-check.ts';

/** The calculation about the clauses of a town, a landlord or a market. */
export const clauseCalculations: readonly ListedCalculation[] = [listed(clauseCheck)];

export { clauseCheck } from './clause-check.ts';
export {
  type Clause,
  type ClauseCheck,
  type ClauseCheckInput,
  type ClauseFinding,
  type ClauseKind,
  type CodeVerdict,
  clauseKinds,
  type HeapFacts,
  type LocalCode,
  plainKinds,
  type WhoseId,
  whoseIds,
} from './clause-check-io.ts';
export { type NamedId, namedIds, type StuffId, stuffIds, stuffOf } from './stuff.ts';
