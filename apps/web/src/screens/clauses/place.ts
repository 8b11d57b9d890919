import { type HeapClauses, heapClauses, type KeptCode, keptClauses } from '@loamwright/advisor';
import type { Heap } from '@loamwright/daybook';
import type { HeapFacts, HeapMethod, Outcome } from '@loamwright/science';
import { useMemo } from 'react';
import { now } from '../../keep/time.ts';
import { useBook } from '../../keep/useBook.ts';
import { needs } from '../../mix/needs.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { useSaid } from './said.ts';

/** The clauses of the daybook. */
export function useKeptClauses(): readonly KeptCode[] {
  const { system } = useSpeaker();
  const { holding } = useBook().leaf;
  return useMemo(() => keptClauses(holding, system), [holding, system]);
}

/** A heap against the clauses of the daybook. */
export interface PlaceOfHeap {
  readonly kept: readonly KeptCode[];
  readonly said: HeapFacts;
  /** Null where no clause that can be read is kept. */
  readonly found: Outcome<HeapClauses> | null;
}

export function usePlaceOfHeap(heap: Heap, method?: HeapMethod): PlaceOfHeap {
  const { holding } = useBook().leaf;
  const kept = useKeptClauses();
  const said = useSaid(heap);
  const told = JSON.stringify(said);
  // By what it says: the answers come as a new object each time.
  const found = useMemo(
    () => heapClauses(heap, holding, { kept, told: JSON.parse(told), now: now(), draws: needs.draws, method }),
    [heap, holding, kept, told, method],
  );
  return { kept, said, found };
}
