import '@loamwright/words/later';
import { cropNamed } from '@loamwright/advisor';
import type { Bed } from '@loamwright/daybook';
import { type ReactNode, useState } from 'react';
import { QuantityField } from '../../parts/QuantityField.tsx';
import { WritePage } from '../../parts/WritePage.tsx';
import { to } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { CropSearch } from './CropSearch.tsx';
import { aboutBed } from './moment.ts';

/** A crop sown or planted on a bed. */
export function LogSown({ bed }: { readonly bed: Bed }): ReactNode {
  const speaker = useSpeaker();
  const [crop, setCrop] = useState('');
  const [area_m2, setArea] = useState<number | null>(null);
  return (
    <WritePage
      then={to('bed', bed.id)}
      question={speaker.say('bedPage.sown.question', { bed: bed.setUp.body.name })}
      act={speaker.say('bedPage.sown.act')}
      thing={(happened) => {
        const name = cropToKeep(crop, speaker);
        if (name === '' || (area_m2 !== null && area_m2 <= 0)) return null;
        return {
          kind: 'sown',
          about: aboutBed(bed.id),
          happened,
          body: { crop: name, ...(area_m2 !== null && { area_m2 }) },
        };
      }}
    >
      <CropSearch lately={bed.sown.map(({ body }) => body.crop)} typed={crop} onType={setCrop} />
      <QuantityField label={speaker.say('bedPage.sown.area')} shownAs="area" value={area_m2} onChange={setArea} />
    </WritePage>
  );
}

/** A known crop by the name the tables have for it, another as it was typed. */
export function cropToKeep(typed: string, speaker: Parameters<typeof cropNamed>[1]): string {
  const name = typed.trim();
  if (name === '') return '';
  const found = cropNamed(name, speaker);
  return 'id' in found ? speaker.sayIf(`crop.${found.id}.name`, found.id) : name;
}
