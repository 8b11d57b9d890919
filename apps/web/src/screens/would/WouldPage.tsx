import '@loamwright/words/later';
import type { HeapRunAnswer, HeapRunInput, HeapShape, MixInput } from '@loamwright/science';
import type { Speaker } from '@loamwright/words';
import { type ReactNode, useMemo, useState } from 'react';
import { useFollowed } from '../../mix/heap-run.ts';
import { Cautions } from '../../parts/Cautions.tsx';
import { Sentence, type Touchable } from '../../parts/Sentence.tsx';
import { type Act, Page } from '../../shell/Page.tsx';
import { openSheet, useRoute } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { DAYS, HEAPS, type Here, wouldInput } from './asked.ts';
import { Changes } from './Changes.tsx';
import { FigureSheet, touchedPlaces } from './FigureSheet.tsx';
import { FollowedProblem } from './FollowedProblem.tsx';
import { HeapPictures } from './HeapPictures.tsx';
import { HereSheet } from './HereSheet.tsx';
import { keptAir } from './kept-air.ts';
import { answerSaid, hereSaid, whySaid } from './said.ts';

interface Properties {
  readonly question: string;
  readonly act: Act;
  readonly mix: MixInput;
  readonly shape: HeapShape | undefined;
  /** What stands around it and lies on it, as far as that is known. */
  readonly stands: Pick<Here, 'walls' | 'cover'>;
}

/** What a mix would do in its place: how hot, when, what is lost, why, and what would change it. */
export function WouldPage({ question, act, mix, shape, stands }: Properties): ReactNode {
  const speaker = useSpeaker();
  const { sheet } = useRoute();
  const [here, setHere] = useState<Here>(() => ({ ...stands, air_degC: keptAir.get() }));
  const input = useMemo(() => wouldInput(mix, shape, here), [mix, shape, here]);
  const { found, isCurrent } = useFollowed(input);
  const answer = found?.is === 'followed' ? found.answer : null;
  const place = touchedPlaces.find((one) => sheet === `figure:${one}`);
  return (
    <Page question={question} act={act}>
      <div role="status">
        {!isCurrent && (
          <p className={answer === null ? 'answer' : 'small quiet'}>
            {answer === null
              ? speaker.say('wouldPage.following', { of: HEAPS, days: DAYS })
              : speaker.say('wouldPage.anew')}
          </p>
        )}
        {isCurrent && <FollowedProblem found={found} />}
      </div>
      <div className="stack">
        {answer !== null && <Answer answer={answer} />}
        <p className="told">
          <Sentence saying={hereSaid(speaker, here)} touchable={isHere} onTouch={() => openSheet('here')} />
        </p>
      </div>
      <p className="words-row">
        <button type="button" className="word" aria-haspopup="dialog" onClick={() => openSheet('here')}>
          {speaker.say('wouldPage.here.change')}
        </button>
      </p>
      {answer !== null && <Reasons input={input} answer={answer} isCurrent={isCurrent} />}
      {sheet === 'here' && (
        <HereSheet
          here={here}
          onHere={(next) => {
            keptAir.set(next.air_degC);
            setHere(next);
          }}
        />
      )}
      {place !== undefined && answer !== null && <FigureSheet place={place} answer={answer} />}
    </Page>
  );
}

const isHere = ({ place }: Touchable): boolean => place === 'air' || place === 'walls' || place === 'cover';
const isFigure = ({ place }: Touchable): boolean => touchedPlaces.some((one) => one === place);

function Answer({ answer }: { readonly answer: HeapRunAnswer }): ReactNode {
  const speaker = useSpeaker();
  const [first, ...more] = answerSaid(speaker, answer);
  const open = ({ place }: Touchable): void => openSheet(`figure:${place}`);
  return (
    <>
      {first !== undefined && (
        <p className="answer">
          <Sentence saying={first} touchable={isFigure} onTouch={open} />
        </p>
      )}
      {more.map((saying) => (
        <p key={saying.key} className="told">
          <Sentence saying={saying} touchable={isFigure} onTouch={open} />
        </p>
      ))}
    </>
  );
}

interface ReasonsProperties {
  readonly input: HeapRunInput;
  readonly answer: HeapRunAnswer;
  /** Whether the answer is that of the question: only then a change can be told beside it. */
  readonly isCurrent: boolean;
}

function Reasons({ input, answer, isCurrent }: ReasonsProperties): ReactNode {
  const speaker = useSpeaker();
  return (
    <>
      <HeapPictures input={input} answer={answer} />
      {isCurrent && <Changes input={input} answer={answer} />}
      <section className="section">
        <h2>{speaker.say('wouldPage.why')}</h2>
        <ul className="lines">
          {[...notesSaid(speaker, answer), ...whySaid(speaker, answer).map((said) => speaker.tell(said))].map(
            (line) => (
              <li key={line}>{line}</li>
            ),
          )}
        </ul>
      </section>
      <Cautions ids={answer.cautions} />
    </>
  );
}

function notesSaid(speaker: Speaker, { notes }: HeapRunAnswer): readonly string[] {
  return notes.map((id) => speaker.say(`wouldPage.note.${id}`));
}
