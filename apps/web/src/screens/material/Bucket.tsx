import { likely, measureById } from '@loamwright/science';
import { convert } from '@loamwright/units';
import { type ReactNode, useState } from 'react';
import { settings } from '../../device/settings.ts';
import { Choices } from '../../parts/Choices.tsx';
import { QuantityField } from '../../parts/QuantityField.tsx';
import { useSpeaker } from '../../shell/words.tsx';
import { CheckPage } from './CheckPage.tsx';

/** What a person's usual bucket holds, m³. */
function usualBucket_m3(): number {
  const { system, measures_L } = settings();
  const id = system === 'us' ? 'bucket-5gal' : 'bucket-20l';
  const volume_L = measures_L[id] ?? measureById(id)?.volume_L;
  if (volume_L === undefined) throw new RangeError(`no measure ${id}`);
  return convert(likely(volume_L), 'L', 'm3');
}

/** A bucket of it on the scale, full and empty. */
export default function Bucket({ id }: { readonly id: string }): ReactNode {
  const speaker = useSpeaker();
  const [volume_m3, setVolume] = useState<number | null>(usualBucket_m3);
  const [full_kg, setFull] = useState<number | null>(null);
  const [empty_kg, setEmpty] = useState<number | null>(null);
  const [lies, setLies] = useState<'loose' | 'packed'>('loose');
  const told = (mass_kg: number | null): string => (mass_kg === null ? '' : speaker.likely(mass_kg, 'kg', 'mass'));
  const weighed = full_kg !== null && empty_kg !== null && volume_m3 !== null && full_kg > 0 && volume_m3 > 0;
  return (
    <CheckPage
      id={id}
      of="bucket"
      check={
        weighed
          ? { bucket: { full_kg, empty_kg, volume_L: convert(volume_m3, 'm3', 'L'), packed: lies === 'packed' } }
          : null
      }
      method={speaker.say('known.method.bucket', { full: told(full_kg), empty: told(empty_kg) })}
    >
      <QuantityField label={speaker.say('app.material.full')} shownAs="mass" value={full_kg} onChange={setFull} />
      <QuantityField label={speaker.say('app.material.empty')} shownAs="mass" value={empty_kg} onChange={setEmpty} />
      <QuantityField
        label={speaker.say('app.material.holds')}
        shownAs="liquid"
        value={volume_m3}
        onChange={setVolume}
      />
      <Choices<'loose' | 'packed'>
        legend={speaker.say('app.amount.lies')}
        options={[
          { value: 'loose', text: speaker.say('measure.loose') },
          { value: 'packed', text: speaker.say('measure.packed') },
        ]}
        value={lies}
        onChange={setLies}
      />
    </CheckPage>
  );
}
