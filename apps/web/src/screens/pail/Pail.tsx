import { type ReactNode, useMemo, useState } from 'react';
import { useSettings } from '../../device/settings.ts';
import { sayProblem } from '../../keep/not-written.ts';
import { useBook } from '../../keep/useBook.ts';
import { useWriting } from '../../keep/useWriting.ts';
import { Problem } from '../../parts/Problem.tsx';
import { type Act, Page } from '../../shell/Page.tsx';
import { goInstead, openSheet, to } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { entriesOf, type Fed, nothingSeen, reckon, standingBins } from './asked.ts';
import { PailAnswer, PailTold } from './PailAnswer.tsx';
import { PailAsked } from './PailAsked.tsx';
import { PailPicture } from './PailPicture.tsx';

const usualPail: readonly Fed[] = [{ material: 'kitchen-scraps', amount: { measure: 'pail', count: 1 } }];

/** What goes with a pail, and the bin after it. */
export default function PailPage({ heap: first }: { readonly heap: string | undefined }): ReactNode {
  const speaker = useSpeaker();
  const { measures_L } = useSettings();
  const { holding } = useBook().leaf;
  const [fed, setFed] = useState(usualPail);
  const [bin, setBin] = useState(first ?? standingBins(holding)[0]?.id ?? null);
  const [seen, setSeen] = useState(nothingSeen);
  const { write, busy, problem } = useWriting();
  const heap = bin === null ? undefined : holding.heaps.get(bin);
  const reckoned = useMemo(
    () => reckon({ fed, heap, seen, measures_L, holding }),
    [fed, heap, seen, measures_L, holding],
  );
  const answer = reckoned?.ok === true ? reckoned.value : null;
  const keep = async (): Promise<void> => {
    if (heap === undefined || answer === null) return;
    if (await write(entriesOf(heap, fed, answer, speaker))) goInstead(to('heap', heap.id));
  };
  return (
    <Page question={speaker.say('app.pail.question')} act={actOf()}>
      {reckoned === null && <p className="answer">{speaker.say('app.pail.none')}</p>}
      {reckoned?.ok === false &&
        reckoned.problems.map((one) => <p key={`${one.path} ${one.code}`}>{speaker.tell(sayProblem(one))}</p>)}
      {answer !== null && (
        <>
          <PailAnswer report={answer.report} />
          <PailPicture reckoned={answer} holding={holding} />
        </>
      )}
      <PailAsked fed={fed} onFed={setFed} heap={heap} onBin={setBin} seen={seen} onSeen={setSeen} />
      <Problem saying={problem} />
      {answer !== null && <PailTold reckoned={answer} kept={heap !== undefined} fed={fed} holding={holding} />}
    </Page>
  );

  function actOf(): Act {
    if (fed.length === 0) return { text: speaker.say('app.pail.say'), onAct: () => openSheet('add') };
    const isElsewhere = answer?.found.stop.reasons.includes('full') === true;
    if (heap === undefined || isElsewhere) {
      return { text: speaker.say('app.pail.choose'), onAct: () => openSheet('bin') };
    }
    return { text: speaker.say('app.pail.keep'), ready: !busy && answer !== null, onAct: () => void keep() };
  }
}
