import { convert } from '@loamwright/units';
import { type ReactNode, useState } from 'react';
import { Choices } from '../../parts/Choices.tsx';
import { QuantityField } from '../../parts/QuantityField.tsx';
import { useSpeaker } from '../../shell/words.tsx';
import { CheckPage } from './CheckPage.tsx';

/** A handful weighed, dried and weighed again. */
export default function Dried({ id }: { readonly id: string }): ReactNode {
  const speaker = useSpeaker();
  const [method, setMethod] = useState<'oven' | 'microwave'>('oven');
  const [wet_kg, setWet] = useState<number | null>(null);
  const [dry_kg, setDry] = useState<number | null>(null);
  const grams = (mass_kg: number): number => convert(mass_kg, 'kg', 'g');
  const told = (mass_kg: number | null): string => (mass_kg === null ? '' : speaker.likely(mass_kg, 'kg', 'smallMass'));
  const weighed = wet_kg !== null && dry_kg !== null && wet_kg > 0 && dry_kg > 0;
  return (
    <CheckPage
      id={id}
      of="dried"
      check={weighed ? { dryDown: { method, wet_g: grams(wet_kg), dry_g: grams(dry_kg) } } : null}
      method={speaker.say(`known.method.${method}`, { wet: told(wet_kg), dry: told(dry_kg) })}
    >
      <Choices
        legend={speaker.say('app.material.way')}
        options={[
          { value: 'oven', text: speaker.say('app.material.oven') },
          { value: 'microwave', text: speaker.say('app.material.microwave') },
        ]}
        value={method}
        onChange={setMethod}
      />
      {method === 'microwave' && <p className="alarm">{speaker.say('known.caution.microwave')}</p>}
      <QuantityField label={speaker.say('app.material.wet')} shownAs="smallMass" value={wet_kg} onChange={setWet} />
      <QuantityField label={speaker.say('app.material.dry')} shownAs="smallMass" value={dry_kg} onChange={setDry} />
    </CheckPage>
  );
}
