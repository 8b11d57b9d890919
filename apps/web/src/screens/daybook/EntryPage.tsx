import type { Entry } from '@loamwright/daybook';
import type { ReactNode } from 'react';
import { now } from '../../keep/time.ts';
import { useBook } from '../../keep/useBook.ts';
import { useWriting } from '../../keep/useWriting.ts';
import { AskFirst } from '../../parts/AskFirst.tsx';
import { sayDay, sayTime } from '../../parts/dates.ts';
import { Problem } from '../../parts/Problem.tsx';
import { Page } from '../../shell/Page.tsx';
import { goInstead, to } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { EntryPictures } from './EntryPictures.tsx';
import { useLines } from './lines.ts';

/** One entry with everything that stands in it; it can be amended or taken back, never changed. */
export function EntryPage({ id }: { readonly id: string }): ReactNode {
  const speaker = useSpeaker();
  const { entries } = useBook().leaf;
  const lines = useLines().filter((line) => line.entry === id);
  const [line] = lines;
  const entry = entries.find((one) => one.id === id);
  if (line === undefined || entry === undefined) {
    return (
      <Page
        question={speaker.say('app.entry.question')}
        act={{ text: speaker.say('app.entry.back'), href: to('daybook') }}
      >
        <p className="answer">{speaker.say('app.entry.unknown')}</p>
      </Page>
    );
  }
  const inForce = line.status === 'in-force' && entry.withdraws === undefined;
  return (
    <Page
      question={speaker.say('app.entry.question')}
      act={inForce ? { text: speaker.say('app.entry.amend'), href: to('daybook', id, 'amend') } : undefined}
    >
      {lines.map(({ sum, said }) => (
        <p key={sum} className="answer">
          {speaker.tell(said)}
        </p>
      ))}
      {line.remarks.map((remark) => (
        <p key={remark.key} className="section alarm">
          {speaker.tell(remark)}
        </p>
      ))}
      {line.typed.map((typed) => (
        <p key={speaker.tell(typed)} className="small quiet">
          {speaker.tell(typed)}
        </p>
      ))}
      {line.outBy !== null && (
        <p>
          <a className="word" href={to('daybook', line.outBy)}>
            {speaker.say('app.entry.by')}
          </a>
        </p>
      )}
      <EntryPictures entry={entry} inForce={inForce} />
      <dl className="section facts">
        <dt>{speaker.say('app.entry.happened')}</dt>
        <dd>
          {sayDay(speaker, entry.happened)}
          {(entry.precision === 'minute' || entry.precision === 'hour') && `, ${sayTime(speaker, entry.happened)}`}{' '}
          <span className="quiet">{speaker.say(`app.precision.${entry.precision}`)}</span>
        </dd>
        <dt>{speaker.say('app.entry.written')}</dt>
        <dd>
          {sayDay(speaker, entry.written)}, {sayTime(speaker, entry.written)}
        </dd>
        <dt>{speaker.say('app.entry.person')}</dt>
        <dd>{entry.by}</dd>
        <dt>{speaker.say('app.entry.place')}</dt>
        <dd>{speaker.say('app.entry.placeTold', { n: entry.n, device: entry.device.slice(0, 8) })}</dd>
        <dt>{speaker.say('app.entry.sum')}</dt>
        <dd className="small">{entry.sum}</dd>
      </dl>
      {(inForce || (line.status === 'conflict' && line.outBy === null)) && <TakeBack entry={entry} />}
      <details className="section">
        <summary>{speaker.say('app.entry.raw')}</summary>
        <pre className="raw small">{JSON.stringify(entry, null, 1)}</pre>
      </details>
    </Page>
  );
}

/** Asks once before it takes an entry back; what was taken back stays to be seen. */
function TakeBack({ entry }: { readonly entry: Entry }): ReactNode {
  const speaker = useSpeaker();
  const { write, problem } = useWriting();
  const takeBack = async (): Promise<void> => {
    const done = await write([
      {
        kind: 'withdrawal',
        about: entry.about,
        happened: { instant: now(), precision: 'minute' },
        body: {},
        withdraws: entry.id,
      },
    ]);
    if (done) goInstead(to('daybook'));
  };
  return (
    <div className="section">
      <AskFirst
        act={speaker.say('app.entry.takeBack')}
        ask={speaker.say('app.entry.takeBackAsk')}
        yes={speaker.say('app.entry.takeBackYes')}
        onYes={() => void takeBack()}
      />
      <Problem saying={problem} />
    </div>
  );
}
