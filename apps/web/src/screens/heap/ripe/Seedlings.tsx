import '@loamwright/words/later';
import { LEAST_CONTROL } from '@loamwright/advisor';
import type { ReactNode } from 'react';
import { NumberField } from '../../../parts/NumberField.tsx';
import { useSpeaker } from '../../../shell/words.tsx';
import type { Told } from './told.ts';

interface Properties {
  readonly told: Told;
  readonly onTell: (change: Partial<Told>) => void;
}

/** More than anyone sows for a test. */
const MOST = 1000;

/** The test with seedlings: two counts, side by side. */
export function Seedlings({ told: { came, control }, onTell }: Properties): ReactNode {
  const speaker = useSpeaker();
  return (
    <section className="section stack">
      <h2>{speaker.say('ripePage.seedlings')}</h2>
      <NumberField label={speaker.say('ripePage.came')} most={MOST} onChange={(count) => onTell({ came: count })} />
      <NumberField
        label={speaker.say('ripePage.control')}
        hint={speaker.say('ripePage.controlHint', { least: LEAST_CONTROL })}
        least={LEAST_CONTROL}
        most={MOST}
        onChange={(count) => onTell({ control: count })}
      />
      {(came === null) !== (control === null) && (
        <p className="hint" role="status">
          {speaker.say('ripePage.both')}
        </p>
      )}
    </section>
  );
}
