import type { PailReport } from '@loamwright/advisor';
import type { Holding } from '@loamwright/daybook';
import type { Saying } from '@loamwright/words';
import { type ReactNode, useState } from 'react';
import { sayAmount, someOf } from '../../mix/amount.ts';
import { ownName } from '../../mix/own-name.ts';
import { Cautions } from '../../parts/Cautions.tsx';
import { QuantitySheet } from '../../parts/QuantitySheet.tsx';
import { Sentence, type Touchable } from '../../parts/Sentence.tsx';
import { openSheet, useRoute } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import type { Fed, Reckoned } from './asked.ts';

/** The answer; touching an amount in it lays open why so much, and what would do instead. */
export function PailAnswer({ report }: { readonly report: PailReport }): ReactNode {
  const speaker = useSpeaker();
  const { sheet } = useRoute();
  const [touched, setTouched] = useState<Touchable | null>(null);
  return (
    <>
      <p className="answer">
        <Sentence
          saying={report.answer}
          touchable={({ place }) => place.endsWith('.amount') || place.endsWith('.water')}
          onTouch={(part) => {
            setTouched(part);
            openSheet('why');
          }}
        />
      </p>
      {sheet === 'why' && touched !== null && (
        <QuantitySheet title={touched.text} figure={touched.figure}>
          {report.more.map((said) => (
            <p key={said.key}>{speaker.tell(said)}</p>
          ))}
        </QuantitySheet>
      )}
    </>
  );
}

interface Told {
  readonly reckoned: Reckoned;
  /** Whether the daybook knows the bin. */
  readonly kept: boolean;
  readonly fed: readonly Fed[];
  readonly holding: Holding;
}

/** Why so much, what the bin is after it, what it may not be called, and what to mind. */
export function PailTold({ reckoned: { found, report }, kept, fed, holding }: Told): ReactNode {
  const speaker = useSpeaker();
  const amounts = [
    ...fed,
    ...found.lay.map(({ material, measure, count }) => ({ material, amount: { measure, count } })),
  ];
  const stuff = amounts.map(({ material, amount }) =>
    someOf(speaker, material, sayAmount(speaker, amount), ownName(holding, material)),
  );
  const isLast = report.decision === 'start-next';
  const water = { figure: found.water_L / LITRES_PER_M3, unit: 'm3', as: 'liquid' } as const;
  return (
    <>
      <Sayings sayings={report.more} />
      <Sayings
        title={speaker.say('app.pail.bin-now')}
        sayings={[...report.bin, ...report.room, ...(isLast ? report.practice : [])]}
      />
      <Sayings title={speaker.say('app.pail.no-longer')} sayings={report.lost} />
      <Sayings
        title={speaker.say('app.pail.besides')}
        sayings={[...report.notes.slice(0, FIRST_NOTES), ...report.permits.map(({ said }) => said)]}
      />
      {kept && (
        <p className="small quiet">
          {found.water_L > 0
            ? speaker.tell({ key: 'app.pail.kept-water', places: { stuff, water } })
            : speaker.tell({ key: 'app.pail.kept', places: { stuff } })}
        </p>
      )}
      <details className="section">
        <summary>{speaker.say('app.pail.rest')}</summary>
        <Sayings
          sayings={[
            ...report.layers,
            ...(isLast ? [] : report.practice),
            ...report.notes.slice(FIRST_NOTES),
            report.notModelled,
          ]}
        />
      </details>
      <Cautions ids={report.cautions} />
    </>
  );
}

const LITRES_PER_M3 = 1000;
/** Notes that are told without being asked for: who tips in a pail every other day reads no more. */
const FIRST_NOTES = 2;

function Sayings({ title, sayings }: { readonly title?: string; readonly sayings: readonly Saying[] }): ReactNode {
  const speaker = useSpeaker();
  if (sayings.length === 0) return null;
  return (
    <section className="section">
      {title !== undefined && <h2>{title}</h2>}
      <ul className="lines">
        {sayings.map((said) => (
          <li key={speaker.tell(said)}>{speaker.tell(said)}</li>
        ))}
      </ul>
    </section>
  );
}
