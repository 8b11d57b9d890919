import { lazy, type ReactNode, Suspense } from 'react';
import { changeSettings, type Theme, useSettings } from '../../device/settings.ts';
import { Choices } from '../../parts/Choices.tsx';
import { Page } from '../../shell/Page.tsx';
import { to } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { MeasureSizes } from './MeasureSizes.tsx';

/** It opens the daybook, for which the settings need not wait. */
const NotExchanged = lazy(() =>
  import('../../parts/NotExchanged.tsx').then((part) => ({ default: part.NotExchanged })),
);

const themes: readonly Theme[] = ['auto', 'light', 'dark', 'sunlight'];

export default function SettingsPage(): ReactNode {
  const speaker = useSpeaker();
  const { system, theme, person, exchanges, book } = useSettings();
  return (
    <Page question={speaker.say('app.settings.question')}>
      <p className="answer">
        {speaker.say('app.settings.answer', {
          units: speaker.say(`app.units.${system}`),
          theme: speaker.say(`app.theme.${theme}`),
        })}
      </p>
      <div className="section">
        <Choices
          legend={speaker.say('app.settings.units')}
          options={[
            { value: 'us', text: speaker.say('app.units.us') },
            { value: 'metric', text: speaker.say('app.units.metric') },
          ]}
          value={system}
          onChange={(chosen) => changeSettings({ system: chosen })}
        />
      </div>
      <div className="section">
        <Choices
          legend={speaker.say('app.settings.theme')}
          options={themes.map((value) => ({ value, text: speaker.say(`app.theme.${value}`) }))}
          value={theme}
          onChange={(chosen) => changeSettings({ theme: chosen })}
        />
      </div>
      <label className="field section">
        <span className="label">{speaker.say('app.settings.person')}</span>
        <input
          className="line"
          autoComplete="name"
          maxLength={60}
          value={person}
          onChange={(event) => changeSettings({ person: event.target.value })}
        />
        <span className="hint">{speaker.say('app.settings.personTold')}</span>
      </label>
      <MeasureSizes key={system} />
      {exchanges !== null && book === 'own' && (
        <section className="section">
          <h2>{speaker.say('app.server.title')}</h2>
          <Suspense fallback={null}>
            <NotExchanged />
          </Suspense>
          <a className="word" href={to('daybook', 'kept')}>
            {speaker.say('app.daybook.kept')}
          </a>
        </section>
      )}
      <p className="section">
        <a className="word" href={to('clauses')}>
          {speaker.say('app.settings.clauses')}
        </a>
      </p>
      <p>
        <a className="word" href={to('about')}>
          {speaker.say('app.settings.about')}
        </a>
      </p>
    </Page>
  );
}
