import type { Saying } from '@loamwright/words';
import { type ReactNode, useEffect, useState, useSyncExternalStore } from 'react';
import { keyToComputer } from '../../device/key.ts';
import { changeSettings, useSettings } from '../../device/settings.ts';
import type { Book } from '../../keep/book.ts';
import { exchangeWhenTold } from '../../keep/exchange.ts';
import { findServer } from '../../keep/server.ts';
import { Choices } from '../../parts/Choices.tsx';
import { NotExchanged } from '../../parts/NotExchanged.tsx';
import { useSpeaker } from '../../shell/words.tsx';

interface Properties {
  readonly book: Book;
  readonly onTry: (work: () => Promise<Saying | null>) => Promise<void>;
}

/** Both ways with the computer that served this page, where that computer keeps a daybook. */
export function ServerExchange({ book, onTry }: Properties): ReactNode {
  const speaker = useSpeaker();
  const { exchanges } = useSettings();
  const hasKey = useSyncExternalStore(keyToComputer.subscribe, keyToComputer.get) !== null;
  const [server, setServer] = useState<Awaited<ReturnType<typeof findServer>>>('none');
  const [key, setKey] = useState('');
  useEffect(() => {
    let there = true;
    findServer().then(
      (found) => there && setServer(found),
      () => undefined,
    );
    return () => {
      there = false;
    };
  }, []);
  // With no signal a computer that was met before is still spoken of.
  if (server === 'none' || (server === 'silent' && exchanges === null)) return null;
  return (
    <section className="section stack">
      <h2>{speaker.say('app.server.title')}</h2>
      {exchanges === null ? <p>{speaker.say('app.server.offer')}</p> : <NotExchanged />}
      {server !== 'silent' && server.asksKey && !hasKey && (
        <label className="field">
          <span className="label">{speaker.say('app.server.key')}</span>
          <input
            className="line"
            autoComplete="off"
            value={key}
            onChange={(event) => setKey(event.target.value.trim())}
          />
          <span className="hint">{speaker.say('app.server.keyTold')}</span>
        </label>
      )}
      <button
        type="button"
        className="plain-act"
        onClick={() => {
          if (!hasKey && key !== '') keyToComputer.set(key);
          void onTry(() => exchangeWhenTold(book));
        }}
      >
        {speaker.say('app.server.exchange')}
      </button>
      {exchanges !== null && (
        <Choices
          legend={speaker.say('app.server.when')}
          options={[
            { value: 'by-itself', text: speaker.say('app.server.by-itself') },
            { value: 'when-told', text: speaker.say('app.server.when-told') },
          ]}
          value={exchanges}
          onChange={(chosen) => changeSettings({ exchanges: chosen })}
        />
      )}
    </section>
  );
}
