import type { ReactNode } from 'react';
import { MaterialSearch } from '../../parts/MaterialSearch.tsx';
import { Sheet } from '../../parts/Sheet.tsx';
import { goInstead, writeRoute } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';

interface Properties {
  /** The page it lies over: what is found opens there as the sheet `amount:ID`. */
  readonly path: readonly string[];
  /** Materials that are there already. */
  readonly here: readonly string[];
}

/** Finds a material that lies here, and asks how much of it there is. */
export function Picker({ path, here }: Properties): ReactNode {
  const speaker = useSpeaker();
  return (
    <Sheet title={speaker.say('app.pick.title')}>
      <MaterialSearch without={here} onPick={(id) => goInstead(writeRoute({ path, sheet: `amount:${id}` }))} />
    </Sheet>
  );
}
