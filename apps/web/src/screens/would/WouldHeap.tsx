import '@loamwright/words/later';
import { baySize, coverOver, wallAround } from '@loamwright/advisor';
import type { Heap } from '@loamwright/daybook';
import { type ReactNode, useMemo } from 'react';
import { useBook } from '../../keep/useBook.ts';
import { Page } from '../../shell/Page.tsx';
import { to } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { shapeIn } from './asked.ts';
import { builtMix } from './built-mix.ts';
import { WouldPage } from './WouldPage.tsx';

/** What a heap of the daybook would do, as it was built. */
export default function WouldHeap({ heap }: { readonly heap: Heap }): ReactNode {
  const speaker = useSpeaker();
  const { holding } = useBook().leaf;
  const question = speaker.say('wouldPage.question.heap', { heap: heap.name });
  const act = { text: speaker.say('wouldPage.heap'), href: to('heap', heap.id) };
  const mix = useMemo(() => builtMix(heap, holding), [heap, holding]);
  const bay = heap.built?.body.bay;
  const wall = bay === undefined ? undefined : holding.bays.get(bay)?.setUp.body.wall;
  const shape = useMemo(() => {
    const size = bay === undefined ? undefined : baySize(holding, bay);
    return size === undefined || wall === undefined ? undefined : shapeIn({ ...size, wall });
  }, [holding, bay, wall]);
  if (mix === undefined) {
    return (
      <Page question={question} act={act}>
        <p className="answer">{speaker.say('wouldPage.noLayers')}</p>
      </Page>
    );
  }
  return (
    <WouldPage
      question={question}
      act={act}
      mix={mix}
      shape={shape}
      stands={{
        walls: wall === undefined ? 'none' : wallAround[wall],
        cover: heap.cover === null ? 'open' : coverOver[heap.cover.body.cover],
      }}
    />
  );
}
