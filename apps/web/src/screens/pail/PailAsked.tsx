import type { Heap, Smell, Squeeze } from '@loamwright/daybook';
import type { ReactNode } from 'react';
import { useBook } from '../../keep/useBook.ts';
import { sayAmount, someOf } from '../../mix/amount.ts';
import { ownName } from '../../mix/own-name.ts';
import { Pick } from '../../parts/Pick.tsx';
import { QuantityField } from '../../parts/QuantityField.tsx';
import { Sentence } from '../../parts/Sentence.tsx';
import { Sheet } from '../../parts/Sheet.tsx';
import { closeSheet, openSheet, useRoute } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { AmountSheet } from '../bins/AmountSheet.tsx';
import { Picker } from '../bins/Picker.tsx';
import { type Fed, type Seen, standingBins } from './asked.ts';

interface Properties extends SeenProperties {
  readonly fed: readonly Fed[];
  readonly onFed: (fed: readonly Fed[]) => void;
  readonly heap: Heap | undefined;
  readonly onBin: (bin: string | null) => void;
}

/** What was asked, in sentences that are changed by touching them: the pail, its bin, and what is seen of it. */
export function PailAsked({ fed, onFed, heap, onBin, seen, onSeen }: Properties): ReactNode {
  const speaker = useSpeaker();
  const { path, sheet } = useRoute();
  const { holding } = useBook().leaf;
  const [, material] = /^amount:(.+)$/u.exec(sheet ?? '') ?? [];
  const without = (id: string): readonly Fed[] => fed.filter((one) => one.material !== id);
  const stuff = fed.map((one) =>
    someOf(speaker, one.material, sayAmount(speaker, one.amount), ownName(holding, one.material)),
  );
  const bin = heap?.name ?? speaker.say('app.pail.no-bin');
  return (
    <>
      <p className="told">
        {fed.length > 0 && (
          <Sentence
            saying={{ key: 'app.pail.in', places: { stuff } }}
            touchable={({ place }) => place.endsWith('.amount')}
            onTouch={({ place }) => {
              const index = Number(/\[(\d+)\]/u.exec(place)?.[1] ?? -1);
              openSheet(`amount:${fed[index]?.material ?? ''}`);
            }}
          />
        )}{' '}
        <Sentence
          saying={{ key: 'app.pail.into', places: { bin } }}
          touchable={() => true}
          onTouch={() => openSheet('bin')}
        />
      </p>
      <p className="words-row">
        <button type="button" className="word" onClick={() => openSheet('add')}>
          {speaker.say(fed.length === 0 ? 'app.pail.say' : 'app.pail.more')}
        </button>
        <button type="button" className="word" onClick={() => openSheet('seen')}>
          {speaker.say('app.pail.seen')}
        </button>
      </p>
      {sheet === 'add' && <Picker path={path} here={fed.map((one) => one.material)} />}
      {material !== undefined && (
        <AmountSheet
          key={material}
          material={material}
          name={ownName(holding, material)}
          before={fed.find((one) => one.material === material)?.amount}
          onPut={(amount) => onFed([...without(material), { material, amount }])}
          onTakeOut={() => onFed(without(material))}
        />
      )}
      {sheet === 'bin' && <BinSheet onBin={onBin} />}
      {sheet === 'seen' && <SeenSheet seen={seen} onSeen={onSeen} />}
    </>
  );
}

function BinSheet({ onBin }: { readonly onBin: Properties['onBin'] }): ReactNode {
  const speaker = useSpeaker();
  const { holding } = useBook().leaf;
  const bins = [
    ...standingBins(holding).map(({ id, name }) => ({ id, name })),
    { id: null, name: speaker.say('app.pail.no-bin') },
  ];
  return (
    <Sheet title={speaker.say('app.pail.bin')}>
      <div className="stack">
        {bins.map(({ id, name }) => (
          <button
            key={id ?? ''}
            type="button"
            className="plain-act"
            onClick={() => {
              onBin(id);
              closeSheet();
            }}
          >
            {name}
          </button>
        ))}
      </div>
    </Sheet>
  );
}

interface SeenProperties {
  readonly seen: Seen;
  readonly onSeen: (seen: Seen) => void;
}

const squeezes: readonly Squeeze[] = ['streams', 'drops', 'holds', 'crumbles', 'dusty'];
const smells: readonly Smell[] = ['none', 'earthy', 'ammonia', 'sour', 'rotten', 'musty', 'smoke'];
const frosts = ['frozen', 'thawing'] as const;

function SeenSheet({ seen, onSeen }: SeenProperties): ReactNode {
  const speaker = useSpeaker();
  return (
    <Sheet title={speaker.say('app.pail.seen.title')}>
      <div className="stack">
        <Pick
          label={speaker.say('app.log.squeeze')}
          options={squeezes.map((value) => ({ value, text: speaker.say(`advisor.squeeze.${value}`) }))}
          value={seen.squeeze}
          onChange={(squeeze) => onSeen({ ...seen, squeeze })}
        />
        <Pick
          label={speaker.say('app.log.smell')}
          options={smells.map((value) => ({ value, text: speaker.say(`advisor.smell.${value}`) }))}
          value={seen.smell}
          onChange={(smell) => onSeen({ ...seen, smell })}
        />
        <QuantityField
          label={speaker.say('app.pail.height')}
          shownAs="length"
          value={seen.height_m}
          onChange={(height_m) => onSeen({ ...seen, height_m: height_m !== null && height_m > 0 ? height_m : null })}
        />
        <Pick
          label={speaker.say('app.pail.state')}
          options={frosts.map((value) => ({ value, text: speaker.say(`app.pail.state.${value}`) }))}
          value={seen.state}
          onChange={(state) => onSeen({ ...seen, state })}
        />
      </div>
    </Sheet>
  );
}
