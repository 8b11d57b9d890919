import { lazy, type ReactNode, Suspense } from 'react';
import { nameOf, sayAmount, someOf } from '../../mix/amount.ts';
import { useBins } from '../../mix/draft.ts';
import { Sentence, type Touchable } from '../../parts/Sentence.tsx';
import { Layers } from '../../pictures/Layers.tsx';
import { marksFor } from '../../pictures/marks.ts';
import { Page } from '../../shell/Page.tsx';
import { openSheet, to, useRoute } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';

const BinsSheets = lazy(() => import('./BinsSheets.tsx'));
const Mounds = lazy(() => import('./Mounds.tsx'));

/** What is here, in a sentence that is changed by touching it. */
export default function BinsPage(): ReactNode {
  const speaker = useSpeaker();
  const { items, bay } = useBins();
  const { sheet } = useRoute();
  const none = items.length === 0;
  return (
    <Page
      question={speaker.say('app.bins.question')}
      act={
        none
          ? { text: speaker.say('app.bins.say'), onAct: () => openSheet('add') }
          : { text: speaker.say('app.bins.mix'), href: to('bins', 'mix') }
      }
    >
      <p className="answer">
        {none ? (
          speaker.say('app.bins.none')
        ) : (
          <Sentence
            saying={{
              key: 'app.bins.lie',
              places: {
                stuff: items.map(({ material, amount, own }) =>
                  someOf(speaker, material, sayAmount(speaker, amount), own?.name),
                ),
              },
            }}
            touchable={({ place }) => place.endsWith('.amount')}
            onTouch={(part) => openSheet(`amount:${items[indexOf(part)]?.material ?? ''}`)}
          />
        )}
      </p>
      {none ? (
        <figure className="picture">
          <Layers
            label={speaker.say('app.bins.empty')}
            layers={[]}
            width_m={bay.width_m}
            height_m={bay.height_m}
            marks={marksFor(speaker, bay.height_m)}
            tallest={220}
          />
        </figure>
      ) : (
        <>
          <p>
            <button type="button" className="word" onClick={() => openSheet('add')}>
              {speaker.say('app.bins.more')}
            </button>
          </p>
          <Suspense fallback={<div className="picture" />}>
            <Mounds items={items} label={speaker.say('app.bins.picture', { names: names() })} />
          </Suspense>
        </>
      )}
      <p>
        <a className="word" href={to('material')}>
          {speaker.say('app.materials.all')}
        </a>
      </p>
      <p className="told">
        <Sentence
          saying={{
            key: 'app.bins.bay',
            places: {
              width: { figure: bay.width_m, unit: 'm', as: 'length' },
              depth: { figure: bay.depth_m, unit: 'm', as: 'length' },
              height: { figure: bay.height_m, unit: 'm', as: 'length' },
            },
          }}
          onTouch={() => openSheet('bay')}
        />
      </p>
      <p>
        <a className="word" href={to('pail')}>
          {speaker.say('app.pail.go')}
        </a>
      </p>
      <p>
        <a className="word" href={to('harvest')}>
          {speaker.say('app.bins.harvest')}
        </a>
        <a className="word" href={to('potting')}>
          {speaker.say('app.bins.potting')}
        </a>
      </p>
      <p>
        <a className="word" href={to('fill-bed')}>
          {speaker.say('app.bins.fillBed')}
        </a>
      </p>
      {sheet !== null && (
        <Suspense fallback={null}>
          <BinsSheets sheet={sheet} />
        </Suspense>
      )}
    </Page>
  );

  function names(): string {
    return speaker.list(items.map(({ material, own }) => nameOf(speaker, material, own?.name)));
  }
}

/** `stuff[2].amount` is the third of the list. */
function indexOf(part: Touchable): number {
  return Number(/\[(\d+)\]/u.exec(part.place)?.[1] ?? -1);
}
