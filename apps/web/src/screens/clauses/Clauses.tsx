import '@loamwright/words/later';
import { clauseSaying, entriesOfClause, type KeptClause, type KeptCode } from '@loamwright/advisor';
import { type ReactNode, useState } from 'react';
import { v7 } from 'uuid';
import type { ToWrite } from '../../keep/book.ts';
import { resolved } from '../../keep/time.ts';
import { useBook } from '../../keep/useBook.ts';
import { useWriting } from '../../keep/useWriting.ts';
import { Cautions } from '../../parts/Cautions.tsx';
import { Problem } from '../../parts/Problem.tsx';
import { Page } from '../../shell/Page.tsx';
import { to } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { useKeptClauses } from './place.ts';

/** The clauses of town, landlord and market as they were written down. */
export default function ClausesPage(): ReactNode {
  const speaker = useSpeaker();
  const { holding } = useBook().leaf;
  const kept = useKeptClauses();
  const count = kept.reduce((sum, { clauses }) => sum + clauses.length, 0);
  const heaps = [...holding.heaps.values()].filter(({ phase }) => phase !== 'gone');
  return (
    <Page
      question={speaker.say('clausesPage.question')}
      act={{ text: speaker.say('clausesPage.add'), href: to('clauses', 'new') }}
    >
      <p className="answer">
        {count === 0 ? speaker.say('clausesPage.none') : speaker.say('clausesPage.answer', { count })}
      </p>
      <p>{speaker.say('clauses.note.decides')}</p>
      {kept.map((code) => (
        <section key={code.of} className="section">
          <h2>{code.of}</h2>
          <p className="small quiet">{speaker.say(`clausesPage.whose.${code.whose}`)}</p>
          <ul className="lines">
            {code.clauses.map((clause, i) => (
              // Two entries may say the same, and one entry the same twice.
              <li key={`${clause.subject} ${clause.phrase} ${String(i)}`}>
                <Clause code={code} clause={clause} at={i} />
              </li>
            ))}
          </ul>
        </section>
      ))}
      {count > 0 && heaps.length > 0 && (
        <nav className="section" aria-label={speaker.say('clausesPage.heaps')}>
          <h2>{speaker.say('clausesPage.heaps')}</h2>
          <p className="words-row">
            {heaps.map(({ id, name }) => (
              <a key={id} className="word" href={to('heap', id, 'clauses')}>
                {name}
              </a>
            ))}
          </p>
        </nav>
      )}
      {count > 0 && <p className="small quiet">{speaker.say('clauses.note.as-you-gave')}</p>}
      <Cautions ids={['local-rules']} />
    </Page>
  );
}

interface ClauseProperties {
  readonly code: KeptCode;
  readonly clause: KeptClause;
  /** Which of the code's phrases it is. */
  readonly at: number;
}

/** One clause. Taken back, it counts no longer; what stood in the same entry is written down anew. */
function Clause({ code, clause, at }: ClauseProperties): ReactNode {
  const speaker = useSpeaker();
  const { entries, holding } = useBook().leaf;
  const { write, busy, problem } = useWriting();
  const [asking, setAsking] = useState(false);
  const what =
    clause.clause === undefined
      ? speaker.say('clausesPage.unread', { phrase: clause.phrase })
      : speaker.tell(clauseSaying(clause.clause));
  const takeBack = (): void => {
    const happened = resolved('now');
    const about = [{ type: 'clause', id: clause.subject }];
    const withdrawn = entriesOfClause(clause.subject, holding, entries).map(
      (withdraws): ToWrite => ({ kind: 'withdrawal', about, happened, body: {}, withdraws }),
    );
    const others = code.clauses.filter((one, i) => one.subject === clause.subject && i !== at);
    const again = others.map(
      ({ phrase }): ToWrite => ({
        kind: 'local-clause',
        about: [{ type: 'clause', id: v7() }],
        happened,
        body: { title: code.of, text: phrase, source: code.whose },
      }),
    );
    void write([...withdrawn, ...again]);
  };
  return (
    <>
      <p>{what}</p>
      {asking ? (
        <>
          <p className="small">{speaker.say('clausesPage.takeBackAsk')}</p>
          <p className="words-row">
            <button type="button" className="word" aria-disabled={busy} onClick={takeBack}>
              {speaker.say('clausesPage.takeBack')}
            </button>
            <button type="button" className="word" onClick={() => setAsking(false)}>
              {speaker.say('app.cancel')}
            </button>
          </p>
        </>
      ) : (
        <button
          type="button"
          className="word"
          aria-label={speaker.say('clausesPage.takeBackOf', { what })}
          onClick={() => setAsking(true)}
        >
          {speaker.say('clausesPage.takeBack')}
        </button>
      )}
      <Problem saying={problem} />
    </>
  );
}
