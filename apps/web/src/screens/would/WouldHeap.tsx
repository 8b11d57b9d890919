import '@loamwright/words/later';
import { heapAsBuilt, MOST_RUN_DAYS } from '@loamwright/advisor';
import type { Heap } from '@loamwright/daybook';
import { type ReactNode, useMemo } from 'react';
import { now } from '../../keep/time.ts';
import { useBook } from '../../keep/useBook.ts';
import { Page } from '../../shell/Page.tsx';
import { to } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { placedAsBuilt } from './asked.ts';
import { WouldPage } from './WouldPage.tsx';

/** What a heap of the daybook would do, as it was built and with what was done to it since. */
export default function WouldHeap({ heap }: { readonly heap: Heap }): ReactNode {
  const speaker = useSpeaker();
  const { holding } = useBook().leaf;
  const question = speaker.say('wouldPage.question.heap', { heap: heap.name });
  const act = { text: speaker.say('wouldPage.heap'), href: to('heap', heap.id) };
  const kept = useMemo(() => heapAsBuilt(heap, holding, now()), [heap, holding]);
  const placed = useMemo(() => (kept === undefined ? undefined : placedAsBuilt(kept)), [kept]);
  if (kept === undefined || placed === undefined) {
    return (
      <Page question={question} act={act}>
        <p className="answer">
          {kept === undefined
            ? speaker.say('wouldPage.noLayers')
            : speaker.say('wouldPage.tooOld', { days: MOST_RUN_DAYS })}
        </p>
      </Page>
    );
  }
  return (
    <WouldPage
      question={question}
      act={act}
      placed={placed}
      stands={{ walls: kept.standing.walls ?? 'none', cover: kept.standing.cover ?? 'open' }}
      notes={kept.notes}
    />
  );
}
