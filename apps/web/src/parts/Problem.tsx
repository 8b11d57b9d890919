import type { Saying } from '@loamwright/words';
import type { ReactNode } from 'react';
import { useSpeaker } from '../shell/words.tsx';

/** What kept something from being done, said where it was tried. */
export function Problem({ saying }: { readonly saying: Saying | null }): ReactNode {
  const speaker = useSpeaker();
  return (
    <div role="alert" className={saying === null ? undefined : 'alarm'}>
      {saying !== null && <p>{speaker.tell(saying)}</p>}
    </div>
  );
}
