import '@loamwright/words/later';
import { clauseReport, type HeapClauses, type KeptCode } from '@loamwright/advisor';
import type { ReactNode } from 'react';
import { useSpeaker } from '../../shell/words.tsx';

interface Properties {
  readonly kept: readonly KeptCode[];
  readonly clauses: HeapClauses;
}

/** Each clause of each code: pass, fail or not stated; and what can't be read, which is held against nothing. */
export function PlaceVerdicts({ kept, clauses: { found, logMeets } }: Properties): ReactNode {
  const speaker = useSpeaker();
  const { codes, notes } = clauseReport(found, logMeets);
  const unread = kept.flatMap(({ clauses }) => clauses.filter(({ clause }) => clause === undefined));
  return (
    <>
      {codes.map(({ verdict, clauses }) => (
        <section key={speaker.tell(verdict)} className="section">
          <h2>{speaker.tell(verdict)}</h2>
          <ul className="lines">
            {[...new Set(clauses.map(speaker.tell))].map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </section>
      ))}
      {unread.map(({ subject, phrase }) => (
        <p key={`${subject} ${phrase}`}>{speaker.say('clausesPage.unread', { phrase })}</p>
      ))}
      {notes.map((said) => (
        <p key={said.key}>{speaker.tell(said)}</p>
      ))}
    </>
  );
}
