import type { Heap, HeapAct } from '@loamwright/daybook';
import type { Saying } from '@loamwright/words';
import { liquid, say, sayOf } from './saying.ts';

/** Something done to a heap, as a mark on the drawn series. */
export interface ActMark {
  readonly instant: string;
  readonly entry: string;
  readonly kind: HeapAct['kind'];
  readonly said: Saying;
}

/** What was done to a heap, oldest first. */
export function actMarks(heap: Heap): readonly ActMark[] {
  return heap.acts.map((act) => ({
    instant: act.entry.happened,
    entry: act.entry.id,
    kind: act.kind,
    said: marked(act),
  }));
}

function marked(act: HeapAct): Saying {
  switch (act.kind) {
    case 'heap-built':
      return say('advisor.mark.built');
    case 'heap-fed':
      return say('advisor.mark.fed');
    case 'watered': {
      const { volume_L, liquid: what = 'water' } = act.body;
      const volume = liquid(volume_L);
      if (what === 'water') return say('advisor.mark.watered', { volume });
      return say('advisor.mark.poured', { volume, liquid: sayOf('advisor.liquid', what) });
    }
    case 'covered':
      return say(act.body.cover === 'none' ? 'advisor.mark.uncovered' : 'advisor.mark.covered');
    default:
      return sayOf('advisor.mark', act.kind);
  }
}
