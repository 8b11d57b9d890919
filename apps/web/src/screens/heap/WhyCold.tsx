import '@loamwright/words/later';
import { coldInput, coldReport } from '@loamwright/advisor';
import type { Heap, Holding } from '@loamwright/daybook';
import { type CautionId, type NotHeatingInput, notHeating } from '@loamwright/science';
import { type ReactNode, useMemo, useState } from 'react';
import { now } from '../../keep/time.ts';
import { needs } from '../../mix/needs.ts';
import { Cautions } from '../../parts/Cautions.tsx';
import { Choices } from '../../parts/Choices.tsx';
import { useSpeaker } from '../../shell/words.tsx';

interface Properties {
  readonly heap: Heap;
  readonly holding: Holding;
  /** Cautions that the page shows anyway. */
  readonly shown: readonly CautionId[];
}

const lefts = ['not-said', 'scraps', 'browns', 'nothing'] as const;
type Left = (typeof lefts)[number];

/** What a look at the stuff tells; the daybook keeps none of it. */
const lookOf: Readonly<Record<Left, Pick<NotHeatingInput, 'freshFood' | 'brownsWhole'>>> = {
  'not-said': {},
  scraps: { freshFood: true },
  browns: { freshFood: false, brownsWhole: true },
  nothing: { freshFood: false, brownsWhole: false },
};

/** Why a heap stays cold: the likeliest cause, at most three things to look at, and what to do if it is so. */
export default function WhyCold({ heap, holding, shown }: Properties): ReactNode {
  const speaker = useSpeaker();
  const [left, setLeft] = useState<Left>('not-said');
  const report = useMemo(() => {
    const input = { ...coldInput(heap, now()), ...lookOf[left] };
    const found = notHeating.run(input, needs);
    return found.ok ? coldReport(input, found.value, holding) : undefined;
  }, [heap, holding, left]);
  if (report === undefined) return null;
  return (
    <section className="section stack">
      <h2>{speaker.say('app.heap.cold')}</h2>
      <p>{speaker.tell(report.answer)}</p>
      {report.checks.length > 0 && (
        <ul className="lines">
          {report.checks.map((check) => (
            <li key={check.key}>{speaker.tell(check)}</li>
          ))}
        </ul>
      )}
      <p>
        {report.decides ? speaker.say('app.heap.cold.if', { act: speaker.tell(report.act) }) : speaker.tell(report.act)}
      </p>
      {report.why.map((said) => (
        <p key={said.key}>{speaker.tell(said)}</p>
      ))}
      {report.notes.map((said) => (
        <p key={said.key}>{speaker.tell(said)}</p>
      ))}
      <Choices
        legend={speaker.say('cold.left')}
        options={lefts.map((value) => ({ value, text: speaker.say(`cold.left.${value}`) }))}
        value={left}
        onChange={setLeft}
      />
      {report.evidence !== null && <p className="small quiet">{speaker.tell(report.evidence)}</p>}
      <Cautions ids={report.cautions.filter((id) => !shown.includes(id))} />
    </section>
  );
}
