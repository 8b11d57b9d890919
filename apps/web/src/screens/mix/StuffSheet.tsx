import type { UsedWords } from '@loamwright/advisor';
import { type Amount, type Estimate, type MixBalance, materialById } from '@loamwright/science';
import { type ReactNode, useState } from 'react';
import { sayAmount } from '../../mix/amount.ts';
import { type BinItem, putWish, type Wish } from '../../mix/draft.ts';
import { Choices } from '../../parts/Choices.tsx';
import { QuantitySheet } from '../../parts/QuantitySheet.tsx';
import { Steps } from '../../parts/Steps.tsx';
import { sourceName } from '../../parts/sources.ts';
import { closeSheet, to } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';

interface Properties {
  readonly item: BinItem;
  readonly used: UsedWords;
  readonly balanced: MixBalance['ingredients'][number] | undefined;
}

type Way = 'best' | 'all' | 'exactly';

/** One material of the mix: what it weighs with its range, why so much of it, where its figures come from, and another wish. */
export function StuffSheet({ item, used, balanced }: Properties): ReactNode {
  const speaker = useSpeaker();
  const [wish, setWish] = useState<Wish | null>(item.wish ?? null);
  const way: Way = wish === null ? 'best' : 'all' in wish ? 'all' : 'exactly';
  const amount: Amount = { measure: used.measure, count: used.count };
  const change = (chosen: Way): void => {
    if (chosen === 'best') setWish(null);
    else setWish(chosen === 'all' ? { all: true } : { exactly: used.count });
  };
  return (
    <QuantitySheet
      title={speaker.tell(used.said)}
      figure={balanced === undefined ? undefined : { figure: spreadOnly(balanced.wet_kg), unit: 'kg', as: 'mass' }}
    >
      <p>{speaker.say('app.mix.there', { amount: sayAmount(speaker, item.amount) })}</p>
      {used.left !== null && <p>{speaker.tell(used.left)}</p>}
      {used.doubt !== null && <p>{speaker.tell(used.doubt)}</p>}
      <p>{speaker.tell(used.permit.said)}</p>
      <Source material={used.material} />
      <Choices<Way>
        legend={speaker.say('app.mix.wish')}
        options={[
          { value: 'best', text: speaker.say('app.mix.wish.best') },
          { value: 'all', text: speaker.say('app.mix.wish.all') },
          { value: 'exactly', text: speaker.say('app.mix.wish.exactly') },
        ]}
        value={way}
        onChange={change}
      />
      {wish !== null && 'exactly' in wish && (
        <Steps
          label={speaker.sayIf(`measure.${used.measure}.name`, sayAmount(speaker, amount))}
          value={wish.exactly}
          step={0.5}
          least={0}
          onChange={(exactly) => setWish({ exactly })}
        />
      )}
      <button
        type="button"
        className="plain-act strong"
        onClick={() => {
          putWish(item.material, wish);
          closeSheet();
        }}
      >
        {speaker.say('app.mix.workAgain')}
      </button>
    </QuantitySheet>
  );
}

/** Water weighed to the litre has no range to draw. */
function spreadOnly(estimate: Estimate): Estimate | number {
  return estimate.p10 === estimate.p90 ? estimate.p50 : estimate;
}

/** Where the figures of a material were read. */
function Source({ material }: { readonly material: string }): ReactNode {
  const speaker = useSpeaker();
  const known = materialById(material);
  if (known === undefined) return null;
  const ratio = known.values.carbonToNitrogen_ratio;
  const moisture = known.values.moisture_pctWet;
  return (
    <div className="small quiet">
      {ratio !== undefined && (
        <p>
          {speaker.say('app.source.ratio', { typical: ratio.typical })}{' '}
          <a href={to('about', ratio.source)}>{sourceName(ratio.source)}</a>, {speaker.say(`mark.${ratio.mark}`)}.
        </p>
      )}
      {moisture !== undefined && (
        <p>
          {speaker.say('app.source.moisture', { typical: moisture.typical })}{' '}
          <a href={to('about', moisture.source)}>{sourceName(moisture.source)}</a>,{' '}
          {speaker.say(`mark.${moisture.mark}`)}.
        </p>
      )}
    </div>
  );
}
