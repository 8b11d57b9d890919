import { type BuildCardReport, buildCardReport } from '@loamwright/advisor';
import { type BuildCard, type BuildCardInput, materialById } from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import { type ReactNode, useMemo, useState } from 'react';
import { useSettings } from '../../device/settings.ts';
import { useBook } from '../../keep/useBook.ts';
import { useBins } from '../../mix/draft.ts';
import { cardInput, solveInput, tryAgain, useMix, workOutCard } from '../../mix/mix.ts';
import { Cautions } from '../../parts/Cautions.tsx';
import { sayDay } from '../../parts/dates.ts';
import { Pick } from '../../parts/Pick.tsx';
import { HeapLayers } from '../../pictures/HeapLayers.tsx';
import { Page } from '../../shell/Page.tsx';
import { openSheet, to, useRoute } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { NoMix } from '../mix/NoMix.tsx';
import { BuiltSheet } from './BuiltSheet.tsx';
import '../../look/paper.css';
import './card.css';

/** Live stuff that starts a heap. */
const starters = ['finished-compost', 'soil'] as const;
type StarterId = (typeof starters)[number];

/** How to lay the mix, layer by layer: on the screen, and on one sheet of paper. */
export default function CardPage(): ReactNode {
  const speaker = useSpeaker();
  const bins = useBins();
  const { measures_L, system } = useSettings();
  const { holding } = useBook().leaf;
  const { sheet } = useRoute();
  const [starter, setStarter] = useState<StarterId | null>(null);
  const worked = useMix(
    useMemo(() => solveInput(bins, measures_L, holding), [bins, measures_L, holding]),
    bins.aim,
  );
  const measure = system === 'us' ? 'bucket-5gal' : 'bucket-20l';
  const input = useMemo((): BuildCardInput | null => {
    if (worked.is !== 'worked') return null;
    const plain = cardInput(worked.solution, bins, measures_L, holding);
    if (plain.mix.length === 0) return null;
    return starter === null ? plain : { ...plain, starter: { material: starter, measure, count: 1 } };
  }, [worked, bins, measures_L, holding, starter, measure]);
  const card = useMemo(() => (input === null ? null : workOutCard(input)), [input]);
  if (worked.is !== 'worked') return <NoMix worked={worked} onAgain={tryAgain} />;
  if (input === null || card === null || !card.ok) {
    return (
      <Page question={speaker.say('app.card.question')} act={{ text: speaker.say('app.mix.back'), href: to('bins') }}>
        <p className="answer">{speaker.say('app.card.nothing')}</p>
      </Page>
    );
  }
  const report = buildCardReport(card.value, holding);
  return (
    <Page
      question={speaker.say('app.card.question')}
      act={{ text: speaker.say('app.card.built'), onAct: () => openSheet('built') }}
    >
      <CardBody card={card.value} report={report} bay={bins.bay} />
      <div className="section screen-only">
        <Pick
          label={speaker.say('app.card.starter')}
          options={starters
            .filter((id) => materialById(id) !== undefined)
            .map((value) => ({ value, text: speaker.say(`material.${value}.name`) }))}
          value={starter}
          onChange={setStarter}
        />
        <button type="button" className="word" onClick={() => globalThis.print()}>
          {speaker.say('app.card.print')}
        </button>
      </div>
      <Cautions ids={report.cautions} />
      {sheet === 'built' && <BuiltSheet card={card.value} input={input} solution={worked.solution} bins={bins} />}
    </Page>
  );
}

interface BodyProperties {
  readonly card: BuildCard;
  readonly report: BuildCardReport;
  readonly bay: { readonly width_m: number; readonly depth_m: number; readonly height_m: number };
}

function CardBody({ card, report, bay }: BodyProperties): ReactNode {
  const speaker = useSpeaker();
  return (
    <div className={sizeOf(report)}>
      <p className="answer">
        {speaker.say('app.card.answer', {
          layers: report.layers.length,
          height: speaker.tell(report.height),
          water: speaker.tell(report.water),
        })}
      </p>
      <p className="small quiet">
        {speaker.tell({
          key: 'app.card.bay',
          places: {
            width: { figure: bay.width_m, unit: 'm', as: 'length' },
            depth: { figure: bay.depth_m, unit: 'm', as: 'length' },
            height: { figure: bay.height_m, unit: 'm', as: 'length' },
          },
        })}{' '}
        <span className="paper-only">
          {speaker.say('app.card.day', { day: sayDay(speaker, new Date().toISOString()) })}
        </span>
      </p>
      <div className="card-body">
        <figure className="picture card-picture">
          <HeapLayers card={card} report={report} bay={bay} numbered tallest={300} />
        </figure>
        <ol className="steps-down" reversed>
          {report.layers
            .map((layer, i) => ({ layer, n: i + 1 }))
            .reverse()
            .map(({ layer, n }) => (
              <li key={n}>
                <strong>{speaker.tell(layer.said)}</strong>{' '}
                <span className="quiet">{speaker.likely(layer.height_m, 'm', 'depth')}</span>
                {[layer.water, layer.starter].map(
                  (said) =>
                    said !== null && (
                      <span key={said.key} className="block">
                        {speaker.tell(said)}
                      </span>
                    ),
                )}
              </li>
            ))}
        </ol>
        <div className="card-notes">
          <Told title={speaker.say('app.card.chop')} lines={report.chop} />
          <Told title={speaker.say('app.card.notes')} lines={report.notes} />
          <Told
            title={speaker.say('app.mix.permits')}
            lines={report.permits.filter(({ permit }) => permit !== 'allowed').map(({ said }) => said)}
          />
          <p className="small quiet">{speaker.say('app.card.range')}</p>
        </div>
      </div>
    </div>
  );
}

/** From so many layers on the card is printed in smaller letters, to stay on one sheet; from so many lines of stuff, smaller still. */
const MANY_LAYERS = 12;
const MOST_PARTS = 48;

function sizeOf({ layers }: BuildCardReport): string {
  if (layers.reduce((sum, { parts }) => sum + parts.length, 0) > MOST_PARTS) return 'card many most';
  return layers.length > MANY_LAYERS ? 'card many' : 'card';
}

function Told({ title, lines }: { readonly title: string; readonly lines: readonly Saying[] }): ReactNode {
  const speaker = useSpeaker();
  if (lines.length === 0) return null;
  return (
    <section className="section">
      <h2>{title}</h2>
      <ul className="lines">
        {lines.map((said) => {
          const text = speaker.tell(said);
          return <li key={text}>{text}</li>;
        })}
      </ul>
    </section>
  );
}
