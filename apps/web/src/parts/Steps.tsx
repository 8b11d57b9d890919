import { type ReactNode, useEffect, useId, useState } from 'react';
import { useSpeaker } from '../shell/words.tsx';
import { readCount } from './count.ts';

interface Properties {
  readonly label: string;
  readonly value: number;
  readonly step: number;
  readonly least: number;
  readonly onChange: (value: number) => void;
}

/** A figure with a large step down and a large step up; it can also be typed. What can't be read stays, and is told. */
export function Steps({ label, value, step, least, onChange }: Properties): ReactNode {
  const speaker = useSpeaker();
  const id = useId();
  const [typed, setTyped] = useState(String(value));
  useEffect(() => setTyped(String(value)), [value]);
  const move = (by: number): void => onChange(Math.max(least, value + by));
  const read = readCount(typed, least);
  const settle = (): void => {
    if (read !== null) onChange(read);
  };
  return (
    <div>
      <label className="label" htmlFor={id}>
        {label}
      </label>
      <div className="steps">
        <button type="button" aria-label={speaker.say('app.less', { of: label })} onClick={() => move(-step)}>
          −
        </button>
        <input
          id={id}
          inputMode="decimal"
          autoComplete="off"
          value={typed}
          aria-invalid={read === null}
          aria-describedby={`${id}-hint`}
          onChange={(event) => setTyped(event.target.value)}
          onBlur={settle}
          onKeyDown={(event) => event.key === 'Enter' && settle()}
        />
        <button type="button" aria-label={speaker.say('app.more', { of: label })} onClick={() => move(step)}>
          +
        </button>
      </div>
      <span id={`${id}-hint`} className="hint" role="status">
        {read === null ? speaker.say('app.field.unread', { typed }) : null}
      </span>
    </div>
  );
}
