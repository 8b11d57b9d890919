import { convert } from '@loamwright/units';
import { type ReactNode, useState } from 'react';
import { QuantityField } from '../../parts/QuantityField.tsx';
import { useSpeaker } from '../../shell/words.tsx';
import { CheckPage } from './CheckPage.tsx';

/** A bucket filled loosely and shaken down. */
export default function Settled({ id }: { readonly id: string }): ReactNode {
  const speaker = useSpeaker();
  const [filled_m, setFilled] = useState<number | null>(null);
  const [down_m, setDown] = useState<number | null>(null);
  const told = (height_m: number | null): string => (height_m === null ? '' : speaker.likely(height_m, 'm', 'depth'));
  const read = filled_m !== null && down_m !== null && filled_m > 0 && down_m > 0;
  return (
    <CheckPage
      id={id}
      of="settled"
      check={
        read ? { settling: { filled_cm: convert(filled_m, 'm', 'cm'), settled_cm: convert(down_m, 'm', 'cm') } } : null
      }
      method={speaker.say('known.method.settling', { filled: told(filled_m), settled: told(down_m) })}
    >
      <QuantityField label={speaker.say('app.material.filled')} shownAs="depth" value={filled_m} onChange={setFilled} />
      <QuantityField label={speaker.say('app.material.down')} shownAs="depth" value={down_m} onChange={setDown} />
    </CheckPage>
  );
}
