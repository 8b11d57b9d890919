import '@loamwright/words/later';
import { type IntervalReport, intervalReport } from '@loamwright/advisor';
import {
  type ContactId,
  check,
  contactIds,
  createDraws,
  type HarvestInterval,
  type HarvestIntervalInput,
  harvestInterval,
  type LayId,
  layIds,
  type Outcome,
  type PutId,
} from '@loamwright/science';
import { type ReactNode, useId, useMemo, useState } from 'react';
import { sayProblem } from '../../keep/not-written.ts';
import { Cautions } from '../../parts/Cautions.tsx';
import { Choices } from '../../parts/Choices.tsx';
import { Page } from '../../shell/Page.tsx';
import { useSpeaker } from '../../shell/words.tsx';

/** What was put on, as far as it is asked here: the rest has no wait or is for the brew. */
const puts = [
  'raw-manure',
  'unproven-compost',
  'proven-compost',
  'plant-compost',
  'leachate',
] as const satisfies readonly PutId[];

interface Asked {
  readonly put: (typeof puts)[number];
  readonly lay: LayId;
  readonly contact: ContactId;
  readonly workedIn: string;
  readonly spread: string;
  readonly planted: string;
  readonly harvest: string;
}

const START: Asked = {
  put: 'raw-manure',
  lay: 'worked-in',
  contact: 'touches',
  workedIn: '',
  spread: '',
  planted: '',
  harvest: '',
};

const needs = { draws: createDraws() };

/** When a crop may be taken after something was spread, by each rule. */
export default function HarvestPage(): ReactNode {
  const speaker = useSpeaker();
  const [asked, setAsked] = useState(START);
  const input = useMemo(() => inputOf(asked), [asked]);
  const found = useMemo(() => answerOf(input), [input]);
  const put = (change: Partial<Asked>): void => setAsked({ ...asked, ...change });
  return (
    <Page question={speaker.say('harvest.question')}>
      {found.ok ? (
        <Answer report={intervalReport(input, found.value)} />
      ) : (
        <p className="answer" role="alert">
          {found.problems.map((problem) => speaker.tell(sayProblem(problem))).join(' ')}
        </p>
      )}
      <Choices
        legend={speaker.say('harvest.put')}
        options={puts.map((value) => ({ value, text: speaker.say(`interval.put.${value}`) }))}
        value={asked.put}
        onChange={(value) => put({ put: value })}
      />
      <Choices
        legend={speaker.say('harvest.contact')}
        options={contactIds.map((value) => ({ value, text: speaker.say(`interval.contact.${value}`) }))}
        value={asked.contact}
        onChange={(value) => put({ contact: value })}
      />
      <Choices
        legend={speaker.say('harvest.lay')}
        options={layIds.map((value) => ({ value, text: speaker.say(`harvest.lay.${value}`) }))}
        value={asked.lay}
        onChange={(value) => put({ lay: value })}
      />
      {asked.lay === 'worked-in' && (
        <DayField
          label={speaker.say('harvest.workedIn')}
          value={asked.workedIn}
          onChange={(workedIn) => put({ workedIn })}
        />
      )}
      <DayField label={speaker.say('harvest.spread')} value={asked.spread} onChange={(spread) => put({ spread })} />
      <DayField label={speaker.say('harvest.planted')} value={asked.planted} onChange={(planted) => put({ planted })} />
      <DayField label={speaker.say('harvest.on')} value={asked.harvest} onChange={(harvest) => put({ harvest })} />
      {found.ok && <Rules report={intervalReport(input, found.value)} />}
    </Page>
  );
}

interface ReportProperties {
  readonly report: IntervalReport;
}

function Answer({ report }: ReportProperties): ReactNode {
  const speaker = useSpeaker();
  return (
    <>
      <p className="answer">{speaker.tell(report.answer)}</p>
      <p>{speaker.tell(report.because)}</p>
    </>
  );
}

/** What each rule says, what to mind, and what can hurt. */
function Rules({ report }: ReportProperties): ReactNode {
  const speaker = useSpeaker();
  return (
    <>
      <section className="section">
        <h2>{speaker.say('harvest.rules')}</h2>
        <ul className="lines">
          {[...report.rules, ...report.notes].map(speaker.tell).map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </section>
      <Cautions ids={report.cautions} />
    </>
  );
}

function inputOf({ put, lay, contact, workedIn, spread, planted, harvest }: Asked): HarvestIntervalInput {
  return {
    put,
    lay,
    contact,
    ...(lay === 'worked-in' && workedIn !== '' && { workedIn_day: workedIn }),
    ...(spread !== '' && { spread_day: spread }),
    ...(planted !== '' && { planting_day: planted }),
    ...(harvest !== '' && { harvest_day: harvest }),
  };
}

function answerOf(input: HarvestIntervalInput): Outcome<HarvestInterval> {
  const checked = check(harvestInterval.input, input);
  return checked.ok ? harvestInterval.run(checked.value, needs) : checked;
}

interface DayProperties {
  readonly label: string;
  /** `2026-03-01`; empty where nobody said. */
  readonly value: string;
  readonly onChange: (value: string) => void;
}

function DayField({ label, value, onChange }: DayProperties): ReactNode {
  const id = useId();
  return (
    <label className="field" htmlFor={id}>
      <span className="label">{label}</span>
      <input id={id} type="date" className="line" value={value} onChange={(event) => onChange(event.target.value)} />
    </label>
  );
}
