import type { Squeeze as Feel } from '@loamwright/daybook';
import { squeezeGrades } from '@loamwright/science';
import { type ReactNode, useState } from 'react';
import { Choices } from '../../parts/Choices.tsx';
import { useSpeaker } from '../../shell/words.tsx';
import { CheckPage } from './CheckPage.tsx';

/** A handful squeezed hard. */
export default function Squeeze({ id }: { readonly id: string }): ReactNode {
  const speaker = useSpeaker();
  const [feel, setFeel] = useState<Feel | null>(null);
  return (
    <CheckPage
      id={id}
      of="squeeze"
      check={feel === null ? null : { squeeze: feel }}
      method={feel === null ? '' : speaker.say(`advisor.squeeze.${feel}`)}
    >
      <Choices
        legend={speaker.say('app.material.feel')}
        legendUnseen
        options={squeezeGrades.map((value) => ({ value, text: speaker.say(`advisor.squeeze.${value}`) }))}
        value={feel}
        onChange={setFeel}
      />
    </CheckPage>
  );
}
