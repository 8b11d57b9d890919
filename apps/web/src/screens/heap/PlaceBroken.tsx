import '@loamwright/words/later';
import { clauseReport } from '@loamwright/advisor';
import type { Heap } from '@loamwright/daybook';
import type { ReactNode } from 'react';
import { to } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { usePlaceOfHeap } from '../clauses/place.ts';

/** Which clauses of the place a heap breaks, with the way to them; nothing where it breaks none. */
export default function PlaceBroken({ heap }: { readonly heap: Heap }): ReactNode {
  const speaker = useSpeaker();
  const { found } = usePlaceOfHeap(heap);
  if (found?.ok !== true || found.value.found.standing !== 'clause-fails') return null;
  return (
    <section className="section">
      <p className="answer">{speaker.tell(clauseReport(found.value.found, found.value.logMeets).answer)}</p>
      <p>
        <a className="word" href={to('heap', heap.id, 'clauses')}>
          {speaker.say('placePage.see')}
        </a>
      </p>
    </section>
  );
}
