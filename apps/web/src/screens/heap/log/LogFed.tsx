import type { Heap } from '@loamwright/daybook';
import type { Amount } from '@loamwright/science';
import { type ReactNode, useState } from 'react';
import { useSettings } from '../../../device/settings.ts';
import { useBook } from '../../../keep/useBook.ts';
import { sayAmount, someOf } from '../../../mix/amount.ts';
import { ownName } from '../../../mix/own-name.ts';
import { enteredOf, layerOf } from '../../../mix/put.ts';
import { Sentence } from '../../../parts/Sentence.tsx';
import { openSheet, useRoute } from '../../../shell/route.ts';
import { useSpeaker } from '../../../shell/words.tsx';
import { AmountSheet } from '../../bins/AmountSheet.tsx';
import { Picker } from '../../bins/Picker.tsx';
import { aboutHeap, LogPage } from './LogPage.tsx';

interface Fed {
  readonly material: string;
  readonly amount: Amount;
}

/** What went in with the pail: the scraps and what covered them. */
export default function LogFed({ heap }: { readonly heap: Heap }): ReactNode {
  const speaker = useSpeaker();
  const { path, sheet } = useRoute();
  const { measures_L } = useSettings();
  const { holding } = useBook().leaf;
  const [fed, setFed] = useState<readonly Fed[]>([]);
  const [, material] = /^amount:(.+)$/u.exec(sheet ?? '') ?? [];
  const layers = fed.map((one) => layerOf(one.material, one.amount, measures_L, holding));
  return (
    <LogPage
      heap={heap.id}
      question={speaker.say('app.log.fed.question', { heap: heap.name })}
      act={speaker.say('app.log.fed.act')}
      thing={(happened) => {
        const put = layers.filter((layer) => layer !== null);
        if (put.length === 0 || put.length < fed.length) return null;
        return {
          kind: 'heap-fed',
          about: aboutHeap(heap.id),
          happened,
          body: { layers: put },
          entered: Object.fromEntries(
            fed.map(({ amount }, i) => [`/layers/${i}/mass_kg`, enteredOf(amount, sayAmount(speaker, amount))]),
          ),
        };
      }}
    >
      <p className="answer">
        {fed.length === 0 ? (
          speaker.say('app.log.fed.none')
        ) : (
          <Sentence
            saying={{
              key: 'app.log.fed.lie',
              places: {
                stuff: fed.map((one) =>
                  someOf(speaker, one.material, sayAmount(speaker, one.amount), ownName(holding, one.material)),
                ),
              },
            }}
            touchable={({ place }) => place.endsWith('.amount')}
            onTouch={({ place }) => {
              const index = Number(/\[(\d+)\]/u.exec(place)?.[1] ?? -1);
              openSheet(`amount:${fed[index]?.material ?? ''}`);
            }}
          />
        )}
      </p>
      <button type="button" className="word" onClick={() => openSheet('add')}>
        {fed.length === 0 ? speaker.say('app.log.fed.say') : speaker.say('app.log.fed.more')}
      </button>
      {sheet === 'add' && <Picker path={path} here={fed.map((one) => one.material)} />}
      {material !== undefined && (
        <AmountSheet
          key={material}
          material={material}
          name={ownName(holding, material)}
          before={fed.find((one) => one.material === material)?.amount}
          onPut={(amount) => setFed((now) => [...now.filter((one) => one.material !== material), { material, amount }])}
          onTakeOut={() => setFed((now) => now.filter((one) => one.material !== material))}
        />
      )}
    </LogPage>
  );
}
