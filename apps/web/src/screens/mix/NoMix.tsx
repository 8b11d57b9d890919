import type { ReactNode } from 'react';
import { sayProblem } from '../../keep/not-written.ts';
import type { Worked } from '../../mix/mix.ts';
import { Page } from '../../shell/Page.tsx';
import { goInstead, to } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';

interface Properties {
  readonly worked: Exclude<Worked, { readonly is: 'worked' }>;
  readonly onAgain: () => void;
}

/** Why no mix could be worked out. What was said at the bins is kept whatever happens here. */
export function NoMix({ worked, onAgain }: Properties): ReactNode {
  const speaker = useSpeaker();
  const question = speaker.say('app.mix.question');
  if (worked.is === 'refused') {
    return (
      <Page question={question} act={{ text: speaker.say('app.mix.back'), href: to('bins') }}>
        {worked.problems.map((problem) => (
          <p key={`${problem.code} ${problem.path}`} className="answer">
            {speaker.tell(sayProblem(problem))}
          </p>
        ))}
      </Page>
    );
  }
  return (
    <Page
      question={question}
      act={{
        text: speaker.say('app.mix.again'),
        onAct: () => {
          onAgain();
          goInstead(to('bins'));
        },
      }}
    >
      <p className="answer">{speaker.say('app.mix.noSolver')}</p>
      <p className="section small quiet">{speaker.say('app.failed.why', { why: worked.why })}</p>
    </Page>
  );
}
