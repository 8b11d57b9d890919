import { type HeapLine, heapsOverview } from '@loamwright/advisor';
import { type Heap, type Holding, madeOf } from '@loamwright/daybook';
import { likely } from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import { type ReactNode, useMemo } from 'react';
import { now } from '../../keep/time.ts';
import { useBook } from '../../keep/useBook.ts';
import { needs } from '../../mix/needs.ts';
import { sayAgo, sayDate } from '../../parts/dates.ts';
import { Sentence } from '../../parts/Sentence.tsx';
import { Profile } from '../../pictures/Profile.tsx';
import { Page } from '../../shell/Page.tsx';
import { go, to } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import './heaps.css';

/** Where the heaps stand, bay by bay. */
export default function HeapsPage(): ReactNode {
  const speaker = useSpeaker();
  const { holding } = useBook().leaf;
  const standing = [...holding.heaps.values()].filter(({ phase }) => phase !== 'gone');
  const gone = [...holding.heaps.values()].filter(({ phase }) => phase === 'gone');
  const groups = byBay(holding, standing);
  const wanting = useMemo(() => heapsOverview(holding, now(), needs).heaps.filter(asksSomething), [holding]);
  return (
    <Page
      question={speaker.say('app.heaps.question')}
      act={standing.length === 0 ? { text: speaker.say('app.heaps.build'), href: to('bins') } : undefined}
    >
      <p className="answer">{speaker.tell(headline(standing, groups))}</p>
      {wanting.map(({ id, name, act }) => (
        <p key={id} className="answer">
          <Sentence
            saying={{ key: 'app.heaps.wants', places: { when: act.when, heap: name, what: act.what } }}
            touchable={({ place }) => place === 'heap'}
            opens="page"
            onTouch={() => go(to('heap', id))}
          />
        </p>
      ))}
      {groups.map(({ bay, name, heaps }) => (
        <section key={bay ?? ''} className="section bay">
          <h2>{name ?? speaker.say('app.heaps.noBay')}</h2>
          <HeapLines heaps={heaps} />
        </section>
      ))}
      {gone.length > 0 && (
        <details className="section">
          <summary>{speaker.say('app.heaps.gone', { count: gone.length })}</summary>
          <HeapLines heaps={gone} />
        </details>
      )}
    </Page>
  );
}

/** Only what wants doing now or today is said at the top: the rest stands at each heap. */
function asksSomething({ act }: HeapLine): boolean {
  return act.urgency === 'now' || act.urgency === 'today';
}

function HeapLines({ heaps }: { readonly heaps: readonly Heap[] }): ReactNode {
  const speaker = useSpeaker();
  return (
    <ul className="lines heap-lines">
      {heaps.map((heap) => (
        <li key={heap.id}>
          <a href={to('heap', heap.id)}>
            <Profile shares={madeOf(heap.layers)} />
            <span>
              <strong>{heap.name}</strong>
              <br />
              <span className="small">{speaker.tell(lineOf(heap))}</span>
            </span>
          </a>
        </li>
      ))}
    </ul>
  );

  function lineOf(heap: Heap): Saying {
    const last = heap.readings.findLast(({ body }) => body.temp_degC !== undefined);
    const begun = sayDate(speaker, heap.begun);
    if (heap.phase === 'finished') return { key: 'app.heaps.finished', places: { begun } };
    if (last?.body.temp_degC === undefined) return { key: 'app.heaps.unread', places: { begun } };
    return {
      key: 'app.heaps.read',
      places: {
        begun,
        temp: { figure: likely(last.body.temp_degC), unit: 'degC', as: 'temperature' },
        ago: sayAgo(speaker, last.entry.happened),
      },
    };
  }
}

interface Group {
  readonly bay: string | null;
  readonly name: string | null;
  readonly heaps: readonly Heap[];
}

/** Bays in the order they were set up, those without a bay last; in each the youngest heap first. */
function byBay(holding: Holding, heaps: readonly Heap[]): readonly Group[] {
  const youngestFirst = [...heaps].sort((a, b) => (a.begun < b.begun ? 1 : -1));
  const inBays = [...holding.bays.values()].map(({ id, setUp }) => ({
    bay: id,
    name: setUp.body.name,
    heaps: youngestFirst.filter(({ bay }) => bay === id),
  }));
  const elsewhere = youngestFirst.filter(({ bay }) => bay === null || !holding.bays.has(bay));
  return [...inBays, { bay: null, name: null, heaps: elsewhere }].filter((group) => group.heaps.length > 0);
}

function headline(standing: readonly Heap[], groups: readonly Group[]): Saying {
  if (standing.length === 0) return { key: 'app.heaps.none' };
  return {
    key: 'app.heaps.stand',
    places: { heaps: standing.length, bays: groups.filter(({ bay }) => bay !== null).length },
  };
}
