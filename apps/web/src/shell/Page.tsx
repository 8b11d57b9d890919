import { type ReactNode, useEffect, useRef } from 'react';
import { Strata } from '../parts/Strata.tsx';
import { Notices } from './Notices.tsx';
import { to, useRoute } from './route.ts';
import { useSpeaker } from './words.tsx';

/** The act of a page: something done here, or the page where it is done. */
export type Act =
  | { readonly text: string; readonly onAct: () => void; readonly ready?: boolean | undefined }
  | { readonly text: string; readonly href: string };

interface Properties {
  /** The question the grower came with; the page's heading and title. */
  readonly question: string;
  readonly act?: Act | undefined;
  /** Whether the words at the bottom lead elsewhere; not before there is a daybook. */
  readonly places?: boolean | undefined;
  readonly children: ReactNode;
}

/** The one layout: the question small, what answers it, and one act at the thumb. */
export function Page({ question, act, places = true, children }: Properties): ReactNode {
  const speaker = useSpeaker();
  const heading = useArrival(question);
  return (
    <div className="page">
      <header>
        <div className="running-head">
          <a className="name" href={to()}>
            {speaker.say('app.name')}
          </a>
          {places && <a href={to('settings')}>{speaker.say('app.place.settings')}</a>}
        </div>
        <Strata />
        <Notices />
      </header>
      <main>
        <h1 ref={heading} className="question" tabIndex={-1}>
          {question}
        </h1>
        {children}
      </main>
      {(act !== undefined || places) && (
        <footer className="thumb">
          {act !== undefined && <ActButton act={act} />}
          {places && <Places />}
        </footer>
      )}
    </div>
  );
}

function ActButton({ act }: { readonly act: Act }): ReactNode {
  if ('href' in act) {
    return (
      <a className="act" href={act.href}>
        {act.text}
      </a>
    );
  }
  const ready = act.ready ?? true;
  return (
    <button type="button" className="act" aria-disabled={!ready} onClick={() => ready && act.onAct()}>
      {act.text}
    </button>
  );
}

/** The place that a page belongs to, where its address does not begin with it. */
const placeOf: Readonly<Record<string, string>> = {
  heap: 'heaps',
  bay: 'heaps',
  clauses: 'heaps',
  bed: 'beds',
  balance: 'beds',
  material: 'bins',
  pail: 'bins',
};

function Places(): ReactNode {
  const speaker = useSpeaker();
  const [first = 'bins'] = useRoute().path;
  const here = placeOf[first] ?? first;
  const places = [
    { id: 'bins', text: speaker.say('app.place.bins') },
    { id: 'heaps', text: speaker.say('app.place.heaps') },
    { id: 'beds', text: speaker.say('app.place.beds') },
    { id: 'daybook', text: speaker.say('app.place.daybook') },
  ];
  return (
    <nav className="places" aria-label={speaker.say('app.places')}>
      {places.map(({ id, text }) => (
        <a key={id} className="place" href={to(id)} aria-current={id === here ? 'page' : undefined}>
          {text}
        </a>
      ))}
    </nav>
  );
}

let arrivedBefore = false;

/** Tells the page's name to the window, and puts the reader at its heading when they came from another page. */
function useArrival(question: string) {
  const heading = useRef<HTMLHeadingElement>(null);
  const speaker = useSpeaker();
  useEffect(() => {
    document.title = speaker.say('app.title', { page: question });
  }, [question, speaker]);
  useEffect(() => {
    if (arrivedBefore) {
      globalThis.scrollTo(0, 0);
      heading.current?.focus({ preventScroll: true });
    }
    arrivedBefore = true;
  }, []);
  return heading;
}
