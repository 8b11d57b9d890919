import '@loamwright/words/later';
import { bedReport } from '@loamwright/advisor';
import type { Bed } from '@loamwright/daybook';
import { type ReactNode, useMemo, useState } from 'react';
import { useBook } from '../../keep/useBook.ts';
import { Cautions } from '../../parts/Cautions.tsx';
import { sayDate } from '../../parts/dates.ts';
import { QuantitySheet } from '../../parts/QuantitySheet.tsx';
import { Sentence, type Touchable } from '../../parts/Sentence.tsx';
import { Page } from '../../shell/Page.tsx';
import { openSheet, to, useRoute } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { BedPicture } from './BedPicture.tsx';
import { Lines } from './Lines.tsx';
import { useMoment } from './moment.ts';

const dids = ['sown', 'put', 'tested', 'harvested', 'change'] as const;

/** What a bed wants this season, why, and what was done there. */
export function BedPage({ bed }: { readonly bed: Bed }): ReactNode {
  const speaker = useSpeaker();
  const { holding } = useBook().leaf;
  const { sheet } = useRoute();
  const moment = useMoment();
  const report = useMemo(() => bedReport(bed, holding, moment), [bed, holding, moment]);
  const [touched, setTouched] = useState<Touchable | null>(null);
  const { budget } = report;
  return (
    <Page
      question={speaker.say('bedPage.question', { bed: report.name })}
      act={
        budget === undefined
          ? { text: speaker.say('bedPage.sow'), href: to('bed', bed.id, 'sown') }
          : { text: speaker.say('bedPage.spread'), href: to('bed', bed.id, 'rate') }
      }
    >
      <p className="answer">
        <Sentence
          saying={report.answer}
          onTouch={(part) => {
            setTouched(part);
            openSheet('figure');
          }}
        />
      </p>
      <p className="small quiet">{speaker.tell(report.what)}</p>
      {report.ground.map((said) => (
        <p key={said.key}>{speaker.tell(said)}</p>
      ))}
      <BedPicture bed={bed} moment={moment} />
      {budget?.advice.map((said) => (
        <p key={said.key}>{speaker.tell(said)}</p>
      ))}
      <p className="words-row">
        <a className="word" href={to('bed', bed.id, 'years')}>
          {speaker.say('yearsPage.link')}
        </a>
      </p>
      <nav className="section" aria-label={speaker.say('bedPage.did')}>
        <h2>{speaker.say('bedPage.did')}</h2>
        <p className="words-row">
          {dids.map((did) => (
            <a key={did} className="word" href={to('bed', bed.id, did)}>
              {speaker.say(`bedPage.did.${did}`)}
            </a>
          ))}
        </p>
      </nav>
      {budget !== undefined && (
        <>
          <Lines
            title={speaker.say('bedPage.because')}
            sayings={[...budget.wanted, ...budget.supplied, budget.range, ...budget.assumed, ...report.notes]}
          />
          <Lines title={speaker.say('bedPage.others')} sayings={budget.others} />
        </>
      )}
      {report.done.length > 0 && (
        <section className="section">
          <h2>{speaker.say('bedPage.done')}</h2>
          <ul className="lines small">
            {report.done.map(({ entry, instant, said }) => (
              <li key={entry}>
                <a className="line-link" href={to('daybook', entry)}>
                  {sayDate(speaker, instant)}: {speaker.tell(said)}
                </a>
              </li>
            ))}
          </ul>
        </section>
      )}
      <p>
        <a className="word" href={to('bed', bed.id, 'record')}>
          {speaker.say('bedPage.record')}
        </a>
      </p>
      {budget !== undefined && <Cautions ids={budget.cautions} />}
      {sheet === 'figure' && touched !== null && (
        <QuantitySheet title={touched.text} figure={touched.figure} chance={touched.chance}>
          {budget !== undefined && <p>{speaker.tell(budget.range)}</p>}
        </QuantitySheet>
      )}
    </Page>
  );
}
