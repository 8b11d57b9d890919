import '@loamwright/words/later';
import { balanceOfYear, seasonOf, yearOf } from '@loamwright/advisor';
import {
  type BalanceId,
  type BalanceRow,
  balanceIds,
  check,
  type HoldingBalance,
  type HoldingBalanceInput,
  holdingBalance,
} from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import { type ReactNode, useMemo, useState } from 'react';
import { useSettings } from '../../device/settings.ts';
import { sayProblem } from '../../keep/not-written.ts';
import { now, zone } from '../../keep/time.ts';
import { useBook } from '../../keep/useBook.ts';
import { needs } from '../../mix/needs.ts';
import { Cautions } from '../../parts/Cautions.tsx';
import { Choices } from '../../parts/Choices.tsx';
import { type Flow, Flows } from '../../pictures/Flows.tsx';
import { Page } from '../../shell/Page.tsx';
import { to } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';

/** Where a year's carbon and nutrients go, from scrap to crop, by what is written down. */
export default function BalancePage(): ReactNode {
  const speaker = useSpeaker();
  const { holding } = useBook().leaf;
  const { measures_L } = useSettings();
  const season = seasonOf(now(), zone());
  const years = [season - 1, season].map(String);
  const isBare = (of: number): boolean => {
    const { input } = yearOf(holding, { season: of, zone: zone(), speaker });
    return input.heaped.length + input.straight.length === 0;
  };
  const [year, setYear] = useState(() => String(isBare(season) ? season - 1 : season));
  const [id, setId] = useState<BalanceId>('nitrogen');
  const found = useMemo(() => {
    const { input, ground } = yearOf(holding, { season: Number(year), zone: zone(), speaker });
    if (input.heaped.length + input.straight.length === 0) return null;
    const checked = check<HoldingBalanceInput>(holdingBalance.input, { ...input, ownSizes: measures_L });
    const outcome = checked.ok ? holdingBalance.run(checked.value, needs) : checked;
    return { outcome, ground };
  }, [holding, year, speaker, measures_L]);
  return (
    <Page question={speaker.say('balance.question')} act={{ text: speaker.say('balance.toBeds'), href: to('beds') }}>
      {found === null && <p className="answer">{speaker.say('balance.answer.nothing')}</p>}
      {found?.outcome.ok === false && (
        <p className="answer" role="alert">
          {found.outcome.problems.map((problem) => speaker.tell(sayProblem(problem))).join(' ')}
        </p>
      )}
      {found?.outcome.ok === true && <Answer found={found.outcome.value} id={id} />}
      <Choices
        legend={speaker.say('balance.choose')}
        options={balanceIds.map((value) => ({ value, text: speaker.say(`balance.id.${value}`) }))}
        value={id}
        onChange={setId}
      />
      <Choices
        legend={speaker.say('balance.harvestOf')}
        options={years.map((value) => ({ value, text: value }))}
        value={year}
        onChange={setYear}
      />
      {found?.outcome.ok === true && <More found={found.outcome.value} ground={found.ground} />}
    </Page>
  );
}

interface AnswerProperties {
  readonly found: HoldingBalance;
  readonly id: BalanceId;
}

function Answer({ found, id }: AnswerProperties): ReactNode {
  const speaker = useSpeaker();
  const report = balanceOfYear(found);
  const row = found.rows.find((one) => one.id === id);
  return (
    <>
      <p className="answer">{speaker.tell(report.answer)}</p>
      <p>{speaker.tell(report.act)}</p>
      {report.finding.map((said) => (
        <p key={said.key}>{speaker.tell(said)}</p>
      ))}
      {row !== undefined && (
        <figure className="picture">
          <Flows
            label={speaker.say('balance.picture', { what: speaker.say(`balance.id.${id}`) })}
            flows={flowsOf(row, (key, kg) =>
              speaker.tell({ key: `balance.flow.${key}`, places: { amount: { figure: kg, unit: 'kg', as: 'mass' } } }),
            )}
          />
        </figure>
      )}
    </>
  );
}

type FlowId = 'heaped' | 'lost' | 'left' | 'spread' | 'straight' | 'lostOnBed' | 'taken' | 'stays';

/** Each amount beneath the part that it came from; what is below nothing is drawn as nothing. */
function flowsOf(row: BalanceRow, text: (id: FlowId, kg: number) => string): readonly Flow[] {
  const lost = Math.max(0, row.lostInHeap_kg.p50);
  const left = Math.max(0, row.left_kg.p50);
  const spread = Math.max(0, row.spread_kg.p50);
  const straight = row.straight_kg.p50;
  const gone = row.lostAtSpreading_kg.p50;
  const taken = row.taken_kg?.p50 ?? 0;
  const beds = lost + left;
  const flow = (id: FlowId, told_kg: number, from_kg: number, length_kg: number, leaks = false): Flow => ({
    id,
    text: text(id, told_kg),
    from: from_kg,
    length: length_kg,
    leaks,
  });
  return [
    flow('heaped', row.heaped_kg.p50, 0, row.heaped_kg.p50),
    flow('lost', row.lostInHeap_kg.p50, 0, lost, true),
    flow('left', row.left_kg.p50, lost, left),
    flow('spread', row.spread_kg.p50, beds, spread),
    flow('straight', straight, beds + spread, straight),
    flow('lostOnBed', gone, beds, gone, true),
    flow('taken', taken, beds + gone, taken),
    flow('stays', row.stays_kg.p50, beds + gone + taken, Math.max(0, row.stays_kg.p50)),
  ];
}

interface MoreProperties {
  readonly found: HoldingBalance;
  /** How beds are shared among their crops where nobody said it. */
  readonly ground: readonly Saying[];
}

function More({ found, ground }: MoreProperties): ReactNode {
  const speaker = useSpeaker();
  const { heap, beds, notes } = balanceOfYear(found);
  const list = (title: string, sayings: readonly Saying[]): ReactNode => (
    <section className="section">
      <h2>{title}</h2>
      <ul className="lines small">
        {sayings
          .map((said) => speaker.tell(said))
          .map((line) => (
            <li key={line}>{line}</li>
          ))}
      </ul>
    </section>
  );
  return (
    <>
      {list(speaker.say('balance.head.heap'), heap)}
      {list(speaker.say('balance.head.beds'), beds)}
      {[...ground, ...notes]
        .map((said) => speaker.tell(said))
        .map((line) => (
          <p key={line} className="small quiet">
            {line}
          </p>
        ))}
      <Cautions ids={['local-rules']} />
    </>
  );
}
