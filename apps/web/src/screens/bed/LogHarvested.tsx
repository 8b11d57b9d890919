import '@loamwright/words/later';
import { cropToKeep } from '@loamwright/advisor';
import type { Bed } from '@loamwright/daybook';
import { type ReactNode, useState } from 'react';
import { Choices } from '../../parts/Choices.tsx';
import { QuantityField } from '../../parts/QuantityField.tsx';
import { WritePage } from '../../parts/WritePage.tsx';
import { to } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { CropSearch } from './CropSearch.tsx';
import { aboutBed } from './moment.ts';

/** A crop taken from a bed. */
export function LogHarvested({ bed }: { readonly bed: Bed }): ReactNode {
  const speaker = useSpeaker();
  const [crop, setCrop] = useState(bed.sown.at(-1)?.body.crop ?? '');
  const [mass_kg, setMass] = useState<number | null>(null);
  const [end, setEnd] = useState<'last' | 'more'>('more');
  return (
    <WritePage
      then={to('bed', bed.id)}
      question={speaker.say('bedPage.harvested.question', { bed: bed.setUp.body.name })}
      act={speaker.say('bedPage.sown.act')}
      thing={(happened) => {
        const name = cropToKeep(crop, speaker);
        if (name === '' || (mass_kg !== null && mass_kg <= 0)) return null;
        return {
          kind: 'harvested',
          about: aboutBed(bed.id),
          happened,
          body: { crop: name, ...(mass_kg !== null && { mass_kg }), ...(end === 'last' && { last: true }) },
        };
      }}
    >
      <CropSearch lately={bed.sown.map(({ body }) => body.crop)} typed={crop} onType={setCrop} />
      <QuantityField label={speaker.say('bedPage.harvested.mass')} shownAs="mass" value={mass_kg} onChange={setMass} />
      <Choices
        legend={speaker.say('bedPage.harvested.last')}
        legendUnseen
        options={(['more', 'last'] as const).map((value) => ({
          value,
          text: speaker.say(`bedPage.harvested.${value}`),
        }))}
        value={end}
        onChange={setEnd}
      />
    </WritePage>
  );
}
