import '@loamwright/words/later';
import { type RecordLine, type RecordPack, type RecordVerdict, recordPack } from '@loamwright/advisor';
import type { CheckReport } from '@loamwright/daybook';
import { createDraws } from '@loamwright/science';
import { type ReactNode, useEffect, useMemo, useState } from 'react';
import { now } from '../../../keep/time.ts';
import { useBook } from '../../../keep/useBook.ts';
import { Cautions } from '../../../parts/Cautions.tsx';
import { sayDay, sayTime } from '../../../parts/dates.ts';
import { Page } from '../../../shell/Page.tsx';
import { useSpeaker } from '../../../shell/words.tsx';
import { checkFindings } from '../../daybook/check-findings.ts';
import '../../../look/paper.css';

const draws = createDraws();

interface Properties {
  readonly of: { readonly type: 'heap' | 'bed'; readonly id: string };
}

/** The grower's own record of one heap or bed, to be printed by the browser. */
export default function RecordPage({ of: { type, id } }: Properties): ReactNode {
  const speaker = useSpeaker();
  const { book, leaf } = useBook();
  const [checked, setChecked] = useState<CheckReport | null>(null);
  const [failed, setFailed] = useState(false);
  useEffect(() => {
    book.look((keeping) => keeping.check()).then(setChecked, () => setFailed(true));
  }, [book]);
  const pack = useMemo(
    () =>
      checked === null
        ? null
        : recordPack({ type, id }, leaf.holding, { entries: leaf.entries, checked, now: now(), draws }),
    [checked, leaf, type, id],
  );
  const name = (type === 'heap' ? leaf.holding.heaps.get(id)?.name : leaf.holding.beds.get(id)?.setUp.body.name) ?? id;
  const question = speaker.say('record.question', { name });
  if (pack === null) {
    return (
      <Page question={question}>
        <p className="answer" role="status">
          {speaker.say(failed ? 'app.check.failed' : 'record.reading')}
        </p>
      </Page>
    );
  }
  return (
    <Page question={question} act={{ text: speaker.say('record.print'), onAct: () => globalThis.print() }}>
      <Written pack={pack} />
    </Page>
  );
}

function Written({ pack }: { readonly pack: RecordPack }): ReactNode {
  const speaker = useSpeaker();
  return (
    <>
      <p className="answer">
        {speaker.say(pack.sound ? 'record.answer.sound' : 'record.answer.unsound', { count: pack.lines.length })}
      </p>
      {pack.statement.map((said) => (
        <p key={said.key}>{speaker.tell(said)}</p>
      ))}
      <p className="small quiet">{speaker.say('record.made', { day: sayDay(speaker, now()) })}</p>
      <section className="section">
        <h2>{speaker.say('record.part.check')}</h2>
        {pack.sound && <p>{speaker.say('app.check.sound', { count: pack.checked.counted })}</p>}
        {checkFindings(pack.checked).map(({ key, count }) => (
          <p key={key}>{speaker.say(key, { count })}</p>
        ))}
        {!pack.sound && (
          <p>
            {speaker.say('record.in-doubt', { count: pack.inDoubt.length, ids: pack.inDoubt.map(ending).join(', ') })}
          </p>
        )}
      </section>
      <section className="section">
        <h2>{speaker.say('record.part.lines')}</h2>
        <ol className="lines">
          {pack.lines.map((line) => (
            <Line key={`${line.entry} ${line.sum}`} line={line} />
          ))}
        </ol>
      </section>
      <section className="section">
        <h2>{speaker.say('record.part.verdicts')}</h2>
        {pack.verdicts.map((verdict) => (
          <Verdict key={`${verdict.heap} ${verdict.at}`} verdict={verdict} />
        ))}
      </section>
      <Cautions ids={pack.cautions} />
    </>
  );
}

/** Ids begin with the time, so their ends tell them apart. */
function ending(id: string): string {
  return id.slice(-8);
}

function Line({ line }: { readonly line: RecordLine }): ReactNode {
  const speaker = useSpeaker();
  const { corrects, became } = line;
  const amounts = [...new Set(line.typed.map((one) => speaker.tell(one)))].join('; ');
  const more = [
    ...(amounts === '' ? [] : [amounts]),
    ...line.remarks.map((one) => speaker.tell(one)),
    ...(corrects === null
      ? []
      : [speaker.say('record.first-written', { by: corrects.by, was: speaker.tell(corrects.said) })]),
    ...(became === null ? [] : [speaker.say('record.changed-to', { by: became.by, is: speaker.tell(became.said) })]),
    speaker.say('record.written', {
      by: line.by,
      day: momentOf(line.written),
      device: ending(line.device),
      n: line.n,
      id: ending(line.entry),
    }),
  ];
  const rough = line.precision === 'day' || line.precision === 'week';
  return (
    <li>
      <p className="small quiet">{rough ? sayDay(speaker, line.happened) : momentOf(line.happened)}</p>
      <p>{speaker.tell(line.said)}</p>
      {more.map((text) => (
        <p key={text} className="small quiet">
          {text}
        </p>
      ))}
    </li>
  );

  function momentOf(instant: string): string {
    return `${sayDay(speaker, instant)}, ${sayTime(speaker, instant)}`;
  }
}

function Verdict({ verdict: { name, at, report } }: { readonly verdict: RecordVerdict }): ReactNode {
  const speaker = useSpeaker();
  return (
    <>
      <p>{speaker.say('record.verdict', { name: speaker.tell(name), day: sayDay(speaker, at) })}</p>
      {report === null ? (
        <p>{speaker.say('record.verdict.none')}</p>
      ) : (
        <>
          <p>{speaker.tell(report.answer)}</p>
          <p>{speaker.tell(report.counts)}</p>
          <ul className="lines small">
            {report.rules.map((said) => {
              const text = speaker.tell(said);
              return <li key={text}>{text}</li>;
            })}
          </ul>
          {report.notes.map((said) => (
            <p key={said.key} className="small">
              {speaker.tell(said)}
            </p>
          ))}
        </>
      )}
    </>
  );
}
