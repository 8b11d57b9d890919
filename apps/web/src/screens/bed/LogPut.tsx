import '@loamwright/words/later';
import { isInStore } from '@loamwright/advisor';
import type { Bed } from '@loamwright/daybook';
import type { Amount } from '@loamwright/science';
import { type ReactNode, useState } from 'react';
import { useSettings } from '../../device/settings.ts';
import { useBook } from '../../keep/useBook.ts';
import { sayAmount, someOf } from '../../mix/amount.ts';
import { ownName } from '../../mix/own-name.ts';
import { enteredOf, layerOf } from '../../mix/put.ts';
import { Choices } from '../../parts/Choices.tsx';
import { Sentence } from '../../parts/Sentence.tsx';
import { WritePage } from '../../parts/WritePage.tsx';
import { openSheet, to, useRoute } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { AmountSheet } from '../bins/AmountSheet.tsx';
import { Picker } from '../bins/Picker.tsx';
import { aboutBed } from './moment.ts';

/** Stuff that went on a bed straight, not from a heap of the daybook. */
export function LogPut({ bed }: { readonly bed: Bed }): ReactNode {
  const speaker = useSpeaker();
  const { path, sheet } = useRoute();
  const { measures_L } = useSettings();
  const { holding } = useBook().leaf;
  const [put, setPut] = useState<{ readonly material: string; readonly amount: Amount } | null>(null);
  const [lies, setLies] = useState<'dug' | 'top'>('dug');
  const [, material] = /^amount:(.+)$/u.exec(sheet ?? '') ?? [];
  return (
    <WritePage
      then={to('bed', bed.id)}
      question={speaker.say('bedPage.put.question', { bed: bed.setUp.body.name })}
      act={speaker.say('bedPage.put.act')}
      thing={(happened) => {
        const layer = put === null ? null : layerOf(put.material, put.amount, measures_L, holding);
        if (put === null || layer === null) return null;
        return {
          kind: 'spread',
          about: aboutBed(bed.id),
          happened,
          body: {
            of: {
              type: 'material',
              id: put.material,
              mass_kg: layer.mass_kg,
              ...(layer.raw !== undefined && { raw: layer.raw }),
              ...(isInStore(put.material, holding) && { fromStock: true }),
            },
            ...(layer.volume_m3 !== undefined && { volume_m3: layer.volume_m3 }),
            workedIn: lies === 'dug',
          },
          entered: { '/of/mass_kg': enteredOf(put.amount, sayAmount(speaker, put.amount)) },
        };
      }}
    >
      <p className="answer">
        {put === null ? (
          speaker.say('bedPage.put.none')
        ) : (
          <Sentence
            saying={{
              key: 'bedPage.put.lies',
              places: {
                stuff: someOf(speaker, put.material, sayAmount(speaker, put.amount), ownName(holding, put.material)),
              },
            }}
            touchable={({ place }) => place.endsWith('.amount')}
            onTouch={() => openSheet(`amount:${put.material}`)}
          />
        )}
      </p>
      <button type="button" className="word" onClick={() => openSheet('add')}>
        {speaker.say('bedPage.put.say')}
      </button>
      <Choices
        legend={speaker.say('bedPage.put.how')}
        options={(['dug', 'top'] as const).map((value) => ({ value, text: speaker.say(`bedPage.put.${value}`) }))}
        value={lies}
        onChange={setLies}
      />
      {sheet === 'add' && <Picker path={path} here={[]} />}
      {material !== undefined && (
        <AmountSheet
          key={material}
          material={material}
          name={ownName(holding, material)}
          before={put?.material === material ? put.amount : undefined}
          onPut={(amount) => setPut({ material, amount })}
          onTakeOut={() => setPut(null)}
        />
      )}
    </WritePage>
  );
}
