import '@loamwright/words/later';
import {
  clauseReport,
  heapLog,
  methodOf,
  type SanitationReport,
  sanitationReport,
  skinOfHeap,
} from '@loamwright/advisor';
import { type Heap, type Holding, localDate } from '@loamwright/daybook';
import {
  check,
  type HeapMethod,
  heapMethods,
  type Outcome,
  type SanitationInput,
  type SanitationLog,
  sanitationCheck,
} from '@loamwright/science';
import { type ReactNode, useMemo, useState } from 'react';
import { sayProblem } from '../../keep/not-written.ts';
import { now, zone } from '../../keep/time.ts';
import { useBook } from '../../keep/useBook.ts';
import { needs } from '../../mix/needs.ts';
import { Cautions } from '../../parts/Cautions.tsx';
import { Choices } from '../../parts/Choices.tsx';
import { Page } from '../../shell/Page.tsx';
import { to } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { type PlaceOfHeap, usePlaceOfHeap } from '../clauses/place.ts';

const curings = ['not-said', 'warm', 'cool'] as const;
type Curing = (typeof curings)[number];
const throughs = ['not-said', 'all'] as const;
type Through = (typeof throughs)[number];

/** What each rule says of the heap's log, and what is missing. */
export default function SafeHeap({ heap }: { readonly heap: Heap }): ReactNode {
  const speaker = useSpeaker();
  const { holding } = useBook().leaf;
  const [method, setMethod] = useState<HeapMethod>(methodOf(holding, heap));
  const [curing, setCuring] = useState<Curing>('not-said');
  const [through, setThrough] = useState<Through>('not-said');
  const found = useMemo(
    () => reportOf(heap, holding, { method, curing, through }),
    [heap, holding, method, curing, through],
  );
  const place = usePlaceOfHeap(heap, method);
  const fails = placeFails(place);
  return (
    <Page
      question={speaker.say('safePage.question', { heap: heap.name })}
      act={{ text: speaker.say('safePage.read'), href: to('heap', heap.id, 'reading') }}
    >
      {fails && <Place heap={heap} place={place} />}
      {found.ok ? (
        <>
          <p className={fails ? undefined : 'answer'}>{speaker.tell(found.value.answer)}</p>
          <p>{speaker.tell(found.value.counts)}</p>
        </>
      ) : (
        <p className="answer" role="alert">
          {found.problems.map((problem) => speaker.tell(sayProblem(problem))).join(' ')}
        </p>
      )}
      {!fails && <Place heap={heap} place={place} />}
      <div className="stack">
        <Choices
          legend={speaker.say('safePage.method')}
          options={heapMethods.map((value) => ({ value, text: speaker.say(`safePage.method.${value}`) }))}
          value={method}
          onChange={setMethod}
        />
        <Choices
          legend={speaker.say('safePage.through')}
          options={throughs.map((value) => ({ value, text: speaker.say(`safePage.through.${value}`) }))}
          value={through}
          onChange={setThrough}
        />
        <Choices
          legend={speaker.say('safePage.curing')}
          options={curings.map((value) => ({ value, text: speaker.say(`safePage.curing.${value}`) }))}
          value={curing}
          onChange={setCuring}
        />
      </div>
      {found.ok && <Rules report={found.value} />}
    </Page>
  );
}

/** Whether a clause of the place is broken: then it leads, whatever the log shows. */
function placeFails({ found }: PlaceOfHeap): boolean {
  return found?.ok === true && found.value.found.standing === 'clause-fails';
}

/** What the rules of the place say of the heap: as the answer where one fails, else in a line; with the way there. */
function Place({ heap, place }: { readonly heap: Heap; readonly place: PlaceOfHeap }): ReactNode {
  const speaker = useSpeaker();
  const { found } = place;
  const told =
    found === null
      ? speaker.say('placePage.none')
      : found.ok
        ? speaker.tell(clauseReport(found.value.found, found.value.logMeets).answer)
        : found.problems.map((problem) => speaker.tell(sayProblem(problem))).join(' ');
  const fails = placeFails(place);
  return (
    <>
      <p className={fails ? 'answer' : undefined} role={found?.ok === false ? 'alert' : undefined}>
        {told}
      </p>
      <p>
        <a className="word" href={found === null ? to('clauses', 'new') : to('heap', heap.id, 'clauses')}>
          {speaker.say(found === null ? 'placePage.write' : 'placePage.see')}
        </a>
      </p>
    </>
  );
}

function Rules({ report }: { readonly report: SanitationReport }): ReactNode {
  const speaker = useSpeaker();
  const told = report.rules.map((said) => speaker.tell(said));
  return (
    <>
      {report.notes
        .map((said) => speaker.tell(said))
        .map((line) => (
          <p key={line} className="small">
            {line}
          </p>
        ))}
      <section className="section">
        <h2>{speaker.say('safePage.rules')}</h2>
        <ul className="lines small">
          {told.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </section>
      <p>
        <a className="word" href={to('harvest')}>
          {speaker.say('safePage.harvest')}
        </a>
      </p>
      <Cautions ids={report.cautions} />
    </>
  );
}

interface Said {
  readonly method: HeapMethod;
  readonly curing: Curing;
  readonly through: Through;
}

function reportOf(heap: Heap, holding: Holding, said: Said): Outcome<SanitationReport> {
  const instant = now();
  const today = localDate(instant, zone()) ?? instant.slice(0, 10);
  const kept = heapLog(holding, heap, instant, said.method);
  const log: SanitationLog = {
    ...kept,
    ...(said.through === 'all' && { allMaterial: true }),
    ...(said.curing !== 'not-said' && {
      curing: { from_day: kept.readings.at(-1)?.day ?? today, asWarmAsAir: said.curing === 'cool' },
    }),
  };
  const input = check<SanitationInput>(sanitationCheck.input, { log });
  const found = input.ok ? sanitationCheck.run(input.value, needs) : input;
  return found.ok
    ? {
        ok: true,
        value: sanitationReport(log, found.value, skinOfHeap(holding, heap, log.turned.length, needs), today),
      }
    : found;
}
