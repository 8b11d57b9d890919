import '@loamwright/words/later';
import { clausePhrase, clauseSaying, readClause } from '@loamwright/advisor';
import { type WhoseId, whoseIds } from '@loamwright/science';
import { type ReactNode, useState } from 'react';
import { v7 } from 'uuid';
import { resolved } from '../../keep/time.ts';
import { useWriting } from '../../keep/useWriting.ts';
import { Choices } from '../../parts/Choices.tsx';
import { Pick } from '../../parts/Pick.tsx';
import { Problem } from '../../parts/Problem.tsx';
import { showWrongField } from '../../parts/wrong-field.ts';
import { Page } from '../../shell/Page.tsx';
import { goInstead, to } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { type AskedKind, askedKinds, clauseOf, type Figures, NO_FIGURES } from './asked.ts';
import { ClauseFields } from './ClauseFields.tsx';
import { useKeptClauses } from './place.ts';

/** One clause, written down as an authority gave it. */
export default function AddClausePage(): ReactNode {
  const speaker = useSpeaker();
  const kept = useKeptClauses();
  const { write, busy, problem } = useWriting();
  const [whose, setWhose] = useState<WhoseId>('town');
  const [typedName, setName] = useState<string | null>(null);
  const [kind, setKind] = useState<AskedKind | null>(null);
  const [figures, setFigures] = useState<Figures>(NO_FIGURES);
  const known = kept.findLast((code) => code.whose === whose)?.of;
  const name = typedName ?? known ?? speaker.say(`clausesPage.name.${whose}`);
  const of = name.trim();
  const clause = kind === null ? null : clauseOf(kind, figures);
  const isUnread = figures.unread.length > 0;
  const phrase = clause === null ? null : clausePhrase(clause, speaker.system);
  const can = phrase !== null && readClause(phrase, '', speaker.system).ok;
  const keep = async (): Promise<void> => {
    if (showWrongField() || phrase === null) return;
    const written = await write([
      {
        kind: 'local-clause',
        about: [{ type: 'clause', id: v7() }],
        happened: resolved('now'),
        body: { title: of, text: phrase, source: whose },
      },
    ]);
    if (written) goInstead(to('clauses'));
  };
  return (
    <Page
      question={speaker.say('clausesPage.new.question')}
      act={{
        text: speaker.say('clausesPage.new.act'),
        // What can't be read is shown by the act.
        ready: (can || isUnread) && of !== '' && !busy,
        onAct: () => void keep(),
      }}
    >
      {clause !== null && can ? (
        <p className="answer">
          {speaker.tell({ key: 'clausesPage.new.says', places: { of, what: clauseSaying(clause) } })}
        </p>
      ) : (
        <p className="quiet" role="status">
          {speaker.say(clause === null && !isUnread ? 'clausesPage.new.hint' : 'clausesPage.new.cannot')}
        </p>
      )}
      <div className="stack">
        <Choices
          legend={speaker.say('clausesPage.new.whose')}
          options={whoseIds.map((value) => ({ value, text: speaker.say(`clausesPage.whose.${value}`) }))}
          value={whose}
          onChange={setWhose}
        />
        <label className="field">
          <span className="label">{speaker.say('clausesPage.new.name')}</span>
          <input className="line" value={name} maxLength={100} onChange={(event) => setName(event.target.value)} />
        </label>
        <Pick
          label={speaker.say('clausesPage.new.kind')}
          options={askedKinds.map((value) => ({
            value,
            text: speaker.say(value === 'allows-only' ? 'clausesPage.new.allows-only' : `clauses.what.${value}`),
          }))}
          value={kind}
          onChange={(chosen) => {
            setKind(chosen);
            setFigures(NO_FIGURES);
          }}
        />
        {kind !== null && <ClauseFields key={kind} kind={kind} figures={figures} onChange={setFigures} />}
        <Problem saying={problem} />
      </div>
    </Page>
  );
}
