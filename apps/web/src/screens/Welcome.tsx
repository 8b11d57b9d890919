import type { ReactNode } from 'react';
import { changeSettings, useSettings } from '../device/settings.ts';
import { nameOf } from '../mix/amount.ts';
import { Choices } from '../parts/Choices.tsx';
import { Layers } from '../pictures/Layers.tsx';
import { Page } from '../shell/Page.tsx';
import { go, to } from '../shell/route.ts';
import { useSpeaker } from '../shell/words.tsx';

/** The first thing a person sees: what this is, how they measure, and two ways in. */
export function Welcome(): ReactNode {
  const speaker = useSpeaker();
  const { system } = useSettings();
  return (
    <Page
      question={speaker.say('app.welcome.question')}
      places={false}
      act={{ text: speaker.say('app.welcome.begin'), onAct: begin }}
    >
      <p className="answer">{speaker.say('app.welcome.answer')}</p>
      <figure className="picture">
        <Layers
          label={speaker.say('app.welcome.picture')}
          layers={frontispiece.map(([id, particle, kind, thickness_m]) => ({
            material: { id, particle, class: kind },
            thickness_m,
            name: nameOf(speaker, id),
            amount: '',
          }))}
          width_m={1.2}
          height_m={1.15}
          marks={[]}
          tallest={150}
        />
      </figure>
      <p>{speaker.say('app.welcome.told')}</p>
      <div className="section">
        <Choices
          legend={speaker.say('app.welcome.units')}
          options={[
            { value: 'us', text: speaker.say('app.units.us') },
            { value: 'metric', text: speaker.say('app.units.metric') },
          ]}
          value={system}
          onChange={(chosen) => changeSettings({ system: chosen })}
        />
      </div>
      <p className="section">
        <button type="button" className="word" onClick={lookRound}>
          {speaker.say('app.welcome.demo')}
        </button>
        <span className="small quiet block">{speaker.say('app.welcome.demoTold')}</span>
      </p>
      <p>
        <a className="word" href={to('about')}>
          {speaker.say('app.welcome.about')}
        </a>
      </p>
    </Page>
  );
}

function begin(): void {
  changeSettings({ book: 'own', begun: true });
  go(to('bins'));
}

function lookRound(): void {
  changeSettings({ book: 'demo' });
  go(to('heaps'));
}

/** A picture and no more: its thicknesses are nobody's heap. */
const frontispiece: readonly (readonly [id: string, particle: string, kind: string, thickness_m: number])[] = [
  ['straw', 'stringy', 'carbon-rich', 0.16],
  ['goat-bedding', 'stringy', 'nitrogen-rich', 0.1],
  ['autumn-leaves', 'leafy', 'carbon-rich', 0.14],
  ['coffee-grounds', 'fine', 'nitrogen-rich', 0.06],
  ['straw', 'stringy', 'carbon-rich', 0.12],
  ['apple-pomace', 'pasty', 'carbon-rich', 0.09],
  ['autumn-leaves', 'leafy', 'carbon-rich', 0.13],
  ['goat-bedding', 'stringy', 'nitrogen-rich', 0.09],
  ['straw', 'stringy', 'carbon-rich', 0.13],
];
