import type { Saying } from '@loamwright/words';
import { type ReactNode, useEffect, useState } from 'react';
import { useSettings } from '../../device/settings.ts';
import { askToPersist, type StorageStanding } from '../../device/storage.ts';
import { sayFailure } from '../../keep/failure.ts';
import { bringText, canShare, saveCopy, shareCopy } from '../../keep/file.ts';
import { useBook } from '../../keep/useBook.ts';
import { Problem } from '../../parts/Problem.tsx';
import { Page } from '../../shell/Page.tsx';
import { useSpeaker } from '../../shell/words.tsx';
import { ChainCheck } from './ChainCheck.tsx';
import { ServerExchange } from './ServerExchange.tsx';

/** Where the daybook lies, how safe it is there, and the ways to carry it elsewhere. */
export function KeepingPage(): ReactNode {
  const speaker = useSpeaker();
  const { book, leaf } = useBook();
  const { book: which, exchanges } = useSettings();
  const demo = which === 'demo';
  const [storage, setStorage] = useState<StorageStanding | null>(null);
  const [said, setSaid] = useState<Saying | null>(null);
  const [problem, setProblem] = useState<Saying | null>(null);
  useEffect(() => {
    let there = true;
    askToPersist().then(
      (standing) => there && setStorage(standing),
      () => undefined,
    );
    return () => {
      there = false;
    };
  }, []);
  const trying = async (work: () => Promise<Saying | null>): Promise<void> => {
    setProblem(null);
    setSaid(null);
    const { said: done, problem: failed } = await outcomeOf(work);
    setSaid(done);
    setProblem(failed);
  };
  return (
    <Page
      question={speaker.say('app.kept.question')}
      act={{ text: speaker.say('app.kept.take'), onAct: () => void trying(() => saveCopy(book)) }}
    >
      <p className="answer">
        {leaf.refused === null
          ? speaker.say(exchanges === null || demo ? 'app.kept.answer' : 'app.kept.answerHere', {
              count: leaf.entries.length,
            })
          : speaker.say('app.kept.refused', { why: leaf.refused })}
      </p>
      <p className="section">{speaker.tell(storageSaying(storage))}</p>
      {canShare() && (
        <button type="button" className="word" onClick={() => void trying(() => shareCopy(book))}>
          {speaker.say('app.kept.share')}
        </button>
      )}
      <div role="status">{said !== null && <p className="section">{speaker.tell(said)}</p>}</div>
      <Problem saying={problem} />
      {!demo && (
        <section className="section">
          <h2>{speaker.say('app.kept.bring')}</h2>
          <label className="field">
            <span className="hint">{speaker.say('app.kept.bringTold')}</span>
            <input
              type="file"
              className="line"
              onChange={(event) => {
                const [file] = event.target.files ?? [];
                event.target.value = '';
                if (file !== undefined) void trying(async () => bringText(book, await file.text()));
              }}
            />
          </label>
        </section>
      )}
      {!demo && <ServerExchange book={book} onTry={trying} />}
      <ChainCheck book={book} />
    </Page>
  );
}

function storageSaying(standing: StorageStanding | null): Saying {
  if (standing === null) return { key: 'app.kept.asking' };
  if (standing.persistent === null) return { key: 'app.kept.unsure' };
  return { key: standing.persistent ? 'app.kept.persistent' : 'app.kept.evictable' };
}

async function outcomeOf(
  work: () => Promise<Saying | null>,
): Promise<{ readonly said: Saying | null; readonly problem: Saying | null }> {
  try {
    return { said: await work(), problem: null };
  } catch (error) {
    return { said: null, problem: sayFailure(error) };
  }
}
