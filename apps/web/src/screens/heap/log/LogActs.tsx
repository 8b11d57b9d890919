import type { Cover, Heap, Liquid } from '@loamwright/daybook';
import { convert } from '@loamwright/units';
import { type ReactNode, useState } from 'react';
import { Choices } from '../../../parts/Choices.tsx';
import { Pick } from '../../../parts/Pick.tsx';
import { QuantityField } from '../../../parts/QuantityField.tsx';
import { useSpeaker } from '../../../shell/words.tsx';
import { aboutHeap, LogPage } from './LogPage.tsx';

interface Properties {
  readonly heap: Heap;
}

export function LogTurned({ heap }: Properties): ReactNode {
  const speaker = useSpeaker();
  const [way, setWay] = useState<'outside-in' | 'anyhow'>('outside-in');
  return (
    <LogPage
      heap={heap.id}
      question={speaker.say('app.log.turned.question', { heap: heap.name })}
      act={speaker.say('app.log.turned.act')}
      thing={(happened) => ({
        kind: 'turned',
        about: aboutHeap(heap.id),
        happened,
        body: { outsideIn: way === 'outside-in' },
      })}
    >
      <Choices
        legend={speaker.say('app.log.turned.how')}
        options={[
          { value: 'outside-in', text: speaker.say('app.log.turned.outsideIn') },
          { value: 'anyhow', text: speaker.say('app.log.turned.anyhow') },
        ]}
        value={way}
        onChange={setWay}
      />
    </LogPage>
  );
}

const liquids: readonly Liquid[] = ['water', 'leachate', 'urine', 'slurry', 'other'];

export function LogWatered({ heap }: Properties): ReactNode {
  const speaker = useSpeaker();
  const [volume_m3, setVolume] = useState<number | null>(null);
  const [liquid, setLiquid] = useState<Liquid | null>('water');
  return (
    <LogPage
      heap={heap.id}
      question={speaker.say('app.log.watered.question', { heap: heap.name })}
      act={speaker.say('app.log.watered.act')}
      thing={(happened) =>
        volume_m3 === null || volume_m3 <= 0
          ? null
          : {
              kind: 'watered',
              about: aboutHeap(heap.id),
              happened,
              body: { volume_L: convert(volume_m3, 'm3', 'L'), ...(liquid === null ? {} : { liquid }) },
            }
      }
    >
      <QuantityField
        large
        label={speaker.say('app.log.watered.howMuch')}
        shownAs="liquid"
        value={volume_m3}
        onChange={setVolume}
      />
      <Pick
        label={speaker.say('app.log.watered.liquid')}
        options={liquids.map((value) => ({ value, text: speaker.say(`advisor.liquid.${value}`) }))}
        value={liquid}
        onChange={setLiquid}
      />
    </LogPage>
  );
}

const covers: readonly Cover[] = ['sheet', 'lid', 'straw', 'leaves', 'soil', 'compost', 'other', 'none'];

export function LogCovered({ heap }: Properties): ReactNode {
  const speaker = useSpeaker();
  const [cover, setCover] = useState<Cover>('sheet');
  return (
    <LogPage
      heap={heap.id}
      question={speaker.say('app.log.covered.question', { heap: heap.name })}
      act={speaker.say('app.log.covered.act')}
      thing={(happened) => ({ kind: 'covered', about: aboutHeap(heap.id), happened, body: { cover } })}
    >
      <Choices
        legend={speaker.say('app.log.covered.with')}
        options={covers.map((value) => ({
          value,
          text: speaker.say(value === 'none' ? 'app.cover.none' : `advisor.cover.${value}`),
        }))}
        value={cover}
        onChange={setCover}
      />
    </LogPage>
  );
}

export function LogNote({ heap }: Properties): ReactNode {
  const speaker = useSpeaker();
  const [text, setText] = useState('');
  return (
    <LogPage
      heap={heap.id}
      question={speaker.say('app.log.note.question', { heap: heap.name })}
      act={speaker.say('app.log.note.act')}
      thing={(happened) =>
        text.trim() === '' ? null : { kind: 'note', about: aboutHeap(heap.id), happened, body: { text: text.trim() } }
      }
    >
      <label className="field">
        <span className="label">{speaker.say('app.log.note.text')}</span>
        <textarea className="line" value={text} maxLength={20_000} onChange={(event) => setText(event.target.value)} />
      </label>
    </LogPage>
  );
}
