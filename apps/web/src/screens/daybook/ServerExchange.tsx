import type { Saying } from '@loamwright/words';
import { type ReactNode, useEffect, useState } from 'react';
import type { Book } from '../../keep/book.ts';
import { exchangeWithServer } from '../../keep/file.ts';
import { findServer, hasKey, rememberKey, type Server, serverHas } from '../../keep/server.ts';
import { useSpeaker } from '../../shell/words.tsx';

interface Properties {
  readonly book: Book;
  readonly entries: number;
  readonly onTry: (work: () => Promise<Saying | null>) => Promise<void>;
}

/** Both ways with the computer that served this page, where that computer keeps a daybook. */
export function ServerExchange({ book, entries, onTry }: Properties): ReactNode {
  const speaker = useSpeaker();
  const [server, setServer] = useState<Server | null>(null);
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
  if (server === null) return null;
  const missing = Math.max(0, entries - serverHas());
  return (
    <section className="section">
      <h2>{speaker.say('app.server.title')}</h2>
      <p>{speaker.say('app.server.missing', { count: missing })}</p>
      {server.asksKey && !hasKey() && (
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
          if (key !== '') rememberKey(key);
          void onTry(() => exchangeWithServer(book));
        }}
      >
        {speaker.say('app.server.exchange')}
      </button>
    </section>
  );
}
