import type { CompostKnown } from '@loamwright/science';
import { type ReactNode, useId, useState } from 'react';
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

/** A plain number from 0 to a bound, or nothing; what can't be read stays, and is told. */
export function PlainFigure(properties: {
  readonly label: string;
  readonly hint: string;
  readonly most: number;
  readonly value: number | undefined;
  readonly onChange: (value: number | undefined) => void;
}): ReactNode {
  const { label, hint, most, value, onChange } = properties;
  const speaker = useSpeaker();
  const id = useId();
  const [typed, setTyped] = useState(value === undefined ? '' : String(value));
  const read = readFigure(typed, most);
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
        value={typed}
        aria-invalid={read === null}
        aria-describedby={`${id}-hint`}
        onChange={(event) => {
          setTyped(event.target.value);
          onChange(readFigure(event.target.value, most) ?? undefined);
        }}
      />
      <span id={`${id}-hint`} className="hint">
        {read === null ? speaker.say('app.field.unread', { typed, forms: '2.5' }) : hint}
      </span>
    </div>
  );
}

/** The figure; undefined for nothing typed, null for what is none or beyond the bound. */
function readFigure(typed: string, most: number): number | undefined | null {
  if (typed.trim() === '') return undefined;
  const read = Number(typed.replace(',', '.'));
  return Number.isFinite(read) && read >= 0 && read <= most ? read : null;
}
