import '@loamwright/words/later';
import { clauseReport } from '@loamwright/advisor';
import type { Heap } from '@loamwright/daybook';
import type { ReactNode } from 'react';
import { sayProblem } from '../../keep/not-written.ts';
import { Cautions } from '../../parts/Cautions.tsx';
import { Page } from '../../shell/Page.tsx';
import { to } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { PlaceFacts } from '../clauses/PlaceFacts.tsx';
import { PlaceVerdicts } from '../clauses/PlaceVerdicts.tsx';
import { usePlaceOfHeap } from '../clauses/place.ts';

/** A heap held against each clause that is kept. */
export default function PlaceHeap({ heap }: { readonly heap: Heap }): ReactNode {
  const speaker = useSpeaker();
  const { kept, said, found } = usePlaceOfHeap(heap);
  return (
    <Page
      question={speaker.say('placePage.question', { heap: heap.name })}
      act={{ text: speaker.say('clausesPage.add'), href: to('clauses', 'new') }}
    >
      {found === null && <p className="answer">{speaker.say('placePage.none')}</p>}
      {found !== null && !found.ok && (
        <p className="answer" role="alert">
          {found.problems.map((problem) => speaker.tell(sayProblem(problem))).join(' ')}
        </p>
      )}
      {found?.ok === true && (
        <>
          <p className="answer">{speaker.tell(clauseReport(found.value.found, found.value.logMeets).answer)}</p>
          <PlaceVerdicts kept={kept} clauses={found.value} />
        </>
      )}
      {kept.length > 0 && <PlaceFacts heap={heap} kept={kept} said={said} />}
      <p className="words-row">
        <a className="word" href={to('clauses')}>
          {speaker.say('placePage.all')}
        </a>
        <a className="word" href={to('heap', heap.id, 'safe')}>
          {speaker.say('app.heap.rules')}
        </a>
      </p>
      <Cautions ids={['local-rules']} />
    </Page>
  );
}
