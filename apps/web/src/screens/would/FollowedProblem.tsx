import '@loamwright/words/later';
import type { ReactNode } from 'react';
import { sayProblem } from '../../keep/not-written.ts';
import type { Followed } from '../../mix/heap-run.ts';
import { useSpeaker } from '../../shell/words.tsx';

/** Why a heap could not be followed; nothing where it could. */
export function FollowedProblem({ found }: { readonly found: Followed | null }): ReactNode {
  const speaker = useSpeaker();
  if (found === null || found.is === 'followed') return null;
  if (found.is === 'refused') {
    return found.problems.map((problem) => (
      <p key={`${problem.code} ${problem.path}`}>{speaker.tell(sayProblem(problem))}</p>
    ));
  }
  return (
    <>
      <p>{speaker.say('wouldPage.failed')}</p>
      <p className="small quiet">{speaker.say('app.failed.why', { why: found.why })}</p>
    </>
  );
}
