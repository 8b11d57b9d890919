import type { CompostKnown } from '@loamwright/science';
import { type ReactNode, useId } from 'react';
import { Choices } from '../../parts/Choices.tsx';
import { useSpeaker } from '../../shell/words.tsx';

interface Properties {
  readonly compost: CompostKnown;
  readonly onChange: (compost: CompostKnown) => void;
}

type Figure = 'age_months' | 'emergence_pctOfControl' | 'salts';
const figures: readonly { readonly id: Figure; readonly most: number }[] = [
  { id: 'age_months', most: 600 },
  { id: 'emergence_pctOfControl', most: 200 },
  { id: 'salts', most: 20 },
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
        <PlainFigure
          key={id}
          label={speaker.say(`app.blend.${id}`)}
          hint={speaker.say(`app.blend.${id}.hint`)}
          most={most}
          value={told(compost, id)}
          onChange={(value) => onChange(withFigure(compost, id, value))}
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

/** A plain number from 0 to a bound; what can't be read counts as nothing said. */
export function PlainFigure(properties: {
  readonly label: string;
  readonly hint: string;
  readonly most: number;
  readonly value: number | undefined;
  readonly onChange: (value: number | undefined) => void;
}): ReactNode {
  const { label, hint, most, value, onChange } = properties;
  const id = useId();
  return (
    <div className="field">
      <label className="label" htmlFor={id}>
        {label}
      </label>
      <input
        id={id}
        className="line"
        inputMode="decimal"
        autoComplete="off"
        defaultValue={value === undefined ? '' : String(value)}
        aria-describedby={`${id}-hint`}
        onChange={(event) => {
          const read = Number(event.target.value.replace(',', '.'));
          const sound = event.target.value.trim() !== '' && Number.isFinite(read) && read >= 0 && read <= most;
          onChange(sound ? read : undefined);
        }}
      />
      <span id={`${id}-hint`} className="hint">
        {hint}
      </span>
    </div>
  );
}
