import '@loamwright/words/later';
import {
  type RecordLine,
  type RecordPack,
  type RecordVerdict,
  recordChanges,
  recordCsv,
  recordData,
  recordPack,
  recordRules,
} from '@loamwright/advisor';
import type { CheckReport } from '@loamwright/daybook';
import { createDraws } from '@loamwright/science';
import type { Speaker } from '@loamwright/words';
import { type ReactNode, useEffect, useMemo, useState } from 'react';
import { saveText } from '../../keep/save-text.ts';
import { now } from '../../keep/time.ts';
import { useBook } from '../../keep/useBook.ts';
import { Cautions } from '../../parts/Cautions.tsx';
import { sayDay, sayTime } from '../../parts/dates.ts';
import { Page } from '../../shell/Page.tsx';
import { useSpeaker } from '../../shell/words.tsx';
import { useSaidOf } from '../clauses/said.ts';
import { checkFindings } from '../daybook/check-findings.ts';
import '../../look/paper.css';

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
  const told = useSaidOf();
  const { system } = speaker;
  const pack = useMemo(
    () =>
      checked === null
        ? null
        : recordPack({ type, id }, leaf.holding, { entries: leaf.entries, checked, now: now(), draws, system, told }),
    [checked, leaf, type, id, system, told],
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
        {checksOf(pack, speaker).map((text) => (
          <p key={text}>{text}</p>
        ))}
      </section>
      <section className="section">
        <h2>{speaker.say('record.part.lines')}</h2>
        {pack.lines.length === 0 && <p>{speaker.say('record.no-lines')}</p>}
        <ol className="lines">
          {pack.lines.map((line) => (
            <Line key={`${line.entry} ${line.sum}`} line={line} />
          ))}
        </ol>
      </section>
      <section className="section">
        <h2>{speaker.say('record.part.verdicts')}</h2>
        {pack.verdicts.length === 0 && <p>{speaker.say('record.verdicts.none')}</p>}
        {pack.verdicts.map((verdict) => (
          <Verdict key={`${verdict.heap} ${verdict.at}`} verdict={verdict} />
        ))}
      </section>
      <Cautions ids={pack.cautions} />
      <Files pack={pack} />
    </>
  );
}

/** The same record as a file, for who asks for one. */
function Files({ pack }: { readonly pack: RecordPack }): ReactNode {
  const speaker = useSpeaker();
  const [saved, setSaved] = useState<string | null>(null);
  const save = (ending: 'csv' | 'json'): void => {
    const reader = { speaker, checks: checksOf(pack, speaker), now: now() };
    const name = `loamwright-record-${plain(speaker.tell(pack.name))}-${reader.now.slice(0, 10)}.${ending}`;
    if (ending === 'csv') saveText(recordCsv(pack, reader), name, 'text/csv');
    else saveText(`${JSON.stringify(recordData(pack, reader), null, 2)}\n`, name, 'application/json');
    setSaved(name);
  };
  return (
    <section className="section screen-only">
      <h2>{speaker.say('record.save')}</h2>
      <p className="words-row">
        {(['csv', 'json'] as const).map((ending) => (
          <button key={ending} type="button" className="word" onClick={() => save(ending)}>
            {speaker.say(`record.save.${ending}`)}
          </button>
        ))}
      </p>
      <div role="status">{saved !== null && <p>{speaker.say('record.saved', { name: saved })}</p>}</div>
    </section>
  );
}

/** A name as every file system takes it. */
function plain(name: string): string {
  return name.replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-|-$/gu, '');
}

/** What the daybook's own check found, a sentence each. */
function checksOf(pack: RecordPack, speaker: Speaker): readonly string[] {
  if (pack.sound) return [speaker.say('app.check.sound', { count: pack.checked.counted })];
  const ids = pack.inDoubt.map(ending).join(', ');
  return [
    ...checkFindings(pack.checked).map(({ key, count }) => speaker.say(key, { count })),
    speaker.say('record.in-doubt', { count: pack.inDoubt.length, ids }),
  ];
}

/** Ids begin with the time, so their ends tell them apart. */
function ending(id: string): string {
  return id.slice(-8);
}

function Line({ line }: { readonly line: RecordLine }): ReactNode {
  const speaker = useSpeaker();
  const amounts = [...new Set(line.typed.map((one) => speaker.tell(one)))].join('; ');
  const more = [
    ...(amounts === '' ? [] : [amounts]),
    ...line.remarks.map((one) => speaker.tell(one)),
    ...recordChanges(line, speaker),
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

function Verdict({ verdict }: { readonly verdict: RecordVerdict }): ReactNode {
  const speaker = useSpeaker();
  return (
    <>
      <p>{speaker.say('record.verdict', { name: speaker.tell(verdict.name), day: sayDay(speaker, verdict.at) })}</p>
      <ul className="lines small">
        {recordRules(verdict, speaker).map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </>
  );
}
