import { type HeapReport, heapReport, isPartlyGone, standsCold } from '@loamwright/advisor';
import type { Heap } from '@loamwright/daybook';
import { lazy, type ReactNode, Suspense, useMemo } from 'react';
import { now } from '../../keep/time.ts';
import { useBook } from '../../keep/useBook.ts';
import { isFed } from '../../mix/fed.ts';
import { needs } from '../../mix/needs.ts';
import { Cautions } from '../../parts/Cautions.tsx';
import { sayDate } from '../../parts/dates.ts';
import { QuantitySheet } from '../../parts/QuantitySheet.tsx';
import { Sentence, type Touchable } from '../../parts/Sentence.tsx';
import { Page } from '../../shell/Page.tsx';
import { openSheet, to, useRoute } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { HeapPicture } from './HeapPicture.tsx';
import { ReadingMeaning } from './ReadingMeaning.tsx';
import { StuffPicture } from './StuffPicture.tsx';

const Left = lazy(() => import('./Left.tsx'));
const PlaceBroken = lazy(() => import('./PlaceBroken.tsx'));
const Waits = lazy(() => import('./Waits.tsx'));
const WhyCold = lazy(() => import('./WhyCold.tsx'));

const dids = ['turned', 'watered', 'fed', 'covered', 'ready', 'spread', 'note'] as const;

/** How a heap is, why, and the one thing to do. */
export function HeapPage({ heap }: { readonly heap: Heap }): ReactNode {
  const speaker = useSpeaker();
  const { holding } = useBook().leaf;
  const reported = useMemo(() => heapReport(holding, heap.id, now(), needs), [holding, heap.id]);
  if (!reported.ok) throw new RangeError(`no report on the heap ${heap.id}`);
  const report = reported.value;
  const isCold = standsCold(heap, now());
  const begun = sayDate(speaker, report.begun);
  return (
    <Page
      question={speaker.say('app.heap.question', { heap: report.name })}
      act={{ text: speaker.say('app.heap.read'), href: to('heap', heap.id, 'reading') }}
    >
      <p className="answer">
        <Sentence saying={report.headline} onTouch={(part) => openSheet(`quantity:${part.place}`)} />
      </p>
      <p className="small quiet">
        {report.bay === null
          ? speaker.say('app.heap.since', { begun })
          : speaker.say('app.heap.inBay', { bay: report.bay, begun })}
      </p>
      {heap.phase !== 'gone' && holding.clauses.size > 0 && (
        <Suspense fallback={null}>
          <PlaceBroken heap={heap} />
        </Suspense>
      )}
      {isPartlyGone(heap) && (
        <Suspense fallback={null}>
          <Left heap={heap} holding={holding} />
        </Suspense>
      )}
      {report.series.length === 0 ? <StuffPicture heap={heap} holding={holding} /> : <HeapPicture report={report} />}
      <section className="act-words">
        <h2>{speaker.tell(report.act.when)}</h2>
        <p className="answer">{speaker.tell(report.act.what)}</p>
        <p>
          {speaker.tell(report.act.because)} {speaker.tell(report.act.waiting)}
        </p>
      </section>
      <nav className="section" aria-label={speaker.say('app.heap.did')}>
        <h2>{speaker.say('app.heap.did')}</h2>
        <p className="words-row">
          {dids.map((did) => (
            <a key={did} className="word" href={to('heap', heap.id, did)}>
              {speaker.say(`app.heap.did.${did}`)}
            </a>
          ))}
        </p>
        {isFed(heap) && (
          <p>
            <a className="word" href={to('pail', heap.id)}>
              {speaker.say('app.pail.go')}
            </a>
          </p>
        )}
      </nav>
      {isCold && (
        <Suspense fallback={null}>
          <WhyCold heap={heap} holding={holding} shown={report.cautions} />
        </Suspense>
      )}
      {report.reading !== null && (
        <ReadingMeaning
          words={report.reading}
          headline={speaker.tell(report.headline)}
          checks={isCold ? [] : report.act.checks}
        />
      )}
      <section className="section">
        <h2>{speaker.say('app.heap.safety')}</h2>
        {report.safety.map((said) => (
          <p key={said.key}>{speaker.tell(said)}</p>
        ))}
        {heap.wentTo.some(({ type }) => type === 'bed') && (
          <Suspense>
            <Waits heap={heap} holding={holding} />
          </Suspense>
        )}
        <p>
          <a className="word" href={to('heap', heap.id, 'safe')}>
            {speaker.say('app.heap.rules')}
          </a>
        </p>
      </section>
      <Made report={report} />
      <p className="words-row">
        <a className="word" href={to('heap', heap.id, 'ripe')}>
          {speaker.say('app.heap.ripe')}
        </a>
        <a className="word" href={to('heap', heap.id, 'yield')}>
          {speaker.say('app.heap.yield')}
        </a>
        {wasLaid(heap) && (
          <a className="word" href={to('heap', heap.id, 'would')}>
            {speaker.say('app.mix.would')}
          </a>
        )}
      </p>
      <p>
        <a className="word" href={to('heap', heap.id, 'record')}>
          {speaker.say('app.heap.record')}
        </a>
      </p>
      <Cautions ids={report.cautions} />
      <TouchedQuantity report={report} />
    </Page>
  );
}

function Made({ report }: { readonly report: HeapReport }): ReactNode {
  const speaker = useSpeaker();
  return (
    <section className="section">
      <h2>{speaker.say('app.heap.made')}</h2>
      {report.made.length > 0 && <p>{speaker.list(report.made.map(({ said }) => speaker.tell(said)))}.</p>}
      <p className="small quiet">{speaker.tell(report.madeNote)}</p>
      {report.layers.length > 0 && (
        <details>
          <summary>{speaker.say('app.heap.layers')}</summary>
          <ol className="lines small">
            {report.layers.map(({ said, entry, material, mass_kg }) => (
              <li key={`${entry} ${material} ${mass_kg}`}>
                <a href={to('daybook', entry)}>{speaker.tell(said)}</a>
              </li>
            ))}
          </ol>
        </details>
      )}
    </section>
  );
}

/** The sheet behind a quantity of the headline: its range, and the reading it comes from. */
function TouchedQuantity({ report }: { readonly report: HeapReport }): ReactNode {
  const speaker = useSpeaker();
  const { sheet } = useRoute();
  const [, place] = /^quantity:(.+)$/u.exec(sheet ?? '') ?? [];
  const part = speaker.tellParts(report.headline).find((one): one is Touchable => one.place === place);
  if (place === undefined || part === undefined) return null;
  const last = report.series.at(-1);
  return (
    <QuantitySheet title={part.text} figure={part.figure} chance={part.chance}>
      {report.reading?.notes.map((note) => (
        <p key={note.key}>{speaker.tell(note)}</p>
      ))}
      {last !== undefined && (
        <a className="plain-act" href={to('daybook', last.entry)}>
          {speaker.say('app.entry.question')}
        </a>
      )}
    </QuantitySheet>
  );
}

/** Whether it is written down what went in, at once or later: what came from another heap is no beginning that could be followed. */
function wasLaid({ built, acts }: Heap): boolean {
  return built !== null && (built.body.layers.length > 0 || acts.some(({ kind }) => kind === 'heap-fed'));
}
