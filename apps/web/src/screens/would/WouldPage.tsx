import '@loamwright/words/later';
import { type HeapRunReport, heapRunReport } from '@loamwright/advisor';
import type { HeapShape, MixInput } from '@loamwright/science';
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
import { hereSaid } from './said.ts';

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
  const report = useMemo(() => (answer === null ? null : heapRunReport(answer)), [answer]);
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
        {report !== null && <Answer report={report} />}
        <p className="told">
          <Sentence saying={hereSaid(speaker, here)} touchable={isHere} onTouch={() => openSheet('here')} />
        </p>
      </div>
      <p className="words-row">
        <button type="button" className="word" aria-haspopup="dialog" onClick={() => openSheet('here')}>
          {speaker.say('wouldPage.here.change')}
        </button>
      </p>
      {answer !== null && <HeapPictures input={input} answer={answer} />}
      {answer !== null && isCurrent && <Changes input={input} answer={answer} />}
      {report !== null && <Why report={report} />}
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

function Answer({ report: { heats, turn, lost } }: { readonly report: HeapRunReport }): ReactNode {
  return (
    <>
      <p className="answer">
        <Sentence saying={heats} touchable={isFigure} onTouch={({ place }) => openSheet(`figure:${place}`)} />
      </p>
      <p className="told">
        {turn !== undefined && <Sentence saying={turn} />} <Sentence saying={lost} />
      </p>
    </>
  );
}

function Why({ report: { reasons, notes, cautions } }: { readonly report: HeapRunReport }): ReactNode {
  const speaker = useSpeaker();
  return (
    <>
      <section className="section">
        <h2>{speaker.say('wouldPage.why')}</h2>
        <ul className="lines">
          {[...reasons, ...notes].map((saying) => (
            <li key={saying.key}>{speaker.tell(saying)}</li>
          ))}
        </ul>
      </section>
      <Cautions ids={cautions} />
    </>
  );
}
