import '@loamwright/words/later';
import type { HeapRunAnswer, HeapRunInput } from '@loamwright/science';
import { type ReactNode, useMemo, useState } from 'react';
import { useFollowed } from '../../mix/heap-run.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { type Change, changesOf } from './asked.ts';
import { FollowedProblem } from './FollowedProblem.tsx';
import { changeSaid, differenceSaid } from './said.ts';

interface Properties {
  readonly input: HeapRunInput;
  readonly answer: HeapRunAnswer;
}

/** What might be done otherwise: each is followed when it is touched, and told as the difference it makes. */
export function Changes({ input, answer }: Properties): ReactNode {
  const speaker = useSpeaker();
  const changes = useMemo(() => changesOf(input, answer.volume_m3.p50[0] ?? 1), [input, answer]);
  return (
    <section className="section">
      <h2>{speaker.say('wouldPage.change')}</h2>
      <p className="small quiet">{speaker.say('wouldPage.change.how')}</p>
      <ul className="lines">
        {changes.map((change) => (
          <li key={change.id}>
            <Otherwise change={change} before={answer} />
          </li>
        ))}
      </ul>
    </section>
  );
}

function Otherwise({ change, before }: { readonly change: Change; readonly before: HeapRunAnswer }): ReactNode {
  const speaker = useSpeaker();
  const [touched, setTouched] = useState<Change | null>(null);
  // What was touched before the heap was changed is asked again only by another touch.
  const isTouched = touched === change;
  const { found, isCurrent } = useFollowed(isTouched ? change.input : null);
  return (
    <>
      <button type="button" className="word" onClick={() => setTouched(change)}>
        {changeSaid(speaker, change)}
      </button>
      <div role="status">
        {isTouched && !isCurrent && <p className="quiet">{speaker.say('wouldPage.change.following')}</p>}
        {isTouched && isCurrent && found?.is === 'followed' && <p>{differenceSaid(speaker, before, found.answer)}</p>}
        {isTouched && isCurrent && <FollowedProblem found={found} />}
      </div>
    </>
  );
}
