import type { Heap, Holding } from '@loamwright/daybook';
import type { HeapFacts } from '@loamwright/science';
import type { UnitSystem } from '@loamwright/units';
import type { Saying } from '@loamwright/words';
import { clauseReport } from './clause-report.ts';
import { heapClauses, keptClauses, type LogAsked } from './local-clauses.ts';

/** What a heap is held against the clauses of the daybook with. */
export interface PlaceAsked extends LogAsked {
  /** By which a figure without a unit is read. */
  readonly system: UnitSystem;
  /** What the grower says of the heap beside the daybook. */
  readonly told?: HeapFacts | undefined;
}

/**
 * Which clauses of the daybook a heap breaks; null where it breaks none. No log makes up for a clause, so that this comes before
 * whatever is told of the log.
 */
export function placeBroken(heap: Heap, holding: Holding, { system, told = {}, ...asked }: PlaceAsked): Saying | null {
  const clauses = heapClauses(heap, holding, { ...asked, kept: keptClauses(holding, system), told });
  if (clauses?.ok !== true || clauses.value.found.standing !== 'clause-fails') return null;
  return clauseReport(clauses.value.found, clauses.value.logMeets).answer;
}
