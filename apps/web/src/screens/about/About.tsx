import { cautionIds } from '@loamwright/science';
import { type ReactNode, useEffect } from 'react';
import { useSettings } from '../../device/settings.ts';
import { allSources } from '../../parts/sources.ts';
import { Page } from '../../shell/Page.tsx';
import { to } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';

/** What the program is, every caution it may show, and every source a figure comes from. */
export default function AboutPage({ source }: { readonly source: string | undefined }): ReactNode {
  const speaker = useSpeaker();
  const { book } = useSettings();
  useEffect(() => {
    if (source === undefined) return;
    const line = document.getElementById(`source-${source}`);
    line?.scrollIntoView({ block: 'center' });
    line?.focus({ preventScroll: true });
  }, [source]);
  return (
    <Page
      question={speaker.say('app.about.question')}
      places={book !== null}
      act={book === null ? { text: speaker.say('app.back'), href: to() } : undefined}
    >
      <p className="answer">{speaker.say('app.about.answer')}</p>
      <p className="section">{speaker.say('app.about.ranges')}</p>
      <section className="section">
        <h2>{speaker.say('app.about.cautions')}</h2>
        <ul className="lines">
          {cautionIds.map((id) => (
            <li key={id}>{speaker.say(`caution.${id}`)}</li>
          ))}
        </ul>
      </section>
      <section className="section">
        <h2>{speaker.say('app.about.sources')}</h2>
        <ul className="lines small">
          {allSources.map(({ id, author, year, title }) => (
            <li key={id} id={`source-${id}`} tabIndex={-1} className={id === source ? 'found-source' : undefined}>
              {[author, year, title].filter((piece) => piece !== null).join(', ')}
            </li>
          ))}
        </ul>
      </section>
      <p className="section small quiet">{speaker.say('app.about.licence')}</p>
    </Page>
  );
}
