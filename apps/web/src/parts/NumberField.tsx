import '@loamwright/words/later';
import { type ReactNode, useId, useState } from 'react';
import { useSpeaker } from '../shell/words.tsx';
import { readCount } from './count.ts';

interface Properties {
  readonly label: string;
  readonly hint?: string | undefined;
  readonly least?: number | undefined;
  readonly most: number;
  /** What stands there to begin with. */
  readonly value?: number | undefined;
  /** Called with every number that can be read and lies within its ends, with null where none does; and whether what stands there is wrong. */
  readonly onChange: (value: number | null, isWrong: boolean) => void;
}

/** A plain number without a unit. What can't be read stays, and is told. */
export function NumberField({ label, hint, least = 0, most, value, onChange }: Properties): ReactNode {
  const speaker = useSpeaker();
  const id = useId();
  const [typed, setTyped] = useState(value === undefined ? '' : String(value));
  const inside = (text: string): number | null => readCount(text, least, most);
  const isWrong = (text: string): boolean => text.trim() !== '' && inside(text) === null;
  const wrong = isWrong(typed);
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
        aria-invalid={wrong}
        aria-describedby={`${id}-hint`}
        onChange={(event) => {
          setTyped(event.target.value);
          onChange(inside(event.target.value), isWrong(event.target.value));
        }}
      />
      <span id={`${id}-hint`} className="hint">
        {wrong ? speaker.say('bedPage.tested.unread', { typed, low: least, high: most }) : hint}
      </span>
    </div>
  );
}
