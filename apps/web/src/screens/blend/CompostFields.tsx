import type { CompostKnown } from '@loamwright/science';
import type { ReactNode } from 'react';
import { Choices } from '../../parts/Choices.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { useSpeaker } from '../../shell/words.tsx';

interface Properties {
  readonly compost: CompostKnown;
  readonly onChange: (compost: CompostKnown) => void;
}

type Figure = 'age_months' | 'emergence_pctOfControl' | 'salts';
const figures: readonly { readonly id: Figure; readonly most: number }[] = [
  { id: 'age_months', most: 600 },
  { id: 'emergence_pctOfControl', most: 200 },
  { id: 'salts', most: 60 },
];

/** What is known of the compost; each may be left empty. */
export function CompostFields({ compost, onChange }: Properties): ReactNode {
  const speaker = useSpeaker();
  return (
    <>
      <Choices
        legend={speaker.say('app.blend.madeOf')}
        options={(['plants', 'manure-or-salty', 'unknown'] as const).map((value) => ({
          value,
          text: speaker.say(`app.blend.madeOf.${value}`),
        }))}
        value={compost.madeOf ?? 'unknown'}
        onChange={(madeOf) => onChange({ ...compost, madeOf })}
      />
      <Choices
        legend={speaker.say('app.blend.smell')}
        options={(['earthy', 'ammonia', 'sour'] as const).map((value) => ({
          value,
          text: speaker.say(`app.blend.smell.${value}`),
        }))}
        value={compost.smell ?? null}
        onChange={(smell) => onChange({ ...compost, smell })}
      />
      {figures.map(({ id, most }) => (
        <NumberField
          key={id}
          label={speaker.say(`app.blend.${id}`)}
          hint={speaker.say(`app.blend.${id}.hint`)}
          most={most}
          value={told(compost, id)}
          onChange={(value) => onChange(withFigure(compost, id, value ?? undefined))}
        />
      ))}
    </>
  );
}

function told(compost: CompostKnown, id: Figure): number | undefined {
  const value = id === 'salts' ? compost.conductivity?.value_dSPerM : compost[id];
  return typeof value === 'number' ? value : undefined;
}

function withFigure(compost: CompostKnown, id: Figure, value: number | undefined): CompostKnown {
  if (id !== 'salts') return { ...compost, [id]: value };
  return { ...compost, conductivity: value === undefined ? undefined : { value_dSPerM: value, method: 'one-to-two' } };
}
