import '@loamwright/words/later';
import { wallAround } from '@loamwright/advisor';
import { type MixSolution, USUAL_RUN_DAYS } from '@loamwright/science';
import { type ReactNode, useMemo } from 'react';
import { useSettings } from '../../device/settings.ts';
import { useBook } from '../../keep/useBook.ts';
import { type Bins, useBins } from '../../mix/draft.ts';
import { solveInput, tryAgain, useMix } from '../../mix/mix.ts';
import { mixLaid } from '../../mix/mix-laid.ts';
import { Page } from '../../shell/Page.tsx';
import { to } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { NoMix } from '../mix/NoMix.tsx';
import { type Placed, shapeIn } from './asked.ts';
import { WouldPage } from './WouldPage.tsx';

/** What the mix in hand would do in the bay that is to be filled. */
export default function Would(): ReactNode {
  const bins = useBins();
  const { measures_L } = useSettings();
  const { holding } = useBook().leaf;
  const input = useMemo(() => solveInput(bins, measures_L, holding), [bins, measures_L, holding]);
  const worked = useMix(input, bins.aim);
  if (worked.is !== 'worked') return <NoMix worked={worked} onAgain={tryAgain} />;
  return <WouldOf bins={bins} solution={worked.solution} />;
}

interface Properties {
  readonly bins: Bins;
  readonly solution: MixSolution;
}

function WouldOf({ bins, solution }: Properties): ReactNode {
  const speaker = useSpeaker();
  const { measures_L } = useSettings();
  const { holding } = useBook().leaf;
  const question = speaker.say('wouldPage.question');
  const placed = useMemo(
    (): Placed => ({
      mix: { ...mixLaid(bins, solution, measures_L, holding), water_L: solution.water_L },
      shape: shapeIn(bins.bay),
      acts: [],
      air: [],
      days: USUAL_RUN_DAYS,
    }),
    [bins, solution, measures_L, holding],
  );
  if (placed.mix.ingredients.length === 0) {
    return (
      <Page question={question} act={{ text: speaker.say('wouldPage.bins'), href: to('bins') }}>
        <p className="answer">{speaker.say('wouldPage.noMix')}</p>
      </Page>
    );
  }
  return (
    <WouldPage
      question={question}
      act={{ text: speaker.say('wouldPage.card'), href: to('bins', 'card') }}
      placed={placed}
      stands={{ walls: wallAround[bins.bay.wall], cover: 'open' }}
    />
  );
}
