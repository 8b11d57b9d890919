import '@loamwright/words/later';
import type { Heap } from '@loamwright/daybook';
import { type ReactNode, useState } from 'react';
import { QuantityField } from '../../../parts/QuantityField.tsx';
import { useSpeaker } from '../../../shell/words.tsx';
import { aboutHeap, LogPage } from './LogPage.tsx';

/** A heap called ready, with what stands there. */
export default function LogReady({ heap }: { readonly heap: Heap }): ReactNode {
  const speaker = useSpeaker();
  const [volume_m3, setVolume] = useState<number | null>(null);
  return (
    <LogPage
      heap={heap.id}
      question={speaker.say('readyPage.question', { heap: heap.name })}
      act={speaker.say('readyPage.act')}
      thing={(happened) =>
        volume_m3 !== null && volume_m3 <= 0
          ? null
          : {
              kind: 'finished',
              about: aboutHeap(heap.id),
              happened,
              body: volume_m3 === null ? {} : { volume_m3 },
            }
      }
    >
      <QuantityField
        label={speaker.say('readyPage.volume')}
        shownAs="bulkVolume"
        value={volume_m3}
        onChange={setVolume}
      />
      <p className="small quiet">{speaker.say('readyPage.says')}</p>
    </LogPage>
  );
}
