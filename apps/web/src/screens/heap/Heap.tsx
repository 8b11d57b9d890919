import { lazy, type ReactNode } from 'react';
import { useBook } from '../../keep/useBook.ts';
import { Page } from '../../shell/Page.tsx';
import { to } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { HeapPage } from './HeapPage.tsx';
import { LogCovered, LogNote, LogTurned, LogWatered } from './log/LogActs.tsx';

const LogReading = lazy(() => import('./log/LogReading.tsx'));
const SafeHeap = lazy(() => import('./SafeHeap.tsx'));
const SpreadHeap = lazy(() => import('./SpreadHeap.tsx'));
const YieldHeap = lazy(() => import('./YieldHeap.tsx'));
const RipeHeap = lazy(() => import('./RipeHeap.tsx'));
const PlaceHeap = lazy(() => import('./PlaceHeap.tsx'));
const LogReady = lazy(() => import('./log/LogReady.tsx'));
const WouldHeap = lazy(() => import('../would/WouldHeap.tsx'));
const RecordPage = lazy(() => import('../record/RecordPage.tsx'));
const LogFed = lazy(() => import('./log/LogFed.tsx'));

interface Properties {
  readonly heap: string;
  /** What is done on it: `reading`, `turned` …; empty for the heap itself. */
  readonly page: string;
}

/** A heap: how it is, or the page where something is written down about it. */
export default function HeapAt({ heap: id, page }: Properties): ReactNode {
  const speaker = useSpeaker();
  const heap = useBook().leaf.holding.heaps.get(id);
  if (heap === undefined) {
    return (
      <Page
        question={speaker.say('app.heap.unknown.question')}
        act={{ text: speaker.say('app.heap.unknown.act'), href: to('heaps') }}
      >
        <p className="answer">{speaker.say('app.heap.unknown.answer')}</p>
      </Page>
    );
  }
  switch (page) {
    case 'reading':
      return <LogReading heap={heap} />;
    case 'turned':
      return <LogTurned heap={heap} />;
    case 'watered':
      return <LogWatered heap={heap} />;
    case 'fed':
      return <LogFed heap={heap} />;
    case 'covered':
      return <LogCovered heap={heap} />;
    case 'ready':
      return <LogReady heap={heap} />;
    case 'safe':
      return <SafeHeap heap={heap} />;
    case 'yield':
      return <YieldHeap heap={heap} />;
    case 'ripe':
      return <RipeHeap heap={heap} />;
    case 'clauses':
      return <PlaceHeap heap={heap} />;
    case 'spread':
      return <SpreadHeap heap={heap} />;
    case 'record':
      return <RecordPage of={{ type: 'heap', id: heap.id }} />;
    case 'would':
      return <WouldHeap heap={heap} />;
    case 'note':
      return <LogNote heap={heap} />;
    default:
      return <HeapPage heap={heap} />;
  }
}
