import '@loamwright/words/later';
import { leftSaying } from '@loamwright/advisor';
import type { Heap, Holding } from '@loamwright/daybook';
import type { ReactNode } from 'react';
import { useSettings } from '../../device/settings.ts';
import { now } from '../../keep/time.ts';
import { needs } from '../../mix/needs.ts';
import { useSpeaker } from '../../shell/words.tsx';

interface Properties {
  readonly heap: Heap;
  readonly holding: Holding;
}

/** What is left of a heap that was partly spread, in barrows. */
export default function Left({ heap, holding }: Properties): ReactNode {
  const speaker = useSpeaker();
  const { measures_L } = useSettings();
  const said = leftSaying(heap, holding, { measure: 'barrow', ownSizes: measures_L, now: now(), needs });
  return said === null ? null : <p>{speaker.tell(said)}</p>;
}
