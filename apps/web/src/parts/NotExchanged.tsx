import type { ReactNode } from 'react';
import { useStanding } from '../keep/exchange.ts';
import { useNotExchanged } from '../keep/known.ts';
import { useSpeaker } from '../shell/words.tsx';
import { sayAgo, sayTime } from './dates.ts';

/** How much the computer does not have yet, when it was last exchanged with, and what went wrong since. */
export function NotExchanged(): ReactNode {
  const speaker = useSpeaker();
  const { count, at } = useNotExchanged();
  const { busy, failed } = useStanding();
  return (
    <p className="small quiet">
      {[
        speaker.say('app.exchange.missing', { count }),
        at === null
          ? speaker.say('app.exchange.never')
          : speaker.say('app.exchange.last', { ago: sayAgo(speaker, at), time: sayTime(speaker, at) }),
        ...(busy ? [speaker.say('app.exchange.busy')] : []),
        ...(failed === null || busy ? [] : [speaker.tell(failed)]),
      ].join(' ')}
    </p>
  );
}
