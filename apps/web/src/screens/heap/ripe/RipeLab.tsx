import '@loamwright/words/later';
import { ripenessBounds } from '@loamwright/science';
import type { ReactNode } from 'react';
import { NumberField } from '../../../parts/NumberField.tsx';
import { useSpeaker } from '../../../shell/words.tsx';
import { plainLabIds, type Told } from './told.ts';

interface Properties {
  readonly told: Told;
  readonly onTell: (change: Partial<Told>) => void;
}

const [, mostBreath] = ripenessBounds.respiration_mgCO2CPerGOMPerDay;
const [, mostNitrate] = ripenessBounds.ammonium_mgPerKgDry;

/** What a lab found; nothing of it is needed. */
export function RipeLab({ told, onTell }: Properties): ReactNode {
  const speaker = useSpeaker();
  return (
    <details className="section">
      <summary>{speaker.say('ripePage.lab')}</summary>
      <div className="stack">
        {plainLabIds.map((id) => {
          const [least, most] = ripenessBounds[id];
          return (
            <NumberField
              key={id}
              label={speaker.say(`ripePage.lab.${id}`)}
              least={least}
              most={most}
              onChange={(value) => onTell({ lab: { ...told.lab, [id]: value } })}
            />
          );
        })}
        <NumberField
          label={speaker.say('ripePage.lab.breathCo2')}
          most={mostBreath}
          onChange={(breathCo2) => onTell({ breathCo2 })}
        />
        <NumberField
          label={speaker.say('ripePage.lab.nitrate')}
          hint={speaker.say('ripePage.lab.nitrateHint')}
          most={mostNitrate}
          onChange={(nitrate) => onTell({ nitrate })}
        />
      </div>
    </details>
  );
}
