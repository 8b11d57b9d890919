import '@loamwright/words/later';
import { ripenessKept, ripenessWords, ripeningAge_days, ripeReport, withRipeness } from '@loamwright/advisor';
import type { Heap } from '@loamwright/daybook';
import {
  afterTurnBounds_degC,
  type CuringInput,
  check,
  compostSmellIds,
  curingCheck,
  ripenessBounds,
  type SmellId,
} from '@loamwright/science';
import { type ReactNode, useMemo, useState } from 'react';
import { sayProblem } from '../../keep/not-written.ts';
import { now } from '../../keep/time.ts';
import { needs } from '../../mix/needs.ts';
import { Cautions } from '../../parts/Cautions.tsx';
import { Choices } from '../../parts/Choices.tsx';
import { QuantityField } from '../../parts/QuantityField.tsx';
import { to } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { aboutHeap, LogPage } from './log/LogPage.tsx';
import { RipeLab } from './ripe/RipeLab.tsx';
import { Seedlings } from './ripe/Seedlings.tsx';
import { NOTHING_TOLD, type Told, toldInput } from './ripe/told.ts';

const yesOrNo = ['not-said', 'no', 'yes'] as const;

/** Whether a heap is ripe, by what was smelt, seen and measured now and before; what is new can be written down. */
export default function RipeHeap({ heap }: { readonly heap: Heap }): ReactNode {
  const speaker = useSpeaker();
  const kept = useMemo(() => ripenessKept(heap), [heap]);
  const [counts, setCounts] = useState<'yes' | 'no'>('yes');
  const [told, setTold] = useState(NOTHING_TOLD);
  const put = (change: Partial<Told>): void => setTold((before) => ({ ...before, ...change }));
  const anew = toldInput(told);
  const known = counts === 'yes' ? (kept?.seen ?? {}) : {};
  const input = check<CuringInput>(curingCheck.input, withRipeness(known, anew ?? {}));
  const found = input.ok ? curingCheck.run(input.value, needs) : input;
  return (
    <LogPage
      heap={heap.id}
      question={speaker.say('ripePage.question', { heap: heap.name })}
      act={speaker.say('ripePage.act')}
      thing={(happened) =>
        anew === null || !input.ok || Object.keys(anew).length === 0
          ? null
          : { kind: 'ripeness-tested', about: aboutHeap(heap.id), happened, body: { seen: anew } }
      }
    >
      {found.ok ? (
        <Answer report={ripeReport(found.value, ripeningAge_days(heap, now()))} />
      ) : (
        <p className="answer" role="alert">
          {found.problems.map((problem) => speaker.tell(sayProblem(problem))).join(' ')}
        </p>
      )}
      {kept !== undefined && (
        <section>
          <p className="small quiet">
            {speaker.tell({ key: 'ripePage.kept', places: { what: ripenessWords(kept.seen) } })}
          </p>
          <Choices
            legend={speaker.say('ripePage.keptCounts')}
            options={(['yes', 'no'] as const).map((value) => ({
              value,
              text: speaker.say(`ripePage.keptCounts.${value}`),
            }))}
            value={counts}
            onChange={setCounts}
          />
        </section>
      )}
      <section className="section stack">
        <h2>{speaker.say('ripePage.look')}</h2>
        <Choices
          legend={speaker.say('ripePage.smell')}
          options={(['not-said', ...compostSmellIds] as const).map((value) => ({ value, text: smellText(value) }))}
          value={told.smell}
          onChange={(smell) => put({ smell })}
        />
        <Choices
          legend={speaker.say('ripePage.stuff')}
          options={yesOrNo.map((value) => ({
            value,
            text: speaker.say(value === 'not-said' ? 'ripePage.notSaid' : `ripePage.${value}`),
          }))}
          value={told.stuffSeen}
          onChange={(stuffSeen) => put({ stuffSeen })}
        />
        <QuantityField
          label={speaker.say('ripePage.afterTurn')}
          shownAs="temperature"
          value={null}
          least={afterTurnBounds_degC[0]}
          most={afterTurnBounds_degC[1]}
          onChange={(afterTurn_degC) => put({ afterTurn_degC })}
        />
      </section>
      <Seedlings told={told} onTell={put} />
      <section className="section stack">
        <h2>{speaker.say('ripePage.flask')}</h2>
        <QuantityField
          label={speaker.say('ripePage.rise')}
          shownAs="temperatureDifference"
          value={null}
          least={ripenessBounds.selfHeating_K[0]}
          most={ripenessBounds.selfHeating_K[1]}
          onChange={(selfHeating_K) => put({ selfHeating_K })}
        />
      </section>
      <RipeLab told={told} onTell={put} />
      <p>
        <a className="word" href={to('heap', heap.id, 'yield')}>
          {speaker.say('ripePage.yield')}
        </a>
      </p>
      <Cautions ids={curingCheck.cautions} />
    </LogPage>
  );

  function smellText(value: SmellId | 'not-said'): string {
    return speaker.say(value === 'not-said' ? 'ripePage.notSaid' : `ripe.smell.${value}`);
  }
}

function Answer({ report }: { readonly report: ReturnType<typeof ripeReport> }): ReactNode {
  const speaker = useSpeaker();
  const notes = report.notes.map((said) => speaker.tell(said));
  return (
    <>
      <p className="answer">{speaker.tell(report.answer)}</p>
      {report.next !== null && <p>{speaker.tell(report.next)}</p>}
      {notes.length > 0 && (
        <section>
          <h2 className="label">{speaker.say('ripePage.because')}</h2>
          <ul className="lines">
            {notes.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </section>
      )}
      <p className="small quiet">{speaker.tell(report.noGerms)}</p>
    </>
  );
}
