import type { FactWords, MaterialReport } from '@loamwright/advisor';
import { isEstimate, type PropertyId } from '@loamwright/science';
import type { ReactNode } from 'react';
import { Cautions } from '../../parts/Cautions.tsx';
import { sayDay } from '../../parts/dates.ts';
import { Sentence } from '../../parts/Sentence.tsx';
import { Sheet } from '../../parts/Sheet.tsx';
import { sourceName } from '../../parts/sources.ts';
import { Range } from '../../pictures/Range.tsx';
import { Page } from '../../shell/Page.tsx';
import { openSheet, to, useRoute } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';

/** What may be said and measured of a material, in the order of their trouble. */
const says = ['is', 'squeeze', 'dried', 'bucket', 'settled', 'own'] as const;

/** A material: its figures, each with its range and source a touch away, and what may be said and measured of it. */
export function MaterialPage({ report }: { readonly report: MaterialReport }): ReactNode {
  const speaker = useSpeaker();
  const { sheet } = useRoute();
  const name = speaker.tell(report.name);
  const fact = (property: PropertyId): FactWords | undefined => report.facts.find((one) => one.property === property);
  const touched = report.facts.find(({ property }) => `fact:${property}` === sheet);
  const [water, ratio, weight] = [
    fact('moisture_pctWet'),
    fact('carbonToNitrogen_ratio'),
    fact('densityLoose_kgPerM3AsIs'),
  ];
  const first = report.squeeze === null ? 'squeeze' : 'is';
  return (
    <Page
      question={speaker.say('app.material.question', { material: name })}
      act={{ text: speaker.say(`app.material.${first}`), href: to('material', report.id, first) }}
    >
      {water !== undefined && ratio !== undefined && weight !== undefined && (
        <p className="answer">
          <Sentence
            saying={{
              key: 'app.material.answer',
              places: {
                water: speaker.tell(water.likely),
                ratio: speaker.tell(ratio.likely),
                weight: speaker.tell(weight.likely),
              },
            }}
            touchable={() => true}
            onTouch={({ place }) => openSheet(`fact:${propertyAt[place] ?? ''}`)}
          />
        </p>
      )}
      {water !== undefined && <Spread fact={water} name={name} />}
      {report.head.map((said) => (
        <p key={said.key}>{speaker.tell(said)}</p>
      ))}
      <nav className="section" aria-label={speaker.say('app.material.do')}>
        <h2>{speaker.say('app.material.do')}</h2>
        <p className="words-row">
          {says.map((page) => (
            <a key={page} className="word" href={to('material', report.id, page)}>
              {speaker.say(`app.material.${page}`)}
            </a>
          ))}
        </p>
        {report.squeeze !== null && <p className="small quiet">{speaker.tell(report.squeeze)}</p>}
      </nav>
      {report.told.length > 0 && (
        <section className="section">
          <h2>{speaker.say('app.material.told')}</h2>
          <ul className="lines">
            {report.told.map(({ entry, happened, said }) => (
              <li key={entry}>
                <a href={to('daybook', entry)}>
                  {sayDay(speaker, happened)}: {speaker.tell(said)}
                </a>
              </li>
            ))}
          </ul>
        </section>
      )}
      <section className="section">
        <h2>{speaker.say('app.material.figures')}</h2>
        <ul className="lines">
          {report.facts.map(({ property, said }) => (
            <li key={property}>
              <button type="button" className="word" onClick={() => openSheet(`fact:${property}`)}>
                {speaker.tell(said)}
              </button>
            </li>
          ))}
        </ul>
      </section>
      {report.chop !== null && <p className="section">{speaker.tell(report.chop)}</p>}
      <Cautions ids={report.cautions} open={false} />
      {touched !== undefined && <FactSheet fact={touched} />}
    </Page>
  );
}

const propertyAt: Readonly<Record<string, PropertyId>> = {
  water: 'moisture_pctWet',
  ratio: 'carbonToNitrogen_ratio',
  weight: 'densityLoose_kgPerM3AsIs',
};

/** How wet it is believed to be, drawn. */
function Spread({ fact: { now }, name }: { readonly fact: FactWords; readonly name: string }): ReactNode {
  const speaker = useSpeaker();
  if (!isEstimate(now)) return null;
  const told = (value: number): string => `${speaker.figure(value)} %`;
  const places = { low: told(now.p10), likely: told(now.p50), high: told(now.p90) };
  return (
    <figure className="picture">
      <Range
        label={speaker.say('app.material.picture', { material: name, ...places })}
        marks={[
          { value: now.p10, text: places.low },
          { value: now.p50, text: places.likely },
          { value: now.p90, text: places.high },
        ]}
      />
      <figcaption>{speaker.say('app.material.picture', { material: name, ...places })}</figcaption>
    </figure>
  );
}

/** A figure, where it comes from, and how it was read. */
function FactSheet({ fact: { said, from, source } }: { readonly fact: FactWords }): ReactNode {
  const speaker = useSpeaker();
  const whence = speaker.say(`known.from.${from}`);
  return (
    <Sheet title={speaker.tell(said)}>
      <div className="stack">
        {source === null ? (
          <p>{whence}</p>
        ) : (
          <p>
            {from === 'published' ? '' : `${whence}. `}
            <a href={to('about', source.source)}>{sourceName(source.source)}</a>, {speaker.say(`mark.${source.mark}`)}.
          </p>
        )}
        {source !== null && source.place !== '' && <p className="small">{source.place}</p>}
        {source !== null && source.note !== null && <p className="small">{source.note}</p>}
      </div>
    </Sheet>
  );
}
