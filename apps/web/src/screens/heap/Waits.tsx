import '@loamwright/words/later';
import { waitNotes } from '@loamwright/advisor';
import type { Heap, Holding } from '@loamwright/daybook';
import { type ReactNode, useMemo } from 'react';
import { now } from '../../keep/time.ts';
import { needs } from '../../mix/needs.ts';
import { useSpeaker } from '../../shell/words.tsx';

interface Properties {
  readonly heap: Heap;
  readonly holding: Holding;
}

/** How long to wait with harvests on the beds that a heap went to raw. */
export default function Waits({ heap, holding }: Properties): ReactNode {
  const speaker = useSpeaker();
  const notes = useMemo(() => waitNotes(holding, heap, now(), needs), [holding, heap]);
  return notes.map((said) => speaker.tell(said)).map((line) => <p key={line}>{line}</p>);
}
