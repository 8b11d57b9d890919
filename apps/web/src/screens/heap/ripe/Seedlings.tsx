import '@loamwright/words/later';
import { emergence_pctControl, LEAST_CONTROL, USUALLY_SOWN } from '@loamwright/advisor';
import type { ReactNode } from 'react';
import { sayProblem } from '../../../keep/not-written.ts';
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
export function Seedlings({ told: { came, control, sown }, onTell }: Properties): ReactNode {
  const speaker = useSpeaker();
  const share =
    came === null || control === null ? null : emergence_pctControl({ came, control, sown: sown ?? undefined });
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
      <NumberField
        label={speaker.say('ripePage.sown')}
        hint={speaker.say('ripePage.sownHint', { sown: USUALLY_SOWN })}
        least={LEAST_CONTROL}
        most={MOST}
        onChange={(count) => onTell({ sown: count })}
      />
      {share?.ok === false && (
        <p className="hint" role="alert">
          {share.problems.map((problem) => speaker.tell(sayProblem(problem))).join(' ')}
        </p>
      )}
      {(came === null) !== (control === null) && (
        <p className="hint" role="status">
          {speaker.say('ripePage.both')}
        </p>
      )}
    </section>
  );
}
