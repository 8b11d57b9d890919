import '@loamwright/words/later';
import { cropToKeep } from '@loamwright/advisor';
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
  const [{ area_m2, words }, setArea] = useState<{ area_m2: number | null; words: string }>({
    area_m2: null,
    words: '',
  });
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
          ...(area_m2 !== null && { entered: { '/area_m2': { words } } }),
        };
      }}
    >
      <CropSearch lately={bed.sown.map(({ body }) => body.crop)} typed={crop} onType={setCrop} />
      <QuantityField
        label={speaker.say('bedPage.sown.area')}
        hint={speaker.say('bedPage.sown.area.hint')}
        shownAs="area"
        value={area_m2}
        onChange={(value, typed) => setArea({ area_m2: value, words: typed })}
      />
    </WritePage>
  );
}
