import '@loamwright/words/later';
import { bedsOverview } from '@loamwright/advisor';
import { type ReactNode, useMemo } from 'react';
import { useBook } from '../../keep/useBook.ts';
import { Page } from '../../shell/Page.tsx';
import { to } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { useMoment } from './moment.ts';

/** Every bed in a line: what grows there and what it is short of. */
export default function BedsPage(): ReactNode {
  const speaker = useSpeaker();
  const { holding } = useBook().leaf;
  const moment = useMoment();
  const overview = useMemo(() => bedsOverview(holding, moment), [holding, moment]);
  return (
    <Page
      question={speaker.say('bedsPage.question')}
      act={{ text: speaker.say('bedsPage.new'), href: to('beds', 'new') }}
    >
      <p className="answer">{speaker.tell(overview.headline)}</p>
      <ul className="lines">
        {overview.beds.map(({ id, name, what, stands }) => (
          <li key={id}>
            <a className="line-link" href={to('bed', id)}>
              <strong>{name}</strong>
              <br />
              {stands !== null && (
                <>
                  {speaker.tell(stands)}
                  <br />
                </>
              )}
              <span className="small quiet">{speaker.tell(what)}</span>
            </a>
          </li>
        ))}
      </ul>
      <p>
        <a className="word" href={to('balance')}>
          {speaker.say('balance.question')}
        </a>
      </p>
    </Page>
  );
}
