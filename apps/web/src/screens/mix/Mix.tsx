import { buildCardReport, type MixReport, mixReport } from '@loamwright/advisor';
import type { MixSolution, MixSolveInput } from '@loamwright/science';
import { lazy, type ReactNode, Suspense, useMemo } from 'react';
import { useSettings } from '../../device/settings.ts';
import { useBook } from '../../keep/useBook.ts';
import { type Bins, useBins } from '../../mix/draft.ts';
import { cardInput, solveInput, tryAgain, useMix, workOutCard } from '../../mix/mix.ts';
import { Cautions } from '../../parts/Cautions.tsx';
import { Sentence } from '../../parts/Sentence.tsx';
import { HeapLayers } from '../../pictures/HeapLayers.tsx';
import { Page } from '../../shell/Page.tsx';
import { openSheet, to } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { MixSheets } from './MixSheets.tsx';
import { NoMix } from './NoMix.tsx';
import { Others } from './Others.tsx';

const FirstCheck = lazy(() => import('./FirstCheck.tsx'));

/** What to lay, how much of each, and why. */
export default function MixPage(): ReactNode {
  const bins = useBins();
  const { measures_L } = useSettings();
  const { holding } = useBook().leaf;
  const input = useMemo(() => solveInput(bins, measures_L, holding), [bins, measures_L, holding]);
  const worked = useMix(input, bins.aim);
  if (worked.is !== 'worked') return <NoMix worked={worked} onAgain={tryAgain} />;
  return <MixAnswer bins={bins} input={input} solution={worked.solution} />;
}

interface AnswerProperties {
  readonly bins: Bins;
  readonly input: MixSolveInput;
  readonly solution: MixSolution;
}

function MixAnswer({ bins, input, solution }: AnswerProperties): ReactNode {
  const speaker = useSpeaker();
  const { holding } = useBook().leaf;
  const report = useMemo(() => mixReport(solution, holding, input.season), [solution, holding, input.season]);
  const buildable = report.use.length > 0;
  return (
    <Page
      question={speaker.say('app.mix.question')}
      act={
        buildable
          ? { text: speaker.say('app.mix.card'), href: to('bins', 'card') }
          : { text: speaker.say('app.mix.back'), href: to('bins') }
      }
    >
      <p className="answer">
        <Sentence
          saying={report.answer}
          touchable={({ place }) => place === 'water' || isOnHand(report, place)}
          onTouch={({ place }) => openSheet(place === 'water' ? 'water' : `stuff:${stuffAt(report, place)}`)}
        />
      </p>
      {buildable && (
        <>
          <Picture bins={bins} solution={solution} />
          <p>
            <a className="word" href={to('bins', 'would')}>
              {speaker.say('app.mix.would')}
            </a>
          </p>
        </>
      )}
      <Others input={input} aim={bins.aim} />
      {buildable && (
        <Suspense fallback={null}>
          <FirstCheck bins={bins} solution={solution} />
        </Suspense>
      )}
      <Plain title={speaker.say('app.mix.short')} lines={report.lacks.map((said) => speaker.tell(said))} />
      <Plain
        title={speaker.say('app.mix.mend')}
        lines={[...report.mends, ...(report.passedOver === null ? [] : [report.passedOver])].map((said) =>
          speaker.tell(said),
        )}
      />
      <Plain title={speaker.say('app.mix.warn')} lines={report.warnings.map((said) => speaker.tell(said))} />
      <Plain title={speaker.say('app.mix.beliefs')} lines={report.beliefs.map(({ said }) => speaker.tell(said))} />
      <section className="section">
        <h2>{speaker.say('app.mix.is')}</h2>
        <ul className="lines">
          {report.judged.map(({ quantity, said }) => (
            <li key={quantity}>
              <button type="button" aria-haspopup="dialog" onClick={() => openSheet(`judged:${quantity}`)}>
                {speaker.tell(said)}
              </button>
            </li>
          ))}
        </ul>
      </section>
      <Plain title={speaker.say('app.mix.heat')} lines={report.heat.map((said) => speaker.tell(said))} />
      <Plain
        title={speaker.say('app.mix.left')}
        lines={[...report.use, ...report.unused].flatMap(({ left }) => (left === null ? [] : [speaker.tell(left)]))}
      />
      <Plain
        title={speaker.say('app.mix.permits')}
        lines={report.use
          .filter(({ permit }) => permit.permit !== 'allowed')
          .map(({ permit }) => speaker.tell(permit.said))}
      />
      <Plain title={speaker.say('app.mix.starters')} lines={report.starters.map((said) => speaker.tell(said))} />
      <Plain title={speaker.say('app.mix.more')} lines={report.more.map((said) => speaker.tell(said))} />
      <Cautions ids={report.cautions} />
      <MixSheets bins={bins} solution={solution} report={report} />
    </Page>
  );
}

/** `stuff[2].amount` is the third of what goes in: its place in the stock; null for what is to be fetched. */
function stuffAt(report: MixReport, place: string): number | null {
  return report.use[Number(/^stuff\[(\d+)\]\.amount/u.exec(place)?.[1] ?? -1)]?.stock ?? null;
}

function isOnHand(report: MixReport, place: string): boolean {
  return stuffAt(report, place) !== null;
}

function Picture({ bins, solution }: { readonly bins: Bins; readonly solution: MixSolution }): ReactNode {
  const { measures_L } = useSettings();
  const { holding } = useBook().leaf;
  const card = useMemo(
    () => workOutCard(cardInput(solution, bins, measures_L, holding)),
    [solution, bins, measures_L, holding],
  );
  if (!card.ok) return null;
  return (
    <figure className="picture">
      <HeapLayers
        card={card.value}
        report={buildCardReport(card.value, holding)}
        bay={bins.bay}
        names={
          new Map(bins.items.flatMap(({ material, own }) => (own === undefined ? [] : [[material, own.name] as const])))
        }
      />
    </figure>
  );
}

/** A few sentences under a heading; nothing at all where there are none. */
function Plain({ title, lines }: { readonly title: string; readonly lines: readonly string[] }): ReactNode {
  if (lines.length === 0) return null;
  return (
    <section className="section">
      <h2>{title}</h2>
      <ul className="lines">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
}
