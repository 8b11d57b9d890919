import type { HeapPhase, Holding } from '@loamwright/daybook';
import type { Needs, ReadingAct } from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import { heapReport } from './heap-report.ts';
import type { ActWords } from './reading-words.ts';
import { say } from './saying.ts';

/** A heap in one line. */
export interface HeapLine {
  readonly id: string;
  readonly name: string;
  readonly bay: string | null;
  readonly phase: HeapPhase;
  readonly headline: Saying;
  readonly act: ActWords;
}

/** All heaps that are still there, those that ask for something first. */
export interface HeapsOverview {
  readonly heaps: readonly HeapLine[];
  /** Said when there is none. */
  readonly none: Saying;
}

const order: readonly ReadingAct['when'][] = ['now', 'today', 'in-a-few-days', 'no-hurry'];

/** Every heap with its headline and act; those that want something soonest first, then the youngest. */
export function heapsOverview(holding: Holding, now: string, needs: Needs): HeapsOverview {
  const standing = [...holding.heaps.values()]
    .filter(({ phase }) => phase !== 'gone')
    .sort((a, b) => (a.begun < b.begun ? 1 : -1));
  const heaps = standing.flatMap(({ id }): readonly HeapLine[] => {
    const report = heapReport(holding, id, now, needs);
    if (!report.ok) return [];
    const { name, bay, phase, headline, act } = report.value;
    return [{ id, name, bay, phase, headline, act }];
  });
  return {
    heaps: heaps.sort((a, b) => order.indexOf(a.act.urgency) - order.indexOf(b.act.urgency)),
    none: say('advisor.overview.none'),
  };
}
