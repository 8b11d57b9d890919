import '@loamwright/words/later';
import { lazy, type ReactNode } from 'react';
import { useBook } from '../../keep/useBook.ts';
import { Page } from '../../shell/Page.tsx';
import { to } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { BedPage } from './BedPage.tsx';
import { LogHarvested } from './LogHarvested.tsx';
import { LogPut } from './LogPut.tsx';
import { LogSown } from './LogSown.tsx';

const BedYears = lazy(() => import('./BedYears.tsx'));
const LogTested = lazy(() => import('./LogTested.tsx'));
const Rate = lazy(() => import('./Rate.tsx'));
const RecordPage = lazy(() => import('../record/RecordPage.tsx'));
const SetUpBed = lazy(() => import('./SetUpBed.tsx'));

interface Properties {
  readonly bed: string;
  /** What is done on it: `sown`, `tested` …; empty for the bed itself. */
  readonly page: string;
}

/** A bed: what it wants, or the page where something is written down about it. */
export default function BedAt({ bed: id, page }: Properties): ReactNode {
  const speaker = useSpeaker();
  const bed = useBook().leaf.holding.beds.get(id);
  if (bed === undefined) {
    return (
      <Page
        question={speaker.say('bedsPage.unknown.question')}
        act={{ text: speaker.say('bedsPage.unknown.act'), href: to('beds') }}
      >
        <p className="answer">{speaker.say('bedsPage.unknown.answer')}</p>
      </Page>
    );
  }
  switch (page) {
    case 'sown':
      return <LogSown bed={bed} />;
    case 'put':
      return <LogPut bed={bed} />;
    case 'tested':
      return <LogTested bed={bed} />;
    case 'harvested':
      return <LogHarvested bed={bed} />;
    case 'change':
      return <SetUpBed bed={bed} />;
    case 'record':
      return <RecordPage of={{ type: 'bed', id: bed.id }} />;
    case 'years':
      return <BedYears bed={bed} />;
    case 'rate':
      return <Rate bed={bed} />;
    default:
      return <BedPage bed={bed} />;
  }
}
