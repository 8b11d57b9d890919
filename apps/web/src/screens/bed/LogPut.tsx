import '@loamwright/words/later';
import { isInStore } from '@loamwright/advisor';
import type { Bed } from '@loamwright/daybook';
import type { Amount } from '@loamwright/science';
import { type ReactNode, useState } from 'react';
import { useSettings } from '../../device/settings.ts';
import type { ToWrite } from '../../keep/book.ts';
import type { Happened } from '../../keep/time.ts';
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
import { layings, readCarried } from './carried.ts';
import { aboutBed } from './moment.ts';

interface Put {
  readonly material: string;
  readonly amount: Amount;
}

/** Stuff that went on a bed straight, not from a heap of the daybook; what was reckoned to go on stands there already. */
export function LogPut({ bed }: { readonly bed: Bed }): ReactNode {
  const speaker = useSpeaker();
  const { path, sheet } = useRoute();
  const { measures_L } = useSettings();
  const { holding } = useBook().leaf;
  const [carried] = useState(() => readCarried(path.slice(PIECES_BEFORE)));
  const [put, setPut] = useState<readonly Put[]>(carried.stuff);
  const [lies, setLies] = useState(carried.lies);
  const [, material] = /^amount:(.+)$/u.exec(sheet ?? '') ?? [];
  return (
    <WritePage
      then={to('bed', bed.id)}
      question={speaker.say('bedPage.put.question', { bed: bed.setUp.body.name })}
      act={speaker.say('bedPage.put.act')}
      thing={(happened) => {
        const things = put.map((one) => spreadOf(one, happened));
        return things.length === 0 || things.includes(null) ? null : things.filter((one) => one !== null);
      }}
    >
      <p className="answer">
        {put.length === 0 ? (
          speaker.say('bedPage.put.none')
        ) : (
          <Sentence
            saying={{
              key: 'bedPage.put.lies',
              places: {
                stuff: put.map((one) =>
                  someOf(speaker, one.material, sayAmount(speaker, one.amount), ownName(holding, one.material)),
                ),
              },
            }}
            touchable={({ place }) => place.endsWith('.amount')}
            onTouch={({ place }) => {
              const index = Number(/\[(\d+)\]/u.exec(place)?.[1] ?? 0);
              openSheet(`amount:${put[index]?.material ?? ''}`);
            }}
          />
        )}
      </p>
      {carried.stuff.length > 0 && <p className="small quiet">{speaker.say('bedPage.put.carried')}</p>}
      <button type="button" className="word" onClick={() => openSheet('add')}>
        {speaker.say(put.length === 0 ? 'bedPage.put.say' : 'bedPage.put.more')}
      </button>
      <Choices
        legend={speaker.say('bedPage.put.how')}
        options={layings.map((value) => ({ value, text: speaker.say(`bedPage.put.${value}`) }))}
        value={lies}
        onChange={setLies}
      />
      {sheet === 'add' && <Picker path={path} here={put.map((one) => one.material)} />}
      {material !== undefined && (
        <AmountSheet
          key={material}
          material={material}
          name={ownName(holding, material)}
          before={put.find((one) => one.material === material)?.amount}
          onPut={(amount) =>
            setPut((now) =>
              now.some((one) => one.material === material)
                ? now.map((one) => (one.material === material ? { material, amount } : one))
                : [...now, { material, amount }],
            )
          }
          onTakeOut={() => setPut((now) => now.filter((one) => one.material !== material))}
        />
      )}
    </WritePage>
  );

  function spreadOf({ material: id, amount }: Put, happened: Happened): ToWrite | null {
    const layer = layerOf(id, amount, measures_L, holding);
    if (layer === null) return null;
    return {
      kind: 'spread',
      about: aboutBed(bed.id),
      happened,
      body: {
        of: {
          type: 'material',
          id,
          mass_kg: layer.mass_kg,
          ...(layer.raw !== undefined && { raw: layer.raw }),
          ...(isInStore(id, holding) && { fromStock: true }),
        },
        ...(layer.volume_m3 !== undefined && { volume_m3: layer.volume_m3 }),
        workedIn: lies === 'dug',
      },
      entered: { '/of/mass_kg': enteredOf(amount, sayAmount(speaker, amount)) },
    };
  }
}

/** `bed`, its id and `put` stand in the address before what was reckoned. */
const PIECES_BEFORE = 3;
