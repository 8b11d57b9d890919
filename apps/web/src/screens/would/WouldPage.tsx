import '@loamwright/words/later';
import { type HeapRunReport, heapRunReport } from '@loamwright/advisor';
import { USUAL_MEMBERS } from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import { type ReactNode, useMemo, useState } from 'react';
import { useFollowed } from '../../mix/heap-run.ts';
import { Cautions } from '../../parts/Cautions.tsx';
import { QuantitySheet } from '../../parts/QuantitySheet.tsx';
import { Sentence, type Touchable } from '../../parts/Sentence.tsx';
import { type Act, Page } from '../../shell/Page.tsx';
import { openSheet, useRoute } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { type Here, type Placed, wouldInput } from './asked.ts';
import { Changes } from './Changes.tsx';
import { FollowedProblem } from './FollowedProblem.tsx';
import { HeapPictures } from './HeapPictures.tsx';
import { HereSheet } from './HereSheet.tsx';
import { keptAir } from './kept-air.ts';
import { doneSaid, hereSaid, temperature } from './said.ts';

interface Properties {
  readonly question: string;
  readonly act: Act;
  readonly placed: Placed;
  /** What stands around it and lies on it when it is built, as far as that is known. */
  readonly stands: Pick<Here, 'walls' | 'cover'>;
  /** What is to be said of how the heap was understood. */
  readonly notes?: readonly Saying[] | undefined;
}

/** What a mix would do in its place: how hot, when, what is lost, why, and what would change it. */
export function WouldPage({ question, act, placed, stands, notes = [] }: Properties): ReactNode {
  const speaker = useSpeaker();
  const { sheet } = useRoute();
  const isAirRead = placed.air.length > 0;
  const [here, setHere] = useState<Here>(() => ({ ...stands, air_degC: isAirRead ? 'as-read' : keptAir.get() }));
  const input = useMemo(() => wouldInput(placed, here), [placed, here]);
  const { found, isCurrent } = useFollowed(input);
  const answer = found?.is === 'followed' ? found.answer : null;
  const report = useMemo(() => (answer === null ? null : heapRunReport(answer)), [answer]);
  return (
    <Page question={question} act={act}>
      <div role="status">
        {!isCurrent && (
          <p className={answer === null ? 'answer' : 'small quiet'}>
            {answer === null
              ? speaker.say('wouldPage.following', { of: USUAL_MEMBERS, days: placed.days })
              : speaker.say('wouldPage.anew')}
          </p>
        )}
        {isCurrent && <FollowedProblem found={found} />}
      </div>
      <div className="stack">
        {report !== null && <Answer report={report} />}
        <p className="told">
          <Sentence saying={hereSaid(speaker, here)} touchable={isHere} onTouch={() => openSheet('here')} />
          {placed.acts.length > 0 && ` ${doneSaid(speaker, placed.acts)}`}
        </p>
      </div>
      <p className="words-row">
        <button type="button" className="word" aria-haspopup="dialog" onClick={() => openSheet('here')}>
          {speaker.say('wouldPage.here.change')}
        </button>
      </p>
      {answer !== null && <HeapPictures input={input} answer={answer} />}
      {answer !== null && isCurrent && <Changes input={input} answer={answer} />}
      {report !== null && <Why report={report} notes={notes} />}
      {sheet === 'here' && (
        <HereSheet
          here={here}
          isAirRead={isAirRead}
          onHere={(next) => {
            if (next.air_degC !== 'as-read') keptAir.set(next.air_degC);
            setHere(next);
          }}
        />
      )}
      {sheet === PEAK_SHEET && answer !== null && (
        <QuantitySheet title={speaker.say('wouldPage.sheet.peak')} figure={temperature(speaker, answer.peak_degC)} />
      )}
    </Page>
  );
}

const herePlaces: ReadonlySet<string> = new Set(['air', 'walls', 'cover', 'start']);
const isHere = ({ place }: Touchable): boolean => herePlaces.has(place);
const isPeak = ({ place }: Touchable): boolean => place === 'peak';
const PEAK_SHEET = 'figure:peak';

function Answer({ report: { heats, turn, lost } }: { readonly report: HeapRunReport }): ReactNode {
  return (
    <>
      <p className="answer">
        <Sentence saying={heats} touchable={isPeak} onTouch={() => openSheet(PEAK_SHEET)} />
      </p>
      <p className="told">
        {turn !== undefined && <Sentence saying={turn} />} <Sentence saying={lost} />
      </p>
    </>
  );
}

interface WhyProperties {
  readonly report: HeapRunReport;
  readonly notes: readonly Saying[];
}

function Why({ report, notes }: WhyProperties): ReactNode {
  const speaker = useSpeaker();
  return (
    <>
      <section className="section">
        <h2>{speaker.say('wouldPage.why')}</h2>
        <ul className="lines">
          {[...report.reasons, ...notes, ...report.notes].map((saying) => (
            <li key={speaker.tell(saying)}>{speaker.tell(saying)}</li>
          ))}
        </ul>
      </section>
      <Cautions ids={report.cautions} />
    </>
  );
}
